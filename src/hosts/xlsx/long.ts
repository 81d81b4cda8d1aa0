// Of long sheets, the rows that the writing library need not see: they are written as text, and look like rows that it writes.
import { callsOurs, inFile } from '../../sheet/stored-formulas';
import type { PlacedCell } from './layout';
import { formulaText, isErrorCode, plainText, UnwritablePlan } from './text';
import type { OwnCell, OwnRow } from '../../package/own-rows';
import { SharedForms } from './shared-forms';

export interface SplitSheet {
  /** Rows that the library writes, counted from 0. */
  readonly kept: ReadonlySet<number>;
  /** The others that have cells. */
  readonly own: ReadonlySet<number>;
  /** Made one after the other, when they are written. */
  readonly rows: Iterable<OwnRow>;
}

/** Nothing of it lies outside its cell, and nothing but its value and formula in it. */
const isPlain = ({ cell, isOne }: PlacedCell): boolean =>
  isOne &&
  cell.note === undefined &&
  cell.link === undefined &&
  cell.array === undefined &&
  (cell.formula === undefined || !callsOurs(cell.formula));

function valueOf({ value, formula }: PlacedCell['cell'], where: string): OwnCell['value'] {
  if (typeof value === 'number' && !Number.isFinite(value)) throw new UnwritablePlan(`${where}: ${value} is no value of a cell`);
  if (typeof value !== 'string') return value;
  if (formula === undefined) return value === '' ? undefined : plainText(value, where);
  return isErrorCode(value) ? { error: value } : plainText(value, where);
}

function ownCell(one: PlacedCell, like: string, sheet: string, shared: SharedForms): OwnCell {
  const { cell, column } = one;
  const where = `${sheet}!${cell.at}`;
  return {
    column,
    like,
    value: valueOf(cell, where),
    formula: cell.formula === undefined ? 'none' : (shared.formula(one, where) ?? { text: inFile(formulaText(cell.formula, where)) }),
  };
}

/** `looksOf` is the same for two cells that look the same. */
export function split(
  sheet: string,
  cells: readonly PlacedCell[],
  heightsPt: ReadonlyMap<number, number>,
  looksOf: (cell: PlacedCell) => string,
): SplitSheet {
  const kept = new Set([0]);
  const byRow = new Map<number, PlacedCell[]>();
  for (const one of cells) {
    const row = byRow.get(one.row);
    if (row === undefined) byRow.set(one.row, [one]);
    else row.push(one);
    if (!isPlain(one)) for (let r = one.band.top; r <= one.band.bottom; r++) kept.add(r);
  }
  const samples = new Map<string, string>();
  const own: { readonly row: number; readonly all: readonly PlacedCell[]; readonly likes: readonly string[] }[] = [];
  for (const [row, all] of [...byRow].sort(([a], [b]) => a - b)) {
    const likes = kept.has(row) ? [] : all.map(one => samples.get(looksOf(one)) ?? '');
    if (kept.has(row) || likes.includes('')) {
      kept.add(row);
      for (const one of all) if (isPlain(one) && !samples.has(looksOf(one))) samples.set(looksOf(one), one.cell.at);
      continue;
    }
    own.push({ row, all, likes });
  }
  const shared = new SharedForms(own.flatMap(({ all }) => all));
  const rows = function* (): Generator<OwnRow> {
    for (const { row, all, likes } of own) {
      const heightPt = heightsPt.get(row);
      const cells = all.map((one, i) => ownCell(one, likes[i] ?? '', sheet, shared));
      yield { row, ...(heightPt !== undefined && { heightPt }), cells: cells.sort((a, b) => a.column - b.column) };
    }
  };
  return { kept, own: new Set(own.map(({ row }) => row)), rows: { [Symbol.iterator]: rows } };
}
