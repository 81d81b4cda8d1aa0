// A plan as a workbook file.
import { writeXlsx, type Cell as FileCell, type CellStyle, type DataValidation, type WriteSheet } from 'hucre/xlsx';
import type { Cell } from '../../core/kinds';
import { cellPosition, holds, isOneCell, type Place, placesIn, type Rectangle, rectangleOf, sheetPrefix } from '../../sheet/addresses';
import type { SheetPlan, Validation, WorkbookPlan } from '../../sheet/plan';
import type { PackageEdit } from '../../package/edit';
import type { OwnRow } from '../../package/own-rows';
import { callsOurs, inFile } from '../../sheet/stored-formulas';
import { fileWidth, heightsPt, placed, type PlacedCell } from './layout';
import { split } from './long';
import { looks, sheetFont, stateRules } from './looks';
import { printOf, repeated } from './print';
import { repaired } from './repairs';
import { cellText, escaped, formulaText, promptText, sheetName, UnwritablePlan } from './text';

export { UnwritablePlan };

const AUTHOR = 'Bosswright';

function valueOf(value: Cell | undefined, where: string): Cell | null {
  if (value === undefined || value === '') return null;
  if (typeof value === 'number' && !Number.isFinite(value)) throw new UnwritablePlan(`${where}: ${value} is no value of a cell`);
  return typeof value === 'string' ? cellText(value, where) : value;
}

function styleOf({ cell, wraps }: PlacedCell, isState: boolean, isLocked = false): CellStyle {
  const isText = typeof cell.value === 'string';
  const isNumber = typeof cell.value === 'number' || (cell.role === 'result' && !isText);
  const horizontal = isState ? 'center' : cell.role === 'input' || isNumber ? 'right' : 'left';
  return {
    ...looks[cell.role],
    ...(cell.format !== undefined && { numFmt: cell.format }),
    ...(isLocked && { protection: { locked: cell.role !== 'input' } }),
    alignment: { vertical: 'center', horizontal, ...(!isState && { indent: 1 }), ...(wraps && { wrapText: true }) },
  };
}

type IsState = (one: PlacedCell) => boolean;

/** All that `styleOf` reads of a cell in one sheet; a column mostly goes on as it was above. */
function looksIn(isState: IsState): (one: PlacedCell) => string {
  const above: { readonly one: PlacedCell; readonly isState: boolean; readonly looks: string }[] = [];
  return one => {
    const { cell, wraps } = one;
    const [before, is] = [above[one.column], isState(one)];
    if (
      before?.isState === is &&
      before.one.wraps === wraps &&
      before.one.cell.role === cell.role &&
      before.one.cell.format === cell.format &&
      typeof before.one.cell.value === typeof cell.value &&
      (before.one.cell.formula === undefined) === (cell.formula === undefined)
    )
      return before.looks;
    const looks = [cell.role, cell.format, typeof cell.value, cell.formula === undefined, wraps, is].join('|');
    above[one.column] = { one, isState: is, looks };
    return looks;
  };
}

/** Whether a cell is where a state may stand; the ranges are looked at by columns. */
function isStateIn(ranges: readonly Rectangle[]): IsState {
  const columns: (readonly Rectangle[])[] = [];
  return one =>
    one.cell.role !== 'header' &&
    (columns[one.column] ??= ranges.filter(({ left, right }) => one.column >= left && one.column <= right)).some(range =>
      holds(range, one),
    );
}

function cellOf({ cell, area }: PlacedCell, where: string): Partial<FileCell> {
  const value = valueOf(cell.value, where);
  const comment = {
    ...(cell.note !== undefined && { comment: { author: AUTHOR, text: cellText(cell.note, where) } }),
    ...(cell.link !== undefined && { hyperlink: { target: '', location: `${sheetPrefix(cell.link)}A1` } }),
  };
  if (cell.formula === undefined) {
    // A plain text cell that reads like an error code would become that error; a run of rich text stays a text.
    return { ...comment, ...(typeof value === 'string' && value.startsWith('#') ? { richText: [{ text: value }] } : { value }) };
  }
  const formula = inFile(formulaText(cell.formula, where));
  // Of a formula that is no dynamic array Excel shows one cell of the result. It has no arrays in merged cells.
  const spills = callsOurs(cell.formula) && isOneCell(area);
  return {
    ...comment,
    formula,
    ...(value !== null ? { formulaResult: value } : cell.value === '' && { formulaResult: '' }),
    ...(cell.array !== undefined && {
      formulaType: 'array',
      formulaRef: cell.array.range,
      ...(cell.array.isDynamic && { formulaDynamic: true }),
    }),
    ...(spills && { formulaType: 'array', formulaRef: cell.at, formulaDynamic: true }),
  };
}

function validationOf({ range, words, above, atLeast, below, atMost, list }: Validation): DataValidation {
  const first = range.split(':')[0] ?? range;
  const limits = Object.entries({ '>': above, '>=': atLeast, '<': below, '<=': atMost }).flatMap(([sign, limit]) =>
    limit === undefined ? [] : [`${first}${sign}${limit}`],
  );
  return {
    range,
    ...(list !== undefined
      ? { type: 'list', formula1: list }
      : { type: 'custom', formula1: limits.length === 0 ? 'TRUE' : `AND(ISNUMBER(${first}),${limits.join(',')})` }),
    allowBlank: true,
    showInputMessage: true,
    inputMessage: promptText(words),
    showErrorMessage: true,
    errorMessage: promptText(words),
  };
}

/** Of a cell in the library's maps. */
const keyOf = ({ row, column }: Place): string => `${row},${column}`;

interface SheetWriting {
  readonly sheet: WriteSheet;
  /** Where the sheet is split, what the library does not write. */
  readonly rows: Iterable<OwnRow>;
}

/** Of a sheet that the library writes. */
const WHOLE = { kept: undefined, own: undefined, rows: [] };

function sheetOf(plan: SheetPlan, workbookName: string, isSplit: boolean): SheetWriting {
  const where = (at: string): string => `${plan.name}!${at}`;
  const isState = isStateIn((plan.stateRanges ?? []).map(rectangleOf));
  const cells = placed(plan);
  const heights = heightsPt(cells, plan);
  const { kept, own, rows } = isSplit ? split(plan.name, cells, heights, looksIn(isState)) : WHOLE;
  const written = new Map<string, Partial<FileCell>>();
  for (const one of cells) {
    if (kept?.has(one.row) === false) continue;
    const style = styleOf(one, isState(one), plan.isLocked);
    for (const place of placesIn(one.band)) written.set(keyOf(place), { style });
    written.set(keyOf(one), { ...cellOf(one, where(one.cell.at)), style });
  }
  const frozenRows = plan.frozenRows ?? 0;
  const sheet: WriteSheet = {
    name: sheetName(plan.name),
    columns: plan.widths.map(width => ({ width: fileWidth(width) })),
    cells: written,
    rowDefs: new Map([...heights].flatMap(([row, height]) => (own?.has(row) === true ? [] : [[row, { height }] as const]))),
    merges: (plan.merged ?? [])
      .map(rectangleOf)
      .map(({ top, left, bottom, right }) => ({ startRow: top, startCol: left, endRow: bottom, endCol: right })),
    conditionalRules: (plan.stateRanges ?? []).flatMap((range, i) => stateRules(range, range.split(':')[0] ?? range, i * 10)),
    dataValidations: (plan.validations ?? []).map(validationOf),
    ...(frozenRows > 0 && { freezePane: { rows: frozenRows } }),
    images: (plan.pictures ?? []).map(({ at, png, widthPx, heightPx, words }) => {
      const { row, column: col } = cellPosition(at);
      return {
        data: png,
        type: 'png',
        anchor: { from: { row, col } },
        width: Math.round(widthPx),
        height: Math.round(heightPx),
        altText: words,
      };
    }),
    ...(plan.isLocked === true && { protection: { formatCells: true, formatColumns: true, formatRows: true } }),
    ...printOf(plan, workbookName, heights),
  };
  return { sheet, rows };
}

async function written(plan: WorkbookPlan, sheets: WriteSheet[]): Promise<Uint8Array> {
  const bytes = await writeXlsx({
    sheets,
    namedRanges: [
      ...(plan.names ?? []).map(({ name, meaning, sheet }) => ({
        name,
        range: inFile(meaning),
        ...(sheet !== undefined && { scope: sheet }),
      })),
      ...plan.sheets.flatMap(repeated),
    ],
    defaultFont: sheetFont,
    properties: { title: escaped(plan.name) },
  });
  return repaired(bytes, plan.sheets);
}

export async function writeWorkbook(plan: WorkbookPlan): Promise<Uint8Array> {
  return written(
    plan,
    plan.sheets.map(sheet => sheetOf(sheet, plan.name, false).sheet),
  );
}

/** Sheets to be put behind those of a workbook: plain rows that look like others are left to that edit, which has them sooner written. */
export async function writeOwnSheets(plan: WorkbookPlan): Promise<Required<Pick<PackageEdit, 'own' | 'ownRows'>>> {
  const sheets = plan.sheets.map(sheet => sheetOf(sheet, plan.name, true));
  const ownRows = new Map(sheets.map(({ sheet, rows }) => [sheet.name, rows] as const));
  return {
    own: await written(
      plan,
      sheets.map(({ sheet }) => sheet),
    ),
    ownRows,
  };
}
