// Values and findings of the joint in words.
import { type Compared, comparedText } from '../core/compared';
import { rounded } from '../core/decimal';
import type { Refused } from '../core/refuse';
import { type Bound, type Finding, NotApplicable, type Rule } from './graph';
import { unitOf } from './outputs';

export { rounded };

export const withUnit = (value: number, unit: string, places = 3): string =>
  unit === '' ? rounded(value, places) : `${rounded(value, places)} ${unit}`;

const ASKED: Readonly<Record<Bound['side'], string>> = {
  below: 'at least',
  above: 'at most',
  'at most': 'more than',
  'at least': 'less than',
};

/** Of a rule that applies nobody says that it does not. */
const whyNot = (refusal: Refused): string => (refusal instanceof NotApplicable ? refusal.why : refusal.message);

/** "too little full thread: needs engagement ratio at least 2, has 1.497". */
export function sentence(finding: Finding): string {
  const { rule, state, value, limit, bound, shown, refusal } = finding;
  const broken = (state === 'review' ? rule.doubtful : undefined) ?? rule.broken;
  if (refusal !== undefined)
    return state === 'fail' && refusal.message.startsWith(broken)
      ? refusal.message
      : `${state === 'fail' ? broken : `${rule.name}: not checked`}: ${whyNot(refusal)}`;
  if (bound === undefined || value === undefined || limit === undefined || !isBrokenBySize(finding))
    return `${broken}: ${rule.reviewWhere?.words ?? ''}`;
  if (rule.shown !== undefined && shown !== undefined) return comparedText(shownWords(broken, rule.shown, shown.needs, shown.has));
  const passes =
    rule.passesAt === undefined || finding.passesAt === undefined
      ? ''
      : `${passesWords(rule.passesAt)}${withUnit(finding.passesAt, unitOf(rule.passesAt.size))}`;
  return `${comparedText(boundWords(broken, rule, bound, limit, value))}${passes}`;
}

const behind = (unit: string): string => (unit === '' ? '' : ` ${unit}`);

/** What a bound asks of the size that it judges. */
export function boundWords<T>(broken: string, rule: Rule, { side, of }: Bound, limit: T, value: T): Compared<T> {
  const judged = of ?? rule.value;
  const unit = behind(unitOf(judged));
  return { words: [`${broken}: needs ${judged} ${ASKED[side]} `, `${unit}, has `, unit], asked: limit, has: value };
}

/** What is needed and what there is, where that says more. */
export function shownWords<T>(
  broken: string,
  { words: [before, after], has: size }: NonNullable<Rule['shown']>,
  needs: T,
  has: T,
): Compared<T> {
  const unit = behind(unitOf(size));
  return { words: [`${broken}: needs ${before} `, `${unit} ${after}, has `, unit], asked: needs, has };
}

export const passesWords = ({ words }: NonNullable<Rule['passesAt']>): string => `; ${words} `;

/** Whether the value is what breaks the rule; else it is to be reviewed whatever its value. */
export function isBrokenBySize({ value = NaN, limit = NaN, bound }: Finding): boolean {
  switch (bound?.side) {
    case 'below':
      return value < limit;
    case 'above':
      return value > limit;
    case 'at most':
      return value <= limit;
    case 'at least':
      return value >= limit;
    case undefined:
      return false;
  }
}
