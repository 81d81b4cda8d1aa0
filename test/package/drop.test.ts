// What a workbook carries goes on request with everything that only it leads to, and nothing else changes.
import { describe, expect, it } from 'vitest';
import type { CarriedKind } from '../../src/package/carried';
import { edited } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { CARRYING, WORDS } from './carrying';
import { less, SHEETS, sound } from './dropping';
import { FOREIGN, FOREIGN_NAMES } from './foreign';
import { BOOK, BOOK_LINKS, CONTENT_TYPES, SHEET, textOf, zipped } from './made';
import { seen, standsIn } from './sound';

const file = zipped(CARRYING);
const KINDS = Object.keys(WORDS) as (keyof typeof WORDS)[];

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

describe('of the sheet goes only what belongs to it', () => {
  const before = textOf(file, SHEET);
  const piece = (from: string, to: string): string => before.slice(before.indexOf(from), before.indexOf(to) + to.length);
  it.each<[CarriedKind, string]>([
    ['printer settings', ' r:id="rp"'],
    ['custom properties', piece('<customProperties>', '</customProperties>')],
    [
      'embedded file',
      piece(
        '<mc:AlternateContent><mc:Choice xmlns:x14',
        '</mc:Fallback></mc:AlternateContent></oleObjects></mc:Choice></mc:AlternateContent>',
      ),
    ],
    ['controls', before.slice(before.lastIndexOf('<mc:AlternateContent><mc:Choice xmlns:x14'), before.indexOf('<tableParts'))],
    ['pivot cache', ' pivot="1"'],
    ['path', ''],
  ])('%s', (kind, gone) => {
    expect(gone === '' ? [] : before.split(gone)).toHaveLength(gone === '' ? 0 : 2);
    expect(textOf(less([kind]).bytes, SHEET)).toBe(before.replace(gone, ''));
  });
});

describe('of foreign workbooks', () => {
  let gone = 0;
  it.each(FOREIGN_NAMES)('%s: all that it carries goes, its cells stay', async name => {
    const foreign = (await FOREIGN[name]?.()) ?? new Uint8Array();
    const from = readPackage(foreign);
    const copy = edited(from, { cells: new Map(), drop: from.carries });
    expect(copy.kept).toEqual([]);
    gone += copy.dropped.length;
    if (!/UTF-16/.test(name)) await sound(foreign, copy, 5); // one sheet has five
    expect(readPackage(copy.bytes)).toMatchObject({ carries: [], sheets: from.sheets });
  });
  it('some carried something', () => expect(gone).toBeGreaterThanOrEqual(4));
});

it('a part to which nothing leads is told and goes', () => {
  const astray = zipped({ ...CARRYING, 'xl/left.bin': new Uint8Array([7]) });
  const from = readPackage(astray);
  const { gone } = edited(from, { cells: new Map(), drop: from.carries.filter(({ words }) => words === 'nothing leads to it') });
  expect(gone).toEqual(['xl/left.bin']);
});
