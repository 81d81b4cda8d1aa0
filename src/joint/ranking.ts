// Tables of variants: their ranking, and those that no other one beats.
import { isState, type State } from '../core/check/check';
import type { Cell, CellRange } from '../core/kinds';
import { LIMIT_MARGIN } from '../core/maths';
import { isBlank, isCellError } from '../core/read/cells';
import { readAnyQuantity } from '../core/read/read-quantity';
import { codeOf, errorWords, Refused, wrongInput } from '../core/refuse';

export type Direction = 'max' | 'min';

const BEGINS_LIKE_A_NUMBER = /^[\s+\-−]*\d/;
const finite = (number: number): number | undefined => (Number.isFinite(number) ? number : undefined);

/** The numbers of each variant; a row with anything else, a header say, has none. A bare 0 is a blank, a true zero has its unit. */
function numbersOf(table: CellRange, rows: number): (readonly number[] | undefined)[] {
  return table.slice(0, rows).map((row, i) => {
    const numbers = row.map((cell, j) => {
      if (isCellError(cell)) throw new Refused(codeOf(cell), `table row ${i + 1}, column ${j + 1}, ${errorWords(cell)}`, 'table');
      if (isBlank(cell)) return undefined;
      return typeof cell === 'number'
        ? finite(cell)
        : typeof cell === 'string' && BEGINS_LIKE_A_NUMBER.test(cell)
          ? readAnyQuantity(cell)?.value
          : undefined;
    });
    return numbers.every((number): number is number => number !== undefined) ? numbers : undefined;
  });
}

/** Up to the last row that is not blank. */
const usedRows = (cells: CellRange): number => 1 + cells.reduce((last, row, i) => (row.every(isBlank) ? last : i), -1);

function rowsOf(table: CellRange): number {
  const rows = usedRows(table);
  if (rows === 0) throw wrongInput('table is blank; give one row per variant', 'table');
  return rows;
}

/** One entry a column of the table. */
function perColumn<T>(table: CellRange, list: readonly T[], argument: string): readonly T[] {
  const columns = table[0]?.length ?? 0;
  if (list.length === columns) return list;
  const only = list[0] as T;
  if (list.length === 1) return Array.from({ length: columns }, () => only);
  throw wrongInput(
    `table has ${columns} columns and ${argument} has ${list.length} entries; give one for each column, or one for all`,
    argument,
  );
}

/** Every column turned so that more is better. */
function turned(table: CellRange, rows: number, directions: readonly Direction[]): (readonly number[] | undefined)[] {
  const signs = perColumn(table, directions, 'directions').map(direction => (direction === 'max' ? 1 : -1));
  return numbersOf(table, rows).map(row => row?.map((value, j) => value * (signs[j] as number)));
}

/** 0 at the worst value of a column, 1 at its best; a column that says nothing is 1 throughout. */
function scores(goods: readonly (readonly number[] | undefined)[], weights: readonly number[]): (number | undefined)[] {
  const compared = goods.filter(row => row !== undefined);
  const columns = weights.map((weight, j) => {
    const values = compared.map(row => row[j] as number);
    const worst = values.reduce((a, b) => Math.min(a, b), Infinity);
    return { weight, worst, range: values.reduce((a, b) => Math.max(a, b), -Infinity) - worst };
  });
  return goods.map(
    row =>
      row &&
      columns.reduce((total, { weight, worst, range }, j) => total + weight * (range === 0 ? 1 : ((row[j] as number) - worst) / range), 0),
  );
}

/** What passes or is to be looked at comes first, then what was not checked, then what fails. */
const TIER: Readonly<Record<State, number>> = { pass: 0, review: 0, 'not checked': 1, fail: 2 };

function tierOf(cell: unknown): number {
  const word = typeof cell === 'string' ? cell.trim().toLowerCase() : undefined;
  return TIER[isState(word) ? word : 'not checked'];
}

/** One state for each row of the table, or one for all. */
function tiers(states: CellRange, table: CellRange): number[] {
  const list = states.flat();
  const used = usedRows(list.map(state => [state]));
  if (list.length > 1 && (used > table.length || list.length < rowsOf(table)))
    throw wrongInput(`table has ${table.length} rows and states has ${list.length}; give one for each row, or one for all`, 'states');
  return table.map((_, i) => tierOf(list.length === 1 ? list[0] : list[i]));
}

export function variantRanks(
  table: CellRange,
  directions: readonly Direction[],
  weights: readonly number[],
  states: CellRange | undefined,
): Cell[][] {
  const rows = rowsOf(table);
  const tier = states === undefined ? [] : tiers(states, table);
  const score = scores(turned(table, rows, directions), perColumn(table, weights, 'weights'));
  const order = score
    .flatMap((value, i) => (value === undefined ? [] : [{ i, tier: tier[i] ?? 0, value }]))
    .sort((a, b) => a.tier - b.tier || b.value - a.value);
  const ranks: Cell[][] = score.map(() => ['–']);
  let rank = 1;
  order.forEach((variant, place) => {
    const before = order[place - 1];
    if (before === undefined || before.tier !== variant.tier || before.value - variant.value > LIMIT_MARGIN) rank = place + 1;
    ranks[variant.i] = [rank];
  });
  return ranks;
}

const beats = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, j) => value >= (b[j] as number) - LIMIT_MARGIN) && a.some((value, j) => value > (b[j] as number) + LIMIT_MARGIN);

export function variantFront(table: CellRange, directions: readonly Direction[]): Cell[][] {
  const goods = turned(table, rowsOf(table), directions);
  const compared = goods.filter(row => row !== undefined);
  return goods.map(row => [row === undefined ? '–' : !compared.some(other => beats(other, row))]);
}
