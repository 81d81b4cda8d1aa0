import type { Cell } from '../core/kinds';
import type { PlanCell, SheetPlan } from '../sheet/plan';
import { at, cell, table } from './build';

const NAMES = ['screw', 'head', 'end', 'length', 'wall', 'boss OD', 'pilot', 'hole', 'seat', 'relief', 'material', 'board plane', 'board', 'allowance', 'pilot held at', 'boss height', 'hole depth', 'bottom gap'] as const;

/** What every variant shares unless it says otherwise. */
const COMMON: Readonly<Record<(typeof NAMES)[number], Cell>> = {
  screw: 'ST2.9', head: 'ISO 7049', end: 'cone', length: 13, wall: 2.5, 'boss OD': 6.4, pilot: 2.4, hole: 3.4, seat: 2.5, relief: 0.8, material: 'ABS', 'board plane': 5.5, board: 1.6, allowance: 0.6,
  'pilot held at': 'mouth', 'boss height': 14, 'hole depth': 14.75, 'bottom gap': 1,
};

const VARIANTS: readonly (readonly [label: string, changes: Partial<Record<(typeof NAMES)[number], Cell>>])[] = [
  ['A  first choice', {}],
  ['B  shorter', { length: 9.5 }],
  ['C  flat end, thin seat, low relief', { end: 'flat', seat: 2, relief: 0.5 }],
  ['D  longer', { length: 16 }],
  ['E  longer still', { length: 19 }],
  ['F  thicker wall, slimmer boss', { length: 16, wall: 3, 'boss OD': 5.6, pilot: 2.46 }],
  ['G  thicker screw', { screw: 'ST3.5', length: 16, 'boss OD': 7.7, pilot: 2.9, hole: 4 }],
  ['H  thinner screw', { screw: 'ST2.2', 'boss OD': 4.4, pilot: 1.8, hole: 2.6 }],
];

/** The reason stands last: it is long and runs on over the free columns. */
const OUTPUTS = ['state', 'engagement min', 'engagement ratio', 'hole depth needed', 'sink ratio', 'reason'] as const;

const HEADER = 5;
/** Blank rows below the variants are left out by the table, so that more can be typed in. */
const SPARE = 4;
const LAST = HEADER + VARIANTS.length + SPARE;
const ASKED = LAST + 3;
const RESULT = ASKED + 1;

function cells(): PlanCell[] {
  const list: PlanCell[] = [
    cell('A1', 'title', 'Screws side by side'),
    cell('A2', 'note', 'One call computes every variant: =ENCL.JOINT.TABLE(inputs, outputs). Change a cell, or type another variant in the rows that are free.'),
    cell(at(0, HEADER - 1), 'heading', 'Variants'),
    cell(at(0, HEADER), 'header', 'variant'),
    ...NAMES.map((name, i) => cell(at(i + 1, HEADER), 'header', name)),
  ];
  VARIANTS.forEach(([label, changes], v) => {
    const values = { ...COMMON, ...changes };
    list.push(cell(at(0, HEADER + 1 + v), 'label', label), ...NAMES.map((name, i) => cell(at(i + 1, HEADER + 1 + v), 'input', values[name])));
  });
  for (let r = HEADER + 1 + VARIANTS.length; r <= LAST; r++) NAMES.forEach((_, i) => list.push(cell(at(i + 1, r), 'input', '')));
  list.push(cell(at(0, ASKED - 1), 'heading', 'Results'), cell(at(0, ASKED), 'label', 'asked (change a name to ask for another)'));
  OUTPUTS.forEach((name, i) => list.push(cell(at(i + 1, ASKED), 'input', name)));
  const inputs = `${at(1, HEADER)}:${at(NAMES.length, LAST)}`;
  const outputs = `${at(1, ASKED)}:${at(OUTPUTS.length, ASKED)}`;
  list.push(...table(1, RESULT, OUTPUTS.length, `=ENCL.JOINT.TABLE(${inputs},${outputs})`, '0.00'));
  for (let v = 0; v < VARIANTS.length + SPARE; v++) {
    const source = at(0, HEADER + 1 + v);
    list.push(cell(at(0, RESULT + 1 + v), 'label', `=IF(${source}="","",${source})`));
  }
  return list;
}

export const variantsSheet: SheetPlan = {
  name: 'Variants',
  widths: [33, 11, 15, 16, 18, 11, 12, 10, 10, 10, 11, 13, 10, 12, 14, 12, 12, 12, 12],
  frozenRows: 1,
  cells: cells(),
  stateRanges: [`${at(1, RESULT + 1)}:${at(1, RESULT + VARIANTS.length + SPARE)}`],
};
