// What the studies say of the selected joint.
import type { Cell } from '../core/kinds';
import { Refused } from '../core/refuse';
import { sensitivityRows } from '../joint/study/sensitivity';
import { simulationRows } from '../joint/study/simulate';
import type { Variant } from '../joint/variant';

/** An input that moves a result. */
export interface StudyMove {
  readonly input: string;
  readonly unit: string;
  readonly now: number;
  /** ±, half its width; undefined where nothing limits the input. */
  readonly tolerance: number | undefined;
  /** Change of the result for one unit more. */
  readonly perUnit: number;
  /** Change of the result over the tolerance. */
  readonly change: number | undefined;
}

const number = (cell: Cell | undefined): number | undefined => (typeof cell === 'number' ? cell : undefined);

/** What has no value is not studied. */
function studied<T>(study: () => T): T | undefined {
  try {
    return study();
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

/** What moves a result, the largest change over a tolerance first. */
export const movesOf = (variant: Variant, output: string): StudyMove[] =>
  (studied(() => sensitivityRows(variant.copy(), output)) ?? []).map(([input, unit, now, tolerance, slope, change]) => ({
    input: String(input),
    unit: unit === '–' ? '' : String(unit),
    now: Number(now),
    tolerance: number(tolerance),
    perUnit: Number(slope),
    change: number(change),
  }));

export const DRAWN = 20_000;
const SEED = 1;
const ALL = /^all rules/;

export interface Yield {
  /** Share of the joints that meet every rule: at the common share of the joint, at 0 and at 1. Undefined where a rule is not checked. */
  readonly all: readonly (readonly [name: string, share: number | undefined])[];
  /** Rules that some joints do not meet, in a million, and those that are not checked. */
  readonly missed: readonly (readonly [rule: string, ppm: number | undefined])[];
}

export function yieldOf(variant: Variant): Yield | undefined {
  const rows = studied(() => simulationRows(variant.copy(), DRAWN, SEED));
  return (
    rows && {
      all: rows.flatMap(([name, share]) => (ALL.test(String(name)) ? [[String(name), number(share)] as const] : [])),
      missed: rows.flatMap(([name, , ppm]) => (ALL.test(String(name)) || ppm === 0 ? [] : [[String(name), number(ppm)] as const])),
    }
  );
}
