// The proof page tells the truth: its tests are there, and Excel is asked to show what the core answers.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type FormulaNode, ownFunction, parseFormula, walk } from '../../src/sheet/formula';
import { WorkbookValues } from '../../src/sheet/workbook-values';
import { CLAIMS } from '../../src/tools/claims';
import { EXCEL_CHECKS } from '../../src/tools/excel-checks';
import { proofPage } from '../../src/tools/proof-page';
import { verdictsPage } from '../../src/tools/verdicts-page';
import { call } from '../../src/registry';
import { ARGUED, RULES, type Figures } from './verdicts/figures';

/** A test or a group of tests of this title that is run. */
function isThere(file: string, title: string): boolean {
  const text = readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8');
  const quoted = title.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`\\b(test|it|describe)(\\.each\\b[^]*?|\\.runIf\\([^)]*\\))?\\((['"\`])${quoted}\\3`).test(text);
}

describe('every claim names a test that is there', () => {
  test.each(CLAIMS.map(one => [one.claim, one] as const))('%s', (_, { test: file, title }) =>
    expect(isThere(file, title), `${file}: ${title}`).toBe(true),
  );

  test('and one that is not is found out', () => {
    expect(isThere('test/evidence/proof.test.ts', 'and one that is not is found out')).toBe(true);
    expect(isThere('test/evidence/proof.test.ts', 'and one that is never written')).toBe(false);
  });
});

describe('what Excel must show is what the core answers', () => {
  const source = new WorkbookValues(
    {
      name: 'Checks',
      sheets: [
        {
          name: 'S',
          cells: new Map([
            ['A1', { value: 3 }],
            ['A2', { value: 4 }],
          ]),
        },
      ],
    },
    call,
  );
  const typed = EXCEL_CHECKS.filter(({ formula }) => formula !== undefined);

  test('count', () => expect(typed.length).toBe(10));

  test('what is done by hand is no more than ten minutes of it', () => expect(EXCEL_CHECKS.length - typed.length).toBeLessThanOrEqual(12));

  test.each(typed.map(({ formula = '', shows }) => [formula, shows] as const))('%s', (formula, shows) => {
    const tree = parseFormula(formula) as FormulaNode;
    if (typeof shows === 'object') {
      const [own] = [...walk(tree)].filter(node => ownFunction(node) !== undefined) as [FormulaNode];
      const answer = call(
        ownFunction(own) ?? '',
        (own.arguments ?? []).map(arg => source.evaluate(arg, 'S')),
      );
      expect(answer).toMatchObject({ ok: false, code: shows.code, message: expect.stringContaining(shows.message) as unknown });
      return;
    }
    const result = source.evaluate(tree, 'S');
    const [value] = (Array.isArray(result) ? result[0] : [result]) as unknown[];
    if (typeof shows === 'number') expect(value).toBeCloseTo(shows, 9);
    else expect(value).toBe(shows);
  });
});

test('the page has a row for each', () => {
  expect(
    proofPage('0 of the 1 files have changed since')
      .split('\n')
      .filter(line => line.startsWith('| ')).length,
  ).toBe(CLAIMS.length + EXCEL_CHECKS.length + 2);
});

describe('the verdicts on designed joints', () => {
  const figures = JSON.parse(readFileSync(new URL('verdicts/figures.json', import.meta.url), 'utf8')) as Figures;
  const rowOf = (rule: string, of = figures): string[] =>
    verdictsPage(of)
      .split('\n')
      .find(line => line.startsWith(`| ${rule} |`))
      ?.split(' | ') ?? [];

  test('are counted on 3,000 joints, and the page says the share of each state', () => {
    expect(figures.joints).toBe(3_000);
    expect(figures.sampled).toBeGreaterThanOrEqual(300);
    expect(Object.values(figures.shares).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
    const shares = { pass: 0.0954, review: 0.4, fail: 0.5, 'not checked': 0.0046 };
    expect(verdictsPage({ ...figures, shares })).toMatch(
      /^Verdicts on 3,000 joints .*: pass 9\.5 %, review 40\.0 %, fail 50\.0 %, refused 0\.5 %\. .* every 10th /,
    );
  });

  test.each(RULES)('%s: has its row, with an argument and its source where it speaks in more than half or in none', rule => {
    const { review = NaN, fail = NaN } = figures.rules.find(one => one.rule === rule) ?? {};
    const row = rowOf(rule);
    expect(row.slice(2, 4)).toEqual([`${(100 * review).toFixed(1)} %`, `${(100 * fail).toFixed(1)} %`]);
    const { why = '–', source = '' } = ARGUED[rule] ?? {};
    expect(why !== '–').toBe(review + fail > 0.5 || review + fail === 0);
    expect(row[5]).toBe(source === '' ? '– |' : `${why} (${source}) |`);
    if (why !== '–') expect([why.length > 20, source.length > 5]).toEqual([true, true]);
  });

  test('another count is another row', () => {
    const rules = figures.rules.map(one => (one.rule === 'core pin' ? { ...one, applies: 150, review: 0.25, fail: 0.125 } : one));
    expect(rowOf('core pin', { ...figures, rules }).slice(1, 4)).toEqual(['50.0 %', '25.0 %', '12.5 %']);
  });
});
