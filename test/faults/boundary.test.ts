// The boundary that Excel meets: the bundled functions called with what hosts send, under a stand-in of the runtime (kit/host.ts).
// In npm test 20,000 wild calls; npm run test:fuzz makes 300,000 of them, FUZZ_CALLS=1000000 as many as it says, FUZZ_SEED=1 others.
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { anyArguments, exampleWith } from '../kit/arguments';
import { calculate, REGISTERED, type Handed } from '../kit/host';
import { EVIL, formatted, HOST_VALUES, KNOWN_CODES, NO_ERRORS, type HostValue } from '../kit/host-values';
import { SEED } from '../kit/seed';
import { faultOfReason, faultOfValue, QUOTING } from '../kit/whole';
import { wildArguments } from './wild';

const { FUZZ_CALLS, FUZZ_SEED, npm_lifecycle_event: script } = process.env;
const calls = Number(FUZZ_CALLS ?? (script === 'test:fuzz' ? 300_000 : 20_000));
const seed = Number(FUZZ_SEED ?? SEED);
const cards = [...CARDS.values()].map(card => [card.id, card] as const);
const each = Math.ceil(calls / cards.length);
/** Of every so many refused calls one is asked for again, and REASON for its words. */
const AGAIN = 10;

test('every function is registered', () => expect([...REGISTERED].sort()).toEqual([...CARDS.keys()].sort()));

/** As the core sees it. */
const asHanded = (id: string, args: readonly unknown[]): Handed => {
  const answer = call(id, args);
  return answer.ok ? { is: 'value', value: answer.value } : { is: 'error', code: answer.code, message: answer.message };
};

describe('each value of a host in the place of each argument, alone and in a range', () => {
  const inFormats = (arg: unknown): unknown => (Array.isArray(arg) ? arg.map(inFormats) : typeof arg === 'number' ? formatted(arg) : arg);

  test.each(cards)('%s', async (id, card) => {
    expect(await calculate(id, card.example.args.map(inFormats))).toEqual(asHanded(id, card.example.args));
    for (const [i, { name }] of card.params.entries()) {
      for (const { what, sent, core } of HOST_VALUES) {
        expect(await calculate(id, exampleWith(card, i, sent)), `${name}: ${what}`).toEqual(
          asHanded(id, exampleWith(card, i, card.params[i]?.kind.shape === 'one' ? core : [[core]])),
        );
        expect(await calculate(id, exampleWith(card, i, [[1], [sent]])), `${name}: ${what} in a range`).toEqual(
          asHanded(id, exampleWith(card, i, [[1], [core]])),
        );
      }
    }
  });
});

describe('words', () => {
  const of = (what: string): unknown => HOST_VALUES.find(value => value.what === what)?.sent;
  const failed = (code: string): unknown => ({ type: 'Error', basicType: 'Error', code, basicValue: code });

  test.each(KNOWN_CODES)('%s comes back as that error', async code => {
    expect(await calculate('BOSS.OD', [failed(code), 1.2])).toEqual({ is: 'error', code, message: `hole is ${code}` });
    expect(await calculate('GRIP', [[[1], [failed(code)]]])).toEqual({ is: 'error', code, message: `layers row 2 is ${code}` });
    expect(await calculate('REASON', ['BOSS.OD', failed(code), 1.2])).toEqual({ is: 'value', value: `hole is ${code}` });
  });
  test.each(['#SPILL!', '#CALC!', '#BUSY!', '#CONNECT!', '#GETTING_DATA', '#ÜBERLAUF!'])('%s is named', async code => {
    expect(await calculate('BOSS.OD', [failed(code), 1.2])).toEqual({ is: 'error', code: '#VALUE!', message: `hole holds ${code}` });
    expect(await calculate('BOSS.OD', [2.75, failed(code)])).toEqual({ is: 'error', code: '#VALUE!', message: `wall holds ${code}` });
    expect(await calculate('GRIP', [[[1], [failed(code)]]])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: `layers row 2 holds ${code}`,
    });
    expect(await calculate('STACK.TABLE', [[['a'], [failed(code)]], [[1], [2]], 0.1])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: `labels row 2 holds ${code}`,
    });
    expect(await calculate('TOL.MOULDED', [40, [[100, failed(code), 1]]])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: `group is a range of 1 × 3 cells: row 1 holds ${code}`,
    });
    expect(await calculate('MATERIAL', [[['strength', failed(code)]], 'strength'])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: `material is a range of 1 × 2 cells: row 1 holds ${code}`,
    });
    expect(
      await calculate('JOINT.TABLE', [
        [
          ['wall', failed(code)],
          [2, 3],
        ],
      ]),
    ).toEqual({ is: 'error', code: '#VALUE!', message: `inputs has ${code} for a name` });
    expect(
      await calculate('VARIANT.RANK', [
        [
          [1, 2],
          [failed(code), 3],
        ],
        'max',
        1,
      ]),
    ).toEqual({ is: 'error', code: '#VALUE!', message: `table row 2, column 1, holds ${code}` });
    expect(await calculate('REASON', ['BOSS.OD', failed(code), 1.2])).toEqual({ is: 'value', value: `hole holds ${code}` });
    expect(await calculate('WORKING', ['BOSS.OD', failed(code), 1.2])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: `hole holds ${code}`,
    });
  });
  test.each(NO_ERRORS)('%s is no error of any spreadsheet, and is not repeated', async text => {
    expect(await calculate('BOSS.OD', [failed(text), 1.2])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: 'hole holds an unknown error',
    });
    expect(await calculate('JOINT.TABLE', [[[failed(text)], [2]]])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: 'inputs has an unknown error for a name',
    });
  });
  test.each(['entity', 'entity without a value', 'linked entity', 'picture', 'array', 'function', 'reference', 'a type of the future'])(
    '%s is a data type',
    async what => {
      expect(await calculate('BOSS.OD', [of(what), 1.2])).toEqual({
        is: 'error',
        code: '#VALUE!',
        message: 'hole is a data type: refer to one of its fields',
      });
      expect(await calculate('GRIP', [[[1], [of(what)]]])).toEqual({
        is: 'error',
        code: '#VALUE!',
        message: 'layers row 2 is a data type: refer to one of its fields',
      });
      expect(await calculate('JOINT.VALUE', [[['wall', 'screw']], [[of(what), 'M3']], 'feature wall'])).toEqual({
        is: 'error',
        code: '#VALUE!',
        message: 'wall is a data type: refer to one of its fields',
      });
      expect(await calculate('REASON', ['BOSS.OD', 2.75, of(what)])).toEqual({
        is: 'value',
        value: 'wall is a data type: refer to one of its fields',
      });
    },
  );

  test('numbers with a format are numbers, in every place', async () => {
    expect(await calculate('BOSS.OD', [formatted(3), formatted(1.2)])).toEqual({ is: 'value', value: 5.4 });
    expect(await calculate('GRIP', [[[formatted(2.5)], [formatted(1.5)]]])).toEqual({ is: 'value', value: 4 });
    expect(await calculate('BOSS.OD', [{ type: 'String', basicType: 'String', basicValue: 'M3 medium' }, 1.2])).toEqual(
      await calculate('BOSS.OD', ['M3 medium', 1.2]),
    );
    expect(await calculate('BOSS.OD', [{ type: 'Boolean', basicType: 'Boolean', basicValue: true }, 1.2])).toEqual({
      is: 'error',
      code: '#VALUE!',
      message: 'hole is TRUE: TRUE/FALSE is not a number',
    });
  });

  test('zero has no sign', async () => {
    const handed = await calculate('STACK.TABLE', [[['a'], ['b']], '0 mm', [['+0.2/-0'], [0.16]], [[1], [-1]]]);
    const cells = handed.is === 'value' ? (handed.value as unknown[][]).flat() : [];
    expect(cells.filter(value => value === 0).length).toBeGreaterThan(3);
    expect(cells.filter(value => Object.is(value, -0))).toEqual([]);
  });

  test.each([failed('#N/A'), failed('#SPILL!'), failed(EVIL), of('entity')].map(sent => [sent]))(
    'checks, ranks and cells of a joint are not checked, and REASON says which argument it was: %j',
    async sent => {
      const words = ((await calculate('BOSS.OD', [sent, 1])) as { readonly message: string }).message.replace('hole ', '');
      const reason = async (...args: unknown[]): Promise<unknown> =>
        ((await calculate('REASON', args)) as { readonly value: unknown }).value;
      for (const id of ['CHECK.MAX', 'CHECK.MIN']) {
        for (const args of [
          [sent, 1],
          [1, sent],
          [1, 2, sent],
        ]) {
          expect(await calculate(id, args)).toEqual({ is: 'value', value: 'not checked' });
          expect(await reason(id, ...args)).toBe(`${['value', 'limit', 'review'][args.indexOf(sent)]} ${words}`);
        }
      }
      expect(await calculate('CHECK.WORST', [[['pass'], [sent]]])).toEqual({ is: 'value', value: 'not checked' });
      expect(await reason('CHECK.WORST', [['pass'], [sent]])).toBe(`states row 2 ${words}`);
      expect(await reason('CHECK.WORST', [['pass'], ['fail']])).toBe('ok');
      expect(await calculate('VARIANT.RANK', [[[1], [2], [3]], 'max', 1, [['pass'], ['pass'], [sent]]])).toEqual({
        is: 'value',
        value: [[2], [1], [3]],
      });
      expect(await reason('VARIANT.RANK', [[1], [2]], 'max', 1, [['pass'], [sent]])).toBe(`states row 2 ${words}`);
      const inputs = [
        ['screw', 'wall'],
        ['ST2.9', 2.5],
        ['ST2.9', sent],
      ];
      expect(await calculate('JOINT.TABLE', [inputs, [['state', 'feature wall']]])).toEqual({
        is: 'value',
        value: [
          ['state', 'feature wall (mm)'],
          ['not checked', 1.5],
          ['not checked', `no value: wall ${words}`],
        ],
      });
      expect(await reason('JOINT.TABLE', inputs, [['state']])).toBe(`inputs row 3, column 2, ${words}`);
    },
  );
});

// ---- wild calls --------------------------------------------------------------------------------------------------------

const sentOf = new Map<string, number>();
const count = { calls: 0, answered: 0, refused: 0, repeated: 0, reasons: 0, codes: new Set<string>() };
const answeredOf = new Map<string, number>();

const hostValue: fc.Arbitrary<HostValue> = fc.constantFrom(...HOST_VALUES);

/** The error of a core as a host sends it. */
function asHost(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asHost);
  return typeof value === 'object' && value !== null && 'cellError' in value
    ? { type: 'Error', basicType: 'Error', code: value.cellError, basicValue: value.cellError }
    : value;
}

interface Sent {
  /** As the core takes them. */
  readonly core: unknown[];
  readonly host: unknown[];
  readonly what: readonly string[];
}

/** Fitting and wild arguments; in most of them one or two places hold a value of a host, alone, in a row or in a column. */
function sentTo(card: Card): fc.Arbitrary<Sent> {
  const place = fc.tuple(
    fc.nat(Math.max(0, card.params.length - 1)),
    hostValue,
    fc.constantFrom('alone', 'alone', 'first', 'second', 'row'),
  );
  const args = fc.oneof(
    { weight: 3, arbitrary: anyArguments(card) },
    { weight: 2, arbitrary: wildArguments(card) },
    { weight: 1, arbitrary: fc.constant(card.example.args) },
  );
  return fc.tuple(args, fc.array(place, { maxLength: 2 })).map(([given, places]) => {
    const [core, host] = [[...given], given.map(asHost)];
    for (const [i, value, form] of places) {
      const formed = (cell: unknown): unknown => ({ alone: cell, first: [[cell], [1]], second: [[1], [cell]], row: [[1, cell]] })[form];
      core[i] = formed(value.core);
      host[i] = formed(value.sent);
    }
    return { core: [...core], host: [...host], what: places.map(([, { what }]) => what) };
  });
}

async function expectClean(card: Card, { core, host, what }: Sent): Promise<void> {
  const { id, params } = card;
  const handed = await calculate(id, host);
  count.calls++;
  for (const one of what) sentOf.set(one, (sentOf.get(one) ?? 0) + 1);
  if (handed.is === 'fault') return expect.fail(`${id}: ${handed.fault}`);
  if (handed.is === 'value') {
    count.answered++;
    answeredOf.set(id, (answeredOf.get(id) ?? 0) + 1);
    expect(faultOfValue(card, handed.value)).toBeUndefined();
  } else {
    count.refused++;
    count.codes.add(handed.code);
    expect(faultOfReason(handed.code, handed.message, core)).toBeUndefined();
    if (count.refused % AGAIN === 0 && !QUOTING.includes(id) && params.length < 10) {
      count.reasons++;
      expect(await calculate('REASON', [id, ...host.slice(0, params.length)]), id).toEqual({ is: 'value', value: handed.message });
    }
  }
  if (count.calls % AGAIN === 0) {
    count.repeated++;
    expect(await calculate(id, host), id).toEqual(handed);
  }
}

describe(`wild calls (seed ${seed})`, () => {
  // each function draws values of its own
  test.each(cards.map(([id, card], i) => [id, card, seed + i] as const))(
    '%s',
    async (_, card, own) => {
      await fc.assert(
        fc.asyncProperty(sentTo(card), sent => expectClean(card, sent)),
        { seed: own, numRuns: each },
      );
    },
    600_000,
  );

  test('enough of each', () => {
    expect(count.calls).toBeGreaterThanOrEqual(calls);
    expect(cards.filter(([id]) => (answeredOf.get(id) ?? 0) < 3).map(([id]) => id)).toEqual([]);
    expect(HOST_VALUES.filter(({ what }) => (sentOf.get(what) ?? 0) < calls / 400).map(({ what }) => what)).toEqual([]);
    expect([...count.codes].sort()).toEqual([...KNOWN_CODES].sort());
    expect(Math.min(count.answered, count.refused)).toBeGreaterThan(calls / 10);
    expect(Math.min(count.repeated, count.reasons)).toBeGreaterThan(calls / 50);
  });
});

afterAll(() =>
  console.log(
    `boundary: ${count.calls} calls, seed ${seed}: ${count.answered} answered, ${count.refused} refused; ${count.repeated} repeated, ${count.reasons} reasons compared`,
  ),
);
