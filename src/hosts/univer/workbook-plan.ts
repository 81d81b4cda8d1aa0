// The open workbook as a plan: the way back from workbook-data. Looks are told by their colours, so that copied and
// moved cells keep theirs.
import type { IStyleData, Nullable } from '@univerjs/core';
import { ConditionalFormattingRuleModel } from '@univerjs/preset-sheets-conditional-formatting';
import { address } from '../../sheet/addresses';
import type { PlanCell, Role, SheetPlan, WorkbookPlan } from '../../sheet/plan';
import { nameOf } from './addresses';
import { sheetReader } from './cells';
import { looks, sheetStyle, stateLooks } from './looks';
import { picturesOn } from './pictures';
import { workbookId, type OpenSheet, type Sheets } from './sheets';
import { charactersOf } from './workbook-data';

const lookOf = ({ cl, bg, fs }: IStyleData): string => [cl?.rgb ?? sheetStyle.cl?.rgb, bg?.rgb, fs ?? sheetStyle.fs].join(' ');

const roles = new Map(Object.entries(looks).map(([role, style]) => [lookOf(style), role as Role]));

const roleOf = (style: Nullable<IStyleData>): Role => roles.get(lookOf(style ?? {})) ?? 'text';

const aState = `="${Object.keys(stateLooks)[0]}"`;

function stateRanges({ injector }: Sheets, sheetId: string): string[] {
  const rules = injector.get(ConditionalFormattingRuleModel).getSubunitRules(workbookId, sheetId) ?? [];
  return rules.flatMap(({ ranges, rule }) =>
    'value' in rule && String(rule.value).endsWith(aState) ? ranges.map(range => nameOf(range)) : [],
  );
}

function sheetPlan(sheets: Sheets, sheet: OpenSheet): SheetPlan {
  const sheetId = sheet.getSheetId();
  const worksheet = sheet.getSheet();
  const reader = sheetReader(sheets, sheetId);
  const cells: PlanCell[] = [];
  worksheet.getCellMatrix().forValue((row, column) => {
    const { value, formula, note, spilledFrom } = reader.at(row, column);
    if (spilledFrom !== undefined) return;
    const style = worksheet.getComposedCellStyle(row, column);
    const role = roleOf(style);
    const format = style.n?.pattern;
    if (value === null && formula === undefined && role === 'text') return;
    cells.push({
      at: address(row, column),
      role,
      ...(value !== null && { value }),
      ...(formula !== undefined && { formula }),
      ...(format !== undefined && { format }),
      ...(note !== undefined && { note }),
    });
  });
  const columns = (reader.used()?.right ?? -1) + 1;
  const frozenRows = worksheet.getFreeze().ySplit;
  const merged = worksheet.getMergeData().map(range => nameOf(range));
  const states = stateRanges(sheets, sheetId);
  const pictures = picturesOn(sheets, sheetId);
  return {
    name: sheet.getSheetName(),
    widths: Array.from({ length: columns }, (_, column) => charactersOf(worksheet.getColumnWidth(column))),
    cells,
    ...(frozenRows > 0 && { frozenRows }),
    ...(merged.length > 0 && { merged }),
    ...(states.length > 0 && { stateRanges: states }),
    ...(pictures.length > 0 && { pictures }),
  };
}

export function workbookPlan(sheets: Sheets): WorkbookPlan {
  const workbook = sheets.api.getWorkbook(workbookId);
  if (workbook === null) throw new Error('no workbook is open');
  const names = workbook.getDefinedNames().map(name => ({ name: name.getName(), meaning: name.getFormulaOrRefString().replace(/^=/, '') }));
  return {
    name: workbook.getName(),
    sheets: workbook.getSheets().map(sheet => sheetPlan(sheets, sheet)),
    ...(names.length > 0 && { names }),
  };
}
