// A formula as it would read where rows, columns and sheets are elsewhere.
import { cellPosition, columnName, columnNumber, holds, sheetPrefix } from '../../sheet/addresses';
import { parseFormula, type Replacement, rewritten, walk } from '../../sheet/formula';
import { type Alignment, behind, type Lines } from './aligned';
import type { CellPlaces } from './places';

/** By the names that the sheets had; undefined where one is gone. */
export type Moved = ReadonlyMap<string, CellPlaces | undefined>;

/** Where a line is now; one that is gone is where the next one is, and what lies behind all moves with the last. */
function now({ to }: Lines, shift: number, line: number): number {
  if (line >= to.length) return line + shift;
  for (let i = line; i < to.length; i++) {
    const there = to[i];
    if (there !== undefined) return there;
  }
  return line;
}

const CELL = /(\$?)\b([A-Z]{1,3})(\$?)(\d+)\b/gi;

/** What programs write for a cell that was deleted, each with what it has left of the place. */
export const LOST = '#REF!';

/** A range loses a line and goes on; a cell is lost with its own. */
function isGone(range: string, { rows, columns }: Alignment): boolean {
  const [, letters = '', row = ''] = /^\$?([A-Z]{1,3})\$?(\d+)$/i.exec(range) ?? [];
  const isLost = ({ to }: Lines, line: number): boolean => line < to.length && to[line] === undefined;
  return row !== '' && (isLost(rows, Number(row) - 1) || isLost(columns, columnNumber(letters.toUpperCase())));
}

/** @param becomes what stands in the place of a range of a sheet. */
function withRanges(formula: string, home: string, becomes: (sheet: string, range: string) => string): string {
  const tree = parseFormula(formula);
  if (tree === undefined) return formula;
  const replacements: Replacement[] = [];
  for (const node of walk(tree)) {
    if (node.type !== 'ReferenceIdentifier' || typeof node.value !== 'string' || node.kind === 'name' || node.kind === 'table') continue;
    const cut = node.value.lastIndexOf('!');
    const prefix = node.value.slice(0, cut + 1);
    const sheet = prefix === '' ? home : prefix.slice(0, -1).replace(/^'|'$/g, '').replaceAll("''", "'");
    replacements.push({ loc: node.loc, text: becomes(sheet, node.value.slice(cut + 1)) });
  }
  return replacements.length === 0 ? formula : rewritten(formula, [0, formula.length], replacements);
}

/** With the sheet at each range. */
export const wholeFormula = (formula: string, home: string): string =>
  withRanges(formula, home, (sheet, range) => `${sheetPrefix(sheet)}${range}`);

/** With the sheet at each range, as it would read now. */
export function movedFormula(formula: string, home: string, sheets: Moved): string {
  const byName = new Map([...sheets].map(([name, places]) => [name.toLowerCase(), places]));
  return withRanges(formula, home, (sheet, range) => {
    const name = sheet.toLowerCase();
    const places = byName.get(name);
    if (places === undefined) return byName.has(name) ? LOST : `${sheetPrefix(sheet)}${range}`;
    return movedRange(range, places);
  });
}

function movedRange(range: string, { returned, alignment, left }: CellPlaces): string {
  const cells = (range.match(CELL) ?? []).map(cell => cellPosition(cell.replaceAll('$', '').toUpperCase()));
  // what lies in a block went with it
  const block = cells.length === 0 ? undefined : left.find(({ from }) => cells.every(cell => holds(from, cell)));
  if (block === undefined && isGone(range, alignment)) return LOST;
  const { rows, columns } = alignment;
  const [down, right] = [behind(rows), behind(columns)];
  const text = range.replace(CELL, (_, d: string, letters: string, e: string, digits: string) => {
    const [row, column] = [Number(digits) - 1, columnNumber(letters.toUpperCase())];
    const [r, c] =
      block === undefined
        ? [now(rows, down, row), now(columns, right, column)]
        : [row - block.from.top + block.to.top, column - block.from.left + block.to.left];
    return `${d}${columnName(c)}${e}${r + 1}`;
  });
  return `${sheetPrefix((block?.returned ?? returned).sheet.name)}${text}`;
}
