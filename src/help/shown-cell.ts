// A value as the pages and the pane print it.
import type { Cell } from '../core/kinds';
import { digits } from '../plain/digits';

export const shownCell = (value: Cell | null): string => {
  if (value === null) return '';
  return typeof value === 'number' ? digits(value) : typeof value === 'boolean' ? String(value).toUpperCase() : value;
};
