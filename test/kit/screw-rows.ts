// Every size with every head at one length, every size with every length at one head: once in one table, once in single calls;
// handed over, and one input of each row changed.
import type { Cell } from '../../src/core/kinds';
import { standardLengthsMm } from '../../src/core/screw/length';
import { parseSize } from '../../src/core/screw/size';
import { screwOf } from '../../src/core/screw/thread';
import { address } from '../../src/sheet/addresses';
import { sourceOf } from './source-of-plan';
import { handover } from '../../src/handover/handover';
import type { TitleBlock } from '../../src/handover/pages/title-block';
import { call } from '../../src/registry';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import { ASME_B1_1_UNIFIED_THREADS_2A } from '../../src/standards/asme-b1-1-unified-threads-2a';
import { ASME_B18_6_3_TYPE_AB_THREADS } from '../../src/standards/asme-b18-6-3-type-ab-threads';
import { ASME_B18_6_3_TYPE_B_THREADS } from '../../src/standards/asme-b18-6-3-type-b-threads';
import { ISO_1478_TAPPING_SCREW_THREADS } from '../../src/standards/iso1478-tapping-screw-threads';
import { ISO_965_2_METRIC_THREADS_6G } from '../../src/standards/iso965-2-metric-threads-6g';
import { isState, near } from './joint-edits';
import type { Values } from './worked-out';

interface Family {
  readonly sizes: readonly string[];
  readonly heads: readonly string[];
}

const named = ({ rows }: { readonly rows: readonly (readonly [string, ...unknown[]])[] }, end = ''): string[] =>
  rows.map(([row]) => `${row}${end}`);
const INCH_HEADS = ['pan', 'slotted pan', 'fillister', 'round', 'countersunk', 'oval'];
export const FAMILIES: readonly Family[] = [
  {
    sizes: named(ISO_965_2_METRIC_THREADS_6G),
    heads: [
      'ISO 7045',
      'ISO 1580',
      'ISO 14583',
      'ISO 1207',
      'ISO 4762',
      'ISO 7380-1',
      'ISO 7046-1',
      'ISO 7046-2',
      'ISO 2009',
      'ISO 10642',
      'DIN 7991',
      'ISO 7047',
    ],
  },
  { sizes: named(ISO_1478_TAPPING_SCREW_THREADS), heads: ['ISO 7049', 'ISO 14585', 'DIN 7981', 'ISO 7050', 'ISO 7051'] },
  { sizes: named(ASME_B1_1_UNIFIED_THREADS_2A), heads: INCH_HEADS },
  { sizes: named(ASME_B18_6_3_TYPE_AB_THREADS, ' AB'), heads: INCH_HEADS },
  { sizes: named(ASME_B18_6_3_TYPE_B_THREADS, ' B'), heads: INCH_HEADS },
];

export type Row = Readonly<Record<(typeof INPUTS)[number], Cell>>;
const INPUTS = ['screw', 'head', 'length', 'hole', 'wall', 'board plane', 'boss height', 'board', 'material', 'pilot'] as const;

const lengthsOf = (screw: string): readonly number[] => standardLengthsMm(parseSize(screw));
const isHeld = (screw: string, head: string): boolean =>
  ['SCREW.HEAD.DIAMETER', 'SCREW.HEAD.HEIGHT'].some(id => call(id, [screw, head]).ok);

function rowOf(screw: string, head: string, length: number): Row {
  const { nominalMm } = screwOf(parseSize(screw));
  return {
    screw,
    head,
    length,
    hole: nominalMm + 0.5,
    wall: 2.5,
    'board plane': 6 + nominalMm,
    'boss height': length + 2,
    board: 1.6,
    material: 'ABS',
    pilot: 0.8 * nominalMm,
  };
}

/** The first length that goes through seat and board with two diameters to spare. */
const usualLength = (screw: string): number =>
  lengthsOf(screw).find(length => length > 8 + 3 * screwOf(parseSize(screw)).nominalMm) ?? lengthsOf(screw)[0] ?? 0;

export const EVERY_HEAD: readonly Row[] = FAMILIES.flatMap(({ sizes, heads }) =>
  sizes.flatMap(screw => heads.filter(head => isHeld(screw, head)).map(head => rowOf(screw, head, usualLength(screw)))),
);
export const EVERY_LENGTH: readonly Row[] = FAMILIES.flatMap(({ sizes, heads: [head = ''] }) =>
  sizes.filter(screw => isHeld(screw, head)).flatMap(screw => lengthsOf(screw).map(length => rowOf(screw, head, length))),
);

const OUTPUTS = [
  'state',
  'recess diameter',
  'recess depth',
  'subflush',
  'grip',
  'penetration max',
  'engagement min',
  'engagement ratio',
  'bottom clearance',
  'pilot at tip',
  'boss OD',
  'boss wall root',
  'landing ring',
  'pull-out',
  'boss mass',
];

/** Single calls of a row, by the cells of its inputs. */
const CALLS: readonly (readonly [
  id: string,
  args: (row: Row) => readonly unknown[],
  formula: (cell: (input: (typeof INPUTS)[number]) => string) => string,
  pick?: number,
])[] = [
  ['SCREW.MAJOR', row => [row.screw], at => `ENCL.SCREW.MAJOR(${at('screw')})`],
  ['SCREW.ROOT', row => [row.screw], at => `ENCL.SCREW.ROOT(${at('screw')})`],
  ['SCREW.PITCH', row => [row.screw], at => `ENCL.SCREW.PITCH(${at('screw')})`],
  ['SCREW.POINT', row => [row.screw], at => `ENCL.SCREW.POINT(${at('screw')})`],
  ['SCREW.HEAD.DIAMETER', row => [row.screw, row.head], at => `ENCL.SCREW.HEAD.DIAMETER(${at('screw')},${at('head')})`],
  ['SCREW.HEAD.HEIGHT', row => [row.screw, row.head], at => `ENCL.SCREW.HEAD.HEIGHT(${at('screw')},${at('head')})`],
  ['HOLE.CLEARANCE', row => [row.screw], at => `ENCL.HOLE.CLEARANCE(${at('screw')})`],
  ['HOLE.PILOT', row => [row.screw, 0.7], at => `ENCL.HOLE.PILOT(${at('screw')},0.7)`],
  ['SCREW.LENGTH.TOL', row => [row.screw, row.length], at => `INDEX(ENCL.SCREW.LENGTH.TOL(${at('screw')},${at('length')}),1,2)`, 1],
  ['RECESS.DIAMETER', row => [`${row.screw} ${row.head}`, 0.6], at => `ENCL.RECESS.DIAMETER(${at('screw')}&" "&${at('head')},0.6)`],
  [
    'ENGAGEMENT.LIMITS',
    row => [row.length, `${row.screw} cone`, row['board plane'], 0.1, 0.5, 0.1, 2],
    at => `INDEX(ENCL.ENGAGEMENT.LIMITS(${at('length')},${at('screw')}&" cone",${at('board plane')},0.1,0.5,0.1,2),1,1)`,
    0,
  ],
  ['PULLOUT', row => [row.screw, 5, 40], at => `ENCL.PULLOUT(${at('screw')},5,40)`],
  ['BOSS.OD.RULE', row => [row.screw, 2], at => `ENCL.BOSS.OD.RULE(${at('screw')},2)`],
];

const SHEET = 'Screws';
const CALLS_FROM = INPUTS.length + 1;
const OUTPUTS_FROM = CALLS_FROM + CALLS.length + 1;
const TABLE_FROM = OUTPUTS_FROM + OUTPUTS.length + 1;
const TITLE: TitleBlock = {
  part: 'Screws',
  number: 'S-1',
  revision: 'A',
  date: '2026-11-25',
  status: 'for tooling',
  madeBy: 'M',
  checkedBy: 'C',
};

export type Calls = readonly string[];
export const EVERY_CALL: Calls = CALLS.map(([id]) => id);
/** The others do not read the length. */
export const CALLS_OF_LENGTH: Calls = ['SCREW.LENGTH.TOL', 'ENGAGEMENT.LIMITS'];

/** The copy of a sheet with these rows and single calls. */
export function copyOf(rows: readonly Row[], calls: Calls): readonly SheetPlan[] {
  const cells: PlanCell[] = [
    ...INPUTS.map((title, c): PlanCell => ({ at: address(0, c), role: 'header', value: title })),
    ...OUTPUTS.map((title, c): PlanCell => ({ at: address(0, OUTPUTS_FROM + c), role: 'input', value: title })),
    ...rows.flatMap((row, r): PlanCell[] => [
      ...INPUTS.map((title, c): PlanCell => ({ at: address(r + 1, c), role: 'input', value: row[title] })),
      ...CALLS.flatMap(([id, , formula], c): PlanCell[] =>
        !calls.includes(id)
          ? []
          : [
              {
                at: address(r + 1, CALLS_FROM + c),
                role: 'result',
                formula: `=${formula(input => address(r + 1, INPUTS.indexOf(input)))}`,
              },
            ],
      ),
    ]),
    {
      at: address(0, TABLE_FROM),
      role: 'result',
      formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(rows.length, INPUTS.length - 1)},${address(0, OUTPUTS_FROM)}:${address(0, OUTPUTS_FROM + OUTPUTS.length - 1)})`,
    },
  ];
  const plan = { name: 'Screws', sheets: [{ name: SHEET, widths: [], cells }] };
  const copy = handover(sourceOf(plan), TITLE);
  return copy.plan.sheets
    .filter(({ name }) => /^(Screws|Variants|Steps|Data)/.test(name))
    .map(({ name, cells: list }) => ({
      name,
      widths: [],
      cells: list.map(({ at, role, formula, value }): PlanCell => ({
        at,
        role,
        ...(formula === undefined ? {} : { formula }),
        value: value ?? '',
      })),
    }));
}

export const typedOver = (sheets: readonly SheetPlan[], rows: readonly Row[]): readonly SheetPlan[] => {
  const over = new Map(rows.flatMap((row, r) => INPUTS.map((title, c) => [address(r + 1, c), row[title]] as const)));
  return sheets.map(sheet =>
    sheet.name === SHEET
      ? { ...sheet, cells: sheet.cells.map(cell => ({ ...cell, value: over.get(cell.at) ?? cell.value ?? '' })) }
      : sheet,
  );
};

/** One input of each row is another one, each in its turn. */
export const changed = (rows: readonly Row[]): readonly Row[] =>
  rows.map((row, i): Row => {
    const family = FAMILIES.find(({ sizes }) => sizes.includes(String(row.screw)));
    const after = <T>(list: readonly T[], item: T): T => list[list.indexOf(item) + 1] ?? (list[list.indexOf(item) - 1] as T);
    switch (i % 8) {
      case 0:
        return { ...row, length: after(lengthsOf(String(row.screw)), Number(row.length)) };
      case 1:
        return { ...row, screw: after(family?.sizes ?? [], String(row.screw)) };
      case 2:
        return { ...row, wall: 2.8 };
      case 3:
        return { ...row, 'board plane': Number(row['board plane']) + 0.4 };
      case 4:
        return { ...row, hole: Number(row.hole) + 0.2 };
      case 5:
        return { ...row, 'boss height': Number(row['boss height']) - 1.5 };
      case 6:
        return { ...row, board: 2 };
      default:
        return { ...row, pilot: Number(row.pilot) + 0.05 };
    }
  });

/** Numbers and states of a row: of 15 outputs and so many calls all but four; a screw without point length or pull-out has fewer. Pinned. */
export const leastEqual = (calls: Calls): number => 11 + calls.length;
/** A change of the screw or of its length is not followed in every family, a change of a number is. Pinned. */
export const LEAST_FOLLOWED = 0.85;

export interface Compared {
  /** Numbers and states that are equal. */
  readonly equal: number;
  /** The function has one, the copy says that it does not know. */
  readonly givenUp: number;
  readonly wrong: readonly string[];
}

export function compare(rows: readonly Row[], calls: Calls, values: Values): Compared {
  let equal = 0;
  let givenUp = 0;
  const wrong: string[] = [];
  const judge = (what: string, row: Row, must: Cell | undefined, at: string): void => {
    const is = values.get(`${SHEET}!${at}`);
    const isAnswer = typeof must === 'number' || isState(must);
    if (isAnswer && near(is, must)) equal += 1;
    else if (typeof is === 'number' || (isState(is) && is !== 'not checked'))
      wrong.push(`${what} of ${Object.values(row).join(' ')}: ${String(is)}, not ${String(must)}`);
    else if (isAnswer) givenUp += 1;
  };
  const table = call('JOINT.TABLE', [[[...INPUTS], ...rows.map(row => INPUTS.map(title => row[title]))], [OUTPUTS]]);
  if (!table.ok) throw new Error(table.message);
  rows.forEach((row, r) => {
    OUTPUTS.forEach((output, c) => judge(output, row, (table.value as Cell[][])[r + 1]?.[c], address(r + 1, TABLE_FROM + c)));
    CALLS.forEach(([id, args, , pick], c) => {
      if (!calls.includes(id)) return;
      const answer = call(id, args(row));
      const value = !answer.ok ? undefined : Array.isArray(answer.value) ? answer.value[0]?.[pick ?? 0] : answer.value;
      judge(id, row, value, address(r + 1, CALLS_FROM + c));
    });
  });
  return { equal, givenUp, wrong };
}
