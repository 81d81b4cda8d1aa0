import { card, type Calculation } from '../card';
import { choice, numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { SIZE_LIMITS } from '../read/size-limits';
import { WHOLE } from '../read/whole';
import { angleDeg, lengthMm, limitsMm } from './unit';
import type { LengthKind } from './unit-bands';
import { dualText, unitCheck } from './unit-text';

const T = 'Units';

export const UNIT_CARDS: readonly Calculation[] = [
  card('LENGTH.MM', T, [param('length', numeric(LENGTH), { symbol: 'l' })], lengthMm, {
    result: { shape: 'number', name: 'length', symbol: 'l', unit: 'mm' },
  }),
  card('ANGLE.DEG', T, [param('angle', numeric(ANGLE), { symbol: 'α' })], angleDeg, {
    result: { shape: 'number', name: 'angle', symbol: 'α', unit: '°' },
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
    { result: { shape: 'text', name: 'length in both units' } },
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
  }),
  card(
    'UNIT.CHECK',
    T,
    [
      param('length', numeric(LENGTH), { symbol: 'l', above: 0 }),
      param('kind', choice<LengthKind>('kind', { wall: [], screw: [], head: [], 'board edge': [], 'board thickness': [], height: [] })),
    ],
    unitCheck,
    { result: { shape: 'text', name: 'ok, or what the length looks like' } },
  ),
];
