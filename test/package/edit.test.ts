// A copy is an edit of the package: what is not named in it keeps its bytes, and what is named becomes what was asked for.
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { CellChange } from '../../src/package/cell-splices';
import { edited } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { sheetSplices } from '../../src/package/sheet-splices';
import { spliced, undoing } from '../../src/package/xml';
import { SEED } from '../kit/seed';
import { CONTENT_TYPES, FOREIGN, FOREIGN_NAMES } from './foreign';
import { BOOK, BOOK_LINKS, made, MAIN, rawEntries, SHEET, textOf } from './made';

const changes = (...all: readonly (readonly [string, CellChange])[]): ReadonlyMap<string, CellChange> => new Map(all);
const onS = (...all: readonly (readonly [string, CellChange])[]) => ({ cells: new Map([['S', changes(...all)]]) });
const value = (of: CellChange['value']): CellChange => ({ value: of, formula: 'none' });
const formula = (text: string, of: CellChange['value'], keepsArea?: true): CellChange => ({
  value: of,
  formula: { text, ...(keepsArea && { keepsArea }) },
});

/** Looks of cells are tried in marks.test.ts. */
const unmarked = (base: number): number => base;

const files = new Map<string, Uint8Array>();
beforeAll(async () => {
  for (const name of FOREIGN_NAMES) files.set(name, (await FOREIGN[name]?.()) ?? new Uint8Array());
});
const file = (name: string): Uint8Array => files.get(name) ?? new Uint8Array();

describe('of foreign workbooks', () => {
  it('there are as many as there were thought of', () => expect(FOREIGN_NAMES.length).toBeGreaterThanOrEqual(16));

  it.each(FOREIGN_NAMES)('%s: without a change every part has its bytes, its checksum and its place, the workbook part too', name => {
    const { bytes, touched, gone } = edited(readPackage(file(name)), { cells: new Map() });
    expect([...rawEntries(bytes).values()]).toEqual([...rawEntries(file(name)).values()]);
    expect([touched, gone]).toEqual([[], []]);
  });

  it.each(FOREIGN_NAMES)('%s: with one number changed, only that number and what asks for a new calculation differ', name => {
    const before = rawEntries(file(name));
    const { bytes, touched, gone } = edited(readPackage(file(name)), onS(['A1', value(5)]));
    const after = rawEntries(bytes);
    const book = textOf(file(name), BOOK);
    const asksAlready = book.includes('fullCalcOnLoad="1"');
    const chained = before.has('xl/calcChain.xml');
    expect([...touched].sort()).toEqual([SHEET, ...(asksAlready ? [] : [BOOK]), ...(chained ? [CONTENT_TYPES, BOOK_LINKS] : [])].sort());
    expect(gone).toEqual(chained ? ['xl/calcChain.xml'] : []);
    expect([...after.keys()]).toEqual([...before.keys()].filter(part => !gone.includes(part)));
    for (const [part, entry] of after) if (!touched.includes(part)) expect(entry, part).toEqual(before.get(part));
    const big = name === 'UTF-16, the large end first';
    const sheet = (zip: Uint8Array): string => (big ? textOf(zip, SHEET).replaceAll('\0', '') : textOf(zip, SHEET));
    expect(sheet(file(name))).toMatch(/<(x:)?v>2<\/(x:)?v>/);
    expect(sheet(bytes)).toBe(sheet(file(name)).replace(/>2<\/(x:)?v>/, '>5</$1v>'.replace('$1', name === 'another prefix' ? 'x:' : '')));
    const bare = (text: string): string => text.replace(/ fullCalcOnLoad="1"/, '').replace(/<(x:)?calcPr\/>/, '');
    expect(asksAlready ? textOf(bytes, BOOK) : bare(textOf(bytes, BOOK))).toBe(book);
    expect(textOf(bytes, BOOK)).toMatch(/<(x:)?calcPr [^>]*fullCalcOnLoad="1"/);
    for (const part of touched) expect(textOf(bytes, part)).not.toContain('calcChain');
  });

  it('the copy of a copy is the copy', () => {
    const copy = edited(readPackage(file('an order of calculation')), onS(['A1', value(5)])).bytes;
    expect(edited(readPackage(copy), onS(['A1', value(5)])).bytes).toEqual(copy);
  });
});

describe('the workbook asks for a new calculation in the place that the format has for it', () => {
  it.each([
    ['<calcPr calcMode="manual" calcId="1"/>', '<calcPr calcMode="manual" calcId="1" fullCalcOnLoad="1"/>'],
    ["<calcPr fullCalcOnLoad='0'></calcPr>", '<calcPr fullCalcOnLoad="1"></calcPr>'],
    [
      '<definedNames><definedName name="a">1</definedName></definedNames><pivotCaches/>',
      '<definedNames><definedName name="a">1</definedName></definedNames><calcPr fullCalcOnLoad="1"/><pivotCaches/>',
    ],
    ['<externalReferences/><oleSize ref="A1"/>', '<externalReferences/><calcPr fullCalcOnLoad="1"/><oleSize ref="A1"/>'],
  ])('%s', (book, becomes) => {
    const rows = '<row r="1"><c r="A1"><v>2</v></c></row>';
    expect(textOf(edited(readPackage(made({ rows, book })), onS(['A1', value(1)])).bytes, BOOK)).toContain(
      `</sheets>${becomes}</workbook>`,
    );
  });
});

/** The rows of a sheet after changes. */
const rowsAfter = (rows: string, ...all: readonly (readonly [string, CellChange])[]): string => {
  const text = textOf(edited(readPackage(made({ rows })), onS(...all)).bytes, SHEET);
  return /<sheetData>(.*)<\/sheetData>|<sheetData\/>/s.exec(text)?.[1] ?? '';
};

describe('a cell', () => {
  it.each<[string, string, string, CellChange, string]>([
    ['a number', '<c r="A1" s="3"><v>2</v></c>', 'A1', value(1e-7), '<c r="A1" s="3"><v>1e-7</v></c>'],
    ['a text becomes a number', '<c t="str" r="A1"><v>0</v></c>', 'A1', value(4.5), '<c r="A1"><v>4.5</v></c>'],
    ['a text', '<c r="A1"/>', 'A1', value(' a<b '), '<c r="A1" t="inlineStr"><is><t xml:space="preserve"> a&lt;b </t></is></c>'],
    [
      'a text that looks like a code',
      '<c r="A1"/>',
      'A1',
      value('_x0041_\u0001'),
      '<c r="A1" t="inlineStr"><is><t>_x005F_x0041__x0001_</t></is></c>',
    ],
    ['yes', '<c r="A1"><f>TRUE</f></c>', 'A1', { value: true, formula: 'kept' }, '<c r="A1" t="b"><f>TRUE</f><v>1</v></c>'],
    [
      'an error',
      '<c r="A1"><f ca="1">B1</f><v>2</v></c>',
      'A1',
      { value: { error: '#N/A' }, formula: 'kept' },
      '<c r="A1" t="e"><f ca="1">B1</f><v>#N/A</v></c>',
    ],
    ['nothing', '<c r="A1" s="2"><f>B1</f><v>2</v></c>', 'A1', value(undefined), '<c r="A1" s="2"></c>'],
    ['a formula', '<c r="A1"><v>2</v></c>', 'A1', formula('B1&"<"', 'x<'), '<c r="A1" t="str"><f>B1&amp;"&lt;"</f><v>x&lt;</v></c>'],
    [
      'a formula for a text in the cell',
      '<c r="A1" t="inlineStr"><is><t>x</t></is><extLst/></c>',
      'A1',
      formula('1', 1),
      '<c r="A1"><f>1</f><v>1</v><extLst/></c>',
    ],
    [
      'a formula without its area',
      '<c r="A1" cm="1" vm="2"><f t="array" ref="A1:B1">X()</f><v>1</v></c>',
      'A1',
      formula('Y', 2),
      '<c r="A1"><f>Y</f><v>2</v></c>',
    ],
    [
      'a formula in its area',
      '<c r="A1" cm="1" vm="2"><f t="array" ref="A1:B1">X()</f><v>1</v></c>',
      'A1',
      formula('Y', 2, true),
      '<c r="A1" cm="1"><f t="array" ref="A1:B1">Y</f><v>2</v></c>',
    ],
    ['a cell before another', '<c r="B1"><v>2</v></c>', 'A1', value(1), '<c r="A1"><v>1</v></c><c r="B1"><v>2</v></c>'],
    ['a cell after the last', '<c r="A1"><v>2</v></c>', 'AA1', formula('A1', 2), '<c r="A1"><v>2</v></c><c r="AA1"><f>A1</f><v>2</v></c>'],
    ['a cell in a row without any', '', 'C1', value(1), '<c r="C1"><v>1</v></c>'],
  ])('%s', (_, cell, at, change, becomes) =>
    expect(rowsAfter(`<row r="1">${cell}</row>`, [at, change])).toBe(`<row r="1">${becomes}</row>`),
  );

  it('and rows that the sheet has not had, in their order', () => {
    const row = '<row r="3" spans="1:1"/>';
    expect(rowsAfter(row, ['B9', value(9)], ['A2', value(2)], ['C3', value(3)], ['A3', value(1)])).toBe(
      '<row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>1</v></c><c r="C3"><v>3</v></c></row><row r="9"><c r="B9"><v>9</v></c></row>',
    );
    expect(rowsAfter('', ['B2', value(2)])).toBe('<row r="2"><c r="B2"><v>2</v></c></row>');
  });

  it('has the format of its row or column, and the sheet says how far it reaches', () => {
    const bytes = made({
      beforeData: '<dimension ref="A1"/><cols><col min="2" max="4" style="5"/></cols>',
      rows: '<row r="1"><c r="A1"><v>1</v></c></row><row r="2" s="7" customFormat="1"/>',
    });
    const text = textOf(edited(readPackage(bytes), onS(['C1', value(1)], ['C2', value(2)], ['F1', value(3)])).bytes, SHEET);
    expect(text).toContain('<dimension ref="A1:F2"/>');
    expect(text).toContain('<c r="C1" s="5"><v>1</v></c><c r="F1"><v>3</v></c></row><row r="2" s="7" customFormat="1"><c r="C2" s="7">');
  });
});

describe('a formula that cells share', () => {
  const rows =
    '<row r="1"><c r="A1"><f t="shared" ref="A1:A3" si="0">B1*$C$1</f></c></row><row r="2"><c r="A2"><f t="shared" si="0"/><v>2</v></c></row><row r="3"><c r="A3"><f t="shared" si="0"/></c></row>';
  it('is given to the others when the first one changes', () =>
    expect(rowsAfter(rows, ['A1', value(1)], ['A3', formula('7', 7)])).toBe(
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="2"><c r="A2"><f>B2*$C$1</f><v>2</v></c></row><row r="3"><c r="A3"><f>7</f><v>7</v></c></row>',
    ));
  it('stays when another one changes', () =>
    expect(rowsAfter(rows, ['A2', value(1)])).toBe(rows.replace('<f t="shared" si="0"/><v>2</v>', '<v>1</v>')));
  it('keeps its number for the next ones that have it', () => {
    const again = `${rows}<row r="4"><c r="A4"><f t="shared" ref="A4:A5" si="0">D4</f></c></row><row r="5"><c r="A5"><f t="shared" si="0"/></c></row>`;
    expect(rowsAfter(again, ['A1', value(1)])).toContain('<c r="A5"><f t="shared" si="0"/></c>');
  });
});

describe('what no file can hold is refused before anything is written', () => {
  const spill = '<row r="1"><c r="A1"><f t="array" ref="A1:B2">X()</f></c><c r="B1"><v>1</v></c></row>';
  it.each<[string, string, CellChange, RegExp]>([
    ['a formula of 8,192 characters', 'A1', formula(`1${'+1'.repeat(4096)}`, 1), /8194 characters; a cell holds 8192/],
    ['a text of 32,768', 'A1', value('x'.repeat(32_768)), /holds 32767/],
    ['a number that is none', 'A1', value(Infinity), /not a number/],
    ['a formula with a control character', 'A1', formula('"\u0000"', 1), /no file can hold/],
    ['a formula among cells that another one fills', 'B2', formula('1', 1), /a formula elsewhere fills this cell/],
    ['a formula to keep where there is none', 'B1', { value: 1, formula: 'kept' }, /no formula to keep/],
    ['no cell', 'A0', value(1), /is no cell/],
  ])('%s', (_, at, change, words) => expect(() => rowsAfter(spill, [at, change])).toThrow(words));
  it('a value among them is written', () => expect(rowsAfter(spill, ['B1', value(3)])).toContain('<c r="B1"><v>3</v></c>'));
  it('a sheet that is not there', () =>
    expect(() => edited(readPackage(made()), { cells: new Map([['T', changes()]]) })).toThrow(/no sheet "T"/));
});

describe('of any sheet', () => {
  const COLUMNS = ['A', 'B', 'C', 'D', 'Z', 'AA'];
  const content = fc.constantFrom(
    '<v>1.50</v>',
    ' <v>2</v>\n',
    '<f>1+1</f><v>2</v>',
    '<f><![CDATA[1<2]]></f>',
    '<!-- x --><v>3</v><extLst><ext uri="{1}"><a/></ext></extLst>',
    '',
  );
  const stored = fc.record({
    at: fc.constantFrom(...COLUMNS),
    content,
    style: fc.constantFrom('', ' s="1"', "  s='2' "),
    closed: fc.boolean(),
  });
  const rowsOf = fc.uniqueArray(
    fc.record({ row: fc.integer({ min: 1, max: 9 }), cells: fc.uniqueArray(stored, { selector: ({ at }) => at }) }),
    { selector: ({ row }) => row },
  );
  const change: fc.Arbitrary<CellChange> = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }).map(n => value(n === 0 ? 0 : n)),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 12 }).map(value),
    fc.boolean().map(value),
    fc.constantFrom('A1*2', '"a" & B2', ' SUM(A1:A9)').map(text => formula(text, 'shown')),
  );
  const asked = fc.dictionary(
    fc.tuple(fc.constantFrom(...COLUMNS), fc.integer({ min: 1, max: 10 })).map(([c, r]) => `${c}${r}`),
    change,
    { noNullPrototype: true },
  );

  it('undoing the splices gives its text; the cells are those of before but for what was asked', () => {
    let [compared, changed] = [0, 0];
    fc.assert(
      fc.property(rowsOf, asked, (rows, all) => {
        const sheetRows = [...rows]
          .sort((a, b) => a.row - b.row)
          .map(({ row, cells }) => {
            const inOrder = [...cells].sort((a, b) => COLUMNS.indexOf(a.at) - COLUMNS.indexOf(b.at));
            return `<row r="${row}">${inOrder.map(c => (c.closed ? `<c r="${c.at}${row}"${c.style}/>` : `<c r="${c.at}${row}"${c.style}>${c.content}</c>`)).join('')}</row>`;
          });
        const source = `<worksheet xmlns="${MAIN}"><sheetData>${sheetRows.join('\r\n')}</sheetData></worksheet>`;
        const splices = sheetSplices(source, SHEET, new Map(Object.entries(all)), unmarked);
        const next = spliced(source, splices);
        expect(spliced(next, undoing(source, splices))).toBe(source);
        const cellsOf = (text: string) =>
          new Map(readPackage(made({ more: { [SHEET]: text } })).sheets[0]?.cells.map(cell => [cell.at, cell]));
        const [before, after] = [cellsOf(source), cellsOf(next)];
        for (const [at, { value: shown, formula: behind }] of Object.entries(all)) {
          const text = typeof behind === 'object' ? behind.text : undefined;
          expect(after.get(at)?.value, at).toEqual(shown);
          expect(after.get(at)?.formula?.text, at).toBe(text);
          changed++;
        }
        for (const at of new Set([...before.keys(), ...after.keys()]))
          if (!(at in all)) {
            expect(after.get(at), at).toEqual(before.get(at));
            compared++;
          }
        expect(sheetSplices(next, SHEET, new Map(Object.entries(all)), unmarked)).toEqual([]);
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(1_000);
    expect(changed).toBeGreaterThan(500);
  });
});
