// Values and findings of the joint in words.
import { placesThatDiffer, rounded } from '../core/decimal';
import type { Refused } from '../core/refuse';
import { type Bound, type Finding, NotApplicable } from './graph';
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
  if (rule.shown !== undefined && shown !== undefined) {
    const { needs, has } = shown;
    const [before, after] = rule.shown.words;
    const places = placesThatDiffer(needs, has);
    const unit = unitOf(rule.shown.has);
    return `${broken}: needs ${before} ${withUnit(needs, unit, places)} ${after}, has ${withUnit(has, unit, places)}`;
  }
  const places = placesThatDiffer(value, limit);
  const judged = bound.of ?? rule.value;
  const unit = unitOf(judged);
  const passes =
    rule.passesAt === undefined || finding.passesAt === undefined
      ? ''
      : `; ${rule.passesAt.words} ${withUnit(finding.passesAt, unitOf(rule.passesAt.size))}`;
  return `${broken}: needs ${judged} ${ASKED[bound.side]} ${withUnit(limit, unit, places)}, has ${withUnit(value, unit, places)}${passes}`;
}

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
