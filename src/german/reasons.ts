// A finding in a German sentence, beside the English one that stands in cells: the same numbers with the same digits.
import { comparedText } from '../core/compared';
import type { Bound, Finding } from '../joint/graph';
import { unitOf } from '../joint/outputs';
import type { RuleAside, RuleName, RuleShown } from '../joint/rules';
import { isBrokenBySize, withUnit } from '../joint/words';
import { RULE_ASIDES, RULE_SHOWN, RULES } from './joint';

const ASKED: Readonly<Record<Bound['side'], string>> = {
  below: 'mindestens',
  above: 'höchstens',
  'at most': 'mehr als',
  'at least': 'weniger als',
};

const behind = (unit: string): string => (unit === '' ? '' : ` ${unit}`);

function needed({ rule, bound, limit = NaN, value = NaN, shown }: Finding): string {
  if (rule.shown !== undefined && shown !== undefined) {
    const [before, after] = RULE_SHOWN[rule.shown.words[0] as RuleShown];
    const unit = behind(unitOf(rule.shown.has));
    return comparedText({ words: [`${before} `, `${unit}${after} nötig, `, `${unit} vorhanden`], asked: shown.needs, has: shown.has });
  }
  const judged = bound?.of ?? rule.value;
  const unit = behind(unitOf(judged));
  const side = bound === undefined ? '' : ASKED[bound.side];
  return comparedText({ words: [`${judged} ${side} `, `${unit} nötig, `, `${unit} vorhanden`], asked: limit, has: value });
}

/** Why an input is refused is said in English alone. */
export function reasonInGerman(finding: Finding): string {
  const { rule, state, value, limit, bound, passesAt, refusal } = finding;
  const { name, broken: whenBroken } = RULES[rule.name as RuleName];
  const doubtful = state === 'review' ? rule.doubtful : undefined;
  const broken = doubtful === undefined ? whenBroken : RULE_ASIDES[doubtful as RuleAside];
  if (state === 'pass') return name;
  if (refusal !== undefined) return state === 'fail' ? broken : `${name}: nicht geprüft`;
  if (bound === undefined || value === undefined || limit === undefined || !isBrokenBySize(finding))
    return rule.reviewWhere === undefined ? broken : `${broken}: ${RULE_ASIDES[rule.reviewWhere.words as RuleAside]}`;
  const passes =
    rule.passesAt === undefined || passesAt === undefined || rule.shown !== undefined
      ? ''
      : `; ${RULE_ASIDES[rule.passesAt.words as RuleAside]} ${withUnit(passesAt, unitOf(rule.passesAt.size))}`;
  return `${broken}: ${needed(finding)}${passes}`;
}

/** What a rule says where it is broken, by its English. */
export const limitInGerman = (broken: string, rules: readonly Finding['rule'][]): string => {
  const rule = rules.find(one => one.broken === broken || one.doubtful === broken);
  if (rule === undefined) return broken;
  return rule.doubtful === broken ? RULE_ASIDES[broken as RuleAside] : RULES[rule.name as RuleName].broken;
};
