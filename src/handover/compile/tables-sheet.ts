// Calls that give a table, each row by row: one line a row, one column a step, what the call shows at the right.
import type { Cell } from '../../core/kinds';
import { address, fixedArea, fixedCell } from '../../sheet/addresses';
import { LONGEST_FORMULA } from '../../sheet/formula';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { type PageWords, WORDS } from '../words/words';
import { type StepSaid, stepWords } from '../words/step-words';
import { stepDigits } from './digits';
import { inPlace, type Placed } from './step-block';

/** A longer name of a cell than any of steps. */
const LONGEST_CELL = Object.values(WORDS)
  .map(({ sheets }) => `${sheets.steps}_123!$XFD$1048576`)
  .reduce((longest, one) => (one.length > longest.length ? one : longest));

export interface TableColumn {
  readonly title: string;
  /** How it is worked out. */
  readonly words?: string;
}

/** A table that is being written. */
export interface TableLines {
  /** Writes one cell of line r, column c and answers it. */
  put(r: number, c: number, formula: string | undefined, value: Cell, role?: PlanCell['role']): string;
  /** Column c of the first lines. */
  column(c: number, lines: number): string;
  /** From column c to the last one, titles and all. */
  shown(c: number, lines: number): string;
}

export class TablesSheet {
  private readonly cells: PlanCell[];
  private next = 3;
  private columns = 0;

  constructor(
    readonly name: string,
    words: PageWords['tables'],
    private readonly said: StepSaid,
  ) {
    this.cells = [
      { at: 'A1', role: 'title', value: words.title },
      { at: 'A2', role: 'note', value: words.note },
    ];
  }

  get isEmpty(): boolean {
    return this.cells.length === 2;
  }

  begin(title: string, columns: readonly TableColumn[], lines: number): TableLines {
    const top = this.next + 3;
    this.cells.push({ at: address(this.next, 0), role: 'heading', value: title });
    columns.forEach(({ title: head, words = '' }, c) => {
      if (words !== '') this.cells.push({ at: address(this.next + 1, c), role: 'note', value: stepWords(words, this.said) });
      this.cells.push({ at: address(this.next + 2, c), role: 'header', value: head });
    });
    this.next = top + lines + 1;
    this.columns = Math.max(this.columns, columns.length);
    return {
      put: (r, c, formula, value, role = 'text') => {
        const given = formula === undefined ? {} : { formula: `=${formula}` };
        this.cells.push({ at: address(top + r, c), role, value, ...given, ...stepDigits(value) });
        return fixedCell(this.name, top + r, c);
      },
      column: (c, count) => fixedArea({ sheet: this.name, top, left: c, bottom: top + count - 1, right: c }),
      shown: (c, count) => fixedArea({ sheet: this.name, top: top - 1, left: c, bottom: top + count - 1, right: columns.length - 1 }),
    };
  }

  /** Where the sheet stands; `backTo` takes back what was written since. */
  mark(): readonly [next: number, cells: number] {
    return [this.next, this.cells.length];
  }

  backTo([next, cells]: readonly [number, number]): void {
    this.next = next;
    this.cells.length = cells;
  }

  /** Whether a formula that was written since is longer than a cell takes, wherever its steps will stand. */
  hasTooLong([, cells]: readonly [number, number]): boolean {
    return this.cells.slice(cells).some(({ formula = '' }) => inPlace(formula, () => LONGEST_CELL).length > LONGEST_FORMULA);
  }

  /** Puts the cells of the steps into what was written since. */
  place([, cells]: readonly [number, number], placed: Placed): void {
    for (let i = cells; i < this.cells.length; i++) {
      const { formula, ...cell } = this.cells[i] as PlanCell;
      if (formula !== undefined) this.cells[i] = { ...cell, formula: placed(formula) };
    }
  }

  plan(): SheetPlan {
    return {
      name: this.name,
      widths: Array.from({ length: this.columns }, (_, c) => (c === 0 ? 30 : 16)),
      frozenRows: 1,
      cells: this.cells,
      print: { landscape: true },
    };
  }
}
