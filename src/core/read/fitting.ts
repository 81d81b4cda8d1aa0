// A value that must also fit one that stands before it: a hole inside its boss, a seat under its head.
import type { Kind } from '../card';
import { wrongInput } from '../refuse';

/** `of`: what of the value is compared, where it is not a number itself. */
export function below<T>(earlier: string, kind: Kind<T>, of: (value: T) => number = Number): Kind<T> {
  return comparing(kind, `below ${earlier}`, earlier, (value, limit) => of(value) < limit);
}

export function above(earlier: string, kind: Kind<number>): Kind<number> {
  return comparing(kind, `above ${earlier}`, earlier, (value, limit) => value > limit);
}

function comparing<T>(kind: Kind<T>, words: string, earlier: string, fits: (value: T, limit: number) => boolean): Kind<T> {
  return {
    ...kind,
    accepts: `${kind.accepts}; ${words}`,
    read(raw, place) {
      const value = kind.read(raw, place);
      const limit = place.read.get(earlier) as number;
      if (!fits(value, limit)) throw wrongInput(`must be ${words}, ${limit} mm`);
      return value;
    },
  };
}
