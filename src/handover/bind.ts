// What the arguments of a call become on the hand-over: cells of the user's sheets where they can, else values with their origin.
import type { Param } from '../core/card';
import type { Deviation, Deviations } from '../core/read/deviation';
import { isBlank, limitWords } from '../core/read/params';
import { type Screw, threadRow, threadTable } from '../core/screw/thread';

import { atom, type Ref, text } from '../plain/spreadsheet';
import type { Validation } from '../sheet/plan';
import type { DataSheet } from './data-sheet';
import { address, areaOf, fixedCell, isOneCell, qualified, rewritten, type FormulaNode, type Replacement, walk } from './formula';
import { limitFormulas } from './limits';
import type { Source } from './source';
import type { StepsSheet } from './steps-sheet';

/** A cell that held text with units and becomes a number. */
export interface Converted {
  readonly value: number;
  readonly unit: string;
  readonly typed: string;
}

export interface Desk {
  readonly source: Source;
  readonly steps: StepsSheet;
  readonly data: DataSheet;
  /** `Sheet!B4` -> the number that takes the place of its text. */
  readonly converted: Map<string, Converted>;
  /** What each input cell accepts, by sheet and address. */
  readonly validations: Map<string, Validation>;
  /** Calls inside arguments, already worked out, by where they stand. */
  readonly inner: ReadonlyMap<FormulaNode, string>;
}

export interface Bound {
  readonly ref: Ref;
  /** Conditions that hold while the inputs are within limits. */
  readonly conditions: readonly string[];
  /** False where the supplier cannot change this input on a sheet. */
  readonly live: boolean;
}

export interface Argument {
  readonly node: FormulaNode | null;
  readonly formula: string;
  readonly sheet: string;
}

const STARTS_LIKE_A_NUMBER = /^[\s+\-−±.]*\d/;

const limitConditions = (cell: string, { limits }: Param): string[] => [`ISNUMBER(${cell})`, ...limitFormulas(cell, limits)];

/** An input cell of the user, made a number where it holds text with units. */
function inputCell(desk: Desk, sheet: string, at: string, unit: string, value: number): string | undefined {
  const raw = desk.source.value(sheet, at);
  if (typeof raw === 'number') return 'number';
  if (typeof raw !== 'string' || !STARTS_LIKE_A_NUMBER.test(raw) || desk.source.cell(sheet, at)?.formula !== undefined) return undefined;
  const key = `${sheet}!${at}`;
  const known = desk.converted.get(key);
  if (known !== undefined && known.value !== value) return undefined;
  desk.converted.set(key, { value, unit, typed: raw });
  return 'converted';
}

/** The argument as an expression on the user's cells, nested calls replaced by their results. */
function expression(desk: Desk, { node, formula, sheet }: Argument): string {
  if (node === null) return '0';
  const nested: Replacement[] = [...walk(node)].flatMap(part => {
    const cell = desk.inner.get(part);
    return cell === undefined ? [] : [{ loc: part.loc, text: cell }];
  });
  const outside = (part: Replacement): boolean => !nested.some(({ loc }) => part.loc[0] >= loc[0] && part.loc[1] <= loc[1]);
  return rewritten(formula, node.loc, [...nested, ...qualified(node, sheet).filter(outside)]);
}

const isLiteral = (node: FormulaNode | null): boolean => node === null || node.type === 'Literal';

function boundNumber(desk: Desk, param: Param, argument: Argument, value: number, label: string): Bound {
  const { node, sheet } = argument;
  const unit = param.kind.unit;
  const fallback = typeof param.blank === 'object' && 'default' in param.blank && typeof param.blank.default === 'number' ? param.blank.default : undefined;
  const area = node === null ? undefined : areaOf(node, sheet);
  const limits = limitWords(param.limits, unit);
  const row = (formula: string | undefined, words: string): string => desk.steps.row({ label, ...(formula === undefined ? {} : { formula }), value, unit, words });
  if (isLiteral(node)) {
    const typed = node === null ? 'left out: the default' : typeof node.value === 'string' ? `typed as "${node.value}"` : 'typed in the formula';
    return { ref: atom(row(undefined, typed), value), conditions: [], live: false };
  }
  if (area !== undefined && isOneCell(area)) {
    const at = address(area.top, area.left);
    const blank = isBlank(desk.source.value(area.sheet, at));
    if (blank || inputCell(desk, area.sheet, at, unit, value) !== undefined) {
      const cell = fixedCell(area.sheet, area.top, area.left);
      if (desk.source.cell(area.sheet, at)?.formula === undefined) desk.validations.set(`${area.sheet}!${at}`, { range: at, words: [param.name.replace(/_/g, ' '), unit, limits].filter(word => word !== '').join(', '), ...param.limits });
      const formula = fallback === undefined || fallback === 0 ? cell : `IF(ISNUMBER(${cell}),IF(${cell}=0,${fallback},${cell}),${fallback})`;
      const input = row(formula, limits === '' ? 'input' : `input, ${limits}`);
      return { ref: atom(input, value), conditions: limitConditions(input, param), live: true };
    }
    const raw = String(desk.source.value(area.sheet, at));
    return { ref: atom(row(undefined, `value, not live: from "${raw}"`), value), conditions: [], live: false };
  }
  const worth = node === null ? undefined : desk.source.evaluate(node, sheet);
  if (typeof worth === 'string') {
    const looked = lookedUp(desk, param, argument, worth);
    return { ref: atom(row(looked, looked === undefined ? `value, not live: from "${worth}"` : `from the table on Data, for "${worth}"`), value), conditions: [], live: looked !== undefined };
  }
  const input = row(expression(desk, argument), limits === '' ? 'from other cells' : `from other cells, ${limits}`);
  return { ref: atom(input, value), conditions: limitConditions(input, param), live: true };
}

/** `size cell & " " & head`: the row of the table follows the size cell, the table itself stays. */
function lookedUp(desk: Desk, { kind }: Param, { node, sheet }: Argument, worth: string): string | undefined {
  let first = node;
  while (first?.type === 'BinaryExpression' && first.operator === '&') first = first.arguments?.[0] ?? null;
  const area = first === null ? undefined : areaOf(first, sheet);
  const found = kind.tableValue?.(worth);
  if (area === undefined || !isOneCell(area) || found === undefined || desk.source.value(area.sheet, address(area.top, area.left)) !== found.row) return undefined;
  return desk.data.lookup(found.table, found.key, fixedCell(area.sheet, area.top, area.left));
}

/** A tolerance as its two deviations; a half width counts both ways. */
function boundDeviation(desk: Desk, param: Param, argument: Argument, value: Deviation, label: string): Bound {
  if (value.upperMm === -value.lowerMm || (value.upperMm === 0 && value.lowerMm === 0)) {
    const half = boundNumber(desk, param, argument, value.upperMm, label);
    const { text: cell } = half.ref as { text: string };
    return { ...half, ref: { parts: { upperMm: atom(cell, value.upperMm), lowerMm: { text: `-${cell}`, level: 5, value: value.lowerMm } } }, conditions: half.live ? [`ISNUMBER(${cell})`, `${cell}>=0`] : [] };
  }
  const parts = { upperMm: value.upperMm, lowerMm: value.lowerMm };
  const cells = Object.entries(parts).map(([key, deviation]) => [key, atom(desk.steps.row({ label: `${label}, ${key === 'upperMm' ? 'upper' : 'lower'}`, value: deviation, unit: 'mm', words: 'value, not live: one cell held both deviations' }), deviation)]);
  return { ref: { parts: Object.fromEntries(cells) }, conditions: [], live: false };
}

/** Rows of a list: the user's cells one by one, so that each can be signed and checked. */
function boundList(desk: Desk, param: Param, argument: Argument, values: readonly number[], label: string): Bound & { readonly cells: readonly string[] } {
  const { node, sheet } = argument;
  const area = node === null ? undefined : areaOf(node, sheet);
  const positions = area === undefined ? [] : Array.from({ length: (area.bottom - area.top + 1) * (area.right - area.left + 1) }, (_, i) => (area.bottom > area.top ? [area.top + i, area.left] : [area.top, area.left + i]));
  const cells = values.map((value, i) => {
    const [r, c] = positions.length === 1 ? (positions[0] ?? []) : (positions[i] ?? []);
    if (area === undefined || r === undefined || c === undefined || inputCell(desk, area.sheet, address(r, c), param.kind.unit, value) === undefined) return undefined;
    return fixedCell(area.sheet, r, c);
  });
  const live = cells.every(cell => cell !== undefined);
  const one = !live && values.every(value => value === values[0]) ? boundNumber(desk, param, argument, values[0] ?? 0, label) : undefined;
  const shown = values.map((value, i) => (live ? (cells[i] as string) : one !== undefined ? (one.ref as { text: string }).text : desk.steps.row({ label: `${label} ${i + 1}`, value, unit: param.kind.unit, words: 'value, not live' })));
  const conditions = live ? [...new Set(shown)].flatMap(cell => limitConditions(cell, param)) : (one?.conditions ?? []);
  return { ref: { items: shown.map((cell, i) => atom(cell, values[i])) }, conditions, live: live || one?.live === true, cells: shown };
}

function boundDeviations(desk: Desk, param: Param, argument: Argument, value: Deviations, label: string): Bound {
  const symmetric = value.upperMm.every((upper, i) => upper === -(value.lowerMm[i] ?? 0));
  if (symmetric) {
    const list = boundList(desk, param, argument, value.upperMm, label);
    const lower: Ref = { items: list.cells.map((cell, i) => ({ text: `-${cell}`, level: 5, value: -(value.upperMm[i] ?? 0) })) };
    return { ref: { parts: { upperMm: list.ref, lowerMm: lower } }, conditions: list.live ? list.cells.flatMap(cell => [`ISNUMBER(${cell})`, `${cell}>=0`]) : [], live: list.live };
  }
  const literal = (list: readonly number[], side: string): Ref => ({ items: list.map((deviation, i) => atom(desk.steps.row({ label: `${label} ${i + 1}, ${side}`, value: deviation, unit: 'mm', words: 'value, not live' }), deviation)) });
  return { ref: { parts: { upperMm: literal(value.upperMm, 'upper'), lowerMm: literal(value.lowerMm, 'lower') } }, conditions: [], live: false };
}

const SCREW_PARTS = [
  ['nominalMm', 'nominal diameter'],
  ['majorMaxMm', 'major diameter, max'],
  ['majorMinMm', 'major diameter, min'],
  ['rootMaxMm', 'root diameter, max'],
  ['pitchMm', 'pitch'],
] as const;

/** Which column of the thread table a part of a screw is, and what it is multiplied with. */
function screwColumn(screw: Screw, key: string): { readonly key: string; readonly inverse?: true } {
  const { family } = screw.size;
  if (key === 'pitchMm' && family !== 'M' && family !== 'ST') return { key: 'tpi', inverse: true };
  const columns: Readonly<Record<string, string>> = { nominalMm: screw.isTapping ? 'majorMax' : 'nominal', majorMaxMm: 'majorMax', majorMinMm: 'majorMin', rootMaxMm: 'rootMax', pitchMm: 'pitch' };
  return { key: columns[key] ?? key };
}

/** The cell or quoted text with which a table of this screw's family is entered. */
export function sizeKey(desk: Desk, argument: Argument, screwText: string): { readonly key: string; readonly live: boolean } {
  const area = argument.node === null ? undefined : areaOf(argument.node, argument.sheet);
  const at = area !== undefined && isOneCell(area) ? address(area.top, area.left) : undefined;
  // a size that is spelled otherwise than in the table cannot be looked up by its cell
  if (area !== undefined && at !== undefined && desk.source.value(area.sheet, at) === screwText) return { key: fixedCell(area.sheet, area.top, area.left), live: true };
  return { key: `"${screwText}"`, live: false };
}

/** Only the parts that the formula reads get a row. */
function boundScrew(desk: Desk, argument: Argument, screw: Screw, needed: ReadonlySet<string>): Bound {
  const table = threadTable(screw.size);
  const { key, live } = sizeKey(desk, argument, threadRow(screw.size));
  const parts = SCREW_PARTS.filter(([part]) => needed.has(part)).map(([part, label]) => {
    const column = screwColumn(screw, part);
    const found = desk.data.lookup(table, column.key, key);
    const value = screw[part];
    return [part, atom(desk.steps.row({ label: `${screw.size.text}: ${label}`, formula: column.inverse === true ? `25.4/${found}` : found, value, unit: 'mm', words: 'from the table on Data', source: `${table.standard}:${table.edition}` }), value)] as const;
  });
  return { ref: { parts: Object.fromEntries(parts) }, conditions: [], live };
}

function literalParts(desk: Desk, value: object, label: string): Bound {
  const parts = Object.entries(value).flatMap(([key, part]) => (typeof part === 'number' ? [[key, atom(desk.steps.row({ label: `${label} ${key.replace(/(Mm|Deg)$/, '')}`, value: part, words: 'value, not live' }), part)] as const] : []));
  return { ref: { parts: Object.fromEntries(parts) }, conditions: [], live: false };
}

function boundWord(desk: Desk, argument: Argument, value: string): Bound {
  const area = argument.node === null ? undefined : areaOf(argument.node, argument.sheet);
  const isSame = area !== undefined && isOneCell(area) && desk.source.value(area.sheet, address(area.top, area.left)) === value;
  return isSame && area !== undefined ? { ref: atom(fixedCell(area.sheet, area.top, area.left), value), conditions: [], live: true } : { ref: text(value), conditions: [], live: false };
}

/** One argument, by the kind of value that the core read from it. */
export function bind(desk: Desk, param: Param, argument: Argument, value: unknown, needed: ReadonlySet<string>): Bound {
  const label = param.name.replace(/_/g, ' ');
  if (typeof value === 'number') return boundNumber(desk, param, argument, value, label);
  if (typeof value === 'string') return boundWord(desk, argument, value);
  if (Array.isArray(value) && value.every(item => typeof item === 'number')) return boundList(desk, param, argument, value as number[], label);
  if (typeof value === 'object' && value !== null) {
    if ('majorMaxMm' in value) return boundScrew(desk, argument, value as Screw, needed);
    if ('upperMm' in value && typeof value.upperMm === 'number') return boundDeviation(desk, param, argument, value as Deviation, label);
    if ('upperMm' in value && Array.isArray(value.upperMm)) return boundDeviations(desk, param, argument, value as Deviations, label);
    return literalParts(desk, value, label);
  }
  return { ref: atom('""', ''), conditions: [], live: false };
}

