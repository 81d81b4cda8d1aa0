// The functions of ordinary sheets that look something up: undefined where programs differ.
import type { Cell, CellError } from '../core/kinds';
import { isFault, type Known, type KnownRows, NO_CELL, NOT_FOUND, type One, rowsOf, scalar, withNumbers } from './known';
import { ordered } from './operators';

const WILD = /[*?~]/;

/** Texts that every program puts in the same order. */
const PLAIN_TEXT = /^[a-z0-9. ]*$/i;

/** As a search through a sorted list needs it: numbers, or plain texts in small letters. */
function sortedKeys(value: number | string, list: readonly One[]): readonly (number | string)[] | undefined {
  const keys = list.map(item => (typeof item === 'string' ? item.toLowerCase() : item));
  const isKey = (key: One): key is number | string => typeof key === typeof value && (typeof key !== 'string' || PLAIN_TEXT.test(key));
  return keys.every(isKey) ? keys : undefined;
}

/** Position of a value in a row or column, counted from 0. A number is never a text. */
function same(value: Cell, list: readonly One[]): number | CellError | undefined {
  if (typeof value === 'string' && WILD.test(value)) return undefined;
  const i = list.findIndex(
    item => item !== null && item !== undefined && !isFault(item) && typeof item === typeof value && ordered(item, value, '=') === 0,
  );
  return i < 0 ? NOT_FOUND : i;
}

const lastWhere = <T>(list: readonly T[], is: (item: T) => boolean): number =>
  list.reduce((last: number, item, n) => (is(item) ? n : last), -1);

/** The last one that is not above the value, of a list that rises; the last that is not below, of one that falls. */
function nearest(value: Cell, list: readonly One[], direction: 1 | -1): number | CellError | undefined {
  if (typeof value === 'boolean' || (typeof value === 'string' && !PLAIN_TEXT.test(value))) return undefined;
  const sought = typeof value === 'string' ? value.toLowerCase() : value;
  // blanks behind the last value are no part of the list
  const filled = list.slice(0, lastWhere(list, item => item !== null && item !== '') + 1);
  const keys = sortedKeys(value, filled);
  const order = (a: number | string, b: number | string): number => (a < b ? -direction : a > b ? direction : 0);
  if (keys === undefined || keys.some((key, n) => n > 0 && order(keys[n - 1] as typeof key, key) > 0)) return undefined;
  const i = lastWhere(keys, key => order(key, sought) <= 0);
  return i < 0 ? NOT_FOUND : i;
}

function found(value: One, list: readonly One[], how: 'same' | 1 | -1): number | CellError | undefined {
  if (value === undefined || isFault(value)) return value;
  if (value === null) return NOT_FOUND;
  return how === 'same' ? same(value, list) : nearest(value, list, how);
}

const line = (value: Known): readonly One[] | undefined => {
  const rows = rowsOf(value);
  return rows === undefined || (rows.length > 1 && (rows[0]?.length ?? 0) > 1) ? undefined : rows.flat();
};

/** A left-out flag behind a comma counts as 0. */
const isExact = (flag: Known): boolean => [false, 0, null].includes(scalar(flag) as boolean | number | null);

export function match([value, list, type = 1]: readonly Known[]): Known {
  const items = line(list);
  const how = isExact(type) ? 'same' : type === 1 || type === true ? 1 : type === -1 ? -1 : undefined;
  if (items === undefined || how === undefined) return undefined;
  const i = found(scalar(value), items, how);
  return typeof i === 'number' ? i + 1 : i;
}

export function index([table, first, second]: readonly Known[]): Known {
  const rows = rowsOf(table);
  if (isFault(table)) return table;
  if (rows === undefined) return undefined;
  return withNumbers([first, ...(second === undefined ? [] : [second])], (a = 0, b) => {
    const [row, column] = rows.length === 1 && b === undefined ? [1, Math.trunc(a)] : [Math.trunc(a), Math.trunc(b ?? 1)];
    if (row < 1 || column < 1) return undefined;
    const cells = rows[row - 1];
    return cells === undefined || column > cells.length ? NO_CELL : cells[column - 1];
  });
}

const transposed = (rows: KnownRows): KnownRows => (rows[0] ?? []).map((_, c) => rows.map(row => row[c] ?? null));

export function vlookup([value, table, column, flag = true]: readonly Known[]): Known {
  const rows = rowsOf(table);
  if (rows === undefined) return undefined;
  const i = found(
    scalar(value),
    rows.map(row => row[0]),
    isExact(flag) ? 'same' : 1,
  );
  return typeof i === 'number' ? index([rows, i + 1, column]) : i;
}

export function hlookup([value, table, row, flag]: readonly Known[]): Known {
  const rows = rowsOf(table);
  return rows === undefined ? undefined : vlookup([value, transposed(rows), row, ...(flag === undefined ? [] : [flag])]);
}

export function lookup([value, list, results = list]: readonly Known[]): Known {
  const [items, values] = [line(list), line(results)];
  if (items === undefined || values === undefined) return undefined;
  const i = found(scalar(value), items, 1);
  return typeof i === 'number' ? (values[i] ?? NOT_FOUND) : i;
}

/** Only what is the same is found: the other ways are not in every program. */
export function xlookup([value, list, results, otherwise, how, order]: readonly Known[]): Known {
  const [items, values] = [line(list), line(results)];
  if (items === undefined || values?.length !== items.length || (how ?? 0) !== 0 || (order ?? 1) !== 1) return undefined;
  const i = found(scalar(value), items, 'same');
  if (typeof i === 'number') return values[i];
  return i === NOT_FOUND ? (otherwise ?? i) : i;
}
