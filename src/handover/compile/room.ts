// How much a sheet holds.
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

/** The copy would have a sheet that no program opens. */
export class NoRoom extends Error {}

export function assertRoom(sheet: string, rows: number, columns: number): void {
  const fault = (count: number, what: string, most: number): NoRoom =>
    new NoRoom(
      `this workbook is not handed over: the sheet ${sheet} of the copy would have ${count} ${what}, and a sheet has at most ${most}`,
    );
  if (rows > MOST_ROWS) throw fault(rows, 'rows', MOST_ROWS);
  if (columns > MOST_COLUMNS) throw fault(columns, 'columns', MOST_COLUMNS);
}
