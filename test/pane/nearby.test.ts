// What a selection costs in a large workbook, in exchanges with Excel and in script, and that an edit is seen.
import { afterEach, describe, expect, it } from 'vitest';
import { excelPort } from '../../src/hosts/excel/excel-port';
import { EXCEL } from '../../src/words/excel';
import type { AtSelection } from '../../src/pane/followed';
import { Nearby } from '../../src/pane/nearby';
import { address, cellPosition } from '../../src/sheet/addresses';
import type { Selection } from '../../src/sheet/port';
import { fakeExcel, type FakeExcel, type FakeSheet } from '../hosts/excel-fake';

/** As in the benchmark of the core: additions, each of which waits for the one before and for a tangent. */
function yardstick(): number {
  let total = 0.5;
  for (let i = 0; i < 1000; i++) total += 0.3 + Math.tan(total * 1e-3) * 1e-3;
  return total;
}

/** Milliseconds of one, at its fastest. */
function stickMs(): number {
  let best = Infinity;
  for (let round = 0; round < 9; round++) {
    const from = performance.now();
    for (let i = 0; i < 200; i++) yardstick();
    best = Math.min(best, (performance.now() - from) / 200);
  }
  return best;
}

const MOST_STICKS = 250;

type Made = { readonly value: string | number; readonly formula?: string };
const sheet = (name: string, rows: number, columns: number, of: (row: number, column: number) => Made | undefined): FakeSheet => {
  const cells: FakeSheet['cells'] = new Map();
  // what was written comes before what is made up
  const own = cells.get.bind(cells);
  cells.get = at => {
    const { row, column } = cellPosition(at);
    return own(at) ?? (row < rows && column < columns ? of(row, column) : undefined);
  };
  return {
    name,
    cells,
    pictures: [],
    looks: new Map(),
    rules: new Map(),
    conditions: new Map(),
    spilled: new Map(),
    used: { top: 0, left: 0, bottom: rows - 1, right: columns - 1 },
  };
};

const NAMES = ['variant', 'screw', 'head', 'wall', 'board plane', 'boss height', 'hole', 'pilot', 'boss OD'];
const GIVEN = ['ST2.9', 'ISO 7049', 2.5, 5.5, 14, 3.4, 2.4, 6.4];
const INPUT = (row: number, column: number): Made =>
  row === 0 ? { value: NAMES[column] ?? '' } : { value: column === 0 ? `variant ${row}` : (GIVEN[column - 1] ?? '') };
const OUTPUTS = ['boss wall', 'engagement min', 'state', 'reason', 'sink ratio'];

const LARGE: Readonly<Record<string, () => FakeSheet>> = {
  'plain data, 20,000 × 50, a fifth of it formulas': () =>
    sheet('Large', 20_000, 50, (row, column) =>
      column % 5 === 4
        ? { formula: `=A${row + 1}*2+SUM(B${row + 1}:D${row + 1})`, value: row }
        : { value: column % 7 === 3 ? `part ${row}` : row * 50 + column },
    ),
  '2,000 × 50': () => sheet('Large', 2000, 50, (row, column) => ({ value: row + column })),
  '2,000 variants with five JOINT.VALUE each': () =>
    sheet('Large', 2001, 14, (row, column) => {
      if (column < 9) return INPUT(row, column);
      const output = OUTPUTS[column - 9] ?? '';
      return row === 0 ? { value: output } : { formula: `=ENCL.JOINT.VALUE($A$1:$I$1,A${row + 1}:I${row + 1},"${output}")`, value: 1 };
    }),
  '2,000 variants with a table beside them': () =>
    sheet('Large', 2001, 18, (row, column) => {
      if (column < 9) return INPUT(row, column);
      if (column < 12) return { value: 'between' };
      return row === 0 && column === 12
        ? { formula: '=ENCL.JOINT.TABLE(A1:I2001,{"boss wall","engagement min","state","reason","sink ratio"})', value: 'boss wall (mm)' }
        : { value: 1 };
    }),
};

afterEach(() => {
  for (const name of ['Excel', 'Office']) Reflect.deleteProperty(globalThis, name);
});

interface Followed {
  readonly fake: FakeExcel;
  readonly nearby: Nearby;
  readonly told: AtSelection[];
  select(at: string): Promise<AtSelection>;
}

const settled = (ms = 0) => new Promise(resolve => setTimeout(resolve, ms));

function followed(...sheets: readonly Partial<FakeSheet>[]): Followed {
  const fake = fakeExcel(...sheets);
  const told: AtSelection[] = [];
  const nearby = new Nearby(
    excelPort(EXCEL),
    here => told.push(here),
    thrown => {
      throw thrown;
    },
  );
  return {
    fake,
    nearby,
    told,
    async select(at) {
      nearby.select({ sheetName: sheets[0]?.name ?? '', at });
      const before = told.length;
      for (let tries = 0; tries < 200 && told.length === before; tries++) await settled();
      return told.at(-1) as AtSelection;
    },
  };
}

const labelOf = ({ found }: AtSelection): string => (found?.is === 'joint' ? found.joint.label : String(found));
const rowOf = ({ found }: AtSelection): string =>
  found?.is === 'joint' ? `${found.joint.place?.sheetName}!${found.joint.place?.at}` : String(found);

describe.each(Object.keys(LARGE))('a selection on %s', name => {
  it('costs at most one exchange and little script', async () => {
    const { fake, nearby, select } = followed((LARGE[name] as () => FakeSheet)());
    // a first pass, so that what is measured is not the compiler
    for (const row of [50, 300, 500]) await select(`C${row}`);
    const stick = stickMs();
    const costs: number[] = [];
    for (const row of [900, 1100, 1300, 1500, 1700, 1900, 700]) {
      // the cells are here: only the script is measured
      const around = await excelPort(EXCEL).around({ sheetName: 'Large', at: `C${row}` });
      const syncs = fake.syncs;
      let ms = 0;
      const answered = new Promise<void>(resolve => {
        const fresh = new Nearby(
          { ...excelPort(EXCEL), around: async () => around },
          () => resolve(),
          () => resolve(),
        );
        fresh.select({ sheetName: 'Large', at: `C${row}` });
        const from = process.cpuUsage();
        void settled().then(() => {
          const { user, system } = process.cpuUsage(from);
          ms = (user + system) / 1000;
        });
      });
      await answered;
      await settled();
      costs.push(ms / stick);
      expect(fake.syncs - syncs).toBe(0);
    }
    // at its fastest, as the yardstick is
    const cost = Math.min(...costs);
    console.log(`${name}: ${cost.toFixed(0)} yardsticks of ${(stick * 1000).toFixed(1)} µs`);
    expect(cost).toBeLessThan(MOST_STICKS);
    const before = fake.syncs;
    await select('C1000');
    expect(fake.syncs - before).toBeLessThanOrEqual(1);
    expect(Math.max(...fake.readings)).toBeLessThan(8000);
    // a step further asks for nothing
    for (const at of ['C1001', 'D1001', 'D1005']) await select(at);
    expect(fake.syncs - before).toBeLessThanOrEqual(1);
    nearby.stop();
  });
});

describe('the joint of a long table', () => {
  it('is that of the row, whoever reads it', async () => {
    for (const name of ['2,000 variants with five JOINT.VALUE each', '2,000 variants with a table beside them']) {
      const { select } = followed((LARGE[name] as () => FakeSheet)());
      for (const at of ['D1500', 'A1500', 'N1500']) {
        const here = await select(at);
        expect(rowOf(here), `${name} ${at}`).toBe('Large!A1500');
        expect(here.found?.is === 'joint' && here.found.joint.variant.value('wall')).toBe(2.5);
      }
    }
  });

  it('is read from another sheet by its names and its row alone', async () => {
    const long = sheet('Long', 2001, 9, INPUT);
    const out = sheet('Out', 2001, 5, (row, column) =>
      row + column === 0 ? { formula: '=ENCL.JOINT.TABLE(Long!A1:I2001,{"boss wall","state"})', value: 'boss wall (mm)' } : { value: 1 },
    );
    const { fake, select } = followed(out, long, { name: 'Never', cells: new Map([['A1', { value: 1 }]]) });
    expect(labelOf(await select('A1800'))).toBe('variant 1799');
    expect(fake.readings.reduce((sum, cells) => sum + cells, 0)).toBeLessThan(4000);
  });

  it('is none on a sheet of numbers, and the size of that is told', async () => {
    const { select } = followed((LARGE['2,000 × 50'] as () => FakeSheet)());
    expect(await select('C1000')).toMatchObject({ found: null, largeSheet: 100_000 });
  });
});

describe('reading', () => {
  const small = (): Partial<FakeSheet> => ({
    name: 'Small',
    cells: new Map([NAMES, ['a', ...GIVEN]].flatMap((line, r) => line.map((value, c): [string, Made] => [address(r, c), { value }]))),
  });

  it('is done once at a time, and the newest selection wins', async () => {
    const { fake, nearby, told } = followed((LARGE['2,000 × 50'] as () => FakeSheet)());
    // long beside the moves, on a slow machine too
    fake.waitMs = 200;
    const at = (row: number): Selection => ({ sheetName: 'Large', at: `C${row}` });
    for (let row = 100; row < 2000; row += 100) {
      nearby.select(at(row));
      await settled(5);
    }
    await settled(700);
    expect(fake.mostAtOnce).toBe(1);
    expect(fake.syncs).toBeLessThan(10);
    expect(told.length).toBeGreaterThan(0);
  });

  it('begins anew where an edit met what was read, and not where it did not', async () => {
    const { fake, nearby, select, told } = followed(small(), { name: 'Other', cells: new Map() });
    expect(labelOf(await select('B2'))).toBe('a');
    const before = fake.syncs;
    nearby.changed('Other', { top: 0, left: 0, bottom: 0, right: 0 });
    nearby.changed('Small', { top: 500, left: 0, bottom: 500, right: 0 });
    nearby.calculated('Other');
    await settled(300);
    expect(fake.syncs).toBe(before);
    fake.sheets[0]?.cells.set('D2', { value: 3 });
    nearby.changed('Small', { top: 1, left: 3, bottom: 1, right: 3 });
    await settled(200);
    expect(fake.syncs).toBe(before + 1);
    const last = told.at(-1);
    expect(last?.found?.is === 'joint' && last.found.joint.variant.value('wall')).toBe(3);
  });

  it('follows what a foreign formula gives when the sheet has come to rest', async () => {
    const { fake, nearby, select, told } = followed(small());
    fake.sheets[0]?.cells.set('D2', { formula: '=LET(x,1,x*2)', value: 2 });
    await select('B2');
    const before = fake.syncs;
    fake.sheets[0]?.cells.set('D2', { formula: '=LET(x,1,x*2)', value: 3.5 });
    for (let i = 0; i < 5; i++) nearby.calculated('Small');
    await settled(1000);
    expect(fake.syncs).toBe(before + 1);
    const last = told.at(-1);
    expect(last?.found?.is === 'joint' && last.found.joint.variant.value('wall')).toBe(3.5);
  });

  it('says that cells are waited for, until they have come to rest: on another sheet too', async () => {
    const { fake, nearby, select, told } = followed(small(), { name: 'Other', cells: new Map() });
    fake.calculation = { mode: 'automatic', state: 'calculating' };
    expect((await select('B2')).calculation).toBe('pending');
    fake.calculation.state = 'done';
    nearby.calculated('Other');
    await settled(1000);
    expect(told.at(-1)?.calculation).toBe('settled');
  });

  it('leaves nothing in sight of a sheet that is gone', async () => {
    const { nearby, select, told } = followed(small(), { name: 'Other', cells: new Map([['A1', { value: 1 }]]) });
    await select('B2');
    nearby.select({ sheetName: 'Other', at: 'A1' });
    await settled(200);
    expect(told.at(-1)?.found?.is).toBe('joint');
    nearby.gone('Small');
    await settled(200);
    expect(told.at(-1)?.found).toBe(null);
  });

  it('ends when it is stopped', async () => {
    const { fake, nearby } = followed(small());
    nearby.select({ sheetName: 'Small', at: 'B2' });
    nearby.stop();
    await settled(200);
    expect(fake.syncs).toBe(0);
  });
});
