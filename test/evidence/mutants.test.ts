// The last runs of npm run test:mutants, which changes formulas one place at a time: dated, counted, and above its target.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const page = readFileSync(new URL('../mutants/results.md', import.meta.url), 'utf8');
const [, noticed = NaN, all = NaN] = (/^Mutants on 20\d\d-\d\d-\d\d, put together from runs up to then: (\d+) of (\d+) noticed/.exec(page) ?? []).map(Number);
const rows = page.split('\n').filter(line => line.startsWith('| src/')).map(line => line.split(/(?<!\\)\|/).slice(1, -1).map(cell => cell.trim()));

test('tests notice at least 85 of 100 wrong places', () => expect(noticed / all).toBeGreaterThanOrEqual(0.85));

test('every file is there with its own count, and each place that no test noticed is named', () => {
  const sum = (column: number): number => rows.reduce((total, row) => total + Number(row[column]), 0);
  expect([sum(1), sum(2)]).toEqual([noticed, all]);
  for (const [file, some, of, places = ''] of rows) expect(places === '–' ? 0 : places.split('; line ').length, file).toBe(Number(of) - Number(some));
});

test('no file of core and joint is left out, but the cards and what is worked out once when it is loaded', () => {
  const files = ['src/core', 'src/joint'].flatMap(folder => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map(file => `${folder}/${file}`)).filter(file => /(?<!\bcards)\.ts$/.test(file));
  const listed = rows.map(([file]) => file);
  expect(files.filter(file => !listed.includes(file)).sort()).toEqual(['src/core/card.ts', 'src/core/kinds.ts', 'src/core/unit/unit-bands.ts', 'src/core/version.ts', 'src/joint/rules.ts']);
  expect(listed.filter(file => !files.includes(file as string))).toEqual([]);
});
