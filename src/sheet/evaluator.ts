// The value of a formula on the cells of a workbook: undefined where programs differ, or a cell is not known.
// A formula is made ready once and worked out wherever it stands: what differs from cell to cell are its leaves.
import type { Cell, CellError } from '../core/kinds';
import { address, type Area, cellCount, isOneCell, type Place } from './addresses';
import { areaOf, beamOf, calledName, type FormulaNode, ownFunction, parseFormula } from './formula';
import { type FormulaShape, type Leaves, shaped, shapedForm } from './formula-shapes';
import { allKnown, type Known, type KnownRows, NO_CELL, one, type One, scalar } from './known';
import { BLANK, CHOICES, type Work } from './native-choices';
import { NATIVE } from './natives';
import { binary, lifted, unary } from './operators';
import { inRow } from './row-forms';

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

type LeafAt = ReadonlyMap<FormulaNode, number>;

const NO_PLACES: LeafAt = new Map();
const NO_LEAVES: Leaves = { all: [], moves: [], down: 0 };
const UNKNOWN: Work = () => undefined;

export abstract class Evaluator {
  constructor(private readonly callOurs: CallById) {}

  private depth = 0;
  /** The chain that is being followed is too long: all of it stays unknown for now. */
  protected isTooDeep = false;
  private readonly areas = new Map<string, KnownRows>();
  private keptCells = 0;
  /** Of parts of formulas as they stand, and of shapes. */
  private readonly made = new WeakMap<FormulaNode | FormulaShape, Work>();

  /** What stands in a cell; row and column count from 0. */
  protected abstract valueAt(sheet: string, row: number, column: number): One;

  /** All that spilled from a cell. */
  protected abstract spilledAt(sheet: string, at: string): Known;

  /** The last row and column of a sheet in which something stands. */
  protected abstract lastOf(sheet: string): Place;

  /** The values of a range; undefined if one of them is not known, or there are too many. */
  area(area: Area): KnownRows | undefined {
    const count = cellCount(area);
    if (count > MAX_CELLS) return undefined;
    if (count === 1) return this.read(area);
    const key = `${area.sheet}!${area.top},${area.left},${area.bottom},${area.right}`;
    const known = this.areas.get(key);
    if (known !== undefined) return known;
    const rows = this.read(area);
    if (rows === undefined) return undefined;
    if ((this.keptCells += count) > MOST_KEPT) this.forgetAreas();
    this.areas.set(key, rows);
    return rows;
  }

  protected forgetAreas(): void {
    this.areas.clear();
    this.keptCells = 0;
  }

  private read({ sheet, top, left, bottom, right }: Area): KnownRows | undefined {
    const rows: (Cell | null | CellError)[][] = [];
    for (let r = top; r <= bottom; r++) {
      const row: (Cell | null | CellError)[] = [];
      for (let c = left; c <= right; c++) {
        const value = this.valueAt(sheet, r, c);
        if (value === undefined) return undefined;
        row.push(value);
      }
      rows.push(row);
    }
    return rows;
  }

  private valueOf(area: Area, sheet: string, down = 0): Known {
    const on = area.sheet === '' ? sheet : area.sheet;
    const [top, bottom] = [area.top + down, area.bottom + down];
    return isOneCell(area) ? this.valueAt(on, top, area.left) : this.area({ ...area, sheet: on, top, bottom });
  }

  private filledPart(beam: Area): Area {
    const last = this.lastOf(beam.sheet);
    return {
      ...beam,
      bottom: Math.max(beam.top, Math.min(beam.bottom, last.row)),
      right: Math.max(beam.left, Math.min(beam.right, last.column)),
    };
  }

  /** The value of a part of a formula. */
  evaluate(node: FormulaNode | null | undefined, sheet: string): Known {
    if (node === null || node === undefined) return node;
    const work = this.made.get(node) ?? this.ready(node, NO_PLACES, false);
    this.made.set(node, work);
    return work(sheet, NO_LEAVES);
  }

  /** The value of a whole formula: those of one shape are made ready once. */
  valueOfFormula(formula: string, sheet: string): Known {
    const { shape, leaves } = shaped(formula);
    return shape === undefined ? this.evaluate(parseFormula(formula), sheet) : this.worked(shape, { ...NO_LEAVES, all: leaves }, sheet);
  }

  /** The value of a form in a row, counted from 0. */
  valueInRow(form: string, row: number, sheet: string): Known {
    const known = shapedForm(form);
    if (known === undefined) return this.valueOfFormula(inRow(form, row), sheet);
    const { shape, all, moves } = known;
    return this.worked(shape, { all, moves, down: row }, sheet);
  }

  private worked(shape: FormulaShape, leaves: Leaves, sheet: string): Known {
    const work = this.made.get(shape) ?? this.ready(shape.tree, shape.leafAt, false);
    this.made.set(shape, work);
    return work(sheet, leaves);
  }

  /** Made when it is first looked at, as deep as values are followed. `isOver`: operators work on rectangles cell by cell. */
  private ready(node: FormulaNode | null, leafAt: LeafAt, isOver: boolean): Work {
    if (node === null) return BLANK;
    let work: Work | undefined;
    return (sheet, leaves) => {
      if (this.depth === 0) this.isTooDeep = false;
      if (this.depth > MAX_DEPTH) this.isTooDeep = true;
      if (this.isTooDeep) return undefined;
      this.depth += 1;
      work ??= this.work(node, leafAt, isOver);
      const value = work(sheet, leaves);
      this.depth -= 1;
      return value;
    };
  }

  private work(node: FormulaNode, leafAt: LeafAt, isOver: boolean): Work {
    const leaf = leafAt.get(node);
    if (leaf !== undefined)
      return node.type === 'Literal'
        ? (_, { all }) => all[leaf] as Cell
        : (sheet, { all, moves, down }) => one(this.valueOf(all[leaf] as Area, sheet, moves[leaf] === true ? down : 0));
    const operand = (part: FormulaNode | null = null): Work => {
      const value = this.ready(part, leafAt, isOver);
      return isOver ? value : (sheet, leaves) => scalar(value(sheet, leaves));
    };
    const [left = null, right] = node.arguments ?? [];
    const operator = node.operator ?? '';
    switch (node.type) {
      case 'Literal':
        return () => node.value as Cell;
      case 'ErrorLiteral': {
        const fault = { cellError: String(node.value) };
        return () => fault;
      }
      case 'ReferenceIdentifier':
        return this.reference(node);
      case 'ArrayExpression':
        return this.rows(node, leafAt);
      case 'UnaryExpression': {
        if (operator === '#') return this.spilled(left);
        const value = operand(left);
        return (sheet, leaves) => lifted(of => unary(operator, of), [value(sheet, leaves)]);
      }
      case 'BinaryExpression': {
        const [a, b] = [operand(left), operand(right)];
        const of = (x: One, y: One): One => binary(operator, x, y);
        return (sheet, leaves) => lifted(of, [a(sheet, leaves), b(sheet, leaves)]);
      }
      case 'CallExpression':
        return this.called(node, leafAt);
      default:
        return UNKNOWN;
    }
  }

  private reference(node: FormulaNode): Work {
    const area = areaOf(node, '');
    if (area !== undefined) return sheet => one(this.valueOf(area, sheet));
    return sheet => {
      const beam = beamOf(node, sheet);
      return beam && one(this.area(this.filledPart(beam)));
    };
  }

  private spilled(node: FormulaNode | null): Work {
    return sheet => {
      const area = node === null ? undefined : areaOf(node, sheet);
      return area && this.spilledAt(area.sheet, address(area.top, area.left));
    };
  }

  private rows({ elements = [] }: FormulaNode, leafAt: LeafAt): Work {
    const parts = elements.map(row => row.map(part => this.ready(part, leafAt, false)));
    return (sheet, leaves) => allKnown(parts.map(row => row.map(part => scalar(part(sheet, leaves)))));
  }

  private called(node: FormulaNode, leafAt: LeafAt): Work {
    const own = ownFunction(node);
    const name = calledName(node) ?? '';
    const parts = (node.arguments ?? []).map(part => this.ready(part, leafAt, name === 'SUMPRODUCT'));
    const choice = own === undefined ? CHOICES[name] : undefined;
    if (choice !== undefined) return choice(parts);
    const given = (sheet: string, leaves: Leaves): Known[] => parts.map(part => part(sheet, leaves));
    if (own === undefined) {
      const native = NATIVE[name];
      return (sheet, leaves) => {
        const args = given(sheet, leaves);
        return args.includes(undefined) ? undefined : isBeyond(node, native?.(args));
      };
    }
    return (sheet, leaves) => {
      const args = given(sheet, leaves);
      if (args.includes(undefined)) return undefined;
      const answer = this.callOurs(own, args);
      return answer.ok ? answer.value : { cellError: answer.code };
    };
  }
}

/** Whole columns are looked at as far as they are filled: what lies behind is blank, and no fault. */
const isBeyond = (node: FormulaNode, value: Known): Known =>
  value === NO_CELL && (node.arguments ?? []).some(part => part?.kind === 'beam') ? undefined : value;
