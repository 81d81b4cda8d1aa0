import type { Cell } from '../core/kinds';
import type { PlanCell, Role, SheetPlan } from '../sheet/plan';
import { cell, row, table } from './sheet-rows';

/** Seat of the lid, board and boss against the rim of the lower half. */
const LINKS: readonly (readonly [label: string, value: number, tolerance: Cell, sign: number, note: string])[] = [
  ['boss: floor to face', 14, '=ENCL.TOL.MOULDED(B6,"DIN 16742-TG6","same")', 1, '± by DIN 16742 TG6, one mould half'],
  ['board', 1.6, 0.16, 1, '± 10 %, as board makers state it'],
  ['lid: rim plane to seat', 4.5, '=ENCL.TOL.IT(B8,"IT12")/2', 1, 'agreed with the moulder: half the width of ISO 286-1 IT12'],
  ['rim: floor to rim plane', 19.6, '=ENCL.TOL.MOULDED(B9,"DIN 16742-TG6","same")', -1, '± by DIN 16742 TG6, one mould half'],
];

const FIRST = 6;
const LAST = FIRST + LINKS.length - 1;
const LIMITS = LAST + 2;
const RESULTS = LIMITS + 4;
const TABLE = RESULTS + 9;
const SIMULATION = TABLE + LINKS.length + 6;

const range = (column: string): string => `${column}${FIRST}:${column}${LAST}`;
const [LABELS, VALUES, TOLERANCES, SIGNS] = ['A', 'B', 'C', 'D'].map(range);
const LOWER = `B${LIMITS}`;
const UPPER = `B${LIMITS + 1}`;

const LINK: readonly Role[] = ['label', 'input', 'input', 'input', 'unit', 'note'];
const HEADER: readonly Role[] = ['header', 'header', 'header', 'header', 'header', 'header'];
const RESULT: readonly Role[] = ['label', 'result', 'result', 'result', 'unit', 'note'];

/** The same of the three methods, in B, C and D. */
const each = (formula: (column: string) => string): string[] => ['B', 'C', 'D'].map(formula);

function cells(): PlanCell[] {
  const half = RESULTS + 2;
  return [
    cell('A1', 'title', 'A stack: the gap at the rim'),
    cell(
      'A2',
      'note',
      'Seat of the lid, board and boss touch; the rim must not touch before them, or the boss hangs in tension. Gap = ' +
        'boss + board + lid − rim.',
    ),
    cell(
      'A3',
      'caution',
      'Root sum square and simulation assume independent dimensions. Those moulded in one tool are not: boss and rim of ' +
        'one half shrink together; add them linearly.',
    ),
    ...row(FIRST - 1, HEADER, ['link', 'value', 'tolerance ±', 'sensitivity', '', 'note']),
    ...LINKS.flatMap(([label, value, tolerance, sign, note], i) =>
      row(
        FIRST + i,
        [...LINK.slice(0, 2), typeof tolerance === 'string' ? 'result' : 'input', ...LINK.slice(3)],
        [label, value, tolerance, sign, 'mm', note],
        '0.000',
      ),
    ),
    ...row(LIMITS, LINK, ['least gap', 0.05, undefined, undefined, 'mm', 'the rim stays open']),
    ...row(LIMITS + 1, LINK, ['largest gap', 1, undefined, undefined, 'mm', 'hidden by the lip']),
    ...row(RESULTS, HEADER, ['Three methods side by side', 'worst case', 'root sum square', 'modified', '', 'note']),
    ...row(
      RESULTS + 1,
      RESULT,
      ['nominal gap', ...each(() => `=ENCL.STACK.NOMINAL(${VALUES},${SIGNS})`), 'mm', 'the sum of value × sensitivity'],
      '0.000',
    ),
    ...row(
      half,
      RESULT,
      [
        'half width ±',
        ...['WORST', 'RSS', 'MODIFIED'].map(method => `=ENCL.STACK.${method}(${TOLERANCES},${SIGNS})`),
        'mm',
        'worst case is never below modified, modified never below root sum square',
      ],
      '0.000',
    ),
    ...row(half + 1, RESULT, ['smallest gap', ...each(column => `=${column}${RESULTS + 1}-${column}${half}`), 'mm', undefined], '0.000'),
    ...row(half + 2, RESULT, ['largest gap', ...each(column => `=${column}${RESULTS + 1}+${column}${half}`), 'mm', undefined], '0.000'),
    ...row(half + 3, RESULT, [
      'within the limits',
      ...each(column => `=IF(${column}${half + 1}<${LOWER},"fail",IF(${column}${half + 2}>${UPPER},"fail","pass"))`),
      undefined,
      'the same parts fail at worst case and pass as a root sum square',
    ]),
    ...row(TABLE - 1, ['heading'], ['The whole stack in one call']),
    ...table(0, TABLE, 8, `=ENCL.STACK.TABLE(${LABELS},${VALUES},${TOLERANCES},${SIGNS})`, '0.000'),
    ...row(
      SIMULATION - 1,
      ['heading', 'text', 'text', 'text', 'heading'],
      ['Drawn 100,000 times, beside the worst case', undefined, undefined, undefined, 'Worst case'],
    ),
    ...table(0, SIMULATION, 3, `=ENCL.STACK.SIMULATE(${VALUES},${TOLERANCES},${SIGNS},${LOWER},${UPPER})`, '0.0000'),
    ...row(
      SIMULATION,
      ['text', 'text', 'text', 'text', 'header', 'header'],
      [undefined, undefined, undefined, undefined, 'gap (mm)', 'note'],
    ),
    ...row(
      SIMULATION + 1,
      ['text', 'text', 'text', 'text', 'result', 'note'],
      [undefined, undefined, undefined, undefined, `=B${half + 1}`, 'smallest at worst case, below every draw that is likely'],
      '0.000',
    ),
    ...row(
      SIMULATION + 2,
      ['text', 'text', 'text', 'text', 'result', 'note'],
      [undefined, undefined, undefined, undefined, `=B${half + 2}`, 'largest at worst case'],
      '0.000',
    ),
    cell(
      `A${SIMULATION + 8}`,
      'note',
      'Normal draws, ± taken as 3 standard deviations; the same seed gives the same digits everywhere. A table of ' +
        'another tolerance group can be given to TOL.MOULDED as a range.',
    ),
  ];
}

export const toleranceSheet: SheetPlan = {
  name: 'Tolerance',
  widths: [33, 14, 19, 19, 14, 24, 24, 22],
  frozenRows: 1,
  cells: cells(),
  merged: ['A3:H3'],
  stateRanges: [`B${RESULTS + 5}:D${RESULTS + 5}`],
};
