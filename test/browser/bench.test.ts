import { afterAll, beforeAll, expect, test } from 'vitest';
import type { SheetPlan } from '../../src/sheet/plan';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;
const sheetName = 'Trial';

/** A sheet of the test's own, so that the demo may change. */
const trial: SheetPlan = {
  name: sheetName,
  widths: [24, 16, 10],
  cells: [
    { at: 'A1', value: 'Trial', role: 'title' },
    { at: 'A2', value: 'hole', role: 'label' },
    { at: 'B2', value: '0.167 in', role: 'input', note: 'measured on the part' },
    { at: 'A3', value: 'outside', role: 'label' },
    { at: 'B3', formula: '=ENCL.BOSS.OD(B2, 1.2)', role: 'result', format: '0.00', note: 'without draft' },
    { at: 'A4', value: 'limits', role: 'label' },
    { at: 'B4', formula: '=ENCL.LIMITS("1.6 ±10%")', role: 'result' },
    { at: 'E2', formula: '={"pass";"review";"fail";"not checked"}', role: 'result' },
  ],
  stateRanges: ['E2:E5'],
};

beforeAll(async () => {
  bench = await benchPage();
});

afterAll(async () => {
  await bench.close();
});

/** The value after the sheet has calculated. */
const eventually = (at: string, inSheet = sheetName) => expect.poll(async () => (await bench.cell(inSheet, at))?.value ?? null);
const panelShows = (id: string) => expect.poll(() => bench.text(id));

test('the grid is drawn', async () => {
  const start = performance.now();
  await bench.open();
  await expect.poll(async () => (await bench.colours()).size).toBeGreaterThan(20);
  console.log(`grid drawn after ${((performance.now() - start) / 1000).toFixed(1)} s`);
  await bench.picture('start');
});

test('the demo has its state words', async () => {
  await expect
    .poll(async () => {
      const words = (await bench.read('Variants')).flat().map(({ value }) => value);
      const count = (word: string) => words.filter(each => each === word).length;
      return count('pass') >= 1 && count('review') >= 1 && count('fail') >= 2;
    })
    .toBe(true);
});

test('no cell of the demo is an error without a message', async () => {
  for (const name of await bench.page.evaluate(() => window.bosswright?.port.sheetNames() ?? [])) {
    const silent = (await bench.read(name))
      .flat()
      .filter(({ value, message }) => typeof value === 'string' && /^#[A-Z/0]+[!?]?$/.test(value) && message === undefined);
    expect(silent, name).toEqual([]);
  }
});

test('a demo that nobody changed is not kept', async () => {
  await bench.page.waitForTimeout(1_000);
  expect(await bench.page.evaluate(() => localStorage.length)).toBe(0);
});

test('a sheet is added, under a free name', async () => {
  expect(await bench.add({ ...trial, cells: [] })).toBe(sheetName);
  expect(await bench.add({ ...trial, cells: [] })).toBe(`${sheetName} 2`);
  await bench.page.keyboard.press('Control+z');
  await bench.page.keyboard.press('Control+z');
  await expect.poll(() => bench.page.evaluate(() => window.bosswright?.port.sheetNames())).not.toContain(sheetName);
  expect(await bench.add(trial)).toBe(sheetName);
  await eventually('B3').toBeCloseTo(6.6418, 9);
});

test('state words have their colours, in a spilled table too', async () => {
  await eventually('E5').toBe('not checked');
  const fills = ['#cfe8ea', '#ffe6a3', '#b23a1e', '#e4e5e9'];
  await expect
    .poll(async () => {
      const drawn = await bench.colours();
      return fills.filter(fill => !drawn.has(fill));
    })
    .toEqual([]);
});

test('the cells of a table look like the cell of its formula', async () => {
  await eventually('C4').toBeCloseTo(1.44, 9);
  await expect.poll(() => bench.colours({ leftPx: 330, row: 2 })).toEqual(new Set(['#f1f3f2']));
  expect(await bench.colours({ leftPx: 330, row: 3 })).not.toContain('#f1f3f2');
});

test('a typed formula is calculated', async () => {
  await bench.goTo(sheetName, 'B8');
  await bench.type('=ENCL.BOSS.OD("0.167 in + 0.25 mm", 1.2)');
  await eventually('B8').toBeCloseTo(6.8918, 9);
  expect((await bench.cell(sheetName, 'B8'))?.formula).toBe('=ENCL.BOSS.OD("0.167 in + 0.25 mm", 1.2)');
  await bench.page.keyboard.press('ArrowUp');
  await bench.tab('Cell');
  await panelShows('bw-view-Cell').toContain('Outside diameter of a boss');
  await expect.poll(() => bench.page.getByLabel('hole (mm)').inputValue()).toBe('0.167 in + 0.25 mm');
});

test('while a call is typed the sheet helps with its arguments', async () => {
  await bench.goTo(sheetName, 'B9');
  await bench.page.keyboard.type('=encl.boss.o', { delay: 30 });
  await bench.page.getByText('ENCL.BOSS.OD', { exact: true }).first().waitFor();
  await bench.page.keyboard.press('Tab');
  await bench.page.waitForTimeout(300);
  await bench.page.keyboard.type('3,', { delay: 30 });
  await bench.picture('arguments');
  await bench.page.getByText('[distance]').first().waitFor();
  await bench.page.keyboard.press('Escape');
});

test('the panel says why a call is refused', async () => {
  await bench.goTo(sheetName, 'B10');
  await bench.type('=ENCL.BOSS.OD("three", 1.2)');
  await eventually('B10').toBe('#VALUE!');
  await bench.page.keyboard.press('ArrowUp');
  await panelShows('message').toContain('hole');
  expect(await bench.text('spoken')).toContain(await bench.text('message'));
  await bench.picture('refused');
});

test('a wrong number of arguments is told', async () => {
  await bench.goTo(sheetName, 'B11');
  await bench.type('=ENCL.BOSS.OD(3)');
  await bench.page.keyboard.press('ArrowUp');
  await panelShows('message').toContain('takes 2 to 4 arguments (hole, wall, distance, draft), 1 given');
});

test('an error handed in comes out as that error, with the argument named', async () => {
  await bench.goTo(sheetName, 'B12');
  await bench.type('=ENCL.BOSS.OD(3, 1/0)');
  await eventually('B12').toBe('#DIV/0!');
  await bench.page.keyboard.press('ArrowUp');
  await panelShows('message').toContain('wall');
});

test('blank cells are zero, left-out arguments are left out, a range is not one value', async () => {
  await bench.goTo(sheetName, 'B13');
  await bench.type('=ENCL.BOSS.OD(3, 1.2, , 0)');
  await eventually('B13').toBeCloseTo(5.4, 9);
  await bench.type('=ENCL.BOSS.OD(3, 1.2, Z99, Z98)');
  await eventually('B14').toBeCloseTo(5.4, 9);
  await bench.type('=ENCL.BOSS.OD(3, Z99)');
  await eventually('B15').toBe('#VALUE!');
  await bench.type('=ENCL.BOSS.OD(B13:B14, 1.2)');
  await eventually('B16').toBe('#VALUE!');
  expect((await bench.cell(sheetName, 'B16'))?.message).toContain('hole');
});

test('at the cell the mouse finds the message, and the note', async () => {
  await bench.goTo(sheetName, 'B10');
  await panelShows('message').toContain('hole');
  const atTheCell = (text: string) => bench.page.locator('[data-u-comp="cell-popup"]').getByText(text);
  await bench.hover({ leftPx: 250, row: 8 });
  await atTheCell(await bench.text('message')).waitFor();
  await bench.picture('box');
  await bench.hover({ leftPx: 250, row: 0 });
  await atTheCell('measured on the part').waitFor();
});

test('a note and the answer of its cell do not disturb each other', async () => {
  await bench.goTo(sheetName, 'B3');
  await panelShows('note').toBe('without draft');
  await bench.goTo(sheetName, 'B2');
  await panelShows('note').toBe('measured on the part');
  await bench.type('three');
  await eventually('B3').toBe('#VALUE!');
  await bench.goTo(sheetName, 'B3');
  await panelShows('note').toBe('without draft');
  await panelShows('message').toContain('hole');
  await bench.goTo(sheetName, 'B2');
  await bench.type('0.167 in');
  await eventually('B3').toBeCloseTo(6.6418, 9);
  expect((await bench.cell(sheetName, 'B3'))?.message).toBeUndefined();
});

test('values are copied with the cells of a table, unrounded', async () => {
  await bench.goTo(sheetName, 'B4');
  await panelShows('copy').toBe('Copy value');
  await bench.page.keyboard.press('Shift+ArrowRight');
  await bench.page.keyboard.press('Shift+ArrowRight');
  await panelShows('copy').toBe('Copy values of B4:D4');
  await bench.tab('Cell');
  await bench.page.locator('#copy').click();
  await panelShows('copied').toBe('Copied');
  const numbers = (await bench.page.evaluate(() => navigator.clipboard.readText())).split('\t').map(Number);
  [1.6, 1.44, 1.76].forEach((wanted, index) => expect(numbers[index]).toBeCloseTo(wanted, 9));
  await bench.goTo(sheetName, 'C4');
  await panelShows('origin').toContain('B4');
  await bench.goTo(sheetName, 'B24');
  await bench.page.keyboard.press('Control+v');
  await eventually('D24').toBeCloseTo(1.76, 9);
  await eventually('B24').toBeCloseTo(1.6, 9);
  expect((await bench.cell(sheetName, 'B24'))?.formula).toBeUndefined();
  await bench.page.keyboard.press('Delete');
  await eventually('D24').toBeNull();
});

test('undo takes an entry back', async () => {
  await bench.goTo(sheetName, 'B20');
  await bench.type('7');
  await eventually('B20').toBe(7);
  await bench.page.keyboard.press('Control+z');
  await eventually('B20').toBeNull();
});

test('what is typed in the formula bar arrives', async () => {
  await bench.goTo(sheetName, 'B8');
  const bar = await bench.page.locator('[data-u-comp="formula-bar"]').boundingBox();
  if (bar === null) throw new Error('there is no formula bar');
  await bench.page.mouse.click(bar.x + 700, bar.y + bar.height / 2);
  await bench.page.waitForTimeout(400);
  await bench.page.keyboard.press('End');
  await bench.type(' + 1');
  await eventually('B8').toBeCloseTo(7.8918, 9);
});

test('F6 reaches every part of the page', async () => {
  await bench.goTo(sheetName, 'B20');
  const focusIn = (selector: string) =>
    bench.page.evaluate(part => document.querySelector(part)?.contains(document.activeElement), selector);
  await bench.page.keyboard.press('F6');
  expect(await focusIn('#panel')).toBe(true);
  await bench.page.keyboard.press('F6');
  expect(await focusIn('body > header')).toBe(true);
  await bench.page.keyboard.press('F6');
  expect(await focusIn('#sheet')).toBe(true);
  await bench.type('8');
  await eventually('B20').toBe(8);
});

test('a reload brings the workbook back, calculated', async () => {
  await panelShows('kept').toMatch(/^Saved in this browser \d\d:\d\d$/);
  await bench.goTo(sheetName, 'B21');
  await bench.page.keyboard.type('9');
  await bench.page.keyboard.press('Enter');
  await bench.open();
  await eventually('B8').toBeCloseTo(7.8918, 9);
  await eventually('D4').toBeCloseTo(1.76, 9);
  await eventually('B21').toBe(9);
});

test('twenty thousand cells of a plan are kept', async () => {
  const letters = [...'ABCDEFGHIJ'];
  const cells = Array.from({ length: 2_000 }, (_row, row) =>
    letters.map(letter => ({ at: `${letter}${row + 1}`, value: 'ISO 7049', role: 'input' as const })),
  ).flat();
  const name = await bench.add({ name: 'Large', widths: [], cells });
  await panelShows('kept').toMatch(/^Saved in this browser/);
  await bench.open();
  expect((await bench.cell(name, 'J2000'))?.value).toBe('ISO 7049');
  await bench.goTo(name, 'A1');
  await expect.poll(() => bench.colours()).toContain('#e9f0fc');
});

test('ten thousand cells are recalculated', async () => {
  const count = 10_000;
  const cells = Array.from({ length: count / 10 }, (_row, row) =>
    [...'BCDEFGHIJK'].map(letter => ({ at: `${letter}${row + 1}`, formula: '=ENCL.BOSS.OD($A$1, 1.2)', role: 'text' as const })),
  ).flat();
  const name = await bench.add({ name: 'Load', widths: [10], cells: [{ at: 'A1', value: 3, role: 'input' }, ...cells] });
  await eventually('K1000', name).toBeCloseTo(5.4, 9);
  await bench.goTo(name, 'A1');
  await bench.page.keyboard.type('4');
  const start = performance.now();
  await bench.page.keyboard.press('Enter');
  await expect.poll(async () => (await bench.cell(name, 'K1000'))?.value, { interval: 100 }).toBeCloseTo(6.4, 9);
  const seconds = (performance.now() - start) / 1000;
  console.log(`${count} cells recalculated in ${seconds.toFixed(2)} s`);
  expect((await bench.read(name)).flat().filter(({ value }) => typeof value === 'number' && Math.abs(value - 6.4) < 1e-9)).toHaveLength(
    count,
  );
});

test('a change that the browser does not keep is told', async () => {
  await bench.page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('the storage is full', 'QuotaExceededError');
    };
  });
  await bench.goTo(sheetName, 'B22');
  await bench.type('10');
  await panelShows('kept').toBe('Not kept in this browser (QuotaExceededError): use Save as .xlsx, or discard another workbook');
  await bench.open();
});

test.each(['{ not JSON', '{"format":1,"demo":"x","workbook":{"sheetOrder":["a"],"sheets":{}}}', '{"format":0}'])(
  'a kept workbook that cannot be read is put aside: %s',
  async text => {
    await bench.page.evaluate(kept => {
      localStorage.removeItem('bosswright.workbook.unreadable');
      localStorage.setItem('bosswright.workbook', kept);
    }, text);
    await bench.open();
    await panelShows('kept').toContain('put aside');
    expect(
      await bench.page.evaluate(() => [
        localStorage.getItem('bosswright.workbook'),
        localStorage.getItem('bosswright.workbook.unreadable'),
      ]),
    ).toEqual([null, text]);
    expect(await bench.page.evaluate(() => window.bosswright?.port.sheetNames())).toContain('Variants');
  },
);

test('a browser that keeps nothing shows the demo', async () => {
  const other = await bench.page.context().newPage();
  await other.addInitScript(() =>
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('refused', 'SecurityError');
      },
    }),
  );
  await other.goto(`${bench.origin}/bench.html`);
  await other.getByText('This browser keeps nothing for this page.').waitFor();
  await other.waitForFunction(() => window.bosswright !== undefined);
  await other.close();
});

test('on a narrow page the panel opens by its button', async () => {
  await bench.page.setViewportSize({ width: 700, height: 900 });
  expect(await bench.page.locator('#panel').isVisible()).toBe(false);
  await bench.page.getByRole('button', { name: 'Figure and details' }).press('Enter');
  expect(await bench.page.locator('#panel').isVisible()).toBe(true);
  await bench.picture('narrow');
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
