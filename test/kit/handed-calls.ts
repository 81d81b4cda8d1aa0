// Every live function handed over from cells, one of its inputs changed in the copy, which is then worked out anew:
// the copy gives what the function gives for the changed input, and no number where the function refuses.
import fc from 'fast-check';
import type { Card, Param } from '../../src/core/card';
import type { Cell } from '../../src/core/kinds';
import { convert } from '../../src/handover/compile/convert';
import { address } from '../../src/sheet/addresses';
import { LOOK_UPS } from '../../src/handover/compile/lookups';
import type { SourceCell } from '../../src/sheet/workbook-values';
import { formOfCard } from '../../src/plain/forms';
import { call, CARDS } from '../../src/registry';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import { exampleInNumbers, isNumber, isWhole, nounOf, offered, usualNumber } from './arguments';
import { SEED } from './seed';
import type { Values } from './worked-out';

const SAMPLES = 4;
/** Beside a limit; nearer to it programs compare with less care, and a tangent near 90° has fewer digits. */
const STEP = 1e-3;
const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
const POISON = -999;
const SHEET = 'Calls';
const ARGUMENTS_FROM = 10;
/** Of the largest table, with its header. */
const ROWS = 8;

const isLive = (card: Card): boolean =>
  card.notLive === undefined &&
  (formOfCard(card.id) !== undefined || card.id in LOOK_UPS || card.id === 'CHECK.MAX' || card.id === 'CHECK.MIN');
export const LIVE = [...CARDS.values()].filter(isLive);
const SAME_FAMILY: Readonly<Record<string, readonly string[]>> = {
  M: ['M2', 'M4', 'M2.5'],
  S: ['ST2.2', 'ST3.5', 'ST4.2'],
  '#': ['#2-56', '#6-32'],
};

/** Not so near a limit that programs see it on the other side. */
const isClear = (value: number, { limits = {} }: Param): boolean =>
  value !== 0 && Object.values(limits).every(limit => Math.abs(value - (limit as number)) > 1e-9);

type Change = 'followed' | 'refused or followed';

/** What is typed in place of one argument, and whether the copy must follow it. */
function changes(param: Param, base: unknown): (readonly [value: Cell | null, must: Change])[] {
  const noun = nounOf(param);
  const takesBlank = typeof base === 'number' && (param.blank === 'zero' || (typeof param.blank === 'object' && 'default' in param.blank));
  const out: (readonly [Cell | null, Change])[] = [
    [null, takesBlank ? 'followed' : 'refused or followed'],
    ['no such thing', 'refused or followed'],
  ];
  if (typeof base === 'string' && /^(M|ST|#)\d/.test(base)) {
    for (const size of SAME_FAMILY[base[0] ?? ''] ?? []) out.push([size, 'refused or followed']);
    out.push(['M3', 'refused or followed'], ['ST2.9', 'refused or followed'], ['#4-40', 'refused or followed']);
    if (noun === 'screw' || noun === 'screw size' || noun === 'nut')
      for (const size of SAME_FAMILY[base[0] ?? ''] ?? []) out.push([size, 'followed']);
  }
  if (typeof base === 'number' || isNumber(param)) {
    const must: Change = typeof base === 'number' ? 'followed' : 'refused or followed';
    const one = isWhole(param)
      ? fc.integer({ min: 1, max: 2 })
      : isNumber(param)
        ? usualNumber(noun, param.limits)
        : fc.double({ min: 0.01, max: 20, noNaN: true });
    const samples = fc.sample(one, { seed: SEED, numRuns: SAMPLES });
    for (const value of samples) if (isClear(value, param)) out.push([value, must]);
    if (typeof base === 'number') for (const factor of [0.9, 0.99, 1.01, 1.1]) out.push([base * factor, must]);
    const { above, atLeast, below, atMost } = param.limits ?? {};
    for (const limit of [above, atLeast, below, atMost])
      if (limit !== undefined)
        out.push([limit, 'refused or followed'], [limit + STEP, 'refused or followed'], [limit - STEP, 'refused or followed']);
    out.push([0, 'refused or followed'], [-1, 'refused or followed'], [1e6, 'refused or followed']);
  } else {
    for (const word of offered(param)) out.push([word, 'refused or followed']);
    for (const material of ['PC', 'PP', 'ABS']) out.push([material, 'refused or followed']);
  }
  return out;
}

interface Asked {
  readonly id: string;
  readonly what: string;
  readonly row: number;
  readonly must: Change;
  /** What the function gives for the changed arguments, value by value; nothing where it refuses. */
  readonly expected: readonly Cell[] | undefined;
  readonly size: number;
}

const asked: Asked[] = [];
const source = new Map<string, SourceCell>();
const changed = new Map<string, Cell | null>();

const listOf = (value: unknown): readonly unknown[] | undefined => (Array.isArray(value) ? (value as unknown[][]).flat() : undefined);
const flat = (value: Cell | Cell[][]): Cell[] => (Array.isArray(value) ? value.flat() : [value]);

/** A call in a row of its own: the formula first, its arguments in cells behind it. */
function ask(card: Card, base: readonly unknown[], param: number, entry: number, value: Cell | null, must: Change): void {
  const row = ROWS * asked.length;
  let column = ARGUMENTS_FROM;
  const next = base.map(arg => listOf(arg) ?? arg);
  const references = next.map((arg, i) => {
    const cells = (Array.isArray(arg) ? arg : [arg]).map((item, j) => {
      const at = address(row, column++);
      if (item !== null && item !== undefined) source.set(at, { value: item as Cell });
      if (i === param && (j === entry || !Array.isArray(arg))) changed.set(at, value);
      return at;
    });
    return cells.length === 1 ? cells[0] : `${cells[0]}:${cells[cells.length - 1]}`;
  });
  source.set(address(row, 0), { value: null, formula: `=ENCL.${card.id}(${references.join(',')})` });
  // in a cell of the copy a zero is a zero, where it takes no default; the function asks for its unit, since it cannot tell it from a blank
  const entries = param < 0 ? 0 : (listOf(base[param])?.length ?? 1);
  const given = value === 0 && (entries > 1 || typeof card.params[param]?.blank !== 'object') && !card.id.startsWith('CHECK') ? '0' : value;
  const args = next.map((arg, i) =>
    Array.isArray(arg) ? [arg.map((item, j) => (i === param && j === entry ? given : item))] : i === param ? given : arg,
  );
  const before = call(
    card.id,
    next.map(arg => (Array.isArray(arg) ? [arg] : arg)),
  );
  const answer = call(card.id, args);
  const values = answer.ok ? flat(answer.value) : undefined;
  asked.push({
    id: card.id,
    what: `${card.params[param]?.name ?? ''} ${String(value)}`,
    row,
    must,
    expected: values,
    size: before.ok ? flat(before.value).length : 1,
  });
}

for (const card of LIVE) {
  const example = exampleInNumbers(card);
  const base = card.params.map(
    (param, i) => example[i] ?? (typeof param.blank === 'object' && 'default' in param.blank ? param.blank.default : null),
  );
  ask(card, base, -1, 0, null, 'followed');
  card.params.forEach((param, i) => {
    const list = listOf(base[i]);
    for (const [value, must] of changes(param, list === undefined ? base[i] : list[0])) ask(card, base, i, 0, value, must);
  });
  if (card.id === 'CHECK.MAX' || card.id === 'CHECK.MIN')
    for (const limit of base.slice(1))
      if (typeof limit === 'number') for (const beside of [-1e-6, 0, 1e-6]) ask(card, base, 0, 0, limit + beside, 'followed');
}
/** Without notes, of which one program takes long to read thousands. */
const poisoned = ({ at, role, formula, value }: PlanCell): PlanCell => ({
  at,
  role,
  ...(formula === undefined ? (value === undefined ? {} : { value }) : { formula, value: POISON }),
});

const copy = convert({ name: 'Calls', sheets: [{ name: SHEET, cells: source }] });

/** What was not handed over live. */
export const dead = [...new Set(copy.findings.filter(({ what }) => what !== 'live' && what !== 'changed').map(({ words }) => words))];
/** The copy with the changes typed over it, no value of a formula kept. */
export const changedSheets: readonly SheetPlan[] = [...copy.sheets, copy.data.plan()].map(({ name, cells }): SheetPlan => ({
  name,
  widths: [],
  cells: name === SHEET ? typedInto(cells) : cells.map(poisoned),
}));

/** The cells with the changes typed over them. */
function typedInto(cells: readonly PlanCell[]): PlanCell[] {
  const kept = cells.filter(({ at }) => !changed.has(at)).map(poisoned);
  return [...kept, ...[...changed].flatMap(([at, value]): PlanCell[] => (value === null ? [] : [{ at, role: 'input', value }]))];
}

const near = (a: unknown, b: Cell): boolean =>
  typeof b === 'number' && typeof a === 'number' ? Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(b)) : a === b;

/** Whether the function was asked at all. */
export const countOf = (id: string): number => asked.filter(one => one.id === id).length;

/** What a program gives otherwise than the function. */
export function otherwise(id: string, values: Values): string[] {
  return asked
    .filter(one => one.id === id)
    .flatMap(({ what, row, must, expected, size }) => {
      const actual = cellsOf(values, row, id, size);
      const isRefusal = actual.some(
        value => typeof value === 'string' && (value.startsWith('#') || value === 'not checked' || value === 'inputs changed'),
      );
      if (expected === undefined)
        return isRefusal || actual.every(value => typeof value !== 'number')
          ? []
          : [`${what}: ${actual.join(' | ')}, refused by the function`];
      if (actual.length === expected.length && expected.every((value, i) => near(actual[i], value))) return [];
      return must === 'refused or followed' && isRefusal ? [] : [`${what}: ${actual.map(String).join(' | ')}, not ${expected.join(' | ')}`];
    });
}

function cellsOf(values: Values, row: number, id: string, size: number): unknown[] {
  const result = CARDS.get(id)?.result;
  const columns = result !== undefined && 'columns' in result ? result.columns.length : 1;
  return Array.from({ length: size }, (_, i) => values.get(`${SHEET}!${address(row + Math.floor(i / columns), i % columns)}`));
}
