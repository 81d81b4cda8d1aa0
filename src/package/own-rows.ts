// Rows of long sheets of our own, written straight as text: their cells look like some that the workbook of our own has.
import { address } from '../sheet/addresses';
import { type NewCell, newCell } from './cell-splices';

export interface OwnCell {
  /** Counted from 0, like the row. */
  readonly column: number;
  /** The cell of the same sheet, in the workbook of our own, whose format it has: `B6`. */
  readonly like: string;
  readonly value: NewCell['value'];
  readonly formula: Exclude<NewCell['formula'], 'kept'>;
}

export interface OwnRow {
  readonly row: number;
  readonly heightPt?: number;
  /** From left to right. */
  readonly cells: readonly OwnCell[];
}

/** The texts of rows in their order, taken as far as a row of the sheet. */
export class RowTexts {
  private readonly rows: Iterator<OwnRow>;
  private next: IteratorResult<OwnRow>;
  private last = -1;

  constructor(
    rows: Iterable<OwnRow>,
    private readonly sheet: string,
  ) {
    this.rows = rows[Symbol.iterator]();
    this.next = this.rows.next();
  }

  /** Those before a row; `formats` are the formats of the cells of the sheet, by address. */
  *before(row: number, formats: ReadonlyMap<string, string>): Generator<string> {
    while (this.next.done !== true && this.next.value.row < row) {
      const { value } = this.next;
      if (value.row <= this.last) throw new RangeError(`${this.sheet}: the row ${value.row + 1} does not stand in its order`);
      this.last = value.row;
      yield this.text(value, formats);
      this.next = this.rows.next();
    }
    this.last = row;
  }

  private text({ row, heightPt, cells }: OwnRow, formats: ReadonlyMap<string, string>): string {
    const height = heightPt === undefined ? '' : ` ht="${heightPt}" customHeight="1"`;
    let text = `<row r="${row + 1}"${height}>`;
    let before = -1;
    for (const cell of cells) {
      const { column, like } = cell;
      const at = address(row, column);
      const format = formats.get(like);
      if (column <= before) throw new RangeError(`${this.sheet}: the cell ${at} does not stand in its order`);
      if (format === undefined) throw new RangeError(`${this.sheet}: the cell ${at} is to look like ${like}, which the sheet has not`);
      text += newCell(at, cell, '', format);
      before = column;
    }
    return `${text}</row>`;
  }
}
