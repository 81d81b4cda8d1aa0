// The joint in cells: variants in, results out; one variant as a card; the lists of names.
import { closest } from 'fastest-levenshtein';
import { refuseTooLarge, withUnit } from '../core/call';
import type { Cell, CellRange } from '../core/kinds';
import { asList, isBlank, isCellError, shown } from '../core/read/cells';
import { codeOf, errorName, quoted, Refused, wrongInput } from '../core/refuse';
import { INPUTS } from './inputs';
import { isVerdict, meaningOf, type Output, OUTPUTS, unitOf } from './outputs';
import { rowByRow } from './rows';
import { Variant } from './variant';
import { verdict } from './verdict';

const spelled = (raw: string): string =>
  raw
    .trim()
    .toLowerCase()
    .replace(/[\s_\u00a0]+/g, ' ');

/** The names by their spelling without regard to case. */
const spellings = <N extends string>(names: Iterable<N>): ReadonlyMap<string, N> =>
  new Map([...names].map(name => [name.toLowerCase(), name]));
const INPUT_NAMES = spellings(INPUTS.keys());
const OUTPUT_NAMES = spellings(OUTPUTS);

function find<N extends string>(names: ReadonlyMap<string, N>, raw: unknown, argument: string, what: string): N {
  if (isCellError(raw)) throw new Refused(codeOf(raw), `${argument} has ${errorName(raw)} for a name`, argument);
  if (typeof raw !== 'string') throw wrongInput(`${argument}: ${shown(raw)} is not a name of ${what}`, argument);
  const asked = spelled(raw);
  const name = names.get(asked);
  if (name === undefined)
    throw wrongInput(
      `${argument}: ${quoted(raw)} is not a name of ${what}; did you mean "${closest(asked.slice(0, 60), [...names.values()])}"?`,
      argument,
    );
  return name;
}

const inputName = (raw: unknown, argument: string): string => find(INPUT_NAMES, raw, argument, 'a joint input');
const outputName = (raw: unknown, argument: string): Output => find(OUTPUT_NAMES, raw, argument, 'a joint output');

/** One row or column of a block. */
function listOf(rows: CellRange, argument: string): readonly unknown[] {
  try {
    return asList(rows);
  } catch (fault) {
    throw fault instanceof Refused ? new Refused(fault.code, `${argument}: ${fault.message}`, argument) : fault;
  }
}

/** How many of the list are used: what is blank at its end is left out. */
function used<T>(list: readonly T[], blank: (entry: T) => boolean): number {
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

function below(rows: CellRange): Layout & { readonly form: 'below' } {
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
const isLabel = (heading: string): boolean => LABELS.includes(spelled(heading)) || /^\(.*\)$/s.test(heading.trim());

/** What may stand above a column. */
const isHeading = (cell: unknown): boolean => inputNamed(cell) !== undefined || (typeof cell === 'string' && isLabel(cell));

interface Heading {
  readonly name: string;
  /** In which bare numbers below it are. */
  readonly unit: string | undefined;
}

const WITH_UNIT = /^(.+?)\s*\(([^()]+)\)\s*$/s;

/** An input by its name, with or without a unit behind it: `wall (in)`. */
function heading(raw: unknown, argument: string): Heading {
  const [, name = '', unit = ''] = (typeof raw === 'string' && WITH_UNIT.exec(raw)) || [];
  return name === '' ? { name: inputName(raw, argument), unit: undefined } : { name: inputName(name, argument), unit: unit.trim() };
}

/** A number in the unit of its heading; a bare 0 stays a blank. */
const inUnit = (raw: unknown, { unit }: Heading): unknown =>
  unit !== undefined && typeof raw === 'number' && raw !== 0 ? `${raw} ${unit}` : raw;

export interface Header {
  readonly headings: readonly Heading[];
  /** Where each of them stands. */
  readonly columns: readonly number[];
  readonly labels: readonly { readonly heading: string; readonly column: number }[];
}

function headerOf(header: readonly unknown[], argument = 'inputs'): Header {
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

const valuesOf = ({ headings, columns }: Header, row: readonly unknown[]): unknown[] =>
  headings.map((head, i) => inUnit(row[columns[i] ?? 0], head));

/** A header row of input names, the values of a variant in every further row. */
function headedBlock(rows: CellRange): { readonly header: Header; readonly names: readonly string[]; readonly body: CellRange } {
  const header = headerOf(rows[0] ?? []);
  const { height } = below(rows);
  if (height < 2) throw wrongInput('inputs has no variant below its names', 'inputs');
  return { header, names: header.headings.map(({ name }) => name), body: rows.slice(1, height) };
}

export type Base = ReadonlyMap<string, unknown>;
const NO_BASE: Base = new Map();

const variantOf = (header: Header, row: readonly unknown[], base: Base): Variant => {
  const values = valuesOf(header, row);
  return new Variant(new Map(header.headings.map(({ name }, i) => [name, values[i]])), base);
};

export function variantBlock(
  rows: CellRange,
  base: Base = NO_BASE,
): { readonly header: Header; readonly names: readonly string[]; readonly variants: readonly Variant[] } {
  const { header, names, body } = headedBlock(rows);
  return { header, names, variants: body.map(row => variantOf(header, row, base)) };
}

/** Names and values of one variant in either form. */
function namedValues(rows: CellRange, argument: string): Map<string, unknown> {
  const layout = layoutOf(rows);
  if (layout.form === 'beside') {
    const header = headerOf(
      layout.rows.map(row => rows[row]?.[0]),
      argument,
    );
    const values = valuesOf(
      header,
      layout.rows.map(row => rows[row]?.[1]),
    );
    return new Map(header.headings.map(({ name }, i) => [name, values[i]]));
  }
  const header = headerOf(rows[0] ?? [], argument);
  const values = valuesOf(header, rows[1] ?? []);
  return new Map(header.headings.map(({ name }, i) => [name, values[i]]));
}

/** What replaces the defaults; what is blank or asks for the default itself replaces nothing. */
export function baseOf(rows: CellRange | undefined): Base {
  if (rows === undefined) return NO_BASE;
  const layout = layoutOf(rows);
  if (layout.form === 'below' && layout.height > 2) throw wrongInput('base has more than one row of values', 'base');
  return new Map(
    [...namedValues(rows, 'base')].filter(([, raw]) => !isBlank(raw) && !(typeof raw === 'string' && spelled(raw) === 'default')),
  );
}

/** Either form: two columns name and value, or a header row with a variant in each further row. */
export function variantsOf(rows: CellRange, base: Base = NO_BASE): readonly Variant[] {
  return layoutOf(rows).form === 'below' ? variantBlock(rows, base).variants : [new Variant(namedValues(rows, 'inputs'), base)];
}

/** The input that a cell names, in any spelling of case and gaps, with or without a unit. */
export const inputNamed = (raw: unknown): string | undefined =>
  typeof raw === 'string' ? INPUT_NAMES.get(spelled(WITH_UNIT.exec(raw)?.[1] ?? raw)) : undefined;

export type Label = Header['labels'][number];

/** Outputs and labels in the order in which they are asked for; left out: labels, then every output but the remedy. */
export function askedColumns(outputs: CellRange | undefined, labels: readonly Label[]): readonly (Output | Label)[] {
  const all = [...labels, ...OUTPUTS.filter(output => output !== 'remedy')];
  if (outputs === undefined) return all;
  const list = listOf(outputs, 'outputs');
  const names = list.slice(0, used(list, isBlank)).map((raw, i) => {
    if (isBlank(raw)) throw wrongInput(`outputs is blank at ${i + 1}`, 'outputs');
    return labels.find(({ heading: label }) => typeof raw === 'string' && spelled(label) === spelled(raw)) ?? outputName(raw, 'outputs');
  });
  return names.length === 0 ? all : names;
}

export const askedOutputs = (outputs: CellRange | undefined): readonly Output[] =>
  askedColumns(outputs, []).filter(name => typeof name === 'string');

export function jointTable(inputs: CellRange, outputs: CellRange | undefined, base?: CellRange): Cell[][] {
  return tableOf(outputs, headedBlock(inputs), baseOf(base));
}

/** As JOINT.TABLE gives it: a result too large for cells is refused before anything is worked out. */
export function jointCells(inputs: CellRange, outputs: CellRange | undefined, base: CellRange | undefined): Cell[][] {
  const block = headedBlock(inputs);
  refuseTooLarge((1 + block.body.length) * askedColumns(outputs, block.header.labels).length);
  return tableOf(outputs, block, baseOf(base));
}

/** A label as it stands in its cell. */
export function labelCell(raw: unknown): Cell {
  if (isCellError(raw)) return errorName(raw);
  return typeof raw === 'number' || typeof raw === 'boolean' || (typeof raw === 'string' && raw.trim() !== '') ? raw : '–';
}

function tableOf(outputs: CellRange | undefined, { header, names, body }: ReturnType<typeof headedBlock>, base: Base): Cell[][] {
  const columns = askedColumns(outputs, header.labels);
  const results = columns.filter(column => typeof column === 'string');
  const answer = rowByRow(names, results, base);
  return [
    columns.map(column => (typeof column === 'string' ? withUnit(column, unitOf(column)) : column.heading)),
    ...body.map(row => {
      const cells = answer(valuesOf(header, row));
      if (results.length === columns.length) return cells;
      let next = 0;
      return columns.map(column => (typeof column === 'string' ? (cells[next++] ?? '–') : labelCell(row[column.column])));
    }),
  ];
}

export function jointValue(names: CellRange, values: CellRange, output: unknown, base: CellRange | undefined): Cell {
  const heads = listOf(names, 'names');
  const cells = listOf(values, 'values');
  if (heads.length !== cells.length)
    throw wrongInput(`names has ${heads.length} cells and values has ${cells.length}; give equal counts`, 'values');
  const variant = variantOf(headerOf(heads, 'names'), cells, baseOf(base));
  const name = outputName(output, 'output');
  return isVerdict(name) ? verdict(variant, name, [name]) : variant.value(name);
}

export function jointInputs(): Cell[][] {
  return [...INPUTS].map(([name, { unit, defaultWords, meaning }]) => [name, unit === '' ? '–' : unit, defaultWords, meaning]);
}

export function jointOutputs(): Cell[][] {
  return OUTPUTS.map(name => [name, unitOf(name) === '' ? '–' : unitOf(name), meaningOf(name)]);
}
