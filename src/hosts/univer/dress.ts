// Looks on cells of a sheet that the user has, and the way to take them off. This engine has no lists of words to choose from.
import { type ICellData, type IStyleData, IUndoRedoService, IUniverInstanceService, type Workbook, WrapStrategy } from '@univerjs/core';
import { AddCfCommand, ConditionalFormattingRuleModel, DeleteCfCommand } from '@univerjs/preset-sheets-conditional-formatting';
import {
  type ISetRangeValuesMutationParams,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
  SetStyleCommand,
} from '@univerjs/preset-sheets-core';
import { cellPosition, placesIn, rectangleOf } from '../../sheet/addresses';
import type { Dress } from '../../sheet/dress';
import { looks, stateCell } from './looks';
import { inOneStep } from './one-step';
import { workbookId, type OpenSheet, type Sheets } from './sheets';
import { columnPxOf, stateRules } from './workbook-data';

/** A column of sentences. */
const WRAPPED_CHARACTERS = 36;

type LooksByPlace = Record<number, Record<number, IStyleData | null>>;

function add(styles: LooksByPlace, row: number, column: number, style: IStyleData): void {
  const line = (styles[row] ??= {});
  line[column] = { ...line[column], ...style };
}

function addAll(styles: LooksByPlace, range: string, style: IStyleData): void {
  for (const { row, column } of placesIn(rectangleOf(range))) add(styles, row, column, style);
}

const eachStyle = <T>(
  styles: LooksByPlace,
  to: (style: IStyleData | null, row: number, column: number) => T,
): Record<number, Record<number, T>> =>
  Object.fromEntries(
    Object.entries(styles).map(([row, line]) => [
      row,
      Object.fromEntries(Object.entries(line).map(([column, style]) => [column, to(style, Number(row), Number(column))])),
    ]),
  );

interface SheetIds {
  readonly unitId: string;
  readonly subUnitId: string;
}

/**
 * Looks alone: what is told as a change of style leaves the tables that formulas fill as they are. Undo and redo tell it as their
 * own, and a cell that then comes without its formula loses it.
 */
function styling({ injector, commands }: Sheets, target: SheetIds, wanted: LooksByPlace) {
  const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(workbookId);
  const styles = workbook?.getStyles();
  const cells = workbook?.getSheetBySheetId(target.subUnitId)?.getCellMatrix();
  const withFormula = (s: IStyleData | null, row: number, column: number): ICellData => {
    const { f, si } = cells?.getValue(row, column) ?? {};
    return { s, ...(f && { f }), ...(si && { si }) };
  };
  const change = (styles: LooksByPlace): ISetRangeValuesMutationParams => ({
    ...target,
    cellValue: eachStyle(styles, withFormula),
    trigger: SetStyleCommand.id,
  });
  const { cellValue: undone = {} } = SetRangeValuesUndoMutationFactory(injector, change(wanted));
  const before = eachStyle(wanted, (_, row, column) => {
    const isPlain = (styles?.getStyleByCell(cells?.getValue(row, column)) ?? null) === null;
    return isPlain ? null : ((undone[row]?.[column]?.s ?? null) as IStyleData | null);
  });
  const make = (to: LooksByPlace, from: LooksByPlace) => {
    const mutation = (params: LooksByPlace) => ({ id: SetRangeValuesMutation.id, params: structuredClone(change(params)) });
    const { id, params } = mutation(to);
    commands.syncExecuteCommand(id, params);
    injector.get(IUndoRedoService).pushUndoRedo({ unitID: workbookId, redoMutations: [mutation(to)], undoMutations: [mutation(from)] });
  };
  return { put: () => make(wanted, before), back: () => make(before, wanted) };
}

export function dressSheet(sheets: Sheets, sheet: OpenSheet, dress: Dress): () => Promise<void> {
  const { injector, commands } = sheets;
  const target = { unitId: workbookId, subUnitId: sheet.getSheetId() };
  const wanted: LooksByPlace = {};
  for (const { at, role } of dress.cells) {
    const { row, column } = cellPosition(at);
    add(wanted, row, column, looks[role]);
  }
  for (const { range, format } of dress.formats) addAll(wanted, range, { n: { pattern: format } });
  for (const range of dress.wrapped) addAll(wanted, range, { tb: WrapStrategy.WRAP });
  for (const range of dress.stateRanges) addAll(wanted, range, stateCell);
  const worksheet = sheet.getSheet();
  const restyling = styling(sheets, target, wanted);
  const widths = dress.wrapped.map(range => {
    const { left } = rectangleOf(range);
    return { column: left, px: worksheet.getColumnWidth(left) };
  });
  const fitRows = () => {
    for (const range of dress.wrapped) {
      const { top, bottom } = rectangleOf(range);
      sheet.setRowAutoHeight(top, bottom - top + 1);
    }
  };
  const rules = stateRules(dress).map(rule => ({
    ...rule,
    cfId: injector.get(ConditionalFormattingRuleModel).createCfId(workbookId, target.subUnitId),
  }));

  inOneStep(sheets, () => {
    restyling.put();
    for (const rule of rules) commands.syncExecuteCommand(AddCfCommand.id, { ...target, rule });
    for (const { column, px } of widths) sheet.setColumnWidth(column, Math.max(columnPxOf(WRAPPED_CHARACTERS), px));
    fitRows();
  });
  return async () =>
    inOneStep(sheets, () => {
      for (const { cfId } of rules) commands.syncExecuteCommand(DeleteCfCommand.id, { ...target, cfId });
      restyling.back();
      for (const { column, px } of widths) sheet.setColumnWidth(column, px);
      fitRows();
    });
}
