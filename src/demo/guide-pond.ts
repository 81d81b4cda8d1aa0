// A level sender in a box beside a pond: a board on four bosses, a flap on a hook, a rim that keeps its seal. An invented scenario.
import type { SheetPlan, WorkbookPlan } from '../sheet/plan';
import { LOADS } from './cautions';
import { choiceTable } from './choice-table';
import { guideSheet } from './guide-sheet';
import { cell, row } from './sheet-rows';

export const TITLE = 'Pond level sender: four holes, a hook and a seal';
export const SENTENCE =
  'Neat small holes do not fit over four screws, a short hook is strained too far, and a rim opens between its screws; ' +
  'each is mended by one size.';

// ---- pattern and rim side by side ----------------------------------------------------------------------------------

const SCREW_PLACES = [
  ['left, front', 15, 15],
  ['right, front', 115, 15],
  ['right, back', 115, 75],
  ['left, back', 15, 75],
] as const;
const PLACES = 4;
const [FIRST, LAST] = [PLACES + 1, PLACES + SCREW_PLACES.length];

const PATTERN = LAST + 4;
const PATTERN_HEADS = [
  'holes of the board',
  'hole (mm)',
  'screw, largest (mm)',
  'zone of a boss (mm)',
  'zone of a hole (mm)',
  'share required',
  'play (mm)',
  'share that goes together',
  'least play (mm)',
  'state',
];
const HOLES: readonly (readonly [label: string, holeMm: number])[] = [
  ['A  first choice', 3.1],
  ['B  wider', 3.4],
];
const fit = (r: number, line: number): string =>
  `=INDEX(ENCL.PATTERN.FIT($B$${FIRST}:$B$${LAST},$C$${FIRST}:$C$${LAST},D${r},E${r},G${r}),${line},2)`;

const RIM = PATTERN + HOLES.length + 4;
const RIM_HEADS = [
  'screws and rim',
  'pitch (mm)',
  'rim, high (mm)',
  'line load (N/mm)',
  'creep modulus (MPa)',
  'opening allowed (mm)',
  'second moment (mm⁴)',
  'opening (mm)',
  'squeeze, least',
  'nominal',
  'largest',
  'state',
];
const RIMS: readonly (readonly [label: string, pitchMm: number, heightMm: number])[] = [
  ['A  first choice', 50, 7],
  ['B  screws nearer', 40, 7],
  ['C  higher rim', 50, 9],
];

const fitsSheet: SheetPlan = {
  name: 'Pattern and rim',
  widths: [30, 12, 17, 18, 18, 14, 18, 22, 15, 12, 12, 12],
  frozenRows: 1,
  cells: [
    cell('A1', 'title', 'Holes of the board, and screws of the rim, side by side'),
    cell('A2', 'note', 'Every choice is a row. What is required stands beside it; it is the designer’s, not the program’s.'),
    ...row(PLACES, ['header', 'header', 'header'], ['screw of the board', 'x (mm)', 'y (mm)']),
    ...SCREW_PLACES.flatMap((place, i) => row(FIRST + i, ['label', 'input', 'input'], place)),
    cell(`A${PATTERN - 1}`, 'heading', 'The board: one rigid part over four screws, shifted and turned as suits it best'),
    ...choiceTable(
      PATTERN,
      PATTERN_HEADS,
      5,
      HOLES.map(([label, holeMm]) => r => [
        label,
        holeMm,
        2.9,
        0.3,
        0.2,
        0.9973,
        `=B${r}-C${r}`,
        fit(r, 2),
        fit(r, 3),
        `=ENCL.CHECK.MIN(H${r},F${r})`,
      ]),
      '0.000',
    ),
    cell(`A${RIM - 1}`, 'heading', 'The rim: the seal presses it open between its screws'),
    ...choiceTable(
      RIM,
      RIM_HEADS,
      5,
      RIMS.map(([label, pitchMm, heightMm]) => r => [
        label,
        pitchMm,
        heightMm,
        0.8,
        1000,
        0.09,
        `=2.5*C${r}^3/12`,
        `=ENCL.RIM.SAG(B${r},D${r},E${r},G${r})`,
        `=ENCL.SEAL.SQUEEZE(2,0.08,1.5,0.05,H${r},0.1,0.02)`,
        undefined,
        undefined,
        `=ENCL.CHECK.MAX(H${r},F${r})`,
      ]),
      '0.000',
    ),
    cell(
      `A${RIM + RIMS.length + 1}`,
      'note',
      'Rim 2.5 mm thick. Cord 2 ± 0.08 mm, groove 1.5 ± 0.05 mm, faces ± 0.1 mm, stretch 2 %. Squeezes half way between two ' +
        'screws: at a screw they are larger.',
    ),
  ],
  stateRanges: [`J${PATTERN + 1}:J${PATTERN + HOLES.length}`, `L${RIM + 1}:L${RIM + RIMS.length}`],
};

// ---- the steps -----------------------------------------------------------------------------------------------------

const X = `'Pattern and rim'!$B$${FIRST}:$B$${LAST}`;
const Y = `'Pattern and rim'!$C$${FIRST}:$C$${LAST}`;
const fits = (hole: string, line: number): string =>
  `=INDEX(ENCL.PATTERN.FIT(${X},${Y},[zone of a boss],[zone of a hole],[${hole}]-[screw, largest]),${line},2)`;
const CORD = '[cord],[cord tolerance],[groove depth],[groove tolerance]';
const squeeze = (opening: string): string => `=ENCL.SEAL.SQUEEZE(${CORD},${opening},[faces],[groove inside]/[ring inside]-1)`;
const RIM_LOAD = '[line load],[creep modulus]';
const sag = (pitch: string, height = 'rim height'): string => `=ENCL.RIM.SAG([${pitch}],${RIM_LOAD},[rim thickness]*[${height}]^3/12)`;
const strain = (hook: string): string => `=ENCL.SNAP.STRAIN([undercut],${hook})`;
const SHORT = '[hook length, first choice],[hook thickness]';
const LONG = '[hook length],[hook thickness],[hook thickness at the tip]';

const guide = guideSheet({
  title: TITLE,
  sentence: SENTENCE,
  scenario: [
    'The part: a level sender in a box beside a pond, two halves of ABS, wall 2.5 mm, 130 × 90 mm. The board lies on four bosses; ' +
      'a cord in a groove of the rim seals the lid, outside it a flap with a hook covers the terminals.',
    'The board: four screws ST2.9 at 100 × 60 mm. It is placed by two pins, in a round hole and in a slot 100 mm away.',
    'Required: 99.73 % of the boards go over all four screws, at most 2 % strain in the hook, and 8 % squeeze of the seal at worst.',
    'How to read it: each line computes one thing in its cell; select the cell to see formula and arguments. The ' +
      'notes speak of the values as they came; Pattern and rim has the choices side by side.',
  ],
  inputs: [
    ['screw, largest', 2.9, 'mm', 'ST2.9, ISO 1478'],
    ['hole, first choice', 3.1, 'mm', 'in the board'],
    ['hole, wider', 3.4, 'mm', ''],
    ['zone of a boss', 0.3, 'mm', 'position, a diameter, at the board'],
    ['zone of a hole', 0.2, 'mm', 'position, a diameter'],
    ['share required', 0.9973, '', 'of the boards'],
    ['pin hole', 3.1, 'mm', 'round, and across the slot'],
    ['pin', 3, 'mm', ''],
    ['pin distance', 100, 'mm', 'from the round hole to the slot'],
    ['pin distance tolerance', 0.25, 'mm', '±, both parts together'],
    ['expansion of the board', 15, '1e-6/K', ''],
    ['colder by', -40, 'K', 'from assembly to the coldest day'],
    ['undercut', 1.5, 'mm', 'that the hook must clear'],
    ['hook length, first choice', 8, 'mm', ''],
    ['hook length', 12, 'mm', ''],
    ['hook width', 6, 'mm', ''],
    ['hook thickness', 1.6, 'mm', 'at the root'],
    ['hook thickness at the tip', 0.8, 'mm', 'half of it'],
    ['strain agreed', 0.02, '', 'made up: yours comes from the data of the grade'],
    ['ramp', 30, '°', 'to push it on'],
    ['return ramp', 45, '°', 'to pull it off'],
    ['friction', 0.3, '', 'plastic on plastic, a guess'],
    ['cord', 2, 'mm', ''],
    ['cord tolerance', 0.08, 'mm', '±'],
    ['groove depth', 1.5, 'mm', ''],
    ['groove width', 2.8, 'mm', ''],
    ['groove tolerance', 0.05, 'mm', '±, depth and width'],
    ['ring inside', 100, 'mm', 'as it lies'],
    ['groove inside', 102, 'mm', ''],
    ['faces', 0.1, 'mm', '±: gap of the faces at a screw'],
    ['squeeze required', 0.08, '', 'at worst; made up: yours comes from the maker of the cord'],
    ['line load', 0.8, 'N/mm', 'of the seal where it is pressed most; made up, as above'],
    ['creep modulus', 1000, 'MPa', 'of ABS after years; made up, as above'],
    ['opening allowed', 0.09, 'mm', 'of the rim, half way between two screws'],
    ['rim thickness', 2.5, 'mm', 'of the lid, the wall that bends'],
    ['rim height', 7, 'mm', ''],
    ['rim height, higher', 9, 'mm', ''],
    ['pitch, first choice', 50, 'mm', 'of the lid screws'],
    ['pitch, nearer', 40, 'mm', ''],
    ['pitch, wide', 60, 'mm', 'with four screws'],
  ],
  blocks: [
    [
      '1   Four holes over four screws',
      [
        ['share that goes together', fits('hole, first choice', 2), '', 'first choice'],
        ['goes together', '=ENCL.CHECK.MIN([share that goes together],[share required])', '', 'fails'],
        ['least play', fits('hole, first choice', 3), 'mm', 'that 99.73 % of the boards need, on diameter'],
        ['hole at the worst of all', '=ENCL.HOLE.FIXED([screw, largest],[zone of a boss],[zone of a hole])', 'mm', 'every board, always'],
        ['share that goes together, wider', fits('hole, wider', 2), '', ''],
        ['goes together, wider', '=ENCL.CHECK.MIN([share that goes together, wider],[share required])', '', ''],
      ],
      ['One hole can be judged alone, four cannot: the board shifts and turns as one part, and the worst pair decides.'],
    ],
    [
      '2   A round hole and a slot place the board',
      [
        [
          'slot, over all',
          '=ENCL.PATTERN.SLOT([pin hole],[pin distance],[pin distance tolerance],[expansion of the board],"ABS",[colder by])',
          'mm',
          'tolerance and cold, to either side',
        ],
        [
          'turn of the board',
          '=ENCL.PATTERN.TURN([pin hole]-[pin],[pin hole]-[pin],[pin distance])',
          '°',
          'to either side, by the play on the pins',
        ],
      ],
      ['Two round holes would need a closer distance than the mould can hold and a cold day leaves.'],
    ],
    [
      '3   A hook on the far side',
      [
        ['strain, first choice', strain(SHORT), '', 'a share; 0.02 is required'],
        ['hook bears it', '=ENCL.CHECK.MAX([strain, first choice],[strain agreed])', '', 'fails: short and thick'],
        ['strain, longer and tapered', strain(LONG), '', ''],
        ['hook bears it, longer and tapered', '=ENCL.CHECK.MAX([strain, longer and tapered],[strain agreed])', '', ''],
        [
          'force at the tip (estimate)',
          '=ENCL.SNAP.FORCE([undercut],[hook length],[hook width],[hook thickness],"ABS",[hook thickness at the tip])',
          'N',
          '',
        ],
        ['force to push it on (estimate)', '=ENCL.SNAP.MATING([force at the tip (estimate)],[ramp],[friction])', 'N', ''],
        ['force to pull it off (estimate)', '=ENCL.SNAP.MATING([force at the tip (estimate)],[return ramp],[friction])', 'N', ''],
      ],
      ['Half the thickness at the tip spreads the strain along the hook; the strain falls with the square of its length.'],
    ],
    [
      '4   The seal, and the rim that must keep it',
      [
        ['stretch of the seal', '=ENCL.SEAL.STRETCH([ring inside],[groove inside])', '', 'a share'],
        ['squeeze at a screw: least, nominal, largest', squeeze('0'), '', 'shares'],
        ['squeeze between: least, nominal, largest', squeeze('[opening allowed]'), '', 'shares, at the opening allowed'],
        ['seal is kept', '=ENCL.CHECK.MIN([squeeze between: least, nominal, largest],[squeeze required])', '', ''],
        [
          'groove filled, at most',
          '=ENCL.SEAL.FILL([cord],[groove width],[groove depth],[cord tolerance],[groove tolerance],[groove tolerance])',
          '',
          'a share; room for heat and swelling is left',
        ],
        ['opening between screws', sag('pitch, first choice'), 'mm', 'first choice'],
        ['opening is allowed', '=ENCL.CHECK.MAX([opening between screws],[opening allowed])', '', 'fails'],
        ['pitch that keeps it', `=ENCL.RIM.PITCH([opening allowed],${RIM_LOAD},[rim thickness]*[rim height]^3/12)`, 'mm', ''],
        ['opening, screws nearer', sag('pitch, nearer'), 'mm', ''],
        ['opening is allowed, screws nearer', '=ENCL.CHECK.MAX([opening, screws nearer],[opening allowed])', '', ''],
        ['opening, higher rim', sag('pitch, first choice', 'rim height, higher'), 'mm', 'with the first pitch'],
        ['opening is allowed, higher rim', '=ENCL.CHECK.MAX([opening, higher rim],[opening allowed])', '', ''],
        ['opening, four screws', sag('pitch, wide'), 'mm', ''],
        ['and with four screws?', `=ENCL.REASON("SEAL.SQUEEZE",${CORD},[opening, four screws],[faces],[groove inside]/[ring inside]-1)`],
      ],
      ['The opening grows with the fourth power of the pitch and falls with the cube of the height: height costs less than two screws.'],
    ],
  ],
  judge: [
    'Whether the box is tight: no function says so. Squeeze, fill and opening are sizes; a test of the housing decides.',
    'The load of the seal at each squeeze, and what it loses in years: ask the maker of the cord.',
    'Warp of lid and rim is not computed: measure first parts, and put it in as a tolerance of the faces.',
    'How often the flap is opened, hot and cold: what strain the hook bears then comes from the data of the grade and a trial.',
  ],
  cautions: ['Seals: no degree of protection is claimed or computed. Water, dust and pressure are matters of a test.', LOADS],
});

export const pondGuide: WorkbookPlan = { name: 'Pond level sender', sheets: [guide, fitsSheet] };
