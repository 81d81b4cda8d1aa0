// A cell that is one call of ours, with all that the call spills.
import { unfollowed } from '../arguments/expression';
import { MOST_LISTED } from '../calls/block';
import { digitsOf } from '../digits';
import type { Card } from '../../../core/card';
import { formOfCard } from '../../../plain/forms';
import { call, CARDS } from '../../../registry';
import { address, cellPosition } from '../../../sheet/addresses';
import { cellText } from '../../../sheet/cell-text';
import { type FormulaNode, ownFunction } from '../../../sheet/formula';
import type { PlanCell } from '../../../sheet/plan';
import { isFault, isRows, type Known } from '../../../sheet/workbook-values';
import type { FindingWords } from '../../words/finding-words';
import type { Conversion } from '../conversion';
import { frozen, whileSent } from '../frozen';
import { LOOK_UPS } from '../lookups';
import { cellOf, fixedCell } from './cell-value';
import { worked } from './nested-calls';
import { sizeOf } from './size-of-call';

/** The values that a call spills: which of them stand under its header, and where each goes. */
interface SpilledCall {
  readonly header: readonly PlanCell[];
  readonly values: readonly Known[];
  readonly width: number;
  at(i: number): string;
}

function spillOf(id: string, result: Known, at: string): SpilledCall {
  const { row, column } = cellPosition(at);
  const rows = isRows(result) ? result : [[result]];
  const hasHeader = rows.length > 1 && CARDS.get(id)?.result.shape === 'table';
  const body = (hasHeader ? rows.slice(1) : rows) as readonly (readonly Known[])[];
  const width = body[0]?.length ?? 1;
  return {
    header: hasHeader
      ? (rows[0] ?? []).map((value, c): PlanCell => ({ at: address(row, column + c), role: 'header', value: cellOf(value) ?? '' }))
      : [],
    values: body.flat(),
    width,
    at: i => address(row + Math.floor(i / width) + (hasHeader ? 1 : 0), column + (i % width)),
  };
}

export function wholeCell(conversion: Conversion, sheet: string, at: string, formula: string, tree: FormulaNode): PlanCell[] {
  const id = ownFunction(tree) ?? '';
  const result = conversion.source.result(sheet, at);
  if (result === undefined || isFault(result)) return faultyCells(conversion, sheet, at, formula, tree);
  const table = isRows(result) && id === 'JOINT.TABLE' ? jointCells(conversion, sheet, at, tree, result) : undefined;
  return (
    table ??
    liveCells(conversion, sheet, at, formula, tree, spillOf(id, result, at)) ??
    fixedCells(conversion, sheet, at, formula, tree, spillOf(id, result, at))
  );
}

function faultyCells(conversion: Conversion, sheet: string, at: string, formula: string, tree: FormulaNode): PlanCell[] {
  const { source, findings, said } = conversion;
  const id = ownFunction(tree) ?? '';
  const worth = source.value(sheet, at);
  if (!isFault(worth) && worth !== undefined) return fixedCells(conversion, sheet, at, formula, tree, spillOf(id, worth, at));
  const answer = call(
    id,
    (tree.arguments ?? []).map(part => source.evaluate(part, sheet)),
  );
  const words = isFault(worth)
    ? `${said.gave(id, worth.cellError)}${answer.ok ? '' : `: ${answer.message}`}`
    : `${id}: ${said.inputsNotKnown}`;
  findings.push({ sheet, at, what: 'error', words, values: 1 });
  return [fixedCell(conversion, { at, role: 'result', value: cellOf(worth) ?? '' }, formula)];
}

function liveCells(
  conversion: Conversion,
  sheet: string,
  at: string,
  formula: string,
  tree: FormulaNode,
  spill: SpilledCall,
): PlanCell[] | undefined {
  const id = ownFunction(tree) ?? '';
  const made = worked(conversion, sheet, at, formula, tree);
  if (made === undefined || made.cells.length !== spill.values.length) return undefined;
  conversion.findings.push({
    sheet,
    at,
    what: made.live ? 'live' : 'value, not live',
    words: made.live ? id : `${id}: ${conversion.said.inputsAreTexts}`,
    values: spill.values.length,
  });
  const cells = made.cells.map((cell, i): PlanCell => {
    const value = made.values?.[i] ?? cellOf(spill.values[i]) ?? '';
    if (cell.startsWith('"')) return { at: spill.at(i), role: 'label', value };
    const { unit, name } = columnOf(id, i % spill.width);
    if (made.live)
      conversion.results.push({
        sheet,
        at: spill.at(i),
        value,
        unit,
        ...(spill.values.length > 1 ? { name } : sizeOf(conversion, sheet, tree)),
      });
    return {
      at: spill.at(i),
      role: 'result',
      formula: `=${cell}`,
      value,
      ...digitsOf(value),
      ...(!made.live && { isFixed: true as const }),
    };
  });
  return [...spill.header, ...cells];
}

function whyFixed({ source, said }: Conversion, card: Card | undefined, tree: FormulaNode, sheet: string): string {
  const name = unfollowed(tree, source, sheet);
  if (name !== undefined) return said.notFollowed(name);
  const most = (tree.arguments ?? []).reduce((count, part) => Math.max(count, countOf(source.evaluate(part, sheet))), 0);
  if (card !== undefined && formOfCard(card.id) !== undefined && most > MOST_LISTED) return said.longList(most, MOST_LISTED);
  if (card?.notLive !== undefined) return said.notLive(card.notLive);
  if (card?.id === 'JOINT.TABLE') return said.onlyPlainRanges;
  return card !== undefined && (formOfCard(card.id) !== undefined || card.id in LOOK_UPS) ? said.inputsNotFollowed : said.noPlainFormula;
}

const countOf = (value: Known): number => (isRows(value) ? value.length * (value[0]?.length ?? 0) : 1);

function fixedCells(conversion: Conversion, sheet: string, at: string, formula: string, tree: FormulaNode, spill: SpilledCall): PlanCell[] {
  const card = CARDS.get(ownFunction(tree) ?? '');
  conversion.findings.push({
    sheet,
    at,
    what: 'value, not live',
    words: `${card?.id ?? ''}: ${whyFixed(conversion, card, tree, sheet)}`,
    values: spill.values.length,
  });
  const formulaOf = frozen(conversion, card, tree, sheet, at);
  const kept = (cell: PlanCell): PlanCell => {
    const shown = formulaOf(cell.value ?? '');
    return { ...cell, ...digitsOf(cell.value), ...(shown === undefined ? {} : { formula: `=${shown}` }) };
  };
  const cells = spill.values.map((item, i) => kept({ at: spill.at(i), role: 'result', value: cellOf(item) ?? '' }));
  // a first row that the arguments decide stands for them as the rows below it do
  const header = card !== undefined && 'columns' in card.result && card.result.columns.length === 0 ? spill.header.map(kept) : spill.header;
  return [...header, ...cells].map((cell, i) => (i === 0 ? fixedCell(conversion, cell, formula) : { ...cell, isFixed: true }));
}

function columnOf(id: string, column: number): { readonly name: string; readonly unit: string } {
  const result = CARDS.get(id)?.result;
  if (result === undefined || result.shape === 'text') return { name: '', unit: '' };
  return 'columns' in result ? (result.columns[column] ?? { name: '', unit: '' }) : result;
}

function jointCells(
  conversion: Conversion,
  sheet: string,
  at: string,
  tree: FormulaNode,
  rows: readonly (readonly unknown[])[],
): PlanCell[] | undefined {
  const { said } = conversion;
  const table = conversion.joints.table({ sheet, at, node: tree });
  if (table === undefined) return undefined;
  const { row, column } = cellPosition(at);
  let live = 0;
  let fixed = 0;
  const without = new Map<number, string[]>();
  const untrue = new Map<number, string[]>();
  const cells = rows.flatMap((line, r) =>
    line.map((_, c): PlanCell => {
      const place = address(row + r, column + c);
      const sent = table.sentIf(r);
      if (sent !== undefined) {
        untrue.set(row + r + 1, [said.allAsSent]);
        fixed += 1;
        const shown = cellOf(line[c] as Known) ?? '';
        const kept = whileSent(sent, shown);
        return {
          at: place,
          role: 'result',
          value: shown,
          isFixed: true,
          ...digitsOf(shown),
          ...(kept === undefined ? {} : { formula: `=${kept}` }),
        };
      }
      const { name, formula, value, unit, lower, upper } = table.cell(r, c);
      if (r === 0) return { at: place, role: 'header', value };
      if (formula === undefined) {
        fixed += 1;
        without.set(row + r + 1, [...(without.get(row + r + 1) ?? []), name]);
        return { at: place, role: 'result', isFixed: true, value: typeof value === 'string' ? cellText(value) : value };
      }
      live += 1;
      conversion.results.push({
        sheet,
        at: place,
        value,
        unit,
        name,
        ...(lower === undefined ? {} : { lower }),
        ...(upper === undefined ? {} : { upper }),
      });
      return { at: place, role: 'result', formula: `=${formula}`, value, ...digitsOf(value) };
    }),
  );
  conversion.findings.push({ sheet, at, what: 'live', words: `JOINT.TABLE: ${said.seeSheet(table.sheet)}`, values: live });
  if (fixed > 0)
    conversion.findings.push({
      sheet,
      at,
      what: 'value, not live',
      words: `JOINT.TABLE: ${said.withoutValue}: ${namedRows(new Map([...without, ...untrue]), said)}`,
      values: fixed,
    });
  return cells;
}

/** So many rows are named; the rest is counted. */
const MOST_ROWS = 8;

function namedRows(outputs: ReadonlyMap<number, readonly string[]>, said: FindingWords): string {
  const named = [...outputs].slice(0, MOST_ROWS).map(([row, names]) => `${said.row(row)} (${names.join(', ')})`);
  const left = outputs.size - named.length;
  return `${named.join('; ')}${left > 0 ? `; ${said.moreRows(left)}` : ''}`;
}
