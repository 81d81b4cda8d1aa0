// A workbook as data that can be stored and opened again, and whether stored data is one: what is not, the engine
// opens by halves, or works on without end.
import type { ICellData, IWorkbookData } from '@univerjs/core';
import { workbookId } from './sheets';

export type Snapshot = IWorkbookData;

/** What is said of stored data that is no workbook: handed in, in the language of the page. */
export interface DamageWords {
  readonly noForm: string;
  readonly otherForm: string;
  readonly cut: string;
  readonly otherPage: string;
  readonly noList: string;
  readonly otherList: string;
  readonly noSheet: string;
  readonly rows: (sheet: string, rows: string) => string;
  readonly columns: (sheet: string, columns: string) => string;
  readonly cells: (sheet: string) => string;
  readonly lines: (sheet: string) => string;
  readonly looks: string;
  readonly endless: string;
}

/** A fault, until it is said. */
export type Damage = (words: DamageWords) => string;

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

function sheetFault(sheet: unknown, id: string): Damage | undefined {
  if (!isData(sheet) || sheet.id !== id || !isText(sheet.name)) return W => W.noSheet;
  const { name, rowCount, columnCount, cellData = {}, rowData = {}, columnData = {}, mergeData = [] } = sheet;
  if (!isCount(rowCount, most.row)) return W => W.rows(name, String(rowCount));
  if (!isCount(columnCount, most.column)) return W => W.columns(name, String(columnCount));
  if (
    !isNumbered(cellData, most.row) ||
    !Object.values(cellData).every(row => isNumbered(row, most.column) && Object.values(row).every(isCell))
  )
    return W => W.cells(name);
  if (!isNumbered(rowData, most.row) || !isNumbered(columnData, most.column) || !Array.isArray(mergeData)) return W => W.lines(name);
  return undefined;
}

/** What keeps it from being opened. */
export function snapshotFault(data: unknown): Damage | undefined {
  if (!isData(data) || data.id !== workbookId) return W => W.otherPage;
  const { sheetOrder, sheets, styles = {}, resources = [] } = data;
  if (!Array.isArray(sheetOrder) || sheetOrder.length === 0 || !sheetOrder.every(isText) || !isData(sheets)) return W => W.noList;
  if (Object.keys(sheets).sort().join() !== [...sheetOrder].sort().join()) return W => W.otherList;
  for (const id of sheetOrder) {
    const fault = sheetFault(sheets[id], id);
    if (fault !== undefined) return fault;
  }
  const texts = Array.isArray(resources) ? resources.map(resource => (isData(resource) ? resource.data : undefined)) : [undefined];
  if (!isData(styles) || !texts.every(text => typeof text === 'string')) return W => W.looks;
  const endless = hasEndlessRange(data) || texts.some(text => text !== '' && hasEndlessRange(JSON.parse(text)));
  return endless ? W => W.endless : undefined;
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
