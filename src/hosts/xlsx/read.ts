// A workbook file as cells. It may come from anybody.
import { strFromU8, zipSync } from 'fflate';
import { cellRef, parseCellRef, readXlsx, type Cell as FoundCell, type Sheet } from 'hucre/xlsx';
import type { FilledRange } from '../../sheet/plan';
import type { SheetCell } from '../../sheet/port';
import type { SourceTable } from '../../sheet/workbook-values';
import { isOwnCall, worksOnRanges } from '../../sheet/formula';
import { fromPlace, inPlace } from '../../package/shared-formula';
import { NO_WORKBOOK, UnreadableFile } from '../../package/unreadable';
import { callsOurs, fromFile } from './formulas';
import { opened } from './gate';
import { tablesOf } from './tables';

export { UnreadableFile };

export interface ReadCell extends SheetCell {
  readonly at: string;
  /** The cell whose formula spilled into this one: `F3`. */
  readonly spilledFrom?: string;
  /** Where the formula works on ranges cell by cell. */
  readonly array?: FilledRange;
}

export interface ReadSheet {
  readonly name: string;
  readonly hidden: boolean;
  /** The cells with a value or a formula, row by row. */
  readonly cells: readonly ReadCell[];
}

/** A defined name, and what it stands for: `Sheet1!$B$4`. */
export interface ReadName {
  readonly name: string;
  readonly meaning: string;
  /** The sheet on which alone it holds. */
  readonly sheet?: string;
}

export interface ReadWorkbook {
  readonly sheets: readonly ReadSheet[];
  readonly names: readonly ReadName[];
  readonly tables: readonly SourceTable[];
  /** What the file would fetch from elsewhere or carries besides cells: targets of links, names of parts. Nothing of it was read. */
  readonly outside: readonly string[];
}

/** Parts that say what else belongs to a sheet. */
const OF_SHEETS = /^xl\/(tables|worksheets\/_rels)\//i;

/** Names of the program: print areas, titles. */
const BUILT_IN = /^_xlnm\./i;

/** Rows times columns up to the last cell, of all sheets: the library fills the gaps. */
const MOST_CELLS = 4_000_000;
const TOO_WIDE = `the sheets reach over more than ${MOST_CELLS} cells`;

/** The tags of rows and cells with their attributes; one that ends in another way has no end here. */
const ROW_OR_CELL = /<(?:[\w.-]+:)?(row|c)(?=[\s/>])((?:\s+[^\s=<>"'/]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?>)?/g;
const ATTRIBUTE = /([^\s=]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** Rows times columns as the library will count them: one without an address follows the one before. */
function reachOf(sheetXml: string): number {
  let row = 0;
  let col = 0;
  let rows = 0;
  let cols = 0;
  for (const [, tag, attributes = '', end] of sheetXml.matchAll(ROW_OR_CELL)) {
    const address = new Map([...attributes.matchAll(ATTRIBUTE)].map(([, name, double, single]) => [name, double ?? single ?? ''])).get('r');
    if (end === undefined || (address !== undefined && !/^[A-Z]{0,3}\d{1,7}$/.test(address))) throw new UnreadableFile(NO_WORKBOOK);
    const place = address === undefined ? undefined : parseCellRef(address);
    if (tag === 'row') row = (place?.row ?? row) + 1;
    col = tag === 'row' ? 0 : (place?.col ?? col) + 1;
    rows = Math.max(rows, row, (place?.row ?? 0) + 1);
    cols = Math.max(cols, col);
  }
  return rows * cols;
}

/** Says of each sheet, by its position, whether it has cells: the library stops at a sheet that is one chart. */
function withCells(workbookXml: string, relationshipsXml: string): (sheet: { readonly index: number }) => boolean {
  const worksheets = new Set(
    [...relationshipsXml.matchAll(/<Relationship\b[^>]*>/g)]
      .filter(([tag]) => /\bType="[^"]*\/worksheet"/.test(tag))
      .map(([tag]) => /\bId="([^"]*)"/.exec(tag)?.[1]),
  );
  const ids = [...workbookXml.matchAll(/<(?:\w+:)?sheet\s[^>]*?\w+:id="([^"]*)"/g)].map(([, id]) => id);
  return ({ index }) => worksheets.has(ids[index]);
}

function formulasOf(found: ReadonlyMap<string, FoundCell>): Map<string, string> {
  const firstOf = new Map<number, { readonly at: string; readonly formula: string }>();
  const placed = [...found].map(([key, cell]) => {
    const [row = 0, col = 0] = key.split(',').map(Number);
    return { at: cellRef(row, col), cell };
  });
  for (const { at, cell } of placed) {
    if (cell.formulaType === 'shared' && cell.formula && cell.formulaSharedIndex !== undefined)
      firstOf.set(cell.formulaSharedIndex, { at, formula: cell.formula });
  }
  const formulas = new Map<string, string>();
  for (const { at, cell } of placed) {
    const first = cell.formula === '' && cell.formulaSharedIndex !== undefined ? firstOf.get(cell.formulaSharedIndex) : undefined;
    const formula = first === undefined ? cell.formula : inPlace(fromPlace(first.formula, first.at), at);
    if (formula) formulas.set(at, `=${fromFile(formula)}`);
  }
  return formulas;
}

/** Cells that a formula elsewhere filled, with the cell of that formula. */
function spills(sheet: Sheet): Map<string, string> {
  const from = new Map<string, string>();
  const rows = sheet.rows.length;
  let left = MOST_CELLS;
  for (const [key, { formulaType, formulaRef }] of sheet.cells ?? []) {
    if (formulaType !== 'array' || formulaRef === undefined) continue;
    const [row = 0, col = 0] = key.split(',').map(Number);
    const last = parseCellRef(formulaRef.slice(formulaRef.indexOf(':') + 1));
    for (let r = row; r <= Math.min(last.row, rows - 1); r++) {
      for (let c = col; c <= Math.min(last.col, (sheet.rows[r]?.length ?? 0) - 1); c++) {
        if (--left < 0) throw new UnreadableFile(TOO_WIDE);
        if (r !== row || c !== col) from.set(cellRef(r, c), cellRef(row, col));
      }
    }
  }
  return from;
}

/** A call of ours fills what it needs; Excel stores every cell around one as an array formula, of whatever it is made. */
function arrayOf(formula: string, at: string, found?: Partial<FoundCell>): FilledRange | undefined {
  const { formulaType, formulaRef: range = at, formulaDynamic } = found ?? {};
  if (formulaType !== 'array' || isOwnCall(formula)) return undefined;
  if (callsOurs(formula) && range === at && !worksOnRanges(formula)) return undefined;
  return { range, ...(formulaDynamic && { isDynamic: true }) };
}

function cellsOf(sheet: Sheet): ReadCell[] {
  const formulas = formulasOf(sheet.cells ?? new Map());
  const spilled = spills(sheet);
  return sheet.rows.flatMap((row, r) =>
    row.flatMap((raw, c): ReadCell[] => {
      const at = cellRef(r, c);
      const value = raw instanceof Date ? null : raw;
      const formula = formulas.get(at);
      const spilledFrom = spilled.get(at);
      if (formula === undefined && (value === null || value === '')) return [];
      const array = formula === undefined ? undefined : arrayOf(formula, at, sheet.cells?.get(`${r},${c}`));
      return [
        {
          at,
          value,
          ...(formula !== undefined && { formula }),
          ...(array && { array }),
          ...(spilledFrom !== undefined && { spilledFrom }),
        },
      ];
    }),
  );
}

export async function readWorkbook(bytes: Uint8Array): Promise<ReadWorkbook> {
  const { parts, outside } = opened(bytes);
  const xml = (name: string): string => strFromU8(parts.get(name) ?? new Uint8Array());
  try {
    let reach = 0;
    for (const name of parts.keys()) if (name.startsWith('xl/worksheets/')) reach += reachOf(xml(name));
    if (reach > MOST_CELLS) throw new UnreadableFile(TOO_WIDE);
    // Packed anew without compression, so that the library meets no zip of anybody.
    // what it would follow from a sheet to other parts stays out.
    const cells = [...parts].filter(([name]) => !OF_SHEETS.test(name));
    const workbook = await readXlsx(zipSync(Object.fromEntries(cells), { level: 0 }), {
      sheets: withCells(xml('xl/workbook.xml'), xml('xl/_rels/workbook.xml.rels')),
    });
    const links = (workbook.externalLinks ?? []).map(({ target }) => target || 'a link to another program');
    return {
      sheets: workbook.sheets.map(sheet => ({
        name: sheet.name,
        hidden: sheet.hidden === true || sheet.veryHidden === true,
        cells: cellsOf(sheet),
      })),
      names: (workbook.namedRanges ?? []).flatMap(({ name, range, scope }) =>
        BUILT_IN.test(name) ? [] : [{ name, meaning: range, ...(scope !== undefined && { sheet: scope }) }],
      ),
      tables: tablesOf(parts),
      outside: [...links, ...outside],
    };
  } catch (fault) {
    throw fault instanceof UnreadableFile ? fault : new UnreadableFile(NO_WORKBOOK);
  }
}
