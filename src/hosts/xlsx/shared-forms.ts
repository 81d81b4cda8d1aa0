// The same formula down a column is written once: the first cell has its text, the others its number.
import type { SharedFormula } from '../../package/cell-splices';
import { address } from '../../sheet/addresses';
import { ROW } from '../../sheet/row-forms';
import { inFile } from '../../sheet/stored-formulas';
import type { PlacedCell } from './layout';
import { formulaText } from './text';

const TEXT = /"[^"]*"/g;
const OWN_ROW_OR_FIXED = new RegExp(`\\$[A-Z]{1,3}(?:${ROW}|\\$\\d+)`, 'g');
/** What would move though it stays, turns round on its way, or is on another sheet, which not every program takes in such a formula. */
const ELSE = new RegExp(`!|${ROW}|0:1|1:0|(?<![\\w.])\\$?[A-Z]{1,3}\\$?\\d+(?![\\w(.])`);

const canMove = (form: string): boolean =>
  !ELSE.test(
    form.replace(TEXT, text => (text.includes(ROW) ? ROW : '""')).replace(OWN_ROW_OR_FIXED, cell => (cell.endsWith(ROW) ? '0' : '1')),
  );

interface SharedGroup {
  readonly index: number;
  readonly first: number;
  last: number;
}

export class SharedForms {
  private readonly groups = new Map<string, Map<number, SharedGroup>>();
  private count = 0;

  /** @param cells from the first row to the last. */
  constructor(cells: Iterable<PlacedCell>) {
    for (const { cell, row, column } of cells) {
      if (cell.rowForm === undefined) continue;
      const columns = this.groups.get(cell.rowForm) ?? new Map<number, SharedGroup>();
      if (!this.groups.has(cell.rowForm)) this.groups.set(cell.rowForm, columns);
      const known = columns.get(column);
      if (known !== undefined) known.last = row;
      else if (columns.size > 0 || canMove(cell.rowForm)) columns.set(column, { index: this.count++, first: row, last: row });
    }
  }

  /** Undefined where the formula stands alone. */
  formula({ cell, row, column }: PlacedCell, where: string): SharedFormula | undefined {
    const group = cell.rowForm === undefined ? undefined : this.groups.get(cell.rowForm)?.get(column);
    if (group === undefined || cell.formula === undefined || group.last === group.first) return undefined;
    const { index, first, last } = group;
    if (row > first) return { index };
    const range = `${address(first, column)}:${address(last, column)}`;
    return { index, first: { text: inFile(formulaText(cell.formula, where)), range } };
  }
}
