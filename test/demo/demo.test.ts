// The demo and the other guides, worked out cell by cell: no errors, chains of at most two function cells, nothing cut.
import { describe, expect, test } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { GUIDES } from '../../src/demo/guides';
import { address, cellPosition } from '../../src/sheet/addresses';
import { areaOf, type FormulaNode, ownFunction, parseFormula } from '../../src/sheet/formula';
import { valuesOfPlan } from '../kit/source-of-plan';
import type { Known } from '../../src/sheet/workbook-values';
import { linesOf } from '../../src/hosts/xlsx/layout';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';

test('sheets of the demo', () => {
  expect(demoWorkbook.sheets.map(({ name }) => name)).toEqual(['Read me', 'Joint', 'Variants', 'Strength', 'Tolerance', 'Checks', 'Screw']);
});

describe.each(GUIDES.map(({ name, workbook }) => [name, workbook] as const))('%s', (_guide, workbook) => {
  const source = valuesOfPlan(workbook);
  /** Cells that a table fills, with the cell of its formula. */
  const anchors = new Map<string, string>();

  type Table = Extract<Known, readonly unknown[]>;
  const isTable = (result: Known): result is Table =>
    Array.isArray(result) && result.length * ((result[0] as readonly unknown[] | undefined)?.length ?? 0) > 1;
  const formulas = workbook.sheets.flatMap(sheet =>
    sheet.cells.filter(({ formula }) => formula !== undefined).map(cell => ({ sheet, cell, name: `${sheet.name} ${cell.at}` })),
  );

  for (const { sheet, cell } of formulas) {
    const result = source.result(sheet.name, cell.at);
    if (!isTable(result)) continue;
    const { row, column } = cellPosition(cell.at);
    result.forEach((line, r) => line.forEach((_, c) => anchors.set(`${sheet.name}!${address(row + r, column + c)}`, cell.at)));
  }

  const isError = (value: unknown): boolean => typeof value === 'object' && value !== null && 'cellError' in value;

  describe('every formula has a value', () => {
    test('there are formulas', () => {
      expect(formulas.length).toBeGreaterThan(20);
    });

    test.each(formulas.map(({ name, sheet, cell }) => [name, cell.formula, sheet, cell] as const))(
      '%s %s',
      (_name, _formula, sheet, { at }) => {
        const result = source.result(sheet.name, at);
        expect(result).toBeDefined();
        expect(result).not.toBeNull();
        const cells = isTable(result) ? result.flat() : [result];
        expect(cells.filter(isError)).toEqual([]);
        for (const cell of cells) if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
      },
    );

    test('tables do not run into other cells', () => {
      for (const sheet of workbook.sheets) {
        for (const { at, value, formula } of sheet.cells) {
          if (value === undefined && formula === undefined) continue;
          const anchor = anchors.get(`${sheet.name}!${at}`);
          expect(anchor === undefined || anchor === at, `${sheet.name} ${at} lies in the table of ${anchor}`).toBe(true);
        }
      }
    });
  });

  /** How many function cells stand behind one another, nested calls counted. */
  function depth(sheet: string, at: string, seen: readonly string[] = []): number {
    const key = `${sheet}!${at}`;
    const from = anchors.get(key) ?? at;
    const formula = source.cell(sheet, from)?.formula;
    if (formula === undefined || seen.includes(key)) return 0;
    return depthOf(parseFormula(formula), sheet, [...seen, key, `${sheet}!${from}`]);
  }

  function depthOf(node: FormulaNode | null | undefined, sheet: string, seen: readonly string[]): number {
    if (node === null || node === undefined) return 0;
    const area = node.type === 'ReferenceIdentifier' ? areaOf(node, sheet) : undefined;
    const behind =
      area === undefined
        ? (node.arguments ?? []).map(part => depthOf(part, sheet, seen))
        : cellsOf(area).map(at => depth(area.sheet, at, seen));
    return (ownFunction(node) === undefined ? 0 : 1) + Math.max(0, ...behind);
  }

  const cellsOf = ({ top, left, bottom, right }: NonNullable<ReturnType<typeof areaOf>>): string[] =>
    Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (__, c) => address(top + r, left + c)),
    ).flat();

  describe('in Excel a chain costs about half a second a link', () => {
    const depths = formulas.map(({ name, sheet, cell }) => ({ name, links: depth(sheet.name, cell.at) }));
    test('at most two links', () => {
      expect(depths.filter(({ links }) => links > 2)).toEqual([]);
      expect(depths.filter(({ links }) => links === 2).length).toBeGreaterThan(5);
    });
  });

  describe('nothing is cut', () => {
    const NEW = workbook.sheets
      .map(({ name }) => name)
      .filter(name => ['Strength', 'Tolerance', 'Checks', 'Guide', 'Copper', 'Lip and clamp'].includes(name));
    const shown = (value: unknown, format: string | undefined): string =>
      typeof value === 'number' && format !== undefined ? value.toFixed(format.split('.')[1]?.length ?? 0) : String(value ?? '');

    /** Every cell with something in it, spilled ones too. */
    function filled(sheet: SheetPlan): Map<string, { readonly text: string; readonly cell: PlanCell }> {
      const all = new Map<string, { text: string; cell: PlanCell }>();
      for (const cell of sheet.cells) {
        const result = cell.formula === undefined ? cell.value : source.result(sheet.name, cell.at);
        if (!isTable(result)) {
          if (result !== undefined && result !== '') all.set(cell.at, { text: shown(result, cell.format), cell });
          continue;
        }
        const { row, column } = cellPosition(cell.at);
        result.forEach((line, r) =>
          line.forEach((value, c) =>
            all.set(address(row + r, column + c), { text: shown(value, cell.format), cell: r === 0 ? { ...cell, role: 'header' } : cell }),
          ),
        );
      }
      return all;
    }

    test.each(NEW)('%s', name => {
      const sheet = workbook.sheets.find(one => one.name === name) as SheetPlan;
      const cells = filled(sheet);
      const merged = new Map((sheet.merged ?? []).map(range => range.split(':') as [string, string]));
      expect(cells.size).toBeGreaterThan(40);
      const cut: string[] = [];
      for (const [at, { text, cell }] of cells) {
        const { row, column } = cellPosition(at);
        const end = merged.get(at);
        let last = end === undefined ? column : cellPosition(end).column;
        // plain text runs on over free cells
        while (end === undefined && last + 1 < sheet.widths.length && !cells.has(address(row, last + 1))) last++;
        const width = sheet.widths.slice(column, last + 1).reduce((sum, one) => sum + one, 0);
        // files show results in bold, but break their lines
        const lines = linesOf(text, width, cell.role === 'heading' || cell.role === 'header');
        // a header breaks between words, a text over merged cells too
        const most = cell.role === 'header' || cell.role === 'caution' || end !== undefined ? 2 : 1;
        if (lines > most) cut.push(`${at} needs ${lines} lines in ${width}: ${text}`);
      }
      expect(cut).toEqual([]);
    });
  });
});
