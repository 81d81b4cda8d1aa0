// What stands in a package is read as the format stores it; expected values are those of the format's own description.
import { describe, expect, it } from 'vitest';
import { readPackage } from '../../src/package/read';
import { FOREIGN, FOREIGN_NAMES } from './foreign';
import { BOOK, BOOK_LINKS, links, made, MAIN, OFFICE, SHEET, zipped, madeParts, type Making } from './made';

const cellsOf = (rows: string, more: Making = {}) => readPackage(made({ rows, ...more })).sheets[0]?.cells;
const row = (cells: string): string => `<row r="1">${cells}</row>`;
const foreign = async (name: string) => readPackage((await FOREIGN[name]?.()) ?? new Uint8Array());

describe('values', () => {
  const texts: Making = {
    bookLinks: [['s', 'sharedStrings', 'sharedStrings.xml']],
    more: {
      'xl/sharedStrings.xml': `<sst xmlns="${MAIN}"><si><t xml:space="preserve"> one_x000D_</t></si><si><r><t>two</t></r><r><t>rich</t></r><rPh sb="0" eb="1"><t>spoken</t></rPh></si><si/></sst>`,
    },
  };
  it.each<[string, unknown]>([
    ['<c r="A1"><v>1.5E-3</v></c>', 0.0015],
    ['<c r="A1" t="s"><v>0</v></c>', ' one\r'],
    ['<c r="A1" t="s"><v>1</v></c>', 'tworich'],
    ['<c r="A1" t="b"><v>0</v></c>', false],
    ['<c r="A1" t="e"><v>#DIV/0!</v></c>', { error: '#DIV/0!' }],
    ['<c r="A1" t="str"><v>a_x0041_</v></c>', 'aA'],
    ['<c r="A1" t="inlineStr"><is><r><t>in</t></r><r><t>line</t></r></is></c>', 'inline'],
    ['<c r="A1" t="d"><v>2026-02-14</v></c>', 46067],
    ['<c r="A1" t="d"><v>1900-01-01T12:00:00</v></c>', 1.5],
  ])('%s', (cell, value) => expect(cellsOf(row(cell), texts)).toEqual([{ at: 'A1', value }]));

  it('dates are counted from 1904 where the workbook says so', () => {
    const making: Making = {
      more: {
        [BOOK]: String(madeParts({})[BOOK]).replace('<sheets>', '<workbookPr date1904="1"/><sheets>'),
        [SHEET]: String(madeParts({ rows: row('<c r="A1" t="d"><v>1904-01-02</v></c>') })[SHEET]),
      },
    };
    expect(readPackage(made(making)).is1904).toBe(true);
    expect(readPackage(made(making)).sheets[0]?.cells).toEqual([{ at: 'A1', value: 1 }]);
    expect(readPackage(made()).is1904).toBe(false);
  });

  it('a cell without value and formula is none', () =>
    expect(cellsOf(row('<c r="A1" s="1"/><c r="B1" t="str"><v/></c><c r="C1" t="s"><v>2</v></c>'), texts)).toEqual([]));
});

describe('formulas', () => {
  it('are told by kind, with area, number and entry; shared ones read as in each cell', async () => {
    const shared =
      row('<c r="A1"><f t="shared" ref="A1:A2" si="4">$B1+C$1*Other!D1&amp;"A1"</f><v>1</v></c>') +
      '<row r="2"><c r="A2"><f t="shared" si="4"/></c><c r="B2"><f t="dataTable" ref="B2:B9" dt2D="0" r1="A1"/><v>3</v></c></row>';
    expect(cellsOf(shared)).toEqual([
      { at: 'A1', value: 1, formula: { kind: 'shared', text: '$B1+C$1*Other!D1&"A1"', area: 'A1:A2', sharedIndex: 4 } },
      { at: 'A2', value: undefined, formula: { kind: 'shared', text: '$B2+C$1*Other!D2&"A1"', sharedIndex: 4 } },
      { at: 'B2', value: 3, formula: { kind: 'dataTable', text: '', area: 'B2:B9' } },
    ]);
    expect((await foreign('arrays and spills')).sheets[0]?.cells).toEqual([
      { at: 'A1', value: 2 },
      { at: 'B1', value: 'a', formula: { kind: 'dynamic', text: '_xlfn.ANCHORARRAY(A1)', area: 'B1:C1', cellMetadata: 1 } },
      { at: 'C1', value: 1 },
      { at: 'C2', value: 4, formula: { kind: 'array', text: 'SUM(A1:A5*2)', area: 'C2' } },
    ]);
  });

  it('an array of a file without metadata does not spill', () =>
    expect(cellsOf(row('<c r="A1" cm="1"><f t="array" ref="A1:B1">X()</f></c>'))?.[0]?.formula?.kind).toBe('array'));

  it('are the same in every form of the same workbook', async () => {
    const cells = (await foreign('plain')).sheets[0]?.cells;
    expect(cells).toHaveLength(5);
    const same = FOREIGN_NAMES.filter(name => !/CDATA|addresses|arrays|library/.test(name));
    for (const name of same) expect((await foreign(name)).sheets[0]?.cells, name).toEqual(cells);
    expect(same.length).toBeGreaterThanOrEqual(12);
  });

  it('stand in CDATA, near the limit, and in cells without an address', async () => {
    const odd = (await foreign('CDATA, extensions, rich text')).sheets[0]?.cells;
    expect(odd?.slice(1, 3)).toEqual([
      { at: 'B1', value: 'a<b', formula: { kind: 'plain', text: 'A1<3' } },
      { at: 'C1', value: ' rich text' },
    ]);
    expect(odd?.[3]?.formula?.text).toHaveLength(8189);
    expect((await foreign('no addresses')).sheets[0]?.cells.map(({ at }) => at)).toEqual(['A1', 'B1', 'C1', 'A2']);
  });
});

describe('what formulas may refer to', () => {
  it('names, with the sheet on which alone they hold; a sheet of one chart counts', () => {
    const parts = madeParts({
      book: '<definedNames><definedName name="hole">S!$B$4</definedName><definedName name="Draft" localSheetId="1" hidden="1">1.5</definedName></definedNames>',
    });
    const book = String(parts[BOOK]).replace('<sheets>', '<sheets><sheet name="Chart" sheetId="1" r:id="c"/>');
    const { names, sheetNames, sheets } = readPackage(
      zipped({
        ...parts,
        [BOOK]: book,
        [BOOK_LINKS]: links(['r1', 'worksheet', 'worksheets/sheet1.xml'], ['c', 'chartsheet', 'chartsheets/sheet1.xml']),
        'xl/chartsheets/sheet1.xml': `<chartsheet xmlns="${MAIN}"/>`,
      }),
    );
    expect(names).toEqual([
      { name: 'hole', meaning: 'S!$B$4', isHidden: false },
      { name: 'Draft', meaning: '1.5', sheet: 'S', isHidden: true },
    ]);
    expect([sheetNames, sheets.map(({ name }) => name)]).toEqual([['Chart', 'S'], ['S']]);
  });

  it('tables', async () => {
    expect((await foreign('comments, chart, table, printer')).tables).toEqual([
      {
        part: 'xl/tables/table1.xml',
        name: 'Bosses',
        sheet: 'S',
        area: 'A1:C2',
        headerRows: 1,
        totalsRows: 0,
        columns: [{ name: 'hole' }, { name: 'wall\nmm' }, { name: 'OD', formula: '_xldudf_ENCL_BOSS_OD(Bosses[[#This Row],[hole]],1)' }],
      },
    ]);
  });
});

describe('what goes along', () => {
  const told = (making: Making) => readPackage(made(making)).carries;
  it('comments, threads, printer settings of a sheet, and no chart, table, drawing or link that is seen', async () => {
    expect((await foreign('comments, chart, table, printer')).carries.map(({ kind, part, count }) => [kind, part, count])).toEqual([
      ['comments', 'xl/comments1.xml', 2],
      ['printer settings', 'xl/printerSettings/printerSettings1.bin', 1],
      ['threaded comments', 'xl/threadedComments/threadedComment1.xml', 1],
    ]);
  });

  it('nothing, of a workbook that carries nothing', () => expect(told({})).toEqual([]));

  it('hidden rows and columns, with how many; one of no size is hidden', () =>
    expect(
      told({
        beforeData: '<cols><col min="2" max="4" hidden="1"/><col min="6" max="6" width="0"/><col min="7" max="7" width="9"/></cols>',
        rows: '<row r="1" hidden="1"/><row r="2" ht="0"/><row r="3" hidden="0" ht="12"/>',
      }),
    ).toEqual([
      { kind: 'hidden rows', part: SHEET, count: 2, words: 'S' },
      { kind: 'hidden columns', part: SHEET, count: 4, words: 'S' },
    ]));

  it.each(['hidden', 'veryHidden'] as const)('a sheet that is %s', state => {
    const book = String(madeParts({})[BOOK]).replace('r:id="r1"', `r:id="r1" state="${state}"`);
    expect(told({ more: { [BOOK]: book } })).toEqual([
      { kind: state === 'hidden' ? 'hidden sheet' : 'very hidden sheet', part: SHEET, count: 1, words: 'S' },
    ]);
    expect(readPackage(made({ more: { [BOOK]: book } })).sheets[0]?.state).toBe(state);
  });

  const MS = 'http://schemas.microsoft.com/office';
  it('what the workbook and the package lead to: paths, links, connections, caches, macros, custom parts, panes, people', () => {
    const { bookLinks, startLinks, more } = {
      bookLinks: [
        ['e', 'externalLink', 'externalLinks/externalLink1.xml'],
        ['c', 'connections', 'connections.xml'],
        ['p', 'pivotCacheDefinition', 'pivotCache/pivotCacheDefinition1.xml'],
        ['v', `${MS}/2006/relationships/vbaProject`, 'vbaProject.bin'],
        ['x', 'customXml', '../customXml/item1.xml'],
        ['u', `${MS}/2017/10/relationships/person`, 'persons/person.xml'],
        ['z', 'somethingNew', 'new.bin'],
      ] as const,
      startLinks: [
        ['t', `${MS}/2011/relationships/webextensiontaskpanes`, 'xl/webextensions/taskpanes.xml'],
        ['k', 'metadata/core-properties', 'docProps/core.xml'],
      ] as const,
      more: {
        'xl/externalLinks/externalLink1.xml': `<externalLink xmlns="${MAIN}"/>`,
        'xl/externalLinks/_rels/externalLink1.xml.rels': links(['r', 'externalLinkPath', '!file:///C:/prices.xlsx']),
        'xl/connections.xml': `<connections xmlns="${MAIN}"><connection id="1"/><connection id="2"/></connections>`,
        'xl/pivotCache/pivotCacheDefinition1.xml': `<pivotCacheDefinition xmlns="${MAIN}" recordCount="12"/>`,
        'xl/vbaProject.bin': new Uint8Array([1]),
        'customXml/item1.xml': '<a/>',
        'xl/persons/person.xml':
          '<personList xmlns="urn:x"><person displayName="A"/><person displayName="B"/><person displayName="C"/></personList>',
        'xl/new.bin': new Uint8Array([2]),
        'xl/webextensions/taskpanes.xml': '<taskpanes xmlns="urn:x"><taskpane dockstate="right"/></taskpanes>',
        'docProps/core.xml':
          '<cp:coreProperties xmlns:cp="urn:c" xmlns:dc="urn:d"><dc:creator>A</dc:creator><cp:lastModifiedBy>B</cp:lastModifiedBy><dc:title>t</dc:title></cp:coreProperties>',
      },
    };
    const book =
      '<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice Requires="x15"><x15ac:absPath xmlns:x15ac="urn:x15ac" url="C:\\Users\\a\\"/></mc:Choice></mc:AlternateContent>';
    expect(told({ bookLinks, startLinks, more, book }).map(({ kind, count, words }) => [kind, count, words])).toEqual([
      ['path', 1, 'C:\\Users\\a\\'],
      ['external link', 1, 'file:///C:/prices.xlsx'],
      ['connections', 2, undefined],
      ['pivot cache', 12, undefined],
      ['macros', 1, undefined],
      ['custom XML', 1, undefined],
      ['persons', 3, undefined],
      ['other part', 1, 'somethingNew'],
      ['task pane', 1, undefined],
      ['properties', 2, undefined],
    ]);
  });

  it('an address outside that no one sees', () =>
    expect(
      told({
        more: {
          'xl/worksheets/_rels/sheet1.xml.rels': links(
            ['o', 'oleObject', '!https://example.org/a.bin'],
            ['h', `${OFFICE}/hyperlink`, '!https://example.org/'],
          ),
        },
      }),
    ).toEqual([{ kind: 'external link', part: SHEET, count: 1, words: 'https://example.org/a.bin' }]));
});
