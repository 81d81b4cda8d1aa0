// What the texts of the user's parts become when sheets of ours are added, and what is refused.
import { writeXlsx } from 'hucre/xlsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { edited, type EditedPackage } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { chained, CONTENT_TYPES } from './foreign';
import { BOOK, BOOK_LINKS, links, made, MAIN, SHEET, textOf } from './made';
import { allUnder, FileParts, Looks, OWN_PLAN, sheetPart } from './own-plan';
import { LISTS, styled, stylesPart, xfs } from './styled';

const ROWS = '<row r="1"><c r="A1"><v>2</v></c></row>';
const ourNames = OWN_PLAN.sheets.map(({ name }) => name);
let own = new Uint8Array();
beforeAll(async () => {
  own = new Uint8Array(await writeWorkbook(OWN_PLAN));
}, 60_000);
const withOwn = (file: Uint8Array): EditedPackage => edited(readPackage(file), { cells: new Map(), own });

const bookAfter = (file: Uint8Array): string => textOf(withOwn(file).bytes, BOOK);

describe('in the texts of the user', () => {
  const names = (first: number): string =>
    `<definedName name="_xlnm.Print_Titles" localSheetId="${first}">'Handover'!$1:$2</definedName><definedName name="_xlnm.Print_Titles" localSheetId="${first + 1}">'Data'!$1:$2</definedName>`;
  const sheet = (name: string, id: number, link: string): string => `<sheet name="${name}" sheetId="${id}" r:id="${link}"/>`;
  const SHEETS = `<sheets>${sheet('S', 7, 'r1')}${sheet('Handover', 8, 'rId2')}${sheet('Data', 9, 'rId3')}</sheets>`;

  it.each([
    ['', `<definedNames>${names(1)}</definedNames><calcPr fullCalcOnLoad="1"/>`],
    [
      '<functionGroups/><externalReferences/><calcPr calcId="1"/><oleSize ref="A1"/>',
      `<functionGroups/><externalReferences/><definedNames>${names(1)}</definedNames><calcPr calcId="1" fullCalcOnLoad="1"/><oleSize ref="A1"/>`,
    ],
    [
      '<definedNames><definedName name="a">1</definedName></definedNames>',
      `<definedNames><definedName name="a">1</definedName>${names(1)}</definedNames><calcPr fullCalcOnLoad="1"/>`,
    ],
    ['<definedNames/><pivotCaches/>', `<definedNames>${names(1)}</definedNames><calcPr fullCalcOnLoad="1"/><pivotCaches/>`],
  ])('the names stand where the format has them: %s', (book, becomes) =>
    expect(bookAfter(made({ rows: ROWS, book }))).toContain(`${SHEETS}${becomes}</workbook>`),
  );

  it('a chart sheet counts as a sheet, and a prefix declared at one sheet is declared at ours', () => {
    const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const book = `<x:workbook xmlns:x="${MAIN}"><x:sheets><x:sheet name="S" sheetId="3" xmlns:k="${relations}" k:id="r1"/><x:sheet name="C" sheetId="2" xmlns:k="${relations}" k:id="ch"/></x:sheets></x:workbook>`;
    const after = bookAfter(
      made({
        rows: ROWS,
        more: {
          [BOOK]: book,
          [BOOK_LINKS]: links(['r1', 'worksheet', 'worksheets/sheet1.xml'], ['ch', 'chartsheet', 'c.xml']),
          'xl/c.xml': `<chartsheet xmlns="${MAIN}"/>`,
        },
      }),
    );
    expect(after).toContain(`<x:sheet name="Handover" sheetId="4" xmlns:k="${relations}" k:id="rId2"/>`);
    expect(after).toContain('<x:definedNames><x:definedName name="_xlnm.Print_Titles" localSheetId="2">');
  });

  it('the strict words stay strict, in every part of ours', () => {
    const transitional = [
      ['http://schemas.openxmlformats.org/spreadsheetml/2006/main', 'http://purl.oclc.org/ooxml/spreadsheetml/main'],
      ['http://schemas.openxmlformats.org/officeDocument/2006/relationships', 'http://purl.oclc.org/ooxml/officeDocument/relationships'],
    ] as const;
    const strict = (text: string): string => transitional.reduce((so, [old, words]) => so.replaceAll(old, words), text);
    const plain = made({ rows: ROWS });
    const parts = [SHEET, BOOK, BOOK_LINKS, '_rels/.rels'].map(part => [part, strict(textOf(plain, part))] as const);
    const { bytes, added } = withOwn(made({ more: Object.fromEntries(parts) }));
    const texts = added.filter(part => /\.(xml|rels)$/.test(part)).map(part => [part, textOf(bytes, part)] as const);
    expect(texts.length).toBeGreaterThanOrEqual(11);
    for (const [part, text] of texts)
      expect(text.replaceAll('http://schemas.openxmlformats.org/package/', ''), part).not.toContain('schemas.openxmlformats.org');
    expect(texts.filter(([, text]) => text.includes('drawingml/spreadsheetDrawing"')).length).toBe(2);
  });

  it('the parts that say it may have a prefix themselves', () => {
    const prefixed = (text: string): string => text.replace(/<(\/?)(?!\?)/g, '<$1p:').replace(' xmlns="', ' xmlns:p="');
    const plain = made({ rows: ROWS });
    const { bytes } = withOwn(
      made({ more: Object.fromEntries([BOOK_LINKS, CONTENT_TYPES].map(part => [part, prefixed(textOf(plain, part))])) }),
    );
    expect(textOf(bytes, BOOK_LINKS)).toMatch(/<p:Relationship Id="rId2" [^>]*Target="\/xl\/worksheets\/sheet2.xml"\/>/);
    expect(textOf(bytes, CONTENT_TYPES)).toContain('<p:Override PartName="/xl/worksheets/sheet2.xml"');
    expect(readPackage(bytes).sheetNames).toEqual(['S', ...ourNames]);
  });

  it('texts of ours stand in their cells, and the user’s list of texts is as it was', () => {
    const list = `<sst xmlns="${MAIN}" count="1" uniqueCount="1"><si><t>his</t></si></sst>`;
    const file = made({
      rows: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>',
      bookLinks: [['t', 'sharedStrings', 'sharedStrings.xml']],
      more: { 'xl/sharedStrings.xml': list },
    });
    const { bytes } = withOwn(file);
    const part = sheetPart(new FileParts(bytes), 'Handover');
    expect(textOf(bytes, part)).not.toContain('t="s"');
    expect(textOf(bytes, part)).toContain('<is><t xml:space="preserve"> led &lt;&amp;&gt; text </t></is>');
    expect(readPackage(bytes).sheets.map(({ cells }) => cells[0]?.value)).toEqual(['his', 'Hand-over', 'material']);
  });
});

describe('a cell of ours without a format', () => {
  it('has the first of ours, and not the first of the user', async () => {
    const plain = await writeXlsx({ sheets: [{ name: 'Plain', rows: [[1]] }], defaultFont: { name: 'Arial', size: 9 } });
    const file = styled(stylesPart(LISTS + xfs(3)));
    const { bytes } = edited(readPackage(file), { cells: new Map(), own: new Uint8Array(plain) });
    const parts = new FileParts(bytes);
    const [cell] = allUnder(parts.nodes(sheetPart(parts, 'Plain'))).filter(({ local }) => local === 'c');
    expect(JSON.stringify(new Looks(parts).cells[Number(cell?.at['s'])])).toContain('Arial');
  });
});

describe('together with other edits', () => {
  it('the cells change, the sheets are added, and the order of calculation goes', () => {
    const file = made(chained);
    const both = edited(readPackage(file), { cells: new Map([['S', new Map([['A1', { value: 5, formula: 'none' as const }]])]]), own });
    const sheets = readPackage(both.bytes).sheets;
    expect(sheets.map(({ name }) => name)).toEqual(['S', ...ourNames]);
    expect(sheets[0]?.cells[0]).toEqual({ at: 'A1', value: 5 });
    expect(both.gone).toEqual(['xl/calcChain.xml']);
    for (const part of [BOOK_LINKS, CONTENT_TYPES]) expect(textOf(both.bytes, part)).not.toContain('calcChain');
  });
  it('the same gives the same bytes', () => expect(withOwn(made()).bytes).toEqual(withOwn(made()).bytes));
});

describe('refused before anything is written', () => {
  it('a name of a sheet that the workbook has, in whatever capitals', () => {
    expect(() => withOwn(withOwn(made()).bytes)).toThrow(new RangeError('the workbook has a sheet "Handover" already'));
    const named = textOf(made({ rows: ROWS }), BOOK).replace('name="S"', 'name="dATA"');
    expect(() => withOwn(made({ more: { [BOOK]: named } }))).toThrow(/a sheet "Data" already/);
  });

  it('a format of cells too many: the limit that the format’s makers name is 65,490', () => {
    const ours = new Looks(new FileParts(own)).cells.length;
    const room = (count: number): Uint8Array => styled(stylesPart(LISTS + xfs(count)), { level: 0 });
    expect(new Looks(new FileParts(withOwn(room(65_490 - ours)).bytes)).cells.length).toBe(65_490);
    expect(() => withOwn(room(65_491 - ours))).toThrow(
      `the workbook has ${65_491 - ours} formats of cells, our sheets need ${ours} more, and a file holds 65490`,
    );
  });

  it('a formula of ours that spills', async () => {
    const spilling = await writeWorkbook({
      name: 'x',
      sheets: [
        { name: 'Spill', widths: [9], cells: [{ at: 'A1', role: 'text', formula: '=B1:B2', array: { range: 'A1', isDynamic: true } }] },
      ],
    });
    expect(() => edited(readPackage(made()), { cells: new Map(), own: new Uint8Array(spilling) })).toThrow(/a cell of ours has "cm"/);
  });

  it('a file that is no workbook', () =>
    expect(() => edited(readPackage(made()), { cells: new Map(), own: new Uint8Array([1, 2]) })).toThrow(/not a workbook file/));
});
