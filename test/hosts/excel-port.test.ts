// The port over Excel, against a fake that lets nothing be read that was not loaded and sent for.
import { afterEach, describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { excelPort, freeName, NEEDED } from '../../src/hosts/excel/excel-port';
import type { SheetPlan } from '../../src/sheet/plan';
import type { Selection } from '../../src/sheet/port';
import { fakeExcel, type FakeSheet } from './excel-fake';

afterEach(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name);
});

const cells = (entries: Record<string, { formula?: string; value: string | number | boolean }>): FakeSheet['cells'] =>
  new Map(Object.entries(entries));
const plan = (more: Partial<SheetPlan> = {}): SheetPlan => ({
  name: 'Part',
  widths: [20, 10],
  cells: [{ at: 'A1', role: 'title', value: 'A part' }],
  ...more,
});
const settled = () => new Promise(resolve => setTimeout(resolve, 0));

describe('reading', () => {
  it('gives the rectangle from A1 with values, formulas and blanks', async () => {
    fakeExcel({
      name: 'My part',
      cells: cells({
        B2: { value: 2.5 },
        C2: { value: 'ST2.9' },
        C3: { formula: '=ENCL.BOSS.OD(B2,1)', value: '#VALUE!' },
        B3: { value: true },
      }),
    });
    expect(await excelPort().read('my part')).toEqual([
      [{ value: null }, { value: null }, { value: null }],
      [{ value: null }, { value: 2.5 }, { value: 'ST2.9' }],
      [{ value: null }, { value: true }, { value: '#VALUE!', formula: '=ENCL.BOSS.OD(B2,1)' }],
    ]);
  });

  it('gives nothing of an empty sheet, and says where there is none', async () => {
    fakeExcel({ name: 'Part' });
    expect(await excelPort().read('Part')).toEqual([]);
    await expect(excelPort().read('Other')).rejects.toThrow('there is no sheet "Other"');
  });

  it('takes a large sheet in parts', async () => {
    const fake = fakeExcel({ name: 'Part', cells: cells({ A1: { value: 1 }, CV1000: { value: 2 } }) });
    const grid = await excelPort().read('Part');
    expect([grid.length, grid[999]?.[99], grid[0]?.[0]]).toEqual([1000, { value: 2 }, { value: 1 }]);
    expect(Math.max(...fake.readings)).toBeLessThanOrEqual(50_000);
    expect(fake.readings.length).toBeGreaterThanOrEqual(4);
  });

  it('names the sheets and the active cell', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: "It's mine" });
    fake.active = { sheetName: "It's mine", at: 'B4' };
    expect(await excelPort().sheetNames()).toEqual(['Part', "It's mine"]);
    expect(await excelPort().selection()).toEqual({ sheetName: "It's mine", at: 'B4' });
  });

  it('has no selection while a chart is selected', async () => {
    const fake = fakeExcel({ name: 'Part' });
    fake.fail = { code: 'InvalidSelection', afterSyncs: 0 };
    expect(await excelPort().selection()).toBeNull();
    fake.fail = { code: 'GeneralException', afterSyncs: 0 };
    await expect(excelPort().selection()).rejects.toThrow('GeneralException');
  });
});

describe('following the selection', () => {
  it('tells of every selection, change and sheet until it is stopped', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: 'Other' });
    const told: Selection[] = [];
    const stop = excelPort().onSelection(selection => told.push(selection));
    await settled();
    fake.active = { sheetName: 'Part', at: 'B4' };
    await fake.fire('selection');
    fake.active = { sheetName: 'Other', at: 'C1' };
    await fake.fire('activated');
    await fake.fire('changed');
    expect(told).toEqual([
      { sheetName: 'Part', at: 'B4' },
      { sheetName: 'Other', at: 'C1' },
      { sheetName: 'Other', at: 'C1' },
    ]);
    stop();
    await settled();
    expect([...fake.handlers.values()].map(({ size }) => size)).toEqual([0, 0, 0]);
    await fake.fire('selection');
    expect(told).toHaveLength(3);
  });

  it('drops an answer that was overtaken', async () => {
    const fake = fakeExcel({ name: 'Part' });
    const told: Selection[] = [];
    excelPort().onSelection(selection => told.push(selection));
    await settled();
    await Promise.all([fake.fire('selection'), fake.fire('selection'), fake.fire('selection')]);
    expect(told).toHaveLength(1);
  });
});

describe('writing', () => {
  it('enters as if typed', async () => {
    const fake = fakeExcel({ name: 'Part' });
    const port = excelPort();
    await port.write('Part', 'B4', 2.5);
    await port.write('Part', 'B5', '=ENCL.BOSS.OD(B4,1)');
    await port.write('Part', 'B6', 'ABS');
    expect([...(fake.sheets[0]?.cells ?? [])].map(([at, { formula, value }]) => [at, formula ?? value])).toEqual([
      ['B4', 2.5],
      ['B5', '=ENCL.BOSS.OD(B4,1)'],
      ['B6', 'ABS'],
    ]);
    await expect(port.write('Other', 'B4', 1)).rejects.toThrow('there is no sheet "Other"');
  });

  it('says that a sheet is protected', async () => {
    fakeExcel({ name: 'Part', isProtected: true });
    await expect(excelPort().write('Part', 'B4', 2.5)).rejects.toThrow('the sheet or the workbook is protected');
  });

  it('goes to a cell, and removes a sheet', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: 'Other' });
    await excelPort().goTo('Other', 'C7');
    expect(fake.active).toEqual({ sheetName: 'Other', at: 'C7' });
    await excelPort().remove('Other');
    expect(fake.sheets.map(({ name }) => name)).toEqual(['Part']);
    await expect(excelPort().remove('Other')).rejects.toThrow('there is no sheet "Other"');
    await expect(excelPort().goTo('Other', 'A1')).rejects.toThrow('there is no sheet "Other"');
  });

  it('places a picture at its cell, with its words', async () => {
    const fake = fakeExcel({ name: 'Part' });
    await excelPort().placePicture?.('Part', {
      at: 'C3',
      png: new Uint8Array([137, 80, 78, 71]),
      widthPx: 400,
      heightPx: 200,
      words: 'the joint',
    });
    expect(fake.sheets[0]?.pictures).toEqual([
      { base64: 'iVBORw==', left: 100, top: 40, width: 300, height: 150, lockAspectRatio: true, altTextDescription: 'the joint' },
    ]);
  });
});

describe('adding a sheet', () => {
  it('overwrites nothing: a name that is taken gets a number, whatever its capitals', async () => {
    const fake = fakeExcel({ name: 'PART', cells: cells({ A1: { value: 'mine' } }) });
    expect(await excelPort().add(plan())).toBe('Part 2');
    expect(await excelPort().add(plan())).toBe('Part 3');
    expect(fake.sheets.map(({ name }) => name)).toEqual(['PART', 'Part 2', 'Part 3']);
    expect(fake.sheets[0]?.cells).toEqual(cells({ A1: { value: 'mine' } }));
    expect(freeName('x'.repeat(40), ['x'.repeat(31)])).toBe(`${'x'.repeat(29)} 2`);
  });

  it('draws every sheet of the demo: numbers as numbers, texts as texts, formulas as formulas', async () => {
    for (const demo of demoWorkbook.sheets) {
      const fake = fakeExcel({ name: 'Sheet1' });
      await excelPort().add(demo);
      const drawn = fake.sheets[1]?.cells;
      const filled = demo.cells.filter(({ value, formula }) => formula !== undefined || (value !== undefined && value !== ''));
      expect(drawn?.size, demo.name).toBe(filled.length);
      for (const { at, value, formula } of filled)
        expect(drawn?.get(at)?.formula ?? drawn?.get(at)?.value, `${demo.name}!${at}`).toBe(formula ?? value);
    }
  });

  it('keeps a text that Excel would take for a number, a date or a formula', async () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    const texts = ['1/2', '0.5', '=1+1', '+1', "'quoted", 'TRUE'];
    await excelPort().add(plan({ cells: texts.map((value, i) => ({ at: `A${i + 1}`, role: 'text', value })) }));
    expect([...(fake.sheets[1]?.cells.values() ?? [])]).toEqual(texts.map(value => ({ value })));
  });

  it('gives widths, formats, states, limits, print and frozen rows', async () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    await excelPort().add(
      plan({
        cells: [
          { at: 'A1', role: 'text', value: 'a long text '.repeat(10) },
          { at: 'B2', role: 'input', value: 2.5, format: '0.00', note: 'measured' },
        ],
        merged: ['A1:B1'],
        stateRanges: ['B3:B4'],
        frozenRows: 1,
        print: { paper: 'A4', landscape: true, repeatRows: 2 },
        validations: [
          { range: 'B2:B9', words: 'above 0', above: 0, atMost: 5 },
          { range: 'B10', words: 'choose', list: 'Data!$A$2:$A$9' },
        ],
      }),
    );
    expect(fake.done).toEqual(
      expect.arrayContaining([
        'A1:A1 column.format.columnWidth = 108.75',
        'B2 numberFormat = [["0.00"]]',
        'B2.format.fill.color = #E9F0FC',
        'A1:B1 merged false',
        'A1:B1 format.rowHeight = 57',
        'B3:B4 conditionalFormats.add(cellValue).cellValue.rule = {"formula1":"=\\"fail\\"","operator":"equalTo"}',
        'B2:B9 dataValidation.rule = {"custom":{"formula":"=AND(ISNUMBER(B2),B2>0,B2<=5)"}}',
        'B10 dataValidation.rule = {"list":{"inCellDropDown":true,"source":"=Data!$A$2:$A$9"}}',
        'B2 dataValidation.prompt = {"showPrompt":true,"title":"Note","message":"measured"}',
        'sheet pageLayout.orientation = landscape',
        'sheet pageLayout.setPrintTitleRows($1:$2)',
        'frozen 1',
      ]),
    );
  });

  it('leaves no half of a sheet behind', async () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    fake.fail = { code: 'AccessDenied', afterSyncs: 2 };
    await expect(excelPort().add(plan())).rejects.toThrow('protected');
    expect(fake.sheets.map(({ name }) => name)).toEqual(['Sheet1']);
  });

  it('places the pictures of a plan', async () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    await excelPort().add(plan({ pictures: [{ at: 'B2', png: new Uint8Array([1]), widthPx: 100, heightPx: 100, words: 'w' }] }));
    expect(fake.sheets[1]?.pictures).toHaveLength(1);
  });
});

describe('an Excel that is too old', () => {
  it('is told so in a sentence', () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    fake.isSupported = (set, version) => set === 'ExcelApi' && version !== NEEDED;
    expect(() => excelPort()).toThrow(/lacks what the pane works with \(ExcelApi 1\.10\)/);
  });
});
