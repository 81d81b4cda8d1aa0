// The build step that reads the formulas: what has no plain form is known, with its reason, and nothing is dropped in silence.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { formOfCard } from '../../src/plain/forms';
import { checkForms, type PlainForms, readForms, writeForms } from '../../src/plain/read';
import { CARDS } from '../../src/registry';

describe('functions without a plain form', () => {
  const { without } = readForms();

  test('are those that say why they are not live, the look-ups in standards, and those that the hand-over has in another way', () => {
    const LENGTHS = ['SCREW.LENGTH.TABLE', 'SCREW.LENGTH.PICK', 'SCREW.LENGTH.COMMON'];
    const otherwise = [
      'CHECK.MAX',
      'CHECK.MIN',
      'CHECK.CLEAR',
      'CHECK.WORST',
      'CHECK.JOINT',
      'CHECK.BOSS',
      'JOINT.TABLE',
      'STACK.SHARE',
      'STACK.TABLE',
      ...LENGTHS,
    ];
    // it takes its text apart before its form begins
    const withForm = ['LIMITS'];
    const declared = [...CARDS.values()]
      .filter(({ notLive, kind }) => notLive !== undefined || kind === 'standard table')
      .map(({ id }) => id);
    expect(Object.keys(without).sort()).toEqual([...declared.filter(id => !withForm.includes(id)), ...otherwise].sort());
  });

  test('and no other card is without one', () => {
    expect([...CARDS.keys()].filter(id => formOfCard(id) === undefined).sort()).toEqual(Object.keys(without).sort());
  });

  test.each([
    ['DUAL', 'core/unit/unit-text.ts: dualText: TemplateExpression in line '],
    ['STACK.SHARE', 'core/tolerance/stack-tables.ts: stackShares: IfStatement in line '],
    ['CHECK.MAX', 'core/check/check.ts: checkMax: calls checked, not an exported function'],
    ['ABOUT', 'about/about.ts: about: IfStatement in line '],
  ])('%s: file, formula, what is outside the subset and where', (id, words) => {
    expect(without[id]).toContain(words);
  });
});

describe('a formula outside the subset', () => {
  const made: string[] = [];
  afterEach(() => {
    for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
  });

  const SOUND = 'export function twiceMm(lengthMm: number): number {\n  return 2 * lengthMm;\n}\n';
  const LOOP = 'export function twiceMm(lengthMm: number): number {\n  let sumMm = 0;\n  return lengthMm + lengthMm;\n}\n';
  const CARD = "import { twiceMm } from './twice';\nexport const CARDS = [card('TWICE', T, [length], twiceMm, { result })];\n";
  const wordsWith = (words: string): string =>
    `const REST = { kind: 'geometry' };\nconst SILENT = { notLive: 'a loop' };\nexport const WORDS = { TWICE: { ${words} } };\n`;

  function sources(formula: string, cards: string, words = '...REST'): string {
    const top = mkdtempSync(join(tmpdir(), 'forms-'));
    made.push(top);
    for (const folder of ['src/core', 'src/joint', 'src/about', 'functions']) mkdirSync(join(top, folder), { recursive: true });
    writeFileSync(join(top, 'src/core/twice.ts'), formula);
    writeFileSync(join(top, 'src/core/twice.cards.ts'), cards);
    writeFileSync(join(top, 'src/core/twice.words.ts'), wordsWith(words));
    return join(top, 'src');
  }
  const read = (formula: string, cards = CARD, words?: string): PlainForms => readForms(sources(formula, cards, words));

  test('is not what was written of it before', () => {
    const root = sources(SOUND, CARD);
    mkdirSync(join(root, 'plain'));
    writeForms(readForms(root), root);
    expect(() => checkForms(root)).not.toThrow();
    writeFileSync(join(root, 'core/twice.ts'), SOUND.replace('2 *', '2.5 *'));
    expect(() => checkForms(root)).toThrow('npm run generate');
  });

  test('inside it nothing is said', () => {
    expect(read(SOUND)).toMatchObject({
      without: {},
      formulas: { twiceMm: { params: ['$0'], result: ['*', 2, '$0'] } },
    });
  });

  test('stops the build where the joint is made by it', () => {
    const node = "export const NODES = { twice: mm('twice the length', made(twiceMm, 'length')) };\n";
    expect(read(SOUND, node).nodes).toEqual({ twice: 'twiceMm' });
    expect(() => read(LOOP, node)).toThrow('twice: twiceMm');
  });

  test('stops the build where a card needs it and does not say why it is not live', () => {
    expect(() => read(LOOP)).toThrow(
      'no plain form, and no notLive in the card:\nTWICE: core/twice.ts: twiceMm: VariableStatement in line 2',
    );
  });

  test('stops it too where the formula is written in the card', () => {
    expect(() => read(SOUND, "export const CARDS = [card('TWICE', T, [length], x => 2 * x, { result })];")).toThrow(
      'TWICE: core/twice.cards.ts: its formula: not an exported function',
    );
  });

  test('stops it too where only what it calls is outside', () => {
    const calling = `${LOOP}export function fourTimesMm(lengthMm: number): number {\n  return 2 * twiceMm(lengthMm);\n}\n`;
    expect(() => read(calling, CARD.replaceAll('twiceMm', 'fourTimesMm'))).toThrow(
      'TWICE: core/twice.ts: fourTimesMm: calls twiceMm, core/twice.ts: VariableStatement in line 2',
    );
  });

  test('a look-up needs none', () => {
    expect(read(LOOP, CARD.replace('card(', 'lookUp('))).toMatchObject({ without: { TWICE: 'a look-up' } });
  });

  test.each(["notLive: 'a loop'", '...SILENT', "...REST, kind: 'standard table'"])('does not with %s', words => {
    expect(Object.keys(read(LOOP, CARD, words).without)).toEqual(['TWICE']);
  });
});
