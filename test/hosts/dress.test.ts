// Looks on cells of a sheet that is there, and the way back: cells have what they had before.
import { afterEach, expect, it } from 'vitest';
import { excelPort } from '../../src/hosts/excel/excel-port';
import type { Dress } from '../../src/sheet/dress';
import { EXCEL } from '../../src/words/excel';
import { fakeExcel, type Looks } from './excel-fake';

afterEach(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name);
});

const dress: Dress = {
  sheetName: 'Part',
  cells: [
    { at: 'B2', role: 'header' },
    { at: 'C2', role: 'header' },
    { at: 'B3', role: 'input' },
    { at: 'C3', role: 'result' },
  ],
  formats: [{ range: 'C3', format: '0.00' }],
  stateRanges: ['C3'],
  wrapped: ['C3'],
  dropDowns: [{ range: 'B3', choices: ['pan', 'flat'], words: 'Head of the screw' }],
};

/** Of a form that the user has drawn: a yellow cell, a bold one, one of text, and one beside all that. */
const HAD: readonly (readonly [string, Looks])[] = [
  ['B2', { 'fill.color': '#FFFF00', 'font.bold': true, 'font.color': '#C00000' }],
  ['B3', { numberFormat: '@' }],
  ['C3', { wrapText: true, numberFormat: 'dd.mm.yyyy' }],
  ['D4', { 'fill.color': '#00FF00' }],
];

it('are put on in few exchanges, and taken off again: every cell looks as it did', async () => {
  const fake = fakeExcel({ name: 'Part', looks: new Map(HAD) });
  const [part] = fake.sheets;
  const takeOff = await excelPort(EXCEL).dress?.(dress);
  expect(fake.syncs).toBe(2);
  expect(part?.looks.get('B2')?.['fill.color']).not.toBe('#FFFF00');
  expect(part?.looks.get('C3')).toMatchObject({ numberFormat: '0.00', wrapText: true });
  expect(part?.conditions.size).toBeGreaterThanOrEqual(4);
  expect(fake.done).toContain('B3 dataValidation.rule = {"list":{"inCellDropDown":true,"source":"pan,flat"}}');
  await takeOff?.();
  const left = new Map([...(part?.looks ?? [])].map(([at, { columnWidth: _, ...looks }]) => [at, looks]));
  for (const [at, looks] of left) if (Object.keys(looks).length === 0) left.delete(at);
  expect(Object.fromEntries(left)).toEqual(Object.fromEntries(HAD));
  expect(part?.conditions.size).toBe(0);
  expect(fake.done).toContain('B3 dataValidation.clear()');
});

it('are on no other cell', async () => {
  const fake = fakeExcel({ name: 'Part' });
  await excelPort(EXCEL).dress?.(dress);
  expect([...(fake.sheets[0]?.looks.keys() ?? [])].sort()).toEqual(['B2', 'B3', 'C2', 'C3']);
});

it('stop before a list that is too long for Excel, with a sentence', async () => {
  const fake = fakeExcel({ name: 'Part' });
  const choices = Array.from({ length: 60 }, (_, i) => `word ${i}`);
  await expect(excelPort(EXCEL).dress?.({ ...dress, dropDowns: [{ range: 'B3', choices, words: '' }] })).rejects.toThrow(
    'the words to choose from in B3 are too long for Excel',
  );
  expect(fake.syncs).toBe(1);
});

/** What the user had ruled before: a list with a prompt, and a number with a stop. */
const LIST = {
  rule: { list: { inCellDropDown: true, source: 'steel,brass' } },
  prompt: { showPrompt: true, title: 'Mine', message: 'ours to choose' },
  errorAlert: { showAlert: true, style: 'stop', title: 'No', message: 'not this' },
  ignoreBlanks: false,
};
const NUMBER = { ...LIST, rule: { decimal: { formula1: 0, operator: 'GreaterThan' } } };
const PROMPT = { prompt: { showPrompt: true, title: 'Note', message: 'measured' } };

it.each([
  ['one rule over all of it', ['B3', LIST, 'B4', LIST], 2],
  ['a rule of its own in each cell, and one without', ['B3', LIST, 'B4', NUMBER], 3],
  ['a prompt alone', ['B3', PROMPT, 'B4', PROMPT, 'B5', PROMPT], 2],
  ['nothing', [], 2],
] as const)('give back what could be typed before: %s', async (_, had, syncs) => {
  const rules = new Map<string, Record<string, unknown>>();
  for (let i = 0; i < had.length; i += 2) rules.set(had[i] as string, had[i + 1] as Record<string, unknown>);
  const range = syncs === 3 || had.length !== 4 ? 'B3:B5' : 'B3:B4';
  const before = JSON.stringify([...rules]);
  const fake = fakeExcel({ name: 'Part', rules });
  const takeOff = await excelPort(EXCEL).dress?.({ ...dress, dropDowns: [{ range, choices: ['pan', 'flat'], words: 'Head' }] });
  expect(fake.syncs).toBe(syncs);
  expect(rules.get('B3')?.['rule']).toEqual({ list: { inCellDropDown: true, source: 'pan,flat' } });
  await takeOff?.();
  expect(Object.fromEntries(rules)).toEqual(Object.fromEntries(JSON.parse(before) as [string, object][]));
});
