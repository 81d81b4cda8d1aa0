// The workbook of Excel as a file: in slices, closed whatever happens, refused in sentences.
import { afterEach, describe, expect, it } from 'vitest';
import { excelFiles } from '../../src/hosts/excel/files';
import { EXCEL } from '../../src/words/excel';
import { fakeExcel } from './excel-fake';

afterEach(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name);
});

const bytes = Uint8Array.from({ length: 2500 }, (_, i) => (i * 7) % 256);

function excelWithFile(url = 'C:\\parts\\Logger lid.xlsx') {
  const fake = fakeExcel({ name: 'Part' });
  Object.assign(fake.file, { bytes, url, sliceBytes: 1000 });
  return fake;
}

describe('the file', () => {
  it('comes whole, slice by slice, and is closed', async () => {
    const fake = excelWithFile();
    for (let time = 0; time < 3; time++) expect(await excelFiles(EXCEL).read()).toEqual({ name: 'Logger lid.xlsx', bytes });
    expect(fake.file.slices).toEqual([0, 1, 2, 0, 1, 2, 0, 1, 2]);
    expect(fake.file.isOpen).toBe(0);
  });

  it.each([
    ['https://example.org/a/Lid%20A.xlsm?web=1', 'Lid A.xlsm'],
    ['/Users/me/Lid 100%.xlsx', 'Lid 100%.xlsx'],
    ['', 'Workbook.xlsx'],
  ])('of %s is called %s', async (url, name) => {
    excelWithFile(url);
    expect((await excelFiles(EXCEL).read()).name).toBe(name);
  });

  it('that Excel refuses is told with what to do', async () => {
    const fake = excelWithFile();
    fake.file.refuses = 'file';
    await expect(excelFiles(EXCEL).read()).rejects.toThrow(
      /Protected View, save it once, and try again \(An internal error has occurred\.\)\.$/,
    );
  });

  it('of which a slice fails is closed and told', async () => {
    const fake = excelWithFile();
    fake.file.refuses = 1;
    for (let time = 0; time < 3; time++)
      await expect(excelFiles(EXCEL).read()).rejects.toThrow(
        'Excel stopped giving the workbook at part 2 of 3: try again (the slice is gone).',
      );
    expect(fake.file.slices).toEqual([0, 1, 0, 1, 0, 1]);
    expect(fake.file.isOpen).toBe(0);
  });

  it('that is too short is no file', async () => {
    const fake = excelWithFile();
    fake.file.isShort = true;
    await expect(excelFiles(EXCEL).read()).rejects.toThrow('Excel gave 2499 of the 2500 bytes of the workbook: try again.');
    expect(fake.file.isOpen).toBe(0);
  });

  it('becomes a new workbook', async () => {
    const fake = excelWithFile();
    await excelFiles(EXCEL).open?.(bytes);
    expect(fake.created).toEqual([Buffer.from(bytes).toString('base64')]);
    fake.fail = { code: 'AccessDenied', afterSyncs: 0 };
    await expect(excelFiles(EXCEL).open?.(bytes)).rejects.toThrow('AccessDenied');
  });
});

describe('a name', () => {
  const name = { name: 'Bosswright.handover', meaning: '"a"&"b"' };

  it('is kept unseen, and taken back', async () => {
    const fake = excelWithFile();
    const takeBack = await excelFiles(EXCEL).keepName(name);
    expect([...fake.names]).toEqual([[name.name, { formula: '="a"&"b"', visible: false }]]);
    await takeBack?.();
    expect(fake.names.size).toBe(0);
  });

  it('takes the place of an older one, which comes back', async () => {
    const fake = excelWithFile();
    fake.names.set(name.name, { formula: '="old"', visible: false });
    const takeBack = await excelFiles(EXCEL).keepName(name);
    expect(fake.names.get(name.name)?.formula).toBe('="a"&"b"');
    await takeBack?.();
    expect([...fake.names]).toEqual([[name.name, { formula: '="old"', visible: false }]]);
  });

  it('that is there already is not written', async () => {
    const fake = excelWithFile();
    fake.names.set(name.name, { formula: '="a"&"b"', visible: false });
    expect(await excelFiles(EXCEL).keepName(name)).toBeUndefined();
    expect(fake.syncs).toBe(1);
  });
});
