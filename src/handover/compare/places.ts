// Which cell of a workbook that came back is which of the workbook that was sent: with its row and column, or with a block that was cut
// out and put down elsewhere.
import { holds, type Place, placesIn, type Rectangle } from '../../sheet/addresses';
import { type Alignment, behind, type Lines } from './aligned';
import { type SeenGrid, isBlank } from './seen';

/** A cell, and the sheet on which it stands. */
export interface CellSpot extends Place {
  readonly grid: SeenGrid;
}

/** Cells that stand elsewhere, as they were sent. */
export interface Block {
  readonly sent: SeenGrid;
  readonly from: Rectangle;
  readonly returned: SeenGrid;
  readonly to: Rectangle;
}

export class CellPlaces {
  private readonly rowOf: ReadonlyMap<number, number>;
  private readonly columnOf: ReadonlyMap<number, number>;
  /** Blocks that left their places on this sheet, and those that were put down on it. */
  readonly left: readonly Block[];
  readonly came: readonly Block[];

  /** @param blocks of the whole workbook. */
  constructor(
    readonly sent: SeenGrid,
    readonly returned: SeenGrid,
    readonly alignment: Alignment,
    blocks: readonly Block[],
  ) {
    this.rowOf = turned(alignment.rows);
    this.columnOf = turned(alignment.columns);
    this.left = blocks.filter(block => block.sent === sent);
    this.came = blocks.filter(block => block.returned === returned);
  }

  /** Of a cell that was sent; undefined where its row or column is gone, or something else was put on it. */
  there(row: number, column: number): CellSpot | undefined {
    const block = this.left.find(({ from }) => holds(from, { row, column }));
    if (block !== undefined) return { grid: block.returned, ...shifted({ row, column }, block.from, block.to) };
    const [r, c] = [lineThere(row, this.alignment.rows), lineThere(column, this.alignment.columns)];
    if (r === undefined || c === undefined || this.came.some(({ to }) => holds(to, { row: r, column: c }))) return undefined;
    return { grid: this.returned, row: r, column: c };
  }

  /** Of a cell that came back; undefined in rows and columns that were not sent. */
  back(row: number, column: number): CellSpot | undefined {
    const block = this.came.find(({ to }) => holds(to, { row, column }));
    if (block !== undefined) return { grid: block.sent, ...shifted({ row, column }, block.to, block.from) };
    const [r, c] = [lineBack(row, this.rowOf, this.alignment.rows), lineBack(column, this.columnOf, this.alignment.columns)];
    return r === undefined || c === undefined ? undefined : { grid: this.sent, row: r, column: c };
  }

  /** Where cells stood on this sheet that came back filled, wherever. */
  filledBack(): Place[] {
    const here = filledOf(this.returned).flatMap(({ row, column }) => this.back(row, column) ?? []);
    const elsewhere = this.left.flatMap(({ returned, from, to }) =>
      returned === this.returned
        ? []
        : placesIn(to)
            .filter(({ row, column }) => !isBlank(returned.cell(row, column)))
            .map(place => shifted(place, to, from)),
    );
    return [...here, ...elsewhere];
  }
}

const shifted = ({ row, column }: Place, from: Rectangle, to: Rectangle): Place => ({
  row: row - from.top + to.top,
  column: column - from.left + to.left,
});

const turned = ({ to }: Lines): Map<number, number> =>
  new Map(to.flatMap((there, line) => (there === undefined ? [] : [[there, line] as const])));
const lineThere = (line: number, all: Lines): number | undefined => (line < all.to.length ? all.to[line] : line + behind(all));
const lineBack = (line: number, of: ReadonlyMap<number, number>, all: Lines): number | undefined =>
  of.get(line) ?? (line - behind(all) >= all.to.length ? line - behind(all) : undefined);

export const filledOf = (grid: SeenGrid): Place[] =>
  Array.from({ length: grid.rows }, (_, row) => grid.filled(row).map(column => ({ row, column }))).flat();
