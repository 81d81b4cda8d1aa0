// Writing a sheet down row by row, with cells that span columns.
import type { Cell } from '../../core/kinds';
import type { PlanCell, Role, Validation } from '../../sheet/plan';
import { address } from '../../sheet/addresses';

export interface Span {
  /** Columns, counted from 0. */
  readonly from: number;
  readonly to: number;
  readonly role: Role;
  readonly value?: Cell;
  readonly formula?: string;
  readonly format?: string;
  /** What an input takes: a range with words. */
  readonly list?: string;
  readonly words?: string;
  /** The sheet to which a click leads. */
  readonly link?: string;
}

export class RowWriter {
  readonly cells: PlanCell[] = [];
  readonly merged: string[] = [];
  readonly validations: Validation[] = [];
  private next = 0;

  /** Row number as people count. */
  get row(): number {
    return this.next + 1;
  }

  add(...spans: readonly Span[]): void {
    for (const { from, to, role, value, formula, format, list, words, link } of spans) {
      const at = address(this.next, from);
      this.cells.push({
        at,
        role,
        value: value ?? '',
        ...(formula === undefined ? {} : { formula }),
        ...(format === undefined ? {} : { format }),
        ...(link === undefined ? {} : { link }),
      });
      if (to > from) this.merged.push(`${at}:${address(this.next, to)}`);
      if (list !== undefined) this.validations.push({ range: at, words: words ?? '', list });
    }
    this.next += 1;
  }

  gap(rows = 1): void {
    this.next += rows;
  }
}
