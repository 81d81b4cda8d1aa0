// Values as formulas pass them on: a cell, a rectangle of cells, or undefined where the value is not known here.
import type { Cell, CellError } from '../core/kinds';

export type Known = One | KnownRows;
export type One = Cell | null | CellError | undefined;
export type KnownRows = readonly (readonly (Cell | null | CellError)[])[];

const OWN_ERRORS = 'NULL!|DIV/0!|VALUE!|REF!|NAME[?]|NUM!|N/A|SPILL!|CALC!';
/** Of data types, of what is outside, and of what is waited for. */
const OTHER_ERRORS = 'BUSY!|GETTING_DATA|CONNECT!|BLOCKED!|FIELD!|UNKNOWN!|TIMEOUT!|EXTERNAL!|PLACEHOLDER!';

export const ERROR_CODE = new RegExp(`^#(${OWN_ERRORS}|${OTHER_ERRORS})$`);

export const isRows = (value: Known): value is KnownRows => Array.isArray(value);
export const isFault = (value: Known): value is CellError => typeof value === 'object' && value !== null && 'cellError' in value;
export const isOne = (value: Known): value is One => !isRows(value);
/** A rectangle of one cell is that cell. */
export const one = (value: Known): Known => (isRows(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value);
export const scalar = (value: Known): One => {
  const single = one(value);
  return isRows(single) ? undefined : single;
};
export const rowsOf = (value: Known): KnownRows | undefined => (isRows(value) ? value : value === undefined ? undefined : [[value]]);

const isKnownRows = (rows: readonly (readonly One[])[]): rows is KnownRows => rows.every(row => !row.includes(undefined));
/** The rows, if every cell of them is known. */
export const allKnown = (rows: readonly (readonly One[])[]): KnownRows | undefined => (isKnownRows(rows) ? rows : undefined);

const fault = (cellError: string): CellError => ({ cellError });
export const NOT_FOUND = fault('#N/A');
export const NO_NUMBER = fault('#NUM!');
export const NO_VALUE = fault('#VALUE!');
export const BY_ZERO = fault('#DIV/0!');
export const NO_CELL = fault('#REF!');

/** A text with a figure in it may be read as a number or date, or not, by the program and its language. */
const textAsNumber = (text: string): CellError | undefined => (/\d/.test(text) || text.trim() === '' ? undefined : NO_VALUE);

export function numberOf(value: One): number | CellError | undefined {
  if (typeof value === 'string') return textAsNumber(value);
  return typeof value === 'boolean' ? Number(value) : value === null ? 0 : value;
}

export const finite = (value: number): number | CellError => (Number.isFinite(value) ? value : NO_NUMBER);

/** All arguments as numbers; the first error among them goes along. */
export function withNumbers(args: readonly Known[], of: (...numbers: number[]) => Known): Known {
  const numbers: number[] = [];
  for (const arg of args) {
    const number = numberOf(scalar(arg));
    if (typeof number !== 'number') return number;
    numbers.push(number);
  }
  return of(...numbers);
}

/** A number as a text has few digits here: of many, programs print more or fewer. */
const MOST_DIGITS = 10;

/** A number as every program joins it to a text, with a point; how other numbers print depends on the program. */
function printedNumber(value: number): string | undefined {
  if (Number.isInteger(value)) return Math.abs(value) < 1e15 ? String(value) : undefined;
  const text = String(Number(value.toPrecision(15)));
  return Math.abs(value) >= 1e-4 && text.replace(/[-.]/g, '').replace(/^0+/, '').length <= MOST_DIGITS ? text : undefined;
}

export const printed = (value: One): string | undefined =>
  typeof value === 'string' ? value : value === null ? '' : typeof value === 'number' ? printedNumber(value) : undefined;

/** More characters than a cell holds are an error in one program and a text in another. */
const LONGEST_TEXT = 32_767;

export function joinedTexts(texts: readonly string[], between = ''): string | undefined {
  const length = texts.reduce((sum, text) => sum + text.length, 0) + between.length * (texts.length - 1);
  return length > LONGEST_TEXT ? undefined : texts.join(between);
}
