// Decimal text of a number, the same on every machine.

/**
 * So many places, halves away from zero, of the number as it was typed: 1.005 gives 1.01, although the nearest binary number is smaller.
 * Fifteen digits are what a spreadsheet keeps; what conversion of units adds lies beyond them.
 */
export function fixedText(value: number, places: number): string {
  const [digits = '', exponent = ''] = Math.abs(value).toExponential(14).split('e');
  const whole = BigInt(digits.replace('.', ''));
  const shift = Number(exponent) - 14 + places;
  const divisor = 10n ** BigInt(Math.max(0, -shift));
  const rounded = (2n * whole * 10n ** BigInt(Math.max(0, shift)) + divisor) / (2n * divisor);
  const text = String(rounded).padStart(places + 1, '0');
  const point = text.length - places;
  return `${value < 0 && rounded > 0n ? '-' : ''}${text.slice(0, point)}${places === 0 ? '' : `.${text.slice(point)}`}`;
}
