// Cells into Excel, and no others: in a table Excel would copy one formula down its column.
import type { Cell } from '../../core/kinds';
import { cellPosition } from '../../sheet/addresses';
import type { CellEntry, Selection } from '../../sheet/port';
import { ExcelRefusal } from './words';

/** A cell with the tables that it is in. */
interface WriteTarget {
  readonly entry: CellEntry;
  readonly cell: Excel.Range;
  readonly tables: Excel.TableScopedCollection;
}

const cellAt = (context: Excel.RequestContext, { sheetName, at }: Selection): Excel.Range =>
  context.workbook.worksheets.getItem(sheetName).getRange(at);

export async function tableAt(context: Excel.RequestContext, place: Selection): Promise<string | undefined> {
  const tables = cellAt(context, place).getTables(false);
  tables.load('items/name');
  await context.sync();
  return tables.items[0]?.name;
}

const contentOf = (before: unknown): Cell => (typeof before === 'number' || typeof before === 'boolean' ? before : String(before ?? ''));

/** The apostrophe keeps a text a text. */
const typed = ({ content, isText }: CellEntry): Cell => (isText === true ? `'${String(content)}` : content);

/** The cells of the column of a table in which entries stand, written at once: then Excel copies none of them down. */
interface ColumnInTable {
  readonly body: Excel.Range;
  readonly column: number;
  readonly entries: CellEntry[];
}

async function columnsIn(context: Excel.RequestContext, targets: readonly WriteTarget[]): Promise<ColumnInTable[]> {
  const found = new Map<string, ColumnInTable>();
  for (const { entry, tables } of targets) {
    const [table] = tables.items;
    if (table === undefined) continue;
    const { column } = cellPosition(entry.at);
    const key = `${table.name}!${column}`;
    const known = found.get(key);
    if (known !== undefined) {
      known.entries.push(entry);
      continue;
    }
    const body = cellAt(context, entry).getEntireColumn().getIntersection(table.getDataBodyRange());
    body.load('rowIndex,formulas');
    found.set(key, { body, column, entries: [entry] });
  }
  if (found.size > 0) await context.sync();
  return [...found.values()];
}

/** Answers what stood in the cells. Two exchanges, one more where tables are. */
export async function write(context: Excel.RequestContext, entries: readonly CellEntry[]): Promise<CellEntry[]> {
  const targets = entries.map((entry): WriteTarget => {
    const cell = cellAt(context, entry);
    const tables = cell.getTables(false);
    cell.load('formulas');
    tables.load('items/name');
    return { entry, cell, tables };
  });
  await context.sync();
  const before = targets.map(({ entry, cell }) => ({
    sheetName: entry.sheetName,
    at: entry.at,
    content: contentOf(cell.formulas[0]?.[0]),
  }));
  const columns = await columnsIn(context, targets);
  if (columns.some(column => column.entries.some(({ isLocal }) => isLocal))) throw new ExcelRefusal(({ localInTable }) => localInTable);
  const inColumns = new Set(columns.flatMap(column => column.entries));
  for (const { body, column, entries: own } of columns) {
    const contents = body.formulas.map(([content]) => [content as unknown]);
    for (const entry of own) {
      const row = cellPosition(entry.at).row - body.rowIndex;
      // The names and the totals of a table are no part of its body.
      if (contents[row] === undefined) inColumns.delete(entry);
      else contents[row] = [typed(entry)];
    }
    const [first] = own;
    if (first === undefined) continue;
    const sheet = context.workbook.worksheets.getItem(first.sheetName);
    sheet.getRangeByIndexes(body.rowIndex, column, contents.length, 1).formulas = contents;
  }
  for (const entry of entries) {
    if (inColumns.has(entry)) continue;
    const cell = cellAt(context, entry);
    if (entry.isLocal === true) cell.formulasLocal = [[entry.content]];
    else cell.formulas = [[typed(entry)]];
  }
  await context.sync();
  return before;
}
