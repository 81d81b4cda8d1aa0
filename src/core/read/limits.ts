// Limits of a number: whether it is within them, and how they are said.
import type { Limits } from '../kinds';
import { wrongInput } from '../refuse';

/** "above 0 mm and at most 1"; empty if there are no limits. */
export function limitWords(limits: Limits | undefined, unit: string): string {
  if (limits === undefined) return '';
  const u = unit === '' || unit === '°' ? unit : ` ${unit}`;
  const parts: string[] = [];
  if (limits.above !== undefined) parts.push(`above ${limits.above}${u}`);
  if (limits.atLeast !== undefined) parts.push(`at least ${limits.atLeast}${u}`);
  if (limits.below !== undefined) parts.push(`below ${limits.below}${u}`);
  if (limits.atMost !== undefined) parts.push(`at most ${limits.atMost}${u}`);
  return parts.join(' and ');
}

/** @param margin within which a limit that may be reached is met: what was worked out ends in a rounding. */
export function withinLimits(value: number, limits: Limits | undefined, margin = 0): boolean {
  if (limits === undefined) return true;
  const { above, atLeast, below, atMost } = limits;
  return (
    (above === undefined || value > above) &&
    (atLeast === undefined || value >= atLeast - margin) &&
    (below === undefined || value < below) &&
    (atMost === undefined || value <= atMost + margin)
  );
}

export function checkLimits(value: number, limits: Limits | undefined, unit: string): void {
  if (!withinLimits(value, limits)) throw wrongInput(`must be ${limitWords(limits, unit)}`);
}
