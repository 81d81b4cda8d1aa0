// Every call in full, for reading and recalculating: inputs, named steps, whether the inputs are within limits, the result.
import type { Cell } from '../../core/kinds';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { stepDigits } from './digits';
import { address, fixedCell } from '../../sheet/addresses';
import { LONGEST_FORMULA } from '../../sheet/formula';

export interface StepRow {
  readonly label: string;
  readonly formula?: string;
  readonly value?: Cell;
  readonly unit?: string;
  /** The formula in words, or where a value comes from. */
  readonly words?: string;
  readonly source?: string;
  /** A constant of the formula at home; here it can be changed. */
  readonly isInput?: boolean;
}

export class StepsSheet {
  private readonly cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: 'Steps: how each value is worked out' },
    { at: 'A2', role: 'note', value: 'Plain formulas on the cells of the other sheets. Change an input there and every line follows.' },
  ];
  private next = 3;

  constructor(readonly name = 'Steps') {}

  heading(text: string): void {
    ['', 'value', 'unit', 'in words', 'source'].forEach((title, c) =>
      this.cells.push({ at: address(this.next, c), role: 'header', value: c === 0 ? text : title }),
    );
    this.next += 1;
  }

  /** Writes one row and answers the cell of its value. */
  row({ label, formula, value, unit, words, source, isInput }: StepRow, role: 'text' | 'result' = 'text'): string {
    const r = this.next;
    this.cells.push({ at: address(r, 0), role: 'label', value: label });
    if (formula !== undefined)
      this.cells.push({ at: address(r, 1), role, formula: `=${formula}`, ...stepDigits(value), ...(value === undefined ? {} : { value }) });
    else if (value !== undefined) this.cells.push({ at: address(r, 1), role: isInput === true ? 'input' : role, value });
    if (unit !== undefined && unit !== '') this.cells.push({ at: address(r, 2), role: 'unit', value: unit });
    if (words !== undefined) this.cells.push({ at: address(r, 3), role: 'note', value: words });
    if (source !== undefined) this.cells.push({ at: address(r, 4), role: 'note', value: source });
    this.next += 1;
    return fixedCell(this.name, r, 1);
  }

  /** Where the sheet stands; `backTo` takes back what was written since. */
  mark(): readonly [next: number, cells: number] {
    return [this.next, this.cells.length];
  }

  backTo([next, cells]: readonly [number, number]): void {
    this.next = next;
    this.cells.length = cells;
  }

  /** Whether a formula that was written since is longer than a cell takes. */
  hasTooLong([, cells]: readonly [number, number]): boolean {
    for (let i = cells; i < this.cells.length; i++) if ((this.cells[i]?.formula?.length ?? 0) > LONGEST_FORMULA) return true;
    return false;
  }

  gap(): void {
    this.next += 1;
  }

  plan(): SheetPlan {
    return { name: this.name, widths: [46, 16, 9, 66, 50], frozenRows: 1, cells: this.cells, print: { landscape: true } };
  }
}
