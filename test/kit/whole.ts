// What every call must give, whatever was sent: a full rectangle of finite numbers and text, or a refusal that says why; and soon.
import { expect } from 'vitest';
import type { Outcome } from '../../src/core/call';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { quietMs } from './best-of';

const LONGEST_MS = 50;
/** Time that grows with what is asked for. */
const SLOW: Readonly<Record<string, string>> = { 'STACK.SIMULATE': 'draws up to 20,000,000 random numbers' };

/** They hand on the refusal of the call that they quote. */
export const QUOTING = ['REASON', 'WORKING'];

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
    const names = (QUOTING.includes(card.id) ? [...CARDS.values()] : [card]).flatMap(({ params }) => params.map(({ name }) => name));
    expect(names).toContain(answer.argument);
    // counts or quantities that differ name two arguments
    expect(answer.message).toMatch(new RegExp(`^(${answer.argument}|(${names.join('|')}) (has \\d+ \\w+ )?and ${answer.argument})\\b`));
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

/** Whether the call was answered. Anything thrown but a refusal goes through. */
export function check(card: Card, args: readonly unknown[]): boolean {
  const start = performance.now();
  const answer = call(card.id, args);
  const tookMs = performance.now() - start;
  expectWhole(card, args, answer);
  if (tookMs > LONGEST_MS && SLOW[card.id] === undefined) expect(quietMs(() => void call(card.id, args))).toBeLessThan(LONGEST_MS);
  return answer.ok;
}
