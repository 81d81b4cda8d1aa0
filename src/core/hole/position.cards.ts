import { card, COMMON_PRACTICE, GEOMETRY, ITSELF, type Card } from '../card';
import type { Source } from '../kinds';
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
const APPENDIX: readonly Source[] = [
  { title: 'ASME Y14.5 (1994 and later), non-mandatory appendix B', held: 'read in secondary copies; edition from memory' },
];
const fixed = [
  screw,
  param('zone_boss', length, { symbol: 'T1', atLeast: 0 }),
  param('zone_hole', length, { symbol: 'T2', atLeast: 0 }),
] as const;
const smallestHole = { shape: 'number', name: 'smallest hole', symbol: 'H', unit: 'mm' } as const;

export const POSITION_CARDS: readonly Card[] = [
  card('HOLE.FLOATING', T, [screw, param('zone', length, { symbol: 'T', atLeast: 0 })], F.floatingHoleMm, {
    result: smallestHole,
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [6, 0.44], result: 6.44 },
    caution: 'The screw just passes, without play, when everything is at its worst.',
  }),
  card('HOLE.FIXED', T, fixed, F.fixedHoleMm, {
    result: smallestHole,
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [6, 0.22, 0.22], result: 6.44 },
    caution: 'Holds for a boss zone that is projected over the part the screw goes through; without that the hole must be larger.',
  }),
  card(
    'HOLE.PROJECTED',
    T,
    [...fixed, param('plate', length, { symbol: 'P', above: 0 }), param('thread', length, { symbol: 'D', above: 0 })],
    F.unprojectedHoleMm,
    {
      result: smallestHole,
      kind: 'handbook formula',
      sources: APPENDIX,
      example: { args: [4, 0.2, 0.2, 2, 6], result: 4.5333 },
      caution: 'For a boss zone that is not projected: with a projected one HOLE.FIXED asks for less. Nothing is left over at the limit.',
    },
  ),
  card('POSITION.ZONE', T, [param('dx', length, { symbol: 'x' }), param('dy', length, { symbol: 'y', sameAs: 'dx' })], F.positionZoneMm, {
    result: { shape: 'number', name: 'position zone, a diameter', symbol: 'T', unit: 'mm' },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [0.1], result: 0.283 },
  }),
  card('PIN.RATIO', T, [pinLength, pinDiameter], F.pinRatio, {
    result: { shape: 'number', name: 'length ÷ diameter', unit: '' },
    kind: 'common practice',
    sources: COMMON_PRACTICE,
    example: { args: [12, 2.4], result: 5 },
  }),
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
    {
      result: { shape: 'number', name: 'deflection of the tip', symbol: 'δ', unit: 'mm' },
      kind: 'handbook formula',
      sources: [{ title: 'cantilever under an even load, q·L⁴/(8·E·I)', held: 'derived' }],
      example: { args: [10, 2.4, 10], result: 0.0877 },
      caution: 'An estimate: the pressure difference across the pin is seldom known, and the seat of the pin yields too.',
    },
  ),
];
