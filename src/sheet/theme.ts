// How the roles of a plan and the state words look, in every host. Inputs are blue on pale blue with a frame, results dark on pale
// grey; a state has its own pair of colours that differ in lightness too, and its word always stays.
import type { Role } from './plan';

/** Colours as `#RRGGBB`. */
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

export const SHEET_FONT = { name: 'Arial', sizePt: 10, ink: '#22303A' } as const;

const TEAL = '#17494D';
const RULE = '#9DB8B8';

export const ROLE_LOOKS: Readonly<Record<Role, Look>> = {
  title: { ink: TEAL, sizePt: 17, isBold: true },
  heading: { ink: TEAL, sizePt: 11, isBold: true, underline: RULE },
  text: { ink: SHEET_FONT.ink },
  label: { ink: SHEET_FONT.ink },
  input: { ink: '#1B4A91', fill: '#E9F0FC', frame: '#A9C1E8' },
  unit: { ink: '#6A7780' },
  note: { ink: '#5D6A73', isItalic: true },
  result: { ink: '#14262B', fill: '#F1F3F2', frame: '#DBE0DE' },
  header: { ink: TEAL, fill: '#DFEBE9', isBold: true, underline: RULE },
  caution: { ink: '#7A3B06', fill: '#FDF1E1' },
};

export const STATE_LOOKS = {
  pass: { ink: '#0C4A54', fill: '#CFE8EA' },
  review: { ink: '#5C4300', fill: '#FFE6A3' },
  fail: { ink: '#FFFFFF', fill: '#B23A1E', isBold: true },
  'not checked': { ink: '#53575E', fill: '#E4E5E9', isItalic: true },
} as const satisfies Readonly<Record<string, Look>>;

export type StateWord = keyof typeof STATE_LOOKS;

/** The same of each entry: a host's own terms for every look. */
export const eachLook = <K extends string, T>(looks: Readonly<Record<K, Look>>, of: (look: Look, name: K) => T): Record<K, T> =>
  Object.fromEntries((Object.keys(looks) as K[]).map(name => [name, of(looks[name], name)])) as Record<K, T>;

/** Roles whose text runs over several lines where their cells are merged. */
export const WRAPPED_WHEN_MERGED: readonly Role[] = ['text', 'note', 'caution'];
