// The theme in the terms of the sheet engine. Its colours are written small: a role is told again by them.
import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy, type IStyleData } from '@univerjs/core';
import type { Role } from '../../sheet/plan';
import { eachLook, type Look, ROLE_LOOKS, SHEET_FONT, STATE_LOOKS } from '../../sheet/theme';

/** The sheet engine's own accents: the same teal as the page. */
export const accents = {
  50: '#f1f7f7',
  100: '#e2efef',
  200: '#c5dfdf',
  300: '#9cc8c8',
  400: '#5fa3a4',
  500: '#3a8789',
  600: '#17696d',
  700: '#155a5e',
  800: '#17494d',
  900: '#123b3e',
};

const colour = (rgb: string) => ({ rgb: rgb.toLowerCase() });
const line = (rgb: string) => ({ s: BorderStyleTypes.THIN, cl: colour(rgb) });
const frame = (rgb: string) => ({ bd: { t: line(rgb), r: line(rgb), b: line(rgb), l: line(rgb) } });
const placed = { vt: VerticalAlign.MIDDLE, pd: { l: 6, r: 6, t: 2, b: 2 } };
const right = { ht: HorizontalAlign.RIGHT };
const wrapped = { tb: WrapStrategy.WRAP };

export const sheetStyle: IStyleData = { ff: SHEET_FONT.name, fs: SHEET_FONT.sizePt, cl: colour(SHEET_FONT.ink), ...placed };

const letters = ({ ink, fill, sizePt, isBold, isItalic }: Look): IStyleData => ({
  ...(sizePt !== undefined && { fs: sizePt }),
  // what has the ink of the sheet says nothing
  ...(ink !== SHEET_FONT.ink && { cl: colour(ink) }),
  ...(fill !== undefined && { bg: colour(fill) }),
  ...(isBold === true && { bl: BooleanNumber.TRUE }),
  ...(isItalic === true && { it: BooleanNumber.TRUE }),
});

const ownWay: Partial<Record<Role, IStyleData>> = { input: right, header: wrapped, caution: wrapped };

export const looks: Record<Role, IStyleData> = eachLook(ROLE_LOOKS, (look, role) => ({
  ...letters(look),
  ...(look.frame !== undefined && frame(look.frame)),
  ...(look.underline !== undefined && { bd: { b: line(look.underline) } }),
  ...placed,
  ...ownWay[role],
}));

/** Rows taller than others because of a role in them, in pixels. */
export const rowPx: Partial<Record<Role, number>> = { title: 40, heading: 32 };

export const noteMark = { size: 7, color: '#7d9fd6' };

/** Words of a state stand in the middle of their cell. */
export const stateCell: IStyleData = { ht: HorizontalAlign.CENTER };

export const stateLooks = eachLook(STATE_LOOKS, letters);

/** Words with their colours, for a legend. */
export const samples = Object.entries({ input: looks.input, result: looks.result, ...stateLooks }).map(([word, { cl, bg }]) => ({
  word,
  ink: cl?.rgb ?? '',
  fill: bg?.rgb ?? '',
}));
