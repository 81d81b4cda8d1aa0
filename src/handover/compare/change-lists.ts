// What came back, in lines to read.
import { LIST_TITLES, type ListTitle } from '../words/compare-words';
import { ENGLISH, type PageWords } from '../words/english';
import type { Measured, MeasuredResult } from './forms';
import type { Change, ReturnedChanges } from './returned-changes';

export interface ChangeList {
  readonly title: ListTitle;
  /** The title as it is read. */
  readonly heading: string;
  readonly lines: readonly string[];
}

const place = ({ sheet, at, label }: Pick<Change, 'sheet' | 'at' | 'label'>): string =>
  `${label === '' ? '' : `${label}, `}${sheet}${at === '' ? '' : ` ${at}`}`;

/** `length of variant A, Variants E6: 13 -> 16`. */
export const changeLine = (change: Change, { compare: { blank } }: PageWords): string =>
  `${place(change)}: ${change.sent === '' ? blank : change.sent} -> ${change.returned}`;

export function changeLists(changes: ReturnedChanges, words: PageWords = ENGLISH): ChangeList[] {
  const { compare: said } = words;
  const changed = (change: Change): string => changeLine(change, words);
  const lines: Readonly<Record<ListTitle, readonly string[]>> = {
    'changed inputs': changes.changedInputs.map(changed),
    'what they do': changes.effects.map(effect => `${place(effect)}: ${effect.before} -> ${effect.after}`),
    'changed formulas': changes.changedFormulas.map(changed),
    answers: changes.answers.map(change => `${place(change)}: ${change.returned}`),
    results: changes.results.map(one => resultLine(one, said)),
    comments: changes.comments.map(change => `${place(change)}: ${change.returned.replace(/\s*\n\s*/g, ' / ')}`),
    colours: changes.colours.map(one => `${place(one)}: ${one.returned === '?' ? said.coloured : `#${one.returned}`}`),
    'rows, columns and sheets': changes.rearranged.map(
      ({ sheet, what, how, words: where }) => `${sheet}, ${said.what[what]} ${said.how[how]}: ${where}`,
    ),
    missing: changes.missing.map(one => `${place(one)}${one.sent === '' ? '' : `: ${one.sent}`}`),
  };
  return LIST_TITLES.map(title => ({ title, heading: said.titles[title], lines: lines[title] }));
}

function resultLine(
  { characteristic, nominal, lower, upper, results, judged, method, remark }: Measured,
  said: PageWords['compare'],
): string {
  const from = ({ typed, formula }: MeasuredResult): string | undefined => (typed === undefined ? formula : said.typedAs(typed));
  const each = results.map(one => `${one.said}${from(one) === undefined ? '' : ` (${from(one)})`}`);
  const limits = lower === '' && upper === '' ? '' : ` (${said.limits(lower, upper)})`;
  const how = [judged, method].filter(text => text !== '').map(text => `, ${text}`);
  const all = said.measured(each.join(', '), nominal);
  return `${characteristic}: ${all}${limits}${how.join('')}${remark === '' ? '' : `; ${remark}`}`;
}
