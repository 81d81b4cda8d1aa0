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
  const isBeside = rows[0]?.length === 2 && rows.length > 1 && !rows[0].every(cell => inputNamed(cell) !== undefined);
  return isBeside ? { form: 'beside', rows: rows.flatMap((row, i) => (isBlank(row[0]) ? [] : i)) } : below(rows);
}

function headerNames(header: readonly unknown[], argument = 'inputs'): string[] {
  const width = used(header, isBlank);
  if (width === 0) throw wrongInput(`${argument} has no names in its first row`, argument);
  const names = header.slice(0, width).map((raw, i) => {
    if (isBlank(raw)) throw wrongInput(`${argument} has no name above column ${i + 1}`, argument);
    return inputName(raw, argument);
  });
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw wrongInput(`${argument} has "${twice}" twice`, argument);
  return names;
}

/** A header row of input names, the values of a variant in every further row. */
function headedBlock(rows: CellRange): { readonly names: readonly string[]; readonly body: CellRange } {
  const names = headerNames(rows[0] ?? []);
  const { height } = below(rows);
  if (height < 2) throw wrongInput('inputs has no variant below its names', 'inputs');
  return { names, body: rows.slice(1, height) };
}

const variantOf = (names: readonly string[], values: readonly unknown[]): Variant =>
  new Variant(new Map(names.map((name, i) => [name, values[i]])));

export function variantBlock(rows: CellRange): { readonly names: readonly string[]; readonly variants: readonly Variant[] } {
  const { names, body } = headedBlock(rows);
  return { names, variants: body.map(row => variantOf(names, row)) };
}

/** Either form: two columns name and value, or a header row with a variant in each further row. */
export function variantsOf(rows: CellRange): readonly Variant[] {
  const layout = layoutOf(rows);
  if (layout.form === 'below') return variantBlock(rows).variants;
  const names = layout.rows.map(row => inputName(rows[row]?.[0], 'inputs'));
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw wrongInput(`inputs has "${twice}" twice`, 'inputs');
  const values = layout.rows.map(row => rows[row]?.[1]);
  return [variantOf(names, values)];
}

/** The input that a cell names, in any spelling of case and gaps. */
export const inputNamed = (raw: unknown): string | undefined => (typeof raw === 'string' ? INPUT_NAMES.get(spelled(raw)) : undefined);

export function askedOutputs(outputs: CellRange | undefined): readonly Output[] {
  if (outputs === undefined) return OUTPUTS;
  const list = listOf(outputs, 'outputs');
  const names = list.slice(0, used(list, isBlank)).map((raw, i) => {
    if (isBlank(raw)) throw wrongInput(`outputs is blank at ${i + 1}`, 'outputs');
    return outputName(raw, 'outputs');
  });
  return names.length === 0 ? OUTPUTS : names;
}

/**
 * A row of outputs for each variant of a screw joint, below a header row with units.
 * inputs first row: names of joint inputs, each further row one variant; outputs names of the outputs wanted, every one if undefined.
 * A number in a cell is in the core unit of its input. Refused (thrown): a name that is not one of the joint, no variant below the names.
 */
export function jointTable(inputs: CellRange, outputs: CellRange | undefined): Cell[][] {
  return tableOf(askedOutputs(outputs), headedBlock(inputs));
}

/** As JOINT.TABLE gives it: a result too large for cells is refused before anything is worked out. */
export function jointCells(inputs: CellRange, outputs: CellRange | undefined): Cell[][] {
  const asked = askedOutputs(outputs);
  const block = headedBlock(inputs);
  refuseTooLarge((1 + block.body.length) * asked.length);
  return tableOf(asked, block);
}

function tableOf(asked: readonly Output[], { names, body }: ReturnType<typeof headedBlock>): Cell[][] {
  return [asked.map(name => withUnit(name, unitOf(name))), ...body.map(rowByRow(names, asked))];
}

export function jointValue(names: CellRange, values: CellRange, output: unknown): Cell {
  const header = listOf(names, 'names');
  const cells = listOf(values, 'values');
  if (header.length !== cells.length)
    throw wrongInput(`names has ${header.length} cells and values has ${cells.length}; give equal counts`, 'values');
  const variant = variantOf(headerNames(header, 'names'), cells);
  const name = outputName(output, 'output');
  return isVerdict(name) ? variant.verdict(name) : variant.value(name);
}

export function jointInputs(): Cell[][] {
  return [...INPUTS].map(([name, { unit, defaultWords, meaning }]) => [name, unit === '' ? '–' : unit, defaultWords, meaning]);
}

export function jointOutputs(): Cell[][] {
  return OUTPUTS.map(name => [name, unitOf(name) === '' ? '–' : unitOf(name), meaningOf(name)]);
}
