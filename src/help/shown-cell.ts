// A value as the pages and the pane print it.
import type { Cell } from '../core/kinds';
import { digits } from '../plain/digits';

/** A sentence of ours with its numbers in the decimal sign of the reader. */
export const sentenceIn = (text: string, decimal: string): string => text.replaceAll(/(?<=\d)\.(?=\d)/g, decimal);

export const shownCell = (value: Cell | null): string => {
  if (value === null) return '';
  return typeof value === 'number' ? digits(value) : typeof value === 'boolean' ? String(value).toUpperCase() : value;
};
