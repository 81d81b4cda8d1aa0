// A workbook plan as the cells of a file, without the file.
import type { WorkbookPlan } from '../../src/sheet/plan';
import { nameKey, type SourceCell, type SourceWorkbook } from '../../src/sheet/workbook-values';

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
