// A bee-hive weight display: no stock length fits the first screw. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { WorkbookPlan } from '../sheet/plan';
import { LOADS } from './cautions';
import { guideSheet } from './guide-sheet';
import { variantsSheetOf, variantTable } from './variant-table';

export const TITLE = 'Bee-hive weight display: no stock length fits';
export const SENTENCE =
  'No stock length of the first screw holds without bottoming, and its boss marks the front; a thinner screw does ' +
  'neither, and six of them hold more than four thick ones.';

const COMMON = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'flat',
  length: 9.5,
  wall: 2.8,
  'boss OD': 5.8,
  pilot: 2.4,
  'board hole': 3.2,
  seat: '0 mm',
  relief: 0.6,
  material: 'PP',
  board: 1.6,
  'pilot held at': 'mouth',
  'boss height': 11,
  'hole depth': 11,
  'bottom gap': 1,
  face: 'show',
  'pin limit': 6,
} satisfies Readonly<Record<string, Cell>>;

const THINNER = { screw: 'ST2.2', 'boss OD': 4.5, pilot: 1.8, 'board hole': 2.5 } as const;

const variants = variantTable({
  title: 'Screws of the display side by side',
  common: COMMON,
  list: [
    ['A  first choice', {}],
    ['B  next stock length', { length: 13 }],
    ['C  thicker screw', { screw: 'ST3.5', length: 13, 'boss OD': 7.1, pilot: 2.9, 'board hole': 3.9 }],
    ['D  thinner screw', THINNER],
    ['E  the same, core pin agreed', { ...THINNER, 'pin limit': 7 }],
  ],
  outputs: ['state', 'engagement min', 'engagement ratio', 'hole depth needed', 'sink ratio', 'pin ratio', 'reason'],
});

const TOLERANCE = '[board],[board tolerance]';
const END = '[screw]&" "&[end]';
const END_2 = '[screw of variant D]&" "&[end]';
const limits = (end: string): string => `=ENCL.ENGAGEMENT.LIMITS([length],${end},${TOLERANCE},[relief],[relief tolerance],${end})`;
const wallAtRoot = (od: string, pilot: string): string =>
  `=ENCL.BOSS.WALL(${od},${pilot},[boss height],[outside draft],[hole draft],[hole depth])`;

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a display for a bee hive, two halves of PP, wall 2.8 mm. It shows the weight and is not in the path ' +
      'of the load. Its front is seen, so sink marks count.',
    'The board: 60 × 40 × 1.6 mm, on bosses 11 mm above the floor; the display fixes that height. The screw goes ' +
      'through the board and its head lies on it (seat "0 mm").',
    'Required: a flat-ended tapping screw with 2 d of full thread at worst case, 1 mm free under its tip, a hole no ' +
      'deeper than its boss is high, core pins of at most 6 : 1 (the moulder’s figure), no sink mark on the front.',
    'How to read it: each line computes one thing in its cell; select the cell to see formula and arguments. The ' +
      'notes speak of the values as they came; the sheet Variants has the same story in one table.',
  ],
  inputs: [
    ['screw', 'ST2.9', '', 'first choice; the head is ISO 7049, pan'],
    ['end', 'flat', '', 'flat: shorter point, and never longer than nominal'],
    ['length', 9.5, 'mm', 'the stock length below 13'],
    ['next length', 13, 'mm', 'the stock length after it'],
    ['screw of variant D', 'ST2.2', '', 'the thinner one, same length'],
    ['board', 1.6, 'mm', 'all that lies between head and boss'],
    ['board tolerance', 0.16, 'mm', '±, 10 % of the board'],
    ['relief', 0.6, 'mm', 'no thread at the mouth of the pilot'],
    ['relief tolerance', 0.1, 'mm', '±'],
    ['ratio required', 2, '', 'full thread at worst case ÷ d'],
    ['wall', 2.8, 'mm', 'housing wall'],
    ['sink limit', 0.5, '', 'boss wall at the root ÷ wall: PP shrinks more than rigid resins (common practice)'],
    ['pin limit', 6, '', 'core pin, depth ÷ diameter: the moulder’s figure'],
    ['boss height', 11, 'mm', 'fixed by the display'],
    ['hole depth', 11, 'mm', 'no deeper: the front is seen'],
    ['hole depth tolerance', 0.1, 'mm', '±'],
    ['bottom gap', 1, 'mm', 'minimum clearance under the screw tip'],
    ['outside draft', 0.5, '°', 'per side; the boss grows towards its root'],
    ['hole draft', 0.25, '°', 'per side; the hole narrows'],
    ['boss OD', 5.8, 'mm', '2 d at the free end'],
    ['pilot', 2.4, 'mm', 'at the mouth'],
    ['boss OD of variant D', 4.5, 'mm', '2 d of the thinner screw'],
    ['pilot of variant D', 1.8, 'mm', 'at the mouth'],
    ['screws before', 4, '', 'one in each corner'],
    ['screws with variant D', 6, '', 'two more along the long sides'],
  ],
  blocks: [
    [
      '1   First choice (variant A): ST2.9 × 9.5',
      [
        ['length below the board', '=ENCL.PENETRATION([length],[board])', 'mm', 'what a quick glance counts on'],
        ['full thread: min, nominal, max, ±rss', limits(END), '', 'mm; worst case first'],
        [
          'full thread at worst case ÷ d',
          '=ENCL.ENGAGEMENT.RATIO([full thread: min, nominal, max, ±rss],[screw])',
          '',
          'against the ratio required',
        ],
        [
          'holds',
          '=ENCL.CHECK.MIN([full thread: min, nominal, max, ±rss],[ratio required]*ENCL.SCREW.MAJOR([screw]))',
          '',
          'fails: relief, point and tolerances have eaten the rest',
        ],
      ],
      [
        'Nearly 8 mm of screw below the board look like enough. What holds is less: the relief, the point without full ' +
          'thread, a screw that is short and a board that is thick.',
      ],
    ],
    [
      '2   The next length, 13 mm (variant B)',
      [
        [
          'room under the tip',
          `=ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[next length],${END},${TOLERANCE})`,
          'mm',
          'longest screw, thinnest board',
        ],
        [
          'clears the bottom',
          `=ENCL.CHECK.MIN(ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[next length],${END},${TOLERANCE}),[bottom gap])`,
          '',
          'fails: it meets the bottom',
        ],
        [
          'any stock length?',
          `=ENCL.REASON("SCREW.LENGTH.PICK",[screw],${TOLERANCE},[ratio required],[hole depth]-[hole depth tolerance],[bottom gap],` +
            '[relief],[relief tolerance],[end])',
        ],
      ],
      [
        '13 mm holds, and then it wants a deeper hole than there is. There is no stock length between them; a ' +
          'thicker screw (variant C) bottoms likewise.',
      ],
    ],
    [
      '3   What the boss does to the front',
      [
        ['boss wall at the root', wallAtRoot('[boss OD]', '[pilot]'), 'mm', 'both drafts make it thicker there'],
        ['boss wall ÷ wall', '=ENCL.BOSS.SINK([boss wall at the root],[wall])', '', ''],
        [
          'no sink mark',
          '=ENCL.CHECK.MAX([boss wall at the root]/[wall],[sink limit]+0.3,1.1*[sink limit])',
          '',
          'review: a mark is likely, and the face is seen',
        ],
        [
          'wall that would satisfy both rules',
          '=INDEX(ENCL.BOSS.CONFLICT([screw],[wall],[pilot],2,[sink limit]),2,3)',
          'mm',
          '2 d around the screw and the sink limit of the wall',
        ],
      ],
      [
        'A longer screw would not have helped the second fault: a boss of 2 d around this screw is too thick for this ' +
          'wall. The two rules meet only in a thicker wall or with a thinner screw.',
      ],
    ],
    [
      '4   What is changed (variant D): ST2.2 × 9.5, boss 4.5 mm',
      [
        ['D: full thread, min, nominal, max, ±rss', limits(END_2), '', 'mm; a shorter point leaves more of the same length'],
        [
          'full thread at worst case ÷ d, variant D',
          '=ENCL.ENGAGEMENT.RATIO([D: full thread, min, nominal, max, ±rss],[screw of variant D])',
          '',
          'more thread, thinner screw',
        ],
        [
          'holds, variant D',
          '=ENCL.CHECK.MIN([D: full thread, min, nominal, max, ±rss],[ratio required]*ENCL.SCREW.MAJOR([screw of variant D]))',
          '',
          '',
        ],
        [
          'clears the bottom, variant D',
          `=ENCL.CHECK.MIN(ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[length],${END_2},${TOLERANCE}),[bottom gap])`,
          '',
          '',
        ],
        ['boss wall at the root, variant D', wallAtRoot('[boss OD of variant D]', '[pilot of variant D]'), 'mm', ''],
        [
          'boss wall ÷ wall, variant D',
          '=ENCL.BOSS.SINK([boss wall at the root, variant D],[wall])',
          '',
          'the draft at the root is allowed for: a tenth above the limit',
        ],
        ['no sink mark, variant D', '=ENCL.CHECK.MAX([boss wall at the root, variant D]/[wall],[sink limit]+0.3,1.1*[sink limit])', '', ''],
        ['core pin: depth ÷ diameter', '=ENCL.PIN.RATIO([hole depth],[pilot of variant D])', '', 'a long thin pin bends and runs hot'],
        [
          'core pin to be reviewed',
          '=ENCL.CHECK.MAX([hole depth]/[pilot of variant D],10,[pin limit])',
          '',
          'review: the moulder decides; variant E is what they may agree to',
        ],
      ],
      [
        'Two d of a thin screw are less than two d of a thick one, so the same stock length now holds; its boss is ' +
          'thinner, so the front stays flat.',
      ],
    ],
    [
      '5   Is it as strong?',
      [
        [
          'thread cylinder of one screw',
          '=PI()*ENCL.SCREW.MAJOR([screw])*[full thread: min, nominal, max, ±rss]',
          'mm²',
          'π · d · full thread at worst case: compares, says nothing of newtons',
        ],
        [
          'thread cylinder of one screw, variant D',
          '=PI()*ENCL.SCREW.MAJOR([screw of variant D])*[D: full thread, min, nominal, max, ±rss]',
          'mm²',
          '',
        ],
        ['all screws', '=[screws before]*[thread cylinder of one screw]', 'mm²', 'four'],
        ['all screws, variant D', '=[screws with variant D]*[thread cylinder of one screw, variant D]', 'mm²', 'six: more than before'],
        [
          'pull-out of one screw (estimate)',
          '=ENCL.PULLOUT([screw],[full thread: min, nominal, max, ±rss],"PP")',
          'N',
          'PP by its family value, short-term, without a safety',
        ],
        [
          'pull-out of one screw, variant D (estimate)',
          '=ENCL.PULLOUT([screw of variant D],[D: full thread, min, nominal, max, ±rss],"PP")',
          'N',
          '',
        ],
      ],
      ['One thin screw holds a little less than one thick one. Six of them hold more than four.'],
    ],
  ],
  judge: [
    'The core pin: the sheet says review. Ask the moulder whether a pin of this ratio runs; their figure goes into the ' +
      'column "pin limit" of the sheet Variants, as in variant E.',
    'Two more screws cost assembly time, and a thin screw strips more easily: let a torque test with the moulded ' +
      'part decide the driver setting.',
    'PP creeps. Whether the joint holds its clamp through summers in the sun is a question for a test, not for this sheet.',
  ],
  cautions: ['Display only: the hive must not hang from these screws.', LOADS],
});

export const hiveGuide: WorkbookPlan = {
  name: 'Bee-hive weight display',
  sheets: [guide, variantsSheetOf(variants, [33, 11, 15, 16, 18, 11, 12, 10, 10, 10, 11, 10, 14, 12, 12, 12, 10, 10, 10])],
};
