// A sentence with two numbers as a formula: the same words, as many digits as it takes the two to differ, a point in every language.
import type { Compared } from '../../core/compared';
import { ALMOST } from '../../core/decimal';
import { number } from '../../plain/spreadsheet';
import { quoted } from './inputs';

const LEAST_PLACES = 3;
const MOST_PLACES = 12;

const HALF = number(0.5 + ALMOST).text;
const wholeOf = (cell: string, places: string | number): string => `INT(${cell}*10^${places}+${HALF})`;

/** So many places of two numbers are shown. */
export function placesFormula(a: string, b: string): string {
  let formula = String(MOST_PLACES);
  for (let places = MOST_PLACES - 1; places >= LEAST_PLACES; places--)
    formula = `IF(${wholeOf(a, places)}<>${wholeOf(b, places)},${places},${formula})`;
  return formula;
}

/**
 * A number in a sentence, put together from whole numbers: programs differ in how they write a fraction as text. The bar marks the
 * end, before which zeros go.
 */
export function numberInWords(cell: string, places: string | number): string {
  const [whole, one] = [wholeOf(cell, places), `10^${places}`];
  const fraction = `"."&MID(${one}+MOD(ABS(${whole}),${one}),2,${places})&"|"`;
  const short = ['00000000', '0000', '00', '0', '.'].reduce((text, zeros) => `SUBSTITUTE(${text},"${zeros}|","|")`, fraction);
  return `IF(${whole}<0,"-","")&INT(ABS(${whole})/${one})&SUBSTITUTE(${short},"|","")`;
}

/** @param places cell with the digits that are shown. */
export function comparedFormula({ words: [before, between, after], asked, has }: Compared<string>, places: string): string {
  const pieces = [quoted(before), numberInWords(asked, places), quoted(between), numberInWords(has, places)];
  return [...pieces, ...(after === '' ? [] : [quoted(after)])].join('&');
}
