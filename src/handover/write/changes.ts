// What changes in the cells of the user: calls of ours, what depends on them, texts that became numbers. All else stays as it is stored.
import type { Cell } from '../../core/kinds';
import type { CellChange } from '../../package/cell-splices';
import type { StoredCell, StoredValue } from '../../package/cells';
import type { StoredSheet } from '../../package/read';
import { address, cellCount, holds, cellPosition, rectangleOf, type Rectangle } from '../../sheet/addresses';
import { isOwnCall } from '../../sheet/formula';
import { ERROR_CODE } from '../../sheet/known';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { fromFile } from '../../sheet/stored-formulas';
import type { Converted } from '../compile/context';
import type { Handover } from '../handover';

export type SheetChanges = ReadonlyMap<string, CellChange>;

/** What a cell shows: the value of a formula that reads like the code of an error is one. */
function storedValue(value: Cell | undefined, isWorkedOut: boolean): StoredValue {
  if (value === '' && !isWorkedOut) return undefined;
  return typeof value === 'string' && isWorkedOut && ERROR_CODE.test(value) ? { error: value } : value;
}

/** Programs differ in the last digits of what they work out. */
const RELATIVE = 1e-12;

function isSame(a: StoredValue, b: StoredValue): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= RELATIVE * Math.abs(b);
  return typeof a === 'object' && typeof b === 'object' ? a.error === b.error : (a ?? '') === (b ?? '');
}

/** Cells that calls of ours filled when the workbook was saved. */
const filledByOurs = (cells: readonly StoredCell[]): Rectangle[] =>
  cells.flatMap(({ at, formula }) =>
    formula?.area !== undefined && formula.area !== at && formula.kind !== 'shared' && isOwnCall(`=${fromFile(formula.text)}`)
      ? [rectangleOf(formula.area)]
      : [],
  );

/** A number that stands for a text with its unit shows it. */
const withUnit = ({ unit }: Converted): string | undefined => (unit === '' ? undefined : `General" ${unit.replaceAll('"', '')}"`);

function markOf({ isFixed, note }: PlanCell, number: Converted | undefined): Pick<CellChange, 'mark'> {
  const numberFormat = number && withUnit(number);
  const mark = { ...(isFixed && { isFixed }), ...(note !== undefined && { note }), ...(numberFormat !== undefined && { numberFormat }) };
  return Object.keys(mark).length === 0 ? {} : { mark };
}

function changed(cell: PlanCell, before: StoredCell | undefined, isKept: boolean, number: Converted | undefined): CellChange | undefined {
  // a table of what-if cells is the user's, and worked out by the program alone
  if (before?.formula?.kind === 'dataTable') return undefined;
  const { value, formula, array } = cell;
  const mark = markOf(cell, number);
  const shown = storedValue(value, formula !== undefined || before?.formula !== undefined);
  if (isKept) return value === undefined || isSame(shown, before?.value) ? undefined : { value: shown, formula: 'kept' };
  if (formula !== undefined)
    return { value: shown, formula: { text: formula.slice(1), ...(array !== undefined && { keepsArea: true as const }) }, ...mark };
  return before?.formula === undefined && mark.mark === undefined && isSame(shown, before?.value)
    ? undefined
    : { value: shown, formula: 'none', ...mark };
}

/** Of words that run down a column, with other numbers in each cell, the first say it. */
function quieten(changes: Map<string, CellChange>): void {
  const shapes = new Map<string, string>();
  for (const [at, { mark }] of changes) if (mark?.note !== undefined) shapes.set(at, mark.note.replace(/[\d.]+/g, '0'));
  for (const [at, shape] of shapes) {
    const { row, column } = cellPosition(at);
    if (row === 0 || shapes.get(address(row - 1, column)) !== shape) continue;
    const { mark: { note: _, ...mark } = {}, ...change } = changes.get(at) as CellChange;
    changes.set(at, { ...change, mark });
  }
}

function changesIn({ name, cells }: StoredSheet, plan: SheetPlan, { keptFormulas, converted }: Handover): SheetChanges {
  const before = new Map(cells.map(cell => [cell.at, cell]));
  const changes = new Map<string, CellChange>();
  for (const cell of plan.cells) {
    const change = changed(
      cell,
      before.get(cell.at),
      keptFormulas.has(`${name}!${cell.at}`) && cell.isFixed !== true,
      converted.get(`${name}!${cell.at}`),
    );
    if (change !== undefined) changes.set(cell.at, change);
  }
  quieten(changes);
  const roles = new Map(plan.cells.map(({ at, role }) => [at, role]));
  const filled = filledByOurs(cells).filter(area => cellCount(area) > 1);
  if (filled.length > 0)
    for (const { at, value } of cells) {
      const role = roles.get(at);
      if ((role !== undefined && role !== 'text') || changes.has(at) || !filled.some(area => holds(area, cellPosition(at)))) continue;
      // of a table that is given anew nothing old stays; what is left of one that is not, says so
      changes.set(at, role === 'text' ? { value, formula: 'none', mark: { isFixed: true } } : { value: undefined, formula: 'none' });
    }
  return changes;
}

/** By the names of the sheets; a sheet without a change is not among them. */
export function changesOf(sheets: readonly StoredSheet[], copy: Handover): ReadonlyMap<string, SheetChanges> {
  return new Map(
    sheets.flatMap(sheet => {
      const becomes = copy.plan.sheets.find(({ name }) => name === sheet.name);
      const changes = becomes === undefined ? undefined : changesIn(sheet, becomes, copy);
      return changes === undefined || changes.size === 0 ? [] : [[sheet.name, changes] as const];
    }),
  );
}
