import { expect } from 'vitest';

const PRINTED = /^-?(?:\d+|\d*\.(\d+))$/;

/** A number as text is met within half of its last digit, "2.40" by 2.395 to 2.405; a number is exact, but for the last digits of the machine. Whole tables cell by cell. */
export function expectPrinted(actual: unknown, printed: unknown): void {
  if (Array.isArray(printed)) {
    expect(Array.isArray(actual) ? actual.length : actual).toBe(printed.length);
    printed.forEach((cell, i) => expectPrinted((actual as unknown[])[i], cell));
  } else if (typeof actual === 'number' && (typeof printed === 'number' || (typeof printed === 'string' && PRINTED.test(printed)))) {
    const half = typeof printed === 'number' ? 0 : 0.5 * 10 ** -(PRINTED.exec(printed)?.[1]?.length ?? 0);
    expect(Math.abs(actual - Number(printed)), `${actual} printed as ${printed}`).toBeLessThanOrEqual(
      half + 1e-9 * Math.max(1, Math.abs(actual)),
    );
  } else {
    expect(actual).toEqual(printed);
  }
}

/** Half of the last digit that is printed: of ".070" it is .0005. */
export const halfDigit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);

/** `times` is how often the printed number enters the result. */
export function expectText(actual: number, printed: string, times = 1): void {
  expect(
    Math.abs(actual - Number(printed) * times),
    `${actual}, printed ${printed}${times === 1 ? '' : ` × ${times}`}`,
  ).toBeLessThanOrEqual(Math.abs(times) * halfDigit(printed) + 1e-12);
}
