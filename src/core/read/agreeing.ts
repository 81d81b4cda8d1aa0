// A value that must agree with arguments read before it.
import type { Earlier, Kind } from '../card';

/** `check` throws Refused. */
export function agreeing<T>(kind: Kind<T>, check: (value: T, earlier: Earlier) => void): Kind<T> {
  return {
    ...kind,
    read(raw, earlier) {
      const value = kind.read(raw, earlier);
      check(value, earlier);
      return value;
    },
  };
}
