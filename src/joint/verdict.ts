// What the rules and the outputs together say of a variant: its state and why, how near it is to a limit, what would mend it.
import { type State, WORST_FIRST } from '../core/check/check';
import type { Cell } from '../core/kinds';
import { Refused } from '../core/refuse';
import { type Finding, NotApplicable } from './graph';
import { INPUTS } from './inputs';
import { isVerdict, type Output, OUTPUTS, type VerdictName } from './outputs';
import { firstRemedy } from './remedy';
import type { Variant } from './variant';
import { sentence } from './words';

/** Inputs that are refused beside an insert. */
export const ONLY_IN_PLASTIC: readonly string[] = [...INPUTS]
  .filter(([, { askedWhere }]) => askedWhere?.alone === true)
  .map(([name]) => name);
/** Reasons that one cell shows. */
export const MAX_REASONS = 5;

/** @param asked outputs that stand beside it: one that applies and has no value leaves the row unchecked. */
export function verdict(variant: Variant, name: VerdictName, asked: readonly Output[] = []): Cell {
  switch (name) {
    case 'all computed':
      return missing(variant, OUTPUTS) === undefined;
    case 'state':
      return stateOf(variant, asked);
    case 'reason':
      return reasonOf(variant, asked);
    case 'reasons':
      return broken(variant).slice(0, MAX_REASONS).map(sentence).join('; ') || '–';
    case 'fails':
      return count(variant, 'fail');
    case 'reviews':
      return count(variant, 'review');
    case 'margin':
      return variant.nearest()?.margin ?? '–';
    case 'margin rule':
      return variant.nearest()?.rule.name ?? '–';
    case 'remedy':
      return firstRemedy(variant);
  }
}

/** What is not as it should be, worst first; what cannot be judged for a reason that is told already is not told again. */
export function broken(variant: Variant): readonly Finding[] {
  const findings = variant.findings();
  return WORST_FIRST.filter(state => state !== 'pass')
    .flatMap(state => findings.filter(found => found.state === state))
    .filter(({ refusal }, i, all) => refusal === undefined || all.findIndex(other => other.refusal === refusal) === i);
}

const count = (variant: Variant, state: State): number => variant.findings().filter(found => found.state === state).length;

export function stateOf(variant: Variant, asked: readonly Output[] = []): State {
  const state = variant.worst()?.state ?? 'not checked';
  return state === 'fail' || missing(variant, asked) === undefined ? state : 'not checked';
}

function reasonOf(variant: Variant, asked: readonly Output[]): string {
  const worst = variant.worst();
  if (worst?.state === 'fail' || worst?.state === 'not checked') return sentence(worst);
  const lacking = missing(variant, asked);
  if (lacking !== undefined) {
    const refusal = variant.outcome(lacking);
    return `${lacking}: not checked: ${refusal instanceof Refused ? refusal.message : ''}`;
  }
  return worst === undefined || worst.state === 'pass' ? '–' : sentence(worst);
}

/** The first output that applies and has no value, or an input that is given where nothing takes it. */
export const missing = (variant: Variant, asked: readonly Output[]): string | undefined =>
  asked.find(output => !isVerdict(output) && hasNoValue(variant.outcome(output))) ?? misplaced(variant);

/** What only a thread in plastic has, beside an insert. */
const misplaced = (variant: Variant): string | undefined =>
  variant.outcome('has insert') === true ? ONLY_IN_PLASTIC.find(name => hasNoValue(variant.outcome(name))) : undefined;

/** What applies and has none. */
export const hasNoValue = (outcome: unknown): boolean =>
  typeof outcome === 'object' && outcome instanceof Refused && !(outcome instanceof NotApplicable);
