// What changes in the cells of the user: calls of ours, what depends on them, texts that became numbers. All else stays as it is stored.
import type { Cell } from '../core/kinds';
import type { CellChange } from '../package/cell-splices';
import type { StoredCell, StoredValue } from '../package/cells';
import type { StoredSheet } from '../package/read';
import { cellCount, holds, cellPosition, rectangleOf, type Rectangle } from '../sheet/addresses';
import { isOwnCall } from '../sheet/formula';
import { ERROR_CODE } from '../sheet/known';
import type { PlanCell, SheetPlan } from '../sheet/plan';
import { fromFile } from '../sheet/stored-formulas';
import type { Handover } from './handover';

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
  cells.flatMap(({ formula }) =>
    formula?.area !== undefined && formula.kind !== 'shared' && isOwnCall(`=${fromFile(formula.text)}`) ? [rectangleOf(formula.area)] : [],
  );

function changed({ value, formula, array }: PlanCell, before: StoredCell | undefined, isKept: boolean): CellChange | undefined {
  // a table of what-if cells is the user's, and worked out by the program alone
  if (before?.formula?.kind === 'dataTable') return undefined;
  const shown = storedValue(value, formula !== undefined || before?.formula !== undefined);
  if (isKept) return value === undefined || isSame(shown, before?.value) ? undefined : { value: shown, formula: 'kept' };
  if (formula !== undefined)
    return { value: shown, formula: { text: formula.slice(1), ...(array !== undefined && { keepsArea: true as const }) } };
  return before?.formula === undefined && isSame(shown, before?.value) ? undefined : { value: shown, formula: 'none' };
}

function changesIn({ name, cells }: StoredSheet, plan: SheetPlan, kept: ReadonlySet<string>): SheetChanges {
  const before = new Map(cells.map(cell => [cell.at, cell]));
  const changes = new Map<string, CellChange>();
  for (const cell of plan.cells) {
    const change = changed(cell, before.get(cell.at), kept.has(`${name}!${cell.at}`));
    if (change !== undefined) changes.set(cell.at, change);
  }
  const planned = new Set(plan.cells.map(({ at }) => at));
  const filled = filledByOurs(cells).filter(area => cellCount(area) > 1);
  if (filled.length > 0)
    for (const { at } of cells)
      if (!planned.has(at) && filled.some(area => holds(area, cellPosition(at)))) changes.set(at, { value: undefined, formula: 'none' });
  return changes;
}

/** By the names of the sheets; a sheet without a change is not among them. */
export function changesOf(sheets: readonly StoredSheet[], { plan, keptFormulas, findings }: Handover): ReadonlyMap<string, SheetChanges> {
  // a formula of the user that would give another value on the copy is not kept after all
  const fixed = new Set(findings.flatMap(({ sheet, at, what }) => (what === 'value, not live' ? [`${sheet}!${at}`] : [])));
  const kept = new Set([...keptFormulas].filter(place => !fixed.has(place)));
  return new Map(
    sheets.flatMap(sheet => {
      const becomes = plan.sheets.find(({ name }) => name === sheet.name);
      const changes = becomes === undefined ? undefined : changesIn(sheet, becomes, kept);
      return changes === undefined || changes.size === 0 ? [] : [[sheet.name, changes] as const];
    }),
  );
}
