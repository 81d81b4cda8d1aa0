// The value of a formula on the cells of a workbook: undefined where programs differ, or a cell is not known.
import type { Cell, CellError } from '../core/kinds';
import { address, type Area, cellCount, columnName, type Place } from './addresses';
import { areaOf, beamOf, calledName, type FormulaNode, ownFunction } from './formula';
import { allKnown, isFault, type Known, type KnownRows, NO_CELL, NO_VALUE, NOT_FOUND, numberOf, one, type One, scalar } from './known';
import { isTruth, NATIVE } from './natives';
import { binary, lifted, ordered, unary } from './operators';

/** Cells of a range that is worked with here. */
const MAX_CELLS = 1_000_000;
/** Cells of ranges that are kept for the next formula that reads them. */
const MOST_KEPT = 500_000;
/** How deep values are followed, through formulas and from cell to cell. */
const MAX_DEPTH = 600;

/** Calls a function of ours by its id; who evaluates hands it in. */
export type CallById = (
  id: string,
  args: readonly unknown[],
) => { readonly ok: true; readonly value: Cell | readonly (readonly Cell[])[] } | { readonly ok: false; readonly code: string };

export abstract class Evaluator {
  constructor(private readonly callOurs: CallById) {}

  private depth = 0;
  /** The chain that is being followed is too long: all of it stays unknown for now. */
  protected isTooDeep = false;
  private readonly areas = new Map<string, KnownRows>();
  private keptCells = 0;

  abstract value(sheet: string, at: string): One;

  /** All that spilled from a cell. */
  protected abstract spilledAt(sheet: string, at: string): Known;

  /** The values of a range; undefined if one of them is not known, or there are too many. */
  area(area: Area): KnownRows | undefined {
    const count = cellCount(area);
    if (count > MAX_CELLS) return undefined;
    const key = `${area.sheet}!${area.top},${area.left},${area.bottom},${area.right}`;
    const known = this.areas.get(key);
    if (known !== undefined) return known;
    const rows = this.read(area);
    if (rows === undefined || count === 1) return rows;
    if ((this.keptCells += count) > MOST_KEPT) this.forgetAreas();
    this.areas.set(key, rows);
    return rows;
  }

  protected forgetAreas(): void {
    this.areas.clear();
    this.keptCells = 0;
  }

  private read({ sheet, top, left, bottom, right }: Area): KnownRows | undefined {
    const columns = Array.from({ length: right - left + 1 }, (_, c) => columnName(left + c));
    const rows: (Cell | null | CellError)[][] = [];
    for (let r = top; r <= bottom; r++) {
      const row: (Cell | null | CellError)[] = [];
      for (const column of columns) {
        const value = this.value(sheet, `${column}${r + 1}`);
        if (value === undefined) return undefined;
        row.push(value);
      }
      rows.push(row);
    }
    return rows;
  }

  /** The last row and column of a sheet in which something stands. */
  protected abstract lastOf(sheet: string): Place;

  private filledPart(beam: Area | undefined): Area | undefined {
    if (beam === undefined) return undefined;
    const last = this.lastOf(beam.sheet);
    return {
      ...beam,
      bottom: Math.max(beam.top, Math.min(beam.bottom, last.row)),
      right: Math.max(beam.left, Math.min(beam.right, last.column)),
    };
  }

  /** `isOver`: operators work on rectangles cell by cell. */
  evaluate(node: FormulaNode | null | undefined, sheet: string, isOver = false): Known {
    if (node === null) return null;
    if (this.depth === 0) this.isTooDeep = false;
    if (this.depth > MAX_DEPTH) this.isTooDeep = true;
    if (node === undefined || this.isTooDeep) return undefined;
    this.depth += 1;
    const value = this.worked(node, sheet, isOver);
    this.depth -= 1;
    return value;
  }

  private worked(node: FormulaNode, sheet: string, isOver: boolean): Known {
    const [left = null, right = null] = node.arguments ?? [];
    const operand = (part: FormulaNode | null): Known => (isOver ? this.evaluate(part, sheet, true) : scalar(this.evaluate(part, sheet)));
    switch (node.type) {
      case 'Literal':
        return node.value as Cell;
      case 'ErrorLiteral':
        return { cellError: String(node.value) };
      case 'ReferenceIdentifier': {
        const area = areaOf(node, sheet) ?? this.filledPart(beamOf(node, sheet));
        return area === undefined ? undefined : one(this.area(area));
      }
      case 'ArrayExpression':
        return this.rows(node, sheet);
      case 'UnaryExpression': {
        if (node.operator !== '#') return lifted(value => unary(node.operator ?? '', value), [operand(left)]);
        const area = left === null ? undefined : areaOf(left, sheet);
        return area === undefined ? undefined : this.spilledAt(area.sheet, address(area.top, area.left));
      }
      case 'BinaryExpression':
        return lifted((a, b) => binary(node.operator ?? '', a, b), [operand(left), operand(right)]);
      case 'CallExpression':
        return this.called(node, sheet);
      default:
        return undefined;
    }
  }

  private rows({ elements = [] }: FormulaNode, sheet: string): Known {
    return allKnown(elements.map(row => row.map(part => scalar(this.evaluate(part, sheet)))));
  }

  private called(node: FormulaNode, sheet: string): Known {
    const parts = node.arguments ?? [];
    const own = ownFunction(node);
    const name = calledName(node) ?? '';
    const choice = own === undefined ? this.choices[name] : undefined;
    if (choice !== undefined) return choice(parts, sheet);
    const args = parts.map(arg => this.evaluate(arg, sheet, name === 'SUMPRODUCT'));
    if (args.includes(undefined)) return undefined;
    if (own === undefined) return isBeyond(node, NATIVE[name]?.(args));
    const answer = this.callOurs(own, args);
    return answer.ok ? answer.value : { cellError: answer.code };
  }

  /** Functions that look at some of their arguments only: the others may have no value. */
  private readonly choices: Readonly<Record<string, (parts: readonly (FormulaNode | null)[], sheet: string) => Known>> = {
    IF: ([test = null, then, otherwise], sheet) => {
      const truth = isTruth(scalar(this.evaluate(test, sheet)));
      if (typeof truth !== 'boolean') return truth;
      return truth ? this.branch(then, sheet) : otherwise === undefined ? false : this.branch(otherwise, sheet);
    },
    IFERROR: ([value = null, otherwise], sheet) => this.unless(isFault, value, otherwise, sheet),
    IFNA: ([value = null, otherwise], sheet) =>
      this.unless(known => isFault(known) && known.cellError === NOT_FOUND.cellError, value, otherwise, sheet),
    CHOOSE: ([which = null, ...parts], sheet) => {
      const number = numberOf(scalar(this.evaluate(which, sheet)));
      if (typeof number !== 'number') return number;
      const part = parts[Math.trunc(number) - 1];
      return part === undefined ? NO_VALUE : this.branch(part, sheet);
    },
    IFS: (parts, sheet) => {
      for (let i = 0; i + 1 < parts.length; i += 2) {
        const truth = isTruth(scalar(this.evaluate(parts[i] ?? null, sheet)));
        if (truth === true) return this.branch(parts[i + 1], sheet);
        if (truth !== false) return truth;
      }
      return NOT_FOUND;
    },
    SWITCH: ([of = null, ...parts], sheet) => {
      const value = scalar(this.evaluate(of, sheet));
      if (value === undefined || isFault(value)) return value;
      for (let i = 0; i + 1 < parts.length; i += 2) {
        const one = scalar(this.evaluate(parts[i] ?? null, sheet));
        if (one === undefined || isFault(one)) return one;
        if (typeof one === typeof value && ordered(one, value, '=') === 0) return this.branch(parts[i + 1], sheet);
      }
      return parts.length % 2 === 1 ? this.branch(parts[parts.length - 1], sheet) : NOT_FOUND;
    },
  };

  private unless(
    isNone: (known: Known) => boolean,
    part: FormulaNode | null,
    otherwise: FormulaNode | null | undefined,
    sheet: string,
  ): Known {
    const value = this.evaluate(part, sheet);
    return isNone(value) ? this.branch(otherwise, sheet) : value;
  }

  /** A blank is 0 as the result of a formula. */
  private branch(part: FormulaNode | null | undefined, sheet: string): Known {
    const value = this.evaluate(part ?? null, sheet);
    return value === null ? 0 : value;
  }
}

/** Whole columns are looked at as far as they are filled: what lies behind is blank, and no fault. */
const isBeyond = (node: FormulaNode, value: Known): Known =>
  value === NO_CELL && (node.arguments ?? []).some(part => part?.kind === 'beam') ? undefined : value;
