import { card, type Card } from '../core/card';
import { numeric, param } from '../core/read/params';
import { RATIO } from '../core/read/quantity';
import { jointCard } from './card';
import { base, D1, GENERAL, inputs, T } from './joint.cards';

export const PRINTED_JOINT_CARDS: readonly Card[] = [
  card('JOINT.CARD', T, [inputs, param('variant', numeric(RATIO), { atLeast: 1, default: 1 }), base], jointCard, {
    result: { shape: 'table', columns: ['name', 'value', 'unit', 'formula', 'state', 'source'].map(name => ({ name, unit: '' })) },
    ...GENERAL,
    example: {
      args: [D1],
      row: 17,
      values: ['engagement min', 7.34, 'mm', '16 − 0.8 − (2.5 + 1.6 + 0.1 + 0.16) − (0.8 + 0.1) − 2.6 = 7.34', '–', 'plane geometry'],
    },
    notLive: 'text',
  }),
];
