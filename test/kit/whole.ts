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

const namesOf = (cards: Iterable<Card>): string[] => [...cards].flatMap(({ params }) => params.map(({ name }) => name));
const EVERY_NAME = namesOf(CARDS.values());

/** How a refusal about this argument begins; counts or quantities that differ name two arguments. */
const BEGINNINGS = new Map<string, RegExp>();
function beginsWith(names: readonly string[], argument: string, of: string): RegExp {
  const key = `${of} ${argument}`;
  const known = BEGINNINGS.get(key) ?? new RegExp(`^(${argument}|(${names.join('|')}) (has \\d+ \\w+ )?and ${argument})\\b`);
  BEGINNINGS.set(key, known);
  return known;
}

type Refusal = Extract<Outcome, { readonly ok: false }>;

// In words and asserted once: assertions for each of some hundred thousand answers take longer than the answers.
function faultOfRefusal(card: Card, args: readonly unknown[], { code, message, argument }: Refusal): string | undefined {
  if (code !== '#VALUE!' && code !== '#N/A' && !errorsIn(args).includes(code)) return 'a code that was not handed in';
  if (!/\S/.test(message)) return 'no message';
  if (/undefined|\[object|NaN mm/.test(message)) return 'a message with a value of the program';
  if (argument === undefined) return undefined;
  const isQuoting = QUOTING.includes(card.id);
  const names = isQuoting ? EVERY_NAME : namesOf([card]);
  if (!names.includes(argument)) return 'an argument that the function does not have';
  return beginsWith(names, argument, isQuoting ? '' : card.id).test(message) ? undefined : 'a message that does not begin with the argument';
}

function faultOfValue({ result }: Card, value: unknown): string | undefined {
  if (result.shape === 'number' || result.shape === 'text') {
    return typeof value === (result.shape === 'number' ? 'number' : 'string') && isFit(value) ? undefined : `no ${result.shape}`;
  }
  const rows = value as unknown[][];
  const width = rows[0]?.length ?? 0;
  if (width === 0 || !rows.every(row => Array.isArray(row) && row.length === width && row.every(isFit))) return 'no full rectangle of finite numbers and text';
  if (result.shape === 'column') return width === 1 ? undefined : 'no column';
  if (result.shape === 'row') return rows.length === 1 && width === result.columns.length ? undefined : 'no row';
  return result.columns.length === 0 || width === result.columns.length ? undefined : 'another number of columns';
}

/** The answer to a call, once it is whole. Anything thrown but a refusal goes through. */
export function answerTo(card: Card, args: readonly unknown[]): Outcome {
  const start = performance.now();
  const answer = call(card.id, args);
  const tookMs = performance.now() - start;
  const fault = answer.ok ? faultOfValue(card, answer.value) : faultOfRefusal(card, args, answer);
  if (fault !== undefined) expect.fail(`${card.id}: ${fault}: ${JSON.stringify(answer).slice(0, 500)}`);
  if (tookMs > LONGEST_MS && SLOW[card.id] === undefined) expect(quietMs(() => void call(card.id, args))).toBeLessThan(LONGEST_MS);
  return answer;
}

/** Whether the call was answered, once its answer is whole. */
export const check = (card: Card, args: readonly unknown[]): boolean => answerTo(card, args).ok;
