// Whether a cell that came back says what was sent.
import type { Cell } from '../../core/kinds';
import { cellText } from '../../sheet/cell-text';
import { plainText, typedText } from '../../sheet/formula';
import type { SourceCell } from '../../sheet/workbook-values';
import { LOST, movedFormula, type Moved, wholeFormula } from './references';
import { isBlank, type SeenCell } from './seen';
import { typedNumber } from './typed-number';

export const shown = ({ value, formula, said }: SeenCell): string =>
  cellText(formula === undefined ? (said ?? (value === null ? '' : String(value))) : typedText(formula));

/**
 * Programs write a formula with other blanks and capitals, and a number with other last digits.
 * @param home sheet of the cell that was sent
 * @param there sheet of the one that came back
 */
export function same(a: SourceCell, b: SourceCell, home: string, there: string, moved: Moved): boolean {
  if (a.formula !== undefined || b.formula !== undefined) {
    if (a.formula === undefined || b.formula === undefined) return false;
    return (
      spelled(a.formula) === spelled(b.formula) || spelled(movedFormula(a.formula, home, moved)) === spelled(wholeFormula(b.formula, there))
    );
  }
  if (isBlank(a) || isBlank(b)) return isBlank(a) && isBlank(b);
  const [was, is] = [a.value, typeof a.value === 'number' ? (typedNumber(b.value) ?? b.value) : b.value];
  if (typeof was === 'number' && typeof is === 'number') return Math.abs(was - is) <= 1e-12 * Math.max(Math.abs(was), Math.abs(is));
  return textOf(was) === textOf(is);
}

/** Programs differ in what they leave before the mark of a cell that is gone. */
const spelled = (formula: string): string => plainText(formula).replace(/(?:(?:'[^']*'|[\w.]+)!)?\$?(?:[A-Z]{1,3})?\$?#REF!/gi, LOST);

const textOf = (value: Cell | null): string =>
  `${typeof value}:${String(value ?? '')
    .replace(/\r\n?/g, '\n')
    .trim()}`;
