// Calls that give a table, handed over from cells, several of their inputs changed in the copy, which is then worked out anew:
// each cell of the copy gives what the function gives for the changed inputs.
import fc from 'fast-check';
import type { Cell } from '../../src/core/kinds';
import { convert } from '../../src/handover/compile/convert';
import { address } from '../../src/sheet/addresses';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import type { SourceCell } from '../../src/sheet/workbook-values';
import { call, CARDS } from '../../src/registry';
import { SEED } from './seed';
import type { Values } from './worked-out';

const SHEET = 'Tables of calls';
const POISON = -999;
/** Room for the longest table, with its header. */
const ROWS = 60;
const ARGUMENTS_FROM = 12;
const RELATIVE = 1e-9;

type Column = readonly (Cell | null)[];
/** A cell, or a column of cells. */
type Argument = Cell | null | Column;

interface Case {
  readonly id: string;
  readonly row: number;
  readonly before: readonly (readonly Cell[])[];
  readonly after: readonly (readonly Cell[])[] | undefined;
  readonly what: string;
}

const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * 1000), max: Math.round(max * 1000) }).map(n => n / 1000);
const column = (of: fc.Arbitrary<Cell>, rows: number): fc.Arbitrary<Column> => fc.array(of, { minLength: rows, maxLength: rows });
const word = (...words: readonly string[]): fc.Arbitrary<string> => fc.constantFrom(...words);
const either = fc.constantFrom(1, -1, 0.5, -2);

const FAMILIES: readonly (readonly string[])[] = [['ST2.9', 'ST2.2', 'ST3.5', 'ST4.2'], ['M3', 'M2', 'M2.5', 'M4'], ['#4-40'], ['#4 B']];

const stack = (rows: number): readonly fc.Arbitrary<Argument>[] => [
  column(word('floor', 'board', 'seat', 'washer'), rows),
  column(number(0.5, 20), rows),
  column(number(0.02, 0.4), rows),
  column(either, rows),
];
const lengths = (sizes: readonly string[], layers: number): readonly fc.Arbitrary<Argument>[] => [
  word(...sizes),
  column(number(1, 4), layers),
  column(number(0.05, 0.2), layers),
  number(1.2, 3.2),
  number(6, 24),
  number(0.2, 1.5),
  number(0.1, 1),
  number(0.02, 0.2),
  word('cone', 'flat'),
];
const common = (sizes: readonly string[], joints: number): readonly fc.Arbitrary<Argument>[] => [
  word(...sizes),
  column(number(2, 8), joints),
  column(number(0.1, 0.4), joints),
  column(number(8, 24), joints),
  number(1.2, 2.6),
  number(0.2, 1.5),
  number(0.1, 1),
  number(0.02, 0.2),
  word('cone', 'flat'),
];
const CONFLICT = [word('ST2.9', 'ST3.5'), number(1.5, 4), number(1.8, 2.6), number(1.5, 3), number(0.4, 0.8)];

export const JOINT: readonly (readonly [name: string, of: fc.Arbitrary<Cell>])[] = [
  ['screw', fc.constant('ST2.9')],
  ['head', fc.constant('ISO 7049')],
  ['length', fc.constantFrom(13, 16, 19, 22)],
  ['wall', number(1.6, 3.2)],
  ['board plane', number(4, 8)],
  ['seat', number(1, 3)],
  ['board', number(1, 2)],
  ['hole', number(3, 3.8)],
  ['relief', number(0.2, 1.2)],
  ['pilot', number(2.2, 2.6)],
  ['pilot held at', word('mouth', 'mid')],
  ['boss OD', number(4.5, 8)],
  ['boss height', number(10, 24)],
  ['hole depth', number(9, 20)],
  ['bottom gap', number(0.2, 1.5)],
];
const checked: fc.Arbitrary<Argument>[] = [fc.tuple(...JOINT.map(([, of]) => of))];

const PLANS: readonly (readonly [id: string, args: readonly fc.Arbitrary<Argument>[], runs: number])[] = [
  ...[1, 3, 6].map(rows => ['STACK.TABLE', stack(rows), 12] as const),
  ...[2, 5].map(rows => ['STACK.SHARE', stack(rows).slice(2), 12] as const),
  ...FAMILIES.flatMap(sizes => [
    ['SCREW.LENGTH.TABLE', lengths(sizes, 2), 16] as const,
    ['SCREW.LENGTH.PICK', lengths(sizes, 3), 16] as const,
    ['SCREW.LENGTH.COMMON', common(sizes, 3), 8] as const,
  ]),
  // a type B screw is not typed as its table has it: its text is watched
  ...FAMILIES.slice(0, 3).map(sizes => ['SCREW.LENGTHS', [word(...sizes)], 6] as const),
  ['BOSS.CONFLICT', CONFLICT, 12],
  ['CHECK.JOINT', checked, 24],
  ['CHECK.BOSS', checked, 12],
];

export const TABLES = [...new Set(PLANS.map(([id]) => id))];
const isCheck = (id: string): boolean => id.startsWith('CHECK.');

const source = new Map<string, SourceCell>();
const changed = new Map<string, Cell | null>();
const cases: Case[] = [];

const rowsOf = (id: string, args: readonly Argument[]): readonly (readonly Cell[])[] | undefined => {
  const ranges = isCheck(id)
    ? [JOINT.map(([name], i) => [name, (args[0] as Column)[i]])]
    : args.map(arg => (Array.isArray(arg) ? (arg as Column).map(cell => [cell]) : arg));
  const answer = call(id, ranges);
  if (!answer.ok) return undefined;
  return Array.isArray(answer.value) ? answer.value : [[answer.value]];
};

/** A call in a row of its own: the formula first, its arguments in cells behind it. */
function ask(id: string, base: readonly Argument[], next: readonly Argument[]): void {
  const before = rowsOf(id, base);
  if (before === undefined) return;
  const row = ROWS * cases.length;
  let c = ARGUMENTS_FROM;
  const references = base.map((arg, i) => {
    const [cells, others] = [arg, next[i]].map(one => (Array.isArray(one) ? (one as Column) : [one as Cell | null]));
    const named = isCheck(id) ? c++ : c;
    (cells ?? []).forEach((value, r) => {
      if (isCheck(id)) source.set(address(row + r, named), { value: JOINT[r]?.[0] ?? '' });
      source.set(address(row + r, c), { value });
      if (others?.[r] !== value) changed.set(address(row + r, c), others?.[r] ?? null);
    });
    const range = `${address(row, named)}:${address(row + (cells?.length ?? 1) - 1, c)}`;
    c += 1;
    return Array.isArray(arg) ? range : range.split(':')[0];
  });
  source.set(address(row, 0), { value: null, formula: `=ENCL.${id}(${references.join(',')})` });
  cases.push({ id, row, before, after: rowsOf(id, next), what: JSON.stringify(next) });
}

for (const [id, args, runs] of PLANS) {
  const pairs = fc.sample(fc.tuple(fc.tuple(...args), fc.tuple(...args)), {
    seed: SEED + cases.length,
    numRuns: runs,
  });
  // every other one differs in one argument only
  pairs.forEach(([base, next], n) =>
    ask(id, base, n % 2 === 0 || isCheck(id) ? next : base.map((arg, i) => (i === n % base.length ? (next[i] as Argument) : arg))),
  );
}

const copy = convert({ name: 'Tables', sheets: [{ name: SHEET, cells: source }] });

/** What was not handed over live. */
export const dead = [...new Set(copy.findings.filter(({ what }) => what !== 'live' && what !== 'changed').map(({ words }) => words))];

export const sentSheets: readonly SheetPlan[] = [...copy.sheets, copy.data.plan()];

const poisoned = ({ at, role, formula, value }: PlanCell): PlanCell => ({
  at,
  role,
  ...(formula === undefined ? (value === undefined ? {} : { value }) : { formula, value: POISON }),
});

/** The copy with the changes typed over it, no value of a formula kept. */
export const changedSheets: readonly SheetPlan[] = sentSheets.map(({ name, cells }) => ({
  name,
  widths: [],
  cells:
    name === SHEET
      ? [
          ...cells.filter(({ at }) => !changed.has(at)).map(poisoned),
          ...[...changed].map(([at, value]): PlanCell => ({ at, role: 'input', ...(value === null ? {} : { value }) })),
        ]
      : cells.map(poisoned),
}));

const near = (a: unknown, b: Cell): boolean =>
  typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= Math.max(1e-12, RELATIVE * Math.abs(b)) : a === b;

export interface Compared {
  /** Cells that were compared, of them texts with a number in them. */
  readonly cells: number;
  readonly sentences: number;
  /** Calls that are refused after the change, or judged by other rules. */
  readonly refused: number;
  /** Rules of which the copy says that it has not checked them, where the function does. */
  readonly unchecked: number;
  readonly faults: readonly string[];
}

/** What a program gives for one function, against what the function gives; `isSent`: for the inputs as they were sent. */
export function compared(id: string, values: Values, isSent = false): Compared {
  const faults: string[] = [];
  let [cells, sentences, refused, unchecked] = [0, 0, 0, 0];
  for (const { row, before, after, what } of cases.filter(one => one.id === id)) {
    const actual = (r: number, c: number): unknown => values.get(`${SHEET}!${address(row + r, c)}`);
    const expected = isSent ? before : after;
    const titles = CARDS.get(id)?.result.shape === 'table' ? 1 : 0;
    if (expected === undefined || (isCheck(id) && !isSent && names(expected) !== names(before))) {
      refused += 1;
      before.slice(titles).forEach((line, r) =>
        line.forEach((_, c) => {
          const found = actual(r + titles, c);
          if (typeof found === 'number' && !isCheck(id)) faults.push(`${what} [${r}][${c}]: ${found}, refused`);
          if (isCheck(id) && c === 4 && found !== 'not checked') faults.push(`${what} [${r}]: ${String(found)}, the rules are others`);
        }),
      );
      continue;
    }
    expected.forEach((line, r) => {
      if (isCheck(id) && !isSent && r > 0 && actual(r, 4) === 'not checked' && line[4] !== 'not checked') {
        unchecked += 1;
        if ([actual(r, 1), actual(r, 2)].some(found => typeof found === 'number')) faults.push(`${what} [${r}]: a number, not checked`);
        return;
      }
      line.forEach((worth, c) => {
        cells += 1;
        if (typeof worth === 'string' && /\d\.\d/.test(worth)) sentences += 1;
        const found = actual(r, c);
        const isRemedy = isCheck(id) && c === 6 && r > 0 && !isSent;
        const isNone = typeof worth === 'string' && worth.startsWith('no value') && !isSent;
        if (isRemedy ? found === 'inputs changed' : isNone ? found === 'no value' : near(found, worth)) return;
        faults.push(`${what} [${r}][${c}]: ${String(found)}, not ${String(worth)}`);
      });
    });
  }
  return { cells, sentences, refused, unchecked, faults };
}

const names = (rows: readonly (readonly Cell[])[]): string => rows.map(([name]) => name).join();
