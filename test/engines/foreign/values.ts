// What a copy shows beside what other programs make of it, as sent and after other inputs were typed.
import { spillAll } from '../../../src/handover/compile/spilled-tables';
import { prepared } from '../../../src/handover/read/prepared';
import type { CellChange } from '../../../src/package/cell-splices';
import { edited } from '../../../src/package/edit';
import { readPackage } from '../../../src/package/read';
import { call } from '../../../src/registry';
import { address, cellPosition } from '../../../src/sheet/addresses';
import { isFault, isRows, type SourceCell, type SourceWorkbook, WorkbookValues } from '../../../src/sheet/workbook-values';
import { SEED } from '../../kit/seed';
import type { Values } from '../harness';
import { type HandedOver, placesOf } from './handed';

export interface Compared {
  /** Cells with a number or a text, and those of them with a formula. */
  readonly cells: number;
  readonly formulas: number;
  /** Cells of which a program is known to make something else, told by the copy. */
  readonly spared: readonly string[];
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

/** What a program is known not to read, in formulas that are the user's own. */
export type Unread = (formula: string) => string | undefined;

/** The copy as it was sent: what each cell shows before and after a program worked it out. */
export function asSent(copy: Uint8Array, values: Values, unread: Unread): Compared {
  const otherwise: string[] = [];
  const spared: string[] = [];
  let [count, formulas] = [0, 0];
  for (const { name, cells } of readPackage(copy).sheets)
    for (const { at, value, formula } of cells) {
      const shown = typeof value === 'object' ? value.error : value;
      if (shown === undefined) continue;
      const actual = values.get(`${name}!${at}`);
      count++;
      if (formula !== undefined && formula.kind !== 'dataTable') formulas++;
      if (isNear(actual, shown)) continue;
      const why = formula === undefined ? undefined : unread(formula.text);
      const words = `${name}!${at}: ${String(actual)}, not ${String(shown)}: ${formula?.text.slice(0, 100) ?? 'a value'}`;
      if (why === undefined) otherwise.push(words);
      else spared.push(`${name}!${at}: ${why}`);
    }
  return { cells: count, formulas, spared, otherwise };
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

/** A workbook in which what does not follow its inputs is not known. */
function withoutFixed({ source: before }: HandedOver, source: SourceWorkbook, fixed: ReadonlySet<string>): SourceWorkbook {
  const asItWas = ownValues(before);
  const sheets = source.sheets.map(({ name, cells }) => {
    const unknown = [...cells].flatMap(([at, { formula }]) => {
      if (formula === undefined || !fixed.has(`${name}!${at}`)) return [];
      const rows = asItWas.result(name, at);
      const { row, column } = cellPosition(at);
      return isRows(rows) ? rows.flatMap((line, r) => line.map((_, c) => address(row + r, column + c))) : [at];
    });
    return { name, cells: new Map([...cells, ...unknown.map(at => [at, UNKNOWN] as const)]) };
  });
  return { ...source, sheets };
}

/** The copy after other inputs were typed: what our own functions give on the workbook with the same ones. */
export function afterChanges(handed: HandedOver, source: SourceWorkbook, values: Values, unread: Unread): Compared {
  const fixed = placesOf(handed, what => what !== 'live' && what !== 'changed' && what !== 'not in every program');
  const worked = ownValues(withoutFixed(handed, source, fixed));
  const otherwise: string[] = [];
  const spared: string[] = [];
  let formulas = 0;
  const own = new Set(source.sheets.map(({ name }) => name));
  for (const { name, cells } of readPackage(handed.copy.bytes).sheets)
    for (const { at, formula } of own.has(name) ? cells : []) {
      const place = `${name}!${at}`;
      if (formula === undefined || fixed.has(place)) continue;
      const wanted = worked.value(name, at);
      if (wanted === undefined) spared.push(`${place}: not worked out here`);
      if (wanted === undefined || wanted === null) continue;
      formulas++;
      const actual = values.get(place);
      const isRefused = isFault(wanted) && typeof actual !== 'number';
      if (isRefused || isNear(actual, isFault(wanted) ? wanted.cellError : wanted)) continue;
      const why = unread(formula.text);
      const shown = isFault(wanted) ? wanted.cellError : String(wanted);
      if (why === undefined) otherwise.push(`${place}: ${String(actual)}, not ${shown}: ${formula.text.slice(0, 100)}`);
      else spared.push(`${place}: ${why}`);
    }
  return { cells: formulas, formulas, spared, otherwise };
}
