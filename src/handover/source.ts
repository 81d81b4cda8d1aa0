// The workbook that is handed over, as it was read: values and formulas. What has no value yet is worked out here,
// as far as arguments of our functions need it.
import type { Cell, CellError } from '../core/kinds';
import { call } from '../registry';
import { address, areaOf, type Area, type FormulaNode, ownFunction, parseFormula } from './formula';

export interface SourceCell {
  readonly value: Cell | null;
  readonly formula?: string;
}

export interface SourceSheet {
  readonly name: string;
  readonly isHidden?: boolean;
  /** By address, `B4`. */
  readonly cells: ReadonlyMap<string, SourceCell>;
}

export interface SourceWorkbook {
  readonly name: string;
  readonly sheets: readonly SourceSheet[];
  /** What defined names stand for, by `nameKey`: `Joint!$B$4`. */
  readonly names?: ReadonlyMap<string, string>;
}

/** `hole`, or `joint!hole` where the name holds on one sheet alone. */
export const nameKey = (name: string, sheet?: string): string => (sheet === undefined ? name : `${sheet}!${name}`).toLowerCase();

/** A value, a rectangle of values, or nothing where it is not known here. */
export type Known = One | Rows;
type One = Cell | null | CellError | undefined;
type Rows = readonly (readonly (Cell | null | CellError)[])[];

/** Cells of a range that is worked with here. */
const MOST_CELLS = 1_000_000;
/** How deep values are followed, through formulas and from cell to cell. */
const DEEPEST = 600;
const ERROR_CODE = /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|BUSY!)$/;

export const isRows = (value: Known): value is Rows => Array.isArray(value);
export const isFault = (value: Known): value is CellError => typeof value === 'object' && value !== null && 'cellError' in value;
const one = (value: Known): Known => (isRows(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value);
const scalar = (value: Known): One => {
  const single = one(value);
  return isRows(single) ? undefined : single;
};

export class Source {
  private readonly sheets: ReadonlyMap<string, SourceSheet>;
  private readonly spilled = new Map<string, Cell>();
  private readonly known = new Map<string, Known>();
  private readonly open = new Set<string>();
  private readonly circular = new Set<string>();
  private depth = 0;
  /** The chain that is being followed is too long: all of it stays unknown for now. */
  private isTooDeep = false;

  constructor(readonly workbook: SourceWorkbook) {
    this.sheets = new Map(workbook.sheets.map(sheet => [sheet.name, sheet]));
  }

  cell(sheet: string, at: string): SourceCell | undefined {
    return this.sheets.get(sheet)?.cells.get(at);
  }

  /** The value of a cell: worked out from its formula, or as it was read. */
  value(sheet: string, at: string): One {
    if (!this.sheets.has(sheet)) return undefined;
    const cell = this.cell(sheet, at);
    if (cell?.formula === undefined) return cell?.value ?? this.spilled.get(`${sheet}!${at}`) ?? null;
    const worked = one(this.result(sheet, at));
    const first = isRows(worked) ? worked[0]?.[0] : worked;
    if (first !== undefined) return first;
    if (cell.value === null) return undefined;
    return typeof cell.value === 'string' && ERROR_CODE.test(cell.value) ? { cellError: cell.value } : cell.value;
  }

  /** What the formula of a cell gives; a table spills over its neighbours. */
  result(sheet: string, at: string): Known {
    const key = `${sheet}!${at}`;
    if (this.known.has(key)) return this.known.get(key);
    if (this.open.has(key)) {
      for (const link of [...this.open].slice([...this.open].indexOf(key))) this.circular.add(link);
      return undefined;
    }
    this.open.add(key);
    const result = this.evaluate(parseFormula(this.cell(sheet, at)?.formula ?? ''), sheet);
    this.open.delete(key);
    if (this.circular.has(key)) return this.remember(key, undefined);
    return this.isTooDeep ? undefined : this.remember(key, result);
  }

  private remember(key: string, result: Known): Known {
    this.known.set(key, result);
    return result;
  }

  /** Whether its formula leads back to the cell itself, as far as it was followed. */
  isCircular(sheet: string, at: string): boolean {
    return this.circular.has(`${sheet}!${at}`);
  }

  /** Lets a table spill, so that cells that point at spilled ones find them. */
  spill(sheet: string, row: number, column: number, rows: Rows): void {
    rows.forEach((line, r) =>
      line.forEach((value, c) => {
        if (value !== null && !isFault(value)) this.spilled.set(`${sheet}!${address(row + r, column + c)}`, value);
      }),
    );
  }

  /** The values of a range; nothing where one of them is not known, or there are too many. */
  area({ sheet, top, left, bottom, right }: Area): Rows | undefined {
    const [height, width] = [bottom - top + 1, right - left + 1];
    if (height * width > MOST_CELLS) return undefined;
    const rows = Array.from({ length: height }, (_, r) => Array.from({ length: width }, (__, c) => this.value(sheet, address(top + r, left + c))));
    return rows.some(row => row.includes(undefined)) ? undefined : (rows as Rows);
  }

  evaluate(node: FormulaNode | null | undefined, sheet: string): Known {
    if (node === null) return null;
    if (this.depth === 0) this.isTooDeep = false;
    if (this.depth > DEEPEST) this.isTooDeep = true;
    if (node === undefined || this.isTooDeep) return undefined;
    this.depth += 1;
    const value = this.worked(node, sheet);
    this.depth -= 1;
    return value;
  }

  private worked(node: FormulaNode, sheet: string): Known {
    const [left = null, right = null] = node.arguments ?? [];
    switch (node.type) {
      case 'Literal':
        return node.value as Cell;
      case 'ErrorLiteral':
        return { cellError: String(node.value) };
      case 'ReferenceIdentifier': {
        const area = areaOf(node, sheet);
        return area === undefined ? undefined : one(this.area(area));
      }
      case 'ArrayExpression':
        return this.rows(node, sheet);
      case 'UnaryExpression':
        return node.operator === '#' ? this.spilledAt(left, sheet) : unary(node.operator ?? '', scalar(this.evaluate(left, sheet)));
      case 'BinaryExpression':
        return binary(node.operator ?? '', scalar(this.evaluate(left, sheet)), scalar(this.evaluate(right, sheet)));
      case 'CallExpression':
        return this.called(node, sheet);
      default:
        return undefined;
    }
  }

  private rows({ elements = [] }: FormulaNode, sheet: string): Known {
    const rows = elements.map(row => row.map(part => scalar(this.evaluate(part, sheet))));
    return rows.some(row => row.includes(undefined)) ? undefined : (rows as Rows);
  }

  private spilledAt(node: FormulaNode | null, sheet: string): Known {
    const area = node === null ? undefined : areaOf(node, sheet);
    return area === undefined || this.cell(area.sheet, address(area.top, area.left))?.formula === undefined ? undefined : this.result(area.sheet, address(area.top, area.left));
  }

  private called(node: FormulaNode, sheet: string): Known {
    const args = (node.arguments ?? []).map(arg => this.evaluate(arg, sheet));
    const own = ownFunction(node);
    if (own === undefined) return NATIVE[node.callee?.name?.toUpperCase() ?? '']?.(args);
    if (args.includes(undefined)) return undefined;
    const answer = call(own, args);
    return answer.ok ? answer.value : { cellError: answer.code };
  }
}

function unary(operator: string, value: One): One {
  if (operator === '+' || operator === '@' || isFault(value)) return value;
  const x = value ?? (value === null ? 0 : undefined);
  if (typeof x !== 'number') return undefined;
  return operator === '-' ? -x : operator === '%' ? x / 100 : undefined;
}

const sign = (a: number, b: number): number => (Math.abs(a - b) <= 1e-15 * Math.max(Math.abs(a), Math.abs(b)) ? 0 : a - b);

const ARITHMETIC: Readonly<Record<string, (a: number, b: number) => number>> = { '+': (a, b) => a + b, '-': (a, b) => a - b, '*': (a, b) => a * b, '/': (a, b) => a / b, '^': (a, b) => a ** b };
const COMPARISONS: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  '=': (a, b) => sign(a, b) === 0,
  '<>': (a, b) => sign(a, b) !== 0,
  '<': (a, b) => sign(a, b) < 0,
  '<=': (a, b) => sign(a, b) <= 0,
  '>': (a, b) => sign(a, b) > 0,
  '>=': (a, b) => sign(a, b) >= 0,
};

function binary(operator: string, a: One, b: One): One {
  if (a === undefined || b === undefined) return undefined;
  if (isFault(a)) return a;
  if (isFault(b)) return b;
  if (operator === '&') return joined(a, b);
  const compare = COMPARISONS[operator];
  if (typeof a === 'string' || typeof b === 'string') return compare === undefined ? undefined : sameText(operator, a, b);
  if (typeof a === 'boolean' || typeof b === 'boolean') return undefined;
  if (compare !== undefined) return compare(a ?? 0, b ?? 0);
  if (operator === '/' && (b ?? 0) === 0) return { cellError: '#DIV/0!' };
  const result = ARITHMETIC[operator]?.(a ?? 0, b ?? 0);
  return result !== undefined && Number.isFinite(result) ? result : undefined;
}

/** How other numbers print depends on the program. */
const printed = (value: Cell | null): string | undefined => (typeof value === 'string' ? value : value === null ? '' : typeof value === 'number' && Number.isInteger(value) ? String(value) : undefined);

function joined(a: Cell | null, b: Cell | null): One {
  const [left, right] = [printed(a), printed(b)];
  return left === undefined || right === undefined ? undefined : left + right;
}

/** A blank is as an empty text; a number is never a text. */
function sameText(operator: string, a: Cell | null, b: Cell | null): One {
  if (operator !== '=' && operator !== '<>') return undefined;
  const isSame = typeof (a ?? '') === 'string' && typeof (b ?? '') === 'string' && String(a ?? '').toLowerCase() === String(b ?? '').toLowerCase();
  return isSame === (operator === '=');
}

/** The numbers of all arguments: of a range its numbers only, alone a number or a blank. */
function numbersOf(args: readonly Known[]): readonly number[] | CellError | undefined {
  const numbers: number[] = [];
  for (const arg of args) {
    for (const value of isRows(arg) ? arg.flat() : [arg]) {
      if (isFault(value)) return value;
      if (typeof value === 'number') numbers.push(value);
      else if (!isRows(arg) && value !== null) return undefined;
    }
  }
  return numbers;
}

const over = (of: (numbers: readonly number[]) => number) => (args: readonly Known[]): Known => {
  const numbers = numbersOf(args);
  return numbers === undefined || 'cellError' in numbers ? numbers : of(numbers);
};

const truths = (of: (values: readonly boolean[]) => boolean) => (args: readonly Known[]): Known => (args.every((arg): arg is boolean => typeof arg === 'boolean') ? of(args) : undefined);

/** The few native functions that stand around ours in ordinary sheets. */
const NATIVE: Readonly<Record<string, (args: readonly Known[]) => Known>> = {
  IF: args => {
    const [test, then, otherwise] = args;
    const isTrue = typeof test === 'number' ? test !== 0 : test;
    return isFault(test) ? test : isTrue === true ? (then ?? (then === null ? 0 : undefined)) : isTrue === false ? (args.length < 3 ? false : (otherwise ?? (otherwise === null ? 0 : undefined))) : undefined;
  },
  IFERROR: ([value, otherwise]) => (isFault(value) ? otherwise : value),
  ISNUMBER: ([value]) => (value === undefined || isRows(value) ? undefined : typeof value === 'number'),
  AND: truths(values => values.every(value => value)),
  OR: truths(values => values.some(value => value)),
  NOT: ([value]) => (typeof value === 'boolean' ? !value : undefined),
  ABS: ([value]) => (typeof value === 'number' ? Math.abs(value) : undefined),
  SUM: over(numbers => numbers.reduce((a, b) => a + b, 0)),
  MAX: over(numbers => numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0)),
  MIN: over(numbers => numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0)),
  ROUND: ([value, places]) => {
    if (typeof value !== 'number' || typeof places !== 'number') return undefined;
    const scale = 10 ** places;
    return (Math.sign(value) * Math.round(Number((Math.abs(value) * scale).toPrecision(15)))) / scale;
  },
  PI: () => Math.PI,
  INDEX: ([rows, first, second]) => {
    if (!isRows(rows) || typeof first !== 'number' || first < 1 || (second !== undefined && typeof second !== 'number')) return undefined;
    const [row, column] = rows.length === 1 && second === undefined ? [1, first] : [first, second ?? 1];
    return column < 1 ? undefined : (rows[row - 1]?.[column - 1] ?? { cellError: '#REF!' });
  },
};
