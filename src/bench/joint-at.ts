// Which variant of a joint the selected cell is about.
import type { CellError } from "../core/kinds";
import { areaOf, cellPosition, ownFunction, parseFormula, walk, type Area, type FormulaNode } from "../handover/formula";
import type { SheetContents } from "../hosts/bench/bench-workbook";
import type { BenchCell } from "../hosts/bench/cells";
import type { Variant } from "../joint/evaluate";
import { JOINT_INPUT_NAMES } from "../joint/inputs";
import { variantsOf } from "../joint/table";
import type { Selection } from "../sheet/port";

/** Cells that describe a joint: a row of names with a variant in each further row, or two columns name and value. */
interface Block extends Area {
  readonly isBeside: boolean;
}

export interface JointHere {
  readonly variant: Variant;
  /** What the user calls it, and where it stands: `A  first choice`, `Variants row 6`. */
  readonly name: string;
  readonly where: string;
}

const blockCalls = new Set(["JOINT.TABLE", "JOINT.CARD", "CHECK.JOINT", "CHECK.BOSS"]);

/** A list of fewer names may be about anything. */
const leastNames = 4;

interface BlockCall {
  readonly id: string;
  readonly node: FormulaNode;
  readonly block: Block;
}

const inputNames = new Set(JOINT_INPUT_NAMES.map((name) => name.toLowerCase()));

const isInputName = (value: BenchCell["value"]): boolean => typeof value === "string" && inputNames.has(value.trim().toLowerCase());

const cellAt = (rows: SheetContents["rows"], row: number, column: number): BenchCell => rows[row]?.[column] ?? { value: null };

const contains = ({ sheet, top, left, bottom, right }: Area, there: string, row: number, column: number): boolean =>
  sheet === there && row >= top && row <= bottom && column >= left && column <= right;

export class Joints {
  private readonly sheets: ReadonlyMap<string, SheetContents["rows"]>;
  private readonly blocks: readonly Block[];

  constructor(contents: readonly SheetContents[]) {
    this.sheets = new Map(contents.map(({ name, rows }) => [name, rows]));
    const fed = contents.flatMap(({ name, rows }) => rows.flatMap((row) => row.flatMap(({ formula }) => this.callsIn(formula, name).map(({ block }) => block))));
    this.blocks = [...fed, ...contents.flatMap(({ name, rows }) => listsIn(name, rows))];
  }

  at({ sheetName, at }: Selection): JointHere | undefined {
    const { row, column } = cellPosition(at);
    const rows = this.sheets.get(sheetName) ?? [];
    const inRow = Array.from({ length: rows[row]?.length ?? 0 }, (_, index) => index);
    const places = [column, ...inRow.filter((index) => index !== column)];
    for (const place of places) {
      const found = this.byCall(sheetName, row, place) ?? this.byBlock(sheetName, row, place);
      if (found !== undefined) return found;
    }
    const own = this.blocks.filter(({ sheet }) => sheet === sheetName);
    return own[0]?.isBeside === true && own.every((block) => block.top === own[0]?.top) ? this.joint(own[0], 0) : undefined;
  }

  /** The joint to begin with. */
  first(): JointHere | undefined {
    const [block] = this.blocks;
    return block && this.joint(block, 0);
  }

  /** The cell is a result of a call. */
  private byCall(sheetName: string, row: number, column: number): JointHere | undefined {
    const rows = this.sheets.get(sheetName) ?? [];
    const cell = cellAt(rows, row, column);
    const anchor = cell.spilledFrom === undefined ? { row, column } : cellPosition(cell.spilledFrom);
    const [found] = this.callsIn(cellAt(rows, anchor.row, anchor.column).formula, sheetName);
    if (found === undefined) return undefined;
    const { id, node, block } = found;
    if (id === "JOINT.TABLE") return this.joint(block, row - anchor.row - 1);
    return this.joint(block, id === "JOINT.CARD" ? this.numberOf(node.arguments?.[1], sheetName) - 1 : 0);
  }

  /** The cell is one of the inputs. */
  private byBlock(sheetName: string, row: number, column: number): JointHere | undefined {
    const block = this.blocks.find((each) => contains(each, sheetName, row, column));
    return block && this.joint(block, block.isBeside ? 0 : row - block.top - 1);
  }

  /** @param index of the variant, from 0; a heading stands for the first. */
  private joint(block: Block, index: number): JointHere | undefined {
    const variants = variantsOf(this.valuesOf(block));
    const variant = variants[Math.max(index, 0)];
    if (variant === undefined) return undefined;
    if (block.isBeside) return { variant, name: "", where: block.sheet };
    const row = block.top + 1 + Math.max(index, 0);
    const label = cellAt(this.sheets.get(block.sheet) ?? [], row, block.left - 1).value;
    return { variant, name: label === null ? "" : String(label), where: `${block.sheet} row ${row + 1}` };
  }

  private callsIn(formula: string | undefined, home: string): BlockCall[] {
    if (formula === undefined || !/JOINT|CHECK/i.test(formula)) return [];
    return [...walk(parseFormula(formula) ?? null)].flatMap((node): BlockCall[] => {
      const id = ownFunction(node);
      const [first] = node.arguments ?? [];
      const area = id !== undefined && blockCalls.has(id) && first ? areaOf(first, home) : undefined;
      return id === undefined || area === undefined ? [] : [{ id, node, block: { ...area, isBeside: this.isBeside(area) } }];
    });
  }

  private isBeside({ sheet, top, left, right, bottom }: Area): boolean {
    return right - left === 1 && bottom > top && !isInputName(cellAt(this.sheets.get(sheet) ?? [], top, right).value) && isInputName(cellAt(this.sheets.get(sheet) ?? [], top, left).value);
  }

  private numberOf(argument: FormulaNode | null | undefined, home: string): number {
    if (typeof argument?.value === "number") return argument.value;
    const area = argument ? areaOf(argument, home) : undefined;
    const value = area && cellAt(this.sheets.get(area.sheet) ?? [], area.top, area.left).value;
    return typeof value === "number" ? value : 1;
  }

  private valuesOf({ sheet, top, left, bottom, right }: Area): unknown[][] {
    const rows = this.sheets.get(sheet) ?? [];
    return Array.from({ length: bottom - top + 1 }, (_row, r) => Array.from({ length: right - left + 1 }, (_column, c) => valueOf(cellAt(rows, top + r, left + c))));
  }
}

const isError = /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|CYCLE!)$/;

const valueOf = ({ value, formula }: BenchCell): BenchCell["value"] | CellError =>
  formula !== undefined && typeof value === "string" && isError.test(value) ? { cellError: value } : value;

/** Columns of joint input names with something typed beside them, whether or not a call reads them. */
function listsIn(sheet: string, rows: SheetContents["rows"]): Block[] {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const found: Block[] = [];
  for (let left = 0; left < columns - 1; left++) {
    for (let top = 0; top < rows.length; top++) {
      let bottom = top;
      while (isInputName(cellAt(rows, bottom, left).value) && !isInputName(cellAt(rows, bottom, left + 1).value)) bottom++;
      if (bottom - top >= leastNames) found.push({ sheet, top, left, bottom: bottom - 1, right: left + 1, isBeside: true });
      top = bottom;
    }
  }
  return found;
}
