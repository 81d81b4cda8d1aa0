// All that is wrong with a variant, worst first, in the words of the joint and with the numbers of the row.
import { placesThatDiffer } from '../../../core/decimal';
import { RULES } from '../../../joint/rules';
import { broken, MAX_REASONS, verdict } from '../../../joint/verdict';
import { boundWords, passesWords, sentence, shownWords } from '../../../joint/words';
import { unitOf } from '../../../joint/outputs';
import { columnName } from '../../../sheet/addresses';
import { ROW } from '../../../sheet/row-forms';
import { comparedFormula, numberInWords, placesFormula } from '../compared-formula';
import { quoted } from '../inputs';
import { ifBroken, type RuleState, type WrittenBound } from './joint-verdict';
import type { JudgedRow } from './row-margin';
import type { WriteCell } from './row-input';
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
  // what cannot be judged for a reason that is told already is not told again
  const told = new Set(broken(variant).map(({ rule }) => rule));
  for (const entry of states) {
    const { rule, state } = entry;
    const finding = variant.finding(rule);
    if (state === undefined || finding === undefined) continue;
    const k = RULES.indexOf(rule);
    const isSaidElsewhere = finding.state === 'not checked' && !told.has(rule);
    const rank = (['fail', ...(isSaidElsewhere ? [] : ['not checked' as const]), 'review'] as const).reduceRight(
      (otherwise, word) => `IF(${state}="${word}",${RANK[word] + k},${otherwise})`,
      String(NO_REASON + k),
    );
    const isReason = finding.state !== 'pass' && !isSaidElsewhere;
    put(`place: ${rule.name}`, WORDS['place: '], rank, (isReason ? RANK[finding.state as keyof typeof RANK] : NO_REASON) + k);
    const worth = finding.state === 'pass' ? '' : sentence(finding);
    put(`reason: ${rule.name}`, WORDS['reason: '], `IF(${state}="pass","",${reasonFormula(of, entry, worth, put)})`, worth);
  }
  const range = (columns: readonly string[] = []): string => `$${columns[0] ?? 'A'}${ROW}:$${columns[columns.length - 1] ?? 'A'}${ROW}`;
  const [keys, texts] = [range(places), range(reasons)];
  const one = (i: number): string =>
    `IF(COUNTIF(${keys},"<${NO_REASON}")<${i},"",${i === 1 ? '' : '"; "&'}INDEX(${texts},1,MATCH(SMALL(${keys},${i}),${keys},0)))`;
  const all = Array.from({ length: MAX_REASONS }, (_, i) => one(i + 1)).join('&');
  const found = `IF(COUNTIF(${keys},"<${NO_REASON}")=0,"–",${all})`;
  put('reasons', 'worst first', holds === undefined ? found : `IF(${holds},${found},${NO_VALUE})`, verdict(variant, 'reasons'), 'result');
}

const WORDS = { 'place: ': 'fails first, then what is not checked', 'reason: ': 'what is wrong with it' } as const;

function reasonFormula(
  { row, variant }: JudgedRow,
  { rule, state, fail = [], review = [] }: RuleState,
  sent: string,
  put: WriteCell,
): string {
  const unchecked = quoted(`${rule.name}: not checked`);
  const asSent = sent === '' ? unchecked : `IF(${row.guards.unchanged(rule.value)},${quoted(sent.slice(0, 200))},${unchecked})`;
  const bounds = [...fail, ...review];
  const reviewed = rule.reviewWhere === undefined ? '""' : quoted(`${rule.doubtful ?? rule.broken}: ${rule.reviewWhere.words}`);
  if (bounds.length === 0 && rule.reviewWhere === undefined) return asSent;
  const [needs, has] = [rule.shown?.needs, rule.shown?.has].map(name => (name === undefined ? undefined : row.cellOf(name)));
  const passesAt = rule.passesAt === undefined ? undefined : row.cellOf(rule.passesAt.size);
  const digits = (i: number, a: string, b: string, worth: number): string =>
    put(`digits: ${rule.name}${i === 0 ? '' : `, ${i + 1}`}`, 'so many that they differ', `IFERROR(${placesFormula(a, b)},3)`, worth);
  const numberOf = (name: string | number): number => {
    const value = typeof name === 'number' ? name : variant.outcome(name);
    return typeof value === 'number' ? value : NaN;
  };
  const shownPlaces =
    rule.shown === undefined || needs === undefined || has === undefined
      ? undefined
      : digits(0, needs, has, worthOf(numberOf(rule.shown.needs), numberOf(rule.shown.has)));
  const said = (bound: WrittenBound, i: number): string => {
    const words = (i >= fail.length ? rule.doubtful : undefined) ?? rule.broken;
    if (rule.shown !== undefined && needs !== undefined && has !== undefined && shownPlaces !== undefined)
      return comparedFormula(shownWords(words, rule.shown, needs, has), shownPlaces);
    const places = digits(i, bound.size, bound.limit, worthOf(numberOf(bound.bound.of ?? rule.value), numberOf(bound.bound.limit)));
    const passes =
      rule.passesAt === undefined || passesAt === undefined
        ? ''
        : `&IFERROR(${quoted(passesWords(rule.passesAt))}&${numberInWords(passesAt, 3)}&${quoted(` ${unitOf(rule.passesAt.size)}`)},"")`;
    return `${comparedFormula(boundWords(words, rule, bound.bound, bound.limit, bound.size), places)}${passes}`;
  };
  const spoken = bounds.reduceRight((otherwise, bound, i) => ifBroken([bound], said(bound, i), otherwise), reviewed);
  return `IF(${state ?? '""'}="not checked",${asSent},${spoken})`;
}

const worthOf = (a: number, b: number): number => (Number.isNaN(a) || Number.isNaN(b) ? 3 : placesThatDiffer(a, b));
