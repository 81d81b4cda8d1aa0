// A classroom air monitor: a drawing in inches, a lip that rubs, a board that is crushed or rattles. An invented scenario of our own.
import type { Cell } from '../core/kinds';
import type { SheetPlan, WorkbookPlan } from '../sheet/plan';
import { choiceTable } from './choice-table';
import { guideSheet } from './guide-sheet';
import { cell } from './sheet-rows';
import { variantsSheetOf, variantTable } from './variant-table';

export const TITLE = 'Classroom air monitor: lip, clamp and a drawing in inches';
export const SENTENCE =
  'A lip gap that looks neat rubs at worst case, and a board clamped between two halves is crushed or rattles; a ' +
  'wider gap and screwed bosses settle both.';

// ---- lip and clamp -------------------------------------------------------------------------------------------------

const LIP = 5;
const LIP_HEADS = [
  'lip gap',
  'gap per side (mm)',
  'lip ± (mm)',
  'groove ± (mm)',
  'shrink, part 1 (mm)',
  'shrink, part 2 (mm)',
  'wall (mm)',
  'lip (mm)',
  'gap, least (mm)',
  'nominal (mm)',
  'gap, most (mm)',
  'half spread, rss (mm)',
  'gap, least by rss (mm)',
  'skin left (mm)',
  'state',
];
const LIPS: readonly (readonly [label: string, gapMm: number])[] = [
  ['A  first choice', 0.05],
  ['B  wider', 0.15],
  ['C  wider still', 0.25],
];

const CLAMP = LIP + LIPS.length + 5;
const CLAMP_HEADS = [
  'board support',
  'planned gap (mm)',
  'height 1 ± (mm)',
  'height 2 ± (mm)',
  'parting line ± (mm)',
  'board ± (mm)',
  'limit (mm)',
  'board (mm)',
  'gap, least (mm)',
  'nominal (mm)',
  'gap, most (mm)',
  'half spread, rss (mm)',
  'gap, least by rss (mm)',
  'gap, most by rss (mm)',
  'state',
];
const CLAMPS: readonly (readonly [label: string, gapMm: number, mostMm: number])[] = [
  ['A  clamped between halves', 0.1, 0.2],
  ['B  screwed to bosses', 0.5, 1],
];

const fitsSheet: SheetPlan = {
  name: 'Lip and clamp',
  widths: [28, 14, 13, 13, 14, 14, 14, 12, 12, 13, 12, 14, 14, 14, 13],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'Lip gap and board support side by side'),
    cell('A2', 'note', 'Worst case beside root sum square (rss). A negative gap: the lip rubs, the board is crushed.'),
    cell(`A${LIP - 1}`, 'heading', 'The lip: wall = outer skin + gap + lip + gap'),
    ...choiceTable(
      LIP,
      LIP_HEADS,
      7,
      LIPS.map(([label, gapMm]) => r => [
        label,
        gapMm,
        0.025,
        0.025,
        0.04,
        0.04,
        2.5,
        1,
        `=ENCL.LIP.FIT(B${r},C${r},D${r},E${r}+F${r})`,
        undefined,
        undefined,
        `=ENCL.STACK.RSS(C${r}:F${r})`,
        `=B${r}-L${r}`,
        `=ENCL.LIP.SKIN(G${r},H${r},B${r},2)`,
        `=IF(ISNUMBER(I${r}),IF(I${r}<0,"fail","pass"),"not checked")`,
      ]),
      '0.000',
    ),
    cell(
      `A${LIP + LIPS.length + 1}`,
      'note',
      'The largest gap is the step that an eye may see. Shrink scatter: 0.1 % over 40 mm, half the length, on each part.',
    ),
    cell(`A${CLAMP - 1}`, 'heading', 'The board: clamped by two heights, or screwed to bosses with pillars that only stop it'),
    ...choiceTable(
      CLAMP,
      CLAMP_HEADS,
      6,
      CLAMPS.map(([label, gapMm, mostMm]) => r => [
        label,
        gapMm,
        0.1,
        0.1,
        0.05,
        0.16,
        mostMm,
        '=ENCL.LENGTH.MM("0.062 in")',
        `=ENCL.BOARD.CLAMP(H${r}+B${r},C${r}+D${r}+E${r},H${r},F${r})`,
        undefined,
        undefined,
        `=ENCL.STACK.RSS(C${r}:F${r})`,
        `=B${r}-L${r}`,
        `=B${r}+L${r}`,
        `=IF(ISNUMBER(I${r}),IF(OR(I${r}<0,K${r}>G${r}),"fail","pass"),"not checked")`,
      ]),
      '0.000',
    ),
    cell(
      `A${CLAMP + CLAMPS.length + 1}`,
      'note',
      'Below 0 the board is crushed, above the limit it rattles (A) or is not stopped when the part falls (B).',
    ),
  ],
  stateRanges: [`O${LIP + 1}:O${LIP + LIPS.length}`, `O${CLAMP + 1}:O${CLAMP + CLAMPS.length}`],
};

// ---- the board screws ----------------------------------------------------------------------------------------------

const COMMON = {
  screw: 'ST2.2',
  head: 'ISO 7049',
  end: 'flat',
  length: 6.5,
  wall: 2.5,
  'boss OD': 4.5,
  pilot: 1.8,
  'board hole': 2.5,
  seat: '0 mm',
  relief: 0.6,
  material: 'ABS',
  board: '0.062 in',
  'board tolerance': 0.16,
  'pilot held at': 'mouth',
  'boss height': 9,
  'bottom gap': 0.5,
} satisfies Readonly<Record<string, Cell>>;

const variants = variantTable({
  title: 'Board screws of the monitor side by side',
  common: COMMON,
  list: [
    ['A  first choice', {}],
    ['B  longer', { length: 9.5 }],
    ['C  longer still', { length: 13 }],
  ],
  outputs: ['state', 'engagement min', 'engagement ratio', 'hole depth needed', 'sink ratio', 'reason'],
});

// ---- the guide -----------------------------------------------------------------------------------------------------

const LIP_TOLERANCES = '[lip tolerance],[groove tolerance]';
const fit = (gap: string): string => `=ENCL.LIP.FIT(${gap},${LIP_TOLERANCES},[shrink scatter, part 1]+[shrink scatter, part 2])`;
const clamp = (gap: string): string =>
  `=ENCL.BOARD.CLAMP(ENCL.LENGTH.MM([board thickness])+${gap},2*[height tolerance]+[parting tolerance],` +
  '[board thickness],[board tolerance])';

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: an air monitor for classrooms, fed by USB at low voltage, in reach of children; two halves of ABS, ' +
      'wall 2.5 mm, a lip all round.',
    'The board: its drawing says 3.15 × 2.05 × 0.062, and no unit. The housing is drawn in millimetres.',
    'Required: a lip that goes in everywhere and shows little step, a board that is neither crushed nor loose, halves ' +
      'that close on their bosses.',
    'How to read it: each line computes one thing in its cell. The notes speak of the values as they came; Lip and ' +
      'clamp has the choices side by side, Variants the screws.',
  ],
  inputs: [
    ['board length', '3.15 in', '', 'a length may carry its unit'],
    ['board width', '2.05 in', '', ''],
    ['board thickness', '0.062 in', '', ''],
    ['board tolerance', 0.16, 'mm', '± on the thickness'],
    ['outline tolerance', 0.2, 'mm', '± on length and width of the board'],
    ['pocket', 82, 'mm', 'clear length for the board at the floor'],
    ['wall', 2.5, 'mm', 'outer skin, gap, lip, gap'],
    ['lip', 1, 'mm', 'thickness of the lip'],
    ['lip gap, first choice', 0.05, 'mm', 'per side'],
    ['lip gap, wider', 0.15, 'mm', 'per side'],
    ['lip tolerance', 0.025, 'mm', '±'],
    ['groove tolerance', 0.025, 'mm', '±'],
    ['shrink scatter, part 1', 0.04, 'mm', '0.1 % over 40 mm, half the length'],
    ['shrink scatter, part 2', 0.04, 'mm', 'the same of the other half'],
    ['clamp gap, first choice', 0.1, 'mm', 'planned between pillar and board'],
    ['pillar gap', 0.5, 'mm', 'where the board is screwed to bosses and pillars only stop it'],
    ['height tolerance', 0.1, 'mm', '± of each of two heights'],
    ['parting tolerance', 0.05, 'mm', '± at the parting line'],
    ['boss stack', 19.8, 'mm', 'floor to floor over the bosses'],
    ['rim stack', 20, 'mm', 'floor to floor over the rim'],
  ],
  blocks: [
    [
      '1   Units first',
      [
        ['3.15 as it was typed', '=ENCL.UNIT.CHECK(3.15,"board edge")'],
        ['board length, both units', '=ENCL.DUAL([board length])'],
        ['board width, both units', '=ENCL.DUAL([board width])'],
        ['board thickness, both units', '=ENCL.DUAL([board thickness],3)'],
        ['gap around the board, least', '=ENCL.BOARD.GAP([board length],[outline tolerance],[pocket])', 'mm', 'per side'],
      ],
      ['No board has an edge of 3.15 mm. Write the unit once, where the number enters; everything after it is in millimetres.'],
    ],
    [
      '2   The lip, first choice: 0.05 mm per side',
      [
        ['gap: least, nominal, most', fit('[lip gap, first choice]'), '', 'mm per side at worst case'],
        ['goes in', '=IF([gap: least, nominal, most]<0,"fail","pass")', '', 'fails: the lip rubs'],
        [
          'half spread as root sum square',
          '=ENCL.STACK.RSS([lip tolerance]:[shrink scatter, part 2])',
          'mm',
          'lip, groove, two scatters taken as independent',
        ],
        ['least gap by root sum square', '=[lip gap, first choice]-[half spread as root sum square]', 'mm', 'below 0 as well'],
      ],
      ['The two parts shrink by different amounts, a little more than the gap. At worst case nothing is left.'],
    ],
    [
      '3   The lip, wider: 0.15 mm per side',
      [
        ['wider gap: least, nominal, most', fit('[lip gap, wider]'), '', 'mm per side; the most is the step that is seen'],
        ['goes in, wider', '=IF([wider gap: least, nominal, most]<0,"fail","pass")', '', 'passes'],
        ['outer skin left', '=ENCL.LIP.SKIN([wall],[lip],[lip gap, wider],2)', 'mm', 'each 0.1 of gap takes 0.2 of the skin'],
      ],
      ['0.1 mm more settles it. Wider still would show a step and thin the outer skin: the sheet Lip and clamp has all three.'],
    ],
    [
      '4   The board, first choice: clamped between the halves',
      [
        ['clamp: least, nominal, most', clamp('[clamp gap, first choice]'), '', 'mm; negative: crushed'],
        [
          'neither crushed nor loose',
          '=IF([clamp: least, nominal, most]<0,"fail","pass")',
          '',
          'fails: crushed at one end, loose at the other',
        ],
      ],
      ['Two heights, a parting line and a board of ± 10 % vary by more than any gap that would hold the board.'],
    ],
    [
      '5   What is changed: the board is screwed to bosses, pillars only stop it',
      [
        ['pillar: least, nominal, most', clamp('[pillar gap]'), '', 'mm: never touches'],
        ['pillar never touches', '=IF([pillar: least, nominal, most]<0,"fail","pass")', '', 'passes; the screws are on the sheet Variants'],
      ],
      ['The screw holds the board on one face. What the other half does no longer matters.'],
    ],
    [
      '6   Do the bosses touch before the rim?',
      [
        [
          'gap at the rim when the bosses touch',
          '=ENCL.RIM.GAP([boss stack],[rim stack])',
          'mm',
          'negative: the rim touches first and the boss hangs in tension',
        ],
        [
          'bosses touch first',
          '=IF([gap at the rim when the bosses touch]<0,"review","pass")',
          '',
          'review: such bosses crack after weeks',
        ],
      ],
      [
        'With these heights the rim stops the lid while the bosses are still apart. Tightening the screw bends the lid ' +
          'and pulls at the boss.',
      ],
    ],
  ],
  judge: [
    'How much step at the lip the eye forgives: hold a sample in the hand.',
    'Whether the shrink scatter is what your moulder holds with your resin: ask for the figure and type it.',
    'Correct the stack at the rim: raise the bosses by more than the gap, then use the sheet Tolerance of the first guide for the rest.',
  ],
  cautions: [
    'In reach of children: small parts, loose screws and openings are not judged here. Name the standard that ' +
      'applies and its test house; a screw that needs a tool is not enough by itself.',
    'Low voltage from USB only. Where another supply may be plugged in, the caution on hazardous voltage of the other guides holds.',
  ],
});

export const monitorGuide: WorkbookPlan = {
  name: 'Classroom air monitor',
  sheets: [guide, fitsSheet, variantsSheetOf(variants, [33, 11, 15, 16, 18, 11, 12, 10, 10, 10, 11, 12, 12, 14, 12, 12, 12])],
};
