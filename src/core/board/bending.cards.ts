import { card, ITSELF, type Calculation, type Relation } from '../card';
import { choice, numeric, param } from '../read/params';
import { FORCE, LENGTH, MASS, RATIO, STRESS } from '../read/quantity';
import { exists } from '../read/relation';
import { ofMaterial } from '../read/sources';
import * as F from './bending';

const T = 'Board and supports';
const mm = numeric(LENGTH);
const thickness = param('thickness', mm, { symbol: 't', above: 0 });
const width = (symbol: string) => param('width', mm, { symbol, above: 0 });
const modulus = param('modulus', ofMaterial(STRESS, 'modulus'), { symbol: 'E', above: 0 });
const HELD = { simple: [], clamped: [] } as const;
const OF = ['force', 'span', 'width', 'thickness', 'modulus', ITSELF];
const small: Relation = exists(
  [
    ['>=', ['*', F.LARGEST_SAG, 'span'], { formula: { boardSagMm: F.boardSagMm }, of: OF }],
    ['>=', F.LARGEST_BOARD_STRAIN, { formula: { boardStrain: F.boardStrain }, of: OF }],
  ],
  () => 'the formula holds for a sag of at most a tenth of the span and a strain of at most 10 %',
);
const STRIP = [
  param('force', numeric(FORCE), { symbol: 'F', above: 0 }),
  param('span', mm, { symbol: 'L', above: 0 }),
  width('w'),
  thickness,
  modulus,
  param('ends', choice<F.BoardEnds>('ends', HELD), { default: 'simple', relation: small }),
] as const;

export const BENDING_CARDS: readonly Calculation[] = [
  card('BOARD.SAG', T, STRIP, F.boardSagMm, {
    result: { shape: 'number', name: 'sag in the middle of the span', symbol: 'y', unit: 'mm' },
  }),
  card('BOARD.STRAIN', T, STRIP, F.boardStrain, { result: { shape: 'number', name: 'strain on the surface', symbol: 'ε', unit: '1e-6' } }),
  card(
    'BOARD.FREQUENCY',
    T,
    [
      param('length', mm, { symbol: 'a', above: 0 }),
      width('b'),
      thickness,
      param('mass', numeric(MASS), { symbol: 'm', above: 0 }),
      modulus,
      param('poisson', ofMaterial(RATIO, 'poisson'), { symbol: 'ν', above: 0, atMost: 0.5 }),
      param('edges', choice<F.BoardEdges>('edges', { ...HELD, corners: [] }), {
        relation: exists(
          [['>=', F.LARGEST_CORNER_RATIO, { formula: { cornerRatio: F.cornerRatio }, of: ['length', 'width', ITSELF] }]],
          () => `for corners the published numbers end where one side is ${F.LARGEST_CORNER_RATIO} times the other`,
        ),
      }),
    ],
    F.boardFrequencyHz,
    { result: { shape: 'number', name: 'first natural frequency', symbol: 'f', unit: 'Hz' } },
  ),
];
