// The rules of one variant as formulas, and the verdict over them.
import { type State, WORST_FIRST } from '../../../core/check/check';
import type { Variant } from '../../../joint/variant';
import type { Bound, Rule } from '../../../joint/graph';
import { allOf } from '../inputs';
import type { JointRow } from './joint-row';

export interface RuleState {
  readonly rule: Rule;
  /** Cell with the state, or undefined where the rule is left out. */
  readonly state: string | undefined;
  /** Formulas. */
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
  const conditions = (rule.when ?? []).map(name => row.cellOf(name)).filter(cell => cell !== undefined);
  const when = conditions.length === 0 ? undefined : allOf(conditions);
  if (finding === undefined) {
    // a rule that was left out has no formula: it must stay left out
    if (when !== undefined && !conditions.includes('FALSE')) row.guards.add(`NOT(${when})`);
    return { state: undefined, value: undefined, limit: undefined };
  }
  const title = `rule: ${rule.name}`;
  const value = row.cellOf(rule.value);
  const limitOf = (bound: Bound | undefined): string | undefined =>
    bound === undefined ? undefined : typeof bound.limit === 'number' ? String(bound.limit) : row.cellOf(bound.limit);
  const [fail, review] = [limitOf(rule.fail), limitOf(rule.review)];
  const shown = fail ?? review;
  if (value === undefined || shown === undefined) {
    const formula =
      finding.state === 'not checked' ? '"not checked"' : `IF(${row.guards.unchanged(rule.value)},"${finding.state}","not checked")`;
    return { state: row.putState(title, rule.basis, formula, finding.state), value: undefined, limit: undefined };
  }
  const isFailed = rule.fail === undefined || fail === undefined ? undefined : BROKEN[rule.fail.side](value, fail);
  const passing = rule.reviewWhere === undefined ? '"pass"' : `IF(${row.cellOf(rule.reviewWhere.condition) ?? 'FALSE'},"review","pass")`;
  const reviewing =
    rule.review === undefined || review === undefined ? passing : `IF(${BROKEN[rule.review.side](value, review)},"review",${passing})`;
  const judged = isFailed === undefined ? reviewing : `IF(${isFailed},"fail",${reviewing})`;
  const checked = `IF(ISNUMBER(${value}),${judged},"not checked")`;
  return {
    state: row.putState(
      title,
      rule.basis,
      `IFERROR(${when === undefined ? checked : `IF(${when},${checked},"left out")`},"not checked")`,
      finding.state,
    ),
    value,
    limit: isFailed === undefined || review === undefined ? shown : `IF(${isFailed},${fail},${review})`,
  };
}

export interface VerdictFormulas {
  readonly state: string;
  /** Of the cell with the state. */
  rule(state: string): string;
  value(state: string): string;
  limit(state: string): string;
}

/** The worst state, and the first rule that has it. `holds` is the cell that says whether the row is about the inputs at all. */
export function verdictFormulas(states: readonly RuleState[], holds: string | undefined): VerdictFormulas {
  const judged = states.filter(({ state }) => state !== undefined);
  const any = (word: State): string => `OR(${judged.map(({ state }) => `${state}="${word}"`).join(',')})`;
  const worst = WORST_FIRST.slice(0, -1).reduceRight((otherwise, word) => `IF(${any(word)},"${word}",${otherwise})`, '"pass"');
  const first = (state: string, of: (entry: RuleState) => string, changed: string): string => {
    const ofFirst = judged.reduceRight((otherwise, entry) => `IF(${entry.state}=${state},${of(entry)},${otherwise})`, '"–"');
    const found = `IF(${state}="pass","–",${ofFirst})`;
    return holds === undefined ? found : `IF(${holds},${found},${changed})`;
  };
  return {
    state: holds === undefined ? worst : `IF(${holds},${worst},"not checked")`,
    rule: state => first(state, ({ rule }) => `"${rule.name}"`, '"another screw, head, material or blank: ask for a new copy"'),
    value: state => first(state, ({ value }) => value ?? '"–"', '"–"'),
    limit: state => first(state, ({ limit }) => limit ?? '"–"', '"–"'),
  };
}
