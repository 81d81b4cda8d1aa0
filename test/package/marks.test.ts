// A mark changes the look of its cell and of no other, and its words stand where every program looks for them. Read back by
// the library's reader, which shares nothing with what wrote it; expected looks follow from the format's description.
import { type Cell, type CellStyle, readXlsx, type Workbook } from 'hucre/xlsx';
import { describe, expect, it } from 'vitest';
import type { CellChange, CellMark } from '../../src/package/cell-splices';
import { CellStyles } from '../../src/package/cell-styles';
import { edited, type EditedPackage } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { FOREIGN, FOREIGN_NAMES } from './foreign';
import { CONTENT_TYPES, links, made, MAIN, type Making, rawEntries, SHEET, textOf } from './made';

const LINKS = 'xl/worksheets/_rels/sheet1.xml.rels';
const STYLES = 'xl/styles.xml';

/** Formats: 0 plain, 1 bold with two places in a filled cell, 2 italic, 3 with lines and a ground, 4 text with its apostrophe. */
const STYLE_PART =
  `<?xml version="1.0"?>\n<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="0.0&quot; x&quot;"/><numFmt numFmtId="180" formatCode="0.00 €"/></numFmts>` +
  '<fonts count="3"><font><sz val="10"/><name val="Arial"/></font><font><b/><sz val="10"/><color rgb="FF0000FF"/><name val="Arial"/></font><font><i/><sz val="10"/><name val="Arial"/></font></fonts>' +
  '<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FF92D050"/></patternFill></fill></fills>' +
  '<borders count="2"><border><left/><right/><top/><bottom/><diagonal/></border><border diagonalUp="1"><left style="thick"/><right style="thick"/><top/><bottom/><diagonal style="thin"/></border></borders>' +
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
  '<cellXfs count="5"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="2" fontId="1" fillId="2" borderId="0" xfId="0" applyFont="1"><alignment horizontal="center"/><protection locked="0"/></xf>' +
  '<xf numFmtId="180" fontId="2" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" fillId="2" borderId="1" xfId="0"/><xf numFmtId="49" fontId="0" fillId="0" borderId="0" xfId="0" quotePrefix="1"/></cellXfs>' +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="1"><dxf><numFmt numFmtId="190" formatCode="0"/></dxf></dxfs></styleSheet>';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const styled: Making = {
  beforeData: '<cols><col min="3" max="3" width="12" style="1"/></cols>',
  rows: [0, 1, 2, 3, 4]
    .map(s => `<row r="${s + 1}"><c r="A${s + 1}" s="${s}"><v>${s}</v></c><c r="B${s + 1}" s="${s}"><v>${s}</v></c></row>`)
    .join(''),
  bookLinks: [['st', 'styles', 'styles.xml']],
  types: `<Override PartName="/${STYLES}" ContentType="${TYPE}.styles+xml"/>`,
  more: { [STYLES]: STYLE_PART },
};

const marked = (mark: CellMark): CellChange => ({ value: 2.4, formula: 'none', mark });
const edit = (file: Uint8Array, marks: Readonly<Record<string, CellMark>>): EditedPackage =>
  edited(readPackage(file), { cells: new Map([['S', new Map(Object.entries(marks).map(([at, mark]) => [at, marked(mark)]))]]) });
const read = (file: Uint8Array): Promise<Workbook> => readXlsx(file, { readStyles: true });
const cellOf = (book: Workbook, at: string): Cell | undefined =>
  book.sheets[0]?.cells?.get(`${Number(at.slice(1)) - 1},${at.charCodeAt(0) - 65}`);
const lookOf = (book: Workbook, at: string): CellStyle | undefined => cellOf(book, at)?.style;

const DASHED = { style: 'dashed' };
const LIGHT = { type: 'pattern', pattern: 'solid', fgColor: { rgb: 'FFF2CC' } };

describe('the look of a cell', () => {
  it('with another number format is as before in all else', async () => {
    const file = made(styled);
    const format = { numberFormat: '0.0##" mm"' };
    const [before, after] = await Promise.all([file, edit(file, { A1: format, A2: format, A5: format }).bytes].map(read));
    if (before === undefined || after === undefined) throw new Error('not read');
    for (const at of ['A1', 'A2']) expect(lookOf(after, at)).toEqual({ ...lookOf(before, at), numFmt: '0.0##" mm"' });
    expect(lookOf(after, 'A2')).toMatchObject({ font: { bold: true }, alignment: { horizontal: 'center' }, protection: { locked: false } });
    expect(textOf(edit(file, { A5: format }).bytes, STYLES)).toMatch(/numFmtId="191"[^>]*applyNumberFormat="1"\/><\/cellXfs>/);
    expect(textOf(edit(file, { A5: format }).bytes, STYLES).match(/quotePrefix/g)).toHaveLength(1);
  });

  it('of a fixed value is italic on a light ground; with a ground or slant of its own a dashed line is round it', async () => {
    const file = made(styled);
    const fixed = { isFixed: true } as const;
    const marks = { A1: fixed, A2: fixed, A3: fixed, A4: fixed, A5: fixed, C1: fixed, D9: fixed };
    const after = await read(edit(file, marks).bytes);
    for (const at of Object.keys(marks)) expect(lookOf(after, at)?.font?.italic, at).toBe(true);
    expect(lookOf(after, 'A1')).toMatchObject({ font: { name: 'Arial', size: 10 }, fill: LIGHT });
    expect(lookOf(after, 'A1')?.border).toBeUndefined();
    const round = { left: DASHED, right: DASHED, top: DASHED, bottom: DASHED };
    const green = { fill: { fgColor: { rgb: '92D050' } }, border: round };
    // a new cell in a column with a format has it as well
    for (const at of ['A2', 'C1'])
      expect(lookOf(after, at), at).toMatchObject({ ...green, font: { bold: true, color: { rgb: '0000FF' } }, numFmt: '0.00' });
    expect(lookOf(after, 'A3')).toMatchObject({ numFmt: '0.00 €', fill: LIGHT, border: round });
    expect(lookOf(after, 'A4')).toMatchObject({
      ...green,
      numFmt: '0.0" x"',
      border: { ...round, diagonalUp: true, diagonal: { style: 'thin' } },
    });
    expect(lookOf(after, 'D9')).toMatchObject({ fill: LIGHT });
  });

  it('comes once to the list however many cells have it, and behind what was there', () => {
    const file = made(styled);
    const marks = Object.fromEntries(
      Array.from({ length: 50 }, (_, i) => [`D${i + 1}`, { isFixed: true, numberFormat: '0.00 €' } as const]),
    );
    const styles = textOf(edit(file, { ...marks, A1: { isFixed: true } }).bytes, STYLES);
    const [before, after] = [STYLE_PART, styles].map(text => [...text.matchAll(/<(numFmts|fonts|fills|borders|cellXfs) count="(\d+)"/g)]);
    expect(before?.map(([, list, count]) => [list, count])).toEqual([['numFmts', '2'], ['fonts', '3'], ['fills', '3'], ['borders', '2'], ['cellXfs', '5']]); // prettier-ignore
    expect(after?.map(([, list, count]) => [list, count])).toEqual([['numFmts', '2'], ['fonts', '4'], ['fills', '4'], ['borders', '2'], ['cellXfs', '7']]); // prettier-ignore
    for (const [, xfs] of STYLE_PART.matchAll(/<cellXfs count="5">(.*)<\/cellXfs>/g)) expect(styles).toContain(`<cellXfs count="7">${xfs}`);
  });

  it('is none of the formats that cells name although the workbook has no list of them', () => {
    const file = made({ rows: '<row r="1"><c r="A1" s="5"><v>1</v></c><c r="B1" s="7"><v>1</v></c></row>' });
    expect(textOf(edit(file, { A1: { isFixed: true } }).bytes, SHEET)).toContain('<c r="A1" s="8"><v>2.4</v></c><c r="B1" s="7">');
  });

  it('is refused where a file has no room for it', () => {
    const full = (count: number): string =>
      STYLE_PART.replace(/<cellXfs count="5">/, `<cellXfs count="${count}">${'<xf/>'.repeat(count - 5)}`);
    expect(() => new CellStyles(full(65_490), STYLES).like(0, { isFixed: true })).toThrow(/no room for another look .* 65490/);
    expect(new CellStyles(full(65_489), STYLES).like(0, { isFixed: true })).toBe(65_489);
    expect(() => edit(made(styled), { A1: { numberFormat: '0'.repeat(256) } })).toThrow(/256 characters; a cell holds 255/);
  });

  it.each([
    ['an empty part', `<styleSheet xmlns="${MAIN}"/>`],
    ['one without lists', `<x:styleSheet xmlns:x="${MAIN}"><x:dxfs count="0"/></x:styleSheet>`],
    ['one with empty lists', `<styleSheet xmlns="${MAIN}"><fonts/><fills count="0"></fills><cellXfs count="0"/></styleSheet>`],
  ])('is written into %s, before what must follow', async (_, part) => {
    const file = edit(made({ ...styled, more: { [STYLES]: part } }), { A1: { isFixed: true, numberFormat: '0.0" mm"' } }).bytes;
    const counted = [...textOf(file, STYLES).matchAll(/<(?:x:)?(\w+) count="(\d+)"/g)].map(([, list, count]) => `${list} ${count}`);
    // the plain look of every other cell stays at 0, and the two grounds that Excel has at 0 and 1
    expect(counted.slice(0, 6)).toEqual(['numFmts 1', 'fonts 2', 'fills 3', 'borders 1', 'cellStyleXfs 1', 'cellXfs 2']);
    expect(counted.slice(6)).toEqual(part.includes('dxfs') ? ['dxfs 0'] : []);
    if (!part.startsWith('<x:'))
      expect(lookOf(await read(file), 'A1')).toMatchObject({ font: { italic: true }, fill: LIGHT, numFmt: '0.0" mm"' });
    expect(lookOf(await read(file), 'B1')?.font?.italic).toBeUndefined();
  });
});

const MARK: CellMark = { numberFormat: '0.0##" mm"', isFixed: true, note: ' first\nsecond <b> & "c" ' };
/** Start tags of cells with where they stand. */
const tagsOf = (sheet: string): Map<string, string> =>
  new Map([...sheet.matchAll(/<(?:x:)?c\b[^>]*\br="([A-Z]+\d+)"[^>]*>/g)].map(([tag, at = '']) => [at, tag]));
const formatIn = (tag: string | undefined): string | undefined => /\ss="(\d+)"/.exec(tag ?? '')?.[1];
/** The library reads no UTF-16, and no part with another prefix. */
const UNREAD = /UTF-16|prefix/;

describe('of foreign workbooks', () => {
  it.each(FOREIGN_NAMES)('%s: one marked cell and a new one; no other cell has another format, no other part another text', async name => {
    const file = (await FOREIGN[name]?.()) ?? new Uint8Array();
    const { bytes, added, touched, gone, unwrittenNotes } = edit(file, { A1: MARK, F7: MARK });
    const hasComment = name.startsWith('comments');
    expect(unwrittenNotes).toEqual(hasComment ? [{ sheet: 'S', at: 'A1' }] : []);
    const plain = (zip: Uint8Array, part: string): string => textOf(zip, part).replaceAll('\0', '');
    const [before, after] = [file, bytes].map(zip => tagsOf(plain(zip, SHEET)));
    expect(after?.get('F7')).toMatch(/<(x:)?c r="F7" s="\d+">/);
    for (const [at, tag] of before ?? []) if (at !== 'A1') expect(after?.get(at), at).toBe(tag);
    const formats = [...plain(bytes, added.find(part => part === STYLES) ?? STYLES).matchAll(/<xf\b/g)].length;
    for (const at of ['A1', 'F7']) expect(Number(formatIn(after?.get(at)) ?? 0), at).toBeLessThan(formats);
    const [was, is] = [rawEntries(file), rawEntries(bytes)];
    for (const [part, entry] of is) if (!touched.includes(part) && !added.includes(part)) expect(entry, part).toEqual(was.get(part));
    expect([...is.keys()].sort()).toEqual([...was.keys(), ...added].filter(part => !gone.includes(part)).sort());
    expect(readPackage(bytes).carries.find(({ kind }) => kind === 'comments')?.count).toBe(hasComment ? 3 : 2);
    if (UNREAD.test(name)) return;
    const book = await read(bytes);
    expect(lookOf(book, 'F7')).toMatchObject({ font: { italic: true }, fill: LIGHT, numFmt: MARK.numberFormat });
    expect(cellOf(book, 'F7')?.comment).toMatchObject({ author: 'Bosswright', text: MARK.note });
    expect(cellOf(book, 'A1')?.comment?.text).toBe(hasComment ? 'one' : MARK.note);
  });

  it('most of them are read by the library', () =>
    expect(FOREIGN_NAMES.filter(name => !UNREAD.test(name)).length).toBeGreaterThanOrEqual(13));
});

const VML = 'xl/drawings/vmlDrawing1.vml';
const drawing = (content: string, root = ''): string =>
  `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office"${root}>${content}</xml>`;
const withDrawing = (vml: string, more: Making['more'] = {}): Making => ({
  ...styled,
  afterData: '<pageMargins/><legacyDrawing r:id="v"/>',
  more: { [STYLES]: STYLE_PART, [LINKS]: links(['h', 'vmlDrawing', '../drawings/vmlDrawing9.vml'], ['v', 'vmlDrawing', '../drawings/vmlDrawing1.vml']), [VML]: vml, 'xl/drawings/vmlDrawing9.vml': drawing('<o:idmap v:ext="edit" data="3,4"/>'), ...more }, // prettier-ignore
});
const note = (words: string): CellMark => ({ note: words });

describe('words at a cell', () => {
  it('stand in a new part, led to and typed, with a box of their own', () => {
    const { bytes, added } = edit(made({ ...styled, afterData: '<pageMargins/><tableParts/>' }), {
      A1: note('one'),
      XFD1048576: note('two'),
    });
    expect(added).toEqual(['xl/comments1.xml', LINKS, VML]);
    expect(textOf(bytes, 'xl/comments1.xml')).toContain(
      '<authors><author>Bosswright</author></authors><commentList><comment ref="A1" authorId="0"><text><t xml:space="preserve">one</t></text></comment><comment ref="XFD1048576" authorId="0">',
    );
    expect(textOf(bytes, LINKS)).toMatch(/Id="rId1" Type="[^"]*\/comments" Target="\/xl\/comments1.xml".*Id="rId2" Type="[^"]*\/vmlDrawing" Target="\/xl\/drawings\/vmlDrawing1.vml"/); // prettier-ignore
    expect(textOf(bytes, SHEET)).toMatch(/<\/sheetData><pageMargins\/><legacyDrawing [^>]*r:id="rId2"\/><tableParts\/>/);
    expect(textOf(bytes, CONTENT_TYPES)).toMatch(/PartName="\/xl\/comments1.xml".*<Default Extension="vml"/);
    const vml = textOf(bytes, VML);
    expect(vml).toMatch(/data="1".*<v:shapetype id="_x0000_t202".*_x0000_s1025".*_x0000_s1026"/s);
    expect(vml).toContain('<x:Anchor>1, 15, 0, 2, 5, 15, 2, 2</x:Anchor>');
    expect(vml).toContain('<x:Row>1048575</x:Row><x:Column>16383</x:Column>');
    for (const [, anchor = ''] of vml.matchAll(/<x:Anchor>([^<]*)</g)) {
      const [left = 0, , top = 0, , right = 0, , bottom = 0] = anchor.split(',').map(Number);
      expect(left < right && right <= 16_383 && top < bottom && bottom <= 1_048_575, anchor).toBe(true);
    }
  });

  it('are put behind the boxes that there are, in the drawing that the sheet names, with numbers of nobody', () => {
    const vml = drawing(
      '<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout><v:shapetype id="_x0000_t202"/><v:shape id="_x0000_s1029"/>',
    );
    const { bytes, touched, added } = edit(made(withDrawing(vml)), { A1: note('one') });
    expect([touched.includes(VML), touched.includes('xl/drawings/vmlDrawing9.vml')]).toEqual([true, false]);
    expect(added).toEqual(['xl/comments1.xml']);
    expect(textOf(bytes, SHEET).match(/legacyDrawing/g)).toHaveLength(1);
    const after = textOf(bytes, VML);
    expect(after).toContain('data="1,5"');
    expect(after.match(/<v:shapetype/g)).toHaveLength(1);
    expect(after).toMatch(/<v:shape id="_x0000_s1029"\/><v:shape id="_x0000_s5121".*<\/v:shape><\/xml>$/);
    expect(after).toContain('xmlns:x="urn:schemas-microsoft-com:office:excel"');
  });

  it.each<[string, string, Making['more']]>([
    ['a drawing whose prefixes mean something else', drawing('', ' xmlns:x="urn:other"'), {}],
    ['a drawing without an end', '<xml xmlns:v="urn:schemas-microsoft-com:vml"/>', {}],
    ['comments without a list', drawing(''), { [LINKS]: links(['v', 'vmlDrawing', '../drawings/vmlDrawing1.vml'], ['c', 'comments', '../comments1.xml']), 'xl/comments1.xml': `<comments xmlns="${MAIN}"/>` }], // prettier-ignore
    ['a drawing that is not there', drawing(''), { [LINKS]: links() }],
  ])('are told as not written beside %s, and nothing else changes', (_, vml, more) => {
    const { unwrittenNotes, added, touched } = edit(made(withDrawing(vml, more)), { A1: note('one'), Z9: note('two') });
    expect(unwrittenNotes).toEqual([
      { sheet: 'S', at: 'A1' },
      { sheet: 'S', at: 'Z9' },
    ]);
    expect(added).toEqual([]);
    expect(touched).not.toContain(VML);
  });

  it('do not come to a cell of a thread, and the comments of before stay', async () => {
    const file = (await FOREIGN['comments, chart, table, printer']?.()) ?? new Uint8Array();
    const { bytes, unwrittenNotes, touched } = edit(file, { A1: note('x'), A2: note('y'), B2: note('z') });
    expect(unwrittenNotes.map(({ at }) => at)).toEqual(['A1', 'A2']);
    const [before, after] = [file, bytes].map(zip => textOf(zip, 'xl/comments1.xml'));
    expect(after).toBe(
      before
        ?.replace('</authors>', '<author>Bosswright</author></authors>')
        .replace('</commentList>', '<comment ref="B2" authorId="1"><text><t xml:space="preserve">z</t></text></comment></commentList>'),
    );
    expect(touched).not.toContain('xl/threadedComments/threadedComment1.xml');
    const again = edit(bytes, { C9: note('more') });
    expect(textOf(again.bytes, 'xl/comments1.xml').match(/<author>Bosswright/g)).toHaveLength(1);
    expect(textOf(again.bytes, 'xl/comments1.xml')).toContain('<comment ref="C9" authorId="1">');
    expect(textOf(again.bytes, 'xl/drawings/vmlDrawing1.vml').match(/id="_x0000_s\d+"/g)).toEqual([
      'id="_x0000_s1025"',
      'id="_x0000_s2049"',
    ]);
  });

  it('of 3,000 cells have 3,000 numbers, none the first of a block', () => {
    const marks = Object.fromEntries(Array.from({ length: 3_000 }, (_, i) => [`A${i + 1}`, note(`words ${i}`)]));
    const vml = textOf(edit(made(), marks).bytes, VML);
    const numbers = [...vml.matchAll(/id="_x0000_s(\d+)"/g)].map(([, number]) => Number(number));
    expect(new Set(numbers).size).toBe(3_000);
    expect(numbers.filter(number => number % 1024 === 0)).toEqual([]);
    expect(vml).toContain('data="1,2,3"');
  });

  it('do not come to a cell of a thread that has no comment of the older kind', () => {
    const thread = 'http://schemas.microsoft.com/office/2017/10/relationships/threadedComment';
    const more = {
      [LINKS]: links(['t', thread, '../threadedComments/threadedComment1.xml']),
      'xl/threadedComments/threadedComment1.xml': '<ThreadedComments xmlns="urn:t"><threadedComment ref="B2" id="{1}"/></ThreadedComments>',
    };
    expect(edit(made({ more }), { B2: note('x'), B3: note('y') }).unwrittenNotes).toEqual([{ sheet: 'S', at: 'B2' }]);
  });

  it('are led to by an id of nobody, and their drawing is typed once', () => {
    const known = '<Default Extension="VML" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/>';
    const file = made({ types: known, more: { [LINKS]: links(['rId2', 'hyperlink', '!https://example.org/']) } });
    const { bytes } = edit(file, { A1: note('x') });
    expect([...textOf(bytes, LINKS).matchAll(/ Id="(\w+)"/g)].map(([, id]) => id)).toEqual(['rId2', 'rId3', 'rId4']);
    expect(textOf(bytes, CONTENT_TYPES).match(/Extension="vml"/gi)).toHaveLength(1);
  });

  it('that look like a code of the format are none', () =>
    expect(textOf(edit(made(), { A1: note('_x0041_\u0001') }).bytes, 'xl/comments1.xml')).toContain('>_x005F_x0041__x0001_</t>'));

  it('are refused when no cell holds as many', () => expect(() => edit(made(), { A1: note('x'.repeat(32_768)) })).toThrow(/holds 32767/));
});

it('a note stands where the comments of the sheet were left out', async () => {
  const file = readPackage((await FOREIGN['comments, chart, table, printer']?.()) as Uint8Array);
  const drop = file.carries.filter(({ kind }) => kind === 'comments' || kind === 'threaded comments');
  const note = { value: 2.5, formula: 'none', mark: { note: 'typed' } } as const;
  const copy = edited(file, { cells: new Map([['S', new Map([['A2', note]])]]), drop });
  const again = readPackage(copy.bytes);
  const comments = again.parts.relations(again.sheets[0]?.part ?? '').filter(({ type }) => type === 'comments');
  expect(drop).toHaveLength(2);
  expect(comments.map(({ target }) => again.parts.packed.has(target))).toEqual([true]);
  expect(again.parts.decoded(comments[0]?.target ?? '').text).toContain('typed');
  expect(again.parts.decoded(comments[0]?.target ?? '').text).not.toContain('>one<');
});
