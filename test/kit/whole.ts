// What every call must give, whatever was sent: a full rectangle of finite numbers and text, or a refusal that says why; and soon.
import { expect } from 'vitest';
import type { Outcome } from '../../src/core/call';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { quietMs } from './best-of';
import { KNOWN_CODES } from './host-values';

const LONGEST_MS = 50;
/** Time that grows with what is asked for. */
const SLOW: Readonly<Record<string, string>> = {
  'STACK.SIMULATE': 'draws up to 20,000,000 random numbers',
  'PATTERN.FIT': 'fits up to 2,000,000 screws',
  'JOINT.MAP': 'works out up to 20,000 joints',
  'JOINT.WINDOW': 'works out some thousand joints',
  'JOINT.SIMULATE': 'draws up to 400,000 joints',
};

/** They hand on the refusal of the call that they quote. */
export const QUOTING = ['REASON', 'WORKING'];

/** The longest message: every quantity of a material card, and what the user gave. */
const LONGEST_MESSAGE = 600;
const MOST_QUOTED = 60;

function leaves(given: unknown): unknown[] {
  return Array.isArray(given) ? given.flatMap(leaves) : [given];
}

/** Those that the runtime knows. */
const codesIn = (args: readonly unknown[]): unknown[] =>
  leaves(args).flatMap(leaf =>
    typeof leaf === 'object' && leaf !== null && 'cellError' in leaf && KNOWN_CODES.includes(String(leaf.cellError))
      ? [leaf.cellError]
      : [],
  );

/** Whether more than 60 characters in a row are the user's. */
function quotesTooMuch(message: string, args: readonly unknown[]): boolean {
  const long = [...new Set(leaves(args).filter((leaf): leaf is string => typeof leaf === 'string' && leaf.length > MOST_QUOTED))];
  return long.some(text =>
    Array.from({ length: Math.max(0, message.length - MOST_QUOTED) }, (_, i) => message.slice(i, i + MOST_QUOTED + 1)).some(part =>
      text.includes(part),
    ),
  );
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

// In words and asserted once: assertions for each of some hundred thousand answers take longer than the answers.
export function faultOfReason(code: string, message: string, args: readonly unknown[]): string | undefined {
  if (code !== '#VALUE!' && code !== '#N/A' && !codesIn(args).includes(code))
    return 'a code that was not handed in, or that the runtime does not know';
  if (!/\S/.test(message)) return 'no message';
  if (/undefined|\[object|NaN mm/.test(message)) return 'a message with a value of the program';
  if (message.length > LONGEST_MESSAGE) return 'a message that is too long';
  return quotesTooMuch(message, args) ? `a message with more than ${MOST_QUOTED} characters of the user` : undefined;
}

type Refusal = Extract<Outcome, { readonly ok: false }>;

function faultOfRefusal(card: Card, args: readonly unknown[], { code, message, argument }: Refusal): string | undefined {
  const fault = faultOfReason(code, message, args);
  if (fault !== undefined || argument === undefined) return fault;
  const isQuoting = QUOTING.includes(card.id);
  const names = isQuoting ? EVERY_NAME : namesOf([card]);
  if (!names.includes(argument)) return 'an argument that the function does not have';
  return beginsWith(names, argument, isQuoting ? '' : card.id).test(message)
    ? undefined
    : 'a message that does not begin with the argument';
}

function isFit(value: unknown): boolean {
  return typeof value === 'number'
    ? Number.isFinite(value) && !Object.is(value, -0)
    : typeof value === 'string' || typeof value === 'boolean';
}

export function faultOfValue({ result }: Card, value: unknown): string | undefined {
  if (result.shape === 'number' || result.shape === 'text') {
    return typeof value === (result.shape === 'number' ? 'number' : 'string') && isFit(value) ? undefined : `no ${result.shape}`;
  }
  const rows = value as unknown[][];
  const width = rows[0]?.length ?? 0;
  if (width === 0 || !rows.every(row => Array.isArray(row) && row.length === width && row.every(isFit)))
    return 'no full rectangle of finite numbers and text';
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
