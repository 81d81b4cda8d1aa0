// How a role looks in Excel: the looks of the other hosts in its terms.
import type { Role } from '../../sheet/plan';

export interface Look {
  readonly ink: string;
  readonly fill?: string;
  readonly sizePt?: number;
  readonly isBold?: true;
  readonly isItalic?: true;
  /** Colour of a thin line around the cell, or below it. */
  readonly frame?: string;
  readonly underline?: string;
}

export const sheetFont = { name: 'Arial', sizePt: 10 };

export const looks: Readonly<Record<Role, Look>> = {
  title: { ink: '#17494D', sizePt: 17, isBold: true },
  heading: { ink: '#17494D', sizePt: 11, isBold: true, underline: '#9DB8B8' },
  text: { ink: '#22303A' },
  label: { ink: '#22303A' },
  input: { ink: '#1B4A91', fill: '#E9F0FC', frame: '#A9C1E8' },
  unit: { ink: '#6A7780' },
  note: { ink: '#5D6A73', isItalic: true },
  result: { ink: '#14262B', fill: '#F1F3F2', frame: '#DBE0DE' },
  header: { ink: '#17494D', fill: '#DFEBE9', isBold: true, underline: '#9DB8B8' },
  caution: { ink: '#7A3B06', fill: '#FDF1E1' },
};

export const stateLooks: Readonly<Record<string, Look>> = {
  pass: { ink: '#0C4A54', fill: '#CFE8EA' },
  look: { ink: '#5C4300', fill: '#FFE6A3' },
  fail: { ink: '#FFFFFF', fill: '#B23A1E', isBold: true },
  'not checked': { ink: '#53575E', fill: '#E4E5E9', isItalic: true },
};

/** Roles whose text runs over several lines where their cells are merged. */
export const wrappedWhenMerged: readonly Role[] = ['text', 'note', 'caution'];
