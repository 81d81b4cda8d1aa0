import { expect } from 'vitest';
import { call } from '../../src/registry';

/** What a cell shows. */
export function value(id: string, ...args: readonly unknown[]): unknown {
  const answer = call(id, args);
  if (!answer.ok) expect.fail(`${id}: ${answer.code} ${answer.message}`);
  return answer.value;
}

export const number = (id: string, ...args: readonly unknown[]): number => value(id, ...args) as number;

/** Code and message of a refusal. */
export function refusal(id: string, ...args: readonly unknown[]): string {
  const answer = call(id, args);
  if (answer.ok) expect.fail(`${id} gives ${String(answer.value)}; a refusal is asked for`);
  return `${answer.code} ${answer.message}`;
}
