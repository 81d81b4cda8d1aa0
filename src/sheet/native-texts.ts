// The functions of ordinary sheets that make texts: undefined where programs differ.
import { isFault, isRows, joinedTexts, type Known, NO_VALUE, type One, printed, rowsOf, scalar, withNumbers } from './known';

type TextFunction = (args: readonly Known[]) => Known;

const textual =
  (of: (text: string, ...numbers: number[]) => Known): TextFunction =>
  ([first, ...rest]) => {
    const value = scalar(first);
    if (isFault(value)) return value;
    const text = printed(value);
    return text === undefined ? undefined : withNumbers(rest, (...numbers) => of(text, ...numbers));
  };

/** All values of the arguments, row by row. */
const cellsOf = (args: readonly Known[]): readonly One[] => args.flatMap(arg => (isRows(arg) ? arg.flat() : [arg as One]));

function joined(parts: readonly One[], between = ''): One {
  const fault = parts.find(isFault);
  if (fault !== undefined) return fault;
  const texts = parts.map(printed);
  return texts.includes(undefined) ? undefined : joinedTexts(texts as string[], between);
}

function found([part, text, from = 1]: readonly Known[]): Known {
  const sought = printed(scalar(part));
  if (sought === undefined) return undefined;
  return textual((whole, start = 1) => (start < 1 || !whole.includes(sought, start - 1) ? NO_VALUE : whole.indexOf(sought, start - 1) + 1))(
    [text, from],
  );
}

function substituted([text, part, by, which]: readonly Known[]): Known {
  const [old, put] = [printed(scalar(part)), printed(scalar(by))];
  if (old === undefined || put === undefined || which !== undefined) return undefined;
  return textual(whole => (old === '' ? whole : joinedTexts(whole.split(old), put)))([text]);
}

function textJoined([between, skips, ...rest]: readonly Known[]): Known {
  const [separator, isSkipping] = [printed(scalar(between)), scalar(skips)];
  if (separator === undefined || typeof isSkipping !== 'boolean') return undefined;
  return joined(
    cellsOf(rest).filter(value => !isSkipping || (value !== null && value !== '')),
    separator,
  );
}

export const TEXTS: Readonly<Record<string, TextFunction>> = {
  TRIM: textual(text => text.trim().replace(/ +/g, ' ')),
  LEFT: textual((text, count = 1) => (count < 0 ? NO_VALUE : text.slice(0, Math.trunc(count)))),
  RIGHT: textual((text, count = 1) => (count < 0 ? NO_VALUE : text.slice(Math.max(0, text.length - Math.trunc(count))))),
  MID: textual((text, from = 0, count = 0) =>
    from < 1 || count < 0 ? NO_VALUE : text.slice(Math.trunc(from) - 1, Math.trunc(from) - 1 + Math.trunc(count)),
  ),
  UPPER: textual(text => text.toUpperCase()),
  LOWER: textual(text => text.toLowerCase()),
  FIND: found,
  LEN: textual(text => text.length),
  SUBSTITUTE: substituted,
  EXACT: args => {
    const [a, b] = args.map(arg => printed(scalar(arg)));
    return a === undefined || b === undefined ? undefined : a === b;
  },
  CONCATENATE: args => (args.some(isRows) ? undefined : joined(args.map(scalar))),
  CONCAT: args => joined(cellsOf(args)),
  TEXTJOIN: textJoined,
  ISTEXT: ([value]) => {
    const single = rowsOf(value)?.[0]?.[0];
    return single === undefined ? undefined : typeof single === 'string';
  },
};
