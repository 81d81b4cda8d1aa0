// The bench's spreadsheet as a task sees it.
import { AddConditionalRuleMutation } from '@univerjs/preset-sheets-conditional-formatting';
import { ScrollToCellCommand } from '@univerjs/preset-sheets-core';
import { address, cellCount, cellPosition } from '../../sheet/addresses';
import { aroundIn, partOf } from '../../sheet/parts';
import type { Selection, SheetPort } from '../../sheet/port';
import { sheetReader } from './cells';
import { onChange } from './changes';
import { dressSheet } from './dress';
import { placePicture } from './pictures';
import { inOneStep } from './one-step';
import { workbookId, type Sheets } from './sheets';
import { watchTyping } from './typing';
import { stateRules, worksheetData, type Styles } from './workbook-data';

/** What is said where the sheet refuses, in the language of the page. */
export interface SheetRefusals {
  readonly noSheet: (name: string) => string;
  readonly lastSheet: string;
  readonly notWhole: string;
}

export function benchPort(sheets: Sheets, W: SheetRefusals): SheetPort {
  function workbook() {
    const open = sheets.api.getWorkbook(workbookId);
    if (open === null) throw new Error('no workbook is open');
    return open;
  }
  const names = () =>
    workbook()
      .getSheets()
      .map(sheet => sheet.getSheetName());

  function sheetNamed(name: string) {
    const sheet = workbook().getSheetByName(name);
    if (sheet === null) throw new Error(W.noSheet(name));
    return sheet;
  }

  const readerOf = (name: string) => sheetReader(sheets, sheetNamed(name).getSheetId());

  function freeName(name: string): string {
    const taken = new Set(names().map(each => each.toLowerCase()));
    let free = name;
    for (let number = 2; taken.has(free.toLowerCase()); number++) free = `${name} ${number}`;
    return free;
  }

  function selection(): Selection | null {
    const sheet = sheets.api.getWorkbook(workbookId)?.getActiveSheet();
    const at = sheet?.getSelection()?.getCurrentCell();
    return sheet && at ? { sheetName: sheet.getSheetName(), at: address(at.actualRow, at.actualColumn) } : null;
  }

  return {
    async sheetNames() {
      return names();
    },
    async add(plan) {
      const name = freeName(plan.name);
      const styles: Styles = {};
      const sheet = worksheetData(plan, styles);
      workbook().addStyles(styles);
      const subUnitId = workbook().insertSheet(name, { sheet }).getSheetId();
      for (const rule of stateRules(plan))
        sheets.commands.syncExecuteCommand(AddConditionalRuleMutation.id, { unitId: workbookId, subUnitId, rule });
      for (const picture of plan.pictures ?? []) await placePicture(sheetNamed(name), picture);
      await sheets.api.getFormula().onCalculationResultApplied();
      return name;
    },
    async read(sheetName) {
      const reader = readerOf(sheetName);
      const used = reader.used();
      return used === null ? [] : reader.rectangle(used);
    },
    async sizes() {
      return names().map(sheetName => {
        const used = readerOf(sheetName).used();
        return { sheetName, cells: used === null ? 0 : cellCount(used) };
      });
    },
    async around(place) {
      const reader = readerOf(place.sheetName);
      return aroundIn(place, reader.used(), reader.rectangle);
    },
    async readAreas(areas) {
      return areas.flatMap(area => {
        const sheetName = names().find(name => name.toLowerCase() === area.sheet.toLowerCase());
        if (sheetName === undefined) return [];
        const reader = readerOf(sheetName);
        return [partOf({ ...area, sheet: sheetName }, reader.used(), reader.rectangle)];
      });
    },
    async selection() {
      return selection();
    },
    watch(listener) {
      const opened = () => sheets.api.getWorkbook(workbookId)?.getWorkbook();
      let before = { of: opened(), names: opened() === undefined ? [] : names() };
      return onChange(sheets, () => {
        const now = selection();
        const left = new Set(before.of === opened() ? names() : []);
        for (const sheetName of before.names) if (!left.has(sheetName)) listener.gone(sheetName);
        before = { of: opened(), names: names() };
        // Any action may have changed any sheet.
        for (const sheetName of names()) listener.changed(sheetName);
        if (now !== null) listener.selected(now);
      });
    },
    async write(entries) {
      const before = entries.map(entry => {
        const { row, column } = cellPosition(entry.at);
        const { value, formula } = readerOf(entry.sheetName).at(row, column);
        return { sheetName: entry.sheetName, at: entry.at, content: formula ?? value ?? '' };
      });
      // What the cell held before, a formula or rich text, would outlive a value alone.
      const nothingElse = { f: null, si: null, p: null, t: null };
      inOneStep(sheets, () => {
        for (const { sheetName, at, content, isText } of entries) {
          const isFormula = isText !== true && typeof content === 'string' && content.startsWith('=');
          sheetNamed(sheetName)
            .getRange(at)
            .setValue({ ...nothingElse, v: isFormula || content === '' ? null : content, ...(isFormula && { f: content }) });
        }
      });
      await sheets.api.getFormula().onCalculationResultApplied();
      return before;
    },
    async goTo(sheetName, at) {
      const sheet = sheetNamed(sheetName);
      const range = sheet.getRange(at);
      workbook().setActiveSheet(sheet);
      range.activate();
      await sheets.commands.executeCommand(ScrollToCellCommand.id, { range: range.getRange() });
    },
    async remove(sheetName) {
      const sheet = sheetNamed(sheetName);
      if (names().length === 1) throw new Error(W.lastSheet);
      workbook().deleteSheet(sheet);
    },
    lacks: ['drop-downs', 'sort'],
    dress: async given => dressSheet(sheets, sheetNamed(given.sheetName), given),
    watchTyping: listener => watchTyping(sheets, listener),
    placePicture: (sheetName, picture) => placePicture(sheetNamed(sheetName), picture),
  };
}
