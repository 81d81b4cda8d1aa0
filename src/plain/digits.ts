// Numbers in text.

/** As a person would write them: at most six significant digits. */
export const digits = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−');
