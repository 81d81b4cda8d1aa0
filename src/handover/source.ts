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
  /** By address, `B4`. */
  readonly cells: ReadonlyMap<string, SourceCell>;
}

export interface SourceWorkbook {
  readonly name: string;
  readonly sheets: readonly SourceSheet[];
}

/** A value, a rectangle of values, or nothing where a native function is not known here. */
export type Known = Cell | null | CellError | readonly (readonly (Cell | null | CellError)[])[] | undefined;

const OPERATORS: Readonly<Record<string, (a: number, b: number) => Cell>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  '/': (a, b) => a / b,
  '^': (a, b) => a ** b,
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
};

const isMatrix = (value: Known): value is readonly (readonly (Cell | null | CellError)[])[] => Array.isArray(value);
const one = (value: Known): Known => (isMatrix(value) && value.length === 1 && value[0]?.length === 1 ? value[0][0] : value);

export class Source {
  private readonly sheets: ReadonlyMap<string, SourceSheet>;
  private readonly spilled = new Map<string, Cell>();
  private readonly known = new Map<string, Known>();
  private readonly open = new Set<string>();

  constructor(readonly workbook: SourceWorkbook) {
    this.sheets = new Map(workbook.sheets.map(sheet => [sheet.name, sheet]));
  }

  cell(sheet: string, at: string): SourceCell | undefined {
    return this.sheets.get(sheet)?.cells.get(at);
  }

  /** The value of a cell: as read, or worked out from its formula. */
  value(sheet: string, at: string): Known {
    const cell = this.cell(sheet, at);
    if (cell?.formula === undefined || cell.value !== null) return cell?.value ?? this.spilled.get(`${sheet}!${at}`) ?? null;
    const worked = one(this.result(sheet, at));
    return isMatrix(worked) ? worked[0]?.[0] : worked;
  }

  /** What the formula of a cell gives; a table spills over its neighbours. */
  result(sheet: string, at: string): Known {
    const key = `${sheet}!${at}`;
    if (this.known.has(key)) return this.known.get(key);
    if (this.open.has(key)) return { cellError: '#REF!' };
    this.open.add(key);
    const tree = parseFormula(this.cell(sheet, at)?.formula ?? '');
    const result = tree === undefined ? undefined : this.evaluate(tree, sheet);
    this.open.delete(key);
    this.known.set(key, result);
    return result;
  }

  /** Lets every table of a sheet spill, so that cells that point at spilled ones find them. */
  spill(sheet: string, row: number, column: number, rows: readonly (readonly Cell[])[]): void {
    rows.forEach((line, r) => line.forEach((value, c) => this.spilled.set(`${sheet}!${address(row + r, column + c)}`, value)));
  }

  area({ sheet, top, left, bottom, right }: Area): (Cell | null | CellError)[][] {
    return Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (__, c) => {
        const value = this.value(sheet, address(top + r, left + c));
        return isMatrix(value) || value === undefined ? null : value;
      }),
    );
  }

  evaluate(node: FormulaNode | null, sheet: string): Known {
    if (node === null) return null;
    const args = node.arguments ?? [];
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
        return node.elements?.map(row => row.map(part => this.evaluate(part, sheet) as Cell));
      case 'UnaryExpression':
        return unary(node.operator ?? '', this.evaluate(args[0] ?? null, sheet));
      case 'BinaryExpression':
        return binary(node.operator ?? '', this.evaluate(args[0] ?? null, sheet), this.evaluate(args[1] ?? null, sheet));
      case 'CallExpression':
        return this.called(node, sheet);
      default:
        return undefined;
    }
  }

  private called(node: FormulaNode, sheet: string): Known {
    const args = (node.arguments ?? []).map(arg => this.evaluate(arg, sheet));
    const own = ownFunction(node);
    if (own !== undefined) {
      if (args.includes(undefined)) return undefined;
      const answer = call(own, args);
      return answer.ok ? answer.value : { cellError: answer.code };
    }
    return native(node.callee?.name.toUpperCase() ?? '', args);
  }
}

function unary(operator: string, value: Known): Known {
  const x = one(value);
  if (typeof x !== 'number') return x === undefined ? undefined : operator === '+' ? x : { cellError: '#VALUE!' };
  return operator === '-' ? -x : operator === '%' ? x / 100 : x;
}

function binary(operator: string, left: Known, right: Known): Known {
  const [a, b] = [one(left), one(right)];
  if (a === undefined || b === undefined || isMatrix(a) || isMatrix(b)) return undefined;
  if (a !== null && typeof a === 'object') return a;
  if (b !== null && typeof b === 'object') return b;
  if (operator === '&') return `${a ?? ''}${b ?? ''}`;
  if (operator === '=' || operator === '<>') return (String(a ?? '').toLowerCase() === String(b ?? '').toLowerCase()) === (operator === '=');
  const work = OPERATORS[operator];
  if (work === undefined || typeof (a ?? 0) !== 'number' || typeof (b ?? 0) !== 'number') return { cellError: '#VALUE!' };
  const result = work((a ?? 0) as number, (b ?? 0) as number);
  return typeof result === 'number' && !Number.isFinite(result) ? { cellError: '#DIV/0!' } : result;
}

/** The few native functions that stand around ours in ordinary sheets. */
function native(name: string, args: readonly Known[]): Known {
  const [first, second, third] = args;
  if (name === 'IF') return first === true ? second : first === false ? (third ?? false) : undefined;
  if (name === 'INDEX' && isMatrix(first) && typeof second === 'number') {
    const [row, column] = first.length === 1 && third === undefined ? [1, second] : [second, typeof third === 'number' ? third : 1];
    return first[row - 1]?.[column - 1] ?? { cellError: '#REF!' };
  }
  if (name === 'ROUND' && typeof first === 'number' && typeof second === 'number') {
    const scale = 10 ** second;
    return (Math.sign(first) * Math.round(Number((Math.abs(first) * scale).toPrecision(15)))) / scale;
  }
  if ((name === 'MAX' || name === 'MIN' || name === 'SUM') && args.every(arg => typeof arg === 'number')) {
    const numbers = args as number[];
    return name === 'SUM' ? numbers.reduce((a, b) => a + b, 0) : name === 'MAX' ? Math.max(...numbers) : Math.min(...numbers);
  }
  return undefined;
}
