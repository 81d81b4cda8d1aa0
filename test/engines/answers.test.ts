// Each kind of answer that comes back gives its own lines and no other, whichever program made it and saved it again.
import { beforeAll, describe, expect, it } from 'vitest';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { execFile } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { demoWorkbook } from '../../src/demo/demo';
import { changeLists } from '../../src/handover/compare/change-lists';
import { compare } from '../../src/handover/compare/compare';
import { comparedOf } from '../../src/handover/compare/compared-of';
import type { ComparedWorkbook } from '../../src/handover/compare/seen';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { copyOf } from '../../src/handover/write/copy';
import { readWithRemarks, workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets, writeWorkbook } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import { TITLE } from '../handover/kit';
import { type Answer, answersTo, type Edit } from './answers-kit';
import { FOLDER, PYTHON } from './foreign/inputs';

const EFFECTS = 'what they do';

interface Kind extends Edit {
  /** Without what follows from it. */
  readonly lines: readonly string[];
  /** Lines among what follows from it; without them nothing does. */
  readonly effects?: readonly string[];
}

const EMPTY_ROW = (sheet: string, row: number): string => `Sheet("${sheet}").Rows.insertByIndex(${row - 1}, 1)`;

/** What a wall of 2.8 mm does on the sheet of one joint. */
const WALL_OF_JOINT = [
  'wall of an internal feature, Joint B43: 1.5 -> 1.68',
  'post around the recess, Joint B44: 9.2 -> 9.56',
  'largest circle in the root, Joint B55: 2.78188 -> 3.01535',
  'plastic under the hole, Joint B58: 1.75 -> 2.05',
];

const DEMO: readonly Kind[] = [
  { what: 'nothing', libreoffice: ['REM nothing'], lines: [] },
  {
    what: 'a row inserted',
    libreoffice: [EMPTY_ROW('Joint', 12)],
    lines: ['rows, columns and sheets: Joint, row inserted: 12, blank'],
  },
  {
    what: 'a row inserted and filled',
    libreoffice: [EMPTY_ROW('Joint', 12), 'Cell("Joint", "A12").String = "rib"', 'Cell("Joint", "B12").Value = 1.3'],
    lines: ['rows, columns and sheets: Joint, row inserted: 12: rib | 1.3'],
  },
  {
    what: 'a row deleted',
    libreoffice: ['Sheet("Variants").Rows.removeByIndex(1, 1)'],
    lines: [
      'rows, columns and sheets: Variants, row deleted: 2: One call computes every variant: =ENCL.JOINT.TABLE(inputs, outputs). Change a ' +
        'cell, or type another variant in the rows ',
    ],
  },
  {
    what: 'a row moved',
    libreoffice: [
      EMPTY_ROW('Strength', 20),
      'Sheet("Strength").moveRange(Cell("Strength", "A20").CellAddress, Cell("Strength", "A13:F13").RangeAddress)',
      'Sheet("Strength").Rows.removeByIndex(12, 1)',
    ],
    lines: ['rows, columns and sheets: Strength, row moved: 13 to 19: load | 800 | N | short-term, that tries to pull the lid off'],
  },
  {
    what: 'a column inserted',
    libreoffice: ['Sheet("Variants").Columns.insertByIndex(4, 1)'],
    lines: ['rows, columns and sheets: Variants, column inserted: E: '],
  },
  {
    what: 'a sheet renamed',
    libreoffice: ['Sheet("Joint").Name = "Our joint"'],
    lines: ['rows, columns and sheets: Joint, sheet renamed: now called Our joint'],
  },
  {
    what: 'a value written over',
    libreoffice: ['Cell("Joint", "B10").Value = 2.8'],
    lines: ['changed inputs: wall, Joint B10: 2.5 -> 2.8'],
    effects: WALL_OF_JOINT,
  },
  {
    what: 'an input taken out',
    libreoffice: ['Cell("Joint", "F10").String = ""'],
    lines: ['missing: wall, Joint F10: housing wall'],
  },
  {
    what: 'answers and results',
    libreoffice: [
      'Cell("Handover", "F17").String = "0.6 along, 0.7 across"',
      'Cell("Handover", "H17").String = "agreed"',
      'Cell("Characteristics", "H11").Value = 2.44',
      'Cell("Characteristics", "I11").Value = 2.51',
      'Cell("Characteristics", "N11").String = "cavity 2"',
    ],
    lines: [
      'answers: Shrinkage of the grade along and across the flow, and its range?, Handover F17: 0.6 along, 0.7 across',
      'answers: Shrinkage of the grade along and across the flow, and its range?, Handover H17: agreed',
      'answers: pilot mouth, Characteristics N11: cavity 2',
      'results: pilot mouth',
    ],
  },
  {
    what: 'a comment',
    openpyxl: [`book['Joint']['B10'].comment = Comment('too thin for us', 'moulder')`],
    lines: ['comments: wall, Joint B10: too thin for us'],
  },
  {
    what: 'a colour',
    openpyxl: [`book['Joint']['B12'].fill = PatternFill('solid', fgColor='FF9900')`],
    lines: ['colours: seat, Joint B12: #FF9900'],
  },
  {
    what: 'padded to the last row',
    openpyxl: [`book['Joint'].cell(1048576, 1).font = Font(bold=True)`, `book['Characteristics'].cell(1048576, 14).font = Font(bold=True)`],
    lines: [],
  },
  {
    what: 'a value by openpyxl',
    openpyxl: [`book['Variants']['E6'] = 16`],
    lines: ['changed inputs: length of A  first choice, Variants E6: 13 -> 16'],
    effects: ['state of A  first choice, Variants B22: fail -> review', 'engagement min of A  first choice, Variants C22: 4.34 -> 7.34'],
  },
  {
    what: 'all at once',
    libreoffice: [
      EMPTY_ROW('Joint', 12),
      'Cell("Joint", "B10").Value = 2.8',
      'Cell("Joint", "B22").Value = 2.3',
      'Sheet("Joint").Name = "Our joint"',
      'Cell("Characteristics", "H11").Value = 2.44',
    ],
    lines: [
      'changed inputs: wall, Joint B10: 2.5 -> 2.8',
      'changed inputs: pilot, Joint B21: 2.4 -> 2.3',
      'results: pilot mouth',
      'rows, columns and sheets: Joint, sheet renamed: now called Our joint',
      'rows, columns and sheets: Joint, row inserted: 12, blank',
    ],
    // the pilot moves the circle in the root too
    effects: [...WALL_OF_JOINT.filter(line => !line.includes('B55')), 'thread share of the drawing value, Joint B50: 0.694444 -> 0.833333'],
  },
];

const FOREIGN: readonly Kind[] = [
  { what: 'nothing', libreoffice: ['REM nothing'], lines: [] },
  { what: 'a row inserted', libreoffice: [EMPTY_ROW('Parts', 4)], lines: ['rows, columns and sheets: Parts, row inserted: 4, blank'] },
  {
    what: 'a row deleted',
    libreoffice: ['Sheet("Parts").Rows.removeByIndex(4, 1)'],
    lines: ['rows, columns and sheets: Parts, row deleted: 5: D | 3.4 | 1.45 | 13.5'],
  },
  {
    what: 'a column inserted',
    libreoffice: ['Sheet("Parts").Columns.insertByIndex(3, 1)'],
    lines: ['rows, columns and sheets: Parts, column inserted: D: '],
  },
  {
    what: 'a sheet renamed',
    libreoffice: ['Sheet("Parts").Name = "Screws"'],
    lines: ['rows, columns and sheets: Parts, sheet renamed: now called Screws'],
  },
  {
    what: 'a value written over',
    libreoffice: ['Cell("Parts", "B4").Value = 3.1'],
    lines: ['changed inputs: hole of key C, Parts B4: 3.05 -> 3.1'],
    effects: ['vlookup of key C, Characteristics C5: 6.05 -> 6.1'],
  },
  {
    what: 'a comment and a colour',
    openpyxl: [
      `book['Parts']['C3'].comment = Comment('1.5 please', 'moulder')`,
      `book['Parts']['B3'].fill = PatternFill('solid', fgColor='FF9900')`,
    ],
    lines: ['comments: wall of key B, Parts C3: 1.5 please', 'colours: hole of key B, Parts B3: #FF9900'],
  },
  { what: 'padded to the last row', openpyxl: [`book['Parts'].cell(1048576, 1).font = Font(bold=True)`], lines: [] },
];

const seen = async (bytes: Uint8Array): Promise<ComparedWorkbook> => comparedOf('file', await readWithRemarks(bytes));

interface Found {
  readonly what: string;
  readonly by: string;
  readonly lines: readonly string[];
  readonly effects: readonly string[];
}

function found(sent: ComparedWorkbook, returned: ComparedWorkbook): Pick<Found, 'lines' | 'effects'> {
  const changes = compare(sent, { ...returned, names: new Map() });
  const lists = changeLists(changes);
  return {
    lines: lists
      .filter(({ title }) => title !== EFFECTS)
      .flatMap(({ title, lines }) =>
        lines.map(line => `${title}: ${title === 'results' || title === 'changed formulas' ? (/[^:]*/.exec(line)?.[0] ?? '') : line}`),
      ),
    effects: lists.find(({ title }) => title === EFFECTS)?.lines ?? [],
  };
}

async function xLookups(): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'books-'));
  try {
    await promisify(execFile)(PYTHON, ['-B', join(FOLDER, 'books_xlsxwriter.py'), folder]);
    return new Uint8Array(await readFile(join(folder, 'x-lookups.xlsx')));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

describe.each([
  ['the demo', DEMO, () => writeWorkbook(demoWorkbook), 15],
  ['a workbook of others', FOREIGN, xLookups, 8],
] as const)('%s', (name, kinds, made, floor) => {
  const all: Found[] = [];
  let sent: ComparedWorkbook;
  let answers: readonly Answer[];

  beforeAll(async () => {
    const file = readPackage(await made());
    const copy = await copyOf(file, sourceOfFile(name, workbookIn(file)), TITLE, { write: writeOwnSheets, goesAlong: () => true });
    sent = await seen(copy.bytes);
    answers = await answersTo(copy.bytes, kinds);
    for (const { what, by, bytes } of answers) all.push({ what, by, ...found(sent, await seen(bytes)) });
  });

  it.each(kinds.map(kind => [kind.what, kind] as const))('%s gives its own lines', (what, { lines, effects = [] }) => {
    const these = all.filter(one => one.what === what);
    expect(these).toHaveLength(2);
    for (const one of these) {
      expect([one.by, ...[...one.lines].sort()]).toEqual([one.by, ...[...lines].sort()]);
      expect([one.by, ...effects.filter(line => !one.effects.includes(line))]).toEqual([one.by]);
      expect([one.by, one.effects.length > 0]).toEqual([one.by, effects.length > 0]);
    }
  });

  it('so many kinds were tried', () => {
    expect(new Set(all.map(({ what }) => what)).size).toBeGreaterThanOrEqual(floor);
  });

  it('a fault is noticed: an answer beside the lines of another', () => {
    for (const { what, lines } of kinds)
      for (const other of all.filter(one => one.what !== what && kinds.find(kind => kind.what === one.what)?.lines.join() !== lines.join()))
        expect([...other.lines].sort()).not.toEqual([...lines].sort());
  });
});
