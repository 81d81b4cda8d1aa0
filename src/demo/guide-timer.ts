// A stairwell light timer on mains voltage: how far the metal of a screw reaches. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { SheetPlan, WorkbookPlan } from '../sheet/plan';
import { MAINS } from './cautions';
import { choiceTable } from './choice-table';
import { guideSheet } from './guide-sheet';
import { cell } from './sheet-rows';
import { variantsSheetOf, variantTable } from './variant-table';

export const TITLE = 'Stairwell light timer: a screw head beside copper';
export const SENTENCE =
  'A screw head, shifted by its play, comes too near to live copper; moving the copper keeps the strong screw. The ' +
  'distance is yours, from your standard, reviewed.';

const NO_DISTANCE =
  'The figure of 3 mm in this guide is made up to show the arithmetic. It is no electrical distance and no ' +
  'starting point for one: replace it with yours, or delete it and read not checked.';
const REVIEW =
  'Distances along and through air and insulation come from the standard that applies to your product, worked out ' +
  'and reviewed by a licensed person. Moisture, dirt, altitude and faults are outside this sheet.';
const METAL =
  'A metal screw that can be touched from outside and leads towards live parts is a question for that reviewer, whatever this sheet says.';

/** The copper around the board screws; each row is one choice. */
const HEADS = [
  'board screw',
  'screw',
  'head',
  'hole, max (mm)',
  'shift of the board (mm)',
  'copper from centre (mm)',
  'required (mm)',
  'reach of the metal (mm)',
  'margin (mm)',
  'state',
];
const ROWS: readonly (readonly [label: string, screw: string, holeMm: number, copperMm: number])[] = [
  ['A  first choice', 'M3', 3.5, 5.5],
  ['B  smaller', 'M2.5', 3, 5.5],
  ['C  smaller still', 'M2', 2.5, 5.5],
  ['D  M3, copper moved', 'M3', 3.5, 6.5],
];
const HEAD = 5;

const copperSheet: SheetPlan = {
  name: 'Copper',
  widths: [24, 11, 12, 13, 16, 17, 13, 16, 12, 13],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'Board screws and the copper beside them'),
    cell(
      'A2',
      'note',
      'Reach = half the largest head + half the play of the thinnest screw in the largest hole + shift. ' +
        'Margin = copper − reach − required.',
    ),
    cell('A3', 'caution', NO_DISTANCE),
    ...choiceTable(
      HEAD,
      HEADS,
      6,
      ROWS.map(([label, screw, holeMm, copperMm]) => r => [
        label,
        screw,
        'ISO 7045',
        holeMm,
        0.1,
        copperMm,
        3,
        `=ENCL.BOARD.REACH(B${r}&" "&C${r},D${r},B${r},E${r})`,
        `=ENCL.BOARD.MARGIN(F${r},H${r},G${r})`,
        `=ENCL.CHECK.MIN(F${r}-H${r},G${r})`,
      ]),
      '0.00',
    ),
    cell(
      `A${HEAD + ROWS.length + 2}`,
      'note',
      'C passes on distance and is the weakest of the screws. D keeps the strong screw and asks the board for one millimetre more.',
    ),
  ],
  merged: ['A3:J3'],
  stateRanges: [`J${HEAD + 1}:J${HEAD + ROWS.length}`],
};

const COMMON = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'cone',
  length: 16,
  wall: 3,
  'boss OD': 5.8,
  pilot: 2.45,
  hole: 3.4,
  seat: 2,
  relief: 0.5,
  material: 'PC+ABS',
  'board plane': 6,
  'pilot held at': 'mouth',
  'boss height': 12,
  'hole depth': 12.75,
} satisfies Readonly<Record<string, Cell>>;

const variants = variantTable({
  title: 'Cover screws side by side',
  common: COMMON,
  list: [
    ['A  first choice', {}],
    ['B  shorter', { length: 9.5 }],
    ['C  between them', { length: 13 }],
  ],
  outputs: ['state', 'engagement ratio', 'hole depth needed', 'bottom clearance', 'floor under hole', 'subflush', 'reason'],
});

const reach = (screw: string, hole: string): string => `=ENCL.BOARD.REACH(${screw}&" "&[head],${hole},${screw},[shift])`;
const margin = (copper: string, of: string): string => `=ENCL.BOARD.MARGIN(${copper},${of},[space required])`;
const clear = (copper: string, of: string): string => `=ENCL.CHECK.MIN(${copper}-${of},[space required])`;

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a timer for the light of a stairwell, on mains voltage; two halves of PC+ABS, wall 3 mm, closed by ' +
      'two screws that are recessed and can be touched from outside.',
    'The board: 90 × 55 × 1.6 mm, held by pan-head machine screws ISO 7045 in holes of the medium class, 0.1 mm ' +
      'larger at most. Live copper comes as near as 5.5 mm to a hole centre.',
    'Required: metal of the screw stays clear of live copper by the distance in your standard, after the board ' +
      'has slid as far as it can.',
    'How to read it: each line computes one thing in its cell. The notes speak of the values as they came; Copper ' +
      'has all board screws, Variants the screws of the cover.',
  ],
  inputs: [
    ['space required', 3, 'mm', 'MADE UP, no electrical distance: yours comes from your standard, reviewed'],
    ['copper', 5.5, 'mm', 'hole centre to the nearest live copper'],
    ['copper, moved', 6.5, 'mm', 'the same, after the board was changed'],
    ['head', 'ISO 7045', '', 'pan head; its largest diameter is read from the table'],
    ['shift', 0.1, 'mm', 'position of the hole, as a radius'],
    ['screw', 'M3', '', 'first choice'],
    ['hole', 3.5, 'mm', 'largest: medium class 3.4 and 0.1'],
    ['smaller screw', 'M2.5', '', ''],
    ['smaller hole', 3, 'mm', 'largest: 2.9 and 0.1'],
    ['smallest screw', 'M2', '', ''],
    ['smallest hole', 2.5, 'mm', 'largest: 2.4 and 0.1'],
    ['cover screw', 'ST2.9 cone', '', 'tapping screw with a cone'],
    ['cover screw, long', 16, 'mm', 'the length at hand'],
    ['cover screw, next', 13, 'mm', 'one stock length shorter'],
    ['cover seat', 2, 'mm', 'plastic under its head, ± 0.1'],
    ['cover hole', 12.75, 'mm', 'depth of its blind hole'],
    ['cover hole tolerance', 0.1, 'mm', '±'],
    ['cover boss', 12, 'mm', 'height of its boss above the wall'],
    ['cover wall', 3, 'mm', ''],
    ['seat OD', 6.6, 'mm', 'outside diameter of the support under the board'],
  ],
  blocks: [
    [
      '1   First choice: M3',
      [
        ['largest head', '=ENCL.SCREW.HEAD.DIAMETER([screw],[head])', 'mm', 'ISO 7045, maximum'],
        ['reach of the metal', reach('[screw]', '[hole]'), 'mm', 'half the head, half the play, shift'],
        ['margin', margin('[copper]', '[reach of the metal]'), 'mm', 'negative: too near'],
        ['space is kept', clear('[copper]', '[reach of the metal]'), '', 'fails'],
        ['and without a figure of yours?', '=ENCL.REASON("BOARD.MARGIN",[copper],[reach of the metal],"")'],
      ],
      [
        'The head alone leaves room. But the screw lies to one side of its hole, the hole is not where the drawing has ' +
          'it, and the standard asks for space beyond that.',
      ],
    ],
    [
      '2   A smaller screw',
      [
        ['reach, M2.5', reach('[smaller screw]', '[smaller hole]'), 'mm', ''],
        ['margin, M2.5', margin('[copper]', '[reach, M2.5]'), 'mm', ''],
        ['space is kept, M2.5', clear('[copper]', '[reach, M2.5]'), '', 'still fails'],
        ['reach, M2', reach('[smallest screw]', '[smallest hole]'), 'mm', ''],
        ['margin, M2', margin('[copper]', '[reach, M2]'), 'mm', ''],
        ['space is kept, M2', clear('[copper]', '[reach, M2]'), '', 'passes here, with the weakest screw'],
      ],
      ['One size down is not enough. Two sizes down are, at the price of a screw that is easily overtightened.'],
    ],
    [
      '3   What is changed: the copper moves',
      [
        ['margin, copper moved', margin('[copper, moved]', '[reach of the metal]'), 'mm', 'M3 again'],
        [
          'space is kept, copper moved',
          clear('[copper, moved]', '[reach of the metal]'),
          '',
          'passes against the figure that was typed, and says no more than that',
        ],
        ['reach of the support', '=ENCL.BOARD.REACH([seat OD],[hole],[screw],[shift])', 'mm', 'no copper and no part under it'],
        [
          'area for the board designer, Ø',
          '=ENCL.BOARD.KEEPOUT([screw]&" "&[head])',
          'mm',
          '1.25 × head: a start value for layout, not for voltage',
        ],
      ],
      ['A track is cheaper to move than a screw is to weaken. Tell the board designer the reach before the board is laid out.'],
    ],
    [
      '4   The screws of the cover',
      [
        [
          'room under the tip, long',
          '=ENCL.SCREW.BOTTOM([cover hole],[cover hole tolerance],[cover screw, long],[cover screw],[cover seat],0.1)',
          'mm',
          'negative: it breaks through, or the cover does not close',
        ],
        [
          'room under the tip, next',
          '=ENCL.SCREW.BOTTOM([cover hole],[cover hole tolerance],[cover screw, next],[cover screw],[cover seat],0.1)',
          'mm',
          'stays inside its blind hole',
        ],
        ['plastic under the hole', '=ENCL.HOLE.FLOOR([cover wall],[cover boss],[cover hole])', 'mm', 'between hole and outer face'],
      ],
      [
        'A screw that can be touched from outside must stay in a blind hole. The sheet Variants sizes it: 16 mm bottoms, ' +
          '9.5 mm does not hold, 13 mm does both.',
      ],
    ],
  ],
  judge: [
    'The distance itself, and whether it is met in the real product: the standard, the reviewer and the test house decide, not this sheet.',
    'What else carries metal near copper: washers, a screw that comes loose, a wire end, the tool in the hand of the electrician.',
    'Who installs it: local codes and licensed practice come first.',
  ],
  cautions: [NO_DISTANCE, REVIEW, METAL, MAINS],
});

export const timerGuide: WorkbookPlan = {
  name: 'Stairwell light timer',
  sheets: [guide, copperSheet, variantsSheetOf(variants, [33, 11, 16, 18, 16, 16, 12, 10, 10, 10, 12, 12, 14, 12, 12, 12])],
};
