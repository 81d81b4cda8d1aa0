// What was read from a file, as sheets for the bench. A file from elsewhere says nothing of roles: what is computed looks computed.
import type { ReadSheet, ReadWorkbook } from '../hosts/xlsx/read';
import type { SheetPlan, WorkbookPlan } from '../sheet/plan';

const minWidth = 9;
const maxWidth = 40;

function widths(cells: ReadSheet['cells']): number[] {
  const found: number[] = [];
  for (const { at, value } of cells) {
    const column = columnOf(at);
    const needed = typeof value === 'number' ? minWidth : String(value ?? '').length + 2;
    found[column] = Math.min(maxWidth, Math.max(found[column] ?? minWidth, needed));
  }
  return Array.from(found, (width = minWidth) => width);
}

const columnOf = (at: string): number => [...at.replace(/\d/g, '')].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

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
