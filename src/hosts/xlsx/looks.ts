// The theme in the terms of a workbook file.
import type { CellStyle, ConditionalRule } from 'hucre/xlsx';
import type { Role } from '../../sheet/plan';
import { eachLook, type Look, ROLE_LOOKS, SHEET_FONT, STATE_LOOKS } from '../../sheet/theme';

type Font = NonNullable<CellStyle['font']>;
type Border = NonNullable<CellStyle['border']>;

/** `22303A` of `#22303A`. */
const colour = (rgb: string) => ({ rgb: rgb.slice(1) });

export const sheetFont = { name: SHEET_FONT.name, size: SHEET_FONT.sizePt, color: colour(SHEET_FONT.ink) } satisfies Font;

const letters = ({ ink, sizePt, isBold, isItalic }: Look): Font => ({
  color: colour(ink),
  ...(sizePt !== undefined && { size: sizePt }),
  ...(isBold === true && { bold: true }),
  ...(isItalic === true && { italic: true }),
});
const fill = (rgb: string): NonNullable<CellStyle['fill']> => ({
  type: 'pattern',
  pattern: 'solid',
  fgColor: colour(rgb),
  bgColor: colour(rgb),
});
const line = (rgb: string): NonNullable<Border['top']> => ({ style: 'thin', color: colour(rgb) });
const frame = (rgb: string): Border => ({ top: line(rgb), right: line(rgb), bottom: line(rgb), left: line(rgb) });

/** Alignment is left out: it depends on the content. */
export const looks: Readonly<Record<Role, CellStyle>> = eachLook(ROLE_LOOKS, look => ({
  font: { ...sheetFont, ...letters(look) },
  ...(look.fill !== undefined && { fill: fill(look.fill) }),
  ...(look.frame !== undefined && { border: frame(look.frame) }),
  ...(look.underline !== undefined && { border: { bottom: line(look.underline) } }),
}));

/** The rules that give a range its state colours; `first` is the top left cell of the range. */
export const stateRules = (range: string, first: string, before: number): ConditionalRule[] =>
  Object.entries(STATE_LOOKS).map(([word, look], i) => ({
    type: 'expression',
    priority: before + i + 1,
    range,
    formula: `${first}="${word}"`,
    style: { font: letters(look), fill: fill(look.fill) },
  }));
