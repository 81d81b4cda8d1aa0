// A hand-held field meter with thick corners, and a screw that stands in no table. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { WorkbookPlan } from '../sheet/plan';
import { LOADS } from './cautions';
import { guideSheet } from './guide-sheet';
import { variantsSheetOf, variantTable } from './variant-table';

export const TITLE = 'Hand-held soil meter: a screw measured with a calliper';
export const SENTENCE =
  'A thread-forming screw of no standard is typed as it was measured; its first length holds too little thread, the ' +
  'longest bottoms, and in the corner the mould steel is too thin.';

const SCREW =
  'major 3.0/2.9; root 2.1/2.0; pitch 1.34; point 2; head diameter 5.6/5.3; head height 2.4/2.2; lengths 8 10 12 16; ' +
  'length tolerance 0.5; forming';

const COMMON = {
  screw: SCREW,
  length: 12,
  wall: 2.5,
  'board plane': 5,
  seat: 2,
  hole: 3.4,
  material: 'ABS',
  'boss OD': 6.4,
  'boss height': 12,
  'hole depth': 12,
  pilot: 2.3,
  'steel gap': 3.5,
} satisfies Readonly<Record<string, Cell>>;

const variants = variantTable({
  title: 'Lengths and places of the screw side by side',
  common: COMMON,
  list: [
    ['A  first choice', { length: 10 }],
    ['B  longest', { length: 16 }],
    ['C  between them, in the corner', { 'steel gap': 1.6 }],
    ['D  between them, out of the corner', {}],
  ],
  outputs: ['state', 'engagement min', 'engagement ratio', 'hole depth needed', 'sink ratio', 'pilot at tip', 'thread share min', 'reason'],
});

const REST = '[screw],[seat],[seat tolerance]';
const limits = (length: string): string => `=ENCL.ENGAGEMENT.LIMITS([${length}],${REST},[relief],[relief tolerance],[screw])`;
const bottom = (length: string): string =>
  `=ENCL.CHECK.MIN(ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[${length}],${REST}),[bottom gap])`;
const holds = (thread: string): string => `=ENCL.CHECK.MIN([${thread}],[ratio required]*ENCL.SCREW.MAJOR([screw]))`;
const steel = (gap: string): string => `=ENCL.BOSS.STEEL([${gap}],[boss height],[outside draft],[wall draft])`;

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a soil meter held in the hand, two halves of ABS, wall 2.5 mm, its corners thick so that it survives a ' +
      'fall. One screw in each corner closes it; the board hangs elsewhere.',
    'The screw: thread-forming, of no standard that is held here. Ten pieces were measured with a calliper and a ' +
      'thread gauge, largest and smallest of each size; the lengths are those in the box.',
    'Required: 2 d of full thread at worst case, 0.5 mm free under the tip, mould steel of 3 mm at the floor beside the boss.',
    'How to read it: each line computes one thing in its cell; select the cell to see formula and arguments. The ' +
      'notes speak of the values as they came; the sheet Variants has the same story in one table.',
  ],
  inputs: [
    ['screw', SCREW, '', ''],
    ['length', 10, 'mm', 'first choice'],
    ['next length', 12, 'mm', 'the next in the box'],
    ['longest', 16, 'mm', 'the longest in the box'],
    ['seat', 2, 'mm', 'all that lies between head and boss'],
    ['seat tolerance', 0.1, 'mm', '±'],
    ['relief', 0.5, 'mm', 'no thread at the mouth of the pilot'],
    ['relief tolerance', 0.1, 'mm', '±'],
    ['ratio required', 2, '', 'full thread at worst case ÷ d'],
    ['thread share', 0.8, '', 'of the thread depth, for the pilot: a start value (common practice)'],
    ['pilot', 2.3, 'mm', 'rounded up from it'],
    ['wall', 2.5, 'mm', 'housing wall'],
    ['boss OD', 6.4, 'mm', 'at the free end'],
    ['boss height', 12, 'mm', ''],
    ['hole depth', 12, 'mm', 'it ends at the root'],
    ['hole depth tolerance', 0.1, 'mm', '±'],
    ['bottom gap', 0.5, 'mm', 'minimum clearance under the screw tip'],
    ['outside draft', 0.5, '°', 'per side'],
    ['hole draft', 0.25, '°', 'per side'],
    ['wall draft', 0.5, '°', 'of the corner, per side'],
    ['gap to the corner, first place', 1.6, 'mm', 'at the free end of the boss'],
    ['gap to the corner, moved', 3.5, 'mm', 'at the free end of the boss'],
  ],
  blocks: [
    [
      '1   The screw as it was measured',
      [
        ['major diameter, largest', '=ENCL.SCREW.MAJOR([screw])', 'mm', 'd of every ratio'],
        ['root diameter, largest', '=ENCL.SCREW.ROOT([screw])', 'mm', ''],
        ['head diameter, smallest', '=ENCL.SCREW.HEAD.DIAMETER([screw],"pan","min")', 'mm', 'what still bears'],
        ['pilot by the thread share', '=ENCL.HOLE.PILOT([screw],[thread share])', 'mm', 'a start value: a torque test decides'],
        ['and what was not measured?', '=ENCL.REASON("HOLE.PILOT","major 3.0/2.9; forming",0.8)'],
      ],
      ['What was not measured has no value. Nothing is guessed, and no maker’s series is supplied.'],
    ],
    [
      '2   First choice (variant A)',
      [
        ['A: full thread, min, nominal, max, ±rss', limits('length'), '', 'mm; worst case first'],
        ['full thread ÷ d, first choice', '=ENCL.ENGAGEMENT.RATIO([A: full thread, min, nominal, max, ±rss],[screw])', '', 'less than 2'],
        ['holds', holds('A: full thread, min, nominal, max, ±rss'), '', 'fails: point, relief and tolerances take the rest'],
        ['clears the bottom', bottom('length'), '', ''],
      ],
      ['Below the seat are 8 mm of screw. At worst case 4.8 mm of them are full thread.'],
    ],
    [
      '3   The longest (variant B)',
      [
        ['B: full thread, min, nominal, max, ±rss', limits('longest'), '', 'mm'],
        ['holds, longest', holds('B: full thread, min, nominal, max, ±rss'), '', ''],
        ['clears the bottom, longest', bottom('longest'), '', 'fails: it bottoms, and the halves do not close'],
      ],
    ],
    [
      '4   What is changed (variants C and D): the length between them, out of the corner',
      [
        [
          'length that fits',
          '=ENCL.SCREW.LENGTH.PICK([screw],[seat],[seat tolerance],[ratio required],[hole depth]-[hole depth tolerance],[bottom gap],' +
            '[relief],[relief tolerance])',
          'mm',
          'the shortest of the box that holds and does not bottom',
        ],
        ['D: full thread, min, nominal, max, ±rss', limits('next length'), '', 'mm'],
        ['full thread ÷ d, next length', '=ENCL.ENGAGEMENT.RATIO([D: full thread, min, nominal, max, ±rss],[screw])', '', 'more than 2'],
        ['holds, next length', holds('D: full thread, min, nominal, max, ±rss'), '', ''],
        ['clears the bottom, next length', bottom('next length'), '', ''],
        ['steel at the floor, in the corner', steel('gap to the corner, first place'), 'mm', 'boss and corner lean into the gap'],
        ['steel stands', '=ENCL.CHECK.MIN([steel at the floor, in the corner],1.5,3)', '', 'fails: a thin blade of steel'],
        ['steel at the floor, moved', steel('gap to the corner, moved'), 'mm', ''],
        ['steel stands, moved', '=ENCL.CHECK.MIN([steel at the floor, moved],1.5,3)', '', ''],
        [
          'boss wall at the root',
          '=ENCL.BOSS.WALL([boss OD],[pilot],[boss height],[outside draft],[hole draft],[hole depth])',
          'mm',
          'thinner than the housing wall',
        ],
        ['boss wall ÷ wall', '=ENCL.BOSS.SINK([boss wall at the root],[wall])', '', 'up to 1 on a face that nobody sees'],
        [
          'pilot at the bottom ÷ root',
          '=ENCL.HOLE.TIGHT([screw],[pilot],[hole depth],[hole draft])',
          '',
          'above 1: the boss is not forced open',
        ],
      ],
      ['A boss that merges with a thick corner sinks and hides a void: stand it off, and tie it to both walls with ribs.'],
    ],
    [
      '5   What it holds',
      [
        [
          'pull-out of one screw (estimate)',
          '=ENCL.PULLOUT([screw],[D: full thread, min, nominal, max, ±rss],"ABS")',
          'N',
          'ABS by its family value, short-term, the whole thread',
        ],
      ],
      ['The formula knows only the sizes of the thread. What the maker’s flank or point does is for a test to show.'],
    ],
  ],
  judge: [
    'Whether ten pieces say what the next box holds: ask the maker for a drawing with limits, and put them in.',
    'Drive and stripping torque: the thread is of no standard, so measure both with the moulded part before the driver is set.',
    'A fall loads the corners at once. No function here computes it: drop the first parts.',
  ],
  cautions: [LOADS],
});

export const handheldGuide: WorkbookPlan = {
  name: 'Hand-held soil meter',
  sheets: [guide, variantsSheetOf(variants, [36, 34, 13, 13, 15, 12, 13, 13, 13, 12, 12, 12, 12])],
};
