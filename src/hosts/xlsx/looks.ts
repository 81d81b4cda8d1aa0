// How a role looks in a workbook file: the looks of the bench in the terms of a file.
import type { CellStyle, ConditionalRule } from 'hucre/xlsx';
import type { Role } from '../../sheet/plan';

type Font = NonNullable<CellStyle['font']>;
type Border = NonNullable<CellStyle['border']>;

export const sheetFont = { name: 'Arial', size: 10, color: { rgb: '22303A' } } satisfies Font;

const font = (rgb: string, more: Font = {}): Font => ({ ...sheetFont, color: { rgb }, ...more });
const fill = (rgb: string): NonNullable<CellStyle['fill']> => ({ type: 'pattern', pattern: 'solid', fgColor: { rgb }, bgColor: { rgb } });
const line = (rgb: string): NonNullable<Border['top']> => ({ style: 'thin', color: { rgb } });
const frame = (rgb: string): Border => ({ top: line(rgb), right: line(rgb), bottom: line(rgb), left: line(rgb) });
const underline: Border = { bottom: line('9DB8B8') };

/** Alignment is left out: it depends on the content. */
export const looks: Record<Role, CellStyle> = {
  title: { font: font('17494D', { size: 17, bold: true }) },
  heading: { font: font('17494D', { size: 11, bold: true }), border: underline },
  text: { font: sheetFont },
  label: { font: sheetFont },
  input: { font: font('1B4A91'), fill: fill('E9F0FC'), border: frame('A9C1E8') },
  unit: { font: font('6A7780') },
  note: { font: font('5D6A73', { italic: true }) },
  result: { font: font('14262B'), fill: fill('F1F3F2'), border: frame('DBE0DE') },
  header: { font: font('17494D', { bold: true }), fill: fill('DFEBE9'), border: underline },
  caution: { font: font('7A3B06'), fill: fill('FDF1E1') },
};

/** Colours of the state words: each pair differs in lightness too, and the word stays. */
export const stateLooks: Record<string, CellStyle> = {
  pass: { font: { color: { rgb: '0C4A54' } }, fill: fill('CFE8EA') },
  look: { font: { color: { rgb: '5C4300' } }, fill: fill('FFE6A3') },
  fail: { font: { color: { rgb: 'FFFFFF' }, bold: true }, fill: fill('B23A1E') },
  'not checked': { font: { color: { rgb: '53575E' }, italic: true }, fill: fill('E4E5E9') },
};

/** The rules that give a range its state colours; `first` is the top left cell of the range. */
export const stateRules = (range: string, first: string, before: number): ConditionalRule[] =>
  Object.entries(stateLooks).map(([word, style], i) => ({
    type: 'expression',
    priority: before + i + 1,
    range,
    formula: `${first}="${word}"`,
    style,
  }));
