// Which cell of a sheet that came back is which of the sheet that was sent: with its row and column, or with a block that was cut out
// and put down elsewhere.
import { address, cellPosition, holds, type Rectangle, round } from '../../sheet/addresses';
import { type Alignment, alignedSheets, behind, type Lines, token } from './aligned';
import { type SeenGrid, isBlank } from './seen';

export type CellSpot = readonly [row: number, column: number];

/** Cells that stand elsewhere, as they were sent. */
export interface Block {
  readonly from: Rectangle;
  readonly to: Rectangle;
}

/** Cells of a block that have to be the same as they were sent. */
const LEAST_SAME = 0.5;
/** CellPlaces that are tried for one cell. */
const MOST_PLACES = 100;
/** Blocks of one sheet. */
const MOST_BLOCKS = 8;

export class CellPlaces {
  private readonly rowOf: ReadonlyMap<number, number>;
  private readonly columnOf: ReadonlyMap<number, number>;

  constructor(
    readonly alignment: Alignment,
    readonly blocks: readonly Block[] = [],
  ) {
    this.rowOf = turned(alignment.rows);
    this.columnOf = turned(alignment.columns);
  }

  /** Of a cell that was sent; undefined where its row or column is gone, or something else was put on it. */
  there(row: number, column: number): CellSpot | undefined {
    const block = this.blocks.find(({ from }) => holds(from, { row, column }));
    if (block !== undefined) return [row - block.from.top + block.to.top, column - block.from.left + block.to.left];
    const [r, c] = [lineThere(row, this.alignment.rows), lineThere(column, this.alignment.columns)];
    if (r === undefined || c === undefined || this.blocks.some(({ to }) => holds(to, { row: r, column: c }))) return undefined;
    return [r, c];
  }

  /** Of a cell that came back; undefined in rows and columns that were not sent. */
  back(row: number, column: number): CellSpot | undefined {
    const block = this.blocks.find(({ to }) => holds(to, { row, column }));
    if (block !== undefined) return [row - block.to.top + block.from.top, column - block.to.left + block.from.left];
    const [r, c] = [this.lineBack(row, this.rowOf, this.alignment.rows), this.lineBack(column, this.columnOf, this.alignment.columns)];
    return r === undefined || c === undefined ? undefined : [r, c];
  }

  private lineBack(line: number, of: ReadonlyMap<number, number>, all: Lines): number | undefined {
    return of.get(line) ?? (line - behind(all) >= all.to.length ? line - behind(all) : undefined);
  }
}

const turned = ({ to }: Lines): Map<number, number> =>
  new Map(to.flatMap((there, line) => (there === undefined ? [] : [[there, line] as const])));
const lineThere = (line: number, all: Lines): number | undefined => (line < all.to.length ? all.to[line] : line + behind(all));

export function placesOf(sent: SeenGrid, returned: SeenGrid): CellPlaces {
  const alignment = alignedSheets(sent, returned);
  const lines = new CellPlaces(alignment);
  const gone: CellSpot[] = [];
  for (const [row, column] of filledOf(sent)) {
    const there = lines.there(row, column);
    if (there !== undefined && isBlank(returned.cell(...there))) gone.push([row, column]);
  }
  const blocks: Block[] = [];
  for (let left = gone; left.length > 1 && blocks.length < MOST_BLOCKS;) {
    const block = blockOf(sent, returned, new CellPlaces(alignment, blocks), left);
    if (block === undefined) break;
    blocks.push(block);
    left = left.filter(([row, column]) => !holds(block.from, { row, column }));
  }
  return new CellPlaces(alignment, blocks);
}

/** The block that left those cells blank. */
function blockOf(sent: SeenGrid, returned: SeenGrid, lines: CellPlaces, gone: readonly CellSpot[]): Block | undefined {
  const found = new Map<string, CellSpot[]>();
  for (const [row, column] of filledOf(returned)) {
    const back = lines.back(row, column);
    const said = token(returned.cell(row, column));
    if (back !== undefined && token(sent.cell(...back)) === said) continue;
    found.set(said, [...(found.get(said) ?? []), [row, column]]);
  }
  const votes = new Map<
    string,
    { readonly down: number; readonly right: number; readonly cells: CellSpot[]; readonly said: Set<string> }
  >();
  for (const [row, column] of gone) {
    const said = token(sent.cell(row, column));
    for (const [r, c] of (found.get(said) ?? []).slice(0, MOST_PLACES)) {
      const [down, right] = [r - row, c - column];
      const vote = votes.get(`${down} ${right}`) ?? { down, right, cells: [], said: new Set() };
      votes.set(`${down} ${right}`, vote);
      vote.cells.push([row, column]);
      vote.said.add(said);
    }
  }
  const [best] = [...votes.values()].sort((a, b) => b.cells.length - a.cells.length);
  // one word that stands elsewhere too, however often, is no block
  if (best === undefined || best.said.size < 2) return undefined;
  const from = best.cells.map(([row, column]): Rectangle => ({ top: row, left: column, bottom: row, right: column })).reduce(round);
  const inside = filledOf(sent).filter(([row, column]) => holds(from, { row, column }));
  if (best.cells.length < LEAST_SAME * inside.length) return undefined;
  const to = { top: from.top + best.down, left: from.left + best.right, bottom: from.bottom + best.down, right: from.right + best.right };
  return { from, to };
}

export const filledOf = (grid: SeenGrid): CellSpot[] =>
  Array.from({ length: grid.rows }, (_, row) => grid.filled(row).map((column): CellSpot => [row, column])).flat();

const rangeOf = ({ top, left, bottom, right }: Rectangle): string => `${address(top, left)}:${address(bottom, right)}`;

/** `A21:F23 to H5:M7` */
export const blockWords = ({ from, to }: Block): string => `${rangeOf(from)} to ${rangeOf(to)}`;

/** Where a cell of a formula went with its block. */
export function inBlock(blocks: readonly Block[], cells: readonly string[]): Block | undefined {
  return blocks.find(({ from }) => cells.every(cell => holds(from, cellPosition(cell))));
}
