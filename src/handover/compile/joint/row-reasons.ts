// All that is wrong with a variant, worst first, in the words of the joint and with the numbers of the row.
import { placesThatDiffer } from '../../../core/decimal';
import type { Rule } from '../../../joint/graph';
import { RULES } from '../../../joint/rules';
import { broken, MAX_REASONS, verdict } from '../../../joint/verdict';
import { boundWords, passesWords, sentence, shownWords } from '../../../joint/words';
import { unitOf } from '../../../joint/outputs';
import { columnName } from '../../../sheet/addresses';
import { ROW } from '../../../sheet/row-forms';
import { comparedFormula, numberInWords, placesFormula } from '../compared-formula';
import { quoted } from '../inputs';
import { stateOfRule } from './asked-variant';
import { ifBroken, type RuleState, type WrittenBound } from './joint-verdict';
import type { JudgedRow } from './row-margin';
import type { OfRow, OneRow, WriteCell } from './row-print';
import { NO_VALUE } from './written-variants';

/** A rule that passes, or is left out, comes behind all others. */
const NO_REASON = 9000;
const RANK = { fail: 0, 'not checked': 1000, review: 2000 } as const;

export function putReasons(
  of: JudgedRow,
  holds: string | undefined,
  put: WriteCell,
  column: (title: string, words: string) => number,
): void {
  const { variant, states, judged } = of;
  const titles = ['place: ', 'reason: '] as const;
  const [places, reasons] = titles.map(title => judged.map(({ name }) => columnName(column(`${title}${name}`, WORDS[title]))));
  for (const entry of states) {
    const { rule, state } = entry;
    if (state === undefined || variant.judging(rule) === 'left out') continue;
    const k = RULES.indexOf(rule);
    // what cannot be judged for a reason that is told already is not told again
    const isTold = (): boolean =>
      variant.questions.ask(`told ${rule.name}`, row => broken(row.variant).some(finding => finding.rule === rule));
    const isSaidElsewhere = variant.judging(rule) === 'not checked' && !isTold();
    const rank = (['fail', ...(isSaidElsewhere ? [] : ['not checked' as const]), 'review'] as const).reduceRight(
      (otherwise, word) => `IF(${state}="${word}",${RANK[word] + k},${otherwise})`,
      String(NO_REASON + k),
    );
    const place: OfRow<number> = row => {
      const found = stateOfRule(rule)(row);
      return (found === 'pass' || isSaidElsewhere ? NO_REASON : RANK[found]) + k;
    };
    put(`place: ${rule.name}`, WORDS['place: '], rank, place);
    put(`reason: ${rule.name}`, WORDS['reason: '], `IF(${state}="pass","",${reasonFormula(of, entry, put)})`, reasonOf(rule));
  }
  const range = (columns: readonly string[] = []): string => `$${columns[0] ?? 'A'}${ROW}:$${columns[columns.length - 1] ?? 'A'}${ROW}`;
  const [keys, texts] = [range(places), range(reasons)];
  const one = (i: number): string =>
    `IF(COUNTIF(${keys},"<${NO_REASON}")<${i},"",${i === 1 ? '' : '"; "&'}INDEX(${texts},1,MATCH(SMALL(${keys},${i}),${keys},0)))`;
  const all = Array.from({ length: MAX_REASONS }, (_, i) => one(i + 1)).join('&');
  const found = `IF(COUNTIF(${keys},"<${NO_REASON}")=0,"–",${all})`;
  put(
    'reasons',
    'worst first',
    holds === undefined ? found : `IF(${holds},${found},${NO_VALUE})`,
    row => verdict(row.variant, 'reasons'),
    'result',
  );
}

const WORDS = { 'place: ': 'fails first, then what is not checked', 'reason: ': 'what is wrong with it' } as const;

function reasonFormula({ row, variant }: JudgedRow, { rule, state, fail = [], review = [] }: RuleState, put: WriteCell): string {
  const unchecked = quoted(`${rule.name}: not checked`);
  const sent = (of: OneRow): string => quoted(reasonOf(rule)(of));
  const asSent =
    variant.judging(rule) !== 'not checked'
      ? unchecked
      : `IF(${row.guards.unchanged(rule.value)},${variant.questions.text(`reason ${rule.name}`, sent)},${unchecked})`;
  const bounds = [...fail, ...review];
  const reviewed = rule.reviewWhere === undefined ? '""' : quoted(`${rule.doubtful ?? rule.broken}: ${rule.reviewWhere.words}`);
  if (bounds.length === 0 && rule.reviewWhere === undefined) return asSent;
  const [needs, has] = [rule.shown?.needs, rule.shown?.has].map(name => (name === undefined ? undefined : row.cellOf(name)));
  const passesAt = rule.passesAt === undefined ? undefined : row.cellOf(rule.passesAt.size);
  const digits = (i: number, a: string, b: string, worth: OfRow<number>): string =>
    put(`digits: ${rule.name}${i === 0 ? '' : `, ${i + 1}`}`, 'so many that they differ', `IFERROR(${placesFormula(a, b)},3)`, worth);
  const shownPlaces =
    rule.shown === undefined || needs === undefined || has === undefined
      ? undefined
      : digits(0, needs, has, placesOf(rule.shown.needs, rule.shown.has));
  const said = (bound: WrittenBound, i: number): string => {
    const words = (i >= fail.length ? rule.doubtful : undefined) ?? rule.broken;
    if (rule.shown !== undefined && needs !== undefined && has !== undefined && shownPlaces !== undefined)
      return comparedFormula(shownWords(words, rule.shown, needs, has), shownPlaces);
    const places = digits(i, bound.size, bound.limit, placesOf(bound.bound.of ?? rule.value, bound.bound.limit));
    const passes =
      rule.passesAt === undefined || passesAt === undefined
        ? ''
        : `&IFERROR(${quoted(passesWords(rule.passesAt))}&${numberInWords(passesAt, 3)}&${quoted(` ${unitOf(rule.passesAt.size)}`)},"")`;
    return `${comparedFormula(boundWords(words, rule, bound.bound, bound.limit, bound.size), places)}${passes}`;
  };
  const spoken = bounds.reduceRight((otherwise, bound, i) => ifBroken([bound], said(bound, i), otherwise), reviewed);
  return `IF(${state ?? '""'}="not checked",${asSent},${spoken})`;
}

const reasonOf =
  (rule: Rule): OfRow<string> =>
  ({ variant }) => {
    const finding = variant.finding(rule);
    return finding === undefined || finding.state === 'pass' ? '' : sentence(finding);
  };

/** So many places that two numbers of a row differ. */
const placesOf =
  (...names: readonly [string | number, string | number]): OfRow<number> =>
  ({ variant }) => {
    const [a, b] = names.map(name => (typeof name === 'number' ? name : variant.outcome(name)));
    return typeof a === 'number' && typeof b === 'number' ? placesThatDiffer(a, b) : 3;
  };
