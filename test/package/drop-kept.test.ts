// What a workbook carries stays, with a reason, where something else would break without it.
import { describe, expect, it } from 'vitest';
import type { CarriedKind } from '../../src/package/carried';
import { edited } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { CARRYING, WORDS } from './carrying';
import { but, less, SHEETS, sound } from './dropping';
import { BOOK, BOOK_LINKS, type MadeParts, SHEET, textOf, zipped } from './made';
import { standsIn } from './sound';

const file = zipped(CARRYING);
const rule = (formula: string): [string, string] => ['<formula>A1&gt;2</formula>', `<formula>${formula}</formula>`];
const cell = (formula: string): [string, string] => ['<f>A1*Factor</f>', `<f>${formula}</f>`];

describe('stays with a reason', () => {
  it.each<[CarriedKind, RegExp]>([
    ['hidden sheet', /macros that stay may read it/],
    ['comments', /threaded comments of the sheet need them/],
    ['persons', /threaded comments that stay name them/],
    ['connections', /queries that stay use them/],
    ['data model', /connections that stay belong to it/],
  ])('%s alone', async (kind, why) => {
    const copy = less([kind]);
    expect(copy.kept.map(({ why: words }) => words).join()).toMatch(why);
    await sound(file, copy);
    if (kind !== 'comments') expect(copy.bytes).toEqual(edited(readPackage(file), { cells: new Map() }).bytes);
  });

  it('hidden rows and columns are only listed', () => {
    const sheet = String(CARRYING[SHEET]).replace('<row r="4">', '<row r="4" hidden="1">');
    expect(less(['hidden rows'], { ...CARRYING, [SHEET]: sheet }).kept).toMatchObject([
      { carried: { kind: 'hidden rows' }, why: /only listed/ },
    ]);
  });
});

describe('a hidden sheet stays as it was when something that stays refers to it', () => {
  const SOURCE: [string, string] = ['sheet="S"', 'sheet="Prices"'];
  const chart = '<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:f>Prices!$A$1</c:f></c:chartSpace>';
  it.each<[string, MadeParts, RegExp]>([
    ['a cell', but(SHEET, cell('1+Prices!A1')), /^S!C1 refers/],
    ['another way to write it', but(SHEET, cell("SUM('prices'!A:A)")), /^S!C1 refers/],
    ['a table of it', but(SHEET, cell('SUM(Costs[in both])')), /^S!C1 refers/],
    ['a name for its cells', but(SHEET, cell(`A1*${WORDS['hidden sheet']}`)), /^S!C1 refers/],
    ['sheets from one to another', { ...but(SHEET, cell('SUM(Prices:S!A1)')) }, /^S!C1 refers/],
    ['a text that may name it', but(SHEET, cell('INDIRECT(A3)')), /^S!C1 refers/],
    ['a count of sheets', but(SHEET, cell('_xlfn.SHEETS()')), /^S!C1 refers/],
    ['a condition', but(SHEET, rule('A1&gt;Prices!A1')), /^condition A1 on S refers/],
    ['a source of a pivot table', but('xl/pivotCache/pivotCacheDefinition1.xml', SOURCE), /^pivot .* refers/],
    ['a chart', { ...CARRYING, 'xl/drawings/_rels/drawing1.xml.rels': '', 'xl/charts/chart1.xml': chart }, /^chart .* refers/],
    ['a shape', but('xl/drawings/drawing1.xml', ['textlink=""', 'textlink="Prices!$A$1"']), /refers/],
    ['a link', but(SHEET, ['<pageMargins', '<hyperlinks><hyperlink ref="A3" location="Prices!A1"/></hyperlinks><pageMargins']), /refers/],
    ['a control', but('xl/ctrlProps/ctrlProp1.xml', ['lockText="1"', 'lockText="1" fmlaLink="Prices!$A$1"']), /refers/],
  ])('%s', async (name, parts, why) => {
    const links = but('xl/tables/_rels/table1.xml.rels')['xl/tables/_rels/table1.xml.rels'];
    const whole =
      name === 'a chart'
        ? {
            ...parts,
            'xl/drawings/_rels/drawing1.xml.rels': String(links)
              .replace('queryTable"', 'chart"')
              .replace('../queryTables/queryTable1.xml', '../charts/chart1.xml'),
          }
        : parts;
    const copy = less(SHEETS, whole);
    const prices = copy.kept.find(({ carried }) => carried.words === 'Prices');
    expect(prices?.why).toMatch(why);
    expect(textOf(copy.bytes, BOOK)).toContain('<sheet name="Prices" sheetId="4" state="hidden" r:id="r2"/>');
    expect(standsIn(copy.bytes, WORDS['hidden sheet']).length).toBeGreaterThan(2);
    await sound(zipped(whole), copy);
  });

  it.each<[string, MadeParts]>([
    ['a text', but(SHEET, cell('"Prices!A1"&amp;A1'))],
    ['another workbook', but(SHEET, cell("[1]Prices!A1+'[1]Prices'!A1"))],
    ['a name like it', but(SHEET, cell('MyPrices!A1+Prices_2'))],
    [
      'a name that nothing uses',
      but(BOOK, ['<definedName name="Factor">', '<definedName name="unused">Prices!$B$1</definedName><definedName name="Factor">']),
    ],
  ])('and not for %s', async (_, parts) => {
    const copy = less(SHEETS, parts);
    expect(copy.kept).toEqual([]);
    expect(standsIn(copy.bytes, 'SECRETPRICE')).toEqual([]);
    expect(textOf(copy.bytes, BOOK)).not.toContain('unused');
    await sound(zipped(parts), copy);
  });

  it('a formula that changes keeps nothing any more', () => {
    const from = readPackage(zipped(but(SHEET, cell('1+Prices!A1'))));
    const cells = new Map([['S', new Map([['C1', { value: 4, formula: 'none' } as const]])]]);
    expect(edited(from, { cells, drop: from.carries.filter(({ kind }) => SHEETS.includes(kind)) }).kept).toEqual([]);
  });
});

describe('other things that stay for others', () => {
  const SLICER =
    '<slicerCacheDefinition xmlns="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" name="Slicer_hole" sourceName="hole"><pivotTables><pivotTable tabId="7" name="PivotTable1"/></pivotTables></slicerCacheDefinition>';
  const withSlicer: MadeParts = {
    ...but(BOOK_LINKS, [
      '</Relationships>',
      '<Relationship Id="sl" Type="http://schemas.microsoft.com/office/2007/relationships/slicerCache" Target="slicerCaches/slicerCache1.xml"/></Relationships>',
    ]),
    'xl/slicerCaches/slicerCache1.xml': SLICER,
  };
  const second: MadeParts = {
    ...but(BOOK, ['</externalReferences>', '<externalReference r:id="re2"/></externalReferences>']),
    [BOOK_LINKS]: String(CARRYING[BOOK_LINKS]).replace(
      '</Relationships>',
      '<Relationship Id="re2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink" Target="externalLinks/externalLink2.xml"/></Relationships>',
    ),
    'xl/externalLinks/externalLink2.xml': String(CARRYING['xl/externalLinks/externalLink1.xml']),
    'xl/externalLinks/_rels/externalLink2.xml.rels': String(CARRYING['xl/externalLinks/_rels/externalLink1.xml.rels']),
  };
  const in2 = (formula: string): MadeParts => ({ ...second, [SHEET]: String(CARRYING[SHEET]).replace('A1*Factor', formula) });
  it.each<[string, CarriedKind, MadeParts, RegExp]>([
    ['records of a slicer', 'pivot cache', withSlicer, /slicers choose/],
    ['records that a cell reads', 'pivot cache', but(SHEET, cell('GETPIVOTDATA("hole",E1)')), /^S!C1 reads/],
    ['a workbook that a cell reads', 'external link', but(SHEET, cell("'[1]My prices'!A1")), /^S!C1 reads it/],
    ['a workbook before another that a cell reads', 'external link', in2('[2]P!A1'), /^S!C1 reads/],
    ['a connection of cubes', 'connections', but(SHEET, cell('CUBEVALUE("C","m")')), /queries|S!C1/],
  ])('%s', async (_, kind, parts, why) => {
    const copy = less([kind], parts);
    expect(copy.kept[0]?.why).toMatch(why);
    await sound(zipped(parts), copy);
  });

  it('of two workbooks the second goes when only the first one is read', async () => {
    const copy = less(['external link'], in2('[1]P!A1'));
    expect(copy.kept.map(({ carried }) => carried.part)).toEqual(['xl/externalLinks/externalLink1.xml']);
    expect(copy.gone).toContain('xl/externalLinks/externalLink2.xml');
    await sound(zipped(in2('[1]P!A1')), copy);
  });
});
