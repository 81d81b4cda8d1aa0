// A workbook plan as a source: its cells and formulas, values worked out when asked.
import type { WorkbookPlan } from '../../sheet/plan';
import type { Looks } from './looks';
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

/** The sheets keep their looks. */
export function looksOf(plan: WorkbookPlan): Looks {
  return name => {
    const sheet = plan.sheets.find(s => s.name === name);
    if (sheet === undefined) return {};
    const cells = new Map(sheet.cells.map(cell => [cell.at, cell]));
    const { widths, frozenRows, merged, stateRanges } = sheet;
    return {
      widths,
      ...(frozenRows === undefined ? {} : { frozenRows }),
      ...(merged === undefined ? {} : { merged }),
      ...(stateRanges === undefined ? {} : { stateRanges }),
      role: at => cells.get(at)?.role,
      format: at => cells.get(at)?.format,
    };
  };
}
