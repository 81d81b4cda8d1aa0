// Anybody may have made the file: it is read, or refused in one sentence and soon.
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { edited } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { openZip, packed, unpacked, writeZip } from '../../src/package/zip';
import { UnreadableFile } from '../../src/package/unreadable';
import { SEED } from '../kit/seed';
import { FOREIGN } from './foreign';
import { BOOK, BOOK_LINKS, CONTENT_TYPES, links, made, MAIN, type Making, rawEntries, SHEET } from './made';

const row = (cells: string): Making => ({ rows: `<row r="1">${cells}</row>` });
const sheet = (text: string | Uint8Array): Making => ({ more: { [SHEET]: text } });

/** A field of the directory's entry of a part, and of its own header where that has it, set to another number. */
function patched(file: Uint8Array, part: string, central: number, local: number | undefined, bits: 16 | 32, number: number): Uint8Array {
  const bytes = Buffer.from(file);
  const name = Buffer.from(part);
  for (let at = bytes.indexOf(name); at >= 0; at = bytes.indexOf(name, at + 1)) {
    const isCentral = at >= 46 && bytes.readUInt32LE(at - 46) === 0x02014b50;
    const isLocal = at >= 30 && bytes.readUInt32LE(at - 30) === 0x04034b50;
    const field = isCentral ? at - 46 + central : isLocal && local !== undefined ? at - 30 + local : undefined;
    if (field !== undefined) bytes[bits === 16 ? 'writeUInt16LE' : 'writeUInt32LE'](number, field);
  }
  return new Uint8Array(bytes);
}
const renamed = (file: Uint8Array, from: string, to: string): Uint8Array =>
  new Uint8Array(Buffer.from(Buffer.from(file).toString('latin1').replaceAll(from, to), 'latin1'));
const crcOf = (file: Uint8Array): number => rawEntries(file).get(SHEET)?.crc ?? 0;
const deep = (levels: number): string => `<worksheet xmlns="${MAIN}">${'<a>'.repeat(levels)}${'</a>'.repeat(levels)}</worksheet>`;

const REFUSED: readonly (readonly [string, () => Uint8Array, RegExp])[] = [
  // the container
  ['nothing', () => new Uint8Array(), /not a workbook/],
  ['no zip', () => strToU8('text '.repeat(99)), /not a workbook/],
  ['a zip of something else', () => zipSync({ 'readme.txt': strToU8('hello') }), /not a workbook/],
  ['a password', () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600)]), /password/],
  ['an encrypted part', () => patched(made(), SHEET, 8, 6, 16, 1), /"xl\/worksheets\/sheet1.xml" is encrypted/],
  ['zip64, of a size', () => patched(made(), SHEET, 24, undefined, 32, 0xffff_ffff), /zip64/],
  ['another method of packing', () => patched(made(), SHEET, 10, 8, 16, 14), /method 14/],
  ['a checksum that is another', () => patched(made(), SHEET, 16, 14, 32, crcOf(made()) ^ 1), /checksum/],
  ['a part that is larger than said', () => patched(made(), SHEET, 24, 22, 32, 10), /not the size/],
  ['a part that is smaller than said', () => patched(made(), SHEET, 24, 22, 32, 100_000), /not the size/],
  ['a stored part of another size', () => patched(made({ level: 0 }), SHEET, 24, 22, 32, 10), /not a workbook/],
  ['a part of which the directory says another place', () => patched(made(), SHEET, 42, undefined, 32, 0), /not a workbook/],
  ['a part twice', () => renamed(made({ more: { 'xl/worksheets/sheet2.xml': 'x' } }), 'sheet2.xml', 'sheet1.xml'), /twice/],
  ['a part twice but for capitals', () => made({ more: { 'xl/WORKSHEETS/sheet1.xml': 'x' } }), /twice/],
  ['a part out of place', () => made({ more: { '../x.xml': 'x' } }), /out of place/],
  ['a bomb', () => made({ more: { 'xl/media/a.png': new Uint8Array(30 << 20) } }), /packed more than 200 times/],
  ['2,001 parts', () => made({ more: Object.fromEntries(Array.from({ length: 2001 }, (_, i) => [`x/${i}`, ''])) }), /more than 2000 parts/],
  ['21 MB', () => new Uint8Array(21 << 20), /larger than 20 MB/],
  ['bytes before the first part', () => new Uint8Array([1, ...made()]), /not a workbook/],
  ['bytes after the end', () => new Uint8Array([...made(), 1]), /not a workbook/],
  // the package
  [
    'a signature',
    () =>
      made({
        startLinks: [
          ['s', 'http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin', '_xmlsignatures/origin.sigs'],
        ],
      }),
    /signed/,
  ],
  [
    'no sheet where it is said',
    () => made({ more: { [BOOK_LINKS]: links(['r1', 'worksheet', '../../etc/passwd']) } }),
    /sheet "S" is missing/,
  ],
  [
    'two sheets of one name',
    () => made({ more: { [BOOK]: book('<sheet name="A" sheetId="1" r:id="r1"/><sheet name="a" sheetId="2" r:id="r1"/>') } }),
    /sheet "a" twice/,
  ],
  ['no sheet', () => made({ more: { [BOOK]: book('') } }), /no sheet with cells/],
  [
    'a name for a sheet that is not there',
    () => made({ book: '<definedNames><definedName name="a" localSheetId="9">1</definedName></definedNames>' }),
    /a name belongs to the sheet 9/,
  ],
  [
    'a million names',
    () =>
      made({
        book: `<definedNames>${Array.from({ length: 1e6 }, (_, i) => `<definedName name="n${i * 7919}">${(i * 31) % 977}</definedName>`).join('')}</definedNames>`,
      }),
    /more than 100000 elements/,
  ],
  ['types that are cut', () => made({ more: { [CONTENT_TYPES]: '<Types' } }), /Content_Types.* is broken/],
  // the text of a part
  ['cut XML', () => made(sheet(`<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1"><v>1</v></c>`)), /is broken/],
  ['cut in a tag', () => made(sheet(`<worksheet xmlns="${MAIN}"><sheetData><row r="1`)), /is broken/],
  ['a document type', () => made(sheet(`<!DOCTYPE a [<!ENTITY b "bb">]><worksheet xmlns="${MAIN}"/>`)), /document type/],
  ['an entity of nobody', () => made(row('<c r="A1" t="str"><v>&b;</v></c>')), /is broken/],
  ['deep nesting', () => made(sheet(deep(60_000))), /nested more than 128 deep/],
  [
    'Latin 1',
    () => made(sheet(`<?xml version="1.0" encoding="ISO-8859-1"?><worksheet xmlns="${MAIN}"/>`)),
    /written in ISO-8859-1; UTF-8 and UTF-16 are read/,
  ],
  [
    'bytes that are no UTF-8',
    () => made(sheet(new Uint8Array([...strToU8(`<worksheet xmlns="${MAIN}">`), 0xff, 0xfe, 0x80]))),
    /not in the encoding/,
  ],
  ['a prefix of nothing', () => made(sheet('<x:worksheet/>')), /is broken/],
  ['a sheet without a place for cells', () => made(sheet(`<worksheet xmlns="${MAIN}"/>`)), /is no sheet with cells/],
  [
    'a sheet with two places for cells',
    () => made(sheet(`<worksheet xmlns="${MAIN}"><sheetData/><sheetData/></worksheet>`)),
    /is no sheet with cells/,
  ],
  // the cells
  ['1e999', () => made(row('<c r="A1"><v>1e999</v></c>')), /cell A1: "1e999" is not a number/],
  ['a word for a number', () => made(row('<c r="A1"><v>NaN</v></c>')), /"NaN" is not a number/],
  ['no date', () => made(row('<c r="A1" t="d"><v>yesterday</v></c>')), /not a date/],
  ['a text that the table has not', () => made(row('<c r="A1" t="s"><v>7</v></c>')), /there is no text "7"/],
  ['a cell in a column beyond the last', () => made(row('<c r="XFE1"/>')), /beyond the last column/],
  ['a row beyond the last', () => made({ rows: '<row r="1048577"/>' }), /beyond the last of a sheet/],
  ['rows without number beyond the last', () => made({ rows: '<row r="1048576"/><row/>' }), /beyond the last of a sheet/],
  ['an address that is none', () => made(row('<c r="A01"/>')), /the address "A01"/],
  ['a cell of another row', () => made(row('<c r="A2"/>')), /not in their order/],
  ['a cell twice', () => made(row('<c r="A1"/><c r="A1"/>')), /not in their order/],
  ['a row twice', () => made({ rows: '<row r="1"/><row r="1"/>' }), /rows not in their order/],
  ['a cell with two values', () => made(row('<c r="A1"><v>1</v><v>2</v></c>')), /two <v>/],
  [
    'a shared formula without its first cell',
    () => made(row('<c r="A1"><f t="shared" si="3"/></c>')),
    /shared formula 3 has no first cell/,
  ],
  [
    'shared formulas without end',
    () =>
      made({
        rows: `<row r="1"><c r="A1"><f t="shared" ref="A1:A9" si="0">${'"x"&amp;'.repeat(2000)}A1</f></c></row>${Array.from({ length: 6000 }, (_, i) => `<row r="${i + 2}" s="${i * 7919}"><c r="A${i + 2}"><f t="shared" si="0"/></c></row>`).join('')}`,
      }),
    /shared formulas come to more than/,
  ],
  ['a kind of value that there is not', () => made(row('<c r="A1" t="x"><v>1</v></c>')), /no kind of value "x"/],
];
function book(sheets: string): string {
  return `<workbook xmlns="${MAIN}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>${sheets}</sheets></workbook>`;
}

/** A busy machine may be several times slower than the 5 s that a sentence may take. */
const SOON_MS = 5_000;

describe('refused in one sentence', () => {
  it.each(REFUSED)('%s', (_, make, words) => {
    const file = make();
    const from = process.cpuUsage();
    const fault = (() => {
      try {
        return readPackage(file);
      } catch (error) {
        return error;
      }
    })();
    const { user, system } = process.cpuUsage(from);
    expect(fault).toBeInstanceOf(UnreadableFile);
    const { message } = fault as UnreadableFile;
    expect(message).toMatch(words);
    expect(message).not.toMatch(/\n|\bat .*:\d+/);
    expect(message.length).toBeLessThan(240);
    expect((user + system) / 1000).toBeLessThan(SOON_MS);
  });

  it('and a cell at the far end of a sheet is read at once', () =>
    expect(readPackage(made({ rows: '<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>' })).sheets[0]?.cells).toEqual([
      { at: 'XFD1048576', value: 1 },
    ]));
});

describe('whatever is done to a file', () => {
  it('it is read and edited, or refused: no other fault', async () => {
    const file = (await FOREIGN['comments, chart, table, printer']?.()) ?? new Uint8Array();
    const stored = writeZip([...openZip(file).values()].map(part => ({ ...part, method: 0, raw: unpacked(part) })));
    let [read, refused] = [0, 0];
    fc.assert(
      fc.property(fc.constantFrom(file, stored), fc.nat(), fc.integer({ min: 0, max: 255 }), fc.boolean(), (of, place, byte, cut) => {
        const at = place % of.length;
        const changed = cut ? of.slice(0, at) : of.slice();
        if (!cut) changed[at] = byte;
        try {
          const user = readPackage(changed);
          edited(user, { cells: new Map([[user.sheets[0]?.name ?? '', new Map([['A1', { value: 1, formula: 'none' as const }]])]]) });
          read++;
        } catch (fault) {
          expect(fault).toBeInstanceOf(UnreadableFile);
          refused++;
        }
      }),
      { seed: SEED, numRuns: 600 },
    );
    expect(Math.min(read, refused)).toBeGreaterThan(20);
  });

  it('a text with any character changed is read, or refused', () => {
    const text = `<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1" t="str"><f t="shared" ref="A1:A2" si="0">B1&amp;"x"</f><v>2</v></c></row><row r="2"><c r="A2"><f t="shared" si="0"/></c></row></sheetData></worksheet>`;
    let [read, refused] = [0, 0];
    fc.assert(
      fc.property(
        fc.oneof(
          fc.nat(text.length - 1),
          fc.nat(40).map(at => text.indexOf('B1&amp;') + at),
        ),
        fc.oneof(fc.constantFrom(...'<>/="&1A x'), fc.constantFrom(...'123AB')),
        (at, character) => {
          try {
            const user = readPackage(made({ more: { [SHEET]: text.slice(0, at) + character + text.slice(at + 1) } }));
            edited(user, { cells: new Map([['S', new Map([['A1', { value: 1, formula: 'none' as const }]])]]) });
            read++;
          } catch (fault) {
            expect(fault).toBeInstanceOf(UnreadableFile);
            refused++;
          }
        },
      ),
      { seed: SEED, numRuns: 600 },
    );
    expect(Math.min(read, refused)).toBeGreaterThan(50);
  });
});

describe('packed and unpacked', () => {
  it('is what it was, in whatever pieces it comes', () =>
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 200 }), { maxLength: 20 }), pieces => {
        const part = openZip(writeZip([packed('a', pieces)])).get('a');
        expect(part && [...unpacked(part)]).toEqual(pieces.flatMap(piece => [...piece]));
      }),
      { seed: SEED, numRuns: 100 },
    ));
});
