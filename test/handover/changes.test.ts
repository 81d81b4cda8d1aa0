// What changes in the user's cells of a file: formulas of their own that cannot stay as they are, and those that must.
import { beforeAll, describe, expect, it } from 'vitest';
import { copyOf, type WrittenCopy } from '../../src/handover/write/copy';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import { made, SHEET, textOf } from '../package/made';
import { TITLE } from './kit';

const text = (at: string, value: string): string => `<c r="${at}" t="inlineStr"><is><t>${value}</t></is></c>`;
const ROWS = [
  `<row r="1">${text('A1', '2.4 mm')}<c r="B1"><f>_xldudf_ENCL_BOSS_OD(A1,1)</f><v>4.4</v></c></row>`,
  '<row r="2"><c r="A2"><v>3</v></c><c r="B2" t="str"><f>"hole "&amp;A1</f><v>hole 2.4 mm</v></c></row>',
  '<row r="3"><c r="B3"><f>LEN(A1)</f><v>6</v></c><c r="C3"><f>A2*2</f><v>6</v></c></row>',
  '<row r="4"><c r="B4"><f t="dataTable" ref="B4:B5" dt2D="0" dtr="0" r1="A2"/><v>5.5</v></c></row><row r="5"><c r="B5"><v>6.5</v></c></row>',
].join('');

describe('a formula of the user', () => {
  let copy: WrittenCopy;
  let sheet = '';
  beforeAll(async () => {
    const file = readPackage(made({ rows: ROWS }));
    copy = await copyOf(file, sourceOfFile('Mine', workbookIn(file)), TITLE, { write: writeOwnSheets });
    sheet = textOf(copy.bytes, SHEET);
  });
  const formulaOf = (at: string): string | undefined => new RegExp(`<c r="${at}"[^>]*>(<f[^>]*/?>[^<]*(?:</f>)?)?`).exec(sheet)?.[1];

  it('that reads a text as it was before it became a number is its value from now on, and told', () => {
    expect([formulaOf('B2'), formulaOf('B3')]).toEqual([undefined, undefined]);
    expect(sheet).toContain('hole 2.4 mm');
    expect(copy.findings.filter(({ what, at }) => what === 'value, not live' && /^B[23]$/.test(at))).toHaveLength(2);
  });

  it('that reads none stays to the letter', () => {
    expect(formulaOf('C3')).toBe('<f>A2*2</f>');
  });

  it('that is worked out by the program alone stays with its values', () => {
    expect(sheet).toContain('<f t="dataTable" ref="B4:B5" dt2D="0" dtr="0" r1="A2"/><v>5.5</v>');
    expect(sheet).toContain('<c r="B5"><v>6.5</v></c>');
  });
});
