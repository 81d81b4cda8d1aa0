// A hand-over worked out anew on plain Node: every formula from its inputs, no kept value looked at.
import { isFault, WorkbookValues, type SourceCell } from '../../src/sheet/workbook-values';
import { call } from '../../src/registry';
import type { SheetPlan } from '../../src/sheet/plan';

/** By `Sheet!A1`; an error is its code: `#N/A`. */
export type Values = ReadonlyMap<string, number | string | boolean>;

/** Long chains are followed a part at a time. */
const MOST_ROUNDS = 50;

export interface WorkedOut {
  readonly values: Values;
  /** Cells whose formulas have no value here. */
  readonly unknown: readonly string[];
}

/** `asked`: the sheet whose cells are wanted; without it all of them. */
export function workedOut(sheets: readonly SheetPlan[], asked?: string): WorkedOut {
  const source = new WorkbookValues(
    {
      name: 'Worked out',
      sheets: sheets.map(({ name, cells }) => ({
        name,
        cells: new Map(
          cells.map(({ at, value, formula, array }): [string, SourceCell] => [
            at,
            formula === undefined ? { value: value ?? null } : { value: null, formula, ...(array && { array }) },
          ]),
        ),
      })),
    },
    call,
  );
  const values = new Map<string, number | string | boolean>();
  let open = sheets
    .filter(({ name }) => asked === undefined || name === asked)
    .flatMap(({ name, cells }) => cells.map(({ at }) => ({ name, at })));
  for (let round = 0; open.length > 0 && round < MOST_ROUNDS; round++) {
    const left = open.filter(({ name, at }) => {
      const value = source.value(name, at);
      if (value === undefined) return true;
      if (value !== null && value !== '') values.set(`${name}!${at}`, isFault(value) ? value.cellError : value);
      return false;
    });
    if (left.length === open.length) break;
    open = left;
  }
  return { values, unknown: open.map(({ name, at }) => `${name}!${at}`) };
}
