// References to the tables of a workbook by name, as the cells that they name.
import { parseStructRef } from '@borgar/fx';
import { columnName, holds, type Place, sheetPrefix } from '../../sheet/addresses';
import type { SourceTable } from '../../sheet/workbook-values';
import type { FindingSentence } from '../words/finding-words';

/** The cells, or why there are none. */
export type Named = { readonly text: string } | { readonly why: FindingSentence; readonly leadsToFile?: true };

/** Where the reference stands. */
export interface Site extends Place {
  readonly sheet: string;
}

const isSame = (a: string, b: string): boolean => a.replace(/\r\n?/g, '\n').toLowerCase() === b.replace(/\r\n?/g, '\n').toLowerCase();

export const tableNamed = (tables: readonly SourceTable[], name: string): SourceTable | undefined =>
  tables.find(table => table.name.toLowerCase() === name.toLowerCase());

/**
 * `Bosses[[#This Row],[hole]]` as `$B3`: the column is that of the table, the row that of the cell.
 */
export function cellsOfTable(reference: string, tables: readonly SourceTable[], site: Site): Named {
  const shown = reference.slice(0, 60);
  const parsed = parseStructRef(reference);
  if (parsed === undefined || (parsed.context ?? []).length > 0)
    return { why: said => `${said.otherWorkbook}: ${shown}`, leadsToFile: true };
  const { table: name = '', columns = [], sections = [] } = parsed;
  const table = name === '' ? tables.find(({ area }) => area.sheet === site.sheet && holds(area, site)) : tableNamed(tables, name);
  if (table === undefined) return { why: said => `${said.noSuchTable}: ${shown}` };
  const { area } = table;
  const places = columns.map(column => table.columns.findIndex(each => isSame(each, column)));
  if (places.includes(-1)) return { why: said => `${said.noSuchColumn}: ${shown}` };
  const rows = rowsOf(table, sections, site);
  if (rows === undefined) return { why: said => `${said.noSuchRows}: ${shown}` };
  const [left, right] = places.length === 0 ? [area.left, area.right] : [Math.min(...places), Math.max(...places)].map(n => area.left + n);
  const isThisRow = sections.includes('this row');
  const corner = (column = 0, row: number): string => `$${columnName(column)}${isThisRow ? '' : '$'}${row + 1}`;
  const [from, to] = [corner(left, rows[0]), corner(right, rows[1])];
  const prefix = area.sheet === site.sheet ? '' : sheetPrefix(area.sheet);
  return { text: `${prefix}${from === to ? from : `${from}:${to}`}` };
}

/** First and last row of what the reference takes of the table. */
function rowsOf(
  { area, headerRows, totalsRows }: SourceTable,
  sections: readonly string[],
  site: Site,
): readonly [number, number] | undefined {
  const data: readonly [number, number] = [area.top + headerRows, area.bottom - totalsRows];
  if (data[0] > data[1]) return undefined;
  if (sections.includes('this row'))
    return sections.length === 1 && site.sheet === area.sheet && site.row >= data[0] && site.row <= data[1]
      ? [site.row, site.row]
      : undefined;
  const [hasHeaders, hasTotals] = [sections.includes('headers'), sections.includes('totals')];
  if ((hasHeaders && headerRows === 0) || (hasTotals && totalsRows === 0)) return undefined;
  if (sections.includes('all')) return [area.top, area.bottom];
  if (sections.length === 0 || sections.includes('data')) return [hasHeaders ? area.top : data[0], hasTotals ? area.bottom : data[1]];
  if (hasHeaders && hasTotals) return undefined;
  return hasHeaders ? [area.top, data[0] - 1] : [data[1] + 1, area.bottom];
}
