import { card, type Card } from '../core/card';
import { BLOCK, named, param } from '../core/read/params';
import { checkBoss, checkJoint } from './checks';
import * as F from './table';

export const T = 'The joint as one table';
export const inputs = param('inputs', BLOCK);
export const base = param('base', BLOCK, { blank: 'absent' });
const SOURCES = [{ title: 'plane geometry, and the standards and rules that each output names', held: 'see JOINT.CARD' }];
export const GENERAL = { kind: 'geometry', sources: SOURCES } as const;
const OUTPUT = named('joint output', 'engagement min', text => text);

export const D1 = [
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

const CHECKED = {
  result: { shape: 'table', columns: ['rule', 'value', 'limit', 'basis', 'state', 'source', 'remedy'].map(name => ({ name, unit: '' })) },
  kind: 'common practice',
  sources: SOURCES,
} as const;
const FIRST_CHOICE = [D1[0], D1[1]?.map(value => (value === 16 ? 13 : value))];

export const JOINT_CARDS: readonly Card[] = [
  card('JOINT.TABLE', T, [inputs, param('outputs', BLOCK, { blank: 'absent' }), base], F.jointCells, {
    result: { shape: 'table', columns: [] },
    ...GENERAL,
    example: { args: [D1, [['engagement min', 'hole depth needed', 'boss OD root']]], row: 1, values: [7.34, 14.06, 6.6444] },
  }),
  card('JOINT.VALUE', T, [param('names', BLOCK), param('values', BLOCK), param('output', OUTPUT), base], F.jointValue, {
    result: { shape: 'number', name: 'the output', unit: '' },
    ...GENERAL,
    example: { args: [[D1[0]], [D1[1]], 'engagement min'], result: 7.34 },
    notLive: 'one cell of a joint; a JOINT.TABLE is handed over live',
  }),
  card('CHECK.JOINT', 'Checks, variants, trace', [inputs, base], checkJoint, {
    ...CHECKED,
    example: {
      args: [FIRST_CHOICE],
      row: 8,
      values: ['engagement', 1.497, 2, 'worst-case full thread ÷ d', 'fail', 'common practice', 'length 16 mm'],
    },
    notLive: 'the remedy is searched for',
  }),
  card('CHECK.BOSS', 'Checks, variants, trace', [inputs, base], checkBoss, {
    ...CHECKED,
    example: {
      args: [FIRST_CHOICE],
      row: 7,
      values: ['slenderness', 2.1875, 5, 'boss height ÷ outside diameter', 'pass', 'common practice', '–'],
    },
    notLive: 'the remedy is searched for',
  }),
  card('JOINT.INPUTS', T, [], F.jointInputs, {
    result: { shape: 'table', columns: ['name', 'unit', 'default', 'meaning'].map(name => ({ name, unit: '' })) },
    ...GENERAL,
    example: { args: [], row: 1, values: ['screw', '–', 'required', 'screw size, "ST2.9"; a blank or an unquoted M3 is refused'] },
    notLive: 'text',
  }),
  card('JOINT.OUTPUTS', T, [], F.jointOutputs, {
    result: { shape: 'table', columns: ['name', 'unit', 'meaning'].map(name => ({ name, unit: '' })) },
    ...GENERAL,
    example: { args: [], row: 17, values: ['engagement min', 'mm', 'full thread in boss or insert, worst case'] },
    notLive: 'text',
  }),
];
