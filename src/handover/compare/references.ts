// A formula as it would read where rows, columns and sheets are elsewhere.
import { columnName, columnNumber, sheetPrefix } from '../../sheet/addresses';
import { parseFormula, type Replacement, rewritten, walk } from '../../sheet/formula';
import { type Alignment, behind, type Lines } from './aligned';
import { inBlock, type CellPlaces } from './places';

export interface MovedSheet {
  readonly name: string;
  readonly places: CellPlaces;
}

/** By the names that they had; undefined where a sheet is gone. */
export type Moved = ReadonlyMap<string, MovedSheet | undefined>;

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

export function movedFormula(formula: string, home: string, sheets: Moved): string {
  const tree = parseFormula(formula);
  if (tree === undefined) return formula;
  const replacements: Replacement[] = [];
  for (const node of walk(tree)) {
    if (node.type !== 'ReferenceIdentifier' || typeof node.value !== 'string' || node.kind === 'name' || node.kind === 'table') continue;
    const cut = node.value.lastIndexOf('!');
    const [prefix, range] = [node.value.slice(0, cut + 1), node.value.slice(cut + 1)];
    const name = prefix === '' ? home : prefix.slice(0, -1).replace(/^'|'$/g, '').replaceAll("''", "'");
    const found = [...sheets].find(([before]) => before.toLowerCase() === name.toLowerCase());
    if (found === undefined) continue;
    const [, sheet] = found;
    if (sheet === undefined || isGone(range, sheet.places.alignment)) {
      replacements.push({ loc: node.loc, text: LOST });
      continue;
    }
    const text = movedRange(range, sheet.places);
    const before = prefix === '' || sheet.name === name ? prefix : sheetPrefix(sheet.name);
    if (text !== range || before !== prefix) replacements.push({ loc: node.loc, text: `${before}${text}` });
  }
  return replacements.length === 0 ? formula : rewritten(formula, [0, formula.length], replacements);
}

function movedRange(range: string, { alignment: { rows, columns }, blocks }: CellPlaces): string {
  const cells = range.match(CELL) ?? [];
  const block =
    cells.length === 0
      ? undefined
      : inBlock(
          blocks,
          cells.map(cell => cell.replaceAll('$', '').toUpperCase()),
        );
  const [down, right] = [behind(rows), behind(columns)];
  return range.replace(CELL, (_, d: string, letters: string, e: string, digits: string) => {
    const [row, column] = [Number(digits) - 1, columnNumber(letters.toUpperCase())];
    const [r, c] =
      block === undefined
        ? [now(rows, down, row), now(columns, right, column)]
        : [row - block.from.top + block.to.top, column - block.from.left + block.to.left];
    return `${d}${columnName(c)}${e}${r + 1}`;
  });
}
