// Every host shows the theme: what it makes of each look is read back, in its own terms, and compared with the theme.
import type { CellStyle } from 'hucre/xlsx';
import { afterEach, expect, it } from 'vitest';
import { excelPort } from '../../src/hosts/excel/excel-port';
import { looks as engineLooks, sheetStyle, stateLooks as engineStates } from '../../src/hosts/univer/looks';
import { looks as fileLooks, sheetFont, stateRules } from '../../src/hosts/xlsx/looks';
import type { Role } from '../../src/sheet/plan';
import { type Look, ROLE_LOOKS, SHEET_FONT, STATE_LOOKS } from '../../src/sheet/theme';
import { EXCEL } from '../../src/words/excel';
import { fakeExcel } from './excel-fake';

afterEach(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name);
});

const ROLES = Object.entries(ROLE_LOOKS) as [Role, Look][];
const STATES = Object.entries(STATE_LOOKS) as [keyof typeof STATE_LOOKS, Look][];
const hex = (rgb: string | undefined): string | undefined => (rgb === undefined ? undefined : `#${rgb}`);
/** Without what is not there. */
const known = (look: Partial<Record<keyof Look, unknown>>): object =>
  Object.fromEntries(Object.entries(look).filter(([, value]) => value !== undefined));

const inFile = ({ font, fill, border }: CellStyle): object =>
  known({
    ink: hex(font?.color?.rgb),
    fill: fill?.type === 'pattern' ? hex(fill.fgColor?.rgb) : undefined,
    sizePt: font?.size === sheetFont.size ? undefined : font?.size,
    isBold: font?.bold,
    isItalic: font?.italic,
    frame: border?.top === undefined ? undefined : hex(border.top.color?.rgb),
    underline: border?.top === undefined ? hex(border?.bottom?.color?.rgb) : undefined,
  });

const inEngine = ({ cl, bg, fs, bl, it: italic, bd }: (typeof engineLooks)[Role]): object =>
  known({
    ink: (cl ?? sheetStyle.cl)?.rgb?.toUpperCase(),
    fill: bg?.rgb?.toUpperCase(),
    sizePt: fs,
    isBold: bl === 1 ? true : undefined,
    isItalic: italic === 1 ? true : undefined,
    frame: bd?.t?.cl.rgb?.toUpperCase(),
    underline: !bd?.t ? bd?.b?.cl.rgb?.toUpperCase() : undefined,
  });

it.each(ROLES)('a %s looks in a file and in the sheet engine as the theme says', (role, look) => {
  expect(inFile(fileLooks[role])).toEqual(look);
  expect(inEngine(engineLooks[role])).toEqual(look);
});

it.each(STATES)('the state %s looks in a file and in the sheet engine as the theme says', (word, look) => {
  const rule = stateRules('B1:B9', 'B1', 0).find(({ formula }) => formula === `B1="${word}"`);
  expect(inFile(rule?.style ?? {})).toEqual(look);
  expect(inEngine(engineStates[word])).toEqual(look);
});

it('has the font of the theme', () => {
  expect([sheetFont.name, sheetFont.size, hex(sheetFont.color.rgb)]).toEqual([SHEET_FONT.name, SHEET_FONT.sizePt, SHEET_FONT.ink]);
  expect([sheetStyle.ff, sheetStyle.fs, sheetStyle.cl?.rgb?.toUpperCase()]).toEqual([SHEET_FONT.name, SHEET_FONT.sizePt, SHEET_FONT.ink]);
});

it('is what Excel is asked for', async () => {
  const excel = fakeExcel({ name: 'Part', cells: new Map() });
  await excelPort(EXCEL).add({
    name: 'All',
    widths: [10],
    cells: ROLES.map(([role], i) => ({ at: `A${i + 1}`, role, value: role })),
    stateRanges: ['A20'],
  });
  const asked = excel.done.join('\n');
  const missing = ROLES.flatMap(([, look], i) =>
    [`A${i + 1}`].flatMap(at => [
      [look.ink, new RegExp(`\\b${at}\\b[^\\n]*format\\.font\\.color = ${look.ink}`)] as const,
      [look.fill ?? '', new RegExp(`\\b${at}\\b[^\\n]*format\\.fill\\.color = ${look.fill ?? ''}`)] as const,
      [
        look.frame ?? look.underline ?? '',
        new RegExp(`${at}\\b[^\\n]*border[^\\n]*color = ${look.frame ?? look.underline ?? ''}`),
      ] as const,
    ]),
  )
    .filter(([colour, line_]) => colour !== '' && !line_.test(asked))
    .map(([, line_]) => String(line_));
  expect(missing).toEqual([]);
  for (const [word, { ink, fill = '' }] of STATES) for (const part of [word, ink, fill]) expect(asked, word).toContain(part);
});
