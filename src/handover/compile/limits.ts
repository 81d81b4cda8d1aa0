// The limits of a card as conditions of a spreadsheet.
import type { Limits } from '../../core/kinds';

/** @param margin as formula: "1E-9" for what was worked out, which ends in a rounding. */
export function limitFormulas(cell: string, limits: Limits | undefined, margin?: string): string[] {
  const { above, atLeast, below, atMost } = limits ?? {};
  return [
    ...(above === undefined ? [] : [`${cell}>${above}`]),
    ...(atLeast === undefined ? [] : [`${cell}>=${atLeast}${margin === undefined ? '' : `-${margin}`}`]),
    ...(below === undefined ? [] : [`${cell}<${below}`]),
    ...(atMost === undefined ? [] : [`${cell}<=${atMost}${margin === undefined ? '' : `+${margin}`}`]),
  ];
}
