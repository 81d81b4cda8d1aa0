import type { SheetPlan } from '../sheet/plan';
import { type GuideStep, type SheetInput, row, stepSheet, table } from './sheet-rows';

/** Names as JOINT.TABLE knows them, so that the block feeds it too. Seat and board stand together: the layers of the grip. */
const INPUTS: readonly SheetInput[] = [
  ['screw', 'ST2.9', '', 'tapping screw ISO 1478'],
  ['head', 'ISO 7049', '', 'pan head'],
  ['end', 'cone', '', 'cone or flat'],
  ['length', 16, 'mm', 'nominal; its tolerance comes from the table'],
  ['material', 'ABS', '', 'symbol ISO 1043; start values only'],
  ['wall', 2.5, 'mm', 'housing wall'],
  ['board plane', 5.5, 'mm', 'outer face of the lid to the underside of the board'],
  ['seat', 2.5, 'mm', 'plastic under the head'],
  ['board', 1.6, 'mm', 'board thickness, clamped with the seat'],
  ['seat tolerance', 0.1, 'mm', '±'],
  ['board tolerance', 0.16, 'mm', '±, 10 % of the board'],
  ['hole', 3.2, 'mm', 'clearance hole in the seat; none is standard for ST screws'],
  ['allowance', 0.6, 'mm', 'recess wider than the head by this, on diameter'],
  ['recess draft', 1, '°', 'per side'],
  ['relief', 0.8, 'mm', 'relief at the mouth of the pilot: no thread there'],
  ['relief tolerance', 0.1, 'mm', '±'],
  ['pilot', 2.4, 'mm', 'drawing value'],
  ['pilot held at', 'mouth', '', 'mouth, or mid: half way along the full thread'],
  ['boss OD', 6.4, 'mm', 'held at the free end'],
  ['boss height', 14, 'mm', 'above the wall'],
  ['outside draft', 0.5, '°', 'per side; the boss grows towards its root'],
  ['hole draft', 0.25, '°', 'per side; the hole narrows towards its bottom'],
  ['hole depth', 14.75, 'mm', 'below the boss face'],
  ['hole depth tolerance', 0.1, 'mm', '±'],
  ['bottom gap', 1, 'mm', 'minimum clearance under the screw tip'],
  ['face', 'show', '', 'the floor behind the boss is seen: show, or hidden'],
];

const LAYERS = '[seat]:[board]';
const TOLERANCES = '[seat tolerance]:[board tolerance]';
const WITH_HEAD = '[screw]&" "&[head]';
const WITH_END = '[screw]&" "&[end]';
const FOR_LENGTH =
  `[screw],${LAYERS},${TOLERANCES},2,[hole depth]-[hole depth tolerance],[bottom gap],` + '[relief],[relief tolerance],[end]';

const BLOCKS: readonly GuideStep[] = [
  [
    'Head recess',
    [
      ['head diameter, max', '=ENCL.SCREW.HEAD.DIAMETER([screw],[head])', 'mm', 'what the recess must clear'],
      ['head height, max', '=ENCL.SCREW.HEAD.HEIGHT([screw],[head])', 'mm', 'not the diameter: the two are often mixed up'],
      [
        'recess diameter at its floor',
        `=ENCL.RECESS.DIAMETER(${WITH_HEAD},[allowance])`,
        'mm',
        'the text "ST2.9 ISO 7049" reads the head from the table',
      ],
      ['recess depth', '=ENCL.RECESS.DEPTH([board plane],[seat])', 'mm', 'outer face to seat'],
      [
        'recess diameter at the outer face',
        `=ENCL.RECESS.DIAMETER(${WITH_HEAD},[allowance],[board plane]-[seat],[recess draft])`,
        'mm',
        'wider by draft',
      ],
      ['least depth, head 0.2 below the face', `=ENCL.RECESS.DEPTH.MIN(${WITH_HEAD},0.2)`, 'mm', 'the recess must be at least as deep'],
      ['head below the face', `=ENCL.RECESS.FLUSH([board plane]-[seat],${WITH_HEAD})`, 'mm', 'negative: proud'],
    ],
  ],
  [
    'Seat and post',
    [
      ['seat left by the recess', '=ENCL.RECESS.SEAT([board plane],3)', 'mm', 'with a recess 3 mm deep'],
      ['wall of an internal feature', '=ENCL.WALL.FEATURE([wall])', 'mm', '60 % of the wall, common practice'],
      [
        'post around the recess',
        '=ENCL.BOSS.OD(5.6+[allowance],ENCL.WALL.FEATURE([wall]))',
        'mm',
        'recess 6.2, wall of a feature around it',
      ],
    ],
  ],
  [
    'Boss and pilot',
    [
      ['outside diameter by rule', '=ENCL.BOSS.OD.RULE([screw],[material])', 'mm', 'start value: ratio for the resin × d'],
      ['outside diameter at the root', '=ENCL.DRAFT.SIZE([boss OD],[boss height],[outside draft],"grows")', 'mm', 'held at the free end'],
      ['pilot by resin', '=ENCL.HOLE.PILOT([screw],[material])', 'mm', 'start value from the thread share of the resin'],
      ['thread share of the drawing value', '=ENCL.HOLE.THREAD.SHARE([screw],[pilot])', '', '1 = pilot at the root diameter'],
      [
        'pilot at the bottom of the hole',
        '=ENCL.HOLE.AT([pilot],[hole depth],[hole draft])',
        'mm',
        'the pin that forms it is thickest at the mouth',
      ],
      [
        'pilot at the bottom ÷ root',
        '=ENCL.HOLE.TIGHT([screw],[pilot],[hole depth],[hole draft])',
        '',
        'below 0.97 the boss is likely to split',
      ],
      ['relief diameter', '=ENCL.HOLE.RELIEF([screw])', 'mm', 'major diameter + 0.2'],
      [
        'boss wall at the root',
        '=ENCL.BOSS.WALL([boss OD],[pilot],[boss height],[outside draft],[hole draft],[hole depth])',
        'mm',
        'both drafts make it thicker here',
      ],
      [
        'largest circle in the root',
        '=ENCL.BOSS.CIRCLE(ENCL.BOSS.WALL([boss OD],[pilot],[boss height],[outside draft],[hole draft],[hole depth]),' +
          '[wall],0,0,ENCL.HOLE.FLOOR([wall],[boss height],[hole depth]))',
        'mm',
        'between outer face, foot of the boss and the edge of the hole below it',
      ],
      [
        'the same as boss wall ÷ wall',
        '=2*SQRT([largest circle in the root]/[wall]-1)',
        '',
        'above 0.6 a sink mark is likely on a face that is seen',
      ],
      ['slenderness', '=ENCL.BOSS.SLENDER([boss height],[boss OD])', '', 'height ÷ outside diameter'],
      ['plastic under the hole', '=ENCL.HOLE.FLOOR([wall],[boss height],[hole depth])', 'mm', ''],
    ],
  ],
  ['Draft', [['offset per side over the boss', '=ENCL.DRAFT.OFFSET([boss height],[outside draft])', 'mm', 'twice this on diameter']]],
  [
    'Grip and engagement',
    [
      ['grip', `=ENCL.GRIP(${LAYERS})`, 'mm', 'seat and board'],
      ['length below the boss face', `=ENCL.PENETRATION([length],${LAYERS})`, 'mm', 'looks plenty, but not all of it holds'],
      ['full thread, nominal', `=ENCL.ENGAGEMENT([length],${LAYERS},[relief],${WITH_END})`, 'mm', 'less relief and point'],
      [
        'full thread: min, nominal, max, ±rss',
        `=ENCL.ENGAGEMENT.LIMITS([length],${WITH_END},${LAYERS},${TOLERANCES},[relief],[relief tolerance],${WITH_END})`,
        '',
        'mm; worst case first. rss: tolerances taken as independent',
      ],
      [
        'worst case ÷ d',
        `=ENCL.ENGAGEMENT.RATIO(INDEX(ENCL.ENGAGEMENT.LIMITS([length],${WITH_END},${LAYERS},${TOLERANCES},` +
          `[relief],[relief tolerance],${WITH_END}),1,1),[screw])`,
        '',
        '2 d is required',
      ],
    ],
  ],
  [
    'Screw length',
    [
      ['shortest length that passes', `=ENCL.SCREW.LENGTH.PICK(${FOR_LENGTH})`, 'mm', 'holds 2 d at worst case and does not bottom'],
      [
        'least room under the tip',
        `=ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[length],${WITH_END},${LAYERS},${TOLERANCES})`,
        'mm',
        'negative: the screw bottoms and the parts do not close',
      ],
      [
        'clearance beyond the gap required',
        `=ENCL.CHECK.MIN(ENCL.SCREW.BOTTOM([hole depth],[hole depth tolerance],[length],${WITH_END},${LAYERS},${TOLERANCES}),[bottom gap])`,
        '',
        'pass, review, fail or not checked',
      ],
    ],
  ],
];

const { list, states, refer, next } = stepSheet(
  'One joint, step by step',
  'Change an input; every line below follows. Each result is one function call: select it to read what it does.',
  INPUTS,
  BLOCKS,
);
const LENGTHS = refer(`=ENCL.SCREW.LENGTH.TABLE(${FOR_LENGTH})`);

export const jointSheet: SheetPlan = {
  name: 'Joint',
  widths: [34, 15, 13, 13, 12, 64],
  frozenRows: 1,
  cells: [...list, ...row(next, ['heading'], ['Every standard length against this joint']), ...table(0, next + 1, 6, LENGTHS, '0.00')],
  stateRanges: [...states, `E${next + 2}:E${next + 14}`],
};
