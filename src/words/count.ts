// Numbers with what they count.

/** `1 page`, `2 pages` */
export const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;

/** 20,000 */
export const whole = (number: number): string => number.toLocaleString('en-GB');
