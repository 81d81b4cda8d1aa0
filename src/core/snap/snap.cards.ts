import { card, ITSELF, type Calculation, type Relation, type Term } from '../card';

import { numeric, param } from '../read/params';
import { ANGLE, FORCE, LENGTH, RATIO, SHARE, STRESS } from '../read/quantity';
import { exists } from '../read/relation';
import { ofMaterial } from '../read/sources';
import { atanDeg, LIMIT_MARGIN } from '../maths';
import * as F from './snap';

const T = 'Snap hooks (estimates)';
const mm = numeric(LENGTH);
const THIRD = 'the formula holds for a deflection of at most a third of the length';
const reach: Relation = exists([['>=', ['*', F.LARGEST_DEFLECTION, ITSELF], 'deflection']], () => THIRD);
const strain: Term = { formula: { snapStrain: F.snapStrain }, of: ['deflection', 'length', 'thickness', ITSELF] };
const small: Relation = exists(
  [['>=', F.LARGEST_HOOK_STRAIN, strain]],
  (number, tip) =>
    `the formula holds for a strain of at most ${100 * F.LARGEST_HOOK_STRAIN} %, and this is ` +
    `${(100 * F.snapStrain(number('deflection'), number('length'), number('thickness'), tip)).toPrecision(3)} %`,
);

const deflection = param('deflection', mm, { symbol: 'y', above: 0 });
const length = param('length', mm, { symbol: 'L', above: 0 });
const deflected = param('length', mm, { symbol: 'L', above: 0, relation: reach });
const thickness = param('thickness', mm, { symbol: 't', above: 0 });
const tip = { symbol: 't_t', above: 0, sameAs: 'thickness' };
const strained = param('tip_thickness', mm, { ...tip, relation: small });

export const SNAP_CARDS: readonly Calculation[] = [
  card('SNAP.STRAIN', T, [deflection, deflected, thickness, strained], F.snapStrain, {
    result: { shape: 'number', name: 'largest strain', symbol: 'ε', unit: '' },
  }),
  card(
    'SNAP.DEFLECTION',
    T,
    [
      param('strain', numeric({ ...SHARE, example: '0.02 or "2 %"' }), { symbol: 'ε', above: 0, atMost: F.LARGEST_HOOK_STRAIN }),
      length,
      thickness,
      param('tip_thickness', mm, {
        ...tip,
        relation: exists(
          [
            [
              '>=',
              ['*', F.LARGEST_DEFLECTION, 'length'],
              { formula: { snapDeflectionMm: F.snapDeflectionMm }, of: ['strain', 'length', 'thickness', ITSELF] },
            ],
          ],
          () => THIRD,
        ),
      }),
    ],
    F.snapDeflectionMm,
    { result: { shape: 'number', name: 'deflection at the tip', symbol: 'y', unit: 'mm' } },
  ),
  card(
    'SNAP.FORCE',
    T,
    [
      deflection,
      deflected,
      param('width', mm, { symbol: 'w', above: 0 }),
      thickness,
      param('modulus', ofMaterial(STRESS, 'modulus'), { symbol: 'E', above: 0 }),
      strained,
    ],
    F.snapForceN,
    { result: { shape: 'number', name: 'bending force at the tip', symbol: 'F', unit: 'N' } },
  ),
  card(
    'SNAP.MATING',
    T,
    [
      param('force', numeric(FORCE), { symbol: 'F', above: 0 }),
      param('angle', numeric(ANGLE), { symbol: 'α', above: 0, below: 90 }),
      param('friction', numeric(RATIO), {
        symbol: 'μ',
        above: 0,
        atMost: 1,
        relation: exists(
          [['>', { formula: { rampSlip: F.rampSlip }, of: ['angle', ITSELF] }, LIMIT_MARGIN]],
          (_, friction) => `the ramp is self-locking from ${Math.round(100 * atanDeg(1 / friction)) / 100}°: no force moves it`,
        ),
      }),
    ],
    F.matingForceN,
    { result: { shape: 'number', name: 'axial force', symbol: 'F_a', unit: 'N' } },
  ),
];
