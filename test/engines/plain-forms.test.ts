// Every plain form and every look-up, worked out anew by two spreadsheet programs from cells of its own, is what the function gives.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { applied, callCard, readArguments } from '../../src/core/call';
import { type Card, NOTHING_READ, type Param } from '../../src/core/card';
import type { Limits } from '../../src/core/kinds';
import { Refused } from '../../src/core/refuse';
import { DataSheet } from '../../src/handover/compile/data-sheet';
import { address } from '../../src/sheet/addresses';
import { LOOK_UPS, type Reader } from '../../src/handover/compile/lookups';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { formOfCard } from '../../src/plain/forms';
import { atom, type CellFormula, type Ref, spreadsheetFormulas } from '../../src/plain/spreadsheet';
import type { Form } from '../../src/plain/tree';
import { CARDS } from '../../src/registry';
import type { PlanCell } from '../../src/sheet/plan';
import { isNumber, isWhole, nounOf, offered, usualNumber } from '../kit/arguments';
import { SEED } from '../kit/seed';
import { recalculate, type Recalculated, type Values } from './harness';

const SETS = 50;
const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
/** What a program shows that did not work the cell out. */
const POISON = -999;

// ---- arguments within the limits of a card --------------------------------------------------------------------------

const METRIC = ['M1.6', 'M2', 'M2.5', 'M3', 'M3.5', 'M4', 'M5', 'M6'];
const TAPPING = ['ST1.5', 'ST1.9', 'ST2.2', 'ST2.6', 'ST2.9', 'ST3.3', 'ST3.5', 'ST3.9', 'ST4.2', 'ST4.8'];
const GAUGES = ['#0', '#1', '#2', '#3', '#4', '#5', '#6', '#8', '#10', '1/4'];
const UNIFIED = [
  '#0-80',
  '#1-64',
  '#1-72',
  '#2-56',
  '#2-64',
  '#3-48',
  '#3-56',
  '#4-40',
  '#4-48',
  '#5-40',
  '#5-44',
  '#6-32',
  '#6-40',
  '#8-32',
  '#8-36',
  '#10-24',
  '#10-32',
  '1/4-20',
  '1/4-28',
];
const SCREWS = [...METRIC, ...TAPPING, ...UNIFIED, ...GAUGES.flatMap(gauge => [`${gauge} AB`, `${gauge} B`])];
const SIZE_TEXTS = ['1.6 ±10%', '3.2 +0.1/-0', '10 -0.2/-0.4', '3.4..3.6', '0.5 in ±1 mm', '-0.2 ±0.1'];

/** Numbers as people type them: two that differ in their last bit alone would compare the rounding of programs. */
const typed = (noun: string, limits: Limits | undefined): fc.Arbitrary<number> =>
  usualNumber(noun, limits).map(value => Math.round(value * 1000) / 1000);
const half = typed('tolerance', undefined);
const deviation = fc.oneof(
  half,
  fc.tuple(half, half).map(([up, down]) => `+${up}/-${down}`),
);

function one(param: Param): fc.Arbitrary<unknown> {
  const noun = nounOf(param);
  if (noun === 'screw') return fc.constantFrom(...SCREWS);
  if (noun === 'nut') return fc.constantFrom(...METRIC);
  if (noun === 'tolerance') return deviation;
  if (noun === 'size with its limits') return fc.constantFrom(...SIZE_TEXTS);
  if (isWhole(param)) return fc.integer({ min: 1, max: 9 }).filter(whole => whole <= (param.limits?.atMost ?? 9));
  const words = offered(param);
  if (!isNumber(param) && words.length > 0) return fc.constantFrom(...words);
  const number = typed(noun, param.limits);
  return words.length === 0 ? number : fc.oneof({ weight: 5, arbitrary: number }, { weight: 1, arbitrary: fc.constantFrom(...words) });
}

/** Lists of one group get equal counts; one alone may stand for all. */
function argumentSets(card: Card): fc.Arbitrary<unknown[]> {
  return fc.integer({ min: 1, max: 6 }).chain(rows =>
    fc.tuple(
      ...card.params.map(param => {
        const value =
          param.kind.shape === 'list'
            ? fc.oneof(
                {
                  weight: 4,
                  arbitrary: fc.array(one(param), { minLength: rows, maxLength: rows }).map(list => list.map(entry => [entry])),
                },
                { weight: 1, arbitrary: one(param) },
              )
            : one(param);
        return param.optional ? fc.oneof({ weight: 3, arbitrary: value }, { weight: 1, arbitrary: fc.constant(null) }) : value;
      }),
    ),
  );
}

/** The example, then seeded sets that the function takes. */
function acceptedSets(card: Card): unknown[][] {
  const sets = fc.sample(argumentSets(card), { seed: SEED, numRuns: 40 * SETS }).filter(args => callCard(card, args).ok);
  return [[...card.example.args], ...sets.slice(0, card.params.length === 0 ? 0 : SETS)];
}

// ---- one row of cells a call -----------------------------------------------------------------------------------------

interface Asked {
  readonly id: string;
  readonly args: readonly unknown[];
  /** Formula and expected value by cell; nothing where the function refuses. */
  readonly results: readonly { readonly at: string; readonly formula: string; readonly value: number | string | undefined }[];
}

const SHEET = 'Calls';
const cells: PlanCell[] = [];
const asked: Asked[] = [];
let row = 0;

/** Puts values into cells of the row, one after the other, behind the results. */
class Row {
  private column = 30;
  put(value: number | string): string {
    const at = address(row, this.column++);
    cells.push({ at, role: 'input', value });
    return at;
  }
}

const isScalar = (value: unknown): value is number | string => typeof value === 'number' || typeof value === 'string';

/** A core value as references to cells that hold it: a list as one range in every other call, so that both forms of sums are seen. */
function refOf(value: unknown, into: Row, asRange: boolean): Ref {
  if (isScalar(value)) return atom(into.put(value));
  if (Array.isArray(value)) {
    const list = (value as number[]).map(item => into.put(item));
    return asRange ? { range: `${list[0]}:${list.at(-1)}` } : { items: list.map(at => atom(at)) };
  }
  const parts = Object.entries(value ?? {}).filter(([, part]) => isScalar(part) || (Array.isArray(part) && part.every(isScalar)));
  return { parts: Object.fromEntries(parts.map(([key, part]) => [key, refOf(part, into, asRange)])) };
}

function ask(id: string, args: readonly unknown[], formulas: readonly string[], values: readonly unknown[]): void {
  expect(formulas.length, id).toBe(values.length);
  const results = formulas.map((formula, i) => ({ at: address(row, i), formula, value: values[i] as number | string | undefined }));
  cells.push(...results.map(({ at, formula }): PlanCell => ({ at, role: 'result', formula: `=${formula}`, value: POISON })));
  asked.push({ id, args, results });
  row++;
}

const isOneFormula = (given: ReturnType<typeof spreadsheetFormulas>): given is CellFormula => 'formula' in given;

function askForm(card: Card, form: Form, args: readonly unknown[], asRange: boolean): void {
  const values = readArguments(card, args);
  const into = new Row();
  const printed = spreadsheetFormulas(
    form,
    values.map(value => refOf(value, into, asRange)),
  );
  const formulas = isOneFormula(printed) ? [printed] : (printed.flat() as CellFormula[]);
  ask(
    card.id,
    args,
    formulas.map(({ formula }) => formula),
    [applied(card, values)].flat(2),
  );
}

// ---- look-ups --------------------------------------------------------------------------------------------------------

const data = new DataSheet();
const SIZES = [...SCREWS, ...GAUGES];
const HEADS = [
  'pan',
  'slotted pan',
  'hexalobular pan',
  'cheese',
  'countersunk',
  'raised countersunk',
  'socket cap',
  'button',
  'fillister',
  'round',
  'ISO 7045',
  'ISO 10642',
  'DIN 7991',
  'ISO 7046-2',
  'DIN 7981',
];
const SIZES_MM = fc.sample(fc.noBias(fc.integer({ min: 2, max: 5200 })), { seed: SEED, numRuns: 40 }).map(tenths => tenths / 10);
const AT_LIMITS_MM = [0.4, 0.5, 0.9, 1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 500.1, 1000, 1000.1, 4000, 4000.1];

/** Every size with every word that the arguments behind it take. */
const LISTS: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  'SCREW.MAJOR': [SIZES, ['max', 'min', 'nominal']],
  'SCREW.ROOT': [SIZES, ['max', 'min']],
  'SCREW.PITCH': [SIZES],
  'SCREW.POINT': [SIZES, ['cone', 'flat']],
  'SCREW.HEAD.DIAMETER': [SIZES, HEADS, ['max', 'min', 'nominal', 'sharp']],
  'SCREW.HEAD.HEIGHT': [SIZES, HEADS, ['max', 'min', 'nominal']],
  'NUT.HEIGHT': [SIZES, ['max', 'min']],
  'HOLE.CLEARANCE': [SIZES, ['fine', 'medium', 'coarse', 'DIN 74-1'], ['nominal', 'max', 'min']],
  'TOL.IT': [[...SIZES_MM, ...AT_LIMITS_MM], Array.from({ length: 12 }, (_, i) => `IT${i + 5}`)],
  'TOL.GENERAL': [
    [...SIZES_MM, ...AT_LIMITS_MM],
    ['f', 'm', 'c', 'v'],
  ],
  'TOL.MOULDED': [
    [...SIZES_MM, ...AT_LIMITS_MM],
    ['DIN 16901-130', 'DIN 16742-TG6'],
    ['same', 'across'],
  ],
};

const combinations = (lists: readonly (readonly unknown[])[]): unknown[][] =>
  lists.reduce<unknown[][]>((rows, list) => rows.flatMap(before => list.map(value => [...before, value])), [[]]);

const given = <T>(work: () => T): T | undefined => {
  try {
    return work();
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
};

/** What the arguments stand for; where they are refused, the first with what the words stand for beside another one: a sheet that is handed over may change its size. */
function looked(card: Card, [first, ...words]: readonly unknown[]): readonly unknown[] | undefined {
  const values = given(() => readArguments(card, [first, ...words]));
  const other = LISTS[card.id]?.[0]?.find(size => callCard(card, [size, ...words]).ok);
  if (other === undefined) return undefined;
  return values ?? [card.params[0]?.kind.read(first, NOTHING_READ), ...readArguments(card, [other, ...words]).slice(1)];
}

/** The size in a cell in every other call, else quoted, as the hand-over writes both. What no table has must give no number either. */
function askLookUp(card: Card, args: readonly unknown[], asCell: boolean): void {
  const values = looked(card, args);
  if (values === undefined) return;
  const into = new Row();
  const reader: Reader = {
    size: name => (asCell ? into.put(name) : `"${name}"`),
    cell: index => into.put(values[index] as number),
    lookup: (table, key, name) => data.lookup(table, key, name),
    band: (table, key, size) => data.band(table, key, size),
  };
  const formula = given(() => LOOK_UPS[card.id]?.(reader, values));
  const answer = callCard(card, args);
  if (formula !== undefined) ask(card.id, args, [formula], [answer.ok ? answer.value : undefined]);
}

// ---- the workbook ----------------------------------------------------------------------------------------------------

const FORMS = [...CARDS.values()].flatMap(card => {
  const form = formOfCard(card.id);
  return form === undefined ? [] : [{ id: card.id, card, form }];
});

let found: Recalculated;

beforeAll(async () => {
  for (const { card, form } of FORMS) acceptedSets(card).forEach((args, i) => askForm(card, form, args, i % 2 === 1));
  for (const [id, lists] of Object.entries(LISTS)) {
    const card = CARDS.get(id) as Card;
    combinations(lists).forEach((args, i) => askLookUp(card, args, i % 2 === 0));
  }
  const plan = { name: 'Plain forms', sheets: [{ name: SHEET, widths: [], cells }, data.plan()] };
  found = await recalculate(await writeWorkbook(plan));
  const formulas = asked.reduce((sum, { results }) => sum + results.length, 0);
  console.log(`${FORMS.length} forms and ${Object.keys(LISTS).length} look-ups, ${asked.length} calls, ${formulas} formulas`);
});

function near(actual: unknown, expected: number | string | undefined): boolean {
  if (expected === undefined) return typeof actual !== 'number';
  if (typeof expected === 'string' || typeof actual !== 'number') return actual === expected;
  return Math.abs(actual - expected) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(expected));
}

/** What an engine reads otherwise, with the formula that it read. */
const otherwise = (id: string, values: Values): string[] =>
  asked
    .filter(one => one.id === id)
    .flatMap(({ args, results }) =>
      results
        .filter(({ at, value }) => !near(values.get(`${SHEET}!${at}`), value))
        .map(
          ({ at, formula, value }) => `${JSON.stringify(args)}: ${String(values.get(`${SHEET}!${at}`))}, not ${String(value)}: ${formula}`,
        ),
    );

describe.each(['libreoffice', 'gnumeric'] as const)('%s', engine => {
  test.each(FORMS)('$id', ({ id, card }) => {
    expect(asked.filter(one => one.id === id).length).toBe(card.params.length === 0 ? 1 : SETS + 1);
    expect(otherwise(id, found[engine])).toEqual([]);
  });

  test.each(Object.keys(LISTS))('look-up %s', id => {
    expect(asked.filter(one => one.id === id).length).toBeGreaterThan(50);
    expect(otherwise(id, found[engine])).toEqual([]);
  });
});

test('every look-up of the hand-over is here', () => {
  expect(Object.keys(LISTS).sort()).toEqual(Object.keys(LOOK_UPS).sort());
});
