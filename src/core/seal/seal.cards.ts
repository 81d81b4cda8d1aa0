import { card, GEOMETRY, ITSELF, type Card, type Comparison, type Relation } from '../card';
import type { Source } from '../kinds';
import { choice, DEVIATION, numeric, param } from '../read/params';
import { LENGTH, LINE_LOAD, SECOND_MOMENT, SHARE, STRESS } from '../read/quantity';
import { about, exists } from '../read/relation';
import { ofMaterial } from '../read/sources';
import * as F from './seal';

const T = 'Ribs, lip, mould';
const mm = numeric(LENGTH);
const BEAM: readonly Source[] = [
  { title: 'Roark’s Formulas for Stress and Strain, 7th ed., table 8.1, cases 2d and 2e', held: 'from memory' },
];
const loaded = [
  param('line_load', numeric(LINE_LOAD), { symbol: 'q', above: 0 }),
  param('modulus', ofMaterial(STRESS, 'modulus'), { symbol: 'E', above: 0 }),
  param('second_moment', numeric(SECOND_MOMENT), { symbol: 'I', above: 0 }),
] as const;
const ends = (comparison: Comparison, refusal: Parameters<typeof exists>[1]) =>
  param('ends', choice<F.RimEnds>('ends', { clamped: [], simple: [] }), { default: 'clamped', relation: exists([comparison], refusal) });
const LOADED = ['line_load', 'modulus', 'second_moment', ITSELF];
const RIM_CAUTION =
  'An estimate: the screws hold still, the rim does not shear or twist. Plastic creeps: over time the creep modulus counts. Test.';

const SEAL_CAUTION = 'A seal is tested: no degree of protection is claimed. Set and swelling of the rubber are not computed.';
const VOLUME: readonly Source[] = [...GEOMETRY, { title: 'rubber keeps its volume: thinner by 1/√(1 + stretch)', held: 'derived' }];
/** At its least the size is still there. */
const leavesMm = (size: string): Comparison => ['>', '.lowerMm', ['-', 0, size]];
const leaves = (size: string): Relation => exists([leavesMm(size)], () => `nothing is left of ${size}`);
const cord = param('cord', mm, { symbol: 'd', above: 0 });
const depth = param('groove_depth', mm, { symbol: 'h', above: 0 });
const SQUEEZED = ['cord', 'cord_tol', 'groove_depth', 'depth_tol', 'gap', 'gap_tol'];

export const SEAL_CARDS: readonly Card[] = [
  card(
    'RIM.SAG',
    T,
    [
      param('pitch', mm, { symbol: 'L', above: 0 }),
      ...loaded,
      ends(
        ['>=', ['*', F.LARGEST_RIM_SAG, 'pitch'], { formula: { rimSagMm: F.rimSagMm }, of: ['pitch', ...LOADED] }],
        () => 'the rim would open by more than a tenth of the pitch, where the formula ends',
      ),
    ],
    F.rimSagMm,
    {
      result: { shape: 'number', name: 'opening between two screws', symbol: 'y', unit: 'mm' },
      kind: 'handbook formula',
      sources: BEAM,
      example: { args: [40, 0.5, 2400, 80], result: 0.01736 },
      caution: RIM_CAUTION,
    },
  ),
  card(
    'RIM.PITCH',
    T,
    [
      param('sag', mm, { symbol: 'y', above: 0 }),
      ...loaded,
      ends(
        ['>=', ['*', F.LARGEST_RIM_SAG, { formula: { rimPitchMm: F.rimPitchMm }, of: ['sag', ...LOADED] }], 'sag'],
        number => `${about(number('sag'))} is more than a tenth of the pitch, where the formula ends`,
      ),
    ],
    F.rimPitchMm,
    {
      result: { shape: 'number', name: 'screw pitch', symbol: 'L', unit: 'mm' },
      kind: 'handbook formula',
      sources: BEAM,
      example: { args: [0.05, 0.5, 2400, 80], result: 52.11 },
      caution: RIM_CAUTION,
    },
  ),
  card(
    'SEAL.SQUEEZE',
    T,
    [
      cord,
      param('cord_tol', DEVIATION, { symbol: 't_d', relation: leaves('cord') }),
      depth,
      param('depth_tol', DEVIATION, { symbol: 't_h', relation: leaves('groove_depth') }),
      param('gap', mm, { symbol: 'g', default: 0 }),
      param('gap_tol', DEVIATION, { symbol: 't_g', default: 0 }),
      param('stretch', numeric(SHARE), {
        symbol: 's',
        atLeast: 0,
        atMost: 1,
        default: 0,
        relation: {
          holds: [['>=', { formula: { leastSqueeze: F.leastSqueeze }, of: [...SQUEEZED, ITSELF] }, 0]],
          refusal: (preceding, stretch) => {
            const given = [...SQUEEZED.map(name => preceding.get(name)), stretch] as Parameters<typeof F.leastSqueeze>;
            return `at worst the cord does not touch: it would have to be ${Math.round(-1000 * F.leastSqueeze(...given)) / 10} % thicker`;
          },
        },
      }),
    ],
    F.sealSqueeze,
    {
      result: {
        shape: 'row',
        columns: [
          { name: 'least', unit: '' },
          { name: 'nominal', unit: '' },
          { name: 'largest', unit: '' },
        ],
      },
      kind: 'geometry',
      sources: VOLUME,
      example: { args: [2, 0.08, 1.5, 0.05, 0.1, 0.1, '2 %'], result: [[0.0795, 0.192, 0.2959]] },
      caution: SEAL_CAUTION,
    },
  ),
  card(
    'SEAL.FILL',
    T,
    [
      cord,
      param('groove_width', mm, { symbol: 'b', above: 0 }),
      depth,
      param('cord_tol', DEVIATION, { symbol: 't_d', default: 0, relation: leaves('cord') }),
      param('width_tol', DEVIATION, { symbol: 't_b', default: 0, relation: leaves('groove_width') }),
      param('depth_tol', DEVIATION, {
        symbol: 't_h',
        default: 0,
        relation: exists(
          [
            leavesMm('groove_depth'),
            ['<', { formula: { sealFill: F.sealFill }, of: ['cord', 'groove_width', 'groove_depth', 'cord_tol', 'width_tol', ITSELF] }, 1],
          ],
          () => 'at worst the cord fills the groove solid',
        ),
      }),
    ],
    F.sealFill,
    {
      result: { shape: 'number', name: 'largest share of the groove that is filled', unit: '' },
      kind: 'geometry',
      sources: GEOMETRY,
      example: { args: [2, 2.8, 1.5, 0.08, 0.05, 0.05], result: 0.8521 },
      caution: SEAL_CAUTION,
    },
  ),
  card(
    'SEAL.STRETCH',
    T,
    [
      param('ring_inside', mm, { symbol: 'd_r', above: 0 }),
      param('groove_inside', mm, {
        symbol: 'd_g',
        above: 0,
        relation: { holds: [['>=', ITSELF, 'ring_inside']], words: 'at least ring_inside: a loose ring is not stretched' },
      }),
    ],
    F.sealStretch,
    {
      result: { shape: 'number', name: 'stretch', symbol: 's', unit: '' },
      kind: 'geometry',
      sources: GEOMETRY,
      example: { args: [50, 51], result: 0.02 },
      caution: SEAL_CAUTION,
    },
  ),
];
