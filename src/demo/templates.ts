// What a workbook of one's own begins with.
import type { WorkbookPlan } from '../sheet/plan';
import type { Guide } from './guides';
import { jointSheet } from './joint-sheet';
import { toleranceSheet } from './tolerance-sheet';
import { variantsSheet } from './variants-sheet';

const EMPTY: WorkbookPlan = { name: 'New part', sheets: [{ name: 'Sheet1', widths: [], cells: [] }] };

const of = (sheet: typeof jointSheet, name: string): Pick<Guide, 'workbook' | 'start'> => ({
  workbook: { name, sheets: [sheet] },
  start: { sheetName: sheet.name, at: 'A1' },
});

export const TEMPLATES: readonly Guide[] = [
  {
    name: 'empty',
    title: 'Empty workbook',
    sentence: 'A blank sheet: type your formulas, or let the tab Table write a variant table.',
    workbook: EMPTY,
    start: { sheetName: 'Sheet1', at: 'A1' },
  },
  {
    name: 'joint',
    title: 'Single joint',
    sentence: 'One screw joint, from head to tip, with every check: type your values over the blue cells.',
    ...of(jointSheet, 'Single joint'),
  },
  {
    name: 'variants',
    title: 'Variant table',
    sentence: 'One row a variant, side by side, with state and reason: type your values over the blue cells.',
    ...of(variantsSheet, 'Variant table'),
  },
  {
    name: 'stack',
    title: 'Tolerance stack',
    sentence: 'Worst case and root sum square of a chain: type your values over the blue cells.',
    ...of(toleranceSheet, 'Tolerance stack'),
  },
];
