// The port over Excel, against a fake that lets nothing be read that was not loaded and sent for.
import { afterEach, describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { excelPort, freeName, NEEDED } from '../../src/hosts/excel/excel-port';
import { cellPosition } from '../../src/sheet/addresses';
import type { SheetPlan } from '../../src/sheet/plan';
import type { Selection } from '../../src/sheet/port';
import { EXCEL } from '../../src/words/excel';
import { answers } from './answers';
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
/** A sheet that is made up cell by cell when it is read. */
const made = (of: (row: number, column: number) => { value: string | number }): FakeSheet['cells'] => {
  const sheet: FakeSheet['cells'] = new Map();
  sheet.get = at => {
    const { row, column } = cellPosition(at);
    return of(row, column);
  };
  return sheet;
};
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
    expect(await excelPort(EXCEL).read('my part')).toEqual([
      [{ value: null }, { value: null }, { value: null }],
      [{ value: null }, { value: 2.5 }, { value: 'ST2.9' }],
      [{ value: null }, { value: true }, { value: '#VALUE!', formula: '=ENCL.BOSS.OD(B2,1)' }],
    ]);
  });

  it('gives nothing of an empty sheet, and says where there is none', async () => {
    fakeExcel({ name: 'Part' });
    expect(await excelPort(EXCEL).read('Part')).toEqual([]);
    await expect(excelPort(EXCEL).read('Other')).rejects.toThrow('there is no sheet "Other"');
  });

  it('takes a large sheet in parts', async () => {
    const fake = fakeExcel({ name: 'Part', cells: cells({ A1: { value: 1 }, CV1000: { value: 2 } }) });
    const grid = await excelPort(EXCEL).read('Part');
    expect([grid.length, grid[999]?.[99], grid[0]?.[0]]).toEqual([1000, { value: 2 }, { value: 1 }]);
    expect(Math.max(...fake.readings)).toBeLessThanOrEqual(50_000);
    expect(fake.readings.length).toBeGreaterThanOrEqual(4);
  });

  it('names the sheets and the active cell', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: "It's mine" });
    fake.active = { sheetName: "It's mine", at: 'B4' };
    expect(await excelPort(EXCEL).sheetNames()).toEqual(['Part', "It's mine"]);
    expect(await excelPort(EXCEL).selection()).toEqual({ sheetName: "It's mine", at: 'B4' });
  });

  it('has no selection while a chart is selected', async () => {
    const fake = fakeExcel({ name: 'Part' });
    fake.fail = { code: 'InvalidSelection', afterSyncs: 0 };
    expect(await excelPort(EXCEL).selection()).toBeNull();
    fake.fail = { code: 'GeneralException', afterSyncs: 0 };
    await expect(excelPort(EXCEL).selection()).rejects.toThrow('GeneralException');
  });
});

describe('following the workbook', () => {
  const listener = () => {
    const told: string[] = [];
    return {
      told,
      selected: ({ sheetName, at }: Selection) => void told.push(`selected ${sheetName}!${at}`),
      changed: (sheetName: string, area?: object) => void told.push(`changed ${sheetName} ${JSON.stringify(area ?? 'all')}`),
      calculated: (sheetName: string) => void told.push(`calculated ${sheetName}`),
      gone: (sheetName: string) => void told.push(`gone ${sheetName}`),
    };
  };

  it('tells of selections, changes, calculations and sheets until it is stopped', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: 'Other' });
    const heard = listener();
    const stop = excelPort(EXCEL).watch(heard);
    await settled();
    fake.active = { sheetName: 'Part', at: 'B4' };
    await fake.fire('selection', 'B4:D9');
    fake.active = { sheetName: 'Other', at: 'C1' };
    await fake.fire('activated');
    await fake.fire('changed', 'C1');
    await fake.fire('changed', '4:9', 'rowInserted');
    await fake.fire('calculated');
    expect(heard.told).toEqual([
      'selected Part!B4',
      'selected Other!C1',
      'changed Other {"top":0,"left":2,"bottom":0,"right":2}',
      'changed Other "all"',
      'calculated Other',
    ]);
    stop();
    await settled();
    expect([...fake.handlers.values()].map(({ size }) => size)).toEqual([0, 0, 0, 0]);
    await fake.fire('selection');
    expect(heard.told).toHaveLength(5);
  });

  it('tells which sheets are gone when another is shown: one that was removed, one with another name', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: 'Other' }, { name: 'Third' });
    const heard = listener();
    excelPort(EXCEL).watch(heard);
    await settled();
    fake.sheets.splice(1, 1);
    const [, third] = fake.sheets;
    if (third !== undefined) third.name = 'Lid';
    fake.active = { sheetName: 'Lid', at: 'A1' };
    await fake.fire('activated');
    expect(heard.told).toEqual(['gone Other', 'gone Third', 'selected Lid!A1']);
  });

  it('asks Excel nothing for a move inside a sheet, whatever shape is selected', async () => {
    const fake = fakeExcel({ name: 'Part' });
    const heard = listener();
    excelPort(EXCEL).watch(heard);
    await settled();
    const before = fake.syncs;
    for (const at of ['B4', 'B4:D9', 'C:D', '7:9', 'F2;H4', 'F3,H4']) await fake.fire('selection', at);
    expect(heard.told.map(line => line.split('!')[1])).toEqual(['B4', 'B4', 'C1', 'A7', 'F2', 'F3']);
    expect(fake.syncs).toBe(before);
  });
});

describe('what stands round a cell', () => {
  it('comes in one exchange, of a bounded size, with the names at the top of its region', async () => {
    const fake = fakeExcel({
      name: 'Long',
      cells: made((row, column) => ({ value: row === 0 ? `name ${column}` : row * 100 + column })),
      used: { top: 0, left: 0, bottom: 19_999, right: 49 },
    });
    const { parts, used, calculation } = await excelPort(EXCEL).around({ sheetName: 'Long', at: 'C15000' });
    expect(fake.syncs).toBe(1);
    expect(Math.max(...fake.readings)).toBeLessThan(8000);
    expect(used).toEqual({ top: 0, left: 0, bottom: 19_999, right: 49 });
    expect(calculation).toBe('settled');
    const [head, near] = parts;
    expect(head?.cells[0]?.[2]).toEqual({ value: 'name 2' });
    expect(near?.cells[14_999 - (near.top ?? 0)]?.[2 - (near.left ?? 0)]).toEqual({ value: 1_499_902 });
  });

  it('says where calculation stands', async () => {
    const fake = fakeExcel({ name: 'Part' });
    const place = { sheetName: 'Part', at: 'A1' };
    fake.calculation = { mode: 'manual', state: 'pending' };
    expect((await excelPort(EXCEL).around(place)).calculation).toBe('manual');
    fake.calculation = { mode: 'automatic', state: 'calculating' };
    expect((await excelPort(EXCEL).around(place)).calculation).toBe('pending');
  });

  it('reads areas as far as they are filled, and none that is too large', async () => {
    const fake = fakeExcel({ name: 'Long', cells: made(row => ({ value: row })), used: { top: 0, left: 0, bottom: 19_999, right: 49 } });
    const area = (bottom: number, right: number) => ({ sheet: 'long', top: 0, left: 0, bottom, right });
    expect(
      (await excelPort(EXCEL).readAreas([area(9, 1), { ...area(9, 1), sheet: 'gone' }])).map(({ cells: { length } }) => length),
    ).toEqual([10]);
    await expect(excelPort(EXCEL).readAreas([area(1_048_575, 0), area(1_048_575, 5)])).rejects.toThrow('the ranges hold 140,000 cells');
    expect(Math.max(...fake.readings)).toBe(20);
    expect(await excelPort(EXCEL).sizes()).toEqual([{ sheetName: 'Long', cells: 1_000_000 }]);
  });
});

describe('writing', () => {
  it('enters as if typed', async () => {
    const fake = fakeExcel({ name: 'Part' });
    const port = excelPort(EXCEL);
    await port.write([{ sheetName: 'Part', at: 'B4', content: 2.5 }]);
    await port.write([{ sheetName: 'Part', at: 'B5', content: '=ENCL.BOSS.OD(B4,1)' }]);
    await port.write([{ sheetName: 'Part', at: 'B6', content: 'ABS' }]);
    expect([...(fake.sheets[0]?.cells ?? [])].map(([at, { formula, value }]) => [at, formula ?? value])).toEqual([
      ['B4', 2.5],
      ['B5', '=ENCL.BOSS.OD(B4,1)'],
      ['B6', 'ABS'],
    ]);
    await expect(port.write([{ sheetName: 'Other', at: 'B4', content: 1 }])).rejects.toThrow('the sheet is not there any more');
  });

  it('says that a sheet is protected', async () => {
    fakeExcel({ name: 'Part', isProtected: true });
    await expect(excelPort(EXCEL).write([{ sheetName: 'Part', at: 'B4', content: 2.5 }])).rejects.toThrow(
      'the sheet or the workbook is protected',
    );
  });

  it('goes to a cell, and removes a sheet', async () => {
    const fake = fakeExcel({ name: 'Part' }, { name: 'Other' });
    await excelPort(EXCEL).goTo('Other', 'C7');
    expect(fake.active).toEqual({ sheetName: 'Other', at: 'C7' });
    await excelPort(EXCEL).remove('Other');
    expect(fake.sheets.map(({ name }) => name)).toEqual(['Part']);
    await expect(excelPort(EXCEL).remove('Other')).rejects.toThrow('there is no sheet "Other"');
    await expect(excelPort(EXCEL).goTo('Other', 'A1')).rejects.toThrow('there is no sheet "Other"');
  });

  it('places a picture at its cell, with its words', async () => {
    const fake = fakeExcel({ name: 'Part' });
    await excelPort(EXCEL).placePicture?.('Part', {
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

describe('in a table', () => {
  const table = () =>
    fakeExcel({
      name: 'Part',
      cells: cells({
        B1: { value: 'head' },
        B2: { formula: '=A2', value: 1 },
        B3: { value: 'own' },
        B4: { formula: '=A4*2', value: 2 },
        C2: { value: 5 },
      }),
      tables: [{ name: 'Sizes', body: 'A2:B4' }],
    });
  const columnOf = (fake: ReturnType<typeof fakeExcel>) =>
    ['B2', 'B3', 'B4', 'B5'].map(at => fake.sheets[0]?.cells.get(at)?.formula ?? fake.sheets[0]?.cells.get(at)?.value);

  it('one cell is written, and the column is not filled', async () => {
    const fake = table();
    const port = excelPort(EXCEL);
    const before = await port.write([{ sheetName: 'Part', at: 'B3', content: '=ENCL.BOSS.OD(A3,1)' }]);
    expect(columnOf(fake)).toEqual(['=A2', '=ENCL.BOSS.OD(A3,1)', '=A4*2', undefined]);
    await port.write(before);
    expect(columnOf(fake)).toEqual(['=A2', 'own', '=A4*2', undefined]);
    expect(await port.tableAt?.({ sheetName: 'Part', at: 'B3' })).toBe('Sizes');
    expect(await port.tableAt?.({ sheetName: 'Part', at: 'C3' })).toBeUndefined();
  });

  it('the stand-in fills a column where one cell is written, so that this can fail', async () => {
    const fake = table();
    await Excel.run(async context => {
      context.workbook.worksheets.getItem('Part').getRange('B3').formulas = [['=A3']];
      await context.sync();
    });
    expect(columnOf(fake)).toEqual(['=A3', '=A3', '=A3', undefined]);
  });

  it('many cells take three exchanges, outside tables two, and are one step of undo where Excel can', async () => {
    const fake = table();
    fake.isSupported = () => true;
    const many = Array.from({ length: 100 }, (_, i) => ({ sheetName: 'Part', at: `D${i + 1}`, content: `=A${i + 1}` }));
    await excelPort(EXCEL).write(many);
    expect(fake.syncs).toBe(2);
    expect(fake.options).toEqual([{ delayForCellEdit: true, mergeUndoGroup: true }]);
    await excelPort(EXCEL).write([...many, { sheetName: 'Part', at: 'B3', content: 1 }]);
    expect(fake.syncs).toBe(5);
  });
});

describe('the stand-in shows what Excel is reported to show', () => {
  const valueAt = (fake: ReturnType<typeof fakeExcel>, at: string) => fake.sheets[0]?.cells.get(at)?.value;
  const sheet = () => ({
    name: 'Part',
    cells: cells({
      A1: { value: 'wall' },
      A2: { value: 2 },
      B2: { formula: '=ENCL.WALL.FEATURE(A2)', value: 1.2 },
      E5: { value: 'in the way' },
    }),
    tables: [{ name: 'Sizes', body: 'A2:C4' }],
  });
  const typed = (at: string, content: string | number) => excelPort(EXCEL).write([{ sheetName: 'Part', at, content }]);

  it('the old value of a cell whose answer is waited for, and that it calculates', async () => {
    const fake = fakeExcel(sheet());
    Object.assign(fake, { answers, isSlow: true });
    await typed('A2', 3);
    expect(valueAt(fake, 'B2')).toBe(1.2);
    expect((await excelPort(EXCEL).around({ sheetName: 'Part', at: 'B2' })).calculation).toBe('pending');
    await fake.settle();
    // 0.6 · 3
    expect(valueAt(fake, 'B2')).toBeCloseTo(1.8, 12);
    expect((await excelPort(EXCEL).around({ sheetName: 'Part', at: 'B2' })).calculation).toBe('settled');
  });

  it('the old value for as long as calculation is manual', async () => {
    const fake = fakeExcel(sheet());
    Object.assign(fake, { answers, calculation: { mode: 'manual', state: 'done' } });
    await typed('A2', 3);
    await fake.settle();
    expect(valueAt(fake, 'B2')).toBe(1.2);
  });

  it('#SPILL! in a table and where cells are in the way; one value of it in a table as in any cell', async () => {
    const fake = fakeExcel(sheet());
    fake.answers = answers;
    // 2.5 with 0.1 on each side fills three cells of a row
    await typed('B3', '=ENCL.GRIP.LIMITS(2.5,0.1)');
    await typed('D5', '=ENCL.GRIP.LIMITS(2.5,0.1)');
    await typed('D7', '=ENCL.GRIP.LIMITS(2.5,0.1)');
    await typed('B4', '=INDEX(ENCL.GRIP.LIMITS(2.5,0.1),1,1)');
    expect(['B3', 'C3', 'D5', 'E5', 'B4'].map(at => valueAt(fake, at))).toEqual(['#SPILL!', undefined, '#SPILL!', 'in the way', 2.4]);
    expect(['D7', 'E7', 'F7'].map(at => valueAt(fake, at))).toEqual([2.4, 2.5, 2.6]);
    await typed('D7', '');
    expect(['D7', 'E7', 'F7'].map(at => valueAt(fake, at))).toEqual([undefined, undefined, undefined]);
  });
});

describe('adding a sheet', () => {
  it('works where the user parts lists by a semicolon', async () => {
    for (const demo of demoWorkbook.sheets) {
      const fake = fakeExcel({ name: 'Sheet1' });
      fake.listSeparator = ';';
      await expect(excelPort(EXCEL).add(demo), demo.name).resolves.toBe(demo.name);
    }
  });

  it('overwrites nothing: a name that is taken gets a number, whatever its capitals', async () => {
    const fake = fakeExcel({ name: 'PART', cells: cells({ A1: { value: 'mine' } }) });
    expect(await excelPort(EXCEL).add(plan())).toBe('Part 2');
    expect(await excelPort(EXCEL).add(plan())).toBe('Part 3');
    expect(fake.sheets.map(({ name }) => name)).toEqual(['PART', 'Part 2', 'Part 3']);
    expect(fake.sheets[0]?.cells).toEqual(cells({ A1: { value: 'mine' } }));
    expect(freeName('x'.repeat(40), ['x'.repeat(31)])).toBe(`${'x'.repeat(29)} 2`);
  });

  it('draws every sheet of the demo: numbers as numbers, texts as texts, formulas as formulas', async () => {
    for (const demo of demoWorkbook.sheets) {
      const fake = fakeExcel({ name: 'Sheet1' });
      await excelPort(EXCEL).add(demo);
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
    await excelPort(EXCEL).add(plan({ cells: texts.map((value, i) => ({ at: `A${i + 1}`, role: 'text', value })) }));
    expect([...(fake.sheets[1]?.cells.values() ?? [])]).toEqual(texts.map(value => ({ value })));
  });

  it('gives widths, formats, states, limits, print and frozen rows', async () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    await excelPort(EXCEL).add(
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
        'A1 column.format.columnWidth = 108.75',
        'B2 numberFormat = [["0.00"]]',
        'B2 format.fill.color = #E9F0FC',
        'A1:B1 merged false',
        'A1:B1 format.rowHeight = 57',
        'B3:B4 conditionalFormats.add(cellValue).cellValue.rule = {"formula1":"=\\"fail\\"","operator":"equalTo"}',
        'B2:B9 dataValidation.rule = {"custom":{"formula":"=ISNUMBER(B2)*(B2>0)*(B2<=5)"}}',
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
    await expect(excelPort(EXCEL).add(plan())).rejects.toThrow('protected');
    expect(fake.sheets.map(({ name }) => name)).toEqual(['Sheet1']);
  });

  it('places the pictures of a plan', async () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    await excelPort(EXCEL).add(plan({ pictures: [{ at: 'B2', png: new Uint8Array([1]), widthPx: 100, heightPx: 100, words: 'w' }] }));
    expect(fake.sheets[1]?.pictures).toHaveLength(1);
  });
});

describe('an Excel that is too old', () => {
  it('is told so in a sentence', () => {
    const fake = fakeExcel({ name: 'Sheet1' });
    fake.isSupported = (set, version) => set === 'ExcelApi' && version !== NEEDED;
    expect(() => excelPort(EXCEL)).toThrow(/lacks what the pane works with \(ExcelApi 1\.10\)/);
  });
});
