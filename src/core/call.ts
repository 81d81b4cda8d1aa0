// The one path of a call: read, limits, formula, finite check, answer.
import type { Calculation, PrecedingArguments, Param, Result } from './card';
import type { Answer, Cell } from './kinds';
import { asList, isBlank, usedLength } from './read/cells';
import { isList } from './read/lists';
import { isItself, readArgument } from './read/params';
import { checkRelation } from './read/relation';
import { Refused, asRefusal, wrongInput } from './refuse';

/** A result larger than this is refused with its size. */
export const MAX_CELLS = 20_000;

/** What a call gives: a cell or a rectangle of cells, or a refusal. */
export type Outcome = Answer<Cell | Cell[][]>;

export function callCard(card: Calculation, args: readonly unknown[]): Outcome {
  try {
    const values = readArguments(card, args);
    return {
      ok: true,
      value: finished(
        card.result,
        card.refusesFirst ? naming(card.params[0]?.name ?? '', () => applied(card, values)) : applied(card, values),
      ),
    };
  } catch (fault) {
    if (fault instanceof Refused) return asRefusal(fault);
    throw fault;
  }
}

/** The formula on values that were read; its limits were checked with them. Throws Refused. */
export function applied(card: Calculation, values: readonly unknown[]): unknown {
  // the card ties the types of its parameters to those of its formula
  const formula = card.formula as (...args: readonly unknown[]) => unknown;
  // a call that knows how many it hands over is the faster one
  switch (values.length) {
    case 1:
      return formula(values[0]);
    case 2:
      return formula(values[0], values[1]);
    case 3:
      return formula(values[0], values[1], values[2]);
    case 4:
      return formula(values[0], values[1], values[2], values[3]);
    default:
      return formula(...values);
  }
}

/** Raw arguments to core values, in the order of the card. Throws Refused. */
export function readArguments({ params }: Calculation, args: readonly unknown[]): unknown[] {
  // as long as it will be: one that grows is laid out anew on the way
  const values = new Array<unknown>(params.length);
  for (let i = 0; i < params.length; i++) {
    const raw = args[i];
    if (!isItself(params[i] as Param, raw)) return readFrom(i, params, args, values);
    values[i] = raw;
  }
  return values;
}

/** From the first argument that is no plain number. */
function readFrom(first: number, params: readonly Param[], args: readonly unknown[], values: unknown[]): unknown[] {
  const lists = args.some(Array.isArray) ? equalLists(params, args) : undefined;
  const preceding: PrecedingArguments = { get: name => values[params.findIndex(param => param.name === name)] };
  for (let i = first; i < params.length; i++) {
    const param = params[i] as Param;
    values[i] = lists === undefined ? readArgument(param, args[i], preceding) : readBesideLists(param, args[i], preceding, lists, params);
  }
  params.forEach(({ name, kind, relation }, i) => {
    if (relation !== undefined && kind.shape === 'list') naming(name, () => checkRelation(relation, values[i], preceding));
  });
  return values;
}

/** One value beside lists of its group stands for every row. */
function readBesideLists(
  param: Param,
  raw: unknown,
  preceding: PrecedingArguments,
  lists: ReadonlyMap<string, unknown>,
  params: readonly Param[],
): unknown {
  const value = readArgument(param, lists.has(param.name) ? lists.get(param.name) : raw, preceding);
  const { kind } = param;
  if (!isList(kind) || value === undefined) return value;
  const rows = longest(params, lists, param.group);
  return rows > 1 && kind.count(value) === 1 ? kind.repeat(value, rows) : value;
}

/** Trims rows that are empty in every list of a group, and refuses lists of unequal length. */
function equalLists(params: readonly Param[], args: readonly unknown[]): Map<string, unknown> {
  const lists = new Map<string, unknown>();
  const groups = new Map<string | undefined, { name: string; raw: unknown; param: Param }[]>();
  params.forEach((param, i) => {
    if (param.kind.shape !== 'list' || !Array.isArray(args[i])) return;
    const group = groups.get(param.group) ?? [];
    group.push({ name: param.name, raw: args[i], param });
    groups.set(param.group, group);
  });
  for (const group of groups.values()) {
    const used = group.map(({ raw, name }) => naming(name, () => usedLength(raw)));
    const rows = Math.max(...used);
    let first: { name: string; count: number } | undefined;
    for (const { name, raw } of group) {
      const list = asList(raw).slice(0, rows);
      // nothing in it, or one blank cell: as if that cell had been given
      lists.set(name, list.length <= 1 && list.every(isBlank) ? asList(raw)[0] : list.map(entry => [entry]));
      if (list.length <= 1) continue;
      if (first !== undefined && first.count !== list.length) {
        throw wrongInput(
          `${first.name} has ${first.count} rows and ${name} has ${list.length}; give equal counts, or one value for all`,
          name,
        );
      }
      first ??= { name, count: list.length };
    }
  }
  return lists;
}

function longest(params: readonly Param[], lists: ReadonlyMap<string, unknown>, group: string | undefined): number {
  const inGroup = params.filter(param => param.group === group && lists.has(param.name));
  return Math.max(0, ...inGroup.map(param => asList(lists.get(param.name)).length));
}

function naming<T>(name: string, work: () => T): T {
  try {
    return work();
  } catch (fault) {
    throw fault instanceof Refused && fault.argument === undefined ? new Refused(fault.code, `${name}: ${fault.message}`, name) : fault;
  }
}

/** A full rectangle of finite numbers and text, with the card's header row, or a refusal. */
function finished(shape: Result, result: unknown): Cell | Cell[][] {
  if (!Array.isArray(result)) return finishedCell(result);
  const rows = (Array.isArray(result[0]) ? result : [result]) as unknown[][];
  const header: Cell[][] =
    shape.shape === 'table' && shape.columns.length > 0 ? [shape.columns.map(({ name, unit }) => withUnit(name, unit))] : [];
  refuseTooLarge((header.length + rows.length) * (rows[0]?.length ?? 0));
  const finishedRows: Cell[][] = header;
  for (const row of rows) finishedRows.push(row.every(isFinished) ? row.slice() : row.map(finishedCell));
  return finishedRows;
}

export function refuseTooLarge(cells: number): void {
  if (cells > MAX_CELLS) throw wrongInput(`the result has ${cells} cells; at most ${MAX_CELLS} are given`);
}

/** How a header names a quantity: `engagement (mm)`. */
export const withUnit = (name: string, unit: string): string => (unit === '' ? name : `${name} (${unit})`);

/** What can stand in its cell as it is. */
const isFinished = (value: unknown): value is Cell =>
  typeof value === 'number' ? value - value === 0 && !Object.is(value, -0) : typeof value === 'string' || typeof value === 'boolean';

function finishedCell(value: unknown): Cell {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw wrongInput('no finite result for these inputs');
    return value === 0 ? 0 : value;
  }
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  throw new TypeError(`not a cell: ${String(value)}`);
}
