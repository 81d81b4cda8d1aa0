// Workbooks with formats of cells, made by hand: what ours are put behind.
import { BOOK, BOOK_LINKS, links, made, MAIN, type MadeLink, type Making } from './made';

export const STYLES = 'xl/styles.xml';
const STYLES_TYPE =
  '<Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/>';
const STYLES_LINK: MadeLink = ['st', 'styles', 'styles.xml'];
const ROWS = '<row r="1"><c r="A1" s="1"><v>2</v></c><c r="B1" s="2"><f>A1*2</f><v>4</v></c></row>';

export const xfs = (count: number): string =>
  `<cellXfs count="${count}">${'<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>'.repeat(count)}</cellXfs>`;
export const LISTS =
  '<fonts count="1"><font><sz val="14"/><name val="Courier New"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>';
export const stylesPart = (content: string, prefix = ''): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<${prefix}styleSheet xmlns${prefix && ':x'}="${MAIN}">${content.replace(/<(\/?)/g, `<$1${prefix}`)}</${prefix}styleSheet>`;
export const styled = (styles: string, more: Making = {}): Uint8Array =>
  made({
    rows: ROWS,
    ...more,
    types: STYLES_TYPE + (more.types ?? ''),
    bookLinks: [STYLES_LINK, ...(more.bookLinks ?? [])],
    more: { [STYLES]: styles, ...more.more },
  });

const NUMBERED =
  '<numFmts count="2"><numFmt numFmtId="170" formatCode="0.0&quot;x&quot;"/><numFmt numFmtId="166" formatCode="yyyy"/></numFmts>';
const TWO_FORMATS =
  '<cellXfs count="3"><xf/><xf numFmtId="170" fontId="0" applyNumberFormat="1"/><xf numFmtId="166" xfId="0"><alignment horizontal="center"/></xf></cellXfs>';
const CONDITIONS =
  '<dxfs count="2"><dxf><font><b/></font></dxf><dxf><numFmt numFmtId="180" formatCode="0.00000"/></dxf></dxfs><tableStyles count="0"/><extLst><ext uri="{1}"/></extLst>';

/** Workbooks with formats, and with names that are taken. */
export const STYLED: Readonly<Record<string, () => Uint8Array>> = {
  'formats in another order of ids': () => styled(stylesPart(NUMBERED + LISTS + TWO_FORMATS + CONDITIONS)),
  'formats with a prefix': () => styled(stylesPart(NUMBERED + LISTS + TWO_FORMATS + CONDITIONS, 'x:')),
  'no formats for numbers and conditions': () =>
    styled(stylesPart(`${LISTS}${xfs(3)}<cellStyles count="1"><cellStyle name="Normal" xfId="0"/></cellStyles>`)),
  'lists that are empty': () => styled(stylesPart(`<numFmts count="0"/>${LISTS}${xfs(3)}<dxfs count="0"></dxfs><colors/>`)),
  'a styles part without lists': () => styled(`<styleSheet xmlns="${MAIN}"/>`),
  'counts that are not true': () => styled(stylesPart(`${LISTS}${xfs(3).replace('"3"', '"90"')}`)),
  'a chart sheet, names, taken names of parts': () =>
    styled(stylesPart(LISTS + xfs(3)), {
      book: '<definedNames><definedName name="_xlnm.Print_Titles" localSheetId="0">S!$1:$1</definedName><definedName name="hole">S!$A$1</definedName></definedNames><calcPr fullCalcOnLoad="1"/>',
      bookLinks: [
        ['rId7', 'externalLink', 'externalLinks/externalLink1.xml'],
        ['RID9', 'theme', 'theme/theme1.xml'],
      ],
      types:
        '<Default Extension="PNG" ContentType="image/x-png"/><Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/><Override PartName="/xl/Worksheets/Sheet2.xml" ContentType="application/xml"/>',
      more: {
        'xl/theme/theme1.xml': '<theme/>',
        'xl/externalLinks/externalLink1.xml': `<externalLink xmlns="${MAIN}"/>`,
        'xl/worksheets/_rels/sheet3.xml.rels': links(),
        'xl/Media/Image1.PNG': new Uint8Array([1]),
        'xl/comments1.xml': `<comments xmlns="${MAIN}"/>`,
        [BOOK]: `<workbook xmlns="${MAIN}"><sheets xmlns:q="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheet name="S" sheetId="7" q:id="r1"/><sheet name="Chart" sheetId="65" q:id="ch"/></sheets></workbook>`,
        [BOOK_LINKS]: links(['r1', 'worksheet', 'worksheets/sheet1.xml'], ['ch', 'chartsheet', 'chartsheets/sheet1.xml'], STYLES_LINK, [
          'rId7',
          'theme',
          'theme/theme1.xml',
        ]),
        'xl/chartsheets/sheet1.xml': `<chartsheet xmlns="${MAIN}"/>`,
      },
    }),
};
