// One cell of the user as the cells that take its place.
import type { Cell } from '../../../core/kinds';
import { CARDS } from '../../../registry';
import { cellText } from '../../../sheet/cell-text';
import { type FormulaNode, outermostCalls, ownFunction, parseFormula, walk, withoutTexts } from '../../../sheet/formula';
import type { PlanCell } from '../../../sheet/plan';
import type { Unfollowed } from '../../read/prepared';
import type { Conversion } from '../conversion';
import { cellOf, asValue, valued } from './cell-value';
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
  const { why, staysBehind = false } = refusalOf(conversion, sheet, at) ?? {};
  const calls = tree === undefined ? [] : outermostCalls(tree);
  for (const call of calls) for (const part of walk(call)) noteUse(conversion, part);
  const isOurs = calls.length > 0 || /ENCL\./i.test(withoutTexts(formula));
  if (tree === undefined || why !== undefined) {
    const words = why?.(conversion.said) ?? conversion.said.unread;
    if (!isOurs && !staysBehind) return [keptUnread(conversion, sheet, at, value, words)];
    return [asValue(conversion, sheet, at, formula, value, words)];
  }
  if (calls[0] === tree) return wholeCell(conversion, sheet, at, formula, tree);
  return [
    isOurs
      ? partOfCell(conversion, sheet, at, formula, tree, calls, value, cell)
      : nativeCell(conversion, sheet, at, formula, tree, value, cell),
  ];
}

function refusalOf({ refused, crowded, source }: Conversion, sheet: string, at: string): Unfollowed | undefined {
  const refusal = refused.get(`${sheet}!${at}`);
  if (refusal !== undefined) return refusal;
  const filled = crowded.get(`${sheet}!${at}`);
  if (filled !== undefined) return { why: said => said.noRoom(filled), staysBehind: false };
  return source.isCircular(sheet, at) ? { why: said => said.circular, staysBehind: false } : undefined;
}

/** A formula of the user that nothing here can follow stays, with the value that the workbook had. */
function keptUnread(conversion: Conversion, sheet: string, at: string, value: Cell | undefined, why: string): PlanCell {
  conversion.kept.add(`${sheet}!${at}`);
  conversion.findings.push({ sheet, at, what: 'not worked out here', words: `${why}: ${conversion.said.formulaStays}` });
  return { at, role: 'text', ...valued(value) };
}

function plainValue({ findings, said }: Conversion, sheet: string, at: string, value: Cell | null): Cell {
  if (typeof value !== 'string') return value ?? '';
  const clean = cellText(value);
  if (clean !== value && clean !== value.replace(/\r\n?/g, '\n'))
    findings.push({
      sheet,
      at,
      what: 'changed',
      words: clean.endsWith('[cut]') ? said.textCut(value.length) : said.charactersTaken,
    });
  return clean;
}

function noteUse({ used }: Conversion, node: FormulaNode): void {
  const id = ownFunction(node);
  if (id !== undefined && CARDS.has(id)) used.add(id);
}
