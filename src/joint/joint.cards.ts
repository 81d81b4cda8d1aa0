import { card, type Calculation } from '../core/card';
import { BLOCK, named, param } from '../core/read/params';
import { checkBoss, checkJoint } from './checks';
import * as F from './table';

export const T = 'The joint as one table';
export const inputs = param('inputs', BLOCK);
export const base = param('base', BLOCK, { blank: 'absent' });
const OUTPUT = named('joint output', 'engagement min', text => text);

const CHECKED = {
  result: { shape: 'table', columns: ['rule', 'value', 'limit', 'basis', 'state', 'source', 'remedy'].map(name => ({ name, unit: '' })) },
} as const;

export const JOINT_CARDS: readonly Calculation[] = [
  card('JOINT.TABLE', T, [inputs, param('outputs', BLOCK, { blank: 'absent' }), base], F.jointCells, {
    result: { shape: 'table', columns: [] },
  }),
  card('JOINT.VALUE', T, [param('names', BLOCK), param('values', BLOCK), param('output', OUTPUT), base], F.jointValue, {
    result: { shape: 'number', name: 'the output', unit: '' },
  }),
  card('CHECK.JOINT', 'Checks, variants, trace', [inputs, base], checkJoint, CHECKED),
  card('CHECK.BOSS', 'Checks, variants, trace', [inputs, base], checkBoss, CHECKED),
  card('JOINT.INPUTS', T, [], F.jointInputs, {
    result: { shape: 'table', columns: ['name', 'unit', 'default', 'meaning'].map(name => ({ name, unit: '' })) },
  }),
  card('JOINT.OUTPUTS', T, [], F.jointOutputs, {
    result: { shape: 'table', columns: ['name', 'unit', 'meaning'].map(name => ({ name, unit: '' })) },
  }),
];
