import { card, ITSELF, type Calculation, type Comparison, type Relation } from '../card';

import { choice, DEVIATION, numeric, param } from '../read/params';
import { LENGTH, LINE_LOAD, SECOND_MOMENT, SHARE, STRESS } from '../read/quantity';
import { about, exists } from '../read/relation';
import { ofMaterial } from '../read/sources';
import * as F from './seal';

const T = 'Ribs, lip, mould';
const mm = numeric(LENGTH);
const loaded = [
  param('line_load', numeric(LINE_LOAD), { symbol: 'q', above: 0 }),
  param('modulus', ofMaterial(STRESS, 'modulus'), { symbol: 'E', above: 0 }),
  param('second_moment', numeric(SECOND_MOMENT), { symbol: 'I', above: 0 }),
] as const;
const ends = (comparison: Comparison, refusal: Parameters<typeof exists>[1]) =>
  param('ends', choice<F.RimEnds>('ends', { clamped: [], simple: [] }), { default: 'clamped', relation: exists([comparison], refusal) });
const LOADED = ['line_load', 'modulus', 'second_moment', ITSELF];
/** At its least the size is still there. */
const leavesMm = (size: string): Comparison => ['>', '.lowerMm', ['-', 0, size]];
const leaves = (size: string): Relation => exists([leavesMm(size)], () => `at worst case nothing is left of ${size}`);
const cord = param('cord', mm, { symbol: 'd', above: 0 });
const depth = param('groove_depth', mm, { symbol: 'h', above: 0 });
const SQUEEZED = ['cord', 'cord_tol', 'groove_depth', 'depth_tol', 'gap', 'gap_tol'];

export const SEAL_CARDS: readonly Calculation[] = [
  card(
    'RIM.SAG',
    T,
    [
      param('pitch', mm, { symbol: 'L', above: 0 }),
      ...loaded,
      ends(
        ['>=', ['*', F.LARGEST_RIM_SAG, 'pitch'], { formula: { rimSagMm: F.rimSagMm }, of: ['pitch', ...LOADED] }],
        () => 'the rim would open by more than a tenth of the pitch, beyond the range of the formula',
      ),
    ],
    F.rimSagMm,
    { result: { shape: 'number', name: 'opening between two screws', symbol: 'y', unit: 'mm' } },
  ),
  card(
    'RIM.PITCH',
    T,
    [
      param('sag', mm, { symbol: 'y', above: 0 }),
      ...loaded,
      ends(
        ['>=', ['*', F.LARGEST_RIM_SAG, { formula: { rimPitchMm: F.rimPitchMm }, of: ['sag', ...LOADED] }], 'sag'],
        number => `${about(number('sag'))} is more than a tenth of the pitch, beyond the range of the formula`,
      ),
    ],
    F.rimPitchMm,
    { result: { shape: 'number', name: 'screw pitch', symbol: 'L', unit: 'mm' } },
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
            const thicker = Math.round(-1000 * F.leastSqueeze(...given)) / 10;
            return `at worst the cord does not touch: over groove_depth and gap it would have to be ${thicker} % thicker`;
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
          () => 'at worst case the cord fills the groove solid: make groove_width or groove_depth larger',
        ),
      }),
    ],
    F.sealFill,
    { result: { shape: 'number', name: 'largest share of the groove that is filled', unit: '' } },
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
    { result: { shape: 'number', name: 'stretch', symbol: 's', unit: '' } },
  ),
];
