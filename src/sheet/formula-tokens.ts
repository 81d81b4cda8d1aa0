// Formulas as the pieces they are written of, in the form of a file: what a tree does not hold, blanks and commas, stays.
import { tokenize } from '@borgar/fx/xlsx';

export type FormulaPieceKind = 'function' | 'name' | 'reference' | 'table' | 'sign' | 'text' | 'blank' | 'rest';

export interface FormulaPiece {
  readonly kind: FormulaPieceKind;
  readonly text: string;
}

const KINDS: Readonly<Record<string, FormulaPieceKind>> = {
  func: 'function',
  range_named: 'name',
  range: 'reference',
  range_beam: 'reference',
  range_ternary: 'reference',
  structured: 'table',
  operator: 'sign',
  string: 'text',
  whitespace: 'blank',
  newline: 'blank',
};

/** The pieces of a formula without its equals sign; together they are its text again. */
export const piecesOf = (formula: string): FormulaPiece[] =>
  tokenize(formula, { mergeRefs: true, negativeNumbers: false }).flatMap(({ type, value }) =>
    type === 'fx_prefix' ? [] : [{ kind: KINDS[type] ?? 'rest', text: value }],
  );

const isSign = (piece: FormulaPiece | undefined, ...signs: readonly string[]): boolean =>
  piece?.kind === 'sign' && signs.includes(piece.text);

/** Index of the parenthesis that closes the one at `open`; behind the last piece where none does. */
export function closing(pieces: readonly FormulaPiece[], open: number): number {
  let depth = 0;
  for (let i = open; i < pieces.length; i++) {
    if (isSign(pieces[i], '(', '{')) depth += 1;
    else if (isSign(pieces[i], ')', '}') && --depth === 0) return i;
  }
  return pieces.length;
}

/** The pieces between the commas of the parentheses that open at `open`, without blanks around them. */
export function argumentsIn(pieces: readonly FormulaPiece[], open: number): FormulaPiece[][] {
  const found: FormulaPiece[][] = [[]];
  let depth = 0;
  for (const piece of pieces.slice(open + 1, closing(pieces, open))) {
    if (depth === 0 && isSign(piece, ',')) found.push([]);
    else found[found.length - 1]?.push(piece);
    depth += isSign(piece, '(', '{') ? 1 : isSign(piece, ')', '}') ? -1 : 0;
  }
  return found.map(trimmed);
}

function trimmed(pieces: readonly FormulaPiece[]): FormulaPiece[] {
  const filled = pieces.flatMap(({ kind }, i) => (kind === 'blank' ? [] : [i]));
  return pieces.slice(filled[0] ?? 0, (filled[filled.length - 1] ?? -1) + 1);
}

/** Whether a text can stand beside any sign without parentheses: one value, one call, or something in parentheses. */
export function standsAlone(text: string): boolean {
  const pieces = trimmed(piecesOf(`=${text}`));
  if (pieces.length === 1) return true;
  const open = pieces[0]?.kind === 'function' ? 1 : 0;
  return isSign(pieces[open], '(') && closing(pieces, open) === pieces.length - 1;
}

/** Whether nothing that stands beside the pieces from `from` to `to` could bind them closer than what is between them. */
export function isWhole(pieces: readonly FormulaPiece[], from: number, to: number): boolean {
  const [before] = trimmed(pieces.slice(0, from)).slice(-1);
  const [after] = trimmed(pieces.slice(to));
  return (before === undefined || isSign(before, '(', ',')) && (after === undefined || isSign(after, ')', ','));
}

export const isHash = (piece: FormulaPiece | undefined): boolean => piece?.kind === 'sign' && piece.text === '#';

/** End of the part that begins at `from`: a call or parentheses behind @ and before # belong to it. */
export function partEnd(pieces: readonly FormulaPiece[], from: number): number {
  let at = from;
  while ((pieces[at]?.kind === 'sign' && pieces[at]?.text === '@') || (at > from && pieces[at]?.kind === 'blank')) at += 1;
  const isCall = pieces[at]?.kind === 'function' && pieces[at + 1]?.text === '(';
  const isGroup = at > from && pieces[at]?.text === '(';
  const end = isCall || isGroup ? closing(pieces, isCall ? at + 1 : at) + 1 : at + 1;
  return isHash(pieces[end]) && (isCall || ['name', 'reference'].includes(pieces[at]?.kind ?? '')) ? end + 1 : end;
}
