// Cells that hold nothing but spaces: our functions take them as blank, which a plain formula does not.
import { type Area, cellPosition, holds } from '../../sheet/addresses';
import { areaOf, outermostCalls, parseFormula, walk } from '../../sheet/formula';
import type { SourceSheet, SourceWorkbook } from '../../sheet/workbook-values';

const isSpaces = (value: unknown): boolean => typeof value === 'string' && value !== '' && value.trim() === '';

function readByOurs({ name, cells }: SourceSheet): Area[] {
  return [...cells.values()].flatMap(({ formula }) =>
    outermostCalls((formula === undefined ? undefined : parseFormula(formula)) ?? null).flatMap(call =>
      [...walk(call)].flatMap(node => areaOf(node, name) ?? []),
    ),
  );
}

export interface Unspaced {
  readonly workbook: SourceWorkbook;
  /** What became blank. */
  readonly blanked: readonly { readonly sheet: string; readonly at: string }[];
}

/** The workbook with such cells blank where a function of ours reads them. */
export function unspaced(workbook: SourceWorkbook): Unspaced {
  const spaces = workbook.sheets.flatMap(({ name: sheet, cells }) =>
    [...cells].flatMap(([at, { value, formula }]) => (formula === undefined && isSpaces(value) ? [{ sheet, at }] : [])),
  );
  if (spaces.length === 0) return { workbook, blanked: [] };
  const read = workbook.sheets.flatMap(readByOurs);
  const blanked = spaces.filter(({ sheet, at }) => {
    const place = cellPosition(at);
    return read.some(area => area.sheet === sheet && holds(area, place));
  });
  const sheets = workbook.sheets.map(sheet => {
    const cells = new Map(sheet.cells);
    for (const { sheet: name, at } of blanked) if (name === sheet.name) cells.set(at, { value: null });
    return { ...sheet, cells };
  });
  return { workbook: { ...workbook, sheets }, blanked };
}
