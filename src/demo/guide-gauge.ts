// A water-butt level gauge: a boss too close to its wall, and too tall. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { PlanCell, WorkbookPlan } from '../sheet/plan';
import { BATTERIES } from './cautions';
import { choiceTable } from './choice-table';
import { guideSheet } from './guide-sheet';
import { at, cell } from './sheet-rows';
import { variantTable } from './variant-table';

export const TITLE = 'Water-butt level gauge: a tall boss beside a wall';
export const SENTENCE =
  'Draft closes the gap beside a tall boss until the mould has a knife edge at its floor; hung from the lid, a ' +
  'short boss has room, a shallow hole and a screw that fits.';

const COMMON = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  end: 'flat',
  length: 13,
  wall: 2.5,
  'boss OD': 6.4,
  'boss height': 24,
  pilot: 2.4,
  'board hole': 3.2,
  seat: '0 mm',
  relief: 0.6,
  material: 'ABS',
  board: 1.6,
  'pilot held at': 'mouth',
  'hole depth': 24,
  'bottom gap': 1,
  'outside draft': 1,
} satisfies Readonly<Record<string, Cell>>;

const FROM_LID = { 'boss height': 13, 'hole depth': 13.75 } as const;

const variants = variantTable({
  title: 'Boss and screw of the gauge side by side',
  common: COMMON,
  list: [
    ['A  tall boss, axis 5 from the wall', {}],
    ['B  tall boss, axis 6.8', {}],
    ['C  board hung from the lid', FROM_LID],
  ],
  outputs: [
    'state',
    'engagement ratio',
    'hole depth needed',
    'slenderness',
    'pin ratio',
    'sink ratio',
    'boss OD root',
    'pilot bottom',
    'reason',
  ],
});

const AXES = [5, 6.8, 6.8];
const HEAD = variants.next + 1;
const HEADS = [
  'variant',
  'axis to wall (mm)',
  'wall draft (°)',
  'boss fillet (mm)',
  'wall fillet (mm)',
  'flat required (mm)',
  'gap at the floor (mm)',
  'flat left (mm)',
  'state of the steel',
  'state with joint',
];

/** The mould beside the boss; the joint of the same variant goes into its verdict. */
function position(): PlanCell[] {
  return [
    cell(at(0, HEAD), 'heading', 'The mould steel between boss and side wall'),
    ...choiceTable(
      HEAD + 1,
      HEADS,
      5,
      AXES.map((axis, v) => r => {
        const [od, height, draft] = (['boss OD', 'boss height', 'outside draft'] as const).map(name => variants.input(name, v));
        return [
          `=${at(0, Number(/\d+/.exec(variants.input('screw', v))?.[0]))}`,
          axis,
          1,
          0.6,
          0.8,
          0.5,
          `=ENCL.BOSS.STEEL(B${r}-${od}/2,${height},${draft},C${r})`,
          `=ENCL.BOSS.FLAT(G${r},D${r},E${r})`,
          `=IF(ISNUMBER(H${r}),IF(H${r}<F${r},"fail","pass"),"not checked")`,
          `=IF(I${r}="fail","fail",${variants.output('state', v)})`,
        ];
      }),
      '0.00',
    ),
    cell(
      at(0, HEAD + 2 + AXES.length),
      'note',
      'The axis is measured at the free end of the boss; draft is per side. A flat narrower than required is a knife edge ' +
        'that breaks (common practice): move the boss, or tie it to the wall with a rib.',
    ),
  ];
}

const SIDE = '[outside draft],[wall draft]';

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a level gauge for a water butt, run on batteries, two halves of ABS, wall 2.5 mm. The board carries a ' +
      'sensor and must stand 24 mm above the floor; the lid is 13 mm above the board.',
    'The board: 1.6 mm thick, screwed down through a hole; the head lies on the board (seat "0 mm"). One screw sits ' +
      'in a corner, beside the side wall.',
    'Required: a boss that a mould can be made for, 2 d of full thread at worst case, 1 mm free under the tip.',
    'How to read it: each line computes one thing in its cell; select the cell to see formula and arguments. The ' +
      'notes speak of the values as they came; Variants has joint and mould steel side by side.',
  ],
  inputs: [
    ['axis to wall, first choice', 5, 'mm', 'at the free end of the boss'],
    ['axis to wall, moved', 6.8, 'mm', 'the board allows no more'],
    ['boss OD', 6.4, 'mm', 'at the free end'],
    ['tall boss', 24, 'mm', 'from the floor'],
    ['short boss', 13, 'mm', 'from the lid'],
    ['outside draft', 1, '°', 'per side'],
    ['wall draft', 1, '°', 'of the side wall, per side'],
    ['hole draft', 0.25, '°', 'per side'],
    ['pilot', 2.4, 'mm', 'at the mouth'],
    ['wall', 2.5, 'mm', 'housing wall'],
    ['boss fillet', 0.6, 'mm', 'at the root of the boss'],
    ['wall fillet', 0.8, 'mm', 'at the foot of the side wall'],
    ['flat required', 0.5, 'mm', 'less is a knife edge that breaks (common practice)'],
    ['screw', 'ST2.9', '', 'flat end'],
    ['length', 13, 'mm', ''],
    ['board', 1.6, 'mm', ''],
    ['board tolerance', 0.16, 'mm', '±'],
    ['relief', 0.6, 'mm', ''],
    ['relief tolerance', 0.1, 'mm', '±'],
    ['hole depth of the short boss', 13.75, 'mm', 'a little into the wall of the lid'],
    ['hole depth tolerance', 0.1, 'mm', '±'],
    ['bottom gap', 1, 'mm', 'minimum clearance under the screw tip'],
  ],
  blocks: [
    [
      '1   First choice (variant A): tall boss, 5 mm from the wall',
      [
        [
          'outside diameter at the root',
          '=ENCL.DRAFT.SIZE([boss OD],[tall boss],[outside draft],"grows")',
          'mm',
          'the boss is held at its free end and grows downwards',
        ],
        [
          'with the draft the wrong way',
          '=ENCL.DRAFT.SIZE([boss OD],[tall boss],[outside draft],"shrinks")',
          'mm',
          'a common slip: it hides what follows',
        ],
        [
          'gap at the floor',
          `=ENCL.BOSS.STEEL([axis to wall, first choice]-[boss OD]/2,[tall boss],${SIDE})`,
          'mm',
          'boss and wall lean into the gap',
        ],
        [
          'flat left between the fillets',
          '=ENCL.BOSS.FLAT([gap at the floor],[boss fillet],[wall fillet])',
          'mm',
          'negative: the fillets meet in a knife edge',
        ],
        ['steel stands', '=IF([flat left between the fillets]<[flat required],"fail","pass")', '', 'fails: no flat is left'],
      ],
      ['At board level there is room. Over 24 mm the draft of boss and wall eats it up: the mould would have a blade that breaks.'],
    ],
    [
      '2   Moved away from the wall (variant B)',
      [
        ['gap at the floor, moved', `=ENCL.BOSS.STEEL([axis to wall, moved]-[boss OD]/2,[tall boss],${SIDE})`, 'mm', ''],
        ['flat left, moved', '=ENCL.BOSS.FLAT([gap at the floor, moved],[boss fillet],[wall fillet])', 'mm', 'steel that stands'],
        ['slenderness', '=ENCL.BOSS.SLENDER([tall boss],[boss OD])', '', 'height ÷ outside diameter; 3 to review, 5 to fail'],
        ['slenderness is within bounds', '=ENCL.CHECK.MAX([tall boss]/[boss OD],5,3)', '', 'review: sources differ between 3 and 5'],
        ['core pin, cored to the floor', '=ENCL.PIN.RATIO([tall boss],[pilot])', '', 'depth ÷ diameter: far too long a pin'],
        [
          'boss wall at the root',
          '=ENCL.BOSS.WALL([boss OD],[pilot],[tall boss],[outside draft],[hole draft])',
          'mm',
          'cored to the floor',
        ],
        ['boss wall ÷ wall', '=ENCL.BOSS.SINK([boss wall at the root],[wall])', '', 'as thick as the wall itself'],
      ],
      ['The steel is there now, but boss, pin and root are not what a moulder accepts. The height is the fault.'],
    ],
    [
      '3   What is changed (variant C): the board hangs from the lid on a short boss',
      [
        ['slenderness, short boss', '=ENCL.BOSS.SLENDER([short boss],[boss OD])', '', ''],
        ['outside diameter at the root, short boss', '=ENCL.DRAFT.SIZE([boss OD],[short boss],[outside draft],"grows")', 'mm', ''],
        ['gap at the floor, short boss', `=ENCL.BOSS.STEEL([axis to wall, moved]-[boss OD]/2,[short boss],${SIDE})`, 'mm', ''],
        ['flat left, short boss', '=ENCL.BOSS.FLAT([gap at the floor, short boss],[boss fillet],[wall fillet])', 'mm', ''],
        [
          'full thread: min, nominal, max, ±rss',
          '=ENCL.ENGAGEMENT.LIMITS([length],[screw]&" flat",[board],[board tolerance],[relief],[relief tolerance],[screw]&" flat")',
          '',
          'mm; worst case first',
        ],
        ['full thread at worst case ÷ d', '=ENCL.ENGAGEMENT.RATIO([full thread: min, nominal, max, ±rss],[screw])', '', '2 is required'],
        [
          'clears the bottom',
          '=ENCL.CHECK.MIN(ENCL.SCREW.BOTTOM([hole depth of the short boss],[hole depth tolerance],[length],[screw]&" flat",' +
            '[board],[board tolerance]),[bottom gap])',
          '',
          '',
        ],
        [
          'pilot at the bottom',
          '=ENCL.HOLE.AT([pilot],[hole depth of the short boss],[hole draft])',
          'mm',
          'wider than the root of the screw',
        ],
        [
          'pilot at the bottom ÷ root',
          '=ENCL.HOLE.TIGHT([screw],[pilot],[hole depth of the short boss],[hole draft])',
          '',
          'below 1 to review, below 0.97 it is likely to split',
        ],
        [
          'boss wall at the root, short boss',
          '=ENCL.BOSS.WALL([boss OD],[pilot],[short boss],[outside draft],[hole draft],[hole depth of the short boss])',
          'mm',
          '',
        ],
        [
          'largest circle in the root, short boss',
          '=ENCL.BOSS.CIRCLE([boss wall at the root, short boss],[wall],0,0,[wall]+[short boss]-[hole depth of the short boss])',
          'mm',
          'the hole reaches below the root and takes mass away',
        ],
        [
          'the same as boss wall ÷ wall, short boss',
          '=2*SQRT([largest circle in the root, short boss]/[wall]-1)',
          '',
          'up to 1 on a face that nobody sees; a face that is seen bears 0.6',
        ],
      ],
      [
        'Half the height: draft takes half as much, the pin is short, and one stock length fits. The root is still ' +
          'thick, on a face that nobody sees.',
      ],
    ],
  ],
  judge: [
    'Variant C passes because nobody sees the face behind its boss. On a face that is seen, add a groove round the ' +
      'foot of the boss ("ring depth"), or take a thicker wall.',
    'A board that hangs from the lid is pulled at by its cables each time the lid is opened: leave slack, or plug them.',
    'Whether the steel beside the boss can be cooled and polished is for the toolmaker to say.',
  ],
  cautions: [BATTERIES, 'Wet places: sealing against water is not judged here. Name the standard and its test for it.'],
});

export const gaugeGuide: WorkbookPlan = {
  name: 'Water-butt level gauge',
  sheets: [
    guide,
    {
      name: 'Variants',
      widths: [38, 12, 17, 18, 13, 12, 13, 14, 14, 12, 11, 10, 10, 14, 12, 12, 12, 12],
      frozenRows: 1,
      cells: [...variants.cells, ...position()],
      stateRanges: [variants.stateRange, `I${HEAD + 2}:J${HEAD + 1 + AXES.length}`],
    },
  ],
};
