// Every combination of a few lists: the variants of a study.
import type { Cell } from '../core/kinds';
import { cut, wrongInput } from '../core/refuse';
import { inputNamed } from './headings';

const MAX_VARIANTS = 5_000;

interface HeadedList {
  readonly argument: string;
  /** A joint input, where the list is headed by one. */
  readonly name: string | undefined;
  readonly values: readonly Cell[];
}

/** The last list changes fastest. Lists that are all headed by joint inputs keep their names as a header row. */
export function variantGrid(...lists: readonly (readonly Cell[] | undefined)[]): Cell[][] {
  const columns = lists.flatMap((list, i): HeadedList[] =>
    list === undefined ? [] : [{ argument: `list${i + 1}`, name: inputNamed(list[0]), values: list }],
  );
  const names = columns.flatMap(({ name }) => name ?? []);
  if (names.length === 0) return combinations(columns);
  checkNames(columns);
  return [names, ...combinations(columns.map(column => ({ ...column, values: column.values.slice(1) })))];
}

function checkNames(columns: readonly HeadedList[]): void {
  const named = columns.find(({ name }) => name !== undefined);
  const seen = new Set<string>();
  for (const { argument, name, values } of columns) {
    if (name === undefined)
      throw wrongInput(
        `${argument} begins with ${cut(String(values[0]))}, which is not a joint input, but ` +
          `${named?.argument} with ${named?.name}; head every list with a joint input, or none`,
        argument,
      );
    if (seen.has(name)) throw wrongInput(`${argument} is headed ${name}, like a list before it`, argument);
    if (values.length === 1) throw wrongInput(`${argument} has the name ${name} and no values`, argument);
    seen.add(name);
  }
}

function combinations(columns: readonly HeadedList[]): Cell[][] {
  const count = columns.reduce((product, { values }) => product * values.length, 1);
  if (count > MAX_VARIANTS) throw wrongInput(`the lists make ${count} combinations; at most ${MAX_VARIANTS} are given`);
  return columns.reduce<Cell[][]>((rows, { values }) => rows.flatMap(row => values.map(value => [...row, value])), [[]]);
}
