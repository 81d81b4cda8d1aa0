// The rules of one variant as formulas, and the verdict over them.
import { WORST_FIRST } from '../core/check/check';
import type { Variant } from '../joint/evaluate';
import type { Bound, Rule } from '../joint/graph';
import type { JointRow } from './joint-row';

export interface RuleState {
  readonly rule: Rule;
  /** Cell with the state, or nothing where the rule is left out. */
  readonly state: string | undefined;
  readonly value: string | undefined;
  readonly limit: string | undefined;
}

const BROKEN: Readonly<Record<Bound['side'], (value: string, limit: string) => string>> = {
  below: (value, limit) => `${value}<${limit}-1E-9`,
  above: (value, limit) => `${value}>${limit}+1E-9`,
  'at most': (value, limit) => `${value}<=${limit}+1E-9`,
  'at least': (value, limit) => `${value}>=${limit}-1E-9`,
};

export function ruleState(row: JointRow, variant: Variant, rule: Rule): Omit<RuleState, 'rule'> {
  const finding = variant.finding(rule);
  if (finding === undefined) return { state: undefined, value: undefined, limit: undefined };
  const value = row.cellOf(rule.value);
  const limitOf = (bound: Bound | undefined): string | undefined => (bound === undefined ? undefined : typeof bound.limit === 'number' ? String(bound.limit) : row.cellOf(bound.limit));
  const limits = [limitOf(rule.fail), limitOf(rule.look)];
  const title = `rule: ${rule.name}`;
  const words = rule.basis;
  const shown = limits[0] ?? limits[1];
  if (value === undefined || shown === undefined) return { state: row.putState(title, words, `"${finding.state}"`, finding.state), value: undefined, limit: undefined };
  const failing = rule.softWhen === undefined ? '"fail"' : `IF(${row.cellOf(rule.softWhen) ?? 'FALSE'},"look","fail")`;
  const looking = rule.look === undefined || limits[1] === undefined ? '"pass"' : `IF(${BROKEN[rule.look.side](value, limits[1])},"look","pass")`;
  const judged = rule.fail === undefined || limits[0] === undefined ? looking : `IF(${BROKEN[rule.fail.side](value, limits[0])},${failing},${looking})`;
  return { state: row.putState(title, words, `IF(ISNUMBER(${value}),${judged},"not checked")`, finding.state), value, limit: shown };
}

interface Verdict {
  readonly state: string;
  rule(state: string): string;
  value(state: string): string;
  limit(state: string): string;
}

/** The worst state, and the first rule that has it. */
export function verdictFormulas(states: readonly RuleState[]): Verdict {
  const judged = states.filter(({ state }) => state !== undefined);
  const any = (word: string): string => `OR(${judged.map(({ state }) => `${state}="${word}"`).join(',')})`;
  const worst = WORST_FIRST.slice(0, -1).reduceRight((otherwise, word) => `IF(${any(word)},"${word}",${otherwise})`, '"pass"');
  const first = (state: string, of: (entry: RuleState) => string): string => `IF(${state}="pass","–",${judged.reduceRight((otherwise, entry) => `IF(${entry.state}=${state},${of(entry)},${otherwise})`, '"–"')})`;
  return {
    state: worst,
    rule: state => first(state, ({ rule }) => `"${rule.name}"`),
    value: state => first(state, ({ value }) => value ?? '"–"'),
    limit: state => first(state, ({ limit }) => limit ?? '"–"'),
  };
}
