// Numbers with what they count, in German.

/** `1 Seite`, `2 Seiten` */
export const count = (number: number, one: string, more: string): string => `${number} ${number === 1 ? one : more}`;

/** 20.000 */
export const whole = (number: number): string => number.toLocaleString('de-DE');
