// A workbook plan as the cells of a file, without the file.
import type { WorkbookPlan } from '../../src/sheet/plan';
import { spillAll } from '../../src/handover/compile/spilled-tables';
import { call } from '../../src/registry';
import { nameKey, type SourceCell, type SourceWorkbook, WorkbookValues } from '../../src/sheet/workbook-values';

export function sourceOf(plan: WorkbookPlan): SourceWorkbook {
  return {
    name: plan.name,
    names: new Map((plan.names ?? []).map(({ name, meaning, sheet }) => [nameKey(name, sheet), meaning])),
    sheets: plan.sheets.map(sheet => ({
      name: sheet.name,
      cells: new Map(
        sheet.cells.map(({ at, value = null, formula }): [string, SourceCell] => [
          at,
          formula === undefined ? { value } : { value, formula },
        ]),
      ),
    })),
  };
}

/** The values of a plan with every table spilled, also where a cell before it points into it. */
export function valuesOfPlan(plan: WorkbookPlan): WorkbookValues {
  const workbook = sourceOf(plan);
  const source = new WorkbookValues(workbook, call);
  spillAll(source, workbook);
  return source;
}
