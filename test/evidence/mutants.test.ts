// The last runs of npm run test:mutants, which changes formulas one place at a time, and of npm run test:facts, which changes what they and
// the cards declare: dated, counted, above their targets.
// Files may have changed since; the page of proof tells how many, and a release does not rest on too many.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { changedSince } from '../../src/release/measured';
import { FILES } from '../mutants/files';

const page = readFileSync(new URL('../mutants/results.md', import.meta.url), 'utf8');
const part = (title: string): string => page.split(/^## /m).find(text => text.startsWith(`${title}\n`)) ?? '';
const rowsOf = (text: string): string[][] =>
  text
    .split('\n')
    .filter(line => line.startsWith('| src/'))
    .map(line =>
      line
        .split(/(?<!\\)\|/)
        .slice(1, -1)
        .map(cell => cell.trim()),
    );
const [formulas, facts] = [part('Formulas'), part('Facts')].map(text => ({ text, rows: rowsOf(text) })) as [
  { text: string; rows: string[][] },
  { text: string; rows: string[][] },
];
const shares = (rows: readonly string[][]): (readonly [string | undefined, number])[] =>
  rows.map(([file, , some, of]) => [file, Number(some) / Number(of)]);
const head = (text: string): number[] =>
  (/^(?:Mutants|Facts) on 20\d\d-\d\d-\d\d\b[^:]*: (\d+) of (\d+) noticed/m.exec(text) ?? []).slice(1).map(Number);

/** Files that were taken apart after the last run, and where their lines are now: those places were changed under the old names; and new ones. */
const SINCE_THE_RUN: { readonly from: readonly string[]; readonly to: readonly string[] } = {
  from: ['src/joint/formulas.ts', 'src/joint/evaluate.ts'],
  to: [
    'src/core/board/bending.cards.ts',
    'src/core/board/bending.ts',
    'src/core/board/bending.words.ts',
    'src/core/board/board.words.ts',
    'src/core/boss/boss.words.ts',
    'src/core/check/check.words.ts',
    'src/core/compared.ts',
    'src/core/draft/draft.words.ts',
    'src/core/engagement/engagement.words.ts',
    'src/core/engagement/length-words.ts',
    'src/core/hole/hole.words.ts',
    'src/core/hole/position.words.ts',
    'src/core/insert/insert.cards.ts',
    'src/core/insert/insert.ts',
    'src/core/insert/insert.words.ts',
    'src/core/insert/nut.cards.ts',
    'src/core/insert/nut.ts',
    'src/core/insert/nut.words.ts',
    'src/core/material/start-limits.ts',
    'src/core/mould/mould.words.ts',
    'src/core/pattern/fit.ts',
    'src/core/pattern/pattern.cards.ts',
    'src/core/pattern/pattern.ts',
    'src/core/pattern/pattern.words.ts',
    'src/core/read/cells.ts',
    'src/core/read/limits.ts',
    'src/core/read/read-quantity.ts',
    'src/core/recess/recess.words.ts',
    'src/core/screw/own.ts',
    'src/core/screw/screw.words.ts',
    'src/core/seal/seal.cards.ts',
    'src/core/seal/seal.ts',
    'src/core/seal/seal.words.ts',
    'src/core/snap/snap.cards.ts',
    'src/core/snap/snap.ts',
    'src/core/snap/snap.words.ts',
    'src/core/strength/hoop.words.ts',
    'src/core/strength/pull-out.words.ts',
    'src/core/strength/torque.words.ts',
    'src/core/tolerance/stack.words.ts',
    'src/core/tolerance/tolerance.words.ts',
    'src/core/unit/unit.words.ts',
    'src/joint/base-functions.ts',
    'src/joint/choices.ts',
    'src/joint/derive.ts',
    'src/joint/formulas/boss.ts',
    'src/joint/formulas/grip.ts',
    'src/joint/formulas/head-half.ts',
    'src/joint/formulas/insert.ts',
    'src/joint/formulas/sizes.ts',
    'src/joint/formulas/strength.ts',
    'src/joint/grid.ts',
    'src/joint/headings.ts',
    'src/joint/input-value.ts',
    'src/joint/judge.ts',
    'src/joint/look-up.ts',
    'src/joint/order.ts',
    'src/joint/outputs.ts',
    'src/joint/parameters.ts',
    'src/joint/ranking.ts',
    'src/joint/rows.ts',
    'src/joint/slot-set.ts',
    'src/joint/slots.ts',
    'src/joint/study/stretches.ts',
    'src/joint/study/drawn.ts',
    'src/joint/study/map.ts',
    'src/joint/study/moved.ts',
    'src/joint/study/numbers.ts',
    'src/joint/study/sensitivity.ts',
    'src/joint/study/simulate.ts',
    'src/joint/study/solve.ts',
    'src/joint/study/steps.ts',
    'src/joint/study/stream.ts',
    'src/joint/study/window.ts',
    'src/joint/verdict.ts',
    'src/joint/words.ts',
  ],
};

test('tests notice at least 85 of 100 wrong places', () => {
  const [noticed = NaN, all = NaN] = head(formulas.text);
  expect(noticed / all).toBeGreaterThanOrEqual(0.85);
});

test('tests notice at least 90 of 100 wrong facts of each file', () => {
  expect(head(facts.text)[1]).toBeGreaterThan(4500);
  expect(facts.rows.map(([file]) => file).sort()).toEqual(FILES.filter(file => !SINCE_THE_RUN.to.includes(file)).sort());
  expect(shares(facts.rows).filter(([, share]) => !(share >= 0.9))).toEqual([]);
});

describe.each([
  ['formulas', formulas],
  ['facts', facts],
] as const)('%s', (_, { text, rows }) => {
  test('every file has its sum and its own count, and each place that no test noticed is named', () => {
    const sum = (column: number): number => rows.reduce((total, row) => total + Number(row[column]), 0);
    expect([sum(2), sum(3)]).toEqual(head(text));
    for (const [file, sha256, some, of, places = ''] of rows) {
      expect(sha256, file).toMatch(/^[0-9a-f]{16}$/);
      expect(places === '–' ? 0 : places.split('; line ').length, file).toBe(Number(of) - Number(some));
    }
  });
});

test('the count of changed files sees every file of both parts', () => {
  const listed = new Set([...formulas.rows, ...facts.rows].map(([file]) => file));
  expect(changedSince(page, () => undefined)).toEqual({ changed: [...listed], of: listed.size });
});

test('no file of core and joint is left out, but types, the bands of units, the version, and the cards of the joint itself', () => {
  const files = ['src/core', 'src/joint']
    .flatMap(folder => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map(file => `${folder}/${file}`))
    .filter(file => file.endsWith('.ts'));
  const listed = [...formulas.rows, ...facts.rows].map(([file]) => file);
  const isNew = (file: string): boolean => SINCE_THE_RUN.to.includes(file);
  expect(files.filter(file => !listed.includes(file) && !isNew(file)).sort()).toEqual([
    'src/core/card.ts',
    'src/core/cards.ts',
    'src/core/kinds.ts',
    'src/core/unit/unit-bands.ts',
    'src/core/version.ts',
    'src/core/words.ts',
    'src/joint/joint.cards.ts',
    'src/joint/joint.words.ts',
    'src/joint/printed-joint.cards.ts',
    'src/joint/study/study.cards.ts',
    'src/joint/study/study.words.ts',
    'src/joint/variants.cards.ts',
    'src/joint/variants.words.ts',
  ]);
  expect(listed.filter(file => !files.includes(file as string))).toEqual(SINCE_THE_RUN.from);
  // after the next run nothing is left to name here
  expect(SINCE_THE_RUN.to.filter(file => listed.includes(file) || !files.includes(file))).toEqual([]);
});
