// What people call a cell: by the heading of its column and the name of its row.
import type { Cell } from '../core/kinds';

/** A sheet as it is seen. */
export interface SeenSheet {
  /** Undefined where nothing stands. */
  value(row: number, column: number): Cell | undefined;
  /** Whether it is worked out: what names other cells is typed. */
  isWorkedOut(row: number, column: number): boolean;
}

export interface Headings {
  readonly row?: string;
  /** Heading of the column in which the name of the row stands. */
  readonly rowTitle?: string;
  readonly column?: string;
}

/** Rows above a cell in which its heading is looked for. */
const FARTHEST = 2000;
/** A heading has neighbours. */
const LEAST_RUN = 3;
/** Names that say nothing of what the value is. */
const SAYS_NOTHING = /^(values?|results?|units?|notes?|wert|ergebnis|einheit|bemerkung)$/i;
/** A unit behind a heading: `length (mm)`. */
const UNIT = /\s*(?:[([](?:mm|in|°|deg|N|N·m|Nm|MPa|g|%)[)\]]|[\s,]mm)$/i;
/** Headings of names that say nothing of what is named. */
const NAMES = /^(names?|label|id|no\.?|bezeichnung|nr\.?)$/i;
/** Shorter names of rows need the heading of their column: `variant A`. */
const SHORT = 2;

const isText = (value: Cell | undefined): value is string => typeof value === 'string' && value.trim() !== '';

/** The filled cells beside one another around a cell. */
function run(sheet: SeenSheet, row: number, column: number): readonly [left: number, right: number] {
  let [left, right] = [column, column];
  while (left > 0 && sheet.value(row, left - 1) !== undefined) left--;
  while (sheet.value(row, right + 1) !== undefined) right++;
  return [left, right];
}

interface HeadRow {
  readonly row: number;
  readonly left: number;
}

function headRowOf(sheet: SeenSheet, row: number, column: number): HeadRow | undefined {
  let found: HeadRow | undefined;
  for (let r = row - 1; r >= Math.max(0, row - FARTHEST); r--) {
    if (sheet.value(r, column) === undefined) {
      const isBesideNothing = [column - 1, column + 1].every(c => c < 0 || sheet.value(r, c) === undefined);
      if (isBesideNothing) break;
      continue;
    }
    if (!isText(sheet.value(r, column))) continue;
    const [left, right] = run(sheet, r, column);
    let isHead = right - left + 1 >= LEAST_RUN;
    for (let c = left; c <= right; c++) isHead &&= isText(sheet.value(r, c)) && !sheet.isWorkedOut(r, c);
    if (isHead) found = { row: r, left };
  }
  return found;
}

export function headingsOf(sheet: SeenSheet, row: number, column: number): Headings {
  const head = headRowOf(sheet, row, column);
  const text = (r: number, c: number): string | undefined => {
    const value = sheet.value(r, c);
    return isText(value) && !sheet.isWorkedOut(r, c) ? value.trim() : undefined;
  };
  const title = (c: number): string | undefined => head && text(head.row, c)?.replace(UNIT, '');
  const above = title(column);
  for (let c = head?.left ?? 0; c < column; c++) {
    const name = text(row, c);
    if (name === undefined) continue;
    const rowTitle = title(c);
    const says = above !== undefined && !SAYS_NOTHING.test(above);
    return { row: name, ...(rowTitle !== undefined && { rowTitle }), ...(says && { column: above }) };
  }
  if (above === undefined || head === undefined) return {};
  // a table whose rows are named by numbers, or by what its first column is worked out to
  const key = head.left < column ? sheet.value(row, head.left) : undefined;
  const rowTitle = title(head.left);
  if (isText(key)) return { column: above, row: key.trim(), ...(rowTitle !== undefined && { rowTitle }) };
  return { column: above, ...(typeof key === 'number' && { row: `${rowTitle ?? ''} ${Number(key.toPrecision(6))}`.trim() }) };
}

/** `length of variant A`; undefined where nothing names it. */
export function namedBy({ row, rowTitle, column }: Headings, of: string): string | undefined {
  const rowName = row === undefined || rowTitle === undefined || row.length > SHORT || NAMES.test(rowTitle) ? row : `${rowTitle} ${row}`;
  return rowName === undefined || column === undefined ? (rowName ?? column) : `${column} ${of} ${rowName}`;
}
