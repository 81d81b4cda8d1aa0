// Workbooks as other programs leave them: what an edit meets and must not harm.
import { writeXlsx } from 'hucre/xlsx';
import { Zip, ZipDeflate, strToU8 } from 'fflate';
import { BOOK, BOOK_LINKS, CONTENT_TYPES, links, MAIN, made, madeParts, OFFICE, SHEET, utf16, zipped } from './made';

const STRICT = 'http://purl.oclc.org/ooxml/spreadsheetml/main';
const X14 = 'http://schemas.microsoft.com/office/spreadsheetml/2009/9/main';
const PERSONAL = 'http://schemas.microsoft.com/office/2017/10/relationships';

/** Two rows: numbers, a formula and one that shares it. */
const ROWS =
  '<row r="1" spans="1:3" ht="20.1"  customHeight=\'1\'><c r="A1" s="1"><v>2</v></c>\r\n<c r="B1" t="str"><f>A1&amp;"mm"</f><v>2mm</v></c><c r="C1"><f t="shared" ref="C1:C2" si="0">A1*$A$1</f><v>4</v></c></row>' +
  '<row r="2"><c r="A2"><v>3</v></c><c r="C2"><f t="shared" si="0"/><v>6</v></c></row>';

/** The same with data descriptors, as a program writes that does not know the sizes beforehand. */
function streamed(parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  const pieces: Uint8Array[] = [];
  const zip = new Zip((fault, piece) => {
    if (fault) throw fault;
    pieces.push(piece);
  });
  for (const [name, part] of Object.entries(parts)) {
    const file = new ZipDeflate(name, { level: 6 });
    file.mtime = '2026-02-14';
    zip.add(file);
    file.push(typeof part === 'string' ? strToU8(part) : part, true);
  }
  zip.end();
  return new Uint8Array(Buffer.concat(pieces));
}

export const chained = {
  rows: ROWS,
  book: '<calcPr calcId="191029"/>',
  bookLinks: [['r9', 'calcChain', 'calcChain.xml']] as const,
  types: '<Override PartName="/xl/calcChain.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml"/>',
  more: { 'xl/calcChain.xml': `<calcChain xmlns="${MAIN}"><c r="B1" i="7"/><c r="C1"/><c r="C2"/></calcChain>` },
};

const prefixed = (text: string): string => text.replace(/<(\/?)(?!\?)/g, '<$1x:').replace(`xmlns="${MAIN}"`, `xmlns:x="${MAIN}"`);
const base = madeParts({ rows: ROWS });
const text = (part: string): string => String(base[part]);

const commented = {
  rows: ROWS,
  afterData: '<legacyDrawing r:id="v"/><tableParts count="1"><tablePart r:id="t"/></tableParts>',
  more: {
    'xl/worksheets/_rels/sheet1.xml.rels': links(
      ['c', 'comments', '../comments1.xml'],
      ['v', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
      ['t', 'table', '../tables/table1.xml'],
      ['d', 'drawing', '../drawings/drawing1.xml'],
      ['p', 'printerSettings', '../printerSettings/printerSettings1.bin'],
      ['tc', `${PERSONAL}/threadedComment`, '../threadedComments/threadedComment1.xml'],
      ['h', 'hyperlink', '!https://example.org/'],
    ),
    'xl/comments1.xml': `<comments xmlns="${MAIN}"><authors><author>A</author></authors><commentList><comment ref="A1" authorId="0"><text><t>one</t></text></comment><comment ref="A2" authorId="0"><text><t>two</t></text></comment></commentList></comments>`,
    'xl/threadedComments/threadedComment1.xml':
      '<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="A1" id="{1}"><text>one</text></threadedComment></ThreadedComments>',
    'xl/drawings/vmlDrawing1.vml': '<xml xmlns:v="urn:schemas-microsoft-com:vml"><v:shape/><br></xml>',
    'xl/drawings/drawing1.xml': '<wsDr xmlns="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"/>',
    'xl/drawings/_rels/drawing1.xml.rels': links(['c', 'chart', '../charts/chart1.xml']),
    'xl/charts/chart1.xml':
      '<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart><c:f>S!$A$1:$A$2</c:f></c:chart></c:chartSpace>',
    'xl/printerSettings/printerSettings1.bin': new Uint8Array([1, 2, 3, 0xff]),
    'xl/tables/table1.xml': `<table xmlns="${MAIN}" id="1" name="Bosses" displayName="Bosses" ref="A1:C2" totalsRowShown="0"><autoFilter ref="A1:C2"/><tableColumns count="3"><tableColumn id="1" name="hole"/><tableColumn id="2" name="wall_x000a_mm"/><tableColumn id="3" name="OD"><calculatedColumnFormula>_xldudf_ENCL_BOSS_OD(Bosses[[#This Row],[hole]],1)</calculatedColumnFormula></tableColumn></tableColumns></table>`,
  },
};

const conditions =
  `<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>A1&gt;2</formula></cfRule></conditionalFormatting>` +
  `<extLst><ext xmlns:x14="${X14}" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:cfRule type="expression" priority="3"><xm:f>S!A1=1</xm:f></x14:cfRule><xm:sqref>A2</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext></extLst>`;

const odd =
  '<row r="1"><c r="A1"><v>2</v></c><c r="B1" t="str"><f><![CDATA[A1<3]]></f><v><![CDATA[a<b]]></v><extLst><ext uri="{1}"/></extLst></c>' +
  '<c r="C1" t="inlineStr"><is><r><t xml:space="preserve"> rich </t></r><r><t>text</t></r><rPh sb="0" eb="1"><t>spoken</t></rPh></is></c></row>' +
  `<row r="2"><c r="C2"><!-- near the limit --><f>${'1+'.repeat(4094)}1</f><v>4095</v></c></row>`;

export const FOREIGN: Readonly<Record<string, () => Uint8Array | Promise<Uint8Array>>> = {
  plain: () => made({ rows: ROWS }),
  'another prefix': () => zipped({ ...base, [SHEET]: prefixed(text(SHEET)), [BOOK]: prefixed(text(BOOK)) }),
  'UTF-16 with its mark': () =>
    zipped({ ...base, [SHEET]: utf16(text(SHEET).replace('<?xml version="1.0"?>', '<?xml version="1.0" encoding="UTF-16"?>')) }),
  'UTF-16, the large end first': () => zipped({ ...base, [SHEET]: utf16(text(SHEET).replace('<?xml version="1.0"?>', ''), true) }),
  'UTF-8 with its mark': () => zipped({ ...base, [SHEET]: `\ufeff${text(SHEET)}`, [BOOK]: `\ufeff${text(BOOK)}` }),
  'the strict form': () => zipped({ ...base, [SHEET]: text(SHEET).replace(MAIN, STRICT), [BOOK]: text(BOOK).replace(MAIN, STRICT) }),
  'an order of calculation': () => made(chained),
  'comments, chart, table, printer': () => made(commented),
  conditions: () => made({ rows: ROWS, afterData: conditions }),
  'CDATA, extensions, rich text': () => made({ rows: odd }),
  stored: () => made({ ...chained, level: 0 }),
  streamed: () => streamed(madeParts(chained)),
  'links from the top': () =>
    zipped({ ...base, [BOOK_LINKS]: links(['r1', 'worksheet', '/xl/worksheets/sheet1.xml']), 'xl/odd name [1].bin': new Uint8Array([0]) }),
  'no addresses': () =>
    made({ rows: '<row><c><v>2</v></c><c t="str"><f>A1&amp;"mm"</f><v>2mm</v></c><c><f>A1*2</f></c></row><row><c><v>3</v></c></row>' }),
  'arrays and spills': () =>
    made({
      rows: '<row r="1"><c r="A1"><v>2</v></c><c r="B1" cm="1" t="str"><f t="array" ref="B1:C1">_xlfn.ANCHORARRAY(A1)</f><v>a</v></c><c r="C1"><v>1</v></c></row><row r="2"><c r="C2"><f t="array" ref="C2">SUM(A1:A5*2)</f><v>4</v></c></row>',
      bookLinks: [['m', 'sheetMetadata', 'metadata.xml']],
      more: {
        'xl/metadata.xml': `<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{1}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`,
      },
    }),
  'written by the library': () =>
    writeXlsx({
      sheets: [
        {
          name: 'S',
          rows: [
            [2, 'text', true],
            [3, null, 1.5],
          ],
          freezePane: { rows: 1 },
          merges: [{ startRow: 2, startCol: 0, endRow: 2, endCol: 1 }],
        },
        { name: 'Other', rows: [['second']] },
      ],
    }),
};
export const FOREIGN_NAMES = Object.keys(FOREIGN);
export { CONTENT_TYPES, OFFICE };
