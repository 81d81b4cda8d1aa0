// Where a cell that was sent stands in the sender's workbook as it is now: found by what is typed there, or not at all.
import { address, cellPosition } from '../../sheet/addresses';
import { headingsOf, namedBy, type SeenSheet } from '../../sheet/headings';
import type { SourceCell } from '../../sheet/workbook-values';
import { ENGLISH, type PageWords } from '../words/english';
import { alignedSheets, type Alignment } from './aligned';
import { isOurs } from './forms';
import { type ComparedSheet, type ComparedWorkbook, type SeenGrid, gridOf, isBlank } from './seen';
import { pairedSheets } from './sheets';

export interface OwnPlace {
  readonly sheet: string;
  readonly at: string;
}

/** The place, or why none is taken. */
export type OwnPlaces = (sent: OwnPlace) => OwnPlace | string;

/** What was typed: calls became other formulas on the way. */
const typed = (sheet: ComparedSheet): SeenGrid =>
  gridOf({
    ...sheet,
    cells: new Map([...sheet.cells].filter(([, { formula }]) => formula === undefined)),
  });

interface PlacedSide {
  /** As it is seen, for what cells are called. */
  readonly whole: SeenGrid;
  readonly typed: SeenGrid;
}

interface PlacedSheet {
  readonly sent: PlacedSide;
  readonly own: PlacedSide;
  readonly alignment: Alignment;
  readonly isDoubtful: boolean;
}

/** @param words in which it is told why. */
export function ownPlaces(sent: ComparedWorkbook, own: ComparedWorkbook, words: PageWords = ENGLISH): OwnPlaces {
  const { compare: said } = words;
  const grids = sent.sheets.map(gridOf).filter(grid => !isOurs(grid));
  const { pairs, doubtful } = pairedSheets(grids, own.sheets.map(gridOf));
  const placed = new Map<string, PlacedSheet>();
  for (const [grid, there] of pairs) {
    const [ours, theirs] = [typed(grid.sheet), typed(there.sheet)];
    placed.set(grid.sheet.name, {
      sent: { whole: grid, typed: ours },
      own: { whole: there, typed: theirs },
      alignment: alignedSheets(ours, theirs),
      isDoubtful: doubtful.has(grid),
    });
  }
  return ({ sheet, at }) => {
    const found = placed.get(sheet);
    return found === undefined ? said.noSheet : found.isDoubtful ? said.doubtful : placeIn(found, at, words);
  };
}

function placeIn(
  { sent, own, alignment: { rows, columns } }: PlacedSheet,
  at: string,
  { compare: said, of }: PageWords,
): OwnPlace | string {
  const { row, column } = cellPosition(at);
  if (row >= rows.to.length || column >= columns.to.length) return said.noName;
  const [r, c] = [rows.to[row], columns.to[column]];
  if (r === undefined || c === undefined) return said.noLine;
  const [left, leftColumns] = [rows.to, columns.to].map(lines => lines.filter(line => line !== undefined)) as [number[], number[]];
  const was = headingsOf(sent.whole, row, column);
  const is = headingsOf(among(own.whole, left, leftColumns), left.indexOf(r), leftColumns.indexOf(c));
  const [name, nameNow] = [namedBy(was, of), namedBy(is, of)];
  const place = { sheet: own.whole.sheet.name, at: address(r, c) };
  if (name !== nameNow) return nameNow === undefined ? said.notNamed(place.at) : said.calledOther(place.at, nameNow);
  const isSure =
    (was.row !== undefined && countOf(sent.typed, was.row) === countOf(own.typed, was.row)) ||
    (lineOf(sent.typed, row) === lineOf(own.typed, r) && isOnly(own.typed, r));
  return isSure ? place : said.doubtful;
}

/** A sheet as if it had these lines alone: what was put between them since names nothing. */
const among = (grid: SeenGrid, rows: readonly number[], columns: readonly number[]): SeenSheet => ({
  value: (row, column) => grid.value(rows[row] ?? -1, columns[column] ?? -1),
  isWorkedOut: (row, column) => grid.isWorkedOut(rows[row] ?? -1, columns[column] ?? -1),
});

/** Cells in which a name stands. */
const countOf = (grid: SeenGrid, name: string): number =>
  [...grid.sheet.cells.values()].filter(({ value }) => typeof value === 'string' && value.trim() === name).length;

const lineOf = (grid: SeenGrid, row: number): string =>
  grid
    .filled(row)
    .map(c => textIn(grid.cell(row, c)))
    .join('\u0001');

const textIn = (cell: SourceCell): string => (isBlank(cell) ? '' : String(cell.value));

function isOnly(grid: SeenGrid, row: number): boolean {
  const line = lineOf(grid, row);
  return line !== '' && Array.from({ length: grid.rows }, (_, r) => r).every(r => r === row || lineOf(grid, r) !== line);
}
