// What the README quotes of the measurements: dated, of one run, and honest about its targets.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { figuresPage, type Results } from '../bench/figure';

const read = (file: string): string => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const rows = (page: string): string[][] => page.split('\n').filter(line => line.startsWith('| ')).slice(1).map(line => line.split(/(?<!\\)\|/).slice(1, -1).map(cell => cell.trim()));

const figures = figuresPage(JSON.parse(read('bench/results.json')) as Results);
const mutants = read('mutants/results.md');

test.each([['figures', figures], ['mutants', mutants]])('%s have a date', (_, page) => expect(page).toMatch(/ on 20\d\d-\d\d-\d\d\b/));

test('every figure with a target says whether it is met', () => {
  const withTarget = rows(figures).filter(([, target]) => target !== '–');
  expect(withTarget.length).toBeGreaterThanOrEqual(5);
  for (const [what = '', target = ''] of withTarget) expect(target, what).toMatch(/: (met|not met, .{10})/);
});

test('of the mutants at least 85 % were noticed, and the others are named', () => {
  const [, noticed = NaN, all = NaN] = (/: (\d+) of (\d+) noticed/.exec(mutants) ?? []).map(Number);
  expect(noticed / all).toBeGreaterThanOrEqual(0.85);
  const counted = rows(mutants).map(([, some, of, missed = '']) => ({ some: Number(some), of: Number(of), named: missed === '–' ? 0 : missed.split('; line ').length }));
  expect([counted.reduce((sum, { some }) => sum + some, 0), counted.reduce((sum, { of }) => sum + of, 0)]).toEqual([noticed, all]);
  for (const { some, of, named } of counted) expect(named).toBe(of - some);
});
