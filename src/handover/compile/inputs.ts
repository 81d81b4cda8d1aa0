// An input cell as a formula: what is within limits, what takes the default, what has no value.
import type { Param } from '../../core/card';
import type { Limits } from '../../core/kinds';
import { readAnyQuantity } from '../../core/read/read-quantity';
import { number, text } from '../../plain/spreadsheet';
import { limitFormulas } from './limits';
import { isFault, isRows, type Known } from '../../sheet/workbook-values';
import { cellText } from '../../sheet/cell-text';

export { choicesOf } from '../../core/read/accepts';

/** Of a longer text its length and its beginning are watched. */
const LONGEST_WATCHED = 200;

export const quoted = (word: string): string => (text(word) as { text: string }).text;

/** Conditions that hold while the cell has what it had. Undefined where that cannot be told. */
export function sameAs(cell: string, was: Known): readonly string[] | undefined {
  if (was === undefined || isRows(was)) return undefined;
  if (typeof was === 'number' && was !== 0) return [`${cell}=${number(was).text}`];
  if (typeof was === 'string' && was !== '') {
    const sent = cellText(was);
    return sent.length <= LONGEST_WATCHED
      ? [`${cell}=${quoted(sent)}`]
      : [`LEN(${cell})=${sent.length}`, `LEFT(${cell},${LONGEST_WATCHED})=${quoted(sent.slice(0, LONGEST_WATCHED))}`];
  }
  if (isFault(was)) return [`ISERROR(${cell})`];
  return was === null || was === '' || was === 0 ? [`OR(${cell}="",${cell}=0)`] : undefined;
}

/** What a value that is not live shows from then on. */
export const CHANGED = quoted('inputs changed');

const BEGINS_WITH_NUMBER = /^[\s+\-−±/.,]*\d/;

/** A number with its unit, or a half width; no size of a table. */
export const isQuantity = (typed: string): boolean =>
  BEGINS_WITH_NUMBER.test(typed) && readAnyQuantity(typed.replace(/^\s*(±|\+\/-)/, '')) !== undefined;

/** What a text in the cell stood for; a number as it stands in a formula. */
export interface TypedMeaning {
  readonly typed: Known;
  readonly means: string;
}

const NONE = 'NA()';

/** A number within its limits; blank, a bare 0 and the word default take the default, except that a 0 may be a true one. */
export function numberFormula(
  cell: string,
  { blank, limits }: Param,
  otherwise: string | undefined,
  meaning: TypedMeaning | undefined,
  related: readonly string[] = [],
): string {
  const made = otherwise ?? NONE;
  const conditions = [...limitFormulas(cell, limits), ...related];
  const kept = conditions.length === 0 ? cell : `IF(AND(${conditions.join(',')}),${cell},${NONE})`;
  const asNumber = blank === 'explicit' ? kept : `IF(${cell}=0,${made},${kept})`;
  const asDefault =
    made === NONE
      ? NONE
      : blank === 'explicit'
        ? `IF(${cell}="default",${made},${NONE})`
        : `IF(OR(${cell}="",${cell}="default"),${made},${NONE})`;
  const same = meaning === undefined ? undefined : sameAs(cell, meaning.typed);
  const asText = meaning === undefined || same === undefined ? asDefault : `IF(AND(${same.join(',')}),${meaning.means},${asDefault})`;
  return `IF(ISNUMBER(${cell}),${asNumber},${asText})`;
}

/** One of a few words; what was typed may be another spelling of one. */
export function choiceFormula(
  cell: string,
  words: readonly string[],
  otherwise: string | undefined,
  meaning: TypedMeaning | undefined,
): string {
  const asDefault = otherwise === undefined ? NONE : `IF(OR(${cell}="",${cell}=0,${cell}="default"),${otherwise},${NONE})`;
  const known = words.map((word): readonly [string, string] => [word, word]);
  const typed = meaning?.typed;
  const spelled: readonly (readonly [string, string])[] =
    meaning !== undefined && typeof typed === 'string' && !words.includes(typed.toLowerCase()) ? [[typed, meaning.means], ...known] : known;
  return spelled.reduceRight((rest, [word, means]) => `IF(${cell}=${quoted(word)},${quoted(means)},${rest})`, asDefault);
}

/** All conditions side by side; old programs take 30 arguments. */
export function allOf(conditions: readonly string[]): string {
  const groups = Array.from(
    { length: Math.ceil(conditions.length / 25) },
    (_, i) => `AND(${conditions.slice(25 * i, 25 * i + 25).join(',')})`,
  );
  return groups.length === 1 ? (groups[0] as string) : `AND(${groups.join(',')})`;
}

/** Limits of each entry of a list. A bare 0 counts as a blank there, so a tolerance is above 0. */
export function listLimits({ kind }: Param): Limits | undefined {
  if (kind.is !== 'list') return undefined;
  return kind.of.is === 'deviation' ? { above: 0 } : kind.limits;
}
