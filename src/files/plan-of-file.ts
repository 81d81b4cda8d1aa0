// What was read from a file, as sheets for the bench. A file from elsewhere says nothing of roles: what is computed looks computed.
import { UnreadableFile } from '../package/unreadable';
import type { ReadSheet, ReadWorkbook } from '../hosts/xlsx/read';
import { cellPosition, lastPlace } from '../sheet/addresses';
import type { SheetPlan, WorkbookPlan } from '../sheet/plan';

const minWidth = 9;
const maxWidth = 40;

function widths(cells: ReadSheet['cells']): number[] {
  const found: number[] = [];
  for (const { at, value } of cells) {
    const { column } = cellPosition(at);
    const needed = typeof value === 'number' ? minWidth : String(value ?? '').length + 2;
    found[column] = Math.min(maxWidth, Math.max(found[column] ?? minWidth, needed));
  }
  return Array.from(found, (width = minWidth) => width);
}

/** Rows times columns up to the last cell, of all sheets: the bench draws the gaps as well. */
const MOST_CELLS = 4_000_000;

/** A workbook that the bench can show. */
export function assertShowable({ sheets }: ReadWorkbook): void {
  const reach = sheets.reduce((sum, { cells }) => {
    const { row, column } = lastPlace(cells.map(({ at }) => at));
    return sum + (row + 1) * (column + 1);
  }, 0);
  if (reach > MOST_CELLS) throw new UnreadableFile('tooWide', MOST_CELLS);
}

function sheetPlan({ name, cells }: ReadSheet): SheetPlan {
  const own = cells.filter(({ spilledFrom }) => spilledFrom === undefined);
  return {
    name,
    widths: widths(own),
    cells: own.map(({ at, value, formula }) => ({
      at,
      role: formula === undefined ? 'text' : 'result',
      ...(value !== null && { value }),
      ...(formula !== undefined && { formula }),
    })),
  };
}

export const planOfFile = (name: string, { sheets }: ReadWorkbook): WorkbookPlan => ({ name, sheets: sheets.map(sheetPlan) });
