// Looks on cells of a sheet that the user has, and the way to take them off.
import { type Dress, LONGEST_CHOICES } from '../../sheet/dress';
import { cellPosition, rectanglesOf } from '../../sheet/addresses';
import { colourStates, columnPt, drawCells } from './draw';
import { putRule, readRule, rulesOf } from './typing-rules';
import { ExcelRefusal } from './words';

/** A column of sentences. */
const WRAPPED_CHARACTERS = 36;

/** What a role changes of a cell. */
const LOOKS: Excel.CellPropertiesLoadOptions = {
  format: {
    fill: { color: true, pattern: true },
    font: { color: true, size: true, bold: true, italic: true },
    borders: { style: true, color: true, weight: true },
    wrapText: true,
  },
};

/** The looks that a cell had, on one that has none: a cell without a fill tells of a white one. */
function hadLooks({ format: { fill, font, borders = {}, wrapText } = {} }: Excel.CellProperties): Excel.SettableCellProperties {
  const drawn = Object.entries(borders as Readonly<Record<string, Excel.CellBorder | undefined>>).filter(
    ([, border]) => border?.style !== undefined && border.style !== Excel.BorderLineStyle.none,
  );
  return {
    format: {
      ...(font && { font }),
      ...(wrapText !== undefined && { wrapText }),
      ...(fill?.pattern !== undefined && fill.pattern !== Excel.FillPattern.none && { fill }),
      ...(drawn.length > 0 && { borders: Object.fromEntries(drawn) }),
    },
  };
}

type TakeOff = (context: Excel.RequestContext) => Promise<void>;

const filled = (formats: readonly (readonly unknown[])[], format: string): string[][] => formats.map(line => line.map(() => format));

/** Two exchanges: what is there is read first, so that it can be put back. */
export async function dress(context: Excel.RequestContext, given: Dress): Promise<TakeOff> {
  const { sheetName, cells, stateRanges, dropDowns } = given;
  const sheet = context.workbook.worksheets.getItem(sheetName);
  const formats = given.formats.map(({ range: address, format }) => {
    const range = sheet.getRange(address);
    range.load('numberFormat');
    return { address, format, range };
  });
  const wrapped = given.wrapped.map(address => {
    const range = sheet.getRange(address);
    range.format.load('wrapText,columnWidth');
    return { address, range };
  });
  const changed = rectanglesOf(cells.map(({ at }) => cellPosition(at))).map(({ top, left, bottom, right }) => {
    const place = [top, left, bottom - top + 1, right - left + 1] as const;
    const range = sheet.getRangeByIndexes(...place);
    range.load('numberFormat');
    return { place, range, looks: range.getCellProperties(LOOKS) };
  });
  const ruled = dropDowns.map(({ range }) => readRule(sheet, range));
  await context.sync();
  const oldRules = await rulesOf(context, sheet, ruled);
  const oldLooks = changed.map(({ place, range, looks }) => ({
    place,
    numberFormat: range.numberFormat as string[][],
    looks: looks.value.map(line => line.map(hadLooks)),
  }));
  const oldFormats = formats.map(({ address, range }) => ({ address, format: range.numberFormat as string[][] }));
  const oldWraps = wrapped.map(({ address, range: { format } }) => ({
    address,
    wrapText: format.wrapText as boolean | null,
    columnWidth: format.columnWidth,
  }));

  drawCells(sheet, { cells });
  for (const { range, format } of formats) range.numberFormat = filled(range.numberFormat, format);
  for (const { range } of wrapped) {
    range.format.wrapText = true;
    range.format.columnWidth = Math.max(columnPt(WRAPPED_CHARACTERS), range.format.columnWidth);
  }
  for (const { range, choices, words } of dropDowns) {
    const { dataValidation } = sheet.getRange(range);
    const source = choices.join(',');
    if (source.length > LONGEST_CHOICES) throw new ExcelRefusal(({ longChoices }) => longChoices(range));
    dataValidation.rule = { list: { inCellDropDown: true, source } };
    dataValidation.prompt = { showPrompt: true, title: 'Input', message: words };
    // A card or a screw of one's own is typed here too.
    dataValidation.errorAlert = { showAlert: false, style: Excel.DataValidationAlertStyle.information, title: 'Input', message: words };
  }
  const coloured = stateRanges.flatMap(address => colourStates(sheet.getRange(address)).map(added => ({ address, added })));
  for (const { added } of coloured) added.load('id');
  await context.sync();
  const colours = coloured.map(({ address, added }) => ({ address, id: added.id }));

  return async later => {
    const there = later.workbook.worksheets.getItem(sheetName);
    for (const { address, id } of colours) there.getRange(address).conditionalFormats.getItem(id).delete();
    for (const { range } of dropDowns) there.getRange(range).dataValidation.clear();
    for (const rule of oldRules) putRule(there, rule);
    for (const { place, numberFormat, looks } of oldLooks) {
      const range = there.getRangeByIndexes(...place);
      range.clear(Excel.ClearApplyTo.formats);
      range.setCellProperties(looks);
      range.numberFormat = numberFormat;
    }
    for (const { address, wrapText, columnWidth } of oldWraps) {
      const { format } = there.getRange(address);
      if (wrapText !== null) format.wrapText = wrapText;
      format.columnWidth = columnWidth;
    }
    for (const { address, format } of oldFormats) there.getRange(address).numberFormat = format;
    await later.sync();
  };
}
