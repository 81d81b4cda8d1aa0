// The functions of ordinary sheets that look something up: undefined where programs differ.
import type { CellError } from '../core/kinds';
import { isFault, type Known, NO_CELL, NOT_FOUND, type One, rowsOf, scalar, withNumbers } from './known';
import { ordered } from './operators';

const WILD = /[*?~]/;

/** Position of a value in a row or column, counted from 0: the same or the last that is not above it. A number is never a text. */
function found(value: One, list: readonly One[], isSorted: boolean): number | CellError | undefined {
  if (value === undefined || isFault(value)) return value;
  if (value === null || list.some(isFault)) return value === null ? NOT_FOUND : undefined;
  if (typeof value === 'string' && WILD.test(value)) return undefined;
  const order = (item: One): number | undefined =>
    item === null || item === undefined || isFault(item) || typeof item !== typeof value
      ? undefined
      : ordered(item, value, isSorted ? '<' : '=');
  if (!isSorted) {
    const i = list.findIndex(item => order(item) === 0);
    return i < 0 ? NOT_FOUND : i;
  }
  if (typeof value !== 'number') return undefined;
  const i = list.reduce((last: number, item, n) => ((order(item) ?? 1) <= 0 ? n : last), -1);
  return i < 0 ? NOT_FOUND : i;
}

const line = (value: Known): readonly One[] | undefined => {
  const rows = rowsOf(value);
  return rows === undefined || (rows.length > 1 && (rows[0]?.length ?? 0) > 1) ? undefined : rows.flat();
};

const isExact = (flag: Known): boolean => scalar(flag) === false || scalar(flag) === 0;

export function match([value, list, type = 1]: readonly Known[]): Known {
  const items = line(list);
  if (items === undefined || (type !== 0 && type !== 1 && type !== false)) return undefined;
  const i = found(scalar(value), items, !isExact(type));
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

export function vlookup([value, table, column, flag = true]: readonly Known[]): Known {
  const rows = rowsOf(table);
  if (rows === undefined) return undefined;
  const i = found(
    scalar(value),
    rows.map(row => row[0]),
    !isExact(flag),
  );
  return typeof i === 'number' ? index([rows, i + 1, column]) : i;
}

export function lookup([value, list, results = list]: readonly Known[]): Known {
  const [items, values] = [line(list), line(results)];
  if (items === undefined || values === undefined) return undefined;
  const i = found(scalar(value), items, true);
  return typeof i === 'number' ? (values[i] ?? NOT_FOUND) : i;
}
