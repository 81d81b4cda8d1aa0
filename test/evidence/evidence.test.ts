// The evidence is there: every test that is named exists, has that title, and asks that function.
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { type Evidence, EVIDENCE_KINDS, isOutside } from '../../src/help/evidence';
import { CARDS } from '../../src/registry';
import { EVIDENCE } from './evidence';

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
    if (isOutside(one)) expect(one.source, one.id).toMatch(/read in|from memory|js-quantities/);
  }
  expect(new Set(EVIDENCE.map(one => JSON.stringify(one))).size).toBe(EVIDENCE.length);
});

test('at least 60 functions are checked against numbers from outside; the others are known', () => {
  const checked = new Set(EVIDENCE.filter(isOutside).map(({ id }) => id));
  expect(checked.size).toBeGreaterThanOrEqual(60);
  expect([...CARDS.keys()].filter(id => !checked.has(id))).toEqual([
    'UNIT.CHECK',
    'HOLE.DEPTH', 'HOLE.FLOOR', 'PIN.RATIO', 'PIN.DEFLECTION',
    'WALL.FEATURE', 'BOSS.SLENDER', 'BOSS.SINK', 'BOSS.FLAT', 'BOSS.CONFLICT', 'BOSS.GUSSET',
    'RECESS.DEPTH', 'RECESS.SEAT', 'RECESS.TOOL',
    'SCREW.LENGTH.PICK',
    'PULLOUT', 'SCREW.COUNT', 'TORQUE.SET',
    'BOARD.MARGIN', 'BOARD.HOLD',
    'LIP.SKIN', 'LIP.FIT', 'JUNCTION.CIRCLE', 'JUNCTION.RATIO',
    'STACK.MODIFIED', 'STACK.SHARE', 'STACK.SIMULATE',
    'CHECK.MAX', 'CHECK.MIN', 'CHECK.WORST', 'VERSION',
    'JOINT.TABLE', 'JOINT.VALUE', 'JOINT.CARD', 'CHECK.JOINT', 'CHECK.BOSS', 'JOINT.INPUTS', 'JOINT.OUTPUTS',
    'VARIANT.GRID', 'VARIANT.RANK', 'VARIANT.FRONT',
    'REASON', 'ABOUT', 'WORKING',
  ]);
});
