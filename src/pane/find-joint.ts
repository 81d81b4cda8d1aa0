// Which joint the selected cell is about: through the call that reads it or spills over it, or a list of joint inputs beside it.
import { Refused } from '../core/refuse';
import { address, cellPosition } from '../sheet/addresses';
import { areaOf, ownFunction, parseFormula, walk, type FormulaNode } from '../sheet/formula';
import { isRows, type Known, type WorkbookValues } from '../sheet/workbook-values';
import { OUTPUTS, type Variant } from '../joint/evaluate';
import { askedOutputs, inputNamed, layoutOf, variantsOf } from '../joint/table';
import type { Selection } from '../sheet/port';
import { sourceOf, type Grid } from './workbook';

type Row = readonly unknown[];

export interface Joint {
  readonly variant: Variant;
  /** A row of names and a row of values, as the checks of a joint take them. */
  readonly rows: readonly [Row, Row];
  /** Where the inputs stand, by name. */
  readonly cells: ReadonlyMap<string, Selection>;
  /** Each input has its column, its row, or a place of another kind. */
  readonly form: Block['form'];
  /** What the user calls it: the text left of its row. */
  readonly label: string;
  /** Its first input; nothing where the inputs are not cells. */
  readonly place: Selection | undefined;
  /** From 1, of so many that stand together. */
  readonly number: number;
  readonly of: number;
  /** All of those, this one among them. */
  readonly together: () => readonly Joint[];
}

export type Found =
  { readonly is: 'joint'; readonly joint: Joint } | { readonly is: 'refused'; readonly message: string; readonly place: Selection };

/** `undefined` while nothing has been read, null where the workbook has no joint. */
export type JointHere = Found | null | undefined;

/** Inputs of one or several joints: a row of names with a variant in each further row, names beside values, or names and values apart. */
interface Block {
  readonly names: readonly Input[];
  readonly variants: readonly (readonly Input[])[];
  /** The rectangle that is read, where it is one. */
  readonly area: Rectangle | undefined;
  readonly form: 'below' | 'beside' | 'apart';
}

interface Input {
  readonly value: unknown;
  readonly place: Selection | undefined;
}

interface Rectangle {
  readonly sheetName: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** A call of the joint in a cell: what it reads, and the rectangle it fills. */
interface JointCall {
  readonly block: Block;
  readonly filled: Rectangle;
  /** The variant of a row of what is filled. */
  readonly variantAt: (row: number) => number;
}

/** Columns of the tables that the checks and the card of a joint fill. */
const CARD_COLUMNS = 6;
const CHECK_COLUMNS = 7;
/** Fewer names may be about anything. */
const LEAST_NAMES = 4;

const isInputName = (value: unknown): boolean => inputNamed(value) !== undefined;

const holds = (area: Rectangle | undefined, { sheetName, at }: Selection): boolean => {
  const { row, column } = cellPosition(at);
  return area?.sheetName === sheetName && row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
};

const inRows = (area: Rectangle | undefined, { sheetName, at }: Selection): boolean => {
  const { row } = cellPosition(at);
  return area?.sheetName === sheetName && row >= area.top && row <= area.bottom;
};

export class Joints {
  private readonly calls: readonly JointCall[];
  private readonly blocks: readonly Block[];

  constructor(
    private readonly grids: ReadonlyMap<string, Grid>,
    private readonly source: WorkbookValues = sourceOf(grids),
  ) {
    this.calls = [...grids].flatMap(([sheetName, grid]) => this.callsOn(sheetName, grid));
    this.blocks = [...this.calls.map(({ block }) => block), ...[...grids].flatMap(([sheetName, grid]) => this.listsOn(sheetName, grid))];
  }

  /** The joint of the cell, of its row, or the only one that stands as a list on its sheet. */
  at(selection: Selection): Found | undefined {
    const { row } = cellPosition(selection.at);
    for (const isHit of [holds, inRows]) {
      const call = this.calls.find(({ filled }) => isHit(filled, selection));
      if (call !== undefined) return this.found(call.block, call.variantAt(row));
      const block = this.blocks.find(({ area }) => isHit(area, selection));
      if (block !== undefined) return this.found(block, block.form === 'below' ? row - (block.area?.top ?? 0) - 1 : 0);
    }
    const list = this.blocks.find(({ form, area }) => form !== 'below' && area?.sheetName === selection.sheetName);
    return list && this.found(list, 0);
  }

  /** Whether the cell itself is an input or a result of a joint. */
  holds(selection: Selection): boolean {
    return this.calls.some(({ filled }) => holds(filled, selection)) || this.blocks.some(({ area }) => holds(area, selection));
  }

  /** The joint to begin with. */
  first(): Found | undefined {
    const [block] = this.blocks;
    return block && this.found(block, 0);
  }

  /** Every joint of the workbook, once. */
  all(): Found[] {
    const seen = new Set<string>();
    return this.blocks.flatMap(block => {
      const key = JSON.stringify(block.area ?? block.variants.map(inputs => inputs.map(({ value }) => value)));
      if (seen.has(key)) return [];
      seen.add(key);
      return block.variants.map((_, index) => this.found(block, index));
    });
  }

  private found(block: Block, wanted: number): Found {
    const { names, variants, form } = block;
    const index = Math.min(Math.max(wanted, 0), variants.length - 1);
    const inputs = variants[index] ?? [];
    const together = () =>
      variants.flatMap((_, i) => {
        const other = this.found(block, i);
        return other.is === 'joint' ? [other.joint] : [];
      });
    const place = inputs[0]?.place;
    const rows: [Row, Row] = [names.map(({ value }) => value), inputs.map(({ value }) => value)];
    try {
      const [variant] = variants.length === 0 ? [] : variantsOf(rows);
      if (variant === undefined) throw new Refused('#VALUE!', 'there is no variant below the names');
      const cells = new Map(
        names.flatMap(({ value }, i): [string, Selection][] => {
          const [name, cell] = [inputNamed(value), inputs[i]?.place];
          return name === undefined || cell === undefined ? [] : [[name, cell]];
        }),
      );
      return {
        is: 'joint',
        joint: {
          variant,
          rows,
          cells,
          form,
          place,
          label: form === 'below' ? this.labelOf(place) : '',
          number: index + 1,
          of: variants.length,
          together,
        },
      };
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      return { is: 'refused', message: fault.message, place: names[0]?.place ?? place ?? { sheetName: '', at: '' } };
    }
  }

  /** The text left of the first input. */
  private labelOf(place: Selection | undefined): string {
    if (place === undefined) return '';
    const { row, column } = cellPosition(place.at);
    const value = this.grids.get(place.sheetName)?.[row]?.[column - 1]?.value;
    return typeof value === 'string' ? value : '';
  }

  private callsOn(sheetName: string, grid: Grid): JointCall[] {
    return grid.flatMap((line, row) =>
      line.flatMap(({ formula }, column) => {
        if (formula === undefined || !/JOINT|CHECK/i.test(formula)) return [];
        const tree = parseFormula(formula);
        return [...walk(tree ?? null)].flatMap(node => this.callIn(node, node === tree, { sheetName, row, column, grid }) ?? []);
      }),
    );
  }

  private callIn(
    node: FormulaNode,
    isWhole: boolean,
    { sheetName, row, column, grid }: { readonly sheetName: string; readonly row: number; readonly column: number; readonly grid: Grid },
  ): JointCall | undefined {
    const id = ownFunction(node) ?? '';
    const [first = null, second = null] = node.arguments ?? [];
    const block = id === 'JOINT.VALUE' ? this.apart(first, second, sheetName) : this.together(first, sheetName);
    if (block === undefined || !['JOINT.TABLE', 'JOINT.VALUE', 'JOINT.CARD', 'CHECK.JOINT', 'CHECK.BOSS'].includes(id)) return undefined;
    const filledTo = (rows: number, columns: number): Rectangle => ({
      sheetName,
      top: row,
      left: column,
      bottom: row + (isWhole ? rows : 1) - 1,
      right: column + (isWhole ? columns : 1) - 1,
    });
    if (id === 'JOINT.TABLE')
      return { block, filled: filledTo(block.variants.length + 1, this.askedCount(second, sheetName)), variantAt: at => at - row - 1 };
    if (id === 'JOINT.CARD') {
      const number = this.source.evaluate(second, sheetName);
      return { block, filled: filledTo(OUTPUTS.length + 1, CARD_COLUMNS), variantAt: () => (typeof number === 'number' ? number - 1 : 0) };
    }
    if (id === 'JOINT.VALUE') return { block, filled: filledTo(1, 1), variantAt: () => 0 };
    return { block, filled: filledTo(filledRows(grid, row, column), CHECK_COLUMNS), variantAt: () => 0 };
  }

  private askedCount(outputs: FormulaNode | null, home: string): number {
    try {
      const asked = this.source.evaluate(outputs, home);
      return askedOutputs(asked === null || asked === undefined ? undefined : isRows(asked) ? asked : [[asked]]).length;
    } catch (fault) {
      if (fault instanceof Refused) return 1;
      throw fault;
    }
  }

  /** The cells of an argument with their places, where it is a range; else the values alone. */
  private read(
    node: FormulaNode | null,
    home: string,
  ): { readonly rows: readonly (readonly Input[])[]; readonly area: Rectangle | undefined } | undefined {
    const known: Known = this.source.evaluate(node, home);
    if (!isRows(known)) return undefined;
    const isSpill = node?.type === 'UnaryExpression' && node.operator === '#';
    const named = areaOf((isSpill ? node.arguments?.[0] : node) ?? { type: '', loc: [0, 0] }, home);
    const area = named && {
      sheetName: named.sheet,
      top: named.top,
      left: named.left,
      bottom: named.top + known.length - 1,
      right: named.left + (known[0]?.length ?? 1) - 1,
    };
    const placeOf = (r: number, c: number): Selection | undefined =>
      area && { sheetName: area.sheetName, at: address(area.top + r, area.left + c) };
    return { rows: known.map((line, r) => line.map((value, c) => ({ value, place: placeOf(r, c) }))), area };
  }

  private together(inputs: FormulaNode | null, home: string): Block | undefined {
    const read = this.read(inputs, home);
    return read && blockOf(read.rows, read.area);
  }

  private apart(names: FormulaNode | null, values: FormulaNode | null, home: string): Block | undefined {
    const [header, given] = [this.read(names, home), this.read(values, home)];
    return header && given && { names: header.rows.flat(), variants: [given.rows.flat()], area: given.area, form: 'apart' };
  }

  /** Names with something beside or below them that no call needs to read. */
  private listsOn(sheetName: string, grid: Grid): Block[] {
    const valueAt = (row: number, column: number): unknown => grid[row]?.[column]?.value ?? null;
    const width = Math.max(0, ...grid.map(line => line.length));
    const lists: Block[] = [];
    const isNew = (row: number, column: number) =>
      !this.calls.some(({ block, filled }) => [block.area, filled].some(area => holds(area, { sheetName, at: address(row, column) })));
    const add = (area: Rectangle) => {
      const rows = Array.from({ length: area.bottom - area.top + 1 }, (_, r) =>
        Array.from({ length: area.right - area.left + 1 }, (__, c): Input => ({
          value: this.source.value(sheetName, address(area.top + r, area.left + c)) ?? null,
          place: { sheetName, at: address(area.top + r, area.left + c) },
        })),
      );
      lists.push(blockOf(rows, area));
    };
    const isScrew = (row: number, column: number) => inputNamed(valueAt(row, column)) === 'screw' && isNew(row, column);
    for (let top = 0; top < grid.length; top++) {
      for (let left = 0; left < width; left++) {
        if (!isScrew(top, left)) continue;
        let bottom = top;
        while (isInputName(valueAt(bottom + 1, left)) && !isInputName(valueAt(bottom + 1, left + 1))) bottom++;
        if (bottom - top + 1 >= LEAST_NAMES) {
          add({ sheetName, top, left, bottom, right: left + 1 });
          continue;
        }
        let right = left;
        while (isInputName(valueAt(top, right + 1))) right++;
        const lastRow = lastFilled(grid, top + 1, left);
        if (right - left + 1 >= LEAST_NAMES && lastRow > top) add({ sheetName, top, left, bottom: lastRow, right });
      }
    }
    return lists;
  }
}

function filledRows(grid: Grid, top: number, column: number): number {
  return lastFilled(grid, top, column) - top + 1;
}

/** The last row without a gap from here on. */
function lastFilled(grid: Grid, top: number, column: number): number {
  let row = top;
  while ((grid[row]?.[column]?.value ?? null) !== null) row++;
  return row - 1;
}

/** As the joint reads them, with the place of each cell. */
function blockOf(rows: readonly (readonly Input[])[], area: Rectangle | undefined): Block {
  const layout = layoutOf(rows.map(row => row.map(({ value }) => value)));
  if (layout.form === 'beside') {
    const named = layout.rows.map(row => rows[row] as readonly [Input, Input]);
    return { names: named.map(([name]) => name), variants: [named.map(([, value]) => value)], area, form: 'beside' };
  }
  const { width, height } = layout;
  return {
    names: rows[0]?.slice(0, width) ?? [],
    variants: rows.slice(1, height).map(row => row.slice(0, width)),
    area: area && { ...area, bottom: area.top + height - 1 },
    form: 'below',
  };
}
