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

/** Half of the last digit that is printed: of ".070" it is .0005. */
export const halfDigit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);

/** `times` is how often the printed number enters the result. */
export function expectText(actual: number, printed: string, times = 1): void {
  expect(Math.abs(actual - Number(printed) * times), `${actual}, printed ${printed}${times === 1 ? '' : ` × ${times}`}`).toBeLessThanOrEqual(Math.abs(times) * halfDigit(printed) + 1e-12);
}
