// A frost alarm whose battery hatch is opened often: a threaded insert. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { PlanCell, WorkbookPlan } from '../sheet/plan';
import { BATTERIES, INSERTS } from './cautions';
import { choiceTable } from './choice-table';
import { guideSheet } from './guide-sheet';
import { at, cell } from './sheet-rows';
import { variantTable } from './variant-table';

export const TITLE = 'Orchard frost alarm: a hatch that is opened often';
export const SENTENCE =
  'A tapping screw holds, but not for a hatch that is opened every month; a threaded insert does, once the hole in ' +
  'the hatch no longer lets the screw draw it out.';

const COMMON = {
  screw: 'M3',
  head: 'ISO 7045',
  end: '',
  length: 8,
  wall: 2.8,
  'board plane': 5,
  seat: 2.2,
  hole: 3.4,
  material: 'ABS',
  'boss OD': 9.4,
  'boss height': 9,
  'hole depth': 10,
  pilot: '',
  'insert diameter': 4.7,
  'insert length': 5,
  'insert hole': 4.2,
} satisfies Readonly<Record<string, Cell>>;

const TAPPING = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'flat',
  length: 13,
  'boss OD': 6.4,
  'boss height': 12,
  'hole depth': 12,
  pilot: 2.4,
  'insert diameter': '',
  'insert length': '',
  'insert hole': '',
} as const;

/** Variant D. */
export const INSERT_JOINT: Readonly<Record<string, Cell>> = COMMON;

const variants = variantTable({
  title: 'Screws of the hatch side by side',
  common: COMMON,
  list: [
    ['A  tapping screw in plastic', TAPPING],
    ['B  insert, wide hole in the hatch', { hole: 4.5 }],
    ['C  insert, screw too short', { length: 6 }],
    ['D  insert, screw and hole that fit', {}],
  ],
  outputs: ['state', 'engagement min', 'engagement ratio', 'hole depth needed', 'sink ratio', 'pull-out', 'boss tear', 'reason'],
});

const OPENED = 120;
const IN_PLASTIC = 10;
const IN_INSERT = 300;
const AGREED = [IN_PLASTIC, IN_INSERT, IN_INSERT, IN_INSERT];
const HEAD = variants.next + 1;
const HEADS = ['variant', 'openings in its life', 'openings agreed', 'state of openings', 'state with joint'];

/** What no table of joints judges: how often the joint is undone. */
function openings(): PlanCell[] {
  return [
    cell(at(0, HEAD), 'heading', 'How often it is opened'),
    ...choiceTable(
      HEAD + 1,
      HEADS,
      2,
      AGREED.map((agreed, v) => r => [
        `=${at(0, Number(/\d+/.exec(variants.input('screw', v))?.[0]))}`,
        OPENED,
        agreed,
        `=ENCL.CHECK.MAX(B${r},C${r})`,
        `=IF(D${r}="fail","fail",${variants.output('state', v)})`,
      ]),
      '0',
    ),
    cell(
      at(0, HEAD + 2 + AGREED.length),
      'note',
      'What is agreed is made up here. Yours comes from a test with the moulded part; no function computes it.',
    ),
  ];
}

const TAPPING_LIMITS =
  '=ENCL.ENGAGEMENT.LIMITS([length of the tapping screw],[tapping screw]&" flat",[seat],[seat tolerance],[relief],' +
  '[relief tolerance],[tapping screw]&" flat")';

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a frost alarm that hangs in an orchard, ABS, wall 2.8 mm. Four screws hold a hatch over its battery; ' +
      'it is opened every month for ten years.',
    'The hatch: 2.2 mm of plastic under the heads, which lie in recesses 2.8 mm deep. No board lies between hatch and boss.',
    'Required: a joint that bears the openings, 2 d of full thread at worst case in plastic, 1 d in a metal thread.',
    'How to read it: each line computes one thing in its cell; select the cell to see formula and arguments. The ' +
      'notes speak of the values as they came; Variants has joints and openings side by side.',
  ],
  inputs: [
    ['years', 10, '', ''],
    ['opened a year', 12, '', 'a new battery every month'],
    ['openings agreed, thread in plastic', IN_PLASTIC, '', 'made up: yours comes from a test'],
    ['openings agreed, insert', IN_INSERT, '', 'made up: yours comes from a test'],
    ['tapping screw', 'ST2.9', '', 'flat end, head ISO 7049'],
    ['length of the tapping screw', 13, 'mm', ''],
    ['screw', 'M3', '', 'machine screw, head ISO 7045'],
    ['length', 8, 'mm', ''],
    ['length tolerance', 0.29, 'mm', '±, as SCREW.LENGTH.TOL says'],
    ['short length', 6, 'mm', 'the standard length below it'],
    ['short length tolerance', 0.24, 'mm', '±, as SCREW.LENGTH.TOL says'],
    ['seat', 2.2, 'mm', 'plastic of the hatch under the head'],
    ['seat tolerance', 0.1, 'mm', '±'],
    ['relief', 0.5, 'mm', 'no thread at the mouth of the pilot'],
    ['relief tolerance', 0.1, 'mm', '±'],
    ['insert diameter', 4.7, 'mm', 'the largest outside, from its drawing'],
    ['insert length', 5, 'mm', 'from its drawing; threaded all through'],
    ['insert tolerance', 0.1, 'mm', '± of its length, and of how deep it lies'],
    ['insert hole', 4.2, 'mm', 'at the boss face, from its drawing'],
    ['hole in the hatch, first choice', 4.5, 'mm', 'wide, so that the hatch drops on'],
    ['hole in the hatch', 3.4, 'mm', 'ISO 273 medium for M3'],
    ['hole tolerance', 0.1, 'mm', '±'],
    ['wall', 2.8, 'mm', 'housing wall'],
    ['boss OD', 9.4, 'mm', 'round the insert'],
    ['boss height', 9, 'mm', ''],
    ['hole depth', 10, 'mm', 'a little into the wall'],
    ['hole depth tolerance', 0.1, 'mm', '±'],
    ['outside draft', 0.5, '°', 'per side'],
    ['hole draft', 0.25, '°', 'per side'],
  ],
  blocks: [
    [
      '1   First choice (variant A): a tapping screw in plastic',
      [
        ['A: full thread, min, nominal, max, ±rss', TAPPING_LIMITS, '', 'mm; worst case first'],
        [
          'tapping screw: full thread ÷ d',
          '=ENCL.ENGAGEMENT.RATIO([A: full thread, min, nominal, max, ±rss],[tapping screw])',
          '',
          'more than 2: as a joint it holds',
        ],
        ['openings', '=[years]*[opened a year]', '', 'in the life of the product'],
        [
          'bears the openings',
          '=ENCL.CHECK.MAX([openings],[openings agreed, thread in plastic])',
          '',
          'fails: each time a metal thread wears the one it formed',
        ],
      ],
      ['The table of joints passes it, because no rule there knows how often the hatch is opened. That is for you to ask.'],
    ],
    [
      '2   A threaded insert (variant B), and a wide hole in the hatch',
      [
        ['bears the openings, insert', '=ENCL.CHECK.MAX([openings],[openings agreed, insert])', '', 'metal on metal'],
        [
          'ring of the insert under the hatch',
          '=ENCL.INSERT.LANDING([insert diameter],[hole in the hatch, first choice]+[hole tolerance])',
          'mm',
          'at the largest hole: next to nothing',
        ],
        [
          'insert not drawn out',
          '=ENCL.CHECK.MIN([ring of the insert under the hatch],0.1,0.3)',
          '',
          'fails: the screw pulls the insert up through the hole',
        ],
      ],
      ['The hatch must lie on the insert itself, not on the plastic round it: then the screw clamps metal and does not pull at it.'],
    ],
    [
      '3   What is changed (variant D): a hole that lies on the insert',
      [
        [
          'ring of the insert under the hatch, medium hole',
          '=ENCL.INSERT.LANDING([insert diameter],[hole in the hatch]+[hole tolerance])',
          'mm',
          'at the largest hole',
        ],
        ['insert not drawn out, medium hole', '=ENCL.CHECK.MIN([ring of the insert under the hatch, medium hole],0.1,0.3)', '', ''],
        ['boss round the insert', '=ENCL.INSERT.BOSS.OD([insert diameter])', 'mm', 'twice the insert (common practice: 2 to 3)'],
        ['hole for the insert, depth', '=ENCL.INSERT.HOLE.DEPTH([insert length])', 'mm', 'with 1 mm for the plastic that is pushed down'],
        [
          'full thread in the insert',
          '=ENCL.INSERT.ENGAGEMENT([length]-[length tolerance],[seat]+[seat tolerance],' +
            '[insert length]-[insert tolerance],[insert tolerance],[screw])',
          'mm',
          'worst case: shortest screw, thickest hatch, insert shortest and deepest',
        ],
        [
          'full thread in the insert ÷ d',
          '=ENCL.ENGAGEMENT.RATIO([full thread in the insert],[screw])',
          '',
          '1 is required: the thread is metal',
        ],
        [
          'full thread in the insert, short screw',
          '=ENCL.INSERT.ENGAGEMENT([short length]-[short length tolerance],[seat]+[seat tolerance],' +
            '[insert length]-[insert tolerance],[insert tolerance],[screw])',
          'mm',
          'variant C: less than 1 d',
        ],
        [
          'clears the bottom',
          '=ENCL.CHECK.MIN(ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[length],[screw],[seat],[seat tolerance]),0.5)',
          '',
          'of the hole; 0.5 mm is required',
        ],
        [
          'boss wall at the root',
          '=ENCL.BOSS.WALL([boss OD],[insert hole],[boss height],[outside draft],[hole draft],[hole depth])',
          'mm',
          'nearly as thick as the housing wall',
        ],
        [
          'largest circle in the root',
          '=ENCL.BOSS.CIRCLE([boss wall at the root],[wall],0,0,[wall]+[boss height]-[hole depth])',
          'mm',
          'the hole reaches below the root and takes mass away',
        ],
        [
          'the same as boss wall ÷ wall',
          '=2*SQRT([largest circle in the root]/[wall]-1)',
          '',
          'up to 1 on a face that nobody sees; a face that is seen bears 0.6',
        ],
      ],
      ['The hole of the hatch now covers less than the insert, and one stock length reaches far enough.'],
    ],
    [
      '4   Is it as strong?',
      [
        [
          'pull-out of the tapping screw (estimate)',
          '=ENCL.PULLOUT([tapping screw],[A: full thread, min, nominal, max, ±rss],"ABS")',
          'N',
          'ABS by its family value, short-term, the whole thread',
        ],
        [
          'pull-out of the insert (estimate)',
          '=ENCL.INSERT.PULLOUT([insert diameter],[insert length],"ABS")',
          'N',
          'with half of its surface',
        ],
      ],
      ['The insert is not there for strength: by these estimates it holds less than the long tapping screw. It is there to be opened.'],
    ],
  ],
  judge: [
    'How the insert is put in, warm, by ultrasound or pressed, and how far the hole it gets may be off: its maker’s ' +
      'drawing and a trial say.',
    'A nut in a pocket is another way: NUT.POCKET, NUT.POCKET.CORNER and NUT.HEIGHT give its sizes.',
    'Whether the screws stay in the hatch when it is off: a lost screw is the usual end of a hatch.',
  ],
  cautions: [INSERTS, BATTERIES],
});

export const hatchGuide: WorkbookPlan = {
  name: 'Orchard frost alarm',
  sheets: [
    guide,
    {
      name: 'Variants',
      widths: [36, 13, 13, 13, 15, 12, 12, 12, 12, 11, 11, 12, 12, 11, 12, 12, 12],
      frozenRows: 1,
      cells: [...variants.cells, ...openings()],
      stateRanges: [variants.stateRange, `D${HEAD + 2}:E${HEAD + 1 + AGREED.length}`],
    },
  ],
};
