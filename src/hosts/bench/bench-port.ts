// The bench's spreadsheet as a task sees it.
import { AddConditionalRuleMutation } from "@univerjs/preset-sheets-conditional-formatting";
import type { SheetPort } from "../../sheet/port";
import { nameOf } from "./addresses";
import { sheetReader } from "./cells";
import { workbookId, type Sheets } from "./sheets";
import { stateRules, worksheetData } from "./workbook-data";

export function benchPort(sheets: Sheets): SheetPort {
  function workbook() {
    const open = sheets.api.getWorkbook(workbookId);
    if (open === null) throw new Error("no workbook is open");
    return open;
  }
  const names = () => workbook().getSheets().map((sheet) => sheet.getSheetName());

  function freeName(name: string): string {
    const taken = new Set(names().map((each) => each.toLowerCase()));
    let free = name;
    for (let number = 2; taken.has(free.toLowerCase()); number++) free = `${name} ${number}`;
    return free;
  }

  return {
    async sheetNames() {
      return names();
    },
    async add(plan) {
      const name = freeName(plan.name);
      const subUnitId = workbook().insertSheet(name, { sheet: worksheetData(plan) }).getSheetId();
      for (const rule of stateRules(plan)) sheets.commands.syncExecuteCommand(AddConditionalRuleMutation.id, { unitId: workbookId, subUnitId, rule });
      await sheets.api.getFormula().onCalculationResultApplied();
      return name;
    },
    async read(sheetName) {
      const sheet = workbook().getSheetByName(sheetName);
      if (sheet === null) throw new Error(`there is no sheet "${sheetName}"`);
      const reader = sheetReader(sheets, sheet.getSheetId());
      const used = reader.used();
      return used === null ? [] : reader.rectangle(used);
    },
    async selection() {
      const sheet = workbook().getActiveSheet();
      const at = sheet.getSelection()?.getCurrentCell();
      return at ? { sheetName: sheet.getSheetName(), at: nameOf({ startRow: at.actualRow, startColumn: at.actualColumn }) } : null;
    },
  };
}
