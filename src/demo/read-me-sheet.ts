import type { PlanCell, SheetPlan } from '../sheet/plan';
import { cell } from './sheet-rows';
import { AID, BATTERIES, BLANK, ESTIMATES, LOADS, MAINS, VALUES } from './cautions';

const WHAT = [
  'A small logger for a greenhouse: two alkaline cells, a board 68 × 44 × 1.6 mm, a housing in two halves of ABS. ' +
    'The scenario is invented.',
  'The lid (head half) carries the recess for the screw head; its seat presses on the board. The boss of the lower ' +
    'half (thread half) carries the thread.',
  'Joint: the inputs of one joint, then every step with one function per line, in the order in which it is drawn.',
  'Variants: several screws side by side through one JOINT.TABLE. Change a screw, a length or a wall and read state and reason.',
  'Strength: what thread, boss and seat hold, strip and set torque, clamp force, a pressed pin. Estimates, and marked as such.',
  'Tolerance: one stack at worst case, as a root sum square, and simulated 100,000 times, with tolerances from tables.',
  'Checks: every rule of one joint with value, limit and a remedy that was tried; how a function explains a call.',
  'Screw: the data for one screw and its head, each value with its standard and where it comes from.',
  'Type =ENCL. in any cell to see all functions. A length may be typed with its unit: "0.167 in + 0.25 mm".',
];

/** What happens on the sheet Variants. */
const STORY = [
  [
    'A',
    'The first choice: three screw diameters below the board look like plenty; relief, point and tolerances leave ' +
      'half of that at worst case.',
  ],
  [
    'D',
    'The next stock length: enough thread at worst case, but the boss is thick for its wall and its sink may show. A person must decide.',
  ],
  ['E', 'One length more: the screw bottoms, and the lid would not close.'],
  ['F', 'The longer screw, a thicker wall and a slimmer boss. Every rule passes.'],
] as const;

const LEGEND = [
  ['input', 'Cells with this background are yours to change.'],
  ['result', 'Cells like this are computed.'],
] as const;

const STATES = [
  ['pass', 'the rule is met'],
  ['review', 'close to a limit: a person must decide'],
  ['fail', 'the rule is broken'],
  ['not checked', 'an input is missing or refused; never take it as a pass'],
] as const;

const CAUTIONS = [AID, ESTIMATES, MAINS, BATTERIES, LOADS, VALUES, BLANK];

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
  heading('The story, on the sheet Variants');
  for (const [variant, text] of STORY) list.push(cell(`A${row}`, 'label', `variant ${variant}`), cell(`B${row++}`, 'text', text));
  row += 1;
  heading('Cautions');
  for (const text of CAUTIONS) list.push(cell(`A${row++}`, 'caution', text));
  row += 1;
  list.push(cell(`A${row}`, 'label', 'Version'), cell(`B${row}`, 'result', '=ENCL.VERSION()'));
  return list;
}

const list = cells();
const rowOf = (address: string): number => Number(address.slice(1));
const wide = list.filter(
  ({ at, role }) =>
    at.startsWith('A') &&
    (role === 'text' || role === 'caution') &&
    !STATES.some(([state]) => list.find(c => c.at === at)?.value === state),
);
const stateRows = list.filter(({ value }) => STATES.some(([state]) => state === value)).map(({ at }) => rowOf(at));

export const readMeSheet: SheetPlan = {
  name: 'Read me',
  widths: [16, 110],
  cells: list,
  merged: wide.map(({ at }) => `${at}:B${rowOf(at)}`),
  stateRanges: [`A${Math.min(...stateRows)}:A${Math.max(...stateRows)}`],
};
