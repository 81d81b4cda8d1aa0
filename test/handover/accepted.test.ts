// An answer goes into the cell that was meant, wherever it stands in the sender's workbook by now, or nowhere.
import { beforeAll, describe, expect, it } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { compare } from '../../src/handover/compare/compare';
import { comparedOf } from '../../src/handover/compare/compared-of';
import { ownPlaces, type OwnPlaces } from '../../src/handover/compare/own-place';
import type { ChangedInput } from '../../src/handover/compare/returned-changes';
import type { ComparedWorkbook, SeenCell } from '../../src/handover/compare/seen';
import { accepted } from '../../src/handover/write/accepted';
import { workbookIn } from '../../src/hosts/xlsx/read';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { readPackage, type UserPackage } from '../../src/package/read';
import { address, cellPosition } from '../../src/sheet/addresses';
import { sourceOf } from '../kit/source-of-plan';
import { handed, sheetOf } from './kit';

type Rows = readonly (readonly (Cell | null)[])[];
type Book = Readonly<Record<string, Rows>>;

const JOINT: Rows = [
  ['variant', 'screw', 'head', 'length', 'wall', 'board plane', 'boss height', 'hole', 'material', 'boss OD'],
  ['A', 'ST2.9', 'pan', 16, 3, 5.5, 14, 3.4, 'ABS', 5.6],
  ['B', 'ST2.9', 'pan', 9.5, 2.5, 5.5, 14, 3.4, 'ABS', 6.4],
  ['C', 'ST3.5', 'pan', 16, 3, 5.5, 14, 4, 'ABS', 7.7],
  [],
  ['=ENCL.JOINT.TABLE(A1:J4,{"variant","state","engagement min"})'],
];
const RIBS: Rows = [
  ['where', 'kind', 'height', 'root'],
  ['left', 'rib', 8, '1.2 mm'],
  ['right', 'rib', 8, '1.2 mm'],
  ['left', 'gusset', 5, 1],
  [],
  [null, null, 4.5],
  [null, null, '=ENCL.BOSS.OD(C6,1)'],
];
const SENDER: Book = { Joint: JOINT, Ribs: RIBS };

const source = (book: Book): ComparedWorkbook => ({
  name: 'Mine',
  sheets: Object.entries(book).map(([name, rows]) =>
    sheetOf(
      name,
      Object.fromEntries(rows.flatMap((row, r) => row.flatMap((value, c) => (value === null ? [] : [[address(r, c), value]])))),
    ),
  ),
});

const fileOf = async (book: Book): Promise<UserPackage> =>
  readPackage(
    await writeWorkbook({
      name: 'Mine',
      sheets: source(book).sheets.map(({ name, cells }) => ({
        name,
        widths: [],
        cells: [...cells].map(([at, { value, formula }]) =>
          formula === undefined ? { at, role: 'input', value: value ?? '' } : { at, role: 'result', formula, value: 0 },
        ),
      })),
    }),
  );

const sent: ComparedWorkbook = sourceOf(handed(source(SENDER)).plan);

/** A value, or a cell with what its format makes of it. */
type Answers = Readonly<Record<string, Cell | SeenCell>>;

/** What came back with another value at each place. */
function answered(answers: Answers): readonly ChangedInput[] {
  const sheets = sent.sheets.map(sheet => ({
    ...sheet,
    cells: new Map([
      ...sheet.cells,
      ...Object.entries(answers).flatMap(([place, value]) => {
        const [name, at = ''] = place.split('!');
        return name === sheet.name ? [[at, typeof value === 'object' ? value : { value }] as const] : [];
      }),
    ]),
  }));
  return compare(sent, { ...sent, sheets }).changedInputs;
}

/** Cells that differ from before, and what was said and asked. */
async function taken(
  now: Book,
  answers: Answers,
  places?: OwnPlaces,
): Promise<{ readonly cells: Readonly<Record<string, unknown>>; readonly lines: readonly string[]; readonly asked: readonly string[] }> {
  const file = await fileOf(now);
  const asked: string[] = [];
  const { bytes, lines } = await accepted(
    file,
    answered(answers),
    places ?? ownPlaces(sent, comparedOf('Mine', workbookIn(file))),
    question => {
      asked.push(question);
      return Promise.resolve(true);
    },
  );
  const before = new Map(file.sheets.flatMap(({ name, cells }) => cells.map(({ at, value }) => [`${name}!${at}`, value] as const)));
  const cells = Object.fromEntries(
    readPackage(bytes).sheets.flatMap(({ name, cells: all }) =>
      all.flatMap(({ at, value }) => (before.get(`${name}!${at}`) === value ? [] : [[`${name}!${at}`, value]])),
    ),
  );
  return { cells, lines, asked };
}

const withRow = (rows: Rows, at: number, row: Rows[number] = []): Rows => [...rows.slice(0, at), row, ...rows.slice(at)];
const withColumn = (rows: Rows, at: number): Rows => rows.map(row => [...row.slice(0, at), null, ...row.slice(at)]);
const without = (rows: Rows, at: number): Rows => rows.filter((_, r) => r !== at);
const put = (rows: Rows, at: string, value: Cell): Rows => rows.map((row, r) => row.map((old, c) => (address(r, c) === at ? value : old)));

const WALL_OF_B = { 'Joint!E3': 2.2 };

describe('an answer is found', () => {
  const MOVED: readonly (readonly [what: string, now: Book, landed: string])[] = [
    ['where it was sent', SENDER, 'Joint!E3'],
    ['below a row that was inserted', { ...SENDER, Joint: withRow(JOINT, 1) }, 'Joint!E4'],
    ['below a variant that was added', { ...SENDER, Joint: withRow(JOINT, 2, ['N', ...(JOINT[1] ?? []).slice(1)]) }, 'Joint!E4'],
    ['below a title', { ...SENDER, Joint: withRow(withRow(JOINT, 0), 0, ['Lid of the logger']) }, 'Joint!E5'],
    ['above a row that is gone', { ...SENDER, Joint: without(JOINT, 1) }, 'Joint!E2'],
    ['behind a column that was inserted', { ...SENDER, Joint: withColumn(JOINT, 3) }, 'Joint!F3'],
    ['where rows were sorted anew', { ...SENDER, Joint: [0, 3, 2, 1, 4, 5].map(r => JOINT[r] ?? []) }, 'Joint!E3'],
    ['in a row that was moved', { ...SENDER, Joint: [0, 1, 3, 2, 4, 5].map(r => JOINT[r] ?? []) }, 'Joint!E4'],
    ['on a sheet with another name', { Lid: JOINT, Ribs: RIBS }, 'Lid!E3'],
    ['where sheets were put in another order', { Ribs: RIBS, Joint: JOINT }, 'Joint!E3'],
    ['on a sheet with another name, below a row and behind a column', { Lid: withColumn(withRow(JOINT, 1), 1), Ribs: RIBS }, 'Lid!F4'],
  ];

  it.each(MOVED)('%s', async (_, now, landed) => {
    const { cells, asked } = await taken(now, WALL_OF_B);
    expect(cells).toEqual({ [landed]: 2.2 });
    const place = landed.replace('!', ' ');
    expect(asked).toEqual([`wall of variant B, Joint E3: 2.5 -> 2.2${place === 'Joint E3' ? '' : `; there it is ${place}`}?`]);
  });

  it('and each of several', async () => {
    const { cells } = await taken(
      { Joint: withRow(JOINT, 1), Walls: withColumn(RIBS, 0) },
      { 'Joint!E2': 2.8, 'Joint!D4': 13, 'Ribs!D4': 1.1 },
    );
    expect(cells).toEqual({ 'Joint!E3': 2.8, 'Joint!D5': 13, 'Walls!E4': 1.1 });
  });

  it('as the number that a share stands for', async () => {
    const { cells } = await taken(SENDER, { 'Joint!E3': { value: 0.006, said: '0.6 %', isDate: false } });
    expect(cells).toEqual({ 'Joint!E3': 0.006 });
  });

  it('with what stands there by now', async () => {
    const { cells, asked } = await taken({ ...SENDER, Joint: put(JOINT, 'E3', 2.4) }, WALL_OF_B);
    expect(asked).toEqual(['wall of variant B, Joint E3: 2.5 -> 2.2; now it is 2.4?']);
    expect(cells).toEqual({ 'Joint!E3': 2.2 });
  });
});

describe('an answer is refused in a sentence', () => {
  const REFUSED: readonly (readonly [what: string, now: Book, answer: Answers, why: RegExp])[] = [
    ['where its row is gone', { ...SENDER, Joint: without(JOINT, 2) }, WALL_OF_B, /its row or column is not there any more$/],
    ['where its sheet is gone', { Ribs: RIBS }, WALL_OF_B, /there is no such sheet$/],
    ['where another name stands before it', { ...SENDER, Joint: put(JOINT, 'A3', 'Z') }, WALL_OF_B, /E3, is called wall of variant Z$/],
    ['where another heading stands above it', { ...SENDER, Joint: put(JOINT, 'E1', 'rib') }, WALL_OF_B, /E3, is called rib of variant B$/],
    ['where a formula stands', { ...SENDER, Joint: put(JOINT, 'E3', '=1+1') }, WALL_OF_B, /there stands a formula$/],
    ['where two sheets have what it had', { Lid: JOINT, Base: JOINT, Ribs: RIBS }, WALL_OF_B, /more than one cell there could be meant$/],
    [
      'where fewer cells are called so, and its row is another',
      { ...SENDER, Ribs: without(put(RIBS, 'C2', 7), 3) },
      { 'Ribs!C2': 9 },
      /more than one cell there could be meant$/,
    ],
    ['where nothing names it and its row is another', { ...SENDER, Ribs: put(RIBS, 'C6', 4.6) }, { 'Ribs!C6': 5 }, /could be meant$/],
    ['where nothing was sent and nothing names it', SENDER, { 'Ribs!C20': 5 }, /nothing names it$/],
    [
      'where a program took it for a date',
      SENDER,
      { 'Joint!E3': { value: 46114, said: '2026-04-02', isDate: true } },
      /2[.]5 -> 2026-04-02: it became a date; type in what was meant$/,
    ],
    ['on a sheet that the hand-over added', SENDER, { 'Data!H1': 5 }, /there is no such sheet$/],
  ];

  it.each(REFUSED)('%s', async (_, now, answer, why) => {
    const { cells, lines, asked } = await taken(now, answer);
    expect([cells, asked]).toEqual([{}, []]);
    expect(lines).toEqual([expect.stringMatching(why)]);
    expect(lines[0]).toMatch(/^not taken over: /);
  });
});

describe('a fault is noticed:', () => {
  let byAddress: OwnPlaces;
  beforeAll(() => {
    byAddress = place => place;
  });

  it('an answer that goes to the address it was sent from', async () => {
    const { cells } = await taken({ ...SENDER, Joint: withRow(JOINT, 1) }, WALL_OF_B, byAddress);
    expect(cells).toEqual({ 'Joint!E3': 2.2 });
    expect(cells).not.toEqual({ 'Joint!E4': 2.2 });
  });

  it('every answer is one that was found by the comparison', () => {
    for (const answer of [WALL_OF_B, { 'Ribs!C2': 9 }, { 'Ribs!C6': 5 }]) {
      expect(answered(answer).map(({ sheet, at }) => `${sheet}!${at}`)).toEqual(Object.keys(answer));
      expect(cellPosition(Object.keys(answer)[0]?.split('!')[1] ?? '').row).toBeGreaterThan(0);
    }
  });
});
