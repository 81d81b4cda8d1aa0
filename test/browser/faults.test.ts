// What goes wrong around the bench: a page that is left too early, a store that is full or refuses, large and hostile files.
// Nothing is lost without a word.
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import type { PlanCell, WorkbookPlan } from '../../src/sheet/plan';
import { benchPage, type BenchPage } from './bench-page';

let bench: BenchPage;

beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});

afterAll(async () => {
  await bench.close();
});

const names = () => bench.page.evaluate(() => window.bosswright?.port.sheetNames());
const valueAt = async (sheetName: string, at: string) => (await bench.cell(sheetName, at))?.value;
const dialog = () => bench.page.locator('dialog[open]:not(#busy)');

/** Reloads, answers the browser's question if it asks, and tells whether it did. */
async function leftAfterAsking(answer: 'leave' | 'stay'): Promise<boolean> {
  let asked = false;
  const reply = bench.page
    .waitForEvent('dialog', { timeout: 3_000 })
    .then(async question => {
      asked = question.type() === 'beforeunload';
      await (answer === 'leave' ? question.accept() : question.dismiss());
    })
    .catch(() => undefined);
  // A reload that is called off never ends.
  await bench.page.evaluate(() => void setTimeout(() => location.reload()));
  await reply;
  if (answer === 'leave') await bench.open();
  return asked;
}

async function choose(name: string, bytes: Uint8Array): Promise<void> {
  const [chooser] = await Promise.all([bench.page.waitForEvent('filechooser'), bench.page.locator('#open').press('Enter')]);
  await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
  await dialog().waitFor({ timeout: 120_000 });
}

const isKept = () => expect.poll(() => bench.text('kept'), { timeout: 60_000 }).toMatch(/^Saved in this browser \d\d:\d\d$/);

test('a reload in the middle of an entry asks first, and the entry is still there', async () => {
  await bench.goTo('Variants', 'E6');
  await bench.page.keyboard.type('19');
  expect(await leftAfterAsking('stay')).toBe(true);
  await bench.page.keyboard.press('Enter');
  await expect.poll(() => valueAt('Variants', 'E6')).toBe(19);
});

test('a reload just after an entry asks nothing and keeps it', async () => {
  await bench.goTo('Variants', 'E6');
  await bench.page.keyboard.type('16');
  await bench.page.keyboard.press('Enter');
  await expect.poll(() => valueAt('Variants', 'E6'), { interval: 5 }).toBe(16);
  expect(await leftAfterAsking('leave')).toBe(false);
  expect(await valueAt('Variants', 'E6')).toBe(16);
});

test('a full store is told, the page asks before it is left, and keeps again once there is room', async () => {
  await bench.page.evaluate(() => {
    const room = Storage.prototype.setItem;
    Object.assign(window, { giveRoom: () => (Storage.prototype.setItem = room) });
    Storage.prototype.setItem = () => {
      throw new DOMException('the storage is full', 'QuotaExceededError');
    };
  });
  await bench.goTo('Variants', 'E6');
  await bench.type('13');
  await expect
    .poll(() => bench.text('kept'))
    .toBe('Not kept in this browser (QuotaExceededError): use Save as .xlsx, or discard another workbook');
  expect(await leftAfterAsking('stay')).toBe(true);
  expect(await valueAt('Variants', 'E6')).toBe(13);
  await bench.page.evaluate(() => (window as unknown as { giveRoom(): void }).giveRoom());
  await bench.goTo('Variants', 'E7');
  await bench.type('19');
  await isKept();
  expect(await leftAfterAsking('leave')).toBe(false);
  expect([await valueAt('Variants', 'E6'), await valueAt('Variants', 'E7')]).toEqual([13, 19]);
});

test('a browser that refuses every store starts with the demo, and says of the first change that it is not kept', async () => {
  const other = await bench.page.context().newPage();
  await other.addInitScript(() => {
    const refuse = () => {
      throw new DOMException('refused', 'SecurityError');
    };
    for (const name of ['localStorage', 'sessionStorage', 'indexedDB']) Object.defineProperty(window, name, { get: refuse });
  });
  await other.goto(`${bench.origin}/bench.html`);
  await other.getByText('This browser keeps nothing for this page.').waitFor();
  await other.waitForFunction(() => window.bosswright !== undefined);
  await other.evaluate(() => window.bosswright?.port.write([{ sheetName: 'Variants', at: 'E6', content: 19 }]));
  await other.getByText('Not kept in this browser (SecurityError): use Save as .xlsx').waitFor();
  await other.close();
});

const LETTERS = [...'ABC'];
const ROWS = 2_000;
const large: WorkbookPlan = {
  name: 'Large',
  sheets: Array.from({ length: 5 }, (_sheet, sheet) => ({
    name: `Sheet ${sheet + 1}`,
    widths: [],
    cells: [
      ...Array.from({ length: ROWS }, (_row, row) =>
        LETTERS.map((letter, column): PlanCell => ({ at: `${letter}${row + 1}`, role: 'text', value: sheet + row + column / 4 })),
      ).flat(),
      { at: 'E1', role: 'result' as const, formula: `=ENCL.BOSS.OD(A${ROWS}, 1.2)`, value: 0 },
    ],
  })),
};

test('five sheets of 2,000 rows are opened, worked out, kept and there again', { timeout: 240_000 }, async () => {
  await choose('large.xlsx', await writeWorkbook(large));
  expect(await dialog().textContent()).toContain('5 sheets with 5 formulas');
  await bench.page.getByRole('button', { name: 'Open', exact: true }).press('Enter');
  await expect.poll(names, { timeout: 60_000 }).toEqual(large.sheets.map(({ name }) => name));
  await expect.poll(() => valueAt('Sheet 5', 'E1'), { timeout: 60_000 }).toBeCloseTo(4 + ROWS - 1 + 2.4, 9);
  await isKept();
  expect(await leftAfterAsking('leave')).toBe(false);
  expect(await names()).toEqual(large.sheets.map(({ name }) => name));
  expect(await valueAt('Sheet 5', `C${ROWS}`)).toBe(4 + ROWS - 1 + 0.5);
  await bench.page.evaluate(at => window.bosswright?.port.write([{ sheetName: 'Sheet 5', at, content: 10 }]), `A${ROWS}`);
  await expect.poll(() => valueAt('Sheet 5', 'E1'), { timeout: 60_000 }).toBeCloseTo(12.4, 9);
});

const small = (): Promise<Uint8Array> =>
  writeWorkbook({ name: 'Small', sheets: [{ name: 'One', widths: [], cells: [{ at: 'A1', role: 'text', value: 1 }] }] });
async function withPart(name: string, text: string): Promise<Uint8Array> {
  return zipSync({ ...unzipSync(await small()), [name]: strToU8(text) });
}

test.each<[what: string, make: () => Promise<Uint8Array>, why: string]>([
  ['is empty', async () => new Uint8Array(), 'not a workbook file'],
  ['is cut off', async () => (await small()).slice(0, 700), 'not a workbook file'],
  ['has broken XML', () => withPart('xl/workbook.xml', '<workbook><sheets>'), '"xl/workbook.xml" is broken'],
  [
    'declares entities',
    () => withPart('xl/worksheets/sheet1.xml', '<!DOCTYPE a [<!ENTITY b "bb">]><worksheet/>'),
    'declares a document type',
  ],
  ['has a password', async () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600)]), 'protected by a password'],
  [
    'reaches a million rows',
    () =>
      withPart(
        'xl/worksheets/sheet1.xml',
        '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1048576"><c r="XFD1048576"><v>1</v></c></row></sheetData></worksheet>',
      ),
    'reach over more than 4000000 cells',
  ],
])('a file that %s is refused with the reason, and the sheets stay', async (_what, make, why) => {
  const before = await names();
  await choose('hostile.xlsx', await make());
  expect(await dialog().textContent()).toContain('hostile.xlsx is not opened');
  expect(await dialog().textContent()).toContain(why);
  await bench.page.keyboard.press('Escape');
  expect(await names()).toEqual(before);
});

test('a file that leads elsewhere is opened only after it was told what is not read', async () => {
  const rel = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const parts = unzipSync(await small());
  const links = strFromU8(parts['xl/_rels/workbook.xml.rels'] ?? new Uint8Array()).replace(
    '</Relationships>',
    `<Relationship Id="rId99" Type="${rel}/externalLink" Target="externalLinks/externalLink1.xml"/></Relationships>`,
  );
  await choose(
    'links.xlsx',
    zipSync({
      ...parts,
      'xl/_rels/workbook.xml.rels': strToU8(links),
      'xl/externalLinks/externalLink1.xml': strToU8(
        `<externalLink xmlns:r="${rel}"><externalBook r:id="rId1"><sheetNames><sheetName ` +
          'val="S"/></sheetNames></externalBook></externalLink>',
      ),
      'xl/externalLinks/_rels/externalLink1.xml.rels': strToU8(
        `<Relationships><Relationship Id="rId1" Type="${rel}/externalLinkPath" ` +
          'Target="https://elsewhere.example/other.xlsx" TargetMode="External"/></Relationships>',
      ),
      'xl/connections.xml': strToU8('<connections/>'),
    }),
  );
  expect(await dialog().textContent()).toContain(
    'Not read, because it leads out of the file: https://elsewhere.example/other.xlsx, xl/connections.xml.',
  );
  await bench.page.getByRole('button', { name: 'Open', exact: true }).press('Enter');
  await expect.poll(names).toEqual(['One']);
});

test('nothing was asked of another origin, and nothing went wrong on the page', () => {
  expect(bench.foreign).toEqual([]);
  expect(bench.faults).toEqual([]);
});
