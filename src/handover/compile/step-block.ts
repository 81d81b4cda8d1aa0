// A call as its steps, before it is known where they stand.
import type { Cell } from '../../core/kinds';
import { LONGEST_FORMULA } from '../../sheet/formula';
import { inRow } from '../../sheet/row-forms';

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

export interface BlockStep extends StepRow {
  readonly role: 'text' | 'result';
}

/** No formula of a sheet has it: it stands round the number of a step until its cell is known. */
export const STAND_IN = '\u0001';
const STAND_INS = new RegExp(`${STAND_IN}(\\d+)${STAND_IN}`, 'g');

export const inPlace = (text: string, cellOf: (step: number) => string): string =>
  text.replace(STAND_INS, (_, step: string) => cellOf(Number(step)));

export const isTooLong = (formula: string | undefined): boolean => (formula?.length ?? 0) > LONGEST_FORMULA;

/** A row has at most seven digits: a short form need not be written out. */
const ROW_DIGITS = 7;
export const isTooLongInRow = (form: string, row: number): boolean =>
  form.length * ROW_DIGITS > LONGEST_FORMULA && isTooLong(inRow(form, row));

export class StepBlock {
  readonly steps: BlockStep[] = [];

  /** Takes a step and answers what stands for its cell in the formulas after it. */
  row(step: StepRow, role: BlockStep['role'] = 'text'): string {
    this.steps.push({ ...step, role });
    return `${STAND_IN}${this.steps.length - 1}${STAND_IN}`;
  }
}

/** Puts the cells of the other sheets in place of what stood for them. */
export type Placed = (text: string) => string;
