// A formula that fills several cells has no room in a table of the sheet: one of its values has.
import { CARDS } from '../registry';
import { ownFunction, parseFormula } from '../sheet/formula';

/** The first of the values. */
export const firstOf = (formula: string): string => `=INDEX(${formula.slice(1)},1,1)`;

/** Whether a formula is a call of ours that fills several cells. */
export function spills(formula: string): boolean {
  const tree = parseFormula(formula);
  const card = CARDS.get((tree && ownFunction(tree)) ?? '');
  return card !== undefined && !['number', 'text'].includes(card.result.shape);
}
