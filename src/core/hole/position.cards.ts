import { card, ITSELF, type Calculation } from '../card';

import { numeric, param } from '../read/params';
import { LENGTH, STRESS } from '../read/quantity';
import { about, exists } from '../read/relation';
import { hole, screwDiameter } from '../read/sources';
import * as F from './position';

const T = 'Holes and core pins';
const length = numeric(LENGTH);
const screw = param('screw', screwDiameter('max'), { symbol: 'F', above: 0 });
const pinLength = param('length', length, { symbol: 'L', above: 0 });
const pinDiameter = param('diameter', hole(), { symbol: 'd', above: 0 });
const fixed = [
  screw,
  param('zone_boss', length, { symbol: 'T1', atLeast: 0 }),
  param('zone_hole', length, { symbol: 'T2', atLeast: 0 }),
] as const;
const smallestHole = { shape: 'number', name: 'smallest hole', symbol: 'H', unit: 'mm' } as const;

export const POSITION_CARDS: readonly Calculation[] = [
  card('HOLE.FLOATING', T, [screw, param('zone', length, { symbol: 'T', atLeast: 0 })], F.floatingHoleMm, { result: smallestHole }),
  card('HOLE.FIXED', T, fixed, F.fixedHoleMm, { result: smallestHole }),
  card(
    'HOLE.PROJECTED',
    T,
    [...fixed, param('plate', length, { symbol: 'P', above: 0 }), param('thread', length, { symbol: 'D', above: 0 })],
    F.unprojectedHoleMm,
    { result: smallestHole },
  ),
  card('POSITION.ZONE', T, [param('dx', length, { symbol: 'x' }), param('dy', length, { symbol: 'y', sameAs: 'dx' })], F.positionZoneMm, {
    result: { shape: 'number', name: 'position zone, a diameter', symbol: 'T', unit: 'mm' },
  }),
  card('PIN.RATIO', T, [pinLength, pinDiameter], F.pinRatio, { result: { shape: 'number', name: 'length ÷ diameter', unit: '' } }),
  card(
    'PIN.DEFLECTION',
    T,
    [
      pinLength,
      pinDiameter,
      param('pressure_difference', numeric(STRESS), { symbol: 'p', above: 0 }),
      param('modulus', numeric(STRESS), {
        symbol: 'E',
        above: 0,
        default: 210000,
        relation: exists(
          [
            [
              '>=',
              ['*', F.LARGEST_PIN_DEFLECTION, 'length'],
              { formula: { pinDeflectionMm: F.pinDeflectionMm }, of: ['length', 'diameter', 'pressure_difference', ITSELF] },
            ],
          ],
          (number, modulusMpa) =>
            `the pin would bend by ` +
            `${about(F.pinDeflectionMm(number('length'), number('diameter'), number('pressure_difference'), modulusMpa))}; ` +
            'the formula holds for at most a tenth of its length',
        ),
      }),
    ],
    F.pinDeflectionMm,
    { result: { shape: 'number', name: 'deflection of the tip', symbol: 'δ', unit: 'mm' } },
  ),
];
