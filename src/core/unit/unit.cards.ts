import { card, GEOMETRY, type Card } from '../card';
import { numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { angleDeg, lengthMm } from './unit';

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
];
