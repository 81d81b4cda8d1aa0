// The rules of one variant as formulas, and the verdict over them.
import { type State, WORST_FIRST } from '../../../core/check/check';
import { type AskedVariant, stateOfRule } from './asked-variant';
import { type Bound, boundsOf, type Rule } from '../../../joint/graph';
import { allOf } from '../inputs';
import type { JointRow } from './joint-row';
import { NONE } from './row-refs';

export interface RuleState {
  readonly rule: Rule;
  /** Cell with the state, or undefined where the rule is left out. */
  readonly state: string | undefined;
  /** Formulas. */
  readonly value: string | undefined;
  readonly limit: string | undefined;
  /** Its bounds; undefined where it has no formula. */
  readonly fail?: readonly WrittenBound[];
  readonly review?: readonly WrittenBound[];
  /** What CHECK.JOINT shows of it, as formulas: the size of the bound that is broken, or of that which is shown where none is. */
  readonly shown?: (of: 'size' | 'limit') => string | undefined;
  /** How far it is from its fail limit, by the cell with d. */
  readonly room?: (nominal: string) => string;
}

const BROKEN: Readonly<Record<Bound['side'], (value: string, limit: string) => string>> = {
  below: (value, limit) => `${value}<${limit}-1E-9`,
  above: (value, limit) => `${value}>${limit}+1E-9`,
  'at most': (value, limit) => `${value}<=${limit}+1E-9`,
  'at least': (value, limit) => `${value}>=${limit}-1E-9`,
};

export function ruleState(row: JointRow, variant: AskedVariant, rule: Rule): Omit<RuleState, 'rule'> {
  const judging = variant.judging(rule);
  const when = (rule.when ?? []).map(name => row.cellOf(name));
  const conditions = when.filter(cell => cell !== undefined);
  if (judging === 'left out') {
    // a rule that was left out has no formula: it must stay left out
    if (conditions.length > 0 && !conditions.includes('FALSE')) row.guards.addOfVerdict(`NOT(${allOf(conditions)})`);
    return { state: undefined, value: undefined, limit: undefined };
  }
  const title = `rule: ${rule.name}`;
  const value = row.cellOf(rule.value);
  if (value === undefined || conditions.length < when.length) {
    const formula =
      judging === 'not checked' ? '"not checked"' : `IF(${row.guards.unchanged(rule.value)},"${variant.state(rule)}","not checked")`;
    return { state: row.putState(title, rule.basis, formula, stateOfRule(rule)), value: undefined, limit: undefined };
  }
  const written = (bounds: Rule['fail']): readonly WrittenBound[] => boundsOf(bounds).map(bound => writtenBound(row, bound, value));
  const [fail, review] = [written(rule.fail), written(rule.review)];
  const passing = rule.reviewWhere === undefined ? '"pass"' : `IF(${row.cellOf(rule.reviewWhere.condition) ?? NONE},"review","pass")`;
  const reviewing = ifBroken(review, '"review"', passing);
  const judged = ifBroken(fail, '"fail"', reviewing);
  const read = [value, ...[...fail, ...review].flatMap(({ size, limit }) => [size, limit])];
  const numbers = [...new Set(read)].map(cell => `ISNUMBER(${cell})`);
  const checked = `IF(AND(${numbers.join(',')}),${judged},"not checked")`;
  // of the bound that is broken, or else of that to be reviewed
  const shown = (of: (bound: WrittenBound) => string): string | undefined => {
    const last = review[review.length - 1] ?? fail[fail.length - 1];
    return (
      last &&
      [...fail, ...review].reduceRight((otherwise, bound) => (bound === last ? of(last) : ifBroken([bound], of(bound), otherwise)), '')
    );
  };
  return {
    state: row.putState(
      title,
      rule.basis,
      `IFERROR(${conditions.length === 0 ? checked : `IF(${allOf(conditions)},${checked},"left out")`},"not checked")`,
      stateOfRule(rule),
    ),
    value: shown(({ size }) => size) ?? value,
    limit: shown(({ limit }) => limit),
    fail,
    review,
    shown: key => shownInFull(fail, review, rule.reviewWhere === undefined ? undefined : row.cellOf(rule.reviewWhere.condition), key),
    ...(fail.length > 0 && { room: (nominal: string) => leastRoom(fail, nominal) }),
  };
}

export interface WrittenBound {
  readonly bound: Bound;
  readonly side: Bound['side'];
  readonly size: string;
  readonly limit: string;
}

const writtenBound = (row: JointRow, bound: Bound, value: string): WrittenBound => ({
  bound,
  side: bound.side,
  size: bound.of === undefined ? value : (row.cellOf(bound.of) ?? NONE),
  limit: typeof bound.limit === 'number' ? String(bound.limit) : (row.cellOf(bound.limit) ?? NONE),
});

/** The first bound that is broken; where none is, that of the state which the rule then has. */
function shownInFull(
  fail: readonly WrittenBound[],
  review: readonly WrittenBound[],
  isReviewed: string | undefined,
  key: 'size' | 'limit',
): string | undefined {
  const [passing, reviewing] = [fail[0] ?? review[0], review[0] ?? fail[0]];
  if (passing === undefined || reviewing === undefined) return undefined;
  const all = [...fail, ...review];
  if (all.every(bound => bound[key] === passing[key])) return passing[key];
  const whole = isReviewed === undefined ? passing[key] : `IF(${isReviewed},${reviewing[key]},${passing[key]})`;
  return all.reduceRight((otherwise, bound) => ifBroken([bound], bound[key], otherwise), whole);
}

/** Several bounds of which each may break the rule. */
export function ifBroken(bounds: readonly WrittenBound[], then: string, otherwise: string): string {
  if (bounds.length === 0) return otherwise;
  const broken = bounds.map(({ side, size, limit }) => BROKEN[side](size, limit));
  return `IF(${broken.length === 1 ? broken[0] : `OR(${broken.join(',')})`},${then},${otherwise})`;
}

/** How far the values are from their fail limits, as a share of it; of d, where it is 0. */
function leastRoom(bounds: readonly WrittenBound[], nominal: string): string {
  const rooms = bounds.map(({ side, size, limit }) => {
    const room = side === 'below' || side === 'at most' ? `(${size}-${limit})` : `(${limit}-${size})`;
    return `${room}/IF(${limit}=0,${nominal},ABS(${limit}))`;
  });
  return rooms.length === 1 ? String(rooms[0]) : `MIN(${rooms.join(',')})`;
}

/** The distance of one rule to its fail limit, or nothing where it has none. */
export function marginFormula({ rule, state, room }: RuleState, nominal: string): string | undefined {
  if (state === undefined) return undefined;
  if (room !== undefined) return `IF(OR(${state}="not checked",${state}="left out"),"",${room(nominal)})`;
  return rule.failsAs === undefined ? undefined : `IF(${state}="fail",-1,"")`;
}

/** How many rules have that state. */
export const countFormula = (states: readonly RuleState[], word: State): string =>
  ['0', ...states.flatMap(({ state }) => (state === undefined ? [] : `(${state}="${word}")`))].join('+');

export interface VerdictFormulas {
  readonly state: string;
  /** Of the cell with the state. */
  rule(state: string): string;
  value(state: string): string;
  limit(state: string): string;
}

/**
 * The worst state, and the first rule that has it. `holds` is the cell that says whether the row is about the inputs at all;
 * `lacking` the one with the first output that was asked for and has no value, which leaves the row unchecked, or a dash.
 */
export function verdictFormulas(states: readonly RuleState[], lacking: string | undefined, holds: string | undefined): VerdictFormulas {
  const judged = states.filter(({ state }) => state !== undefined);
  const any = (word: State): string => `OR(${judged.map(({ state }) => `${state}="${word}"`).join(',')})`;
  const [fail = 'fail', ...others] = WORST_FIRST.slice(0, -1);
  const unfailed = others.reduceRight((otherwise, word) => `IF(${any(word)},"${word}",${otherwise})`, '"pass"');
  const complete = lacking === undefined ? unfailed : `IF(${lacking}="–",${unfailed},"not checked")`;
  const worst = `IF(${any(fail)},"${fail}",${complete})`;
  const first = (nothing: string, state: string, of: (entry: RuleState) => string, lacking: string, changed: string): string => {
    const ofFirst = judged.reduceRight((otherwise, entry) => `IF(${entry.state}=${state},${of(entry)},${otherwise})`, lacking);
    const found = `IF(${nothing},"–",${ofFirst})`;
    return holds === undefined ? found : `IF(${holds},${found},${changed})`;
  };
  // a rule that cannot be judged may have one of the two
  const unjudged = (state: string): string => `OR(${state}="pass",${state}="not checked")`;
  return {
    state: holds === undefined ? worst : `IF(${holds},${worst},"not checked")`,
    rule: state =>
      first(
        `${state}="pass"`,
        state,
        ({ rule }) =>
          `IF(${state}="not checked","${rule.name}",` +
          (rule.doubtful === undefined ? `"${rule.broken}")` : `IF(${state}="review","${rule.doubtful}","${rule.broken}"))`),
        lacking ?? '"–"',
        '"another screw, head, material or blank: ask for a new copy"',
      ),
    value: state => first(unjudged(state), state, ({ value }) => value ?? '"–"', '"–"', '"–"'),
    limit: state => first(unjudged(state), state, ({ limit }) => limit ?? '"–"', '"–"', '"–"'),
  };
}
