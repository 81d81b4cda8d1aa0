// Decimal texts of numbers: the same on every machine, and short ones for people.

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

/** What the order of a sum changes in a number is no reason to round it the other way: half a place goes up, and so does almost half. */
export const ALMOST = 1e-7;

/** For people: no more places than these, and no zeros at the end. A number of hundreds of digits has no places. */
export function rounded(value: number, places = 3): string {
  const inPlaces = value * 10 ** places;
  return String(Number.isFinite(inPlaces) ? Math.floor(inPlaces + 0.5 + ALMOST) / 10 ** places : value);
}

/** As many digits as it takes two numbers to differ. */
export function placesThatDiffer(a: number, b: number): number {
  let places = 3;
  while (places < 12 && rounded(a, places) === rounded(b, places)) places++;
  return places;
}
