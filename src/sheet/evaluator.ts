// The value of a formula on the cells of a workbook: undefined where programs differ, or a cell is not known.
import type { Cell } from '../core/kinds';
import { address, type Area, cellCount } from './addresses';
import { areaOf, calledName, type FormulaNode, ownFunction } from './formula';
import { allKnown, isFault, type Known, type KnownRows, one, type One, scalar } from './known';
import { isTruth, NATIVE } from './natives';
import { binary, lifted, unary } from './operators';

/** Cells of a range that is worked with here. */
const MAX_CELLS = 1_000_000;
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

  abstract value(sheet: string, at: string): One;

  /** All that spilled from a cell. */
  protected abstract spilledAt(sheet: string, at: string): Known;

  /** The values of a range; undefined if one of them is not known, or there are too many. */
  area({ sheet, ...rectangle }: Area): KnownRows | undefined {
    if (cellCount(rectangle) > MAX_CELLS) return undefined;
    const { top, left, bottom, right } = rectangle;
    return allKnown(
      Array.from({ length: bottom - top + 1 }, (_, r) =>
        Array.from({ length: right - left + 1 }, (__, c) => this.value(sheet, address(top + r, left + c))),
      ),
    );
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
        const area = areaOf(node, sheet);
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
    if (name === 'IF') return this.chosen(parts, sheet);
    if (name === 'IFERROR') {
      const value = this.evaluate(parts[0] ?? null, sheet);
      return isFault(value) ? this.branch(parts[1], sheet) : value;
    }
    const args = parts.map(arg => this.evaluate(arg, sheet, name === 'SUMPRODUCT'));
    if (args.includes(undefined)) return undefined;
    if (own === undefined) return NATIVE[name]?.(args);
    const answer = this.callOurs(own, args);
    return answer.ok ? answer.value : { cellError: answer.code };
  }

  /** The other branch is not looked at: it may have no value. */
  private chosen([test = null, then, otherwise]: readonly (FormulaNode | null)[], sheet: string): Known {
    const truth = isTruth(scalar(this.evaluate(test, sheet)));
    if (typeof truth !== 'boolean') return truth;
    return truth ? this.branch(then, sheet) : otherwise === undefined ? false : this.branch(otherwise, sheet);
  }

  /** A blank is 0 as the result of a formula. */
  private branch(part: FormulaNode | null | undefined, sheet: string): Known {
    const value = this.evaluate(part ?? null, sheet);
    return value === null ? 0 : value;
  }
}
