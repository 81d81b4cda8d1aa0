// The joint in cells: variants in, results out; one variant as a card; the lists of names.
import { refuseTooLarge, withUnit } from '../core/call';
import type { Cell, CellRange } from '../core/kinds';
import { isBlank, isCellError } from '../core/read/cells';
import { errorName, Refused, wrongInput } from '../core/refuse';
import { below, type Header, headerOf, isHeading, layoutOf, listOf, outputName, spelled, used, valuesOf } from './headings';
import { INPUTS } from './inputs';
import { isVerdict, meaningOf, type Output, OUTPUTS, unitOf } from './outputs';
import { workingOrder } from './order';
import { rowByRow } from './rows';
import { Variant } from './variant';
import { verdict } from './verdict';

/** A header row of input names, the values of a variant in every further row. */
function headedBlock(rows: CellRange): { readonly header: Header; readonly names: readonly string[]; readonly body: CellRange } {
  const header = headerOf(rows[0] ?? []);
  const { height } = below(rows);
  if (height < 2) throw wrongInput('inputs has no row of values below its names', 'inputs');
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
  const [only] = rows;
  // one name and its value
  if (rows.length === 1 && only?.length === 2 && !isHeading(only[1])) return baseOf([...rows, [null, null]]);
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

/** What is asked of one joint alone. */
export function oneVariant(inputs: CellRange, base: CellRange | undefined): Variant {
  const variants = variantsOf(inputs, baseOf(base));
  const [variant] = variants;
  if (variant === undefined || variants.length > 1)
    throw wrongInput(`inputs has ${variants.length} variants; give one: two columns name and value, or a header row and one row`, 'inputs');
  return variant;
}

export type LabelHeading = Header['labels'][number];

/** Outputs and labels in the order in which they are asked for; left out: labels, then every output but the remedy. */
export function askedColumns(outputs: CellRange | undefined, labels: readonly LabelHeading[]): readonly (Output | LabelHeading)[] {
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

/** How many columns a table of inputs under these headings fills. */
export const askedCount = (headings: readonly unknown[], outputs: CellRange | undefined): number =>
  askedColumns(outputs, headerOf(headings).labels).length;

/** What JOINT.TABLE gives, of any size: the asked names with their units, then one row per variant. */
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

/** A table that is worked out row by row: a heading, then an answer to each row of inputs. */
export interface JointRows {
  readonly heading: readonly Cell[];
  answer(row: readonly unknown[]): Cell[];
  /** The inputs of a row that are no values, each with its column. */
  refused(row: readonly unknown[]): readonly { readonly column: number; readonly message: string }[];
}

/** The same table without an end: what JOINT.TABLE gives under these names, one row after another. */
export const jointRows = (names: readonly unknown[], outputs: CellRange | undefined, base?: CellRange): JointRows =>
  rowsOf(headerOf(names), outputs, baseOf(base));

function rowsOf(header: Header, outputs: CellRange | undefined, base: Base): JointRows {
  const columns = askedColumns(outputs, header.labels);
  const results = columns.filter(column => typeof column === 'string');
  const answer = rowByRow(
    header.headings.map(({ name }) => name),
    results,
    base,
  );
  return {
    heading: columns.map(column => (typeof column === 'string' ? withUnit(column, unitOf(column)) : column.heading)),
    answer(row) {
      const cells = answer(valuesOf(header, row));
      if (results.length === columns.length) return cells;
      let next = 0;
      return columns.map(column => (typeof column === 'string' ? (cells[next++] ?? '–') : labelCell(row[column.column])));
    },
    refused(row) {
      const variant = variantOf(header, row, base);
      const found = header.headings.flatMap(({ name }, i) => {
        const outcome = variant.outcome(name);
        return variant.isGiven(name) && outcome instanceof Refused ? { column: header.columns[i] ?? 0, message: outcome.message } : [];
      });
      // what only hands on the refusal of another is said there
      return found.filter(one => !found.some(other => other !== one && one.message.endsWith(`: ${other.message}`)));
    },
  };
}

function tableOf(outputs: CellRange | undefined, { header, body }: ReturnType<typeof headedBlock>, base: Base): Cell[][] {
  const { heading, answer } = rowsOf(header, outputs, base);
  const answers = new Array<Cell[]>(body.length);
  for (const place of workingOrder(header, body)) answers[place] = answer(body[place] ?? []);
  return [[...heading], ...answers];
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
