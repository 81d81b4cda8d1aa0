// Ranges of text, of words and of any values, one row or column.
import { codeOf, errorWords, Refused, wrongInput } from '../refuse';
import { asList, choice, isBlank, isCellError, type ListKind, rowByRow, shown } from './params';

/** Each entry read; a fault says its row. */
function entries<E>(raw: unknown, read: (entry: unknown) => E): E[] {
  return asList(raw).map((entry, i) => {
    if (isCellError(entry)) throw new Refused(codeOf(entry), `row ${i + 1} ${errorWords(entry)}`);
    try {
      return read(entry);
    } catch (fault) {
      throw fault instanceof Refused ? new Refused(fault.code, `row ${i + 1} is ${shown(entry)}: ${fault.message}`) : fault;
    }
  });
}

/** What a cell holds, as it is. */
function cell(entry: unknown): number | string | boolean {
  if (typeof entry === 'string' || typeof entry === 'boolean' || (typeof entry === 'number' && Number.isFinite(entry))) return entry;
  throw wrongInput('give a number or text');
}

/** Names beside numbers; a blank one is `–`. */
export const LABELS: ListKind<readonly string[]> = {
  ...rowByRow<string>(),
  is: 'names',
  noun: 'range of names',
  read: raw => entries(raw, entry => (isBlank(entry) ? '–' : String(cell(entry)))),
};

/** Values of any kind, none of them blank. */
export const VALUES: ListKind<readonly (number | string | boolean)[]> = {
  ...rowByRow<number | string | boolean>(),
  is: 'values',
  noun: 'list of values',
  read: raw =>
    entries(raw, entry => {
      if (isBlank(entry)) throw wrongInput('a blank is no value; write "0 mm" for a true zero');
      return cell(entry);
    }),
};

/** One of a few words in every place. */
export function words<W extends string>(noun: string, all: Readonly<Record<W, readonly string[]>>): ListKind<readonly W[]> {
  const of = choice(noun, all);
  return {
    ...rowByRow<W>(),
    is: 'list',
    of,
    limits: undefined,
    noun: `range of ${noun}s`,
    read: (raw, earlier) => entries(raw, entry => of.read(entry, earlier)),
  };
}
