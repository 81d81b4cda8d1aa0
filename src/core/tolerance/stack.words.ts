import type { CardWords } from '../card';

const ABOUT_NOMINAL = 'An asymmetric tolerance counts as half its width about its middle.';
const INDEPENDENT = 'It assumes independent dimensions. Those moulded in one tool are not: they shrink together; add them linearly.';
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
export const SIMULATED = [
  { title: 'generator xoroshiro128+ of 2018, 32 bits a draw', held: 'compared with published values' },
  { title: 'polar method for normal draws, SIAM Review 6, 1964', held: 'from memory' },
];

export const STACK_WORDS: Readonly<Record<string, CardWords>> = {
  'STACK.NOMINAL': {
    ...HANDBOOK,
    sources: [LINEAR],
    example: {
      args: [
        [[10], [6], [3.5]],
        [[1], [-1], [-1]],
      ],
      result: 0.5,
    },
  },
  'STACK.WORST': {
    ...HANDBOOK,
    sources: [LINEAR],
    example: { args: [[[0.003], [0.001], [0.005], [0.001]]], result: 0.01 },
    caution: ABOUT_NOMINAL,
  },
  'STACK.RSS': {
    ...HANDBOOK,
    sources: [SQUARES, INFLATED],
    example: { args: [[[0.3], [0.4]]], result: 0.5 },
    caution: `${INDEPENDENT} ${ABOUT_NOMINAL}`,
  },
  'STACK.MODIFIED': {
    ...HANDBOOK,
    sources: [MODIFIED],
    example: { args: [[[0.003], [0.001], [0.005], [0.001]]], result: 0.008 },
    caution: `${INDEPENDENT} ${ABOUT_NOMINAL}`,
  },
  'STACK.SHARE': {
    ...HANDBOOK,
    sources: [SQUARES],
    example: { args: [[[0.3], [0.4]]], result: [[0.36], [0.64]] },
    caution: INDEPENDENT,
  },
  'STACK.TABLE': {
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
    caution: 'The root sum squares assume independent dimensions; those moulded in one tool are not. A blank name is shown as –.',
  },
  'STACK.SIMULATE': {
    ...HANDBOOK,
    sources: SIMULATED,
    example: { args: [[[5], [0.02]], [[0.3], ['+0.4/-0.4']], 1, 'none', 20, 1000], row: 5, values: ['share inside', 1, '–'] },
    notLive: 'a simulation',
    caution: `Normal draws take ± as 3 standard deviations and may lie beyond it. ${INDEPENDENT}`,
  },
  'STACK.PPM': {
    ...HANDBOOK,
    sources: [NORMAL],
    example: { args: [10, 0.1, 9.7, 10.3], result: 2699.8 },
    caution: 'It assumes a normal, stable process; few processes stay normal so far into the tails.',
  },
  'STACK.CPK': { ...HANDBOOK, sources: [CAPABILITY], example: { args: [10, 0.1, 9.4, 10.45], result: 1.5 } },
};
