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

/** A number in a sentence. */
export const numberInWords = (cell: string, places: string | number): string =>
  `SUBSTITUTE(${wholeOf(cell, places)}/10^${places}&"",",",".")`;

/** @param places cell with the digits that are shown. */
export function comparedFormula({ words: [before, between, after], asked, has }: Compared<string>, places: string): string {
  const pieces = [quoted(before), numberInWords(asked, places), quoted(between), numberInWords(has, places)];
  return [...pieces, ...(after === '' ? [] : [quoted(after)])].join('&');
}
