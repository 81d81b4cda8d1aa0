// One cell of the user as the cells that take its place.
import type { Cell } from '../../../core/kinds';
import { CARDS } from '../../../registry';
import { cellText } from '../../../sheet/cell-text';
import { type FormulaNode, outermostCalls, ownFunction, parseFormula, walk, withoutTexts } from '../../../sheet/formula';
import type { PlanCell } from '../../../sheet/plan';
import type { Conversion } from '../conversion';
import { cellOf, asValue } from './cell-value';
import { nativeCell } from './native-cell';
import { partOfCell } from './nested-calls';
import { wholeCell } from './whole-call';

export function convertedCell(conversion: Conversion, sheet: string, at: string): PlanCell[] {
  const cell = conversion.source.cell(sheet, at);
  if (cell === undefined) return [];
  if (cell.formula === undefined) return [{ at, role: 'text', value: plainValue(conversion, sheet, at, cell.value) }];
  const { formula } = cell;
  const value = conversion.crowded.has(`${sheet}!${at}`) ? '#SPILL!' : cellOf(conversion.source.value(sheet, at));
  const tree = parseFormula(formula);
  const refusal =
    conversion.refused.get(`${sheet}!${at}`) ??
    conversion.crowded.get(`${sheet}!${at}`) ??
    (conversion.source.isCircular(sheet, at) ? 'it leads back to itself' : undefined);
  const calls = tree === undefined ? [] : outermostCalls(tree);
  for (const call of calls) for (const part of walk(call)) noteUse(conversion, part);
  if (tree === undefined || refusal !== undefined) {
    const fixed = asValue(conversion, sheet, at, formula, value, refusal ?? 'the formula cannot be read');
    return [calls.length > 0 ? fixed : { ...fixed, role: 'text' }];
  }
  if (calls[0] === tree) return wholeCell(conversion, sheet, at, formula, tree);
  return [
    calls.length === 0 && !/ENCL\./i.test(withoutTexts(formula))
      ? nativeCell(conversion, sheet, at, formula, tree, value, cell)
      : partOfCell(conversion, sheet, at, formula, tree, calls, value, cell),
  ];
}

function plainValue({ findings }: Conversion, sheet: string, at: string, value: Cell | null): Cell {
  if (typeof value !== 'string') return value ?? '';
  const clean = cellText(value);
  if (clean !== value && clean !== value.replace(/\r\n?/g, '\n'))
    findings.push({
      sheet,
      at,
      what: 'changed',
      words: clean.endsWith('[cut]')
        ? `the text has ${value.length} characters and was cut`
        : 'characters that deceive or control were taken out of the text',
    });
  return clean;
}

function noteUse({ used }: Conversion, node: FormulaNode): void {
  const id = ownFunction(node);
  if (id !== undefined && CARDS.has(id)) used.add(id);
}
