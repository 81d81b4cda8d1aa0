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
    caution: 'Defaults made from the two inputs follow them, as in JOINT.TABLE.',
  },
  'JOINT.WINDOW': {
    ...GENERAL,
    example: {
      args: [D1, 'hole depth'],
      row: 1,
      values: ['hole depth', 'mm', 14.75, 13.06, 15.4, 'screw clears the bottom', 'floor under the hole', 14.06, 14.9],
    },
    caution:
      'One input moves and all others stay; defaults follow as in JOINT.TABLE. Two windows cannot be used up at once: for two inputs ' +
      'together see JOINT.MAP. It searches up to ten times the value (for a length below d, up to nine times d to either side), in ' +
      'steps of at most a twentieth of the value or of d; – means that nothing ends the window there. A stretch narrower than a step ' +
      'is found where the value of a rule heads for its limit beside it. A rule that breaks and holds again within one step, or a ' +
      'value that is lacking there, can be missed. A tolerance moves by its half width.',
  },
  'JOINT.SENSITIVITY': {
    ...GENERAL,
    example: { args: [D1, 'engagement min'], row: 1, values: ['length', 'mm', 16, 0.8, 1, 0.8, 0.9262260917891214] },
    caution:
      'Slopes hold near the present values; where a slope jumps, the steeper one is given. For sink ratio it is the slope of root ' +
      'circle ÷ wall, which is finite. The share is that of the variance, as in STACK.SHARE.',
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
      'Draws are normal about the middle of the limits, cut there at ±3 standard deviations: it assumes centred processes. ' +
      'Dimensions moulded in one tool move together: common share says by how much, 0 is optimistic for sums. Strengths, ' +
      'frictions and loads are not drawn. In the demo the least full thread is 7.34 mm at worst case, 7.67 by root sum ' +
      'square and 7.57 among 20,000 draws.',
  },
  'JOINT.SOLVE': {
    ...GENERAL,
    example: { args: [D1, 'seat', 'engagement min', 7], result: 2.84 },
    caution:
      'It ignores the rules: check the state with the new value. It searches in steps as JOINT.WINDOW does: a target that is met ' +
      'only between two steps can be missed.',
  },
};
