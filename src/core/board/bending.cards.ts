import { card, ITSELF, type Card, type Relation } from '../card';
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
const BENT =
  'An estimate: a strip as wide as what carries, whole and of one thickness. Real ends lie between simple and clamped. What parts and ' +
  'solder bear, and fatigue, are not computed.';

export const BENDING_CARDS: readonly Card[] = [
  card('BOARD.SAG', T, STRIP, F.boardSagMm, {
    result: { shape: 'number', name: 'sag in the middle of the span', symbol: 'y', unit: 'mm' },
    kind: 'handbook formula',
    sources: [
      {
        title: 'beam with a force in the middle, F·L³/(48·E·I), with clamped ends F·L³/(192·E·I)',
        held: 'from memory, integrated in a test',
      },
    ],
    example: { args: [10, 60, 20, 1.6, 20000], result: 0.32959 },
    caution: BENT,
  }),
  card('BOARD.STRAIN', T, STRIP, F.boardStrain, {
    result: { shape: 'number', name: 'strain on the surface', symbol: 'ε', unit: '1e-6' },
    kind: 'handbook formula',
    sources: [
      { title: 'beam with a force in the middle, moment F·L/4, with clamped ends F·L/8', held: 'from memory, integrated in a test' },
    ],
    example: { args: [10, 60, 20, 1.6, 20000], result: 878.906 },
    caution: BENT,
  }),
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
    {
      result: { shape: 'number', name: 'first natural frequency', symbol: 'f', unit: 'Hz' },
      kind: 'handbook formula',
      sources: [
        { title: 'thin plate, exact for simple edges', held: 'derived' },
        {
          title: 'clamped: Warburton 1954, as in Blevins, Formulas for Natural Frequency and Mode Shape, 1979: G 1.506, H and J 1.248',
          held: 'from memory',
        },
        { title: 'corners: Blevins, ν 0.3: 7.12, 8.92, 9.29, 9.39 at sides 1, 1.5, 2, 2.5 : 1, a line between', held: 'from memory' },
      ],
      example: { args: [100, 80, 1.6, 60, 20000, 0.2, 'simple'], result: 391.942 },
      caution:
        'An estimate: nothing but bending, the mass spread evenly; slots and heavy parts change it. Clamped within 1 %, corners within ' +
        '5 % of Ritz’s method. What vibration and fatigue do to a board is not computed.',
    },
  ),
];
