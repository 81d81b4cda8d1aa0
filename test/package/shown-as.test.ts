// Numbers that a file shows as days, times and shares are read as these, by the formats of their cells.
import { expect, it } from 'vitest';
import { readWithRemarks } from '../../src/hosts/xlsx/read';
import { BOOK, madeParts, zipped } from './made';
import { STYLES, styled, stylesPart, LISTS } from './styled';

/** Format codes by number, `undefined` for those that every program knows; then a number and what is read. */
const READ: readonly (readonly [id: number, code: string | undefined, value: number, read: string | undefined])[] = [
  [14, undefined, 46086, '2026-03-05'],
  [22, undefined, 46086.604166666664, '2026-03-05 14:30'],
  [20, undefined, 0.604166666666667, '14:30'],
  [0, undefined, 46086, undefined],
  [2, undefined, 46086, undefined],
  [46, undefined, 1.5, undefined],
  [170, 'dd.mm.yyyy', 46086, '2026-03-05'],
  [171, '[$-407]d/\\ mmmm\\ yyyy;@', 46086, '2026-03-05'],
  [172, 'mmm', 16103, '1944-02'],
  [173, 'hh:mm:ss', 0.75001, '18:00:01'],
  [174, '0.0" mm by day"', 46086, undefined],
  [175, '0.00\\d', 46086, undefined],
  [176, '[Red]0.00;yyyy', 46086, undefined],
  [177, 'General" days"', 46086, undefined],
  [178, '[h]:mm', 30.5, undefined],
  [179, 'yyyy-mm-dd', 1, '1900-01-01'],
  [180, 'yyyy-mm-dd', 59, '1900-02-28'],
  [181, 'yyyy-mm-dd', 61, '1900-03-01'],
  [182, 'yyyy-mm-dd', -1, undefined],
  [183, 'yyyy-mm-dd', 3_000_000, undefined],
  [184, 'hh:mm', 7.5, undefined],
  [17, undefined, 46086, '2026-03'],
  [188, 'mm\\/yyyy', 46086, '2026-03'],
  [189, 'mmm d', 46086, '2026-03-05'],
  [190, 'mm:ss', 0.5, undefined],
  [9, undefined, 0.06, '6 %'],
  [185, '0.0%', 0.006, '0.6 %'],
  [186, '0.0" %"', 0.6, undefined],
  [187, '0.0\\%', 0.6, undefined],
];
const formats = READ.flatMap(([id, code]) =>
  code === undefined ? [] : [`<numFmt numFmtId="${id}" formatCode="${code.replaceAll('"', '&quot;')}"/>`],
);
const xfs = READ.map(([id]) => `<xf numFmtId="${id}" fontId="0" fillId="0" borderId="0"/>`);
const styles = stylesPart(
  `<numFmts count="${formats.length}">${formats.join('')}</numFmts>${LISTS}<cellXfs count="${xfs.length}">${xfs.join('')}</cellXfs>`,
);
const rows = READ.map(([, , value], i) => `<row r="${i + 1}"><c r="A${i + 1}" s="${i}"><v>${value}</v></c></row>`).join('');

it('by the number and the code of the format', async () => {
  const { sheets } = await readWithRemarks(styled(styles, { rows }));
  expect(READ.map(([id, code], i) => [id, code, sheets[0]?.shown.get(`A${i + 1}`)?.said])).toEqual(
    READ.map(([id, code, , read]) => [id, code, read]),
  );
});

it('from 1904 where the workbook counts so', async () => {
  const types =
    '<Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>';
  const parts = madeParts({ rows, types, bookLinks: [['st', 'styles', 'styles.xml']], more: { [STYLES]: styles } });
  const book = String(parts[BOOK]).replace('<sheets>', '<workbookPr date1904="1"/><sheets>');
  const { sheets } = await readWithRemarks(zipped({ ...parts, [BOOK]: book }));
  expect([sheets[0]?.shown.get('A1')?.said, sheets[0]?.shown.get('A16')?.said]).toEqual(['2030-03-06', '1904-01-02']);
});
