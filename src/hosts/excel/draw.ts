// Puts a plan on an empty sheet. Everything is queued; the caller sends it.
import type { PlanCell, Picture, SheetPlan, Validation } from '../../sheet/plan';
import { address, cellPosition, rectangleOf, rectanglesOf, type Rectangle } from '../../sheet/addresses';
import { type Look, ROLE_LOOKS, SHEET_FONT, STATE_LOOKS, WRAPPED_WHEN_MERGED } from '../../sheet/theme';

const PT_PER_PX = 0.75;
const DIGIT_PX = 7;
const COLUMN_PADDING_PX = 5;
const LINE_PT = 13;
const PADDING_PT = 5;
const LONGEST_PROMPT = 255;

export const columnPt = (characters: number): number => (characters * DIGIT_PX + COLUMN_PADDING_PX) * PT_PER_PX;

/** The apostrophe keeps a text a text: no date, number or formula is read into it. */
function contentOf({ value, formula }: PlanCell): string | number | boolean {
  if (formula !== undefined) return formula;
  return typeof value === 'string' && value !== '' ? `'${value}` : (value ?? '');
}

function dress(format: Excel.RangeFormat, { ink, fill, sizePt, isBold, isItalic, frame, underline }: Look): void {
  format.font.color = ink;
  if (sizePt !== undefined) format.font.size = sizePt;
  if (isBold === true) format.font.bold = true;
  if (isItalic === true) format.font.italic = true;
  if (fill !== undefined) format.fill.color = fill;
  const sides: readonly Excel.BorderIndex[] =
    frame === undefined
      ? underline === undefined
        ? []
        : [Excel.BorderIndex.edgeBottom]
      : [Excel.BorderIndex.edgeTop, Excel.BorderIndex.edgeRight, Excel.BorderIndex.edgeBottom, Excel.BorderIndex.edgeLeft];
  for (const side of sides) {
    const border = format.borders.getItem(side);
    border.style = Excel.BorderLineStyle.continuous;
    border.color = frame ?? underline ?? '';
  }
}

const rangeOf = (sheet: Excel.Worksheet, { top, left, bottom, right }: Rectangle): Excel.Range =>
  sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1);

/** Rectangles alone: a list of areas is parted by the sign of the user's country on some hosts and by a comma on others. */
function rectanglesBy<K>(cells: readonly PlanCell[], key: (cell: PlanCell) => K | undefined): [K, Rectangle[]][] {
  const found = new Map<K, PlanCell[]>();
  for (const cell of cells) {
    const of = key(cell);
    if (of === undefined) continue;
    const alike = found.get(of);
    if (alike === undefined) found.set(of, [cell]);
    else alike.push(cell);
  }
  return [...found].map(([of, alike]) => [of, rectanglesOf(alike.map(({ at }) => cellPosition(at)))]);
}

/** One value for each cell of the rectangle. */
const filledWith = <T>({ top, left, bottom, right }: Rectangle, of: (row: number, column: number) => T): T[][] =>
  Array.from({ length: bottom - top + 1 }, (_, r) => Array.from({ length: right - left + 1 }, (__, c) => of(top + r, left + c)));

export function drawCells(sheet: Excel.Worksheet, { cells }: Pick<SheetPlan, 'cells'>): void {
  for (const [role, rectangles] of rectanglesBy(cells, ({ role: of }) => of)) {
    for (const rectangle of rectangles) {
      const { format } = rangeOf(sheet, rectangle);
      dress(format, ROLE_LOOKS[role]);
      if (role === 'header') format.wrapText = true;
    }
  }
  for (const [pattern, rectangles] of rectanglesBy(cells, ({ format }) => format)) {
    for (const rectangle of rectangles) rangeOf(sheet, rectangle).numberFormat = filledWith(rectangle, () => pattern);
  }
  const contents = new Map(cells.map(cell => [cell.at, contentOf(cell)]));
  const filled = cells.filter(({ at }) => contents.get(at) !== '').map(({ at }) => cellPosition(at));
  for (const rectangle of rectanglesOf(filled))
    rangeOf(sheet, rectangle).formulas = filledWith(rectangle, (row, column) => contents.get(address(row, column)));
}

function drawMerged(sheet: Excel.Worksheet, { merged = [], cells, widths }: SheetPlan): void {
  for (const address of merged) {
    const range = sheet.getRange(address);
    range.merge(false);
    const [first = ''] = address.split(':');
    const { left, right } = rectangleOf(address);
    const cell = cells.find(({ at }) => at === first);
    if (cell === undefined || !WRAPPED_WHEN_MERGED.includes(cell.role)) continue;
    const characters = widths.slice(left, right + 1).reduce((sum, width) => sum + width, 0);
    const lines = Math.max(1, Math.ceil(String(cell.value ?? '').length / Math.max(1, characters)));
    range.format.wrapText = true;
    range.format.verticalAlignment = Excel.VerticalAlignment.center;
    // Excel fits no row to merged cells.
    if (lines > 1) range.format.rowHeight = lines * LINE_PT + PADDING_PT;
  }
}

/** The colour of each state word, answered so that it can be taken off again. */
export function colourStates(range: Excel.Range): Excel.ConditionalFormat[] {
  return Object.entries<Look>(STATE_LOOKS).map(([word, { ink, fill = '', isBold, isItalic }]) => {
    const added = range.conditionalFormats.add(Excel.ConditionalFormatType.cellValue);
    const { cellValue } = added;
    cellValue.rule = { formula1: `="${word}"`, operator: Excel.ConditionalCellValueOperator.equalTo };
    cellValue.format.font.color = ink;
    cellValue.format.fill.color = fill;
    if (isBold === true) cellValue.format.font.bold = true;
    if (isItalic === true) cellValue.format.font.italic = true;
    return added;
  });
}

function drawStates(sheet: Excel.Worksheet, { stateRanges = [] }: SheetPlan): void {
  for (const address of stateRanges) {
    const range = sheet.getRange(address);
    range.format.horizontalAlignment = Excel.HorizontalAlignment.center;
    colourStates(range);
  }
}

/** A number without a decimal sign: the formula of a rule may be read in the signs of the user's country. */
function unpointed(value: number): string {
  const [whole = '', decimals = ''] = String(value).split('.');
  return decimals === '' ? whole : `${Number(whole + decimals)}/${10 ** decimals.length}`;
}

function ruleOf({ range, list, above, atLeast, below, atMost }: Validation): Excel.DataValidationRule {
  if (list !== undefined) return { list: { inCellDropDown: true, source: `=${list}` } };
  const [cell = ''] = range.split(':');
  const conditions = [
    ['>', above],
    ['>=', atLeast],
    ['<', below],
    ['<=', atMost],
  ].flatMap(([sign, limit]) => (limit === undefined ? [] : [`(${cell}${sign}${unpointed(Number(limit))})`]));
  return { custom: { formula: `=${[`ISNUMBER(${cell})`, ...conditions].join('*')}` } };
}

function drawValidations(sheet: Excel.Worksheet, { validations = [], cells }: SheetPlan): void {
  for (const { at, note } of cells) {
    if (note !== undefined)
      sheet.getRange(at).dataValidation.prompt = { showPrompt: true, title: 'Note', message: note.slice(0, LONGEST_PROMPT) };
  }
  for (const validation of validations) {
    const { dataValidation } = sheet.getRange(validation.range);
    const message = validation.words.slice(0, LONGEST_PROMPT);
    dataValidation.rule = ruleOf(validation);
    dataValidation.prompt = { showPrompt: true, title: 'Input', message };
    dataValidation.errorAlert = { showAlert: true, style: Excel.DataValidationAlertStyle.stop, title: 'Not accepted', message };
  }
}

function drawPrint(sheet: Excel.Worksheet, { print }: SheetPlan): void {
  if (print === undefined) return;
  const { pageLayout } = sheet;
  pageLayout.paperSize = print.paper === 'Letter' ? Excel.PaperType.letter : Excel.PaperType.a4;
  pageLayout.orientation = print.landscape === true ? Excel.PageOrientation.landscape : Excel.PageOrientation.portrait;
  pageLayout.zoom = { horizontalFitToPages: 1 };
  if (print.repeatRows !== undefined) pageLayout.setPrintTitleRows(`$1:$${print.repeatRows}`);
}

export function draw(sheet: Excel.Worksheet, plan: SheetPlan): void {
  const { format } = sheet.getRange();
  format.font.name = SHEET_FONT.name;
  format.font.size = SHEET_FONT.sizePt;
  plan.widths.forEach((characters, column) => {
    sheet.getRangeByIndexes(0, column, 1, 1).getEntireColumn().format.columnWidth = columnPt(characters);
  });
  drawCells(sheet, plan);
  drawMerged(sheet, plan);
  drawStates(sheet, plan);
  drawValidations(sheet, plan);
  drawPrint(sheet, plan);
  if (plan.frozenRows !== undefined && plan.frozenRows > 0) sheet.freezePanes.freezeRows(plan.frozenRows);
}

export function base64(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}

/** @param corner the cell at whose top left corner the picture stands, with its place loaded. */
export function drawPicture(sheet: Excel.Worksheet, { left, top }: Excel.Range, { png, widthPx, heightPx, words }: Picture): void {
  const shape = sheet.shapes.addImage(base64(png));
  shape.left = left;
  shape.top = top;
  shape.width = widthPx * PT_PER_PX;
  shape.height = heightPx * PT_PER_PX;
  shape.lockAspectRatio = true;
  shape.altTextDescription = words;
}
