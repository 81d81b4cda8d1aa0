// What the arguments of a call become on the hand-over: cells of the user's sheets where they can, else values that hold
// while the cells they came from are as they were sent.
import { forgotten, type Nature, type Param } from '../../core/card';
import type { Limits } from '../../core/kinds';
import type { Deviation, Deviations } from '../../core/read/deviation';
import { isBlank, limitWords } from '../../core/read/params';
import { leadingSize } from '../../core/screw/size';
import { type Screw, threadRow, threadTable } from '../../core/screw/thread';
import { atom, negative, number, type Ref, text } from '../../plain/spreadsheet';
import type { Validation } from '../../sheet/plan';
import type { DataSheet } from './data-sheet';
import { address, type Area, fixedCell, isOneCell } from '../../sheet/addresses';
import { areaOf, qualified, rewritten, type FormulaNode, type Replacement, walk } from '../../sheet/formula';
import { choiceFormula, choicesOf, isQuantity, listLimits, quoted, sameAs } from './inputs';
import { lengthToleranceFormulas } from './length-tolerance';
import { limitFormulas } from './limits';
import type { Known, WorkbookValues } from '../../sheet/workbook-values';
import type { StepsSheet } from './steps-sheet';

/** A cell that held text with units and becomes a number. */
export interface Converted {
  readonly value: number;
  readonly unit: string;
  readonly typed: string;
}

export interface Desk {
  readonly source: WorkbookValues;
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
  /** Conditions that hold while the inputs are within limits, and while what is not followed is as it was sent. */
  readonly conditions: readonly string[];
  /** False where the supplier cannot change this input on a sheet. */
  readonly live: boolean;
}

export interface Argument {
  readonly node: FormulaNode | null;
  readonly formula: string;
  readonly sheet: string;
  /** The arguments before it, by name. */
  readonly earlier: ReadonlyMap<string, Ref>;
}

/** Cells whose change would not be followed can be watched up to this number. */
const MOST_WATCHED = 60;

const labelOf = ({ name }: Param): string => name.replace(/_/g, ' ');
const scalarText = (ref: Ref | undefined): string | undefined => (ref !== undefined && 'text' in ref ? ref.text : undefined);
const isLiteral = (node: FormulaNode | null): boolean => node === null || node.type === 'Literal';
const isSignedLiteral = (node: FormulaNode | null): boolean =>
  isLiteral(node) || (node?.type === 'UnaryExpression' && isLiteral(node.arguments?.[0] ?? null));
const cellOf = (area: Area): string => fixedCell(area.sheet, area.top, area.left);
const addressOf = (area: Area): string => address(area.top, area.left);

/** The one cell that an argument is. */
function oneCell({ node, sheet }: Argument): Area | undefined {
  const area = node === null ? undefined : areaOf(node, sheet);
  return area !== undefined && isOneCell(area) ? area : undefined;
}

/** What a cell holds on the hand-over. */
export const sentAs = ({ source, converted }: Pick<Desk, 'source' | 'converted'>, sheet: string, at: string): Known =>
  converted.get(`${sheet}!${at}`)?.value ?? source.value(sheet, at);

/** Conditions that hold while the cells of an argument are as they were sent. Nothing where they cannot be watched. */
export function asSent(
  desk: Pick<Desk, 'source' | 'converted'>,
  { node, sheet }: Pick<Argument, 'node' | 'sheet'>,
  except?: FormulaNode | null,
): readonly string[] | undefined {
  const conditions = new Set<string>();
  for (const part of walk(node)) {
    if (part === except || part.type !== 'ReferenceIdentifier') continue;
    const area = areaOf(part, sheet);
    if (area === undefined || (area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST_WATCHED) return undefined;
    for (let r = area.top; r <= area.bottom; r++) {
      for (let c = area.left; c <= area.right; c++) {
        const same = sameAs(fixedCell(area.sheet, r, c), sentAs(desk, area.sheet, address(r, c)));
        if (same === undefined) return undefined;
        same.forEach(condition => conditions.add(condition));
      }
    }
  }
  return conditions.size > MOST_WATCHED ? undefined : [...conditions];
}

/** A value that no formula follows. */
function fixed(desk: Desk, argument: Argument, ref: Ref): Bound | undefined {
  const conditions = asSent(desk, argument);
  return conditions === undefined ? undefined : { ref, conditions, live: isLiteral(argument.node) };
}

/** Whether a cell of the user is a number here: as it was, or made one from a text with its unit. */
function isNumberCell(desk: Desk, area: Area, unit: string, value: number): boolean {
  const at = addressOf(area);
  const raw = desk.source.value(area.sheet, at);
  if (typeof raw === 'number') return raw === value;
  if (typeof raw !== 'string' || !isQuantity(raw) || desk.source.cell(area.sheet, at)?.formula !== undefined) return false;
  const key = `${area.sheet}!${at}`;
  const known = desk.converted.get(key);
  if (known !== undefined && (known.value !== value || known.unit !== unit)) return false;
  desk.converted.set(key, { value, unit, typed: raw });
  return true;
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

const rowWords = (what: string, limits: string): string => (limits === '' ? what : `${what}, ${limits}`);

function boundNumber(desk: Desk, param: Param, argument: Argument, value: number, label: string): Bound | undefined {
  const { node, sheet } = argument;
  const { kind, limits, blank } = param;
  const words = limitWords(limits, kind.unit);
  const row = (formula: string | undefined, what: string): string =>
    desk.steps.row({ label, ...(formula === undefined ? {} : { formula }), value, unit: kind.unit, words: what });
  const inLimits = (input: string, cell = input): string[] => [`ISNUMBER(${cell})`, ...limitFormulas(input, limits)];
  const sameArgument =
    typeof blank === 'object' && 'sameAs' in blank && blank.take === undefined ? scalarText(argument.earlier.get(blank.sameAs)) : undefined;
  if (node === null && sameArgument !== undefined)
    return { ref: atom(row(sameArgument, 'left out: the same'), value), conditions: [], live: true };
  if (isSignedLiteral(node)) {
    const what =
      node === null ? 'left out: the default' : typeof node.value === 'string' ? `typed as "${node.value}"` : 'typed in the formula';
    const input = desk.steps.row({ label, value, unit: kind.unit, words: rowWords(what, words), isInput: true });
    return { ref: atom(input, value), conditions: inLimits(input), live: true };
  }
  const area = oneCell(argument);
  if (area === undefined) {
    const worth = desk.source.evaluate(node, sheet);
    if (typeof worth !== 'string' && !Array.isArray(worth)) {
      const input = row(expression(desk, argument), rowWords('from other cells', words));
      return { ref: atom(input, value), conditions: inLimits(input), live: true };
    }
    return (
      (typeof worth === 'string' ? lookedUp(desk, param, argument, worth, row, value) : undefined) ??
      fixed(desk, argument, atom(row(undefined, 'value, not live'), value))
    );
  }
  const cell = cellOf(area);
  const raw = desk.source.value(area.sheet, addressOf(area));
  if (isBlank(raw) || isNumberCell(desk, area, kind.unit, value)) {
    validate(desk, area, param);
    const fallback =
      typeof blank !== 'object'
        ? undefined
        : 'default' in blank
          ? typeof blank.default === 'number'
            ? number(blank.default).text
            : undefined
          : sameArgument;
    // a blank that takes what another argument brings along has no formula
    if (isBlank(raw) && fallback === undefined && value !== 0)
      return fixed(desk, argument, atom(row(undefined, 'blank: value, not live'), value));
    // not every program takes a blank for a number
    const zero = blank === 'zero' || fallback === '0' ? `IF(${cell}="",0,${cell})` : cell;
    const formula =
      fallback === undefined || fallback === '0'
        ? zero
        : `IF(ISNUMBER(${cell}),IF(${cell}=0,${fallback},${cell}),IF(${cell}="",${fallback},${cell}))`;
    const input = row(formula, rowWords('input', words));
    return { ref: atom(input, value), conditions: inLimits(input, blank === 'refused' || blank === 'explicit' ? cell : input), live: true };
  }
  const looked = typeof raw === 'string' ? kind.from?.tableValue?.(raw) : undefined;
  return fixed(
    desk,
    argument,
    atom(
      row(
        looked === undefined || typeof raw !== 'string' ? undefined : desk.data.lookup(looked.table, looked.key, quoted(looked.row)),
        `from the text "${String(raw)}"`,
      ),
      value,
    ),
  );
}

/** A cell that several calls read must be within the limits of all. */
function validate(desk: Desk, area: Area, param: Param): void {
  const at = addressOf(area);
  if (param.kind.takesEverything || desk.source.cell(area.sheet, at)?.formula !== undefined) return;
  const key = `${area.sheet}!${at}`;
  const known = desk.validations.get(key);
  if (known?.list !== undefined) return;
  const limits = tightest(known ?? {}, param.limits ?? {});
  const name = known?.words.split(',')[0] ?? labelOf(param);
  const words = [name, param.kind.unit, limitWords(limits, param.kind.unit)].filter(word => word !== '').join(', ');
  desk.validations.set(key, { range: at, words, ...limits });
}

function tightest(a: Limits, b: Limits): Limits {
  const both = (x: number | undefined, y: number | undefined, of: (...values: number[]) => number): number | undefined =>
    x === undefined || y === undefined ? (x ?? y) : of(x, y);
  const [above, atLeast] = [both(a.above, b.above, Math.max), both(a.atLeast, b.atLeast, Math.max)];
  const [below, atMost] = [both(a.below, b.below, Math.min), both(a.atMost, b.atMost, Math.min)];
  // of two lower limits the tighter one says it all
  const isAbove = above !== undefined && (atLeast === undefined || above >= atLeast);
  const isBelow = below !== undefined && (atMost === undefined || below <= atMost);
  return { ...(isAbove ? { above } : { atLeast }), ...(isBelow ? { below } : { atMost }) };
}

/** `size cell & " " & head`: the row of the table follows the size cell, the table itself stays. */
function lookedUp(
  desk: Desk,
  { kind }: Param,
  argument: Argument,
  worth: string,
  row: (formula: string, what: string) => string,
  value: number,
): Bound | undefined {
  const first = firstCell(argument);
  const found = kind.from?.tableValue?.(worth);
  const conditions = first === undefined ? undefined : asSent(desk, argument, first.node);
  if (
    first === undefined ||
    found === undefined ||
    conditions === undefined ||
    desk.source.value(first.area.sheet, addressOf(first.area)) !== found.row
  )
    return undefined;
  return {
    ref: atom(
      row(desk.data.lookup(found.table, found.key, cellOf(first.area)), `from the table on ${desk.data.name}, for "${worth}"`),
      value,
    ),
    conditions,
    live: true,
  };
}

/** The half width of a tolerance that is the same both ways. */
const halfOf = ({ upperMm, lowerMm }: Deviation): number | undefined => (upperMm + lowerMm === 0 ? upperMm : undefined);

/** A tolerance as its two deviations; a half width counts both ways. */
function boundDeviation(desk: Desk, param: Param, argument: Argument, value: Deviation, label: string): Bound | undefined {
  const looked = screwTolerance(desk, argument, value, label);
  if (looked !== undefined) return looked;
  const half = halfOf(value);
  const bound = half === undefined ? undefined : boundNumber(desk, param, argument, half, label);
  if (half !== undefined && bound !== undefined && 'text' in bound.ref) {
    const { text: cell } = bound.ref;
    const conditions = bound.conditions.length === 0 ? [] : [...bound.conditions, `${cell}>=0`];
    return {
      ...bound,
      ref: { parts: { upperMm: atom(cell, half), lowerMm: negative(atom(cell, half)) } },
      conditions,
    };
  }
  const side = (which: string, worth: number): Ref =>
    atom(
      desk.steps.row({
        label: `${label}, ${which}`,
        value: worth,
        unit: 'mm',
        words: isLiteral(argument.node) ? 'typed in the formula' : 'value, not live: one cell holds both deviations',
      }),
      worth,
    );
  return fixed(desk, argument, { parts: { upperMm: side('upper', value.upperMm), lowerMm: side('lower', value.lowerMm) } });
}

/** The cell with which a joined text begins: `B5` of `B5&" "&B6`. */
function firstCell({ node, sheet }: Argument): { readonly node: FormulaNode; readonly area: Area } | undefined {
  let first = node;
  while (first?.type === 'BinaryExpression' && first.operator === '&') first = first.arguments?.[0] ?? null;
  const area = first === null || first === node ? undefined : areaOf(first, sheet);
  return first !== null && area !== undefined && isOneCell(area) ? { node: first, area } : undefined;
}

/** "ST2.9 cone": the tolerance of the screw's length, by the length that was given before. Within a family all sizes share it. */
function screwTolerance(desk: Desk, argument: Argument, value: Deviation, label: string): Bound | undefined {
  const worth = argument.node === null ? undefined : desk.source.evaluate(argument.node, argument.sheet);
  const screw = typeof worth === 'string' ? leadingSize(worth) : undefined;
  const lengthRef = argument.earlier.get('length');
  const length = scalarText(lengthRef);
  if (
    screw === undefined ||
    length === undefined ||
    lengthRef === undefined ||
    !('value' in lengthRef) ||
    typeof lengthRef.value !== 'number'
  )
    return undefined;
  const { family, text: size } = screw.size;
  const formulas = lengthToleranceFormulas(desk.data, screw.size, length, /^(f|type f|blunt)/i.test(screw.rest) ? '"flat"' : '"cone"');
  const first = firstCell(argument);
  const table = threadTable(screw.size);
  const isFollowed =
    (family === 'M' || family === 'ST') && first !== undefined && desk.source.value(first.area.sheet, addressOf(first.area)) === size;
  const conditions = asSent(desk, argument, isFollowed ? first.node : undefined);
  if (conditions === undefined) return undefined;
  const side = (which: string, formula: string, worthMm: number): Ref =>
    atom(
      desk.steps.row({
        label: `${label}, ${which}`,
        formula,
        value: worthMm,
        unit: 'mm',
        words: `from the table on ${desk.data.name}, for "${String(worth)}"`,
      }),
      worthMm,
    );
  return {
    ref: { parts: { upperMm: side('upper', formulas.upper, value.upperMm), lowerMm: side('lower', formulas.lower, value.lowerMm) } },
    conditions: [...conditions, ...(isFollowed ? [`ISNUMBER(MATCH(${cellOf(first.area)},${desk.data.names(table)},0))`] : [])],
    live: true,
  };
}

/** The cells of a row or column. */
function rowsOf(area: Area | undefined): readonly Area[] | undefined {
  if (area === undefined) return undefined;
  const isColumn = area.bottom > area.top;
  return Array.from({ length: isColumn ? area.bottom - area.top + 1 : area.right - area.left + 1 }, (_, i): Area => {
    const [top, left] = isColumn ? [area.top + i, area.left] : [area.top, area.left + i];
    return { sheet: area.sheet, top, left, bottom: top, right: left };
  });
}

/** Rows behind the last one are left out while they are blank. */
const spareRows = (areas: readonly Area[]): string[] => areas.map(area => `OR(${cellOf(area)}="",${cellOf(area)}=0)`);

interface ListBound extends Bound {
  readonly cells: readonly string[];
}

/** Rows of a list: the user's cells one by one, so that each can be signed and checked. */
function boundList(desk: Desk, param: Param, argument: Argument, values: readonly number[], label: string): ListBound | undefined {
  const { node, sheet } = argument;
  const area = node === null ? undefined : areaOf(node, sheet);
  const unit = param.kind.unit;
  const limits = listLimits(param);
  if (area === undefined || isOneCell(area)) {
    const [value = 0] = values;
    if (values.every(item => item === value)) {
      const one = boundNumber(desk, { ...param, ...(limits === undefined ? {} : { limits }) }, argument, value, label);
      const cell = one === undefined ? undefined : scalarText(one.ref);
      if (one === undefined || cell === undefined) return undefined;
      return { ...one, ref: { items: values.map(item => atom(cell, item)) }, cells: values.map(() => cell) };
    }
  } else {
    const areas = rowsOf(area) ?? [];
    if (values.every((value, i) => areas[i] !== undefined && isNumberCell(desk, areas[i], unit, value))) {
      const cells = values.map((_, i) => cellOf(areas[i] as Area));
      if (areas.length - values.length > MOST_WATCHED) return undefined;
      return {
        ref: { items: cells.map((cell, i) => atom(cell, values[i])) },
        conditions: [...new Set(cells)]
          .flatMap(cell => [`ISNUMBER(${cell})`, ...limitFormulas(cell, limits)])
          .concat(spareRows(areas.slice(values.length))),
        live: true,
        cells,
      };
    }
  }
  const conditions = asSent(desk, argument);
  if (conditions === undefined) return undefined;
  const cells = values.map((value, i) =>
    desk.steps.row({
      label: `${label} ${i + 1}`,
      value,
      unit,
      words: isLiteral(node) || node?.type === 'ArrayExpression' ? 'typed in the formula' : 'value, not live',
    }),
  );
  return { ref: { items: cells.map((cell, i) => atom(cell, values[i])) }, conditions, live: isLiteral(node), cells };
}

/** Each row on its own: half widths are followed, other deviations stay. */
function boundDeviations(desk: Desk, param: Param, argument: Argument, { upperMm, lowerMm }: Deviations, label: string): Bound | undefined {
  const halves = upperMm.map((upper, i) => halfOf({ upperMm: upper, lowerMm: lowerMm[i] ?? 0 }));
  const cells = argument.node === null ? undefined : rowsOf(areaOf(argument.node, argument.sheet));
  if (halves.every(half => half !== undefined) || cells === undefined || cells.length < upperMm.length)
    return sameBothWays(desk, param, argument, { upperMm, lowerMm }, label);
  const rows = upperMm.map((upper, i): Bound => {
    const [area, half, lower] = [cells[i] as Area, halves[i], lowerMm[i] ?? 0];
    const cell = cellOf(area);
    if (half !== undefined && isNumberCell(desk, area, param.kind.unit, half))
      return {
        ref: { parts: { upperMm: atom(cell, half), lowerMm: negative(atom(cell, half)) } },
        conditions: [`ISNUMBER(${cell})`, `${cell}>=0`],
        live: true,
      };
    const side = (which: string, value: number): Ref =>
      atom(
        desk.steps.row({
          label: `${label} ${i + 1}, ${which}`,
          value,
          unit: 'mm',
          words: 'value, not live: one cell holds both deviations',
        }),
        value,
      );
    return {
      ref: { parts: { upperMm: side('upper', upper), lowerMm: side('lower', lower) } },
      conditions: sameAs(cell, sentAs(desk, area.sheet, addressOf(area))) ?? [],
      live: false,
    };
  });
  const items = (key: string): Ref => ({ items: rows.map(({ ref }) => (ref as { parts: Record<string, Ref> }).parts[key] as Ref) });
  return {
    ref: { parts: { upperMm: items('upperMm'), lowerMm: items('lowerMm') } },
    conditions: rows.flatMap(({ conditions }) => conditions).concat(spareRows(cells.slice(upperMm.length))),
    live: rows.some(({ live }) => live),
  };
}

function sameBothWays(desk: Desk, param: Param, argument: Argument, value: Deviations, label: string): Bound | undefined {
  if (value.upperMm.every((upper, i) => upper + (value.lowerMm[i] ?? 0) === 0)) {
    const list = boundList(desk, param, argument, value.upperMm, label);
    if (list === undefined) return undefined;
    const lower: Ref = { items: list.cells.map((cell, i) => negative(atom(cell, value.upperMm[i] ?? 0))) };
    return {
      ref: { parts: { upperMm: list.ref, lowerMm: lower } },
      conditions: [...list.conditions, ...[...new Set(list.cells)].map(cell => `${cell}>=0`)],
      live: list.live,
    };
  }
  const side = (list: readonly number[], which: string): Ref => ({
    items: list.map((deviation, i) =>
      atom(desk.steps.row({ label: `${label} ${i + 1}, ${which}`, value: deviation, unit: 'mm', words: 'value, not live' }), deviation),
    ),
  });
  return fixed(desk, argument, { parts: { upperMm: side(value.upperMm, 'upper'), lowerMm: side(value.lowerMm, 'lower') } });
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
  const columns: Readonly<Record<string, string>> = {
    nominalMm: screw.isTapping ? 'majorMax' : 'nominal',
    majorMaxMm: 'majorMax',
    majorMinMm: 'majorMin',
    rootMaxMm: 'rootMax',
    pitchMm: 'pitch',
  };
  return { key: columns[key] ?? key };
}

export interface SizeKey {
  /** Cell, or the name of the row in quotes. */
  readonly key: string;
  readonly conditions: readonly string[];
  readonly live: boolean;
}

/** The cell or quoted text with which a table of this screw's family is entered. A size that is spelled otherwise than in the table is not followed. */
export function sizeKey(desk: Desk, argument: Argument, row: string): SizeKey | undefined {
  const area = oneCell(argument);
  const raw = area === undefined ? undefined : desk.source.value(area.sheet, addressOf(area));
  if (area !== undefined && typeof raw === 'string' && raw.toLowerCase() === row.toLowerCase())
    return { key: cellOf(area), conditions: [], live: true };
  const conditions = asSent(desk, argument);
  return conditions === undefined ? undefined : { key: quoted(row), conditions, live: isLiteral(argument.node) };
}

/** Only the parts that the formula reads get a row. */
function boundScrew(desk: Desk, argument: Argument, screw: Screw, needed: ReadonlySet<string>): Bound | undefined {
  const table = threadTable(screw.size);
  const found = sizeKey(desk, argument, threadRow(screw.size));
  if (found === undefined) return undefined;
  const parts = SCREW_PARTS.filter(([part]) => needed.has(part)).map(([part, label]) => {
    const column = screwColumn(screw, part);
    const looked = desk.data.lookup(table, column.key, found.key);
    const value = screw[part];
    return [
      part,
      atom(
        desk.steps.row({
          label: `screw: ${label}`,
          formula: column.inverse === true ? `25.4/${looked}` : looked,
          value,
          unit: 'mm',
          words: `from the table on ${desk.data.name}`,
          source: `${table.standard}:${table.edition}`,
        }),
        value,
      ),
    ] as const;
  });
  return { ref: { parts: Object.fromEntries(parts) }, conditions: found.conditions, live: found.live };
}

/** A record of the core: one number that stands in a cell is followed, the rest is not. */
function boundRecord(desk: Desk, param: Param, argument: Argument, value: object, label: string): Bound | undefined {
  const numbers = Object.entries(value).filter((entry): entry is [string, number] => typeof entry[1] === 'number');
  const [first] = numbers;
  if (first !== undefined && numbers.length === 1) {
    const bound = boundNumber(desk, param, argument, first[1], label);
    return bound && { ...bound, ref: { parts: { [first[0]]: bound.ref } } };
  }
  const parts = numbers.map(
    ([key, part]) =>
      [
        key,
        atom(desk.steps.row({ label: `${label} ${key.replace(/(Mm|Deg)$/, '')}`, value: part, words: 'value, not live' }), part),
      ] as const,
  );
  return fixed(desk, argument, { parts: Object.fromEntries(parts) });
}

function boundWord(desk: Desk, param: Param, argument: Argument, value: string): Bound | undefined {
  if (isLiteral(argument.node)) return { ref: text(value), conditions: [], live: true };
  const area = oneCell(argument);
  if (area === undefined) return fixed(desk, argument, text(value));
  const words = choicesOf(param);
  const at = addressOf(area);
  const raw = desk.source.value(area.sheet, at);
  const fallback =
    typeof param.blank === 'object' && 'default' in param.blank && typeof param.blank.default === 'string'
      ? quoted(param.blank.default)
      : undefined;
  if (words.length > 0 && desk.source.cell(area.sheet, at)?.formula === undefined)
    desk.validations.set(`${area.sheet}!${at}`, {
      range: at,
      words: `${labelOf(param)}: ${words.join(', ')}`,
      list: desk.data.choices(labelOf(param), words),
    });
  const row = desk.steps.row({
    label: labelOf(param),
    formula: choiceFormula(cellOf(area), words, fallback, isBlank(raw) ? undefined : { typed: raw, means: value }),
    value,
    words: words.length === 0 ? 'as sent' : words.join(', '),
  });
  return { ref: atom(row, value), conditions: [], live: words.length > 1 };
}

/** One argument, by its kind. Nothing where its cells cannot be followed or watched. */
export function bind(desk: Desk, param: Param, argument: Argument, value: unknown, needed: ReadonlySet<string>): Bound | undefined {
  const label = labelOf(param);
  const { kind } = param;
  if (value === undefined) return fixed(desk, argument, atom('""', ''));
  switch (kind.is) {
    case 'quantity':
    case 'whole':
    case 'limit':
    case 'anything':
      return typeof value === 'number'
        ? boundNumber(desk, param, argument, value, label)
        : boundWord(desk, param, argument, value as string);
    case 'choice':
    case 'grade':
    case 'function name':
    case 'joint output':
      return boundWord(desk, param, argument, value as string);
    case 'screw':
      return boundScrew(desk, argument, value as Screw, needed);
    case 'deviation':
      return boundDeviation(desk, param, argument, value as Deviation, label);
    case 'list':
      return boundRows(desk, param, argument, kind.of.is, value, label);
    case 'cone':
    case 'size with limits':
    case 'screw size':
    case 'head':
    case 'group':
    case 'material':
      return boundRecord(desk, param, argument, value as object, label);
    case 'names':
    case 'values':
    case 'block':
      return fixed(desk, argument, { parts: {} });
    default:
      return forgotten(kind);
  }
}

function boundRows(desk: Desk, param: Param, argument: Argument, of: Nature['is'], value: unknown, label: string): Bound | undefined {
  if (of === 'quantity') return boundList(desk, param, argument, value as readonly number[], label);
  return of === 'deviation' ? boundDeviations(desk, param, argument, value as Deviations, label) : fixed(desk, argument, { parts: {} });
}
