// A value that must agree with arguments read before it.
import type { Kind, Place } from '../card';

/** `check` throws Refused. */
export function agreeing<T>(kind: Kind<T>, check: (value: T, place: Place) => void): Kind<T> {
  return {
    ...kind,
    read(raw, place) {
      const value = kind.read(raw, place);
      check(value, place);
      return value;
    },
  };
}
