import type { CardWords } from '../../core/card';

const D1 = [
  [
    'screw',
    'head',
    'length',
    'wall',
    'board plane',
    'seat',
    'board',
    'hole',
    'relief',
    'pilot',
    'pilot held at',
    'boss OD',
    'boss height',
    'hole depth',
    'bottom gap',
  ],
  ['ST2.9', 'ISO 7049', 16, 2.5, 5.5, 2.5, 1.6, 3.4, 0.8, 2.4, 'mouth', 6.4, 14, 14.75, 1],
];

const GENERAL = {
  kind: 'geometry',
  sources: [{ title: 'plane geometry, and the standards and rules that each output names', held: 'see JOINT.CARD' }],
  notLive: 'a study of many joints; it stands as of the date of the copy',
} as const;

export const STUDY_WORDS: Readonly<Record<string, CardWords>> = {
  'JOINT.MAP': {
    ...GENERAL,
    example: {
      args: [D1, 'relief', [[0.8, 1]], 'seat', [[2], [2.5]], 'engagement min'],
      result: [
        ['relief (mm) \\ seat (mm)', 0.8, 1],
        [2, 7.84, 7.64],
        [2.5, 7.34, 7.14],
      ],
    },
    caution: 'A default follows the two inputs as it does in JOINT.TABLE.',
  },
  'JOINT.WINDOW': {
    ...GENERAL,
    example: {
      args: [D1, 'hole depth'],
      row: 1,
      values: ['hole depth', 'mm', 14.75, 13.06, 15.4, 'screw clears the bottom', 'floor under the hole', 14.06, 14.9],
    },
    caution:
      'One input moves and all others stay, defaults as in JOINT.TABLE: two windows are no room for two moves, which ' +
      'JOINT.MAP shows. It looks as far as ten times the value, and round a length below d as far as nine times d, in steps of a ' +
      'twentieth of that at most; – is where nothing ends it there. A stretch narrower than a step is found where the value of a ' +
      'rule comes to its limit as it runs beside it. What shows no ' +
      'such sign can be missed: a rule that leaves and comes back within one step, or a value that is not there at all. A tolerance ' +
      'moves by its half width.',
  },
  'JOINT.SENSITIVITY': {
    ...GENERAL,
    example: { args: [D1, 'engagement min'], row: 1, values: ['length', 'mm', 16, 0.8, 1, 0.8, 0.9262260917891214] },
    caution:
      'Slopes hold near the present values; at a corner it is the steeper one. For sink ratio it is the slope of root circle ' +
      '÷ wall, which is finite. The share is that of the variance, as in STACK.SHARE.',
  },
  'JOINT.SIMULATE': {
    kind: 'common practice',
    sources: [
      { title: 'generator xoroshiro128+ of 2018, 32 bits a draw', held: 'compared with published values' },
      { title: 'polar method for normal draws, SIAM Review 6, 1964', held: 'from memory' },
      { title: 'limits as ±3 standard deviations', held: 'common practice' },
    ],
    notLive: 'a study of many joints; it stands as of the date of the copy',
    example: { args: [D1, 1000], row: 15, values: ['slenderness', 1, 0, 2.1875, 2.1875, 2.1875] },
    caution:
      'Normal about the middle of the limits, ±3 standard deviations, cut there: it counts on processes that are centred. ' +
      'Dimensions of one tool move together: common share says by how much, 0 is the optimistic side for sums. Strengths, ' +
      'frictions and loads are not drawn. On the joint of the demo least full thread is 7.34 mm at worst case, 7.67 by root sum ' +
      'square and 7.57 among 20,000 draws.',
  },
  'JOINT.SOLVE': {
    ...GENERAL,
    example: { args: [D1, 'seat', 'engagement min', 7], result: 2.84 },
    caution:
      'It says nothing of the rules: look at the state with the value put in. It looks as JOINT.WINDOW does: what is reached only ' +
      'between two looks can be missed.',
  },
};
