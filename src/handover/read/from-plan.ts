// A workbook plan as a source: its cells and formulas, values worked out when asked.
import type { WorkbookPlan } from '../../sheet/plan';
import { nameKey, type SourceCell, type SourceWorkbook } from '../../sheet/workbook-values';

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
