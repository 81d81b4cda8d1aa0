// What a copy shows beside what other programs make of it, as sent and after other inputs were typed.
import { spillAll } from '../../../src/handover/compile/spilled-tables';
import { prepared } from '../../../src/handover/read/prepared';
import type { CellChange } from '../../../src/package/cell-splices';
import { edited } from '../../../src/package/edit';
import { readPackage } from '../../../src/package/read';
import { call } from '../../../src/registry';
import { address, cellPosition, rectangleOf } from '../../../src/sheet/addresses';
import { callsOurs, fromFile } from '../../../src/sheet/stored-formulas';
import { isFault, isRows, type SourceCell, type SourceWorkbook, WorkbookValues } from '../../../src/sheet/workbook-values';
import { SEED } from '../../kit/seed';
import type { Values } from '../harness';
import { type HandedOver, placesOf } from './handed';

export interface Compared {
  /** Cells with a number or a text that were compared, and those of them with a formula. */
  readonly cells: number;
  readonly formulas: number;
  /** Cells of which our functions say nothing: they depend on what is fixed, or on functions that are not worked out here. */
  readonly unknown: number;
  readonly otherwise: readonly string[];
}

const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
const ERROR = /^(#|Err:)/;

function isNear(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(b));
  if (typeof a === 'string' && typeof b === 'string') return a === b || (ERROR.test(a) && ERROR.test(b)) || a.replace(/\r\n?/g, '\n') === b;
  return a === b || ((a ?? '') === '' && (b ?? '') === '');
}

/** The copy as it was sent: what each cell shows before and after a program worked it out. */
export function asSent(copy: Uint8Array, values: Values): Compared {
  const otherwise: string[] = [];
  let [count, formulas] = [0, 0];
  for (const { name, cells } of readPackage(copy).sheets)
    for (const { at, value, formula } of cells) {
      const shown = typeof value === 'object' ? value.error : value;
      if (shown === undefined) continue;
      const actual = values.get(`${name}!${at}`);
      count++;
      if (formula !== undefined && formula.kind !== 'dataTable') formulas++;
      if (isNear(actual, shown)) continue;
      otherwise.push(`${name}!${at}: ${String(actual)}, not ${String(shown)}: ${formula?.text.slice(0, 100) ?? 'a value'}`);
    }
  return { cells: count, formulas, unknown: 0, otherwise };
}

/** Numbers from 0 to 1, the same on every machine. */
function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

export interface Changed {
  /** The copy with other inputs. */
  readonly bytes: Uint8Array;
  /** The workbook with the same ones, formulas without the values that were kept for them. */
  readonly source: SourceWorkbook;
  readonly changes: number;
}

const rounded = (value: number): number => Math.round(value * 1000) / 1000;

/** About half of the sizes that are no whole numbers, which are keys and counts, and of the texts with their unit. */
export function withOtherInputs(handed: HandedOver): Changed {
  const next = random(SEED);
  const { copy, source } = handed;
  const there = new Map(readPackage(copy.bytes).sheets.map(({ name, cells }) => [name, new Map(cells.map(cell => [cell.at, cell]))]));
  const cells = new Map<string, Map<string, CellChange>>();
  let changes = 0;
  const changedCell = (sheet: string, at: string, cell: SourceCell): SourceCell => {
    if (cell.formula !== undefined) return { ...cell, value: null };
    const becomes = copy.converted.get(`${sheet}!${at}`);
    const before = becomes?.value ?? cell.value;
    const sent = there.get(sheet)?.get(at);
    if (typeof before !== 'number' || Number.isInteger(before) || sent?.formula !== undefined || typeof sent?.value !== 'number')
      return cell;
    if (next() < 0.5) return cell;
    const value = rounded(before * (1.01 + 0.06 * next()));
    const onSheet = cells.get(sheet) ?? new Map<string, CellChange>();
    cells.set(sheet, onSheet.set(at, { value, formula: 'none' }));
    changes++;
    return { ...cell, value: becomes === undefined || becomes.unit === '' ? value : `${value} ${becomes.unit}` };
  };
  const sheets = source.sheets.map(sheet => ({
    ...sheet,
    cells: new Map([...sheet.cells].map(([at, cell]) => [at, changedCell(sheet.name, at, cell)] as const)),
  }));
  return { bytes: edited(readPackage(copy.bytes), { cells }).bytes, source: { ...source, sheets }, changes };
}

/** What our own functions give on a workbook. */
function ownValues(source: SourceWorkbook): WorkbookValues {
  const { workbook } = prepared(source, true);
  const worked = new WorkbookValues(workbook, call);
  spillAll(worked, workbook);
  return worked;
}

/** Nobody knows such a function, nor what depends on it. */
const UNKNOWN: SourceCell = { value: null, formula: '=NOT.KNOWN()' };

/** Cells that a formula elsewhere fills, by its sheet and the first of them. */
function* filledBy({ file, source: before }: HandedOver, fixed: ReadonlySet<string>): Generator<readonly [sheet: string, at: string]> {
  const asItWas = ownValues(before);
  for (const { name, cells } of file.sheets)
    for (const { at, formula } of cells) {
      const place = `${name}!${at}`;
      const { row, column } = cellPosition(at);
      const rows = fixed.has(place) ? asItWas.result(name, at) : undefined;
      if (isRows(rows)) for (const [r, line] of rows.entries()) for (const c of line.keys()) yield [name, address(row + r, column + c)];
      else if (fixed.has(place)) yield [name, at];
      if (formula?.area === undefined || !['array', 'dynamic'].includes(formula.kind) || callsOurs(`=${fromFile(formula.text)}`)) continue;
      const { top, left, bottom, right } = rectangleOf(formula.area);
      for (let r = top; r <= bottom; r++) for (let c = left; c <= right; c++) yield [name, address(r, c)];
    }
}

/** A workbook in which what does not follow its inputs, and what is not worked out here, is not known. */
function withoutFixed(handed: HandedOver, source: SourceWorkbook, fixed: ReadonlySet<string>): SourceWorkbook {
  const unknown = new Map<string, Map<string, SourceCell>>();
  for (const [sheet, at] of filledBy(handed, fixed))
    unknown.set(sheet, (unknown.get(sheet) ?? new Map<string, SourceCell>()).set(at, UNKNOWN));
  return {
    ...source,
    sheets: source.sheets.map(({ name, cells }) => ({ name, cells: new Map([...cells, ...(unknown.get(name) ?? [])]) })),
  };
}

/** A reason names its numbers as they were sent; after a change it is the reason alone. */
const isReason = (actual: unknown, wanted: unknown): boolean =>
  typeof actual === 'string' && actual !== '' && typeof wanted === 'string' && wanted.startsWith(`${actual}: `);

/** The copy after other inputs were typed: what our own functions give on the workbook with the same ones. */
export function afterChanges(handed: HandedOver, source: SourceWorkbook, values: Values): Compared {
  const fixed = placesOf(handed, what => what !== 'live' && what !== 'changed' && what !== 'not in every program');
  const worked = ownValues(withoutFixed(handed, source, fixed));
  const otherwise: string[] = [];
  let [formulas, unknown] = [0, 0];
  const own = new Set(source.sheets.map(({ name }) => name));
  for (const { name, cells } of readPackage(handed.copy.bytes).sheets)
    for (const { at, formula } of own.has(name) ? cells : []) {
      const place = `${name}!${at}`;
      if (formula === undefined || formula.kind === 'dataTable' || fixed.has(place)) continue;
      const wanted = worked.value(name, at);
      if (wanted === undefined) unknown++;
      if (wanted === undefined || wanted === null) continue;
      formulas++;
      const actual = values.get(place);
      const isRefused = isFault(wanted) && typeof actual !== 'number';
      const shown = isFault(wanted) ? wanted.cellError : wanted;
      if (isRefused || isNear(actual, shown) || isReason(actual, wanted)) continue;
      otherwise.push(`${place}: ${String(actual)}, not ${String(shown)}: ${formula.text.slice(0, 100)}`);
    }
  return { cells: formulas, formulas, unknown, otherwise };
}
