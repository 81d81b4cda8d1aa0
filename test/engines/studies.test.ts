// A workbook with the five studies handed over, then one cell that they read changed and all worked out anew by two programs:
// whatever was worked out from that cell says so, and all else stands as it was sent.
import { beforeAll, describe, expect, it } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { handover } from '../../src/handover/handover';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { address } from '../../src/sheet/addresses';
import { sheetNamed, TITLE, type Typed, workbookOf } from '../handover/kit';
import { DEMO } from '../kit/study';
import { type Files, savedAgain, valuesOf, type Values } from './harness';

const NAMES = Object.entries(DEMO);
const LAST = NAMES.length;
const JOINT = `A1:B${LAST}`;
const BASE = 'D1:E3';

/** A study from row to row, in the columns from J on; those below it are its cells. */
const STUDIES = {
  map: { at: 'J20', call: `=ENCL.JOINT.MAP(${JOINT},F1,G1:G3,F2,H1:H3,F3,${BASE})`, shows: ['J21', 'J22', 'K20', 'K21', 'M23'] },
  bars: { at: 'J40', call: `=ENCL.JOINT.SENSITIVITY(${JOINT},F4,${BASE})`, shows: ['J41', 'L41', 'P42'] },
  window: { at: 'J60', call: `=ENCL.JOINT.WINDOW(${JOINT},G5:G6,${BASE})`, shows: ['J61', 'M61', 'O62'] },
  yield: { at: 'J70', call: `=ENCL.JOINT.SIMULATE(${JOINT},F7,F8,${BASE})`, shows: ['J71', 'K71', 'N75'] },
  solved: { at: 'J100', call: `=ENCL.JOINT.SOLVE(${JOINT},F9,F10,F11,${BASE})`, shows: ['J100'] },
} as const;
type Study = keyof typeof STUDIES;
const ALL = Object.keys(STUDIES) as Study[];

const CELLS: Record<string, Typed> = {
  ...Object.fromEntries(
    NAMES.flatMap(([name, value], row) => [
      [address(row, 0), name],
      [address(row, 1), value],
    ]),
  ),
  ...{ D1: 'hole tolerance', E1: 0.1, D2: 'seat tolerance', E2: '0.1 mm' },
  ...{ F1: 'boss OD', G1: 5.5, G2: 6, G3: '=G2+0.5', F2: 'wall', H1: 2, H2: '2.5 mm', H3: '=3.1-0.1', F3: 'state' },
  ...{ F4: 'engagement min', G5: 'seat', G6: 'wall', F7: 1000, F8: 1, F9: 'seat', F10: 'engagement min', F11: 7 },
  ...Object.fromEntries(ALL.map(study => [STUDIES[study].at, STUDIES[study].call])),
};

/** A cell, what is typed over it, and the studies that read it. */
type Change = readonly [at: string, value: Cell, felt: readonly Study[]];
const otherThan = (value: string | number): Cell => (typeof value === 'number' ? value + 0.25 : value === 'mouth' ? 'tip' : 'other');
const CHANGES: readonly Change[] = [
  ...NAMES.map(([, value], row): Change => [address(row, 1), otherThan(value), ALL]),
  ['A4', 'walls', ALL],
  ['D1', 'wall tolerance', ALL],
  ['E1', 0.15, ALL],
  ['E2', '0.15 mm', ALL],
  // the row of the base that was left free
  ['D3', 'relief tolerance', ALL],
  ['E3', 0.2, ALL],
  ...['G1', 'G2', 'G3'].map((at): Change => [at, 5.75, ['map']]),
  ...['H1', 'H2', 'H3'].map((at): Change => [at, 2.25, ['map']]),
  ['F1', 'pilot', ['map']],
  ['F2', 'seat', ['map']],
  ['F3', 'margin', ['map']],
  ['F4', 'penetration max', ['bars']],
  ['G5', 'board plane', ['window']],
  ['G6', 'relief', ['window']],
  ['F7', 2000, ['yield']],
  ['F8', 2, ['yield']],
  ['F9', 'relief', ['solved']],
  ['F10', 'penetration max', ['solved']],
  ['F11', 7.2, ['solved']],
];

const copy = handover(workbookOf(CELLS), TITLE, { pngOf: () => new Uint8Array([1]) });
const sheets = copy.plan.sheets.map(sheet => ({ ...sheet, pictures: [] }));
/** The cells that speak beside the pictures, the map's and that of the bars. */
const BESIDE = sheetNamed(copy, 'Figure').cells.flatMap(({ at, value }) => (value === 'as drawn' ? [at] : []));

const withChange = ([at, value]: Change): typeof sheets =>
  sheets.map(sheet =>
    sheet.name === 'S'
      ? { ...sheet, cells: [...sheet.cells.filter(cell => cell.at !== at), { at, role: 'input' as const, value }] }
      : sheet,
  );
const AS_SENT = 'as sent';

let saved: { readonly libreoffice: Files; readonly gnumeric: Files };
beforeAll(async () => {
  const files = new Map<string, Uint8Array>([[AS_SENT, await writeWorkbook({ name: 'Studies', sheets })]]);
  for (const change of CHANGES) files.set(change[0], await writeWorkbook({ name: 'Studies', sheets: withChange(change) }));
  saved = await savedAgain(files, 'anew');
});

/** What says that its inputs were changed. */
const stale = (values: Values, study: Study): boolean[] =>
  STUDIES[study].shows.map(at => ['inputs changed', 'not checked'].includes(String(values.get(`S!${at}`))));
const beside = (values: Values): unknown[] => BESIDE.map(at => values.get(`Figure!${at}`));

describe.each(['libreoffice', 'gnumeric'] as const)('%s', engine => {
  const valuesAt = async (name: string): Promise<Values> => valuesOf(saved[engine].get(name) ?? new Uint8Array());

  it('shows what was sent', async () => {
    const values = await valuesAt(AS_SENT);
    expect(beside(values)).toEqual(['as drawn', 'as drawn']);
    for (const study of ALL) {
      expect(stale(values, study)).toEqual(STUDIES[study].shows.map(() => false));
      for (const at of STUDIES[study].shows) expect(values.get(`S!${at}`), at).toBeDefined();
    }
  });

  it.each(CHANGES)('%s changed to %s', async (at, _, felt) => {
    const values = await valuesAt(at);
    for (const study of ALL) expect(stale(values, study), study).toEqual(STUDIES[study].shows.map(() => felt.includes(study)));
    expect(beside(values)).toEqual((['map', 'bars'] as const).map(study => (felt.includes(study) ? 'inputs changed' : 'as drawn')));
  });
});

it('every value that a study reads was changed', () => expect(CHANGES.length).toBeGreaterThanOrEqual(LAST + 23));
