// What defined names stand for, and whether that can be put in their place.
import { translateFormulaToA1, translateFormulaToR1C1 } from '@borgar/fx';
import { address, type Place } from '../../sheet/addresses';
import { typedName, parseFormula, partsOf } from '../../sheet/formula';
import { argumentsIn, piecesOf } from '../../sheet/formula-tokens';

/** Functions that stand for other cells whenever what they read changes. */
const MOVES = new Set(['OFFSET', 'INDIRECT']);

/** Whether a name always stands for the same cells or values: a file stores every reference of a name with its sheet. */
export function isFixedName(meaning: string): boolean {
  const formula = `=${meaning.replace(/^=/, '')}`;
  const pieces = piecesOf(formula);
  const bare = (text: string): boolean => (partsOf(text).context ?? []).length === 0 && !text.includes('[');
  const isLost = pieces.some(
    ({ kind, text }) => (kind === 'function' && MOVES.has(typedName(text))) || (kind === 'reference' && bare(text)) || /#REF!/i.test(text),
  );
  const isUnion = argumentsIn([{ kind: 'sign', text: '(' }, ...pieces, { kind: 'sign', text: ')' }], 0).length > 1;
  return !isLost && !isUnion && parseFormula(formula) !== undefined;
}

/** The meaning as a formula, seen from a cell: a file stores what is relative in it as seen from A1. */
export const seenFrom = (meaning: string, { row, column }: Place): string =>
  translateFormulaToA1(translateFormulaToR1C1(`=${meaning.replace(/^=/, '')}`, 'A1'), address(row, column), { wrapEdges: true });
