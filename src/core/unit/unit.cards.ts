import { card, COMMON_PRACTICE, GEOMETRY, type Card } from '../card';
import { choice, numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { SIZE_LIMITS } from '../read/size-limits';
import { WHOLE } from '../read/whole';
import { angleDeg, lengthMm, limitsMm } from './unit';
import type { LengthKind } from './unit-bands';
import { dualText, unitCheck } from './unit-text';

const T = 'Units';
const INTERNATIONAL_INCH = [{ title: 'international inch of 1959: 25.4 mm exactly', held: 'from memory' }];

export const UNIT_CARDS: readonly Card[] = [
  card('LENGTH.MM', T, [param('length', numeric(LENGTH), { symbol: 'l' })], lengthMm, {
    result: { shape: 'number', name: 'length', symbol: 'l', unit: 'mm' },
    kind: 'geometry',
    sources: INTERNATIONAL_INCH,
    example: { args: ['0.167 in + 0.25 mm'], result: 4.4918 },
  }),
  card('ANGLE.DEG', T, [param('angle', numeric(ANGLE), { symbol: 'α' })], angleDeg, {
    result: { shape: 'number', name: 'angle', symbol: 'α', unit: '°' },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: ["0°30'"], result: 0.5 },
  }),
  card(
    'DUAL',
    T,
    [
      param('length', numeric(LENGTH), { symbol: 'l' }),
      param('mm_places', WHOLE, { atLeast: 1, atMost: 9, default: 2 }),
      param('in_places', WHOLE, { atLeast: 1, atMost: 9, default: 3 }),
    ],
    dualText,
    {
      result: { shape: 'text', name: 'length in both units' },
      kind: 'geometry',
      sources: INTERNATIONAL_INCH,
      example: { args: ['0.167 in'], result: '4.24 mm (0.167 in)' },
      notLive: 'text',
    },
  ),
  card('LIMITS', T, [param('text', SIZE_LIMITS)], limitsMm, {
    result: {
      shape: 'row',
      columns: [
        { name: 'nominal', unit: 'mm' },
        { name: 'lower', unit: 'mm' },
        { name: 'upper', unit: 'mm' },
      ],
    },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: ['10 -0.2/-0.4'], result: [[10, 9.6, 9.8]] },
    notLive: 'it reads text',
  }),
  card(
    'UNIT.CHECK',
    T,
    [
      param('length', numeric(LENGTH), { symbol: 'l', above: 0 }),
      param('kind', choice<LengthKind>('kind', { wall: [], screw: [], head: [], 'board edge': [], 'board thickness': [], height: [] })),
    ],
    unitCheck,
    {
      result: { shape: 'text', name: 'ok, or what the length looks like' },
      kind: 'common practice',
      sources: COMMON_PRACTICE,
      example: { args: [3.15, 'board edge'], result: 'looks like inches (then 80.01 mm); board edge is usually 12 to 500 mm' },
      notLive: 'a sentence',
      caution: 'The bands are wide: ok means only that no slip shows.',
    },
  ),
];
