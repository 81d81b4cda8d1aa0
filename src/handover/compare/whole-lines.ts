// Rows, columns and blocks of cells that came along, are gone or stand elsewhere; what lies side by side is one line.
import { address, columnName, holds, type Rectangle } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import type { PageWords } from '../words/english';
import { type Block, type CellPlaces, filledOf } from './places';
import type { Rearranged } from './returned-changes';
import { shown } from './same';
import { type SeenCell, type SeenGrid, isBlank } from './seen';

export const MOST_WORDS = 120;
/** Of a column. */
const MOST_ROWS = 200;
/** As many side by side are told one by one. */
const FEW = 3;

interface Line {
  readonly line: number;
  readonly to?: number;
}

/** Lines side by side that went the same way. */
function runsOf(lines: readonly Line[]): Line[][] {
  const runs: Line[][] = [];
  for (const one of [...lines].sort((a, b) => a.line - b.line)) {
    const last = runs[runs.length - 1];
    const before = last?.[last.length - 1];
    const isNext = before?.line === one.line - 1 && (one.to === undefined || before.to === one.to - 1);
    if (last !== undefined && isNext) last.push(one);
    else runs.push([one]);
  }
  return runs.flatMap(run => (run.length <= FEW ? run.map(one => [one]) : [run]));
}

export function wholeLines({ sent, returned, alignment: { rows, columns }, left }: CellPlaces, { compare: said }: PageWords): Rearranged[] {
  const sheet = sent.sheet.name;
  const filled = filledOf(sent);
  const words = (cells: readonly SeenCell[]): string =>
    cells
      .filter(cell => !isBlank(cell))
      .map(shown)
      .join(' | ')
      .slice(0, MOST_WORDS)
      .trimEnd();
  const rowWords = (grid: SeenGrid, r: number): string => words(grid.filled(r).map(c => grid.cell(r, c)));
  const columnWords = (grid: SeenGrid, c: number): string =>
    words(Array.from({ length: Math.min(grid.rows, MOST_ROWS) }, (_, r) => grid.cell(r, c)));
  const each = (what: 'row' | 'column', how: Rearranged['how'], grid: SeenGrid, lines: readonly Line[]): Rearranged[] =>
    runsOf(lines).map(run => {
      const name = what === 'row' ? (line: number): string => String(line + 1) : columnName;
      const ends = [run[0], ...(run.length > 1 ? [run[run.length - 1]] : [])].flatMap(one => (one === undefined ? [] : [one]));
      const places = ends.map(({ line }) => name(line)).join('–');
      const there = ends.flatMap(({ to }) => (to === undefined ? [] : [name(to)])).join('–');
      const filledWith = run.map(({ line }) => (what === 'row' ? rowWords(grid, line) : columnWords(grid, line))).find(text => text !== '');
      const where = there === '' ? places : said.to(places, there);
      return { sheet, what, how, words: `${where}${filledWith === undefined ? `, ${said.blank}` : `: ${filledWith}`}` };
    });
  // what went elsewhere with its block is told there
  const isLeft = (row: number, column: number): boolean => !left.some(({ from }) => holds(from, { row, column }));
  const moved = (all: readonly number[], to: readonly (number | undefined)[]): Line[] => all.map(line => ({ line, to: to[line] ?? 0 }));
  const gone = (to: readonly (number | undefined)[], isFilled: (line: number) => boolean): Line[] =>
    to.flatMap((there, line) => (there === undefined && isFilled(line) ? [{ line }] : []));
  return [
    ...each(
      'row',
      'inserted',
      returned,
      rows.added.map(line => ({ line })),
    ),
    ...each(
      'row',
      'deleted',
      sent,
      gone(rows.to, row => sent.filled(row).some(column => isLeft(row, column))),
    ),
    ...each('row', 'moved', sent, moved(rows.moved, rows.to)),
    ...each(
      'column',
      'inserted',
      returned,
      columns.added.map(line => ({ line })),
    ),
    ...each(
      'column',
      'deleted',
      sent,
      gone(columns.to, column => filled.some(place => place.column === column && isLeft(place.row, column))),
    ),
    ...each('column', 'moved', sent, moved(columns.moved, columns.to)),
    ...left.map((block): Rearranged => ({ sheet, what: 'cells', how: 'moved', words: blockWords(block, returned, said) })),
  ];
}

/** `B10:B13`, or `B10` alone. */
export const areaWords = ({ top, left, bottom, right }: Rectangle): string =>
  top === bottom && left === right ? address(top, left) : `${address(top, left)}:${address(bottom, right)}`;

/** `A21:F23 to H5:M7`, or `A21:F23 to Tolerance H5:M7`. */
function blockWords({ from, returned, to }: Block, home: SeenGrid, said: PageWords['compare']): string {
  const there = returned === home ? '' : `${cellText(returned.sheet.name)} `;
  return said.to(areaWords(from), `${there}${areaWords(to)}`);
}
