// The limits of a card as conditions of a spreadsheet.
import type { Limits } from '../../core/kinds';

export function limitFormulas(cell: string, limits: Limits | undefined): string[] {
  const { above, atLeast, below, atMost } = limits ?? {};
  return [
    ...(above === undefined ? [] : [`${cell}>${above}`]),
    ...(atLeast === undefined ? [] : [`${cell}>=${atLeast}`]),
    ...(below === undefined ? [] : [`${cell}<${below}`]),
    ...(atMost === undefined ? [] : [`${cell}<=${atMost}`]),
  ];
}
