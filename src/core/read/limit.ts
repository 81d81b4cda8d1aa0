// Limits of a result: a length, or "none" on one side.
import type { Kind } from '../card';
import { wrongInput } from '../refuse';
import { agreeing } from './agreeing';
import { numeric } from './params';
import { LENGTH } from './quantity';

export type LimitMm = number | 'none';

const length = numeric(LENGTH);

export const LOWER_LIMIT: Kind<LimitMm> = {
  ...length,
  accepts: `${length.accepts}; or "none"`,
  read: (raw, earlier) => (typeof raw === 'string' && raw.trim().toLowerCase() === 'none' ? 'none' : length.read(raw, earlier)),
};

export const UPPER_LIMIT: Kind<LimitMm> = agreeing(LOWER_LIMIT, (upper, earlier) => {
  const lower = earlier.get('lower') as LimitMm;
  if (lower === 'none' && upper === 'none') throw wrongInput('give at least one of lower and upper');
  if (lower !== 'none' && upper !== 'none' && upper <= lower) throw wrongInput(`must be above lower, ${lower} mm`);
});
