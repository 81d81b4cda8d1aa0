// The first row of a range of joints: names of inputs, with or without a unit, and labels.
import { closest } from 'fastest-levenshtein';
import type { CellRange } from '../core/kinds';
import { asList, isBlank, isCellError, shown } from '../core/read/cells';
import { codeOf, errorName, quoted, Refused, wrongInput } from '../core/refuse';
import { INPUTS } from './inputs';
import { type Output, OUTPUTS } from './outputs';

export const spelled = (raw: string): string =>
  raw
    .trim()
    .toLowerCase()
    .replace(/[\s_\u00a0]+/g, ' ');

/** The names by their spelling without regard to case. */
const spellings = <N extends string>(names: Iterable<N>): ReadonlyMap<string, N> =>
  new Map([...names].map(name => [name.toLowerCase(), name]));
const INPUT_NAMES = spellings(INPUTS.keys());
const OUTPUT_NAMES = spellings(OUTPUTS);

/** Where the names stand. */
const LISTED = { 'a joint input': 'JOINT.INPUTS() lists them', 'a joint output': 'JOINT.OUTPUTS() lists them' } as const;

function find<N extends string>(names: ReadonlyMap<string, N>, raw: unknown, argument: string, what: keyof typeof LISTED): N {
  if (isCellError(raw)) throw new Refused(codeOf(raw), `${argument} has ${errorName(raw)} for a name`, argument);
  if (typeof raw !== 'string') throw wrongInput(`${argument}: ${shown(raw)} is not a name of ${what}; ${LISTED[what]}`, argument);
  const asked = spelled(raw);
  const name = names.get(asked);
  if (name === undefined)
    throw wrongInput(
      `${argument}: ${quoted(raw)} is not a name of ${what}; did you mean ` +
        `"${closest(asked.slice(0, 60), [...names.values()])}"? ${LISTED[what]}`,
      argument,
    );
  return name;
}

export const inputName = (raw: unknown, argument: string): string => find(INPUT_NAMES, raw, argument, 'a joint input');
export const outputName = (raw: unknown, argument: string): Output => find(OUTPUT_NAMES, raw, argument, 'a joint output');

/** One row or column of a block. */
export function listOf(rows: CellRange, argument: string): readonly unknown[] {
  try {
    return asList(rows);
  } catch (fault) {
    throw fault instanceof Refused ? new Refused(fault.code, `${argument}: ${fault.message}`, argument) : fault;
  }
}

/** How many of the list are used: what is blank at its end is left out. */
export function used<T>(list: readonly T[], blank: (entry: T) => boolean): number {
  let n = list.length;
  while (n > 0 && blank(list[n - 1] as T)) n--;
  return n;
}

/**
 * How a range holds variants: names in its first row and a variant in each further one, or names in these rows with their
 * values beside.
 */
export type Layout =
  | { readonly form: 'below'; readonly width: number; readonly height: number }
  | { readonly form: 'beside'; readonly rows: readonly number[] };

export function below(rows: CellRange): Layout & { readonly form: 'below' } {
  const width = used(rows[0] ?? [], isBlank);
  const isBlankRow = (row: readonly unknown[]): boolean => row.slice(0, width).every(isBlank);
  return { form: 'below', width, height: used(rows, isBlankRow) };
}

export function layoutOf(rows: CellRange): Layout {
  const isBeside = rows[0]?.length === 2 && rows.length > 1 && !rows[0].every(isHeading);
  return isBeside ? { form: 'beside', rows: rows.flatMap((row, i) => (isBlank(row[0]) ? [] : i)) } : below(rows);
}

/** Headings of columns that are not read. */
const LABELS: readonly string[] = ['variant', 'name', 'note', 'part'];
export const isLabel = (heading: string): boolean => LABELS.includes(spelled(heading)) || /^\(.*\)$/s.test(heading.trim());

/** What may stand above a column. */
export const isHeading = (cell: unknown): boolean => inputNamed(cell) !== undefined || (typeof cell === 'string' && isLabel(cell));

export interface Heading {
  readonly name: string;
  /** In which bare numbers below it are. */
  readonly unit: string | undefined;
}

/** No part of it can take what another takes: a long text is read once. */
const WITH_UNIT = /^([^()]+)\(([^()]+)\)\s*$/;

/** An input by its name, with or without a unit behind it: `wall (in)`. */
export function heading(raw: unknown, argument: string): Heading {
  const [, name = '', unit = ''] = (typeof raw === 'string' && WITH_UNIT.exec(raw)) || [];
  return name === '' ? { name: inputName(raw, argument), unit: undefined } : { name: inputName(name.trim(), argument), unit: unit.trim() };
}

/** Digits, signs and a fraction or tolerance of them, and no unit: "1/16", "+0.002/-0.001". */
const NO_UNIT = /^[\d\s.,+±/\-−]+$/;

/** A number in the unit of its heading, as a number or as text; a 0 stays a blank. */
export function inUnit(raw: unknown, { unit }: Heading): unknown {
  if (unit === undefined) return raw;
  const isBare = typeof raw === 'number' ? raw !== 0 : typeof raw === 'string' && NO_UNIT.test(raw) && /[1-9]/.test(raw);
  return isBare ? `${String(raw)} ${unit}` : raw;
}

export interface Header {
  readonly headings: readonly Heading[];
  /** Where each of them stands. */
  readonly columns: readonly number[];
  readonly labels: readonly { readonly heading: string; readonly column: number }[];
}

export function headerOf(header: readonly unknown[], argument = 'inputs'): Header {
  const width = used(header, isBlank);
  if (width === 0) throw wrongInput(`${argument} has no names in its first row`, argument);
  const cells = header.slice(0, width).map((raw, column) => ({ raw, column }));
  const blank = cells.find(({ raw }) => isBlank(raw));
  if (blank !== undefined) throw wrongInput(`${argument} has no name above column ${blank.column + 1}`, argument);
  const labels = cells.flatMap(({ raw, column }) => (typeof raw === 'string' && isLabel(raw) ? { heading: raw.trim(), column } : []));
  const read = cells.filter(({ column }) => labels.every(label => label.column !== column));
  const headings = read.map(({ raw }) => heading(raw, argument));
  refuseTwice(headings.map(({ name }) => name));
  return { headings, columns: read.map(({ column }) => column), labels };

  function refuseTwice(names: readonly string[]): void {
    const twice = names.find((name, i) => names.indexOf(name) !== i);
    if (twice !== undefined) throw wrongInput(`${argument} has "${twice}" twice`, argument);
  }
}

export const valuesOf = ({ headings, columns }: Header, row: readonly unknown[]): unknown[] =>
  headings.map((head, i) => inUnit(row[columns[i] ?? 0], head));

/** The input that a cell names, in any spelling of case and gaps, with or without a unit. */
export const inputNamed = (raw: unknown): string | undefined =>
  typeof raw === 'string' ? INPUT_NAMES.get(spelled(WITH_UNIT.exec(raw)?.[1] ?? raw)) : undefined;
