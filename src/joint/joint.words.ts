import type { CardWords } from '../core/card';

const SOURCES = [{ title: 'plane geometry, and the standards and rules that each output names', held: 'see JOINT.CARD' }];
const GENERAL = { kind: 'geometry', sources: SOURCES } as const;
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
const FIRST_CHOICE = [D1[0], D1[1]?.map(value => (value === 16 ? 13 : value))];
const CHECKED_WORDS = { kind: 'common practice', sources: SOURCES } as const;

export const JOINT_WORDS: Readonly<Record<string, CardWords>> = {
  'JOINT.TABLE': {
    ...GENERAL,
    example: { args: [D1, [['engagement min', 'hole depth needed', 'boss OD root']]], row: 1, values: [7.34, 14.06, 6.6444] },
  },
  'JOINT.VALUE': {
    ...GENERAL,
    example: { args: [[D1[0]], [D1[1]], 'engagement min'], result: 7.34 },
    notLive: 'one cell of a joint; a JOINT.TABLE is handed over live',
  },
  'JOINT.CARD': {
    ...GENERAL,
    example: {
      args: [D1],
      row: 17,
      values: ['engagement min', 7.34, 'mm', '16 − 0.8 − (2.5 + 1.6 + 0.1 + 0.16) − (0.8 + 0.1) − 2.6 = 7.34', '–', 'plane geometry'],
    },
    notLive: 'text',
  },
  'CHECK.JOINT': {
    ...CHECKED_WORDS,
    example: {
      args: [FIRST_CHOICE],
      row: 8,
      values: ['engagement', 1.497, 2, 'worst-case full thread ÷ d', 'fail', 'common practice', 'length 16 mm'],
    },
  },
  'CHECK.BOSS': {
    ...CHECKED_WORDS,
    example: {
      args: [FIRST_CHOICE],
      row: 7,
      values: ['slenderness', 2.1875, 5, 'boss height ÷ outside diameter', 'pass', 'common practice', '–'],
    },
  },
  'JOINT.INPUTS': {
    ...GENERAL,
    example: { args: [], row: 1, values: ['screw', '–', 'required', 'screw size, "ST2.9"; a blank or an unquoted M3 is refused'] },
    notLive: 'text',
  },
  'JOINT.OUTPUTS': {
    ...GENERAL,
    example: { args: [], row: 17, values: ['engagement min', 'mm', 'full thread in boss or insert, worst case'] },
    notLive: 'text',
  },
};
