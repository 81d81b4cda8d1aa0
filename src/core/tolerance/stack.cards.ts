import { card, type Calculation, type Param } from '../card';
import { DEVIATIONS, numbers } from '../read/lists';
import { choice, numeric, param } from '../read/params';
import { LIMIT } from '../read/limit';
import { LABELS } from '../read/lists';
import { LENGTH, RATIO } from '../read/quantity';
import { WHOLE } from '../read/whole';
import type { DrawShape } from './draws';
import * as F from './stack';
import { stackShares, stackSimulated, stackTable } from './stack-tables';

const T = 'Tolerances';
const mm = numeric(LENGTH);
const values = param('values', numbers(LENGTH), { symbol: 'v_i' });
const tolerances = param('tolerances', DEVIATIONS, { symbol: 't_i' });
const sensitivities: Param<readonly number[]> = param('sensitivities', numbers(RATIO), { symbol: 'a_i', default: 1 });
const mean = param('mean', mm, { symbol: 'μ' });
const sigma = param('sigma', mm, { symbol: 'σ', above: 0 });
const lower = param('lower', LIMIT, { symbol: 'L' });
const upper = param('upper', LIMIT, { symbol: 'U', relation: { upperOf: 'lower' } });
const halfWidth = (name: string): Calculation['result'] => ({ shape: 'number', name, symbol: 't', unit: 'mm' });
export const MOST_SEED = 2 ** 31 - 1;

export const STACK_CARDS: readonly Calculation[] = [
  card('STACK.NOMINAL', T, [values, sensitivities], F.stackNominalMm, {
    result: { shape: 'number', name: 'nominal', symbol: 'G', unit: 'mm' },
  }),
  card('STACK.WORST', T, [tolerances, sensitivities], F.stackWorstMm, { result: halfWidth('worst case, ±') }),
  card(
    'STACK.RSS',
    T,
    [tolerances, sensitivities, param('inflation', numeric(RATIO), { symbol: 'k', atLeast: 1, default: 1 })],
    F.stackRssMm,
    { result: halfWidth('root sum square, ±') },
  ),
  card('STACK.MODIFIED', T, [tolerances, sensitivities], F.stackModifiedMm, { result: halfWidth('modified root sum square, ±') }),
  card('STACK.SHARE', T, [tolerances, sensitivities], stackShares, {
    result: { shape: 'column', name: 'share of the variance', unit: '' },
  }),
  card('STACK.TABLE', T, [param('labels', LABELS), values, tolerances, sensitivities], stackTable, {
    result: {
      shape: 'table',
      columns: [
        { name: 'link', unit: '' },
        { name: 'value', unit: 'mm' },
        { name: 'upper deviation', unit: 'mm' },
        { name: 'lower deviation', unit: 'mm' },
        { name: 'sensitivity', unit: '' },
        { name: 'sensitivity × middle of the limits', unit: 'mm' },
        { name: 'sensitivity × half width', unit: 'mm' },
        { name: 'share of the variance', unit: '' },
      ],
    },
  }),
  card(
    'STACK.SIMULATE',
    T,
    [
      values,
      tolerances,
      param('sensitivities', numbers(RATIO), { symbol: 'a_i' }),
      lower,
      upper,
      param('samples', WHOLE, { symbol: 'N', atLeast: 1000, atMost: 20_000_000, default: 100_000 }),
      param('seed', WHOLE, { atLeast: 1, atMost: MOST_SEED, default: 1 }),
      param('shape', choice<DrawShape>('shape', { normal: [], uniform: [], triangular: [] }), { default: 'normal' }),
    ],
    stackSimulated,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'quantity', unit: '' },
          { name: 'value', unit: '' },
          { name: 'unit', unit: '' },
        ],
      },
    },
  ),
  card('STACK.PPM', T, [mean, sigma, lower, upper], F.ppmOutside, {
    result: { shape: 'number', name: 'parts per million outside the limits', unit: '' },
  }),
  card('STACK.CPK', T, [mean, sigma, lower, upper], F.capability, {
    result: { shape: 'number', name: 'capability index', symbol: 'C_pk', unit: '' },
  }),
];
