import { expect } from 'vitest';

/** Half of the last printed digit: 0.828 is met by 0.8275 to 0.8285. Text and whole tables cell by cell. */
export function expectPrinted(actual: unknown, printed: unknown): void {
  if (Array.isArray(printed)) {
    expect(Array.isArray(actual) ? actual.length : actual).toBe(printed.length);
    printed.forEach((cell, i) => expectPrinted((actual as unknown[])[i], cell));
  } else if (typeof printed === 'number' && typeof actual === 'number') {
    const digits = /\.(\d+)$/.exec(String(printed))?.[1]?.length ?? 0;
    expect(Math.abs(actual - printed), `${actual} printed as ${printed}`).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-9);
  } else {
    expect(actual).toEqual(printed);
  }
}
