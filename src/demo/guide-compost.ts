// A compost thermometer: the good region of wall and boss, and its middle. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../sheet/plan';
import { LOADS } from './cautions';
import { guideSheet } from './guide-sheet';
import { at, cell, row, table } from './sheet-rows';
import { variantsSheetOf, variantTable } from './variant-table';

export const TITLE = 'Compost thermometer: the middle of the window';
export const SENTENCE =
  'Sink, floor and engagement leave a small good region of wall and boss; a choice at its edge fails as soon as the ' +
  'moulder holds less, a choice in its middle does not.';

const COMMON = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  length: 16,
  wall: 2.85,
  'boss OD': 6,
  pilot: 2.4,
  'pilot held at': 'mouth',
  'board plane': 7,
  hole: 3.4,
  relief: 0.8,
  ratio: 2.5,
  material: 'ABS',
  board: 1.6,
  'boss height': 13.5,
  'hole depth': 14.4,
  'seat tolerance': 0.1,
  'relief tolerance': 0.1,
  'hole depth tolerance': 0.1,
  face: 'show',
} satisfies Readonly<Record<string, Cell>>;

/** What the moulder holds, ± mm. */
const MOULDED = { 'seat tolerance': 0.2, 'relief tolerance': 0.2, 'hole depth tolerance': 0.2 } as const;
const FIRST = { wall: 2.25, 'boss OD': 7 } as const;
const EDGE = { wall: 3.2 } as const;
const BEYOND = { wall: 3.7 } as const;

const variants = variantTable({
  title: 'Walls and bosses side by side',
  common: COMMON,
  list: [
    ['A  first choice', FIRST],
    ['B  edge of the window', EDGE],
    ['C  the edge, as moulded', { ...EDGE, ...MOULDED }],
    ['D  middle of the window, as moulded', MOULDED],
    ['E  beyond the edge, as moulded', { ...BEYOND, ...MOULDED }],
  ],
  outputs: ['state', 'margin', 'engagement ratio', 'sink ratio', 'floor under hole', 'reason'],
});

// ---- the plane -----------------------------------------------------------------------------------------------------

const INPUTS_TOP = 6;
const NAMES = Object.entries(COMMON);
const JOINT = `A${INPUTS_TOP}:B${INPUTS_TOP + NAMES.length - 1}`;
const BOSS_ODS = [4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8];
const WALLS = [1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 3.75];
const MAP_TOP = 10;
const MAP_BOTTOM = MAP_TOP + WALLS.length;
const typedRow = (rowNumber: number, label: string, values: readonly number[]): PlanCell[] => [
  cell(`D${rowNumber}`, 'label', label),
  ...values.map((value, i) => cell(at(4 + i, rowNumber), 'input', value)),
];

const planeSheet: SheetPlan = {
  name: 'Plane',
  widths: [21, 11, 3, 26, ...WALLS.map(() => 9)],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'The plane of wall and boss'),
    cell(
      'A2',
      'note',
      'One call fills the map: =ENCL.JOINT.MAP(joint, "boss OD", its values, "wall", its values). Every point is the whole joint.',
    ),
    ...row(INPUTS_TOP - 2, ['heading', 'text', 'text', 'heading'], ['The joint', undefined, undefined, 'What is looked at']),
    ...row(INPUTS_TOP - 1, ['header', 'header'], ['input', 'value']),
    ...NAMES.flatMap(([name, value], i) => row(INPUTS_TOP + i, ['label', 'input'], [name, value])),
    ...typedRow(INPUTS_TOP - 1, 'boss OD, mm', BOSS_ODS),
    ...typedRow(INPUTS_TOP, 'wall, mm', WALLS),
    cell(`D${MAP_TOP - 1}`, 'heading', 'State of the joint'),
    ...table(
      3,
      MAP_TOP,
      BOSS_ODS.length + 1,
      `=ENCL.JOINT.MAP(${JOINT},"boss OD",E${INPUTS_TOP - 1}:${at(3 + BOSS_ODS.length, INPUTS_TOP - 1)},` +
        `"wall",E${INPUTS_TOP}:${at(3 + WALLS.length, INPUTS_TOP)})`,
      '0.00',
    ),
    cell(
      `D${MAP_BOTTOM + 2}`,
      'note',
      'Thin walls: the floor under the hole. Thick bosses: sink. Thick walls: a thick seat, and too little thread.',
    ),
    cell(`D${MAP_BOTTOM + 3}`, 'note', 'Slim bosses come up for review: less than 2 d around the screw.'),
  ],
  stateRanges: [`E${MAP_TOP + 1}:${at(3 + BOSS_ODS.length, MAP_BOTTOM)}`],
};

const PLANE = `Plane!${JOINT}`;

// ---- the window ----------------------------------------------------------------------------------------------------

/** Nominal diameter of the screw, mm. */
const D = 2.9;

const MOVED = ['wall', 'boss OD', 'hole depth', 'seat tolerance'];
const WINDOW_TOP = 6;
const SOLVE_TOP = WINDOW_TOP + MOVED.length + 4;
const MOVES_TOP = SOLVE_TOP + 4;

const windowSheet: SheetPlan = {
  name: 'Window',
  widths: [21, 9, 11, 24, 31, 28, 28, 21, 21],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'How far each may move, where it must stand, and what moves the thread'),
    cell('A2', 'note', 'One input moves and the others stay as they are on the sheet Plane. Change a name to ask for another.'),
    ...row(4, ['label', 'input', 'input', 'input', 'input'], ['results wanted', ...MOVED]),
    cell(`A${WINDOW_TOP - 1}`, 'heading', 'Window'),
    ...table(0, WINDOW_TOP, 9, `=ENCL.JOINT.WINDOW(${PLANE},B4:${at(MOVED.length, 4)})`, '0.00'),
    cell(`A${SOLVE_TOP - 1}`, 'heading', 'Where an output has the value that you want'),
    ...row(SOLVE_TOP, ['header', 'header', 'header', 'header'], ['input', 'output', 'wanted', 'input is then']),
    ...row(SOLVE_TOP + 1, ['input', 'input', 'input'], ['wall', 'engagement min', COMMON.ratio * D]),
    cell(`D${SOLVE_TOP + 1}`, 'result', `=ENCL.JOINT.SOLVE(${PLANE},A${SOLVE_TOP + 1},B${SOLVE_TOP + 1},C${SOLVE_TOP + 1})`, '0.000'),
    cell(`A${MOVES_TOP - 1}`, 'heading', 'What moves the full thread at worst case'),
    ...table(0, MOVES_TOP, 7, `=ENCL.JOINT.SENSITIVITY(${PLANE},"engagement min")`, '0.00'),
  ],
};

// ---- the yield -----------------------------------------------------------------------------------------------------

const DRAWN = ['wall', 'boss OD', 'seat tolerance', 'relief tolerance', 'hole depth tolerance', 'common share'] as const;
const SUMMARY = 5;
/** Rows of a simulation with its heading and a free one. */
const BLOCK_ROWS = 25;
const CHOICES: readonly (readonly [label: string, changes: Partial<Record<(typeof DRAWN)[number], number>>])[] = [
  ['C  the edge, as moulded', EDGE],
  ['D  middle of the window, as moulded', {}],
  ['E  beyond the edge, as moulded', BEYOND],
];
const topOf = (choice: number): number => SUMMARY + CHOICES.length + 4 + choice * BLOCK_ROWS;
const changesOf = (choice: number): string => `A${topOf(choice)}:B${topOf(choice) + DRAWN.length - 1}`;
const drawnIn = (choice: number, column: string): string => `${column}${topOf(choice)}:${column}${topOf(choice) + BLOCK_ROWS - 3}`;
const ofAll = (choice: number, column: string): string => `=INDEX(${drawnIn(choice, column)},MATCH("all rules",${drawnIn(choice, 'D')},0))`;
const worst = (choice: number, output: string): string => {
  const top = topOf(choice);
  const last = top + DRAWN.length - 1;
  return `=ENCL.JOINT.VALUE(A${top}:A${last},B${top}:B${last},"${output}",${PLANE})`;
};

const yieldSheet: SheetPlan = {
  name: 'Yield',
  widths: [36, 12, 14, 30, 21, 14, 13, 13, 13],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'How many assemblies are good'),
    cell('A2', 'note', 'Each block draws 20,000 joints within their tolerances. What is not typed here stands on the sheet Plane.'),
    ...row(SUMMARY - 1, ['heading'], ['Worst case beside yield']),
    ...row(
      SUMMARY,
      ['header', 'header', 'header', 'header', 'header', 'header'],
      ['choice', 'worst case', 'margin', 'nearest rule', 'share good', 'ppm outside'],
    ),
    ...CHOICES.flatMap(([label], i) => [
      ...row(SUMMARY + 1 + i, ['label', 'result'], [label, worst(i, 'state')]),
      cell(`C${SUMMARY + 1 + i}`, 'result', worst(i, 'margin'), '0.000'),
      cell(`D${SUMMARY + 1 + i}`, 'result', worst(i, 'margin rule')),
      cell(`E${SUMMARY + 1 + i}`, 'result', ofAll(i, 'E'), '0.0000'),
      cell(`F${SUMMARY + 1 + i}`, 'result', ofAll(i, 'F'), '0'),
    ]),
    ...CHOICES.flatMap(([label, changes], i) => [
      cell(`A${topOf(i) - 1}`, 'heading', label),
      ...DRAWN.flatMap((name, r) => {
        const value = { ...COMMON, ...MOULDED, 'common share': 0.5, ...changes }[name];
        return row(topOf(i) + r, ['label', 'input'], [name, value]);
      }),
      ...table(3, topOf(i), 6, `=ENCL.JOINT.SIMULATE(${changesOf(i)},20000,1,${PLANE})`, '0.0000'),
    ]),
  ],
  stateRanges: [`B${SUMMARY + 1}:B${SUMMARY + CHOICES.length}`],
};

// ---- the guide -----------------------------------------------------------------------------------------------------

const limits = (wall: string, seatTolerance: string, reliefTolerance: string): string =>
  `=ENCL.ENGAGEMENT.LIMITS([length],[screw],0.8*[${wall}]+[board],[${seatTolerance}]+[board tolerance],` +
  `[relief],[${reliefTolerance}],[screw])`;
const holds = (thread: string): string => `=ENCL.CHECK.MIN([${thread}],[ratio required]*ENCL.SCREW.MAJOR([screw]))`;
const rootWall = (od: string): string => `=ENCL.BOSS.WALL([${od}],[pilot],[boss height],[outside draft],[hole draft],[hole depth])`;
const sinkRatio = (rootWallStep: string, wall: string): string =>
  `=2*SQRT(ENCL.BOSS.CIRCLE([${rootWallStep}],[${wall}],0,0,[${wall}]+[boss height]-[hole depth])/[${wall}]-1)`;
const noMark = (ratio: string): string => `=IF([${ratio}]>[sink limit]+0.3,"fail",IF([${ratio}]>1.1*[sink limit],"review","pass"))`;
type StudyStep = readonly [name: string, formula: string, unit: string, note: string];

const sinkSteps = (which: string, od: string, wall: string, says: string): readonly StudyStep[] => [
  [`boss wall at the root, ${which}`, rootWall(od), 'mm', ''],
  [
    `as boss wall ÷ wall, ${which}`,
    sinkRatio(`boss wall at the root, ${which}`, wall),
    '',
    'the hole reaches below the root and takes mass away',
  ],
  [`no sink mark, ${which}`, noMark(`as boss wall ÷ wall, ${which}`), '', says],
];
const floorSteps = (which: string, wall: string, tolerance: string, says: string): readonly StudyStep[] => [
  [`least floor, ${which}`, `=ENCL.HOLE.FLOOR([${wall}],[boss height],[hole depth]+[${tolerance}])`, 'mm', ''],
  [`floor holds, ${which}`, `=ENCL.CHECK.MIN([least floor, ${which}],0.4*[${wall}],[floor limit]*[${wall}])`, '', says],
];
const windowOfWall = (column: number): string => `=INDEX(ENCL.JOINT.WINDOW(${PLANE},"wall"),2,${column})`;

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a thermometer for a compost heap, two halves of ABS with the same wall, one screw in each corner. The ' +
      'front is seen, so sink marks count.',
    'The screw: ST2.9 × 16, already bought. Wall and outside diameter of the boss are free; the seat under the head is 0.8 of the wall.',
    'Required: 2.5 d of full thread at worst case, 0.5 mm free under the tip, a floor of 0.6 of the wall under the hole.',
    'How to read it: this sheet tells the story. Plane has the map, Window how far each size may move, Yield how ' +
      'many are good, Variants the choices in one table.',
  ],
  inputs: [
    ['screw', 'ST2.9', '', ''],
    ['length', 16, 'mm', 'already bought'],
    ['wall, first choice', FIRST.wall, 'mm', 'both halves'],
    ['boss OD, first choice', FIRST['boss OD'], 'mm', '2.4 d'],
    ['wall at the edge', EDGE.wall, 'mm', 'it just passes on paper'],
    ['wall in the middle', COMMON.wall, 'mm', 'half way between the ends of the window'],
    ['boss OD, slimmer', COMMON['boss OD'], 'mm', '2.1 d'],
    ['pilot', COMMON.pilot, 'mm', 'at the mouth'],
    ['board', COMMON.board, 'mm', ''],
    ['board tolerance', 0.16, 'mm', '±, 10 % of the board'],
    ['relief', COMMON.relief, 'mm', 'no thread at the mouth of the pilot'],
    ['ratio required', COMMON.ratio, '', 'full thread at worst case ÷ d'],
    ['boss height', COMMON['boss height'], 'mm', ''],
    ['hole depth', COMMON['hole depth'], 'mm', 'deeper than the boss is high'],
    ['outside draft', 0.5, '°', 'per side'],
    ['hole draft', 0.25, '°', 'per side'],
    ['tolerance on paper', 0.1, 'mm', '± of seat, relief and hole depth'],
    ['tolerance as moulded', MOULDED['seat tolerance'], 'mm', '±, what the moulder holds'],
    ['sink limit', 0.6, '', 'boss wall at the root ÷ wall, ABS (common practice)'],
    ['floor limit', 0.6, '', 'floor ÷ wall (common practice)'],
  ],
  blocks: [
    [
      '1   First choice (variant A): a thin wall and a thick boss',
      [
        ...sinkSteps('first choice', 'boss OD, first choice', 'wall, first choice', 'fails: the boss is nearly as thick as the wall'),
        ...floorSteps('first choice', 'wall, first choice', 'tolerance on paper', 'review: less than 0.6 of the wall'),
      ],
      ['A thin wall saves plastic. Behind it a boss of 2.4 d shows on the front, and the hole leaves little floor.'],
    ],
    [
      '2   The good region: look before you choose',
      [
        ['lowest wall that passes', windowOfWall(8), 'mm', 'below it the floor comes up for review'],
        ['highest wall that passes', windowOfWall(9), 'mm', 'above it the seat takes the thread'],
        ['middle of the window', '=([lowest wall that passes]+[highest wall that passes])/2', 'mm', 'at a boss of 6 mm'],
      ],
      [
        'The sheet Plane has the whole joint at ninety walls and bosses. What passes is a small island: the floor ends ' +
          'it below, sink to the right, engagement above.',
        'The sheet Window has its ends at the present point, and the wall at which the thread just suffices. One input moves ' +
          'there and all others stay; the map shows two at once.',
      ],
    ],
    [
      '3   At the edge (variants B and C): a thick wall, to be sure',
      [
        ['edge: full thread, min, nominal, max, ±rss', limits('wall at the edge', 'tolerance on paper', 'tolerance on paper'), '', 'mm'],
        ['edge holds on paper', holds('edge: full thread, min, nominal, max, ±rss'), '', 'passes, with nothing left'],
        ['edge, moulded: full thread', limits('wall at the edge', 'tolerance as moulded', 'tolerance as moulded'), '', 'mm'],
        ['edge holds as moulded', holds('edge, moulded: full thread'), '', 'fails: 0.2 mm more is gone'],
      ],
      ['A thick wall has no sink, and a thick seat. The thread just suffices, until the moulder says what tolerance the tool holds.'],
    ],
    [
      '4   What is changed (variant D): the middle of the window',
      [
        ['middle, moulded: full thread', limits('wall in the middle', 'tolerance as moulded', 'tolerance as moulded'), '', 'mm'],
        ['middle holds as moulded', holds('middle, moulded: full thread'), '', 'passes'],
        ...sinkSteps('middle', 'boss OD, slimmer', 'wall in the middle', 'passes'),
        ...floorSteps('middle', 'wall in the middle', 'tolerance as moulded', 'passes'),
      ],
      ['Half way between the ends there is room on both sides for what you do not know yet.'],
    ],
    [
      '5   How many are good?',
      [
        ['worst case, edge as moulded', `=Yield!B${SUMMARY + 1}`, '', 'fails'],
        ['outside, edge as moulded', `=Yield!F${SUMMARY + 1}`, 'ppm', 'none among 20,000'],
        ['worst case, middle as moulded', `=Yield!B${SUMMARY + 2}`, '', 'passes'],
        ['outside, middle as moulded', `=Yield!F${SUMMARY + 2}`, 'ppm', ''],
        ['worst case, beyond the edge', `=Yield!B${SUMMARY + 3}`, '', 'fails'],
        ['outside, beyond the edge', `=Yield!F${SUMMARY + 3}`, 'ppm', 'about two in a thousand'],
      ],
      [
        'The worst case asks whether any joint can fail, the yield how many do. The edge fails at worst case and none ' +
          'was drawn that failed: all its tolerances at their ends at once are rare.',
        'The yield counts on sizes about the middle of their limits. A tool off by half its tolerance moves them all, ' +
          'so the middle is still the better choice: it needs no such trust.',
      ],
    ],
  ],
  judge: [
    'Whether the moulder’s sizes lie about the middle of their limits: ask for measured parts and type what the tool holds.',
    'How much the sizes of one tool move together: common share is a guess until it is measured. The sheet Yield has both ends, 0 and 1.',
    'Whether your product may count on a yield at all, or must hold at worst case.',
  ],
  cautions: [LOADS],
});

export const compostGuide: WorkbookPlan = {
  name: 'Compost thermometer',
  sheets: [
    guide,
    planeSheet,
    windowSheet,
    yieldSheet,
    variantsSheetOf(variants, [36, 11, 15, 16, 13, 15, 13, 13, 10, 10, 10, 11, 10, 13, 12, 15, 16, 20, 10]),
  ],
};
