// Counts: places, samples, seeds.
import type { Kind } from '../card';
import { wrongInput } from '../refuse';
import { numeric, ONE } from './params';
import { RATIO } from './quantity';

const one = numeric(RATIO);

export const WHOLE: Kind<number> = {
  ...ONE,
  is: 'whole',
  noun: RATIO.noun,
  hasZero: true,
  read(raw, preceding) {
    const value = one.read(raw, preceding);
    if (!Number.isInteger(value)) throw wrongInput('give a whole number');
    return value;
  },
};
