// Where the tables of our calls spill, worked out before anything is converted.
import { address, cellPosition } from '../../sheet/addresses';
import { isRows, type WorkbookValues, type SourceWorkbook } from '../../sheet/workbook-values';

/** So often a table may wait for another one that stands before it, and then behind it. */
const MOST_ROUNDS = 100;

interface Caller {
  readonly sheet: string;
  readonly at: string;
}

/**
 * Tables spill first: other cells may point at their neighbours, those before them too. Each round goes the other way, so that tables
 * that wait for one another in any one order are done with the second; the last round goes forward.
 */
export function spillAll(source: WorkbookValues, workbook: SourceWorkbook): Map<string, string> {
  const callers = workbook.sheets.flatMap(({ name, cells }) =>
    [...cells].flatMap(([at, { formula }]): Caller[] => (formula?.toUpperCase().includes('ENCL.') === true ? [{ sheet: name, at }] : [])),
  );
  const back = [...callers].reverse();
  const filled = new Map(
    workbook.sheets.map(({ name, cells }) => [
      name,
      [...cells].flatMap(([at, { value, formula }]) => (formula !== undefined || (value !== null && value !== '') ? [at] : [])),
    ]),
  );
  for (let round = 1; ; round++) {
    const isForward = round % 2 === 1;
    const crowded = spilledOnce(source, filled, isForward ? callers : back);
    const isAnew = source.startAnew();
    if (isForward && (!isAnew || round > MOST_ROUNDS)) return crowded;
  }
}

/** A table that meets a filled cell has no room: that cell by the one of the table. */
function spilledOnce(
  source: WorkbookValues,
  filled: ReadonlyMap<string, readonly string[]>,
  callers: readonly Caller[],
): Map<string, string> {
  const crowded = new Map<string, string>();
  const takenOf = new Map<string, Set<string>>();
  for (const { sheet, at } of callers) {
    const result = source.result(sheet, at);
    if (!isRows(result)) {
      source.spill(sheet, at, []);
      continue;
    }
    const taken = takenOf.get(sheet) ?? new Set(filled.get(sheet));
    takenOf.set(sheet, taken);
    const { row, column } = cellPosition(at);
    const places = result.flatMap((line, r) => line.map((_, c) => address(row + r, column + c))).slice(1);
    const hit = places.find(place => taken.has(place));
    if (hit === undefined) places.forEach(place => taken.add(place));
    else crowded.set(`${sheet}!${at}`, hit);
    source.spill(sheet, at, hit === undefined ? result : undefined);
  }
  return crowded;
}
