import { card, type Card, type Param } from '../card';
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
const ABOUT_NOMINAL = 'An unequal tolerance counts as half its width about its middle.';
const INDEPENDENT = 'It takes the dimensions as independent. Those of one tool are not: they shrink together; add them linearly.';
const halfWidth = (name: string): Card['result'] => ({ shape: 'number', name, symbol: 't', unit: 'mm' });
const HANDBOOK = { kind: 'handbook formula' } as const;

const LINEAR = {
  title: 'Shigley’s Mechanical Engineering Design, 9th ed., p. 20: worst case of a stack',
  held: 'read in 1 secondary copy',
};
const SQUARES = { title: 'root sum square of independent deviations', held: 'read in several secondary copies' };
const INFLATED = {
  title: 'inflated root sum square: SAE paper 680490, 1968, factor 1.5; others 1.4 to 1.8',
  held: 'read in 1 secondary copy',
};
const MODIFIED = {
  title: 'P. Drake, Dimensioning and Tolerancing Handbook, 1999, ch. 9: computed factor',
  held: 'from memory; agrees with one printed result',
};
const NORMAL = { title: 'normal distribution by the complementary error function', held: 'compared with published values' };
const CAPABILITY = { title: 'capability index Cpk', held: 'read in 2 secondary copies' };
export const MOST_SEED = 2 ** 31 - 1;
export const SIMULATED = [
  { title: 'generator xoroshiro128+ of 2018, 32 bits a draw', held: 'compared with published values' },
  { title: 'polar method for normal draws, SIAM Review 6, 1964', held: 'from memory' },
];

export const STACK_CARDS: readonly Card[] = [
  card('STACK.NOMINAL', T, [values, sensitivities], F.stackNominalMm, {
    result: { shape: 'number', name: 'nominal', symbol: 'G', unit: 'mm' },
    ...HANDBOOK,
    sources: [LINEAR],
    example: {
      args: [
        [[10], [6], [3.5]],
        [[1], [-1], [-1]],
      ],
      result: 0.5,
    },
  }),
  card('STACK.WORST', T, [tolerances, sensitivities], F.stackWorstMm, {
    result: halfWidth('worst case, ±'),
    ...HANDBOOK,
    sources: [LINEAR],
    example: { args: [[[0.003], [0.001], [0.005], [0.001]]], result: 0.01 },
    caution: ABOUT_NOMINAL,
  }),
  card(
    'STACK.RSS',
    T,
    [tolerances, sensitivities, param('inflation', numeric(RATIO), { symbol: 'k', atLeast: 1, default: 1 })],
    F.stackRssMm,
    {
      result: halfWidth('root sum square, ±'),
      ...HANDBOOK,
      sources: [SQUARES, INFLATED],
      example: { args: [[[0.3], [0.4]]], result: 0.5 },
      caution: `${INDEPENDENT} ${ABOUT_NOMINAL}`,
    },
  ),
  card('STACK.MODIFIED', T, [tolerances, sensitivities], F.stackModifiedMm, {
    result: halfWidth('modified root sum square, ±'),
    ...HANDBOOK,
    sources: [MODIFIED],
    example: { args: [[[0.003], [0.001], [0.005], [0.001]]], result: 0.008 },
    caution: `${INDEPENDENT} ${ABOUT_NOMINAL}`,
  }),
  card('STACK.SHARE', T, [tolerances, sensitivities], stackShares, {
    result: { shape: 'column', name: 'share of the variance', unit: '' },
    ...HANDBOOK,
    sources: [SQUARES],
    example: { args: [[[0.3], [0.4]]], result: [[0.36], [0.64]] },
    notLive: 'a column as long as its range',
    caution: INDEPENDENT,
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
    ...HANDBOOK,
    sources: [LINEAR, SQUARES, MODIFIED],
    example: {
      args: [
        [['inside'], ['board']],
        [[2], [1.6]],
        [['+0.2/-0'], [0.16]],
        [[1], [-1]],
      ],
      result: [
        [
          'link',
          'value (mm)',
          'upper deviation (mm)',
          'lower deviation (mm)',
          'sensitivity',
          'sensitivity × middle of the limits (mm)',
          'sensitivity × half width (mm)',
          'share of the variance',
        ],
        ['inside', 2, 0.2, 0, 1, 2.1, 0.1, 0.2809],
        ['board', 1.6, 0.16, -0.16, -1, -1.6, 0.16, 0.7191],
        ['total, worst case', 0.4, 0.36, -0.16, '–', 0.5, 0.26, '–'],
        ['total, root sum square', 0.4, 0.2887, -0.0887, '–', 0.5, 0.1887, '–'],
        ['total, modified root sum square', 0.4, 0.36, -0.16, '–', 0.5, 0.26, '–'],
      ],
    },
    notLive: 'a table as long as its ranges',
    caution: 'The root sum squares take the dimensions as independent; those of one tool are not. A blank name is shown as –.',
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
      ...HANDBOOK,
      sources: SIMULATED,
      example: { args: [[[5], [0.02]], [[0.3], ['+0.4/-0.4']], 1, 'none', 20, 1000], row: 5, values: ['share inside', 1, '–'] },
      notLive: 'a simulation',
      caution: `Normal draws take ± as 3 standard deviations and may pass it. ${INDEPENDENT}`,
    },
  ),
  card('STACK.PPM', T, [mean, sigma, lower, upper], F.ppmOutside, {
    result: { shape: 'number', name: 'parts per million outside the limits', unit: '' },
    ...HANDBOOK,
    sources: [NORMAL],
    example: { args: [10, 0.1, 9.7, 10.3], result: 2699.8 },
    caution: 'It takes the distribution as normal and steady; few processes are so far into the tails.',
  }),
  card('STACK.CPK', T, [mean, sigma, lower, upper], F.capability, {
    result: { shape: 'number', name: 'capability index', symbol: 'C_pk', unit: '' },
    ...HANDBOOK,
    sources: [CAPABILITY],
    example: { args: [10, 0.1, 9.4, 10.45], result: 1.5 },
  }),
];
