// Formulas that read their own row, with a mark in place of its number: down a column they are the same text.
import type { PlanCell } from './plan';

/** No formula of a sheet has it. */
export const ROW = '\u0005';

/** A form in a row, counted from 0. */
export const inRow = (form: string, row: number): string => form.replaceAll(ROW, String(row + 1));

/** The same text: an engine keeps one that was put together as its pieces until a letter of it is asked for, and they take more room. */
const inOnePiece = (text: string): string => (Number.isNaN(text.charCodeAt(0)) ? '' : text);

/** More forms than a sheet has that was filled down. */
const MOST_KEPT = 5000;

/** Keeps each form once. What no row before had is no form yet. */
export class RowForms {
  private readonly kept = new Map<string, string>();

  /** @param form with its equals sign. */
  cell(form: string, row: number): Pick<PlanCell, 'formula' | 'rowForm'> {
    const formula = inOnePiece(inRow(form, row));
    const rowForm = this.kept.get(form);
    if (rowForm !== undefined) return { formula, rowForm };
    if (form.includes(ROW) && this.kept.size < MOST_KEPT) this.kept.set(form, form);
    return { formula };
  }
}
