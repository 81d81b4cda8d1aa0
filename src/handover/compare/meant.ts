// What came back, worked out anew: a text that means a number is that number, and names of the sender stand for their cells.
import { call } from '../../registry';
import { address } from '../../sheet/addresses';
import { WorkbookValues } from '../../sheet/workbook-values';
import { COLUMN } from '../pages/characteristics';
import { formOf, isResultPlace } from './forms';
import type { CellPlaces } from './places';
import { movedFormula, type Moved } from './references';
import { type ComparedWorkbook, isBlank } from './seen';
import { meaningOf, resultOf } from './typed-number';

export function meantValues(sent: ComparedWorkbook, returned: ComparedWorkbook, all: readonly CellPlaces[], moved: Moved): WorkbookValues {
  const cells = new Map(returned.sheets.map(sheet => [sheet.name, new Map([...sheet.cells].filter(([, cell]) => !isBlank(cell)))]));
  for (const places of all) {
    const isMeasured = formOf(places.sent) === 'measured';
    for (const { row, column } of places.filledBack()) {
      const there = places.there(row, column);
      const is = there?.grid.cell(there.row, there.column);
      if (there === undefined || is?.formula !== undefined || typeof is?.value !== 'string') continue;
      const isAnswer = isMeasured && (isResultPlace(row, column) || column === COLUMN.lower || column === COLUMN.upper);
      const { value, means } = isAnswer ? resultOf(is.value) : meaningOf(places.sent, row, column, is.value);
      cells.get(there.grid.sheet.name)?.set(address(there.row, there.column), { value: means ?? value });
    }
  }
  const sheets = returned.sheets.map(sheet => ({ ...sheet, cells: cells.get(sheet.name) ?? sheet.cells }));
  const names = new Map([...(sent.names ?? [])].map(([name, meaning]) => [name, movedFormula(`=${meaning}`, '', moved).slice(1)]));
  return new WorkbookValues({ ...returned, sheets, names }, call);
}
