import type { PlanCell, SheetPlan } from '../sheet/plan';
import { cell } from './build';

const WHAT = [
  'A small logger for a greenhouse: two alkaline cells, a board 68 × 44 × 1.6 mm, a housing in two halves of ABS. The scenario is invented.',
  'The lid (head half) carries the recess for the screw head; its seat presses on the board. The boss of the lower half (thread half) carries the thread.',
  'Joint: the inputs of one joint, then every step with one function a line, in the order in which it is drawn.',
  'Variants: several screws side by side through one JOINT.TABLE. Change a screw, a length or a wall and read state and reason.',
  'Strength: what thread, boss and seat hold, strip and set torque, clamp force, a pressed pin. Estimates, each called so.',
  'Tolerance: one stack at worst case, as a root sum square and drawn 100,000 times, with tolerances looked up.',
  'Checks: every rule of one joint with value, limit and a remedy that was tried; what a function says about a call.',
  'Screw: everything that is held about one screw and its head, each value with its standard and how it is held.',
  'Type =ENCL. in any cell to see all functions. A length may be typed with its unit: "0.167 in + 0.25 mm".',
];

const LEGEND = [
  ['input', 'Cells with this background are yours to change.'],
  ['result', 'Cells like this are computed.'],
] as const;

const STATES = [
  ['pass', 'the rule is met'],
  ['look', 'to be reviewed: a rule of the trade is touched, people decide'],
  ['fail', 'the rule is broken'],
  ['not checked', 'an input is missing or refused; never read it as a pass'],
] as const;

const CAUTIONS = [
  'A sizing aid for trained people. It replaces neither a qualified engineer nor the review of the moulder; build and test every joint.',
  'Strength, torque and mass are estimates from values of the resin family, not of your grade, age, weld line or climate.',
  'Mains or other hazardous voltage: no electrical distance is supplied here. Take it from the standard that applies and have it reviewed by licensed people; follow local codes.',
  'Batteries: swelling, heat and venting are not modelled. Check the deepest reach of the screw tip against the cells. Button cells: rules on child access may apply.',
  'Loads, lifting, pressure, vehicles, life safety: not covered. Plastics creep and crack under screws over time.',
  'Values of standards come from secondary copies or from memory, as said beside each; the standard itself and your own drawing govern.',
  'A blank input means not checked. Results hold for the inputs, units and versions shown.',
];

function cells(): PlanCell[] {
  const list: PlanCell[] = [cell('A1', 'title', 'Greenhouse humidity logger: the screw joint')];
  let row = 3;
  const heading = (text: string): void => {
    list.push(cell(`A${row}`, 'heading', text));
    row += 1;
  };
  heading('What this is');
  for (const text of WHAT) list.push(cell(`A${row++}`, 'text', text));
  row += 1;
  heading('How to read it');
  for (const [role, text] of LEGEND) list.push(cell(`A${row}`, role, role), cell(`B${row++}`, 'text', text));
  for (const [state, text] of STATES) list.push(cell(`A${row}`, 'text', state), cell(`B${row++}`, 'text', text));
  row += 1;
  heading('Cautions');
  for (const text of CAUTIONS) list.push(cell(`A${row++}`, 'caution', text));
  row += 1;
  list.push(cell(`A${row}`, 'label', 'Version'), cell(`B${row}`, 'result', '=ENCL.VERSION()'));
  return list;
}

const list = cells();
const rowOf = (address: string): number => Number(address.slice(1));
const wide = list.filter(({ at, role }) => at.startsWith('A') && (role === 'text' || role === 'caution') && !STATES.some(([state]) => list.find(c => c.at === at)?.value === state));
const stateRows = list.filter(({ value }) => STATES.some(([state]) => state === value)).map(({ at }) => rowOf(at));

export const readMeSheet: SheetPlan = {
  name: 'Read me',
  widths: [16, 110],
  cells: list,
  merged: wide.map(({ at }) => `${at}:B${rowOf(at)}`),
  stateRanges: [`A${Math.min(...stateRows)}:A${Math.max(...stateRows)}`],
};
