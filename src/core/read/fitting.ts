// A value that must also fit those that stand before it: a hole inside its boss, a pin inside its hub.
import type { Earlier, Kind } from '../card';
import { wrongInput } from '../refuse';

/** `words` finish the sentence "must be …". */
export function fitting<T>(kind: Kind<T>, words: string, fits: (value: T, read: Earlier) => boolean): Kind<T> {
  return {
    ...kind,
    accepts: `${kind.accepts}; ${words}`,
    read(raw, earlier) {
      const value = kind.read(raw, earlier);
      if (!fits(value, earlier)) throw wrongInput(`must be ${words}`);
      return value;
    },
  };
}

export const below = (earlier: string, kind: Kind<number>): Kind<number> =>
  fitting(kind, `below ${earlier}`, (value, read) => value < (read.get(earlier) as number));
export const above = (earlier: string, kind: Kind<number>): Kind<number> =>
  fitting(kind, `above ${earlier}`, (value, read) => value > (read.get(earlier) as number));
