// What the README quotes of the measurements: dated, of one run, and honest about its targets.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { figuresPage, type Results } from '../bench/figure';

const read = (file: string): string => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const rows = (page: string): string[][] => page.split('\n').filter(line => line.startsWith('| ')).slice(1).map(line => line.split(/(?<!\\)\|/).slice(1, -1).map(cell => cell.trim()));

const figures = figuresPage(JSON.parse(read('bench/results.json')) as Results);

test('they have a date', () => expect(figures).toMatch(/ on 20\d\d-\d\d-\d\d\b/));

test('every figure with a target says whether it is met', () => {
  const withTarget = rows(figures).filter(([, target]) => target !== '–');
  expect(withTarget.length).toBeGreaterThanOrEqual(4);
  for (const [what = '', target = ''] of withTarget) expect(target, what).toMatch(/: (met|not met, .{10})/);
});
