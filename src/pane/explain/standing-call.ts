// The call of a formula as the form of its function takes it: what stands for each argument, in the signs of the user.
import type { Param } from '../../core/card';
import { CARDS } from '../../registry';
import { type FormulaNode, outermostCalls, ownFunction, parseFormula } from '../../sheet/formula';
import type { Selection } from '../../sheet/port';
import { inSigns, type Signs } from '../../sheet/signs';
import type { StandingCall } from '../function-form';
import { typedArgument } from '../typed-argument';

/** A value as it is typed into a field, in quotation marks where it would be taken for another; anything else after an equals sign. */
function textOf(node: FormulaNode | null, formula: string, signs: Signs, param: Param): string {
  if (node === null) return '';
  const text = formula.slice(...node.loc);
  if (node.type !== 'Literal') return `=${inSigns(text, signs)}`;
  if (typeof node.value !== 'string') return inSigns(text, signs);
  const typed = typedArgument(param, node.value, signs);
  return typed.is === 'value' && typed.value === node.value ? node.value : text;
}

export interface ReadCall extends StandingCall {
  readonly id: string;
}

/** The first call of ours in the formula that no other call of ours holds; undefined where there is none. */
export function standingCall(formula: string, place: Selection, signs: Signs): ReadCall | undefined {
  const tree = parseFormula(formula);
  const node = outermostCalls(tree ?? null)[0];
  const id = node && ownFunction(node);
  if (node === undefined || id === undefined) return undefined;
  const card = CARDS.get(id);
  const args = node.arguments ?? [];
  if (card === undefined || args.length > card.params.length) return undefined;
  const [from, to] = node.loc;
  return {
    id,
    place,
    texts: card.params.map((param, i) => textOf(args[i] ?? null, formula, signs, param)),
    around: [formula.slice(0, from), formula.slice(to)],
  };
}
