// One workbook that carries everything that is told of, each with a word that stands nowhere else; what goes takes its word along.
import { BOOK, BOOK_LINKS, CONTENT_TYPES, links, MAIN, OFFICE, SHEET, type MadeParts } from './made';

const MS = 'http://schemas.microsoft.com/office';
const TYPES = 'http://schemas.openxmlformats.org/package/2006/content-types';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const MC = 'xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"';
const X14 = 'http://schemas.microsoft.com/office/spreadsheetml/2009/9/main';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const DRAWN = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const bytes = (text: string): Uint8Array => new Uint8Array(Buffer.from(`\u0001\u0002${text}`));
const sheet = (rows: string, after = '', before = ''): string =>
  `${head}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}" ${MC}>${before}<sheetData>${rows}</sheetData>${after}</worksheet>`;

/** By kind, the word that must be gone with it. */
export const WORDS = {
  'hidden sheet': 'SECRETPRICE',
  'very hidden sheet': 'SECRETDEEP',
  comments: 'SECRETNOTE',
  'threaded comments': 'SECRETTHREAD',
  persons: 'SECRETPERSON',
  path: 'SECRETFOLDER',
  'external link': 'SECRETBOOK',
  connections: 'SECRETSERVER',
  query: 'SECRETQUERY',
  'pivot cache': 'SECRETRECORD',
  'data model': 'SECRETMODEL',
  macros: 'SECRETMACRO',
  controls: 'SECRETCONTROL',
  'embedded file': 'SECRETFILE',
  'custom XML': 'SECRETXML',
  properties: 'SECRETAUTHOR',
  'custom properties': 'SECRETPROPERTY',
  labels: 'SECRETLABEL',
  'preview picture': 'SECRETPICTURE',
  'task pane': 'SECRETPANE',
  'printer settings': 'SECRETPRINTER',
  changes: 'SECRETCHANGE',
  'other part': 'SECRETOTHER',
} as const;
const W = WORDS;

/** Shapes of the old kind: two notes, a button, an embedded file with its picture. */
const OLD_DRAWING =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">' +
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"/>' +
  '<v:shape id="_x0000_s1025" type="#_x0000_t202" style="visibility:hidden"><v:textbox><div>note<br></div></v:textbox><x:ClientData ObjectType="Note"><x:Row>0</x:Row><x:Column>0</x:Column></x:ClientData></v:shape>' +
  '<v:shape id="_x0000_s1026" type="#_x0000_t202"><x:ClientData ObjectType="Note"><x:Row>1</x:Row><x:Column>0</x:Column></x:ClientData></v:shape>' +
  `<v:shape id="_x0000_s1027" type="#_x0000_t201" alt="${W.controls}"><x:ClientData ObjectType="Button"><x:FmlaMacro>[0]!Start${W.macros}</x:FmlaMacro></x:ClientData></v:shape>` +
  `<v:shape id="_x0000_s1028" type="#_x0000_t75"><v:imagedata o:relid="rId1" o:title="${W['embedded file']}"/><x:ClientData ObjectType="Pict"/></v:shape></xml>`;

const anchor = (inner: string): string =>
  `<xdr:twoCellAnchor><xdr:from><xdr:col>1</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>1</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>2</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>2</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to>${inner}<xdr:clientData/></xdr:twoCellAnchor>`;
const shape = (id: number, name: string, more: string): string =>
  `<xdr:sp macro="[0]!Start" textlink=""><xdr:nvSpPr><xdr:cNvPr id="${id}" name="${name}"${more === '' ? '/>' : `><a:extLst><a:ext uri="{63B3BB69-23CF-44E3-9099-C40C66FF867C}">${more}</a:ext></a:extLst></xdr:cNvPr>`}<xdr:cNvSpPr/></xdr:nvSpPr><xdr:spPr/></xdr:sp>`;
const NEW_DRAWING =
  `${head}<xdr:wsDr xmlns:xdr="${DRAWING}" xmlns:a="${DRAWN}">` +
  `<mc:AlternateContent ${MC}><mc:Choice xmlns:a14="${MS}/drawing/2010/main" Requires="a14">${anchor(shape(3, W.controls, '<a14:compatExt spid="_x0000_s1027"/>'))}</mc:Choice><mc:Fallback/></mc:AlternateContent>` +
  `${anchor(shape(9, 'seen', ''))}</xdr:wsDr>`;

const ROWS =
  '<row r="1"><c r="A1"><v>2</v></c><c r="B1" t="s"><v>0</v></c><c r="C1"><f>A1*Factor</f><v>4</v></c></row>' +
  '<row r="2"><c r="A2"><v>3</v></c><c r="B2" t="s"><v>1</v></c></row><row r="3"><c r="A3" t="inlineStr"><is><t>hole</t></is></c></row><row r="4"><c r="A4"><v>1</v></c></row>';

const AFTER =
  `<conditionalFormatting sqref="A1" pivot="1"><cfRule type="expression" priority="1"><formula>A1&gt;2</formula></cfRule></conditionalFormatting>` +
  '<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><pageSetup paperSize="9" orientation="landscape" r:id="rp"/>' +
  '<customProperties><customPr name="own" r:id="rq"/></customProperties><drawing r:id="rd"/><legacyDrawing r:id="rv"/>' +
  `<mc:AlternateContent><mc:Choice xmlns:x14="${X14}" Requires="x14"><oleObjects><mc:AlternateContent><mc:Choice Requires="x14"><oleObject progId="Packager" shapeId="1028" r:id="ro"><objectPr defaultSize="0" r:id="ri"><anchor/></objectPr></oleObject></mc:Choice><mc:Fallback><oleObject progId="Packager" shapeId="1028" r:id="ro"/></mc:Fallback></mc:AlternateContent></oleObjects></mc:Choice></mc:AlternateContent>` +
  `<mc:AlternateContent><mc:Choice xmlns:x14="${X14}" Requires="x14"><controls><mc:AlternateContent><mc:Choice Requires="x14"><control shapeId="1027" r:id="rc" name="${W.controls}"><controlPr macro="[0]!Start${W.macros}"/></control></mc:Choice></mc:AlternateContent></controls></mc:Choice></mc:AlternateContent>` +
  '<tableParts count="1"><tablePart r:id="rt"/></tableParts>';

const S_LINKS = links(
  ['rn', 'comments', '../comments1.xml'],
  ['rv', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
  ['rd', 'drawing', '../drawings/drawing1.xml'],
  ['rt', 'table', '../tables/table1.xml'],
  ['rp', 'printerSettings', '../printerSettings/printerSettings1.bin'],
  ['rq', 'customProperty', '../customProperty1.bin'],
  ['ro', 'oleObject', '../embeddings/oleObject1.bin'],
  ['ri', 'image', '../media/image1.emf'],
  ['rc', 'ctrlProp', '../ctrlProps/ctrlProp1.xml'],
  ['rz', 'pivotTable', '../pivotTables/pivotTable1.xml'],
  ['ry', `${MS}/2017/10/relationships/threadedComment`, '../threadedComments/threadedComment1.xml'],
);

const BOOK_TEXT =
  `${head}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}" ${MC} mc:Ignorable="x15" xmlns:x15="${MS}/spreadsheetml/2010/11/main"><workbookPr/>` +
  `<mc:AlternateContent><mc:Choice Requires="x15"><x15ac:absPath xmlns:x15ac="${MS}/spreadsheetml/2010/11/ac" url="C:\\Users\\${W.path}\\"/></mc:Choice></mc:AlternateContent>` +
  '<bookViews><workbookView activeTab="2" firstSheet="0"/></bookViews>' +
  '<sheets><sheet name="Prices" sheetId="4" state="hidden" r:id="r2"/><sheet name="Deep" sheetId="5" state="veryHidden" r:id="r3"/><sheet name="S" sheetId="7" r:id="r1"/></sheets>' +
  '<externalReferences><externalReference r:id="re"/></externalReferences>' +
  `<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Prices!$A$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="2">S!$A$1:$C$4</definedName><definedName name="Factor">2</definedName><definedName name="${W['hidden sheet']}">Prices!$A$1</definedName></definedNames>` +
  '<calcPr calcId="191029"/><pivotCaches><pivotCache cacheId="3" r:id="rp"/></pivotCaches>' +
  `<extLst><ext uri="{FCE2AD5D-F65C-4FA6-A056-5C36A1767C68}"><x15:dataModel><x15:modelTables><x15:modelTable id="${W['data model']}" name="T" connection="C"/></x15:modelTables></x15:dataModel></ext></extLst></workbook>`;

const TYPES_OF: Readonly<Record<string, string>> = {
  [BOOK]: 'application/vnd.ms-excel.sheet.macroEnabled.main+xml',
  [SHEET]: `${SPREADSHEET}.worksheet+xml`,
  'xl/worksheets/sheet2.xml': `${SPREADSHEET}.worksheet+xml`,
  'xl/worksheets/sheet3.xml': `${SPREADSHEET}.worksheet+xml`,
  'xl/sharedStrings.xml': `${SPREADSHEET}.sharedStrings+xml`,
  'xl/styles.xml': `${SPREADSHEET}.styles+xml`,
  'xl/comments1.xml': `${SPREADSHEET}.comments+xml`,
  'xl/comments2.xml': `${SPREADSHEET}.comments+xml`,
  'xl/threadedComments/threadedComment1.xml': 'application/vnd.ms-excel.threadedcomments+xml',
  'xl/persons/person.xml': 'application/vnd.ms-excel.person+xml',
  'xl/drawings/drawing1.xml': 'application/vnd.openxmlformats-officedocument.drawing+xml',
  'xl/tables/table1.xml': `${SPREADSHEET}.table+xml`,
  'xl/tables/table2.xml': `${SPREADSHEET}.table+xml`,
  'xl/queryTables/queryTable1.xml': `${SPREADSHEET}.queryTable+xml`,
  'xl/connections.xml': `${SPREADSHEET}.connections+xml`,
  'xl/ctrlProps/ctrlProp1.xml': 'application/vnd.ms-excel.controlproperties+xml',
  'xl/externalLinks/externalLink1.xml': `${SPREADSHEET}.externalLink+xml`,
  'xl/pivotCache/pivotCacheDefinition1.xml': `${SPREADSHEET}.pivotCacheDefinition+xml`,
  'xl/pivotCache/pivotCacheRecords1.xml': `${SPREADSHEET}.pivotCacheRecords+xml`,
  'xl/pivotTables/pivotTable1.xml': `${SPREADSHEET}.pivotTable+xml`,
  'xl/model/item.data': 'application/vnd.openxmlformats-officedocument.model+data',
  'xl/vbaProject.bin': 'application/vnd.ms-office.vbaProject',
  'xl/xmlMaps.xml': 'application/xml',
  'customXml/itemProps1.xml': 'application/vnd.openxmlformats-officedocument.customXmlProperties+xml',
  'docProps/core.xml': 'application/vnd.openxmlformats-package.core-properties+xml',
  'docProps/app.xml': 'application/vnd.openxmlformats-officedocument.extended-properties+xml',
  'docProps/custom.xml': 'application/vnd.openxmlformats-officedocument.custom-properties+xml',
  'docMetadata/LabelInfo.xml': 'application/vnd.ms-office.classificationlabels+xml',
  'xl/webextensions/taskpanes.xml': 'application/vnd.ms-office.webextensiontaskpanes+xml',
  'xl/webextensions/webextension1.xml': 'application/vnd.ms-office.webextension+xml',
  'xl/revisions/revisionHeaders.xml': `${SPREADSHEET}.revisionHeaders+xml`,
  'xl/revisions/userNames.xml': `${SPREADSHEET}.userNames+xml`,
};

const column = (id: number, name: string, more = ''): string => `<tableColumn id="${id}" name="${name}"${more}`;

export const CARRYING: MadeParts = {
  [CONTENT_TYPES]: `${head}<Types xmlns="${TYPES}">${[
    ['xml', 'application/xml'],
    ['rels', 'application/vnd.openxmlformats-package.relationships+xml'],
    ['bin', 'application/octet-stream'],
    ['vml', 'application/vnd.openxmlformats-officedocument.vmlDrawing'],
    ['emf', 'image/x-emf'],
    ['jpeg', 'image/jpeg'],
  ]
    .map(([extension, type]) => `<Default Extension="${extension}" ContentType="${type}"/>`)
    .join('')}${Object.entries(TYPES_OF)
    .map(([part, type]) => `<Override PartName="/${part}" ContentType="${type}"/>`)
    .join('')}</Types>`,
  '_rels/.rels': links(
    ['a', 'officeDocument', 'xl/workbook.xml'],
    ['k', `${PACKAGE}/metadata/core-properties`, 'docProps/core.xml'],
    ['l', 'extended-properties', 'docProps/app.xml'],
    ['m', 'custom-properties', 'docProps/custom.xml'],
    ['n', `${MS}/2020/02/relationships/classificationlabels`, 'docMetadata/LabelInfo.xml'],
    ['o', `${PACKAGE}/metadata/thumbnail`, 'docProps/thumbnail.jpeg'],
    ['p', `${MS}/2011/relationships/webextensiontaskpanes`, 'xl/webextensions/taskpanes.xml'],
  ),
  [BOOK]: BOOK_TEXT,
  [BOOK_LINKS]: links(
    ['r1', 'worksheet', 'worksheets/sheet1.xml'],
    ['r2', 'worksheet', 'worksheets/sheet2.xml'],
    ['r3', 'worksheet', 'worksheets/sheet3.xml'],
    ['rs', 'sharedStrings', 'sharedStrings.xml'],
    ['rf', 'styles', 'styles.xml'],
    ['re', 'externalLink', 'externalLinks/externalLink1.xml'],
    ['rk', 'connections', 'connections.xml'],
    ['rp', 'pivotCacheDefinition', 'pivotCache/pivotCacheDefinition1.xml'],
    ['rm', `${MS}/2011/relationships/powerPivotData`, 'model/item.data'],
    ['rv', `${MS}/2006/relationships/vbaProject`, 'vbaProject.bin'],
    ['rx', 'customXml', '../customXml/item1.xml'],
    ['ry', 'xmlMaps', 'xmlMaps.xml'],
    ['ru', `${MS}/2017/10/relationships/person`, 'persons/person.xml'],
    ['rh', 'revisionHeaders', 'revisions/revisionHeaders.xml'],
    ['rn', 'usernames', 'revisions/userNames.xml'],
    ['rz', 'somethingNew', 'new.bin'],
  ),
  [SHEET]: sheet(ROWS, AFTER),
  'xl/worksheets/_rels/sheet1.xml.rels': S_LINKS,
  'xl/worksheets/sheet2.xml': sheet(
    `<row r="1"><c r="A1" t="s"><v>2</v></c><c r="B1" t="s"><v>1</v></c><c r="C1"><f>Deep!A1</f><v>1</v></c></row>`,
    '<legacyDrawing r:id="v"/><tableParts count="1"><tablePart r:id="t"/></tableParts>',
  ),
  'xl/worksheets/_rels/sheet2.xml.rels': links(
    ['t', 'table', '../tables/table2.xml'],
    ['c', 'comments', '../comments2.xml'],
    ['v', 'vmlDrawing', '../drawings/vmlDrawing2.vml'],
  ),
  'xl/worksheets/sheet3.xml': sheet(
    `<row r="1"><c r="A1"><v>1</v></c><c r="B1" t="str"><f>Prices!A1&amp;"${W['very hidden sheet']}"</f><v>${W['very hidden sheet']}</v></c></row>`,
  ),
  'xl/sharedStrings.xml': `${head}<sst xmlns="${MAIN}" count="4" uniqueCount="3"><si><t>only here</t></si><si><t>in both</t></si><si><r><t>${W['hidden sheet']}</t></r></si></sst>`,
  'xl/styles.xml': `${head}<styleSheet xmlns="${MAIN}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="1"><xf/></cellXfs></styleSheet>`,
  'xl/comments1.xml': `${head}<comments xmlns="${MAIN}"><authors><author>${W.comments}</author><author>tc={1}</author></authors><commentList><comment ref="A1" authorId="0"><text><t>${W.comments}</t></text></comment><comment ref="A2" authorId="1"><text><t>[Threaded comment] ${W['threaded comments']}</t></text></comment></commentList></comments>`,
  'xl/comments2.xml': `${head}<comments xmlns="${MAIN}"><authors><author/></authors><commentList><comment ref="A1" authorId="0"><text><t>${W.comments}</t></text></comment></commentList></comments>`,
  'xl/drawings/vmlDrawing1.vml': OLD_DRAWING,
  'xl/drawings/vmlDrawing2.vml': OLD_DRAWING.replace(/<v:shape id="_x0000_s102[678]"[\s\S]*?<\/v:shape>/g, ''),
  'xl/drawings/_rels/vmlDrawing1.vml.rels': links(['rId1', 'image', '../media/image1.emf']),
  'xl/drawings/drawing1.xml': NEW_DRAWING,
  'xl/threadedComments/threadedComment1.xml': `${head}<ThreadedComments xmlns="${MS}/spreadsheetml/2018/threadedcomments"><threadedComment ref="A2" personId="{2}" id="{1}"><text>${W['threaded comments']}</text></threadedComment></ThreadedComments>`,
  'xl/persons/person.xml': `${head}<personList xmlns="${MS}/spreadsheetml/2018/threadedcomments"><person displayName="${W.persons}" id="{2}" userId="u" providerId="None"/></personList>`,
  'xl/tables/table1.xml': `${head}<table xmlns="${MAIN}" id="1" name="Holes" displayName="Holes" ref="A3:A4" tableType="queryTable" totalsRowShown="0" connectionId="1">${`<tableColumns count="1">${column(1, 'hole', ' uniqueName="hole" queryTableFieldId="1"')}><xmlColumnPr mapId="1" xpath="/a" xmlDataType="string"/></tableColumn></tableColumns>`}</table>`,
  'xl/tables/table2.xml': `${head}<table xmlns="${MAIN}" id="2" name="Costs" displayName="Costs" ref="A1:B2" totalsRowShown="0"><tableColumns count="2">${column(1, W['hidden sheet'], '/>')}${column(2, 'in both', '/>')}</tableColumns></table>`,
  'xl/tables/_rels/table1.xml.rels': links(['q', 'queryTable', '../queryTables/queryTable1.xml']),
  'xl/queryTables/queryTable1.xml': `${head}<queryTable xmlns="${MAIN}" name="${W.query}" connectionId="1"><queryTableRefresh nextId="2"><queryTableFields count="1"><queryTableField id="1" name="hole" tableColumnId="1"/></queryTableFields></queryTableRefresh></queryTable>`,
  'xl/connections.xml': `${head}<connections xmlns="${MAIN}"><connection id="1" name="${W.connections}" type="5" refreshedVersion="6"><dbPr connection="Data Source=${W.connections}" command="T"/></connection><connection id="2" name="ThisWorkbookDataModel" type="5" refreshedVersion="6"/></connections>`,
  'xl/printerSettings/printerSettings1.bin': bytes(W['printer settings']),
  'xl/customProperty1.bin': bytes(W['custom properties']),
  'xl/embeddings/oleObject1.bin': bytes(W['embedded file']),
  'xl/media/image1.emf': bytes(W['embedded file']),
  'xl/ctrlProps/ctrlProp1.xml': `${head}<formControlPr xmlns="${X14}" objectType="Button" lockText="1" fmlaMacro="[0]!${W.controls}"/>`,
  'xl/externalLinks/externalLink1.xml': `${head}<externalLink xmlns="${MAIN}"><externalBook xmlns:r="${OFFICE}" r:id="r"><sheetNames><sheetName val="${W['external link']}"/></sheetNames></externalBook></externalLink>`,
  'xl/externalLinks/_rels/externalLink1.xml.rels': links(['r', 'externalLinkPath', `!file:///C:/${W['external link']}.xlsx`]),
  'xl/pivotCache/pivotCacheDefinition1.xml': `${head}<pivotCacheDefinition xmlns="${MAIN}" xmlns:r="${OFFICE}" r:id="r" recordCount="1"><cacheSource type="worksheet"><worksheetSource ref="A1:A2" sheet="S"/></cacheSource><cacheFields count="1"><cacheField name="hole"><sharedItems count="1"><s v="${W['pivot cache']}"/></sharedItems></cacheField></cacheFields></pivotCacheDefinition>`,
  'xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels': links(['r', 'pivotCacheRecords', 'pivotCacheRecords1.xml']),
  'xl/pivotCache/pivotCacheRecords1.xml': `${head}<pivotCacheRecords xmlns="${MAIN}" count="1"><r><s v="${W['pivot cache']}"/></r></pivotCacheRecords>`,
  'xl/pivotTables/pivotTable1.xml': `${head}<pivotTableDefinition xmlns="${MAIN}" name="PivotTable1" cacheId="3" dataCaption="Values"><location ref="E1:F2" firstHeaderRow="1" firstDataRow="1" firstDataCol="0"/></pivotTableDefinition>`,
  'xl/pivotTables/_rels/pivotTable1.xml.rels': links(['r', 'pivotCacheDefinition', '../pivotCache/pivotCacheDefinition1.xml']),
  'xl/model/item.data': bytes(W['data model']),
  'xl/vbaProject.bin': bytes(W.macros),
  'customXml/item1.xml': `<a xmlns="urn:own">${W['custom XML']}</a>`,
  'customXml/_rels/item1.xml.rels': links(['r', 'customXmlProps', 'itemProps1.xml']),
  'customXml/itemProps1.xml': `${head}<ds:datastoreItem xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml" ds:itemID="{3}"><ds:schemaRefs/></ds:datastoreItem>`,
  'xl/xmlMaps.xml': `${head}<MapInfo xmlns="${MAIN}" SelectionNamespaces=""><Schema ID="Schema1"/><Map ID="1" Name="${W['custom XML']}" RootElement="a" SchemaID="Schema1" ShowImportExportValidationErrors="false" AutoFit="true" Append="false" PreserveSortAFLayout="true" PreserveFormat="true"/></MapInfo>`,
  'docProps/core.xml': `${head}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>title</dc:title><dc:creator>${W.properties}</dc:creator><cp:lastModifiedBy>${W.properties}</cp:lastModifiedBy></cp:coreProperties>`,
  'docProps/app.xml': `${head}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><Application>A</Application><Manager>${W.properties}</Manager><HeadingPairs><vt:vector size="2" baseType="variant"><vt:variant><vt:lpstr>Worksheets</vt:lpstr></vt:variant><vt:variant><vt:i4>3</vt:i4></vt:variant></vt:vector></HeadingPairs><TitlesOfParts><vt:vector size="3" baseType="lpstr"><vt:lpstr>Prices</vt:lpstr><vt:lpstr>Deep</vt:lpstr><vt:lpstr>S</vt:lpstr></vt:vector></TitlesOfParts><Company>${W.properties}</Company></Properties>`,
  'docProps/custom.xml': `${head}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="2" name="own"><vt:lpwstr>${W['custom properties']}</vt:lpwstr></property></Properties>`,
  'docMetadata/LabelInfo.xml': `${head}<clbl:labelList xmlns:clbl="${MS}/2020/mipLabelMetadata"><clbl:label id="${W.labels}" enabled="1" method="Standard" siteId="{4}" contentBits="0" removed="0"/></clbl:labelList>`,
  'docProps/thumbnail.jpeg': bytes(W['preview picture']),
  'xl/webextensions/taskpanes.xml': `${head}<wetp:taskpanes xmlns:wetp="${MS}/webextensions/taskpanes/2010/11" xmlns:r="${OFFICE}"><wetp:taskpane dockstate="right"><wetp:webextensionref r:id="w"/></wetp:taskpane></wetp:taskpanes>`,
  'xl/webextensions/_rels/taskpanes.xml.rels': links(['w', `${MS}/2011/relationships/webextension`, 'webextension1.xml']),
  'xl/webextensions/webextension1.xml': `${head}<we:webextension xmlns:we="${MS}/webextensions/webextension/2010/11" id="${W['task pane']}"/>`,
  'xl/revisions/revisionHeaders.xml': `${head}<headers xmlns="${MAIN}" xmlns:r="${OFFICE}" guid="{5}"><header guid="{5}" userName="${W.changes}" r:id="l"/></headers>`,
  'xl/revisions/_rels/revisionHeaders.xml.rels': links(['l', 'revisionLog', 'revisionLog1.xml']),
  'xl/revisions/revisionLog1.xml': `${head}<revisions xmlns="${MAIN}"><!-- ${W.changes} --></revisions>`,
  'xl/revisions/userNames.xml': `${head}<users xmlns="${MAIN}" count="1"><userInfo guid="{5}" name="${W.changes}" id="1" dateTime="2026-02-14T00:00:00"/></users>`,
  'xl/new.bin': bytes(W['other part']),
};
