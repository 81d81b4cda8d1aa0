import { type Calculation, card } from '../core/card';
import { numeric, param } from '../core/read/params';
import { RATIO } from '../core/read/quantity';
import { jointCard } from './card';
import { base, inputs, T } from './joint.cards';

/** What prints the formulas of the joint. */
export const PRINTED_JOINT_CARDS: readonly Calculation[] = [
  card('JOINT.CARD', T, [inputs, param('variant', numeric(RATIO), { atLeast: 1, default: 1 }), base], jointCard, {
    result: { shape: 'table', columns: ['name', 'value', 'unit', 'formula', 'state', 'source'].map(name => ({ name, unit: '' })) },
  }),
];
