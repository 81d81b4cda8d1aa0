// What every call must give, whatever was sent: a full rectangle of finite numbers and text, or a refusal that says why; and soon.
import { expect } from 'vitest';
import type { Outcome } from '../../src/core/call';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { quietMs } from './best-of';
import { KNOWN_CODES } from './host-values';

const LONGEST_MS = 50;
/** Time that grows with what is asked for. */
const SLOW: Readonly<Record<string, string>> = { 'STACK.SIMULATE': 'draws up to 20,000,000 random numbers' };

/** They hand on the refusal of the call that they quote. */
export const QUOTING = ['REASON', 'WORKING'];

/** The longest message: every quantity of a material card, and what the user gave. */
const LONGEST_MESSAGE = 600;
const MOST_QUOTED = 60;

function leaves(given: unknown): unknown[] {
  return Array.isArray(given) ? given.flatMap(leaves) : [given];
}

/** Those that the runtime knows. */
const codesIn = (args: readonly unknown[]): unknown[] => leaves(args).flatMap(leaf => (typeof leaf === 'object' && leaf !== null && 'cellError' in leaf && KNOWN_CODES.includes(String(leaf.cellError)) ? [leaf.cellError] : []));

/** No more than 60 characters in a row are the user's. */
export function expectShort(message: string, args: readonly unknown[]): void {
  expect(message.length).toBeLessThanOrEqual(LONGEST_MESSAGE);
  const long = [...new Set(leaves(args).filter((leaf): leaf is string => typeof leaf === 'string' && leaf.length > MOST_QUOTED))];
  for (const text of long) for (let i = 0; i + MOST_QUOTED < message.length; i++) expect(text.includes(message.slice(i, i + MOST_QUOTED + 1)), `more than ${MOST_QUOTED} characters of ${text.slice(0, 20)}… in: ${message}`).toBe(false);
}

export function isFit(value: unknown): boolean {
  return typeof value === 'number' ? Number.isFinite(value) && !Object.is(value, -0) : typeof value === 'string' || typeof value === 'boolean';
}

export function expectFull({ result }: Card, value: unknown): void {
  const { shape } = result;
  if (shape === 'number' || shape === 'text') {
    expect(typeof value).toBe(shape === 'number' ? 'number' : 'string');
    expect(isFit(value)).toBe(true);
    return;
  }
  const rows = value as unknown[][];
  const width = rows[0]?.length ?? 0;
  expect(width).toBeGreaterThan(0);
  expect(rows.every(row => Array.isArray(row) && row.length === width && row.every(isFit))).toBe(true);
  if (shape === 'column') expect(width).toBe(1);
  if (shape === 'row') expect([rows.length, width]).toEqual([1, result.columns.length]);
  if (shape === 'table' && result.columns.length > 0) expect(width).toBe(result.columns.length);
}

export function expectReason(code: string, message: string, args: readonly unknown[]): void {
  expect(['#VALUE!', '#N/A', ...codesIn(args)]).toContain(code);
  expect(message).toMatch(/\S/);
  expect(message).not.toMatch(/undefined|\[object|NaN mm/);
  expectShort(message, args);
}

function expectWhole(card: Card, args: readonly unknown[], answer: Outcome): void {
  if (answer.ok) return expectFull(card, answer.value);
  expectReason(answer.code, answer.message, args);
  if (answer.argument === undefined) return;
  const names = (QUOTING.includes(card.id) ? [...CARDS.values()] : [card]).flatMap(({ params }) => params.map(({ name }) => name));
  expect(names).toContain(answer.argument);
  // counts or quantities that differ name two arguments
  expect(answer.message).toMatch(new RegExp(`^(${answer.argument}|(${names.join('|')}) (has \\d+ \\w+ )?and ${answer.argument})\\b`));
}

/** Whether the call was answered. Anything thrown but a refusal goes through. */
export function check(card: Card, args: readonly unknown[]): boolean {
  const start = performance.now();
  const answer = call(card.id, args);
  const tookMs = performance.now() - start;
  expectWhole(card, args, answer);
  if (tookMs > LONGEST_MS && SLOW[card.id] === undefined) expect(quietMs(() => void call(card.id, args))).toBeLessThan(LONGEST_MS);
  return answer.ok;
}
