// The calls of a workbook in the order in which Excel can make them: a call waits for those in its arguments and in the cells that it reads.
import type { Cell } from '../../src/core/kinds';
import { address, cellPosition } from '../../src/sheet/addresses';
import { areaOf, ownFunction, parseFormula, walk, type FormulaNode } from '../../src/sheet/formula';
import { WorkbookValues, type Known, type SourceWorkbook } from '../../src/sheet/workbook-values';
import { call } from '../../src/registry';

export interface WorkbookCall {
  readonly where: string;
  readonly id: string;
  readonly args: readonly Known[];
}

/** What the host sends for a blank cell: 0 on the desktop, null on the web. */
export type Blank = 0 | null;

const asSent = (value: Known, blank: Blank): Known =>
  (Array.isArray(value) ? value.map(row => row.map((cell: Cell | null) => cell ?? blank)) : (value ?? blank)) as Known;

/** Calls by level, the first those that wait for nothing. */
export function levels(workbook: SourceWorkbook, blank: Blank): readonly (readonly WorkbookCall[])[] {
  const source = new WorkbookValues(workbook, call);
  const formulas = workbook.sheets.flatMap(({ name, cells }) =>
    [...cells].flatMap(([at, { formula }]) =>
      formula === undefined ? [] : [{ sheet: name, at, tree: parseFormula(formula) as FormulaNode }],
    ),
  );
  const treeAt = new Map(formulas.map(({ sheet, at, tree }) => [`${sheet}!${at}`, { sheet, tree }]));
  for (const { sheet, at } of formulas) {
    const result = source.result(sheet, at);
    if (!Array.isArray(result)) continue;
    const { row, column } = cellPosition(at);
    source.spill(sheet, at, result as Cell[][]);
    const home = treeAt.get(`${sheet}!${at}`);
    (result as Cell[][]).forEach((line, r) =>
      line.forEach((_, c) => home !== undefined && treeAt.set(`${sheet}!${address(row + r, column + c)}`, home)),
    );
  }

  /** Hand-overs until the value is known. */
  function level(node: FormulaNode | null, sheet: string): number {
    if (node === null) return 0;
    const below = Math.max(0, ...(node.arguments ?? []).map(part => level(part, sheet)), ...cellsOf(node, sheet).map(key => levelAt(key)));
    return ownFunction(node) === undefined ? below : below + 1;
  }
  function levelAt(key: string): number {
    const home = treeAt.get(key);
    return home === undefined ? 0 : level(home.tree, home.sheet);
  }

  const byLevel: WorkbookCall[][] = [];
  for (const { sheet, at, tree } of formulas) {
    for (const node of walk(tree)) {
      const id = ownFunction(node);
      if (id === undefined) continue;
      const args = (node.arguments ?? []).map(arg => {
        const value = source.evaluate(arg, sheet);
        if (value === undefined) throw new Error(`${sheet}!${at}: an argument of ${id} cannot be worked out here`);
        return arg === null ? null : asSent(value, blank);
      });
      (byLevel[level(node, sheet) - 1] ??= []).push({ where: `${sheet}!${at}`, id, args });
    }
  }
  return byLevel;
}

function cellsOf(node: FormulaNode, homeSheet: string): string[] {
  const area = areaOf(node, homeSheet);
  if (area === undefined) return [];
  const { sheet, top, left, bottom, right } = area;
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c) => `${sheet}!${address(top + r, left + c)}`),
  ).flat();
}
