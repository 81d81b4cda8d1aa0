// Where the tables of our calls spill, worked out before anything is converted.
import { address, cellPosition } from '../../sheet/addresses';
import { isRows, type WorkbookValues, type SourceWorkbook } from '../../sheet/workbook-values';

/** So often a table may wait for another one. */
const MOST_ROUNDS = 20;

/** Tables spill first: other cells may point at their neighbours, those before them too. */
export function spillAll(source: WorkbookValues, workbook: SourceWorkbook): Map<string, string> {
  for (let round = 1; ; round++) {
    const crowded = spilledOnce(source, workbook);
    if (!source.startAnew() || round === MOST_ROUNDS) return crowded;
  }
}

/** A table that meets a filled cell has no room. */
function spilledOnce(source: WorkbookValues, workbook: SourceWorkbook): Map<string, string> {
  const crowded = new Map<string, string>();
  for (const { name, cells } of workbook.sheets) {
    const filled = new Set(
      [...cells].flatMap(([at, { value, formula }]) => (formula !== undefined || (value !== null && value !== '') ? [at] : [])),
    );
    for (const [at, { formula }] of cells) {
      if (formula?.toUpperCase().includes('ENCL.') !== true) continue;
      const result = source.result(name, at);
      if (!isRows(result)) continue;
      const { row, column } = cellPosition(at);
      const places = result.flatMap((line, r) => line.map((_, c) => address(row + r, column + c))).slice(1);
      const taken = places.find(place => filled.has(place));
      if (taken !== undefined) {
        crowded.set(`${name}!${at}`, `its table has no room: ${taken} is filled`);
        source.crowd(name, at);
      } else {
        places.forEach(place => filled.add(place));
        source.spill(name, row, column, result);
      }
    }
  }
  return crowded;
}
