// Values as formulas pass them on: a cell, a rectangle of cells, or undefined where the value is not known here.
import type { Cell, CellError } from '../core/kinds';

export type Known = One | KnownRows;
export type One = Cell | null | CellError | undefined;
export type KnownRows = readonly (readonly (Cell | null | CellError)[])[];

export const ERROR_CODE = /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!)$/;

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

/** How other numbers print depends on the program. */
export const printed = (value: One): string | undefined =>
  typeof value === 'string'
    ? value
    : value === null
      ? ''
      : typeof value === 'number' && Number.isInteger(value)
        ? String(value)
        : undefined;
