// Calls of ours inside other formulas.
import type { Cell } from '../../../core/kinds';
import { CARDS } from '../../../registry';
import {
  calledName,
  type FormulaNode,
  LONGEST_FORMULA,
  outermostCalls,
  ownFunction,
  type Replacement,
  rewritten,
  withoutTexts,
  walk,
} from '../../../sheet/formula';
import type { PlanCell } from '../../../sheet/plan';
import { isRows, type SourceCell } from '../../../sheet/workbook-values';
import { unfollowed } from '../arguments/expression';
import { block } from '../calls/block';
import { tableBlock } from '../calls/tables/table-site';
import { TABLE_CALLS } from '../calls/tables/table-calls';
import type { CallBlock } from '../calls/call-site';
import { contextOf } from '../context';
import type { Conversion } from '../conversion';
import { digitsOf } from '../digits';
import { checkBlock, CHECKS } from '../joint/joint-check';
import { frozen } from '../frozen';
import { quoted } from '../inputs';
import { asValue, valued } from './cell-value';
import { sizeOf } from './size-of-call';
import { noteForeign, spillReplacements } from './native-cell';

/** Works out the calls inside the arguments first, so that the outer one can point at their results. */
export function worked(conversion: Conversion, sheet: string, at: string, formula: string, node: FormulaNode): CallBlock | undefined {
  const inner = new Map<FormulaNode, string>();
  for (const argument of node.arguments ?? []) {
    for (const nested of outermostCalls(argument)) {
      const result = worked(conversion, sheet, at, formula, nested);
      if (result === undefined) return undefined;
      inner.set(nested, asReference(result));
    }
  }
  const card = CARDS.get(ownFunction(node) ?? '');
  if (card?.id === 'JOINT.VALUE') {
    const value = conversion.joints.value({ sheet, at, node });
    return value?.formula === undefined ? undefined : { cells: [value.formula], values: [value.value], live: true };
  }
  if (card === undefined) return undefined;
  const site = { card, node, formula, sheet, at };
  if (card.id in CHECKS) return checkBlock(conversion, site);
  const table = TABLE_CALLS[card.id];
  const context = contextOf(conversion, inner);
  return table === undefined ? block(context, conversion.steps, site) : tableBlock(context, conversion.steps, site, table);
}

/** A row of results stands in one column on Steps, so it is named as a range only by one cell or all of them. */
const asReference = ({ cells, range }: CallBlock): string =>
  range ?? (cells.length === 1 ? (cells[0] as string) : `${cells[0]}:${(cells[cells.length - 1] as string).split('!')[1]}`);

export function partOfCell(
  conversion: Conversion,
  sheet: string,
  at: string,
  formula: string,
  tree: FormulaNode,
  calls: readonly FormulaNode[],
  value: Cell | undefined,
  { array }: SourceCell,
): PlanCell {
  const { said } = conversion;
  const names = calls.map(ownFunction).join(', ');
  const fixed = (why: string): PlanCell => {
    const lost = calls.map(call => unfollowed(call, conversion.source, sheet)).find(name => name !== undefined);
    const cell = asValue(conversion, sheet, at, formula, value, lost === undefined ? why : `${why}: ${said.notFollowed(lost)}`);
    const shown = value === undefined ? undefined : frozen(conversion, undefined, tree, sheet, at)(value);
    return { ...cell, ...(shown === undefined ? {} : { formula: `=${shown}` }), ...(value === undefined ? {} : digitsOf(value)) };
  };
  const replacements = spillReplacements(conversion, sheet, tree);
  if (replacements === undefined || calls.length === 0) return fixed(said.notTakenApart);
  let isLive = false;
  for (const call of calls) {
    const result =
      isRows(conversion.source.evaluate(call, sheet)) && !isIndexed(tree, call) && TABLE_CALLS[ownFunction(call) ?? ''] === undefined
        ? undefined
        : worked(conversion, sheet, at, formula, call);
    if (result === undefined) return fixed(said.inside(names));
    const placed = replacement(conversion, sheet, tree, call, result);
    if (placed === undefined) return fixed(said.inside(names));
    replacements.push(placed);
    isLive ||= result.live;
  }
  const plain = rewritten(formula, [0, formula.length], replacements);
  if (plain.length > LONGEST_FORMULA || /ENCL\./i.test(withoutTexts(plain))) return fixed(said.insideTooLong(names));
  noteForeign(conversion, sheet, at, plain);
  conversion.findings.push({ sheet, at, what: isLive ? 'live' : 'value, not live', words: said.inside(names), values: 1 });
  if (isLive && value !== undefined)
    conversion.results.push({
      sheet,
      at,
      value,
      unit: '',
      ...(isRounded(tree, calls) && { ...sizeOf(conversion, sheet, calls[0] as FormulaNode), unit: unitOfCall(calls[0]) }),
    });
  return {
    at,
    role: 'result',
    formula: plain,
    ...valued(value),
    ...(value === undefined ? {} : digitsOf(value)),
    ...(array && { array }),
    ...(!isLive && { isFixed: true as const }),
  };
}

/** One call, rounded: still the size that the call gives. */
const isRounded = (tree: FormulaNode, calls: readonly FormulaNode[]): boolean =>
  calls.length === 1 && /^(ROUND|ROUNDUP|ROUNDDOWN|MROUND|CEILING|FLOOR)$/.test(calledName(tree) ?? '') && tree.arguments?.[0] === calls[0];

function unitOfCall(call: FormulaNode | undefined): string {
  const result = call && CARDS.get(ownFunction(call) ?? '')?.result;
  return result?.shape === 'number' ? result.unit : '';
}

const parentOf = (tree: FormulaNode, call: FormulaNode): FormulaNode | undefined =>
  [...walk(tree)].find(node => node.arguments?.includes(call));

/** Functions that read a row of results whichever way it lies. */
const ANY_WAY = /^(MAX|MIN|SUM|SUMSQ|COUNT|AVERAGE)$/;

/** A table inside another formula stays whole where one value of it is asked for, or its order does not matter. */
function isIndexed(tree: FormulaNode, call: FormulaNode): boolean {
  const parent = parentOf(tree, call);
  const name = (parent && calledName(parent)) ?? '';
  const [rows, first, second] = parent?.arguments ?? [];
  return (name === 'INDEX' && rows === call && typeof (second ?? first)?.value === 'number') || ANY_WAY.test(name);
}

/**
 * INDEX(call, row, column) around results that do not lie as the call shows them becomes the cell itself. Undefined where there is
 * none, or the results are asked for as a range that they are not.
 */
function replacement(
  { source }: Conversion,
  sheet: string,
  tree: FormulaNode,
  call: FormulaNode,
  result: CallBlock,
): Replacement | undefined {
  const parent = parentOf(tree, call);
  if (result.range !== undefined || result.cells.length === 1) return { loc: call.loc, text: asReference(result) };
  if (parent === undefined || calledName(parent) !== 'INDEX') {
    return result.cells.some(cell => cell.startsWith('"')) ? undefined : { loc: call.loc, text: asReference(result) };
  }
  const rows = source.evaluate(call, sheet);
  const [, row, column] = parent.arguments ?? [];
  const [r, c] = [column === undefined || column === null ? 1 : Number(row?.value ?? 1), Number((column ?? row)?.value)];
  const width = isRows(rows) ? (rows[0]?.length ?? 1) : 1;
  const titles = isRows(rows) ? rows.length - result.cells.length / width : 0;
  const title = r <= titles && isRows(rows) ? rows[r - 1]?.[c - 1] : undefined;
  const text = typeof title === 'string' ? quoted(title) : result.cells[(r - 1 - titles) * width + c - 1];
  return text === undefined ? undefined : { loc: parent.loc, text };
}
