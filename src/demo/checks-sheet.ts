import type { Cell } from '../core/kinds';
import type { PlanCell, Role, SheetPlan } from '../sheet/plan';
import { cell, row, table } from './sheet-rows';

/** The first choice of the sheet Variants. */
const INPUTS: readonly (readonly [name: string, value: Cell, unit: string])[] = [
  ['screw', 'ST2.9', ''],
  ['head', 'ISO 7049', ''],
  ['end', 'cone', ''],
  ['length', 13, 'mm'],
  ['material', 'ABS', ''],
  ['wall', 2.5, 'mm'],
  ['board plane', 5.5, 'mm'],
  ['seat', 2.5, 'mm'],
  ['board', 1.6, 'mm'],
  ['hole', 3.2, 'mm'],
  ['allowance', 0.6, 'mm'],
  ['relief', 0.8, 'mm'],
  ['pilot', 2.4, 'mm'],
  ['pilot held at', 'mouth', ''],
  ['boss OD', 6.4, 'mm'],
  ['boss height', 14, 'mm'],
  ['hole depth', 14.75, 'mm'],
  ['bottom gap', 1, 'mm'],
  ['face', 'show', ''],
];

const FIRST = 5;
const LAST = FIRST + INPUTS.length - 1;
const VARIANT = `A${FIRST}:B${LAST}`;
const place = (name: string): string => `B${FIRST + INPUTS.findIndex(([input]) => input === name)}`;

/** Rows that the two tables take, with their header and some to spare: a sleeve, a load or a torque brings more rules. */
const JOINT = LAST + 3;
const JOINT_ROWS = 19;
const BOSS = JOINT + JOINT_ROWS + 2;
const BOSS_ROWS = 11;
const SINGLE = BOSS + BOSS_ROWS + 2;

const SINGLE_CHECKS: readonly (readonly [label: string, formula: string, note: string])[] = [
  ['relief depth, at least 0.5', `=ENCL.CHECK.MIN(${place('relief')},0.5)`, 'a limit downwards'],
  [
    'slenderness, 3 to review, 5 to fail',
    `=ENCL.CHECK.MAX(${place('boss height')}/${place('boss OD')},5,3)`,
    'pass up to review, review up to the limit, fail above',
  ],
  [
    'core pin, 7 to review, 10 to fail',
    `=ENCL.CHECK.MAX(${place('hole depth')}/${place('pilot')},10,7)`,
    'hole depth ÷ pilot: every ratio says of what to what',
  ],
  ['a cell that is still blank', `=ENCL.CHECK.MIN(C${FIRST},0.5)`, 'a blank is never a pass'],
];

const WORDS: readonly (readonly [label: string, formula: string])[] = [
  ['REASON: why a call is refused', '=ENCL.REASON("BOSS.OD","three",1.2)'],
  ['REASON: a call that is not', `=ENCL.REASON("BOSS.OD",${place('pilot')},2)`],
  ['WORKING: the numbers put in', `=ENCL.WORKING("ENGAGEMENT",${place('length')},4.1,${place('relief')},2.6)`],
  ['ABOUT: formula', '=ENCL.ABOUT("ENGAGEMENT","formula")'],
  ['ABOUT: limits', '=ENCL.ABOUT("ENGAGEMENT","limits")'],
  ['ABOUT: source', '=ENCL.ABOUT("HOLE.CLEARANCE","source")'],
];

const HEADER: readonly Role[] = ['header', 'header', 'header'];
const FIRST_SINGLE = SINGLE + 2;
const LAST_SINGLE = FIRST_SINGLE + SINGLE_CHECKS.length - 1;
const FIRST_WORD = LAST_SINGLE + 5;

function cells(): PlanCell[] {
  return [
    cell('A1', 'title', 'Checks: rule, value, limit, remedy'),
    cell(
      'A2',
      'note',
      'One call checks a whole joint. A remedy is a change of one input or of two that was tried and passes; where none does, it says so.',
    ),
    ...row(FIRST - 1, HEADER, ['One variant', 'value', 'unit']),
    ...INPUTS.flatMap(([name, value, unit], i) =>
      row(FIRST + i, ['label', 'input', 'unit'], [name, value, unit === '' ? undefined : unit]),
    ),
    ...row(JOINT - 1, ['heading'], ['The whole joint']),
    ...table(0, JOINT, 7, `=ENCL.CHECK.JOINT(${VARIANT})`, '0.000'),
    ...row(BOSS - 1, ['heading'], ['The boss, with the rules that contradict each other at ordinary sizes']),
    ...table(0, BOSS, 7, `=ENCL.CHECK.BOSS(${VARIANT})`, '0.000'),
    ...row(SINGLE, ['heading'], ['Single values']),
    ...row(SINGLE + 1, ['header', 'header', 'header', 'header'], ['check', 'state', '', 'note']),
    ...SINGLE_CHECKS.flatMap(([label, formula, note], i) =>
      row(FIRST_SINGLE + i, ['label', 'result', 'text', 'note'], [label, formula, undefined, note]),
    ),
    ...row(
      LAST_SINGLE + 1,
      ['label', 'result', 'text', 'note'],
      ['worst of them', `=ENCL.CHECK.WORST(B${FIRST_SINGLE}:B${LAST_SINGLE})`, undefined, 'fail, then not checked, then review, then pass'],
    ),
    ...row(FIRST_WORD - 1, ['heading'], ['What a function says about a call']),
    ...WORDS.flatMap(([label, formula], i) => row(FIRST_WORD + i, ['label', 'result'], [label, formula])),
  ];
}

export const checksSheet: SheetPlan = {
  name: 'Checks',
  widths: [33, 12, 11, 84, 12, 34, 84],
  frozenRows: 1,
  cells: cells(),
  merged: WORDS.map((_, i) => `B${FIRST_WORD + i}:G${FIRST_WORD + i}`),
  stateRanges: [
    `E${JOINT + 1}:E${JOINT + JOINT_ROWS - 1}`,
    `E${BOSS + 1}:E${BOSS + BOSS_ROWS - 1}`,
    `B${FIRST_SINGLE}:B${LAST_SINGLE + 1}`,
  ],
};
