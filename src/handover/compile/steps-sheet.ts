// Every call in full, for reading and recalculating: inputs, named steps, whether the inputs are within limits, the result.
// What stands alone is a block, one row a step.
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { stepDigits } from './digits';
import { address, fixedCell } from '../../sheet/addresses';
import type { PageWords } from '../words/words';
import { stepWords } from '../words/step-words';
import { assertRoom } from './room';
import { inPlace, isTooLong, type Placed, type StepBlock } from './step-block';

export class StepsSheet {
  private readonly cells: PlanCell[];
  private next = 3;

  constructor(
    readonly name: string,
    private readonly words: PageWords['steps'],
  ) {
    this.cells = [
      { at: 'A1', role: 'title', value: words.title },
      { at: 'A2', role: 'note', value: words.note },
    ];
  }

  /** Undefined where a formula is longer than a cell takes. */
  write(title: string, { steps }: StepBlock): Placed | undefined {
    const top = this.next + 1;
    const placed: Placed = text => inPlace(text, step => fixedCell(this.name, top + step, 1));
    const formulas = steps.map(({ formula }) => (formula === undefined ? undefined : placed(`=${formula}`)));
    if (formulas.some(isTooLong)) return undefined;
    [title, ...this.words.headers].forEach((value, c) => this.cells.push({ at: address(this.next, c), role: 'header', value }));
    steps.forEach(({ label, value, unit, words, source, isInput, role }, step) => {
      const [r, formula] = [top + step, formulas[step]];
      this.cells.push({ at: address(r, 0), role: 'label', value: stepWords(label, this.words.said) });
      if (formula !== undefined)
        this.cells.push({ at: address(r, 1), role, formula, ...stepDigits(value), ...(value === undefined ? {} : { value }) });
      else if (value !== undefined) this.cells.push({ at: address(r, 1), role: isInput === true ? 'input' : role, value });
      if (unit !== undefined && unit !== '') this.cells.push({ at: address(r, 2), role: 'unit', value: unit });
      if (words !== undefined) this.cells.push({ at: address(r, 3), role: 'note', value: stepWords(words, this.words.said) });
      if (source !== undefined) this.cells.push({ at: address(r, 4), role: 'note', value: source });
    });
    this.next = top + steps.length + 1;
    assertRoom(this.name, this.next, 5);
    return placed;
  }

  plan(): SheetPlan {
    return { name: this.name, widths: [46, 16, 9, 66, 50], frozenRows: 1, cells: this.cells, print: { landscape: true } };
  }
}
