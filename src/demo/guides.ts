// The nine guides: each a workbook whose first choice fails and another passes, and why.
import type { WorkbookPlan } from '../sheet/plan';
import type { Selection } from '../sheet/port';
import { demoWorkbook } from './demo';
import * as Compost from './guide-compost';
import * as Gauge from './guide-gauge';
import * as Handheld from './guide-handheld';
import * as Hatch from './guide-hatch';
import * as Hive from './guide-hive';
import * as Monitor from './guide-monitor';
import * as Pond from './guide-pond';
import * as Timer from './guide-timer';

export type GuideName =
  'empty' | 'joint' | 'variants' | 'stack' | 'logger' | 'hive' | 'timer' | 'gauge' | 'monitor' | 'hatch' | 'handheld' | 'pond' | 'compost';

export interface Guide {
  /** A short name, for a command or an address. */
  readonly name: GuideName;
  readonly title: string;
  readonly sentence: string;
  readonly workbook: WorkbookPlan;
  /** Where a reader begins. */
  readonly start: Selection;
}

const START: Selection = { sheetName: 'Guide', at: 'A1' };

export const GUIDES: readonly Guide[] = [
  {
    name: 'logger',
    title: 'Greenhouse humidity logger: the honest thread engagement',
    sentence:
      'A screw with 3 d below the board holds with half of that at worst case; the next length holds, the one after it ' +
      'bottoms, and draft, recess and sink follow.',
    workbook: demoWorkbook,
    start: { sheetName: 'Read me', at: 'A1' },
  },
  { name: 'hive', title: Hive.TITLE, sentence: Hive.SENTENCE, workbook: Hive.hiveGuide, start: START },
  { name: 'timer', title: Timer.TITLE, sentence: Timer.SENTENCE, workbook: Timer.timerGuide, start: START },
  { name: 'gauge', title: Gauge.TITLE, sentence: Gauge.SENTENCE, workbook: Gauge.gaugeGuide, start: START },
  { name: 'monitor', title: Monitor.TITLE, sentence: Monitor.SENTENCE, workbook: Monitor.monitorGuide, start: START },
  { name: 'hatch', title: Hatch.TITLE, sentence: Hatch.SENTENCE, workbook: Hatch.hatchGuide, start: START },
  { name: 'handheld', title: Handheld.TITLE, sentence: Handheld.SENTENCE, workbook: Handheld.handheldGuide, start: START },
  { name: 'pond', title: Pond.TITLE, sentence: Pond.SENTENCE, workbook: Pond.pondGuide, start: START },
  { name: 'compost', title: Compost.TITLE, sentence: Compost.SENTENCE, workbook: Compost.compostGuide, start: START },
];
