// Every function of functions.json, called in the runtime the way each platform sends its arguments, answers as the core does.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Card } from '../../src/core/card';
import type { Outcome } from '../../src/core/call';
import { CARDS, call } from '../../src/registry';
import { RELEASED } from '../../src/release/signatures';
import { exampleWith } from '../kit/arguments';
import { formatted as asFormatted, HOST_VALUES, KNOWN_CODES } from '../kit/host-values';
import { BUILT, DATA_TYPES, ERRORS, excel, type Call, type Excel, type Handed } from './excel';

const metadata = JSON.parse(readFileSync(path.join(BUILT, 'functions.json'), 'utf8')) as {
  readonly functions: readonly { readonly id: string }[];
  readonly allowErrorForDataTypeAny?: boolean;
  readonly allowCustomDataForDataTypeAny?: boolean;
};
const ids = metadata.functions.map(({ id }) => id);

/** As the host sends them, and as the core takes them. */
interface Sent extends Call {
  readonly what: string;
  readonly core: readonly unknown[];
}

const plain = (what: string, id: string, args: readonly unknown[]): Sent => ({ what, id, args, core: args });

const failure = (code: string): unknown => ({ type: 'CustomFunctionError', code });
const dataType = (value: unknown): unknown => ({ value: JSON.stringify(value) });
const formatted = (value: number): unknown => dataType(asFormatted(value));
/** So many values of a host go to each argument, the next ones to the next. */
const TO_EACH = 8;
let next = 0;
const nextValues = (): (typeof HOST_VALUES)[number][] =>
  Array.from({ length: TO_EACH }, () => HOST_VALUES[next++ % HOST_VALUES.length] as (typeof HOST_VALUES)[number]);

/** Every number as a formatted one. */
const inFormats = (arg: unknown): unknown => (Array.isArray(arg) ? arg.map(inFormats) : typeof arg === 'number' ? formatted(arg) : arg);

const BLANKS: readonly unknown[] = [null, '', 0];
const WRONG: readonly unknown[] = [
  'no such thing',
  '-5 mm',
  -1,
  true,
  [
    [1, 2],
    [3, 4],
  ],
  [['a'], ['b']],
];
const FOREIGN_CODES = ['#SPILL!', '#CALC!', '#BUSY!', '#CONNECT!'];
const CODES = [...KNOWN_CODES, ...FOREIGN_CODES];

function sentTo(card: Card): Sent[] {
  const { id, params, example } = card;
  const args = params.map((_, i) => example.args[i] ?? null);
  const withOne = (what: string, i: number, host: unknown, core: unknown, flags: number): Sent => ({
    what,
    id,
    args: exampleWith(card, i, host).map(arg => arg ?? null),
    core: exampleWith(card, i, core),
    flags,
  });
  return [
    plain('example', id, args),
    { what: 'example, marked for errors and data types', id, args: args.map(inFormats), core: args, flags: ERRORS + DATA_TYPES },
    ...params.map((_, i) => plain('too few', id, args.slice(0, i))),
    ...params.flatMap(({ name }, i) => [
      ...BLANKS.flatMap(blank => [
        plain(`${name} blank`, id, exampleWith(card, i, blank)),
        plain(`${name} a blank cell`, id, exampleWith(card, i, [[blank]])),
      ]),
      ...WRONG.map(wrong => plain(`${name} wrong`, id, exampleWith(card, i, wrong))),
      ...CODES.map(code => withOne(`${name} is ${code}`, i, failure(code), { cellError: code }, ERRORS)),
      withOne(`${name} holds an error`, i, [[1], [failure('#DIV/0!')]], [[1], [{ cellError: '#DIV/0!' }]], ERRORS),
      withOne(`${name} a formatted number`, i, formatted(2.5), 2.5, DATA_TYPES),
      withOne(`${name} a range of formatted numbers`, i, [[formatted(2.5)], [formatted(1.5)]], [[2.5], [1.5]], DATA_TYPES),
      ...nextValues().map(({ what, sent: value, core }) => withOne(`${name} ${what}`, i, dataType(value), core, ERRORS + DATA_TYPES)),
    ]),
  ];
}

/** Numbers of the runtime for errors that are thrown; it knows no other, and hands over #VALUE! for the rest. */
const NUMBER: Readonly<Record<string, number>> = { '#N/A': 1, '#DIV/0!': 5, '#NUM!': 6, '#VALUE!': 7, '#NULL!': 8 };

const asHanded = (answer: Outcome): Handed =>
  answer.ok ? { ok: true, value: answer.value } : { ok: false, value: answer.message, code: NUMBER[answer.code] ?? 7 };

const isCell = (value: unknown): boolean =>
  typeof value === 'number' ? Number.isFinite(value) : typeof value === 'string' || typeof value === 'boolean';

function expectWhole(value: unknown): void {
  if (!Array.isArray(value)) return expect(isCell(value)).toBe(true);
  const rows = value as unknown[][];
  const width = rows[0]?.length ?? 0;
  expect(width).toBeGreaterThan(0);
  expect(rows.every(row => row.length === width && row.every(isCell))).toBe(true);
}

const sent = new Map([...CARDS.values()].map(card => [card.id, sentTo(card)]));
const handed = new Map<string, readonly Handed[]>();
let host: Excel;

beforeAll(async () => {
  host = await excel();
  const all = [...sent.values()].flat();
  const { results, ms } = await host.calculate([all.map(({ id, args, flags = 0 }) => ({ id, args, flags }))]);
  console.log(
    `${results.length} calls in the runtime: ${(ms / 1000).toFixed(1)} s, ${results.filter(({ ok }) => ok).length} answered, ${results.filter(({ ok }) => !ok).length} refused`,
  );
  let from = 0;
  for (const [id, list] of sent) handed.set(id, results.slice(from, (from += list.length)));
});

afterAll(() => host.close());

describe('what is registered', () => {
  test('every id of functions.json, none twice, none besides', () => {
    expect([...ids].sort()).toEqual(Object.keys(RELEASED).sort());
    expect([...host.associated].sort()).toEqual([...ids].sort());
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.sort()).toEqual([...CARDS.keys()].sort());
  });

  test('errors and data types reach the functions', () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
  });

  test('an id that is not registered is told', async () => {
    const { results } = await host.calculate([[{ id: 'BOSS.NONE', args: [1] }]]);
    expect(results).toEqual([{ ok: false, value: '', code: 2 }]);
  });
});

describe('answers and refusals are those of the core', () => {
  test('counts', () => {
    const all = [...handed.values()].flat();
    expect(all.length).toBeGreaterThan(9_000);
    expect(all.filter(({ ok }) => ok).length).toBeGreaterThan(1_000);
    expect(new Set(all.map(({ code }) => code))).toEqual(new Set([undefined, 1, 5, 6, 7, 8]));
  });

  test.each([...sent])('%s', (id, list) => {
    const results = handed.get(id) as readonly Handed[];
    expect(results[0]).toMatchObject({ ok: true });
    list.forEach(({ what, core }, i) => {
      const result = results[i] as Handed;
      expect(result, what).toEqual(asHanded(call(id, core)));
      if (result.ok) expectWhole(result.value);
      else expect(result.value, what).toMatch(/\S/);
    });
  });
});

test('an error handed in comes back as that error where the runtime has a number for it, and is named in the message', async () => {
  const { results } = await host.calculate([CODES.map(code => ({ id: 'BOSS.OD', args: [3, failure(code)], flags: ERRORS }))]);
  expect(results).toEqual(
    CODES.map(code => ({ ok: false, value: `wall ${FOREIGN_CODES.includes(code) ? 'holds' : 'is'} ${code}`, code: NUMBER[code] ?? 7 })),
  );
});

test('what prints formulas is loaded when the first cell asks for it; where it cannot be had the cell says so, and the next one asks again', async () => {
  const fresh = await excel();
  const parts = (): string[] => fresh.requests.filter(url => url.includes('/chunks/'));
  const ask = async (id: string, ...args: unknown[]): Promise<Handed | undefined> => (await fresh.calculate([[{ id, args }]])).results[0];
  const about = ['BOSS.OD', 'formula'];
  expect(await ask('BOSS.OD', 2.75, 1.2)).toEqual(asHanded(call('BOSS.OD', [2.75, 1.2])));
  expect(parts()).toEqual([]);
  fresh.isServed = false;
  expect(await ask('ABOUT', ...about)).toEqual({ ok: false, value: 'a part of the add-in could not be loaded: calculate again', code: 1 });
  const asked = parts().length;
  expect(asked).toBeGreaterThan(0);
  fresh.isServed = true;
  expect(await ask('ABOUT', ...about)).toEqual(asHanded(call('ABOUT', about)));
  expect(parts().length).toBeGreaterThan(asked);
  await fresh.close();
});

test('every value of a host was sent', () => expect(next).toBeGreaterThan(20 * HOST_VALUES.length));

test('our functions ask the network for nothing, and nothing goes wrong on the page', async () => {
  const alone = await excel('none');
  const foreign = ({ requests }: Excel): Set<string> => new Set(requests.filter(url => !url.startsWith('https://functions.test/')));
  await expect.poll(() => foreign(alone).size).toBe(1);
  expect(foreign(host)).toEqual(foreign(alone));
  expect(host.faults).toEqual(alone.faults);
  await alone.close();
});
