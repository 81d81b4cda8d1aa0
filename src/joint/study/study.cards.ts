import { card, type Calculation, type Kind } from '../../core/card';
import { ANYTHING, BLOCK, named, param } from '../../core/read/params';
import { QUANTITIES, RATIO } from '../../core/read/quantity';
import { readQuantity } from '../../core/read/read-quantity';
import { WHOLE } from '../../core/read/whole';
import { wrongInput } from '../../core/refuse';
import { MOST_SEED } from '../../core/tolerance/stack.cards';
import { outputName } from '../headings';
import { base, inputs, T } from '../joint.cards';
import { unitOf } from '../outputs';
import { jointMapCells } from './map';
import { jointSensitivity } from './sensitivity';
import { jointSimulated } from './simulate';
import { jointSolve } from './solve';
import { jointWindow } from './window';

const INPUT = named('joint input', 'wall', text => text);
const OUTPUT = named('joint output', 'engagement min', text => text);

/** A number in the unit of the output before it. */
const TARGET: Kind<number> = {
  ...ANYTHING,
  noun: 'number of that output',
  hasZero: true,
  takesEverything: false,
  read(raw, preceding) {
    if (typeof raw === 'number' && Number.isFinite(raw)) return raw;
    const unit = unitOf(outputName(preceding.get('output'), 'output'));
    if (typeof raw === 'string') return readQuantity(raw, QUANTITIES.find(quantity => quantity.unit === unit) ?? RATIO);
    throw wrongInput('give a number');
  },
};

const columns = (...names: readonly string[]): Calculation['result'] => ({
  shape: 'table',
  columns: names.map(name => ({ name, unit: '' })),
});

export const STUDY_CARDS: readonly Calculation[] = [
  card(
    'JOINT.MAP',
    T,
    [
      inputs,
      param('x', INPUT),
      param('x_values', BLOCK),
      param('y', INPUT),
      param('y_values', BLOCK),
      param('output', OUTPUT, { default: 'state' }),
      base,
    ],
    jointMapCells,
    { result: { shape: 'table', columns: [] } },
  ),
  card('JOINT.WINDOW', T, [inputs, param('names', BLOCK, { blank: 'absent' }), base], jointWindow, {
    result: columns(
      'name',
      'unit',
      'now',
      'lowest without a fail',
      'highest without a fail',
      'rule that ends it below',
      'rule that ends it above',
      'lowest that passes',
      'highest that passes',
    ),
  }),
  card('JOINT.SENSITIVITY', T, [inputs, param('output', OUTPUT), base], jointSensitivity, {
    result: columns(
      'name',
      'unit',
      'value',
      'tolerance',
      'change of the output per unit',
      'change over the tolerance',
      'share of the whole',
    ),
  }),
  card(
    'JOINT.SIMULATE',
    T,
    [
      inputs,
      param('samples', WHOLE, { atLeast: 1000, atMost: 200_000, default: 20_000 }),
      param('seed', WHOLE, { atLeast: 1, atMost: MOST_SEED, default: 1 }),
      base,
    ],
    jointSimulated,
    { result: columns('rule', 'share that meets it', 'ppm outside', 'least', 'mean', 'largest') },
  ),
  card('JOINT.SOLVE', T, [inputs, param('name', INPUT), param('output', OUTPUT), param('target', TARGET), base], jointSolve, {
    result: { shape: 'number', name: 'the input', unit: '' },
  }),
];
