// Joints handed over, then changed by one input a row: what the copy must give, and how its answers are judged.
import { WORST_FIRST } from '../../src/core/check/check';
import type { Cell } from '../../src/core/kinds';
import { address } from '../../src/handover/formula';
import { looksOf, sourceOf } from '../../src/handover/from-plan';
import { handover, type Handover } from '../../src/handover/handover';
import type { TitleBlock } from '../../src/handover/title-block';
import { OUTPUTS } from '../../src/joint/evaluate';
import { INPUTS } from '../../src/joint/inputs';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import type { Values } from './worked-out';

export type Changes = Readonly<Record<string, Cell | null>>;

const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
export const near = (a: unknown, b: unknown): boolean => (typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(b)) : (a ?? '') === (b ?? ''));

const TITLE: TitleBlock = { part: 'Joints', number: 'J-1', revision: 'A', date: '2026-11-25', status: 'for tooling', madeBy: 'M', checkedBy: 'C' };
const handed = (plan: WorkbookPlan): Handover => handover(sourceOf(plan), looksOf(plan), TITLE);

const NAMES = [...INPUTS.keys()];

export interface Base {
  readonly inputs: Changes;
  /** Outputs that are numbers before anything is changed; the others do not apply to this joint, as a reader of its inputs can tell. */
  readonly numbers: number;
}

export const BASES: Readonly<Record<string, Base>> = {
  'a seat and a board': { numbers: 0, inputs: { screw: 'ST2.9', head: 'ISO 7049', end: 'cone', length: 16, wall: 2.5, 'boss OD': 6.4, pilot: 2.4, hole: 3.4, seat: 2.5, relief: 0.8, material: 'ABS', 'board plane': 5.5, board: 1.6, allowance: 0.6, 'pilot held at': 'mouth', 'boss height': 14, 'hole depth': 14.75, 'bottom gap': 1 } },
  'defaults where there are any': { numbers: 0, inputs: { screw: 'M3', head: 'pan', material: 'PC', wall: 2.5, 'board plane': 5.5, 'boss height': 14 } },
  'a sleeve through the board': { numbers: 0, inputs: { screw: 'ST2.9', head: 'ISO 7049', material: 'ABS', length: 19, wall: 2.5, hole: 3.4, sleeve: 3, 'board hole': 6.6, board: 1.6, 'board plane': 5.5, 'boss height': 16, 'hole tolerance': 0.05, 'seat tolerance': '+0.1/-0.2', 'boss OD': 8 } },
  'a countersunk head': { numbers: 0, inputs: { screw: 'M3', head: 'countersunk', material: 'ABS', wall: 2.5, 'board plane': 5.5, 'boss height': 14, seat: '3 mm', length: 12 } },
  'no point length held': { numbers: 0, inputs: { screw: '#4 AB', head: 'pan', material: 'ABS', length: 15.875, wall: 2.5, seat: 2.5, 'board plane': 5.5, board: 1.6, hole: 3.4, pilot: 2.4, 'pilot held at': 'mouth', 'boss height': 14 } },
  'no seat': { numbers: 0, inputs: { screw: 'ST2.9', head: 'ISO 7049', material: 'ABS', wall: 2.5, seat: '0 mm', board: 1.6, hole: 3.4, 'boss height': 14, length: '1/2 in' } },
};

const NUMBERS: readonly (Cell | null)[] = [null, 0, 0.3, 1, 2.5, 3.1, 13, -1, 'default', 'no such thing', '0.1 in'];
const WORDS: readonly (Cell | null)[] = [null, 0, 'default', 'no such thing'];
const OF_NAME: Readonly<Record<string, readonly Cell[]>> = { screw: ['ST3.5', 'ST2.2', 'ST2.9', 'M4', 'M3', '#4 B'], head: ['pan', 'countersunk', 'DIN 7981'], material: ['PP', 'ABS'], end: ['flat', 'CONE', 'f'], 'pilot held at': ['mid', 'mouth'], face: ['show', 'hidden'] };
const typedInto = (name: string): readonly (Cell | null)[] => (OF_NAME[name] === undefined ? NUMBERS : [...WORDS, ...OF_NAME[name]]);

export const EDITS: readonly Changes[] = NAMES.flatMap(name => typedInto(name).map((value): Changes => ({ [name]: value })));

/** Rows in one call: it gives at most 20,000 cells. */
const ROWS = 450;
const CHUNKS = Array.from({ length: Math.ceil(EDITS.length / ROWS) }, (_, i) => ({ name: `Joints ${i + 1}`, edits: EDITS.slice(ROWS * i, ROWS * (i + 1)) }));
const RESULTS_FROM = 120;

/** All rows alike but for the edits. What a base does not name takes its default. */
function jointSheet(name: string, base: Changes, edits: readonly Changes[]): SheetPlan {
  const typed = (edit: Changes, title: string): Cell => (title in edit ? (edit[title] ?? '') : (base[title] ?? 'default'));
  const cells: PlanCell[] = [
    ...NAMES.map((title, c): PlanCell => ({ at: address(0, c), role: 'header', value: title })),
    ...edits.flatMap((edit, r) => NAMES.map((title, c): PlanCell => ({ at: address(r + 1, c), role: 'input', value: typed(edit, title) }))),
    ...OUTPUTS.map((title, c): PlanCell => ({ at: address(0, 60 + c), role: 'input', value: title })),
    { at: address(0, RESULTS_FROM), role: 'result', formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(edits.length, NAMES.length - 1)},${address(0, 60)}:${address(0, 60 + OUTPUTS.length - 1)})` },
  ];
  return { name, widths: [], cells };
}

/** In a cell of the copy a zero is a zero; at home it has its unit, where a blank would be dangerous. */
const atHome = (edit: Changes): Changes => Object.fromEntries(Object.entries(edit).map(([name, value]) => [name, value === 0 && INPUTS.get(name)?.param.blank === 'explicit' ? `0 ${INPUTS.get(name)?.unit ?? ''}` : value]));
const key = (sheet: string, at: string): string => `${sheet}!${at}`;

export interface EditedCopy {
  /** The copy as it was sent, with each row's edit typed over it. */
  readonly sheets: readonly SheetPlan[];
  /** What each row gives at home after its edit. */
  readonly expected: ReadonlyMap<string, Cell>;
  /** What the unchanged joint gives. */
  readonly sent: Readonly<Record<string, Cell>>;
}

export function editedCopy({ inputs }: Base): EditedCopy {
  const sent = handed({ name: 'Joints', sheets: CHUNKS.map(({ name, edits }) => jointSheet(name, inputs, edits.map(() => ({})))) });
  const wanted = handed({ name: 'Joints', sheets: CHUNKS.map(({ name, edits }) => jointSheet(name, inputs, edits.map(atHome))) });
  const typed = new Map<string, Cell | null>(CHUNKS.flatMap(({ name, edits }) => edits.flatMap((edit, r) => Object.entries(edit).map(([title, value]) => [key(name, address(r + 1, NAMES.indexOf(title))), value] as const))));
  const sheets = sent.plan.sheets.filter(({ name }) => /^(Joints|Variants|Data)/.test(name)).map((sheet): SheetPlan => ({
    name: sheet.name,
    widths: [],
    cells: sheet.cells.map(cell => {
      const place = key(sheet.name, cell.at);
      return { at: cell.at, role: cell.role, ...(cell.formula !== undefined ? { formula: cell.formula, value: cell.value ?? '' } : { value: (typed.has(place) ? typed.get(place) : cell.value) ?? '' }) };
    }),
  }));
  const valueAt = (copy: Handover, at: string): Cell => copy.plan.sheets.find(({ name }) => name === 'Joints 1')?.cells.find(cell => cell.at === at)?.value ?? '';
  return {
    sheets,
    expected: new Map(wanted.plan.sheets.flatMap(sheet => sheet.cells.map(({ at, value = '' }) => [key(sheet.name, at), value] as const))),
    sent: Object.fromEntries(OUTPUTS.map((output, c) => [output, valueAt(sent, address(1, RESULTS_FROM + c))])),
  };
}

export interface Judged {
  /** Numbers and states that are what they must be. Equal refusals are not among them. */
  readonly followed: number;
  /** A number or state at home, and the copy says that it does not know: by the input that was changed. */
  readonly givenUp: ReadonlyMap<string, number>;
  readonly wrong: readonly string[];
}

const isState = (value: unknown): boolean => (WORST_FIRST as readonly unknown[]).includes(value);

export function judged({ expected }: EditedCopy, values: Values): Judged {
  let followed = 0;
  const givenUp = new Map<string, number>();
  const wrong: string[] = [];
  for (const { name, edits } of CHUNKS) {
    edits.forEach((edit, r) => {
      const at = (c: number): string => key(name, address(r + 1, RESULTS_FROM + c));
      const stateAt = at(OUTPUTS.indexOf('state'));
      // a text with its unit is no number in the copy: it must say so
      const isRead = !Object.values(edit).includes('0.1 in');
      OUTPUTS.forEach((output, c) => {
        const [actual, must] = [values.get(at(c)), expected.get(at(c))];
        const isValue = typeof must === 'number' || (output === 'state' && isState(must)) || output === 'weakest' || output === 'all computed';
        const told = `${JSON.stringify(edit)} ${output}: ${String(actual)}, not ${String(must)}`;
        if (isValue && near(actual, must)) followed += 1;
        else if (saysSo(output, actual)) {
          const isHeld = output === 'reason' ? isRead && near(values.get(stateAt), expected.get(stateAt)) && values.get(stateAt) !== 'not checked' && actual !== must : false;
          if (isHeld) wrong.push(told);
          else if (isValue) givenUp.set(Object.keys(edit)[0] ?? '', (givenUp.get(Object.keys(edit)[0] ?? '') ?? 0) + 1);
        } else wrong.push(told);
      });
    });
  }
  return { followed, givenUp, wrong };
}

/** A value that is not followed is none: it must not look like one. */
function saysSo(output: string, actual: unknown): boolean {
  if (output === 'state') return actual === 'not checked';
  return typeof actual === 'string' && !FORCES.includes(actual);
}

const FORCES = ['pull-out', 'boss tear', 'seat shear'];
