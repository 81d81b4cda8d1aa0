// Values and findings of the joint in words.
import type { Finding } from './graph';
import { unitOf } from './outputs';

export const rounded = (value: number): string => String(Math.round(value * 1000) / 1000);
const withUnit = (value: number, unit: string): string => (unit === '' ? rounded(value) : `${rounded(value)} ${unit}`);

/** "engagement: engagement ratio 1.497 is below 2". */
export function sentence({ rule, state, value, limit, bound, refusal }: Finding): string {
  if (refusal !== undefined) return `${rule.name}: ${state === 'fail' ? '' : 'not checked, '}${refusal.message}`;
  if (rule.words !== undefined && state !== 'pass') return `${rule.name}: ${rule.words}`;
  const unit = unitOf(rule.value);
  return `${rule.name}: ${rule.value} ${withUnit(value ?? NaN, unit)} is ${bound?.side} ${withUnit(limit ?? NaN, unit)}`;
}
