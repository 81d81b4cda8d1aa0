// Limits of a result: a length, or "none" on one side.
import type { Kind } from '../card';
import { numeric, ONE } from './params';
import { LENGTH } from './quantity';

export type LimitMm = number | 'none';

const length = numeric(LENGTH);

export const LIMIT: Kind<LimitMm> = {
  ...ONE,
  is: 'limit',
  quantity: LENGTH,
  noun: LENGTH.noun,
  unit: LENGTH.unit,
  hasZero: true,
  read: (raw, preceding) => (typeof raw === 'string' && raw.trim().toLowerCase() === 'none' ? 'none' : length.read(raw, preceding)),
};
