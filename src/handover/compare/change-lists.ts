// What came back, in lines to read.
import type { MeasuredResult } from './forms';
import type { Change, ReturnedChanges } from './returned-changes';

export type ListTitle =
  | 'changed inputs'
  | 'what they do'
  | 'changed formulas'
  | 'answers'
  | 'results'
  | 'comments'
  | 'colours'
  | 'rows, columns and sheets'
  | 'missing';

export interface ChangeList {
  readonly title: ListTitle;
  readonly lines: readonly string[];
}

const place = ({ sheet, at, label }: Pick<Change, 'sheet' | 'at' | 'label'>): string =>
  `${label === '' ? '' : `${label}, `}${sheet}${at === '' ? '' : ` ${at}`}`;

/** `length of variant A, Variants E6: 13 -> 16`. */
export const changeLine = (change: Change): string =>
  `${place(change)}: ${change.sent === '' ? 'blank' : change.sent} -> ${change.returned}`;

const resultWords = ({ said, typed }: MeasuredResult): string =>
  [said, ...(typed === undefined ? [] : [`(typed as the text "${typed}")`])].join(' ');

export function changeLists(changes: ReturnedChanges): ChangeList[] {
  const { changedInputs, changedFormulas, answers, results, comments, colours, rearranged, missing, effects } = changes;
  return [
    { title: 'changed inputs', lines: changedInputs.map(changeLine) },
    { title: 'what they do', lines: effects.map(effect => `${place(effect)}: ${effect.before} -> ${effect.after}`) },
    { title: 'changed formulas', lines: changedFormulas.map(changeLine) },
    { title: 'answers', lines: answers.map(change => `${place(change)}: ${change.returned}`) },
    {
      title: 'results',
      lines: results.map(({ characteristic, nominal, lower, upper, results: measured, judged, method, remark }) => {
        const limits = lower === '' && upper === '' ? '' : ` (${lower} to ${upper})`;
        const how = [judged, method].filter(text => text !== '').map(text => `, ${text}`);
        const all = measured.map(resultWords).join(', ');
        return `${characteristic}: ${all} for ${nominal}${limits}${how.join('')}${remark === '' ? '' : `; ${remark}`}`;
      }),
    },
    { title: 'comments', lines: comments.map(change => `${place(change)}: ${change.returned.replace(/\s*\n\s*/g, ' / ')}`) },
    { title: 'colours', lines: colours.map(change => `${place(change)}: ${change.returned === '?' ? 'coloured' : `#${change.returned}`}`) },
    { title: 'rows, columns and sheets', lines: rearranged.map(({ sheet, what, how, words }) => `${sheet}, ${what} ${how}: ${words}`) },
    { title: 'missing', lines: missing.map(one => `${place(one)}${one.sent === '' ? '' : `: ${one.sent}`}`) },
  ];
}
