// Formulas in the signs of the user: where the decimal sign is a comma, arguments are parted by semicolons, and the columns of a
// constant in braces by full stops or backslashes; its rows by semicolons everywhere.
import { tokenize } from '@borgar/fx';

export interface Signs {
  readonly decimal: string;
}

/** As a file holds formulas. */
export const FILE_SIGNS: Signs = { decimal: '.' };

const isComma = ({ decimal }: Signs): boolean => decimal === ',';

/** A formula of a file as the user types it. */
export function inSigns(formula: string, signs: Signs): string {
  if (!isComma(signs)) return formula;
  let braces = 0;
  return tokenize(formula, { mergeRefs: true })
    .map(({ type, value }) => {
      if (type === 'number') return value.replace('.', ',');
      if (type !== 'operator') return value;
      if (value === '{') braces++;
      if (value === '}') braces--;
      return value === ',' ? (braces === 0 ? ';' : '.') : value;
    })
    .join('');
}

/** What stands between quotation marks is the same in every language. */
const KEPT = /("(?:[^"]|"")*"|'(?:[^']|'')*')/;

/** What the user typed, in the user’s signs, as a file holds it; names of functions stay as they are. */
export function fromSigns(formula: string, signs: Signs): string {
  if (!isComma(signs)) return formula;
  let braces = 0;
  const one = (sign: string): string => {
    if (sign === '{') braces++;
    if (sign === '}') braces--;
    if (sign === ',') return '.';
    if (sign === ';') return braces === 0 ? ',' : ';';
    return braces > 0 && /[.\\]/.test(sign) ? ',' : sign;
  };
  return formula
    .split(KEPT)
    .map((part, i) => (i % 2 === 1 ? part : part.replace(/[{};.\\]|(?<=\d),(?=\d)/g, one)))
    .join('');
}
