// What is quoted of the measurements: dated, of one run, and honest about its targets.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { figuresPage, type Results } from '../../src/tools/figures-page';

const read = (file: string): string => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const rows = (page: string): string[][] =>
  page
    .split('\n')
    .filter(line => line.startsWith('| '))
    .slice(1)
    .map(line =>
      line
        .split(/(?<!\\)\|/)
        .slice(1, -1)
        .map(cell => cell.trim()),
    );

const results = JSON.parse(read('bench/results.json')) as Results;
const figures = figuresPage(results);

test('each part has its date, machine and Node, and the page says them', () => {
  expect(Object.keys(results).length).toBeGreaterThanOrEqual(5);
  for (const { on } of Object.values(results)) {
    expect(on).toMatch(/^20\d\d-\d\d-\d\d, \S.*, \d+ cores, Node v\d+/);
    expect(figures).toContain(on);
  }
});

test('every figure with a target says whether it is met', () => {
  const withTarget = rows(figures).filter(([, target]) => target !== '–');
  expect(withTarget.length).toBeGreaterThanOrEqual(4);
  for (const [what = '', target = ''] of withTarget) expect(target, what).toMatch(/: (met|not met, .{10})/);
});
