// Chinese, Japanese and Korean letters and their punctuation, by the properties that every browser knows: stands for a package with
// tables of its own, of which the sheet engine asks no more.

const SCRIPTS = '[\\p{Script=Han}\\p{Script=Katakana}\\p{Script=Hiragana}\\p{Script=Hangul}\\p{Script=Bopomofo}]';
const LETTER = `(?=[\\p{Lo}\\p{Nl}\\p{So}\\p{Lm}])${SCRIPTS}`;
/** The blocks of symbols, forms, strokes and half widths, by their first and last code. */
const BLOCKS = '[\\u2ff0-\\u303f\\u30a0-\\u30ff\\u3190-\\u319f\\u31c0-\\u31ef\\u3200-\\u33ff\\ufe10-\\ufe1f\\ufe30-\\ufe4f\\uff00-\\uffef]';

const made = (pattern: string) => () => ({ toRegExp: () => new RegExp(pattern, 'u') });

export const letters = made(LETTER);
export const punctuations = made(`(?!${LETTER})${BLOCKS}`);
export const all = made(`${LETTER}|${BLOCKS}`);
