// Whatever is sent, every function gives a full rectangle of finite numbers and text, or a refusal that says why.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../src/core/call';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { anyArguments, exampleWith, HOSTILE } from '../kit/arguments';
import { bestOfThreeMs } from '../kit/best-of';
import { SEED } from '../kit/seed';

const LONGEST_MS = 50;
/** Time that grows with what is asked for. */
const SLOW: Readonly<Record<string, string>> = { 'STACK.SIMULATE': 'draws up to 20,000,000 random numbers' };

/** They hand on the refusal of the call that they quote. */
const QUOTING = ['REASON', 'WORKING'];

const cards = [...CARDS.values()].map(card => [card.id, card] as const);

function errorsIn(given: unknown): string[] {
  if (Array.isArray(given)) return given.flatMap(errorsIn);
  return typeof given === 'object' && given !== null && 'cellError' in given ? [String(given.cellError)] : [];
}

function isFit(value: unknown): boolean {
  return typeof value === 'number' ? Number.isFinite(value) : typeof value === 'string' || typeof value === 'boolean';
}

function expectWhole(card: Card, args: readonly unknown[], answer: Outcome): void {
  if (!answer.ok) {
    expect(['#VALUE!', '#N/A', ...errorsIn(args)]).toContain(answer.code);
    expect(answer.message).toMatch(/\S/);
    expect(answer.message).not.toMatch(/undefined|\[object|NaN mm/);
    if (answer.argument === undefined) return;
    const names = (QUOTING.includes(card.id) ? cards : [[card.id, card] as const]).flatMap(([, { params }]) => params.map(({ name }) => name));
    expect(names).toContain(answer.argument);
    // counts that differ name two arguments
    expect(answer.message).toMatch(new RegExp(`^(${answer.argument}|(${names.join('|')}) has \\d+ \\w+ and ${answer.argument})\\b`));
    return;
  }
  const { shape } = card.result;
  if (shape === 'number' || shape === 'text') {
    expect(typeof answer.value).toBe(shape === 'number' ? 'number' : 'string');
    expect(isFit(answer.value)).toBe(true);
    return;
  }
  const rows = answer.value as unknown[][];
  const width = rows[0]?.length ?? 0;
  expect(width).toBeGreaterThan(0);
  expect(rows.every(row => Array.isArray(row) && row.length === width && row.every(isFit))).toBe(true);
  if (shape === 'column') expect(width).toBe(1);
  if (shape === 'row') expect([rows.length, width]).toEqual([1, card.result.columns.length]);
  if (shape === 'table' && card.result.columns.length > 0) expect(width).toBe(card.result.columns.length);
}

function check(card: Card, args: readonly unknown[]): boolean {
  const start = performance.now();
  const answer = call(card.id, args);
  const tookMs = performance.now() - start;
  expectWhole(card, args, answer);
  if (tookMs > LONGEST_MS && SLOW[card.id] === undefined) expect(bestOfThreeMs(() => void call(card.id, args))).toBeLessThan(LONGEST_MS);
  return answer.ok;
}

describe(`any arguments (seed ${SEED})`, () => {
  test('every function is here', () => expect(cards.length).toBe(126));

  test.each(cards)('%s', (_, card) => {
    let answered = 0;
    let tried = 0;
    fc.assert(
      fc.property(anyArguments(card), args => {
        tried++;
        if (check(card, args)) answered++;
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(tried).toBeGreaterThanOrEqual(300);
    expect(answered, 'calls with a result').toBeGreaterThan(10);
  });
});

describe('one hostile argument at a time, the others from the example', () => {
  test.each(cards)('%s', (_, card) => {
    let tried = 0;
    card.params.forEach((_param, i) => {
      for (const value of HOSTILE) {
        check(card, exampleWith(card, i, value));
        tried++;
      }
    });
    expect(tried).toBe(card.params.length * HOSTILE.length);
  });
});

describe('a refusal names an argument', () => {
  /** About all of them at once. */
  const OF_THE_WHOLE = /^(no finite result for these inputs$|no standard length of |the (result|lists) (has|make) )/;

  test.each(cards.filter(([id]) => !QUOTING.includes(id)))('%s', (id, card) => {
    const names = new RegExp(`\\b(${card.params.map(({ name }) => name).join('|')})\\b`);
    card.params.forEach((param, i) => {
      for (const value of HOSTILE) {
        const answer = call(id, exampleWith(card, i, value));
        if (!answer.ok && !OF_THE_WHOLE.test(answer.message)) expect(answer.message, param.name).toMatch(names);
      }
    });
  });
});

describe('an error handed in comes back as that error', () => {
  const takesErrors = (card: Card, i: number): boolean => card.params[i]?.kind.takesEverything === true || /^(CHECK|VARIANT|JOINT|REASON|WORKING)/.test(card.id);
  const pairs = cards.flatMap(([id, card]) => card.params.map((param, i) => [id, param.name, card, i] as const)).filter(([, , card, i]) => !takesErrors(card, i));

  test('arguments', () => expect(pairs.length).toBeGreaterThan(330));

  test.each(pairs)('%s %s', (id, name, card, i) => {
    for (const code of ['#DIV/0!', '#REF!', '#N/A']) {
      const single = call(id, exampleWith(card, i, { cellError: code }));
      expect(single).toMatchObject({ ok: false, code, argument: name });
      if (card.params[i]?.kind.shape === 'list') expect(call(id, exampleWith(card, i, [[{ cellError: code }]]))).toMatchObject({ ok: false, code, argument: name });
    }
  });
});
