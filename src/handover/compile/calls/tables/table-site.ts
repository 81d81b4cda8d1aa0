// A call that gives a table, where it stands: its bound arguments on the Steps sheet, its rows on the sheet of tables.
import type { Card, Param } from '../../../../core/card';
import { readArguments } from '../../../../core/call';
import type { Cell } from '../../../../core/kinds';
import { formCalled } from '../../../../plain/forms';
import { type CellFormula, type Ref, type Scalar, spreadsheetFormulas, spreadsheetRef } from '../../../../plain/spreadsheet';
import { call } from '../../../../registry';
import { isRows, type Known } from '../../../../sheet/workbook-values';
import type { Argument, BoundArgument } from '../../arguments/argument';
import { unfollowed } from '../../arguments/expression';
import type { ConversionContext } from '../../context';
import { blockTitle } from '../../labels';
import { relations } from '../../relations';
import { STAND_IN } from '../../step-block';
import type { Steps } from '../../steps';
import { MOST_LISTED } from '../block';
import { boundArguments, inLimits } from '../call-formulas';
import type { CallBlock, CallSite } from '../call-site';

export interface TableSite {
  readonly context: ConversionContext;
  readonly card: Card;
  readonly title: string;
  readonly args: readonly Argument[];
  /** The arguments as the function reads them. */
  readonly values: readonly unknown[];
  /** What it gives, its header left out. */
  readonly body: readonly (readonly Cell[])[];
  readonly header: readonly string[];
  /** What else must hold. */
  readonly fixed?: readonly string[];
}

export interface BoundTable {
  readonly refs: readonly Ref[];
  readonly live: boolean;
  /** A formula that holds while the inputs are in limits; a text is not checked where they are not. */
  guarded(formula: string, value: Cell): string;
}

export type Bind = (param: Param, i: number) => BoundArgument | undefined;

/** The call as `write` writes it. Undefined where its arguments cannot be followed here, and then nothing is left of it. */
export function tableBlock(
  context: ConversionContext,
  steps: Steps,
  { card, node, formula, sheet, at }: CallSite,
  write: (site: TableSite) => CallBlock | undefined,
): CallBlock | undefined {
  // a text that stands for a step, typed by a stranger
  if (formula.includes(STAND_IN)) return undefined;
  const preceding = new Map<string, Ref>();
  const args = card.params.map((_, i): Argument => ({ node: node.arguments?.[i] ?? null, formula, sheet, preceding }));
  const raws: readonly Known[] = args.map(arg => context.source.evaluate(arg.node, sheet));
  if (raws.includes(undefined) || args.some(arg => unfollowed(arg.node, context.source, sheet) !== undefined)) return undefined;
  if (raws.some(raw => isRows(raw) && raw.length * (raw[0]?.length ?? 0) > MOST_LISTED)) return undefined;
  const answer = call(card.id, raws);
  if (!answer.ok) return undefined;
  const rows = isRows(answer.value) ? answer.value : [[answer.value]];
  const hasHeader = card.result.shape === 'table';
  const tables = context.tables.mark();
  const title = blockTitle(context.source, sheet, at, card.id);
  const made = write({
    context,
    card,
    title,
    args,
    values: readArguments(card, raws),
    body: (hasHeader ? rows.slice(1) : rows) as readonly (readonly Cell[])[],
    header: hasHeader ? (rows[0] ?? []).map(String) : [],
  });
  const placed = made === undefined || context.tables.hasTooLong(tables) ? undefined : steps.write(title, context.steps);
  if (made === undefined || placed === undefined) {
    context.tables.backTo(tables);
    return undefined;
  }
  context.tables.place(tables, placed);
  return { ...made, cells: made.cells.map(placed), ...(made.range !== undefined && { range: placed(made.range) }) };
}

/** Its arguments as cells, and the one that says whether they are in limits. */
export function boundTable(
  { context, card, args, values, fixed = [] }: TableSite,
  needed: ReadonlySet<string>,
  of?: Bind,
): BoundTable | undefined {
  const bound = boundArguments(context, card, args, values, needed, of);
  if (bound === undefined) return undefined;
  const refs = bound.map(({ ref }) => ref);
  const conditions = [...new Set([...fixed, ...bound.flatMap(one => one.conditions), ...relations(card, refs)])];
  const ok = inLimits(context, conditions);
  return {
    refs,
    live: bound.some(({ live }) => live),
    guarded: (formula, value) =>
      ok === undefined ? formula : `IF(${ok},${formula},${typeof value === 'string' ? '"not checked"' : 'NA()'})`,
  };
}

/** A formula by its name on these references, as one value. */
export const printedRef = (name: string, ...refs: readonly Ref[]): Scalar => spreadsheetRef(formCalled(name), refs) as Scalar;

/** A formula by its name that gives a row. */
export const printedRow = (name: string, ...refs: readonly Ref[]): readonly CellFormula[] =>
  spreadsheetFormulas(formCalled(name), refs) as readonly CellFormula[];

/** Entry i of a list, or of the lists that a record has. */
export function entryOf(ref: Ref, i: number): Ref {
  if ('items' in ref) return ref.items[i] as Ref;
  if ('parts' in ref) return { parts: Object.fromEntries(Object.entries(ref.parts).map(([key, part]) => [key, entryOf(part, i)])) };
  throw new TypeError('no list');
}
