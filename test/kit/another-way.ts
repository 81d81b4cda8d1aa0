// The same answer by another way: seeded cases, the comparison, integrals and roots.
import fc from 'fast-check';
import { expect } from 'vitest';
import { SEED } from './seed';

/** Numbers of a case: sizes in mm, drafts in degrees. */
export type Case = Readonly<Record<string, number>>;

const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map(thousandths => thousandths / 1000);
export const cases = (sizes: Readonly<Record<string, readonly [number, number]>>, count: number): Case[] =>
  fc.sample(fc.record(Object.fromEntries(Object.entries(sizes).map(([name, [low, high]]) => [name, between(low, high)]))), {
    seed: SEED,
    numRuns: count,
  });

const numbers = (answer: unknown): number[] => [answer].flat(2).filter(cell => typeof cell === 'number');

/** Both ways agree in every case, and each wrong form differs in nine of ten by a hundred times what is allowed. */
export function agree(
  all: readonly Case[],
  ours: (one: Case) => unknown,
  other: (one: Case) => readonly number[],
  wrong: Readonly<Record<string, (one: Case) => readonly number[]>>,
  allowed = 1e-9,
): void {
  const apart = (a: readonly number[], b: readonly number[]): number =>
    a.length === b.length && a.length > 0
      ? Math.max(...a.map((x, i) => Math.abs(x - (b[i] as number)) / Math.max(1e-3, Math.abs(b[i] as number))))
      : Infinity;
  for (const one of all) expect(apart(numbers(ours(one)), other(one)), JSON.stringify(one)).toBeLessThanOrEqual(allowed);
  for (const [name, form] of Object.entries(wrong))
    expect(all.filter(one => apart(form(one), other(one)) > 100 * allowed).length, name).toBeGreaterThanOrEqual(0.9 * all.length);
}

/** Simpson's rule; exact for polynomials of the third degree. */
export function integral(f: (x: number) => number, from: number, to: number, steps = 2000): number {
  const h = (to - from) / steps;
  const inner = Array.from({ length: steps - 1 }, (_, i) => (i % 2 === 0 ? 4 : 2) * f(from + (i + 1) * h));
  return (h / 3) * (f(from) + inner.reduce((total, y) => total + y, 0) + f(to));
}

/** Where a function that rises is 0. */
export function root(f: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (f(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
