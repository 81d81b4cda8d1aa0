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
  read: (raw, place) => (typeof raw === 'string' && raw.trim().toLowerCase() === 'none' ? 'none' : length.read(raw, place)),
};

export const UPPER_LIMIT: Kind<LimitMm> = agreeing(LOWER_LIMIT, (upper, place) => {
  const lower = place.read.get('lower') as LimitMm;
  if (lower === 'none' && upper === 'none') throw wrongInput('give at least one of lower and upper');
  if (lower !== 'none' && upper !== 'none' && upper <= lower) throw wrongInput(`must be above lower, ${lower} mm`);
});
