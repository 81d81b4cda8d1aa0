// A workbook as data that can be stored and opened again, and whether stored data is one: what is not, the engine
// opens by halves, or works on without end.
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { workbookId } from './sheets';

export type Snapshot = IWorkbookData;

/** A little more than the largest sheet of any program. */
const most = { row: 1_100_000, column: 20_000 };

type Data = Readonly<Record<string, unknown>>;

const isData = (value: unknown): value is Data => typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === 'string' && value !== '';
const isCount = (value: unknown, atMost: number): boolean => Number.isInteger(value) && Number(value) >= 1 && Number(value) <= atMost;
/** Row or column numbers as keys. */
const isNumbered = (value: unknown, atMost: number): value is Data =>
  isData(value) && Object.keys(value).every(key => /^\d+$/.test(key) && Number(key) <= atMost);

const cellParts: Readonly<Record<string, readonly string[]>> = {
  v: ['number', 'string', 'boolean'],
  f: ['string'],
  si: ['string'],
  t: ['number'],
  s: ['string', 'object'],
  p: ['object'],
  custom: ['object'],
};
const isCell = (value: unknown): boolean =>
  value === null ||
  (isData(value) &&
    Object.entries(cellParts).every(([part, types]) => (value[part] ?? null) === null || types.includes(typeof value[part])));

/** A number of a row or a column anywhere that no sheet has; also in the texts in which parts of the engine keep their own data. */
function hasEndlessRange(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([key, inside]) => {
    const [, way] = /^(?:start|end)?(row|column)(?:count)?$/.exec(key.toLowerCase()) ?? [];
    return typeof inside === 'number' ? way !== undefined && inside > most[way as keyof typeof most] : hasEndlessRange(inside);
  });
}

function sheetFault(sheet: unknown, id: string): string | undefined {
  if (!isData(sheet) || sheet.id !== id || !isText(sheet.name)) return 'a sheet is not there';
  const { name, rowCount, columnCount, cellData = {}, rowData = {}, columnData = {}, mergeData = [] } = sheet;
  if (!isCount(rowCount, most.row)) return `sheet "${name}" has ${String(rowCount)} rows`;
  if (!isCount(columnCount, most.column)) return `sheet "${name}" has ${String(columnCount)} columns`;
  if (
    !isNumbered(cellData, most.row) ||
    !Object.values(cellData).every(row => isNumbered(row, most.column) && Object.values(row).every(isCell))
  )
    return `sheet "${name}" has cells of another form`;
  if (!isNumbered(rowData, most.row) || !isNumbered(columnData, most.column) || !Array.isArray(mergeData))
    return `sheet "${name}" has rows or columns of another form`;
  return undefined;
}

/** What keeps it from being opened, in words. */
export function snapshotFault(data: unknown): string | undefined {
  if (!isData(data) || data.id !== workbookId) return 'it is no workbook of this page';
  const { sheetOrder, sheets, styles = {}, resources = [] } = data;
  if (!Array.isArray(sheetOrder) || sheetOrder.length === 0 || !sheetOrder.every(isText) || !isData(sheets))
    return 'its list of sheets is not there';
  if (Object.keys(sheets).sort().join() !== [...sheetOrder].sort().join()) return 'its list of sheets is not that of its sheets';
  for (const id of sheetOrder) {
    const fault = sheetFault(sheets[id], id);
    if (fault !== undefined) return fault;
  }
  const texts = Array.isArray(resources) ? resources.map(resource => (isData(resource) ? resource.data : undefined)) : [undefined];
  if (!isData(styles) || !texts.every(text => typeof text === 'string')) return 'its looks are of another form';
  const endless = hasEndlessRange(data) || texts.some(text => text !== '' && hasEndlessRange(JSON.parse(text)));
  return endless ? 'it has a range that no sheet holds' : undefined;
}

/** Sheets by name with the number of their filled cells, to compare what was given with what is open. */
export const outlineOf = ({ sheetOrder, sheets }: Snapshot): string =>
  JSON.stringify(
    sheetOrder.map(id => {
      const cells = Object.values(sheets[id]?.cellData ?? {}).flatMap(row =>
        Object.values((row ?? {}) as Record<number, ICellData | null>),
      );
      return [sheets[id]?.name, cells.filter(cell => (cell?.v ?? cell?.f ?? cell?.si ?? cell?.p ?? null) !== null).length];
    }),
  );
