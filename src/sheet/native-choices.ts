// The functions of ordinary sheets that look at some of their arguments only: the others may have no value.
import type { Leaves } from './formula-shapes';
import { isFault, type Known, NO_VALUE, NOT_FOUND, numberOf, scalar } from './known';
import { isTruth } from './natives';
import { ordered } from './operators';

/** A part of a formula made ready: what it gives on a sheet with the leaves of one formula of its shape. */
export type Work = (sheet: string, leaves: Leaves) => Known;

export const BLANK: Work = () => null;

/** A blank is 0 as the result of a formula. */
const branch =
  (part: Work = BLANK): Work =>
  (sheet, leaves) => {
    const value = part(sheet, leaves);
    return value === null ? 0 : value;
  };

const unless =
  (isNone: (known: Known) => boolean) =>
  ([part = BLANK, otherwise]: readonly Work[]): Work => {
    const instead = branch(otherwise);
    return (sheet, leaves) => {
      const value = part(sheet, leaves);
      return isNone(value) ? instead(sheet, leaves) : value;
    };
  };

export const CHOICES: Readonly<Record<string, (parts: readonly Work[]) => Work>> = {
  IF: ([test = BLANK, then, otherwise]) => {
    const [yes, no] = [branch(then), otherwise === undefined ? () => false : branch(otherwise)];
    return (sheet, leaves) => {
      const truth = isTruth(scalar(test(sheet, leaves)));
      return typeof truth !== 'boolean' ? truth : truth ? yes(sheet, leaves) : no(sheet, leaves);
    };
  },
  IFERROR: unless(isFault),
  IFNA: unless(known => isFault(known) && known.cellError === NOT_FOUND.cellError),
  CHOOSE: ([which = BLANK, ...parts]) => {
    const branches = parts.map(branch);
    return (sheet, leaves) => {
      const number = numberOf(scalar(which(sheet, leaves)));
      if (typeof number !== 'number') return number;
      const chosen = branches[Math.trunc(number) - 1];
      return chosen === undefined ? NO_VALUE : chosen(sheet, leaves);
    };
  },
  IFS: parts => (sheet, leaves) => {
    for (let i = 0; i + 1 < parts.length; i += 2) {
      const truth = isTruth(scalar(parts[i]?.(sheet, leaves)));
      if (truth === true) return branch(parts[i + 1])(sheet, leaves);
      if (truth !== false) return truth;
    }
    return NOT_FOUND;
  },
  SWITCH:
    ([of = BLANK, ...parts]) =>
    (sheet, leaves) => {
      const value = scalar(of(sheet, leaves));
      if (value === undefined || isFault(value)) return value;
      for (let i = 0; i + 1 < parts.length; i += 2) {
        const one = scalar(parts[i]?.(sheet, leaves));
        if (one === undefined || isFault(one)) return one;
        if (typeof one === typeof value && ordered(one, value, '=') === 0) return branch(parts[i + 1])(sheet, leaves);
      }
      return parts.length % 2 === 1 ? branch(parts[parts.length - 1])(sheet, leaves) : NOT_FOUND;
    },
};
