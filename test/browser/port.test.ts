// The sheet port of the bench, as the pane uses it.
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import type { Selection } from '../../src/sheet/port';
import { benchPage, type BenchPage } from './bench-page';

declare global {
  interface Window {
    heard: Selection[];
    stopHearing: () => void;
  }
}

let bench: BenchPage;
let sheet: string;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
  sheet = await bench.add({ name: 'Port', widths: [], cells: [{ at: 'A1', role: 'input', value: 3, note: 'kept' }] });
});

afterAll(async () => {
  await bench.close();
});

const names = () => bench.page.evaluate(() => window.bosswright?.port.sheetNames());
const selection = () => bench.page.evaluate(() => window.bosswright?.port.selection());

function write(at: string, content: Cell): Promise<unknown> {
  return bench.page.evaluate(([sheetName, at, content]) => window.bosswright?.port.write([{ sheetName, at, content }]), [
    sheet,
    at,
    content,
  ] as const);
}

/** The message of the refusal. */
function refused(action: 'write' | 'goTo' | 'remove', sheetName: string): Promise<string> {
  return bench.page.evaluate(
    async ([action, sheetName]) => {
      try {
        const port = window.bosswright?.port;
        await (action === 'write'
          ? port?.write([{ sheetName, at: 'A1', content: 1 }])
          : action === 'goTo'
            ? port?.goTo(sheetName, 'A1')
            : port?.remove(sheetName));
        return '';
      } catch (thrown) {
        return String(thrown);
      }
    },
    [action, sheetName] as const,
  );
}

test('a formula is written as typed, and calculated when the promise is kept', async () => {
  await write('B1', '=ENCL.BOSS.OD(A1, 1.2)');
  const cell = await bench.cell(sheet, 'B1');
  expect(cell?.formula).toBe('=ENCL.BOSS.OD(A1, 1.2)');
  expect(cell?.value).toBeCloseTo(5.4, 9);
});

test('a value takes the place of a formula, and dependents follow', async () => {
  await write('C1', '=B1*2');
  await write('B1', 4);
  expect(await bench.cell(sheet, 'B1')).toEqual({ value: 4 });
  expect((await bench.cell(sheet, 'C1'))?.value).toBe(8);
});

test.each<[content: Cell, value: Cell | null]>([
  ['0.167 in', '0.167 in'],
  ['M3', 'M3'],
  [2.5, 2.5],
  [true, true],
  [false, false],
  ['', null],
])('%o is written as it is', async (content, value) => {
  await write('D1', content);
  expect((await bench.cell(sheet, 'D1'))?.value ?? null).toBe(value);
  expect((await bench.cell(sheet, 'D1'))?.formula).toBeUndefined();
});

test('a note stays with the cell, and undo takes the entry back', async () => {
  await write('A1', 5);
  const first = () => bench.page.evaluate(async name => (await window.bosswright?.port.read(name))?.[0]?.[0], sheet);
  expect(await first()).toEqual({ value: 5, note: 'kept' });
  await bench.goTo(sheet, 'A1');
  await bench.page.keyboard.press('Control+z');
  await expect.poll(first).toEqual({ value: 3, note: 'kept' });
});

test('going to a cell shows its sheet and brings the cell into sight', async () => {
  await bench.page.evaluate(() => window.bosswright?.port.goTo('Joint', 'B60'));
  expect(await selection()).toEqual({ sheetName: 'Joint', at: 'B60' });
  await bench.picture('gone-to');
});

test('selections and changes of the cell are heard until that is stopped', async () => {
  await bench.page.evaluate(name => {
    window.heard = [];
    window.stopHearing =
      window.bosswright?.port.watch({ selected: selection => window.heard.push(selection), changed() {}, calculated() {}, gone() {} }) ??
      (() => {});
    return window.bosswright?.port.goTo(name, 'A1');
  }, sheet);
  const heard = () => bench.page.evaluate(() => window.heard);
  await expect.poll(async () => (await heard()).at(-1)).toEqual({ sheetName: sheet, at: 'A1' });
  await bench.goTo(sheet, 'B3');
  await expect.poll(async () => (await heard()).at(-1)).toEqual({ sheetName: sheet, at: 'B3' });
  const before = (await heard()).length;
  await write('B3', 1);
  expect((await heard()).length).toBeGreaterThan(before);
  await bench.page.evaluate(() => window.stopHearing());
  const after = (await heard()).length;
  await bench.goTo(sheet, 'C3');
  await write('C3', 1);
  expect(await heard()).toHaveLength(after);
});

test('a sheet is removed; the last one stays', async () => {
  const other = await bench.add({ name: 'Other', widths: [], cells: [] });
  await bench.page.evaluate(name => window.bosswright?.port.remove(name), other);
  expect(await names()).not.toContain(other);
  for (const name of (await names()) ?? [])
    if (name !== sheet) await bench.page.evaluate(name => window.bosswright?.port.remove(name), name);
  expect(await names()).toEqual([sheet]);
  expect(await refused('remove', sheet)).toContain('at least one sheet');
});

test.each(['write', 'goTo', 'remove'] as const)('%s refuses a sheet that is not there', async action => {
  expect(await refused(action, 'Nowhere')).toContain('there is no sheet "Nowhere"');
});

test('nothing went wrong on the page, and a violation of its policy would be seen', async () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
  await bench.page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = "document.title = 'planted'";
    document.body.append(script);
  });
  await expect.poll(() => bench.faults.join()).toContain('Content Security Policy');
  expect(await bench.page.title()).not.toBe('planted');
});
