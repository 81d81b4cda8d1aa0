// An argument that is an expression, as it goes to a step: on the cells of the user's sheets, in functions that every program has.
import { address, fixedArea, fixedCell, isOneCell } from '../../../sheet/addresses';
import { areaOf, beamOf, fixedBeam, type FormulaNode, calledName, ownFunction, partsIn, rewritten, walk } from '../../../sheet/formula';
import { isRows, type WorkbookValues } from '../../../sheet/workbook-values';
import { isPlain, storedName, TRANSLATED } from '../allowed';
import type { ConversionContext } from '../context';
import type { Argument } from './argument';

/** Cells that a formula reaches without naming them, or values that change by themselves: nothing says when they are others. */
const UNSEEN = /^(OFFSET|INDIRECT|NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|CELL|INFO|GETPIVOTDATA)$/;

export const reachesUnseen = (tree: FormulaNode): boolean => [...walk(tree)].some(node => UNSEEN.test(calledName(node) ?? ''));

/** The first thing in a formula, calls of ours left out, that does not go along as a step. */
export function unfollowed(tree: FormulaNode | null, source: WorkbookValues, sheet: string): string | undefined {
  for (const node of walk(tree)) {
    const name = calledName(node);
    if (name !== undefined && ownFunction(node) === undefined && !isPlain(name) && !(TRANSLATED.has(name) && isTranslatable(node)))
      return name;
    if (node.type === 'LetExpression') return 'LET';
    if (node.type === 'LambdaExpression') return 'LAMBDA';
    if (node.operator === '#' && spillArea(node, source, sheet) === undefined) return '#';
  }
  return undefined;
}

/** XLOOKUP that looks for the same, from the first; CEILING.MATH and FLOOR.MATH with a step and no mode. */
function isTranslatable(node: FormulaNode): boolean {
  const args = node.arguments ?? [];
  if (calledName(node) !== 'XLOOKUP') return args.length === 2;
  const [, , , , how = null, order = null] = args;
  return (how === null || how.value === 0) && (order === null || order.value === 1);
}

function spillArea(node: FormulaNode, source: WorkbookValues, sheet: string): string | undefined {
  const [of = null] = node.arguments ?? [];
  const area = of === null ? undefined : areaOf(of, sheet);
  const rows = area === undefined ? undefined : source.result(area.sheet, address(area.top, area.left));
  if (area === undefined || !isRows(rows)) return undefined;
  return fixedArea({ ...area, bottom: area.top + rows.length - 1, right: area.left + (rows[0]?.length ?? 1) - 1 });
}

/** The argument as an expression on the user's cells, nested calls replaced by their results. */
export function expression(context: Pick<ConversionContext, 'source' | 'inner'>, { node, formula, sheet }: Argument): string {
  if (node === null) return '0';
  const inner = context.inner.get(node);
  if (inner !== undefined) return inner;
  const area = areaOf(node, sheet);
  if (area !== undefined) return isOneCell(area) ? fixedCell(area.sheet, area.top, area.left) : fixedArea(area);
  const beam = beamOf(node, sheet);
  if (beam !== undefined) return fixedBeam(beam);
  const spilled = node.operator === '#' ? spillArea(node, context.source, sheet) : undefined;
  if (spilled !== undefined) return spilled;
  const textOf = (part: FormulaNode): string => expression(context, { node: part, formula, sheet, preceding: new Map() });
  const name = calledName(node);
  if (name === 'XLOOKUP') {
    const results = node.arguments?.[2] ?? null;
    const from = results === null ? undefined : areaOf(results, sheet);
    const isRow = from !== undefined && from.top === from.bottom;
    return indexed(
      (node.arguments ?? []).map(part => (part === null ? undefined : textOf(part))),
      isRow,
    );
  }
  const parts = partsIn(node).filter(part => part !== null);
  const called = node.callee?.name;
  return rewritten(formula, node.loc, [
    ...(name === undefined || called === undefined
      ? []
      : [{ loc: [node.loc[0], node.loc[0] + called.length] as const, text: storedName(name) }]),
    ...parts.map(part => ({ loc: part.loc, text: textOf(part) })),
  ]);
}

/** XLOOKUP in the functions that every program has. */
function indexed([value = '0', list = '', results = '', otherwise]: readonly (string | undefined)[], isRow: boolean): string {
  const position = `MATCH(${value},${list},0)`;
  // of a row some programs want the row's number too
  const found = `INDEX(${results},${isRow ? '1,' : ''}${position})`;
  return otherwise === undefined ? found : `IF(ISNUMBER(${position}),${found},${otherwise})`;
}

const JOINS = /^(CONCATENATE|CONCAT|TEXTJOIN)$/;

/** A text that is no cell and not typed, as a step of its own; a number in it keeps its point in every language. */
export function textStep(
  context: Pick<ConversionContext, 'source' | 'inner' | 'steps'>,
  argument: Argument,
  label: string,
): string | undefined {
  const { node, sheet } = argument;
  if (node === null || node.type === 'Literal' || areaOf(node, sheet) !== undefined) return undefined;
  const worth = context.source.evaluate(node, sheet);
  if (typeof worth !== 'string' || unfollowed(node, context.source, sheet) !== undefined) return undefined;
  const isJoined = [...walk(node)].some(part => part.operator === '&' || JOINS.test(calledName(part) ?? ''));
  const text = expression(context, argument);
  return context.steps.row({
    label,
    formula: isJoined && !worth.includes(',') ? `SUBSTITUTE(${text},",",".")` : text,
    value: worth,
    words: 'from other cells',
  });
}
