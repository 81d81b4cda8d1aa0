// The demo workbook: a greenhouse humidity logger, an invented scenario of our own.
import type { WorkbookPlan } from '../sheet/plan';
import { checksSheet } from './checks-sheet';
import { jointSheet } from './joint-sheet';
import { readMeSheet } from './read-me-sheet';
import { screwSheet } from './screw-sheet';
import { strengthSheet } from './strength-sheet';
import { toleranceSheet } from './tolerance-sheet';
import { variantsSheet } from './variants-sheet';

export const demoWorkbook: WorkbookPlan = {
  name: 'Greenhouse humidity logger',
  sheets: [readMeSheet, jointSheet, variantsSheet, strengthSheet, toleranceSheet, checksSheet, screwSheet],
};
