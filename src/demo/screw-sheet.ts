import type { SheetPlan } from '../sheet/plan';
import { cell, table } from './sheet-rows';

export const screwSheet: SheetPlan = {
  name: 'Screw',
  widths: [46, 14, 10, 10, 46, 52, 4, 24],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'What is held about a screw'),
    cell(
      'A2',
      'note',
      'Values come from secondary copies of the standards or from memory, as the last column says. The standard itself governs.',
    ),
    cell('A4', 'label', 'screw'),
    cell('B4', 'input', 'ST2.9'),
    cell('A5', 'label', 'head'),
    cell('B5', 'input', 'ISO 7049'),
    ...table(0, 7, 6, '=ENCL.SCREW.CARD(B4,B5)'),
    cell('H4', 'label', 'standard lengths (mm)'),
    cell('H5', 'result', '=ENCL.SCREW.LENGTHS(B4)'),
  ],
};
