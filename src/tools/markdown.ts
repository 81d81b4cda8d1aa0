/** A stroke would end the cell. */
export const inTable = (text: string): string => text.replace(/\|/g, '\\|');
