// The calls of a formula that are open at the caret while it is typed, and the argument in which it stands.
import { typedName } from './formula';
import { piecesOf } from './formula-tokens';

export interface TypedCall {
  /** In capitals: `ENCL.BOSS.OD`. */
  readonly name: string;
  /** From 0. */
  readonly argument: number;
}

/** Parentheses that are open; without a name where they are no call. */
interface OpenParenthesis {
  readonly name: string;
  argument: number;
}

/** The innermost first. What stands behind the caret does not change them. */
export function callsAt(text: string, caret: number): TypedCall[] {
  const before = text.slice(0, caret);
  if (!before.startsWith('=')) return [];
  const open: OpenParenthesis[] = [];
  let name = '';
  for (const { kind, text: piece } of piecesOf(before)) {
    if (kind === 'sign' && (piece === '(' || piece === '{')) open.push({ name: piece === '(' ? name : '', argument: 0 });
    else if (kind === 'sign' && (piece === ')' || piece === '}')) open.pop();
    else if (kind === 'sign' && piece === ',') {
      const last = open[open.length - 1];
      if (last !== undefined) last.argument += 1;
    }
    name = kind === 'function' ? typedName(piece) : '';
  }
  return open
    .reverse()
    .filter(call => call.name !== '')
    .map(({ name: called, argument }) => ({ name: called, argument }));
}
