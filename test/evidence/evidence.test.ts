// The evidence is there: every test that is named exists, has that title, and asks that function.
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { checked, type Evidence, EVIDENCE_KINDS, isOutside } from '../../src/evidence/evidence';
import { EVIDENCE } from '../../src/evidence/list';
import { CARDS } from '../../src/registry';
import { number, value } from '../kit/ask';
import { notices } from '../kit/refereed';

interface Titled {
  readonly title: string;
  /** The whole call with its rows, and what the file has outside its tests: through that a test may ask too. */
  readonly text: string;
}

/** The name that is called at the root of `test.each(rows)(title, …)`. */
function rootOf(call: ts.Expression): string {
  if (ts.isCallExpression(call) || ts.isPropertyAccessExpression(call)) return rootOf(call.expression);
  return ts.isIdentifier(call) ? call.text : '';
}

function titleOf(node: ts.Expression | undefined): string | undefined {
  if (node === undefined) return undefined;
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text;
  return ts.isTemplateExpression(node) ? [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…') : undefined;
}

function testsOf(file: string): Titled[] {
  const source = ts.createSourceFile(file, readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8'), ts.ScriptTarget.ES2021, true);
  const found: Titled[] = [];
  const visit = (node: ts.Node): void => {
    const title = ts.isCallExpression(node) && rootOf(node) === 'test' ? titleOf(node.arguments[0]) : undefined;
    if (title !== undefined) found.push({ title, text: node.getText() });
    else ts.forEachChild(node, visit);
  };
  visit(source);
  const helpers = found.reduce((text, one) => text.replace(one.text, ''), source.getText());
  return found.map(({ title, text }) => ({ title, text: text + helpers }));
}

const TESTS = new Map([...new Set(EVIDENCE.map(one => one.test))].map(file => [file, testsOf(file)]));

/** What is wrong with an entry; nothing where its test is there and asks its function. */
function missing({ id, test: file, title }: Evidence): string | undefined {
  const titled = (TESTS.get(file) ?? []).filter(found => found.title.includes(title));
  if (titled.length === 0) return `no test of ${file} is titled "${title}"`;
  const asked = new RegExp(`['"\`]${id.replace(/\./g, '\\.')}['"\`]`);
  return titled.some(({ text }) => asked.test(text)) ? undefined : `${file}, "${title}", does not ask ${id}`;
}

describe('every entry names a test that is there and asks its function', () => {
  test.each(EVIDENCE.map(one => [one.id, one.kind, one.title, one] as const))('%s, %s: %s', (_id, _kind, _title, one) => {
    expect(missing(one)).toBeUndefined();
  });

  test('an entry that does not is found out', () => {
    const [sound] = EVIDENCE.filter(({ id }) => id === 'HOOP.STRESS');
    if (sound === undefined) expect.fail('no sound entry');
    expect(missing({ ...sound, title: ': hoop stress 19 MPa' })).toContain('is titled');
    expect(missing({ ...sound, id: 'BOARD.HOLD' })).toContain('does not ask BOARD.HOLD');
  });
});

test('every entry is of a function; one from outside says how its source is held', () => {
  for (const one of EVIDENCE) {
    expect(CARDS.has(one.id), one.id).toBe(true);
    expect(EVIDENCE_KINDS).toContain(one.kind);
    if (isOutside(one) && one.kind !== 'independent computation') expect(one.source, one.id).toMatch(/read in|from memory|js-quantities/);
  }
  expect(new Set(EVIDENCE.map(one => JSON.stringify(one))).size).toBe(EVIDENCE.length);
});

test('a test that passes on a wrong answer is found out', () => {
  const exact = (): void => expect(number('BOSS.SINK', 1, 2)).toBe(0.5);
  expect(notices('BOSS.SINK', exact)).toBe(true);
  expect(notices('BOSS.SINK', () => expect(number('BOSS.SINK', 1, 2)).toBeCloseTo(0.5, 1))).toBe(false);
  expect(notices('BOSS.SLENDER', exact)).toBe(false);
  // tables and texts
  expect(
    notices('BOSS.CONFLICT', () =>
      expect(value('BOSS.CONFLICT', 'ST2.9', 2.9, 2.32)).toEqual([expect.anything(), [5.8, expect.anything(), expect.anything(), 'pass']]),
    ),
  ).toBe(true);
  expect(notices('DUAL', () => expect(value('DUAL', 25.4)).toBe('25.40 mm (1.000 in)'))).toBe(true);
  exact();
});

test('every file with evidence from outside has its tests run on wrong answers too', () => {
  const files = [...new Set(EVIDENCE.filter(isOutside).map(one => one.test))];
  expect(files.length).toBeGreaterThanOrEqual(10);
  for (const file of files)
    expect(readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8'), file).toContain(
      `const test = refereed('${file.replace(/^test\//, '')}');`,
    );
});

describe('what counts as checked', () => {
  const one = (kind: Evidence['kind'], part?: string): Evidence => ({
    id: 'GRIP',
    kind,
    source: '',
    test: '',
    title: '',
    ...(part === undefined ? {} : { part }),
  });
  const grip = [{ id: 'GRIP' }] as unknown as Parameters<typeof checked>[0];

  test.each<[Evidence[], keyof ReturnType<typeof checked>]>([
    [[], 'none'],
    [[one('hand-worked'), one('arithmetic'), one('identity')], 'none'],
    [[one('published example', 'one term'), one('identity')], 'inPart'],
    [[one('independent computation')], 'whole'],
    [[one("standard's table")], 'byTableAlone'],
    [[one('independent computation')], 'byUsAlone'],
  ])('%j: %s', (list, where) => expect(checked(grip, list)[where]).toEqual(['GRIP']));

  test('no function is lost, and no fewer are checked than there were', () => {
    const { whole, inPart, none } = checked(CARDS.values(), EVIDENCE);
    expect([...whole, ...inPart, ...none].sort()).toEqual([...CARDS.keys()].sort());
    expect(whole.length).toBeGreaterThanOrEqual(60);
  });
});
