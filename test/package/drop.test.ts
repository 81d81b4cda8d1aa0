// What a workbook carries goes on request with everything that only it leads to, and nothing else changes; or it stays with a reason.
import { readXlsx } from 'hucre/xlsx';
import { describe, expect, it } from 'vitest';
import type { CarriedKind } from '../../src/package/carried';
import { edited, type EditedPackage } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { CARRYING, WORDS } from './carrying';
import { BOOK, BOOK_LINKS, CONTENT_TYPES, rawEntries, SHEET, textOf, zipped, type MadeParts } from './made';
import { seen, standsIn } from './sound';

const less = (kinds: readonly CarriedKind[], parts: MadeParts = CARRYING): EditedPackage => {
  const from = readPackage(zipped(parts));
  return edited(from, { cells: new Map(), drop: from.carries.filter(({ kind }) => kinds.includes(kind)) });
};
const file = zipped(CARRYING);
const KINDS = Object.keys(WORDS) as (keyof typeof WORDS)[];

/** Sound after as before, and what is not named as changed has its bytes. */
async function sound(before: Uint8Array, { bytes, touched, gone }: EditedPackage): Promise<void> {
  const [was, is] = [seen(before), seen(bytes)];
  expect(was.faults).toEqual([]);
  expect(is.faults).toEqual([]);
  expect(is.looked).toBeGreaterThan(10);
  expect([...is.reached].filter(part => !was.reached.has(part))).toEqual([]);
  for (const part of is.parts) if (was.reached.has(part)) expect(is.reached.has(part), `${part} is led to`).toBe(true);
  expect([...was.parts].filter(part => !is.parts.has(part)).sort()).toEqual([...gone].sort());
  const [raw, after] = [rawEntries(before), rawEntries(bytes)];
  for (const [part, entry] of after) if (!touched.includes(part)) expect(entry, part).toEqual(raw.get(part));
  readPackage(bytes);
  expect((await readXlsx(bytes)).sheets.length).toBeGreaterThan(0);
}

it('the workbook carries every kind, and its words stand in it', () => {
  const { carries } = readPackage(file);
  expect(new Set(carries.map(({ kind }) => kind))).toEqual(new Set(KINDS));
  expect(KINDS).toHaveLength(23);
  for (const kind of KINDS) expect(standsIn(file, WORDS[kind]).length, kind).toBeGreaterThan(0);
  expect(seen(file).faults).toEqual([]);
  expect(seen(file).looked).toBeGreaterThan(90);
});

/** Kinds that go together, each alone where nothing else is said. */
const TOGETHER: readonly (readonly [CarriedKind, ...CarriedKind[]])[] = [
  ['hidden sheet', 'very hidden sheet', 'macros'],
  ['very hidden sheet', 'hidden sheet', 'macros'],
  ['comments', 'threaded comments'],
  ['threaded comments'],
  ['persons', 'threaded comments'],
  ['path'],
  ['external link'],
  ['connections', 'query', 'data model'],
  ['query'],
  ['pivot cache'],
  ['data model', 'connections', 'query'],
  ['macros'],
  ['controls'],
  ['embedded file'],
  ['custom XML'],
  ['properties'],
  ['custom properties'],
  ['labels'],
  ['preview picture'],
  ['task pane'],
  ['printer settings'],
  ['changes'],
  ['other part'],
];

describe('goes', () => {
  it('in every kind', () => expect(new Set(TOGETHER.map(([kind]) => kind))).toEqual(new Set(KINDS)));

  it.each(TOGETHER.map(kinds => [kinds.join(', '), kinds] as const))('%s: all of it, and nothing is broken', async (_, kinds) => {
    const copy = less(kinds);
    expect(copy.kept).toEqual([]);
    for (const kind of kinds) expect(copy.dropped.map(({ kind: gone }) => gone)).toContain(kind);
    for (const kind of kinds) expect(standsIn(copy.bytes, WORDS[kind as keyof typeof WORDS]), kind).toEqual([]);
    await sound(file, copy);
    const left = readPackage(copy.bytes).carries.map(({ kind }) => kind);
    for (const kind of kinds) expect(left).not.toContain(kind);
    // what was not to go is there
    for (const kind of KINDS) if (!copy.dropped.some(({ kind: gone }) => gone === kind)) expect(left, kind).toContain(kind);
  });

  it('all of it together, and the sheets show what they showed', async () => {
    const copy = less(KINDS);
    expect(copy.kept).toEqual([]);
    await sound(file, copy);
    for (const kind of KINDS) expect(standsIn(copy.bytes, WORDS[kind]), kind).toEqual([]);
    expect(standsIn(copy.bytes, 'SECRET')).toEqual([]);
    const after = readPackage(copy.bytes);
    expect(after.carries).toEqual([]);
    expect(after.sheets.map(({ name }) => name)).toEqual(['S']);
    expect(after.sheets[0]?.cells).toEqual(readPackage(file).sheets.find(({ name }) => name === 'S')?.cells);
    expect([...seen(copy.bytes).parts].sort()).toEqual(
      [
        CONTENT_TYPES,
        '_rels/.rels',
        BOOK,
        BOOK_LINKS,
        SHEET,
        'xl/worksheets/_rels/sheet1.xml.rels',
        'xl/sharedStrings.xml',
        'xl/styles.xml',
        'xl/drawings/drawing1.xml',
        'xl/tables/table1.xml',
        'xl/tables/_rels/table1.xml.rels',
        'docProps/core.xml',
        'docProps/app.xml',
      ].sort(),
    );
    expect(copy.ending).toBe('.xlsx');
  });
});

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

/** A change of one part's text. */
const but = (part: string, ...changes: readonly (readonly [string, string])[]): MadeParts => ({
  ...CARRYING,
  [part]: changes.reduce((text, [from, to]) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  }, String(CARRYING[part])),
});
const SHEETS: readonly CarriedKind[] = ['hidden sheet', 'very hidden sheet', 'macros'];
const rule = (formula: string): [string, string] => ['<formula>A1&gt;2</formula>', `<formula>${formula}</formula>`];
const cell = (formula: string): [string, string] => ['<f>A1*Factor</f>', `<f>${formula}</f>`];

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

describe('the workbook without hidden sheets', () => {
  const book = textOf(less(SHEETS).bytes, BOOK);
  it('counts the others anew, opens on the same one, and keeps its own names', () => {
    expect(book).toContain('<workbookView activeTab="0" firstSheet="0"/>');
    expect(book).toContain('<sheets><sheet name="S" sheetId="7" r:id="r1"/></sheets>');
    expect(book).toContain(
      '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">S!$A$1:$C$4</definedName><definedName name="Factor">2</definedName></definedNames>',
    );
    expect(book).toContain('fullCalcOnLoad="1"');
  });
  it('keeps the texts that others show, each at its number', () =>
    expect(textOf(less(SHEETS).bytes, 'xl/sharedStrings.xml')).toContain(
      '<si><t>only here</t></si><si><t>in both</t></si><si><t/></si></sst>',
    ));
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

describe('macros', () => {
  it('the copy is a workbook without, and says what it has to be called', () => {
    expect(less(['macros']).ending).toBe('.xlsx');
    expect(textOf(less(['macros']).bytes, CONTENT_TYPES)).toContain(
      'PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"',
    );
    expect(less(['path']).ending).toBe('.xlsm');
  });
  it('nothing starts one', () => {
    const { bytes } = less(['macros']);
    expect(textOf(bytes, 'xl/drawings/drawing1.xml')).not.toContain('Start');
    expect(textOf(bytes, 'xl/drawings/vmlDrawing1.vml')).not.toContain('FmlaMacro');
    expect(textOf(bytes, SHEET)).toContain('<controlPr/>');
    expect(textOf(bytes, 'xl/ctrlProps/ctrlProp1.xml')).not.toContain('fmlaMacro');
  });
});

it('threads go with the notes that stand for them, other notes stay with their shapes', () => {
  const { bytes } = less(['threaded comments']);
  expect(textOf(bytes, 'xl/comments1.xml')).toContain(
    `<commentList><comment ref="A1" authorId="0"><text><t>${WORDS.comments}</t></text></comment></commentList>`,
  );
  const shapes = textOf(bytes, 'xl/drawings/vmlDrawing1.vml');
  expect([...shapes.matchAll(/_x0000_s(\d+)"/g)].map(([, id]) => id)).toEqual(['1025', '1027', '1028']);
});
