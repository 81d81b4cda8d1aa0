// Formulas as they are typed where the decimal sign is a comma, and as a file holds them.
import { afterEach, expect, it } from 'vitest';
import { excelPort } from '../../src/hosts/excel/excel-port';
import { EXCEL } from '../../src/words/excel';
import { FILE_SIGNS, fromSigns, inSigns } from '../../src/sheet/signs';
import { fakeExcel } from '../hosts/excel-fake';

const COMMA = { decimal: ',' };

afterEach(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name);
});

it('are shown with semicolons and decimal commas, texts and lists as they are', () => {
  expect(inSigns('=ENCL.BOSS.OD(B4,1.2)', COMMA)).toBe('=ENCL.BOSS.OD(B4;1,2)');
  expect(inSigns('=ENCL.GRIP({2.5;1.6},"a, b.c")', COMMA)).toBe('=ENCL.GRIP({2,5;1,6};"a, b.c")');
  expect(inSigns('=ENCL.JOINT.STATE({"wall",2.5;"a.b, c",-1})', COMMA)).toBe('=ENCL.JOINT.STATE({"wall".2,5;"a.b, c".-1})');
  expect(inSigns("=ENCL.BOSS.OD('a, b'!B4,SUM(B5,0.5))", COMMA)).toBe("=ENCL.BOSS.OD('a, b'!B4;SUM(B5;0,5))");
  expect(inSigns('=ENCL.BOSS.OD(B4,1.2)', FILE_SIGNS)).toBe('=ENCL.BOSS.OD(B4,1.2)');
});

it('are read as they are typed', () => {
  expect(fromSigns('SUMME(B4;0,5;\'a; b\'!B5;"1,5; 2")', COMMA)).toBe('SUMME(B4,0.5,\'a; b\'!B5,"1,5; 2")');
  expect(fromSigns('GRIP({"wall".2,5;"a.b; c"\\-1};B4:B5;0,5)', COMMA)).toBe('GRIP({"wall",2.5;"a.b; c",-1},B4:B5,0.5)');
  expect(fromSigns('SUM(B4,0.5)', FILE_SIGNS)).toBe('SUM(B4,0.5)');
});

it('are those of Excel, where it tells them', async () => {
  const fake = fakeExcel({ name: 'Part' });
  fake.decimalSeparator = ',';
  expect(await excelPort(EXCEL).signs?.()).toEqual(COMMA);
  fake.isSupported = (_, version) => version === '1.10';
  expect(await excelPort(EXCEL).signs?.()).toEqual(FILE_SIGNS);
});

it('go into a cell as they were typed, and not into a table', async () => {
  const fake = fakeExcel({ name: 'Part', tables: [{ name: 'Sizes', body: 'A2:B4' }] });
  const entry = { sheetName: 'Part', content: '=ENCL.BOSS.OD(SUMME(B4;B5);1,2)', isLocal: true } as const;
  await excelPort(EXCEL).write([{ ...entry, at: 'C1' }]);
  expect(fake.sheets[0]?.cells.get('C1')?.formula).toBe('local =ENCL.BOSS.OD(SUMME(B4;B5);1,2)');
  await expect(excelPort(EXCEL).write([{ ...entry, at: 'B3' }])).rejects.toThrow('English names');
});
