// Joints handed over, then changed by one input a row: what the copy must give, and how its answers are judged.
import { WORST_FIRST } from '../../src/core/check/check';
import type { Cell } from '../../src/core/kinds';
import { address } from '../../src/sheet/addresses';
import { sourceOf } from './source-of-plan';
import { handover, type Handover } from '../../src/handover/handover';
import type { TitleBlock } from '../../src/handover/pages/title-block';
import { OUTPUTS } from '../../src/joint/outputs';
import { RULES } from '../../src/joint/rules';
import { INPUTS } from '../../src/joint/inputs';
import { call } from '../../src/registry';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import type { Values } from './worked-out';

export type Changes = Readonly<Record<string, Cell | null>>;

const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
export const near = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(b)) : (a ?? '') === (b ?? '');

const TITLE: TitleBlock = {
  part: 'Joints',
  number: 'J-1',
  revision: 'A',
  date: '2026-11-25',
  status: 'for tooling',
  madeBy: 'M',
  checkedBy: 'C',
};
const handed = (plan: WorkbookPlan): Handover => handover(sourceOf(plan), TITLE);

const NAMES = [...INPUTS.keys()];

export interface Base {
  readonly inputs: Changes;
  /** Which of the outputs that can be numbers are none before anything is changed. */
  readonly without: readonly string[];
}

/** All but the remedy, which is tried on hundreds of joints. */
export const ASKED = OUTPUTS.filter(name => name !== 'remedy');

/** Outputs that are words and truths. */
const NO_NUMBERS = ['weakest', 'all computed', 'state', 'reason', 'reasons', 'margin rule'];

export const numbersOf = ({ without }: Base): number => ASKED.length - NO_NUMBERS.length - without.length;
/** In the order of the outputs. */
export const numberless = ({ without }: Base): string[] => ASKED.filter(name => NO_NUMBERS.includes(name) || without.includes(name));

/** Without load, friction and torques. */
const NO_LOAD = ['load margin', 'strip torque', 'clamp force', 'bearing pressure'];

/** What only a thread in plastic has. */
const IN_PLASTIC = ['pilot hole', 'pilot mouth', 'pilot at tip', 'pilot bottom', 'thread share min', 'strip torque'];

// by hand: without a sleeve no sleeve OD, without a board hole no board play and hold; a machine screw has no pull-out, a countersunk head no bearing ring and no seat shear;
// without a point length no engagement (3), no pilot at the tip and no pull-out; without a seat no recess (5), no post (3), no hole of the head half, no sink of the
// head half, no boss stack (the board plane is left out) and no seat shear

export const BASES: Readonly<Record<string, Base>> = {
  'a seat and a board': {
    without: ['sleeve OD', 'board play', 'board hold', ...NO_LOAD],
    inputs: {
      screw: 'ST2.9',
      head: 'ISO 7049',
      end: 'cone',
      length: 16,
      wall: 2.5,
      'boss OD': 6.4,
      pilot: 2.4,
      hole: 3.4,
      seat: 2.5,
      relief: 0.8,
      material: 'ABS',
      'board plane': 5.5,
      board: 1.6,
      allowance: 0.6,
      'pilot held at': 'mouth',
      'boss height': 14,
      'hole depth': 14.75,
      'bottom gap': 1,
    },
  },
  'defaults where there are any': {
    without: ['sleeve OD', 'board play', 'board hold', 'pull-out', ...NO_LOAD],
    inputs: { screw: 'M3', head: 'pan', material: 'PC', wall: 2.5, 'board plane': 5.5, 'boss height': 14 },
  },
  'a sleeve through the board': {
    without: [],
    inputs: {
      screw: 'ST2.9',
      head: 'ISO 7049',
      material: 'ABS',
      length: 19,
      wall: 2.5,
      hole: 3.4,
      sleeve: 3,
      'board hole': 6.6,
      board: 1.6,
      'board plane': 5.5,
      'boss height': 16,
      'hole tolerance': 0.05,
      'seat tolerance': '+0.1/-0.2',
      'boss OD': 8,
      'length tolerance': '+0.5/-0.8',
      load: 100,
      friction: 0.2,
      'drive torque': 0.3,
      'set torque': 0.8,
      'tool diameter': 5.5,
      'steel gap': 6,
      'ring depth': 0.5,
    },
  },
  'a countersunk head': {
    without: ['bearing ring', 'sleeve OD', 'board play', 'board hold', 'pull-out', 'seat shear', ...NO_LOAD],
    inputs: {
      screw: 'M3',
      head: 'countersunk',
      material: 'ABS',
      wall: 2.5,
      'board plane': 5.5,
      'boss height': 14,
      seat: '3 mm',
      length: 12,
    },
  },
  'an insert': {
    without: [...IN_PLASTIC, 'sleeve OD', 'board play', 'board hold', ...NO_LOAD.filter(name => name !== 'strip torque')],
    inputs: {
      screw: 'M3',
      head: 'pan',
      material: 'ABS',
      length: 10,
      wall: 3,
      'board plane': 5.5,
      seat: 2.5,
      board: 1.6,
      'boss height': 9,
      'insert diameter': 4.6,
      'insert length': 5.7,
      'insert hole': 4,
      'insert below face': 0.05,
      'insert tolerance': '+0.03/-0.1',
    },
  },
  'an insert moulded in, under a sleeve': {
    without: IN_PLASTIC,
    inputs: {
      screw: 'M2.5',
      head: 'pan',
      material: 'PC',
      length: 8,
      wall: 2.5,
      'board plane': 5.5,
      seat: 2,
      sleeve: 1.4,
      'board hole': 5.6,
      board: 1,
      'boss height': 7,
      'hole depth': 6.8,
      'insert diameter': 3.9,
      'insert length': 4,
      load: 100,
      friction: 0.2,
      'drive torque': 0.1,
      'set torque': 0.3,
      'tool diameter': 4.5,
      'steel gap': 6,
    },
  },
  'no point length held': {
    without: [
      'sleeve OD',
      'engagement',
      'engagement min',
      'engagement ratio',
      'pilot at tip',
      'board play',
      'board hold',
      'pull-out',
      ...NO_LOAD,
    ],
    inputs: {
      screw: '#4 AB',
      head: 'pan',
      material: 'ABS',
      length: 15.875,
      wall: 2.5,
      seat: 2.5,
      'board plane': 5.5,
      board: 1.6,
      hole: 3.4,
      pilot: 2.4,
      'pilot held at': 'mouth',
      'boss height': 14,
    },
  },
  'no seat': {
    without: [
      'recess diameter',
      'recess mouth',
      'recess depth',
      'subflush',
      'subflush min',
      'post OD',
      'post OD root',
      'post wall root',
      'hole',
      'sleeve OD',
      'head sink ratio',
      'board play',
      'boss stack',
      'seat shear',
      ...NO_LOAD,
    ],
    inputs: {
      screw: 'ST2.9',
      head: 'ISO 7049',
      material: 'ABS',
      wall: 2.5,
      seat: '0 mm',
      board: 1.6,
      'board hole': 3.4,
      'boss height': 14,
      length: '1/2 in',
    },
  },
};

/** A text with its unit is no number in the copy. */
const UNREAD = '0.1 in';
const NUMBERS: readonly (Cell | null)[] = [null, 0, 0.3, 1, 2.5, 3.1, 13, -1, 'default', 'no such thing', UNREAD];
const WORDS: readonly (Cell | null)[] = [null, 0, 'default', 'no such thing'];
const OF_NAME: Readonly<Record<string, readonly Cell[]>> = {
  screw: ['ST3.5', 'ST2.2', 'ST2.9', 'M4', 'M3', '#4 B'],
  head: ['pan', 'countersunk', 'DIN 7981'],
  material: ['PP', 'ABS'],
  end: ['flat', 'CONE', 'f'],
  'pilot held at': ['mid', 'mouth'],
  face: ['show', 'hidden'],
  'head face': ['show', 'hidden'],
};
/** Standard lengths, one of them the last of its band in inches, as it is typed in mm. */
const LENGTHS: readonly Cell[] = [16, 19.05];
const typedInto = (name: string): readonly (Cell | null)[] =>
  OF_NAME[name] !== undefined ? [...WORDS, ...OF_NAME[name]] : name === 'length' ? [...NUMBERS, ...LENGTHS] : NUMBERS;

export const EDITS: readonly Changes[] = NAMES.flatMap(name => typedInto(name).map((value): Changes => ({ [name]: value })));

/** Rows in one call: it gives at most 20,000 cells. */
const ROWS = Math.floor(20_000 / ASKED.length) - 1;
const OUTPUTS_FROM = 100;
const RESULTS_FROM = 200;

interface Chunk {
  readonly name: string;
  readonly edits: readonly Changes[];
}
const chunks = (edits: readonly Changes[]): readonly Chunk[] =>
  Array.from({ length: Math.ceil(edits.length / ROWS) }, (_, i) => ({
    name: `Joints ${i + 1}`,
    edits: edits.slice(ROWS * i, ROWS * (i + 1)),
  }));

/** What a base does not name takes its default. */
const typed = (base: Changes, edit: Changes, title: string): Cell => (title in edit ? (edit[title] ?? '') : (base[title] ?? 'default'));

function jointSheet(name: string, base: Changes, rows: number): SheetPlan {
  const cells: PlanCell[] = [
    ...NAMES.map((title, c): PlanCell => ({ at: address(0, c), role: 'header', value: title })),
    ...Array.from({ length: rows }).flatMap((_, r) =>
      NAMES.map((title, c): PlanCell => ({ at: address(r + 1, c), role: 'input', value: typed(base, {}, title) })),
    ),
    ...ASKED.map((title, c): PlanCell => ({ at: address(0, OUTPUTS_FROM + c), role: 'input', value: title })),
    {
      at: address(0, RESULTS_FROM),
      role: 'result',
      formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(rows, NAMES.length - 1)},${address(0, OUTPUTS_FROM)}:${address(0, OUTPUTS_FROM + ASKED.length - 1)})`,
    },
  ];
  return { name, widths: [], cells };
}

/** The sheets of the copy that the joint needs, as they were sent: rows all alike, so that each change meets the same formulas. */
export function sentSheets({ inputs }: Base, edits: readonly Changes[]): readonly SheetPlan[] {
  const { plan } = handed({ name: 'Joints', sheets: chunks(edits).map(({ name, edits: some }) => jointSheet(name, inputs, some.length)) });
  return plan.sheets
    .filter(({ name }) => /^(Joints|Variants|Data)/.test(name))
    .map(({ name, cells }) => ({
      name,
      widths: [],
      cells: cells.map(({ at, role, formula, value }): PlanCell => ({
        at,
        role,
        ...(formula === undefined ? {} : { formula }),
        value: value ?? '',
      })),
    }));
}

/** The same with each row's edit typed over it. */
export function editedSheets(sheets: readonly SheetPlan[], edits: readonly Changes[]): readonly SheetPlan[] {
  const over = new Map(
    chunks(edits).flatMap(({ name, edits: some }) =>
      some.flatMap((edit, r) =>
        Object.keys(edit).map(title => [`${name}!${address(r + 1, NAMES.indexOf(title))}`, typed({}, edit, title)] as const),
      ),
    ),
  );
  return sheets.map(sheet => ({
    ...sheet,
    cells: sheet.cells.map(cell => ({ ...cell, value: over.get(`${sheet.name}!${cell.at}`) ?? cell.value ?? '' })),
  }));
}

/** In a cell of the copy a zero is a zero; at home it has its unit, where a blank would be dangerous. */
const atHome = (value: Cell, title: string): Cell =>
  value === 0 && INPUTS.get(title)?.param.blank === 'explicit' ? `0 ${INPUTS.get(title)?.unit ?? ''}` : value;

/** What the function gives for each edit, in the order of ASKED. */
export function expectedRows({ inputs }: Base, edits: readonly Changes[]): readonly (readonly Cell[])[] {
  return chunks(edits).flatMap(({ edits: some }) => {
    const answer = call('JOINT.TABLE', [
      [
        NAMES,
        ...some.map(edit => NAMES.map(title => (title in edit ? atHome(typed(inputs, edit, title), title) : typed(inputs, edit, title)))),
      ],
      [ASKED],
    ]);
    if (!answer.ok) throw new Error(answer.message);
    return (answer.value as Cell[][]).slice(1);
  });
}

/** What the copy gives for each edit. */
export const actualRows = (edits: readonly Changes[], values: Values): readonly (readonly (Cell | undefined)[])[] =>
  chunks(edits).flatMap(({ name, edits: some }) =>
    some.map((_, r) => ASKED.map((__, c) => values.get(`${name}!${address(r + 1, RESULTS_FROM + c)}`))),
  );

export interface Judged {
  /** Numbers and words that are what they must be. Equal refusals are not among them. */
  readonly followed: number;
  /** A number or word at home, and the copy says that it does not know: by the input that was changed. */
  readonly givenUp: Readonly<Record<string, number>>;
  readonly wrong: readonly string[];
}

export const isState = (value: unknown): boolean => (WORST_FIRST as readonly unknown[]).includes(value);
const FORCES: readonly unknown[] = ['pull-out', 'boss tear', 'seat shear'];

const isRule = (value: unknown): boolean => RULES.some(({ name }) => name === value);

/**
 * Whether the function gave an answer, and not a reason why there is none. Sentences with rounded numbers in them are followed
 * nowhere: the copy shows those that were sent until an input is another.
 */
function isAnswer(output: string, value: Cell | undefined): boolean {
  if (output === 'reason' || output === 'reasons') return false;
  return typeof value === 'number' || typeof value === 'boolean' || isState(value) || FORCES.includes(value) || isRule(value);
}

export function judged(
  edits: readonly Changes[],
  expected: readonly (readonly Cell[])[],
  actual: readonly (readonly (Cell | undefined)[])[],
): Judged {
  let followed = 0;
  const givenUp: Record<string, number> = {};
  const wrong: string[] = [];
  const [stateAt, reasonAt, reasonsAt] = [ASKED.indexOf('state'), ASKED.indexOf('reason'), ASKED.indexOf('reasons')] as const;
  edits.forEach((edit, r) => {
    const [must = [], is = []] = [expected[r], actual[r]];
    const [changed = ''] = Object.keys(edit);
    ASKED.forEach((output, c) => {
      if (c === reasonAt || (c === reasonsAt && edit[changed] === UNREAD)) return;
      if (isAnswer(output, must[c]) && near(is[c], must[c])) followed += 1;
      else if (!isRightSentence(output, is[c], must[c]) && !saysSo(output, is[c], must[c]))
        wrong.push(`${JSON.stringify(edit)} ${output}: ${String(is[c])}, not ${String(must[c])}`);
      else if (isAnswer(output, must[c])) givenUp[changed] = (givenUp[changed] ?? 0) + 1;
    });
    // where the state is known, so is the rule that makes it: `sink` of "sink: sink ratio 0.98 is above 0.6"
    const isHeld = near(is[stateAt], must[stateAt]) && is[stateAt] !== 'not checked' && edit[changed] !== UNREAD;
    // the copy picks no length: another rule that fails too stands in the place of that one
    const isOther = edit[changed] !== undefined && String(must[reasonAt]).startsWith('no standard length of ');
    const isOneOf = isOther && String(must[reasonsAt]).includes(`; ${String(is[reasonAt])}:`);
    if (isHeld && String(must[reasonAt]).split(':')[0] !== is[reasonAt] && !isOneOf)
      wrong.push(`${JSON.stringify(edit)} reason: ${String(is[reasonAt])}, not ${String(must[reasonAt])}`);
  });
  return { followed, givenUp, wrong };
}

const isRightSentence = (output: string, actual: Cell | undefined, must: Cell | undefined): boolean =>
  output === 'reasons' && actual === must;

/**
 * A rule that the copy cannot follow is named as not checked, rule by rule and without its why; what it says to fail does. Where
 * nothing is left unchecked, all that fails is said. Of a rule that the function refuses for another input the copy may know more.
 */
function failsAlike(actual: string, must: string): boolean {
  const parts = (text: string): string[] => text.split('; ');
  const failing = (text: string): string[] => parts(text).filter(part => part.includes(': needs '));
  const others = parts(actual).filter(part => !part.includes(': needs ') && !parts(must).includes(part));
  const isWhole = others.length === 0;
  return (
    (must.includes(': not checked') || failing(actual).every(part => parts(must).includes(part))) &&
    others.every(part => part.endsWith(': not checked') || (must.includes(': not checked') && part.startsWith('passes on '))) &&
    (!isWhole || must.includes(': not checked') || failing(actual).length === failing(must).length)
  );
}

/** A value that is not followed is none: it must not look like one. */
function saysSo(output: string, actual: Cell | undefined, must: Cell | undefined): boolean {
  if (output === 'state') return actual === 'not checked';
  if (output === 'reasons') return actual === 'no value' || failsAlike(String(actual), String(must));
  return typeof actual === 'string' && !actual.startsWith('#') && !FORCES.includes(actual) && !isRule(actual);
}
