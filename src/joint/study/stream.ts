// The same study of one joint after another.
import type { CellRange } from '../../core/kinds';

/**
 * What a study gives of each row below these names, one at a time and as it is asked for: a table may be as long as it likes.
 * @param study takes the inputs of one joint.
 */
export function* ofEachJoint<T>(
  names: readonly unknown[],
  rows: Iterable<readonly unknown[]>,
  study: (inputs: CellRange) => T,
): Generator<T, void> {
  for (const row of rows) yield study([names, row]);
}
