import type { Cell } from '../core/kinds';
import type { SheetPlan } from '../sheet/plan';
import { variantsSheetOf, variantTable } from './variant-table';

const COMMON = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'cone',
  length: 13,
  wall: 2.5,
  'boss OD': 6.4,
  pilot: 2.4,
  hole: 3.2,
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
  face: 'show',
} satisfies Readonly<Record<string, Cell>>;

const VARIANTS: readonly (readonly [label: string, changes: Partial<Record<keyof typeof COMMON, Cell>>])[] = [
  ['A  first choice', {}],
  ['B  shorter', { length: 9.5 }],
  ['C  flat end, thin seat, low relief', { end: 'flat', seat: 2, relief: 0.5 }],
  ['D  longer', { length: 16 }],
  ['E  longer still', { length: 19 }],
  ['F  thicker wall, slimmer boss', { length: 16, wall: 3, 'boss OD': 5.8, pilot: 2.46 }],
  ['G  thicker screw', { screw: 'ST3.5', length: 16, 'boss OD': 7.7, pilot: 2.9, hole: 3.8 }],
  ['H  thinner screw', { screw: 'ST2.2', 'boss OD': 4.5, pilot: 1.8, hole: 2.6 }],
];

const variants = variantTable({
  title: 'Screws side by side',
  common: COMMON,
  list: VARIANTS,
  outputs: ['state', 'engagement min', 'engagement ratio', 'hole depth needed', 'sink ratio', 'reason'],
});

export const variantsSheet: SheetPlan = variantsSheetOf(
  variants,
  [33, 11, 15, 16, 18, 11, 12, 10, 10, 10, 11, 13, 10, 12, 14, 12, 12, 12, 12, 12],
);
