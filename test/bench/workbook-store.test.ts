// What a browser keeps of the workbook: forms, damage, copies that were put aside, other tabs. On plain Node with a store in memory.
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { readStored } from '../../src/bench/stored-format';
import { discard, isOfAnotherTab, keep, putAside, readKept, setAside, takeOver } from '../../src/bench/workbook-store';
import { outlineOf, snapshotFault, type Snapshot } from '../../src/hosts/univer/snapshot';
import { BENCH } from '../../src/words/bench';

const W = BENCH.damage;

const KEY = 'bosswright.workbook';
const ASIDE = 'bosswright.workbook.unreadable';

/** As much of the store of a browser as is used. */
class Store {
  [key: string]: unknown;
  static room = Infinity;
  getItem(key: string): string | null {
    return (this[key] as string | undefined) ?? null;
  }
  removeItem(key: string): void {
    delete this[key];
  }
  setItem(key: string, text: string): void {
    const used = Object.entries(this).reduce((sum, [each, kept]) => sum + (each === key ? 0 : each.length + String(kept).length), 0);
    if (used + key.length + text.length > Store.room) throw new DOMException('full', 'QuotaExceededError');
    this[key] = text;
  }
}

let store: Store;
beforeEach(() => {
  Store.room = Infinity;
  store = new Store();
  vi.stubGlobal('localStorage', store);
});

const sheet = (id: string) => ({
  id,
  name: `Sheet ${id}`,
  rowCount: 100,
  columnCount: 26,
  cellData: { 0: { 0: { v: 3, t: 2 }, 1: { f: '=A1', s: 'x' }, 2: { s: 'x' }, 3: null } },
  rowData: { 0: { h: 24 } },
  columnData: {},
  mergeData: [{ startRow: 1, startColumn: 0, endRow: 1, endColumn: 2 }],
});
const workbook = (change: (data: Record<string, never>) => void = () => undefined): Snapshot => {
  const data = {
    id: 'bosswright',
    name: 'W',
    sheetOrder: ['a', 'b'],
    sheets: { a: sheet('a'), b: sheet('b') },
    styles: {},
    resources: [
      { name: 'R', data: '{"ranges":[{"startRow":1,"endRow":4}]}' },
      { name: 'Q', data: '' },
    ],
  };
  change(data as never);
  return data as unknown as Snapshot;
};
const text = (form: object) => JSON.stringify({ demo: 'd', workbook: workbook(), ...form });

describe('a form', () => {
  it('of today is read, and what this page writes is of it', () => {
    expect(readStored(text({ format: 2, keptAt: '' }))).toMatchObject({ is: 'workbook', kept: { demo: 'd' } });
    keep(workbook(), 'mark');
    expect(readStored(store.getItem(KEY) ?? '')).toMatchObject({
      is: 'workbook',
      kept: { format: 2, demo: 'mark', keptAt: expect.stringMatching(/^\d{4}-\d\d-\d\dT/) as string },
    });
  });

  it("1 is brought up to today's, with the whole workbook", () => {
    expect(readStored(text({ format: 1 }))).toEqual({ is: 'workbook', kept: { format: 2, demo: 'd', keptAt: '', workbook: workbook() } });
  });

  it.each([3, 99])('%i of a newer page is no damage', format => {
    expect(readStored(JSON.stringify({ format, anything: true }))).toEqual({ is: 'newer' });
  });

  it.each([
    ['cut', text({ format: 1 }).slice(0, 90)],
    ['no JSON', '{ not JSON'],
    ['null', 'null'],
    ['a number', '5'],
    ['a list', '[]'],
    ['without a number', text({})],
    ['of number 0', text({ format: 0 })],
    ['of number 1.5', text({ format: 1.5 })],
    ['of a number as text', text({ format: '1' })],
    ['without a demo', JSON.stringify({ format: 1, workbook: workbook() })],
    ['without a workbook', '{"format":1,"demo":"d"}'],
    ['deep', `{"format":1,"demo":"d","workbook":${'['.repeat(200_000)}`],
  ])('that is %s is damaged, with words', (_what, damaged) => {
    const read = readStored(damaged);
    expect(read.is === 'damaged' && read.why(W)).toMatch(/^it/);
  });
});

describe('a stored workbook', () => {
  it('of the bench has no fault', () => {
    expect(snapshotFault(workbook())).toBeUndefined();
    expect(outlineOf(workbook())).toBe('[["Sheet a",2],["Sheet b",2]]');
  });

  it.each<[string, (data: never) => void, string]>([
    [
      'a sheet that is empty data',
      (data: { sheets: Record<string, object> }) => {
        data.sheets['a'] = {};
      },
      'a sheet is not there',
    ],
    [
      'a sheet that is null',
      (data: { sheets: Record<string, null> }) => {
        data.sheets['a'] = null;
      },
      'a sheet is not there',
    ],
    [
      'a sheet without a name',
      (data: { sheets: { a: { name: string } } }) => {
        data.sheets.a.name = '';
      },
      'a sheet is not there',
    ],
    [
      'an id that is no text',
      (data: { id: unknown }) => {
        data.id = 5;
      },
      'it is no workbook of this page',
    ],
    [
      'an id of another workbook',
      (data: { id: unknown }) => {
        data.id = 'other';
      },
      'it is no workbook of this page',
    ],
    [
      'a number in the list of sheets',
      (data: { sheetOrder: unknown[] }) => {
        data.sheetOrder[0] = 7;
      },
      'its list of sheets is not there',
    ],
    [
      'no sheet',
      (data: { sheetOrder: unknown[] }) => {
        data.sheetOrder = [];
      },
      'its list of sheets is not there',
    ],
    [
      'a sheet that is not listed',
      (data: { sheetOrder: unknown[] }) => {
        data.sheetOrder = ['a'];
      },
      'its list of sheets is not that of its sheets',
    ],
    [
      'a sheet listed twice',
      (data: { sheetOrder: unknown[] }) => {
        data.sheetOrder = ['a', 'b', 'b'];
      },
      'its list of sheets is not that of its sheets',
    ],
    [
      'a thousand million rows',
      (data: { sheets: { a: { rowCount: number } } }) => {
        data.sheets.a.rowCount = 1e9;
      },
      'sheet "Sheet a" has 1000000000 rows',
    ],
    [
      'half a row',
      (data: { sheets: { a: { rowCount: number } } }) => {
        data.sheets.a.rowCount = 0.5;
      },
      'sheet "Sheet a" has 0.5 rows',
    ],
    [
      'too many columns',
      (data: { sheets: { b: { columnCount: unknown } } }) => {
        data.sheets.b.columnCount = 1e6;
      },
      'sheet "Sheet b" has 1000000 columns',
    ],
    [
      'columns as text',
      (data: { sheets: { b: { columnCount: unknown } } }) => {
        data.sheets.b.columnCount = '26';
      },
      'sheet "Sheet b" has 26 columns',
    ],
    [
      'a cell far out',
      (data: { sheets: { a: { cellData: object } } }) => {
        data.sheets.a.cellData = { 999999999: { 0: { v: 1 } } };
      },
      'cells of another form',
    ],
    [
      'a cell that is a text',
      (data: { sheets: { a: { cellData: object } } }) => {
        data.sheets.a.cellData = { 0: { 0: '3' } };
      },
      'cells of another form',
    ],
    [
      'a value that is data',
      (data: { sheets: { a: { cellData: object } } }) => {
        data.sheets.a.cellData = { 0: { 0: { v: {} } } };
      },
      'cells of another form',
    ],
    [
      'a row by name',
      (data: { sheets: { a: { rowData: object } } }) => {
        data.sheets.a.rowData = { first: {} };
      },
      'rows or columns of another form',
    ],
    [
      'a merged range without end',
      (data: { sheets: { a: { mergeData: object[] } } }) => {
        data.sheets.a.mergeData = [{ startRow: 0, endRow: 1e9, startColumn: 0, endColumn: 1 }];
      },
      'a range that no sheet holds',
    ],
    [
      'a coloured range without end',
      (data: { resources: object[] }) => {
        data.resources = [{ name: 'R', data: '{"a":[{"ranges":[{"startRow":0,"endRow":1e9}]}]}' }];
      },
      'a range that no sheet holds',
    ],
    [
      'looks that are a list',
      (data: { styles: unknown }) => {
        data.styles = [];
      },
      'its looks are of another form',
    ],
    [
      'data of a part that is no text',
      (data: { resources: unknown }) => {
        data.resources = [{ name: 'R', data: 3 }];
      },
      'its looks are of another form',
    ],
  ])('with %s is not opened, and it is said why', (_what, damage, why) => {
    expect(snapshotFault(workbook(damage as never))?.(W)).toContain(why);
    const read = readStored(JSON.stringify({ format: 1, demo: 'd', workbook: workbook(damage as never) }));
    expect(read.is === 'damaged' && read.why(W)).toContain(why);
  });
});

describe('what could not be opened', () => {
  it('is put aside under a number of its own, also beside one of an earlier page', () => {
    const texts = ['FIRST precious', 'SECOND', 'THIRD'];
    for (const each of texts) {
      store.setItem(KEY, each);
      expect(setAside()).toBe(true);
      expect(store.getItem(KEY)).toBeNull();
    }
    expect(putAside()).toEqual([
      { key: ASIDE, text: 'FIRST precious' },
      { key: `${ASIDE}.2`, text: 'SECOND' },
      { key: `${ASIDE}.3`, text: 'THIRD' },
    ]);
    discard({ key: `${ASIDE}.2` });
    store.setItem(KEY, 'FOURTH');
    setAside();
    expect(putAside().map(({ text: kept }) => kept)).toEqual(['FIRST precious', 'FOURTH', 'THIRD']);
  });

  it('is moved in a store that has no room for two, and left where it is in one that has none for the longer name', () => {
    const large = 'x'.repeat(1000);
    store.setItem(KEY, large);
    Store.room = KEY.length + 1000;
    expect(setAside()).toBe(false);
    expect(store.getItem(KEY)).toBe(large);
    Store.room = ASIDE.length + 1000;
    expect(setAside()).toBe(true);
    expect(putAside()).toEqual([{ key: ASIDE, text: large }]);
  });

  it('is told as left where the browser refuses', () => {
    vi.stubGlobal(
      'localStorage',
      new Proxy(
        {},
        {
          get: () => {
            throw new DOMException('refused', 'SecurityError');
          },
          ownKeys: () => {
            throw new DOMException('refused', 'SecurityError');
          },
        },
      ),
    );
    expect(setAside()).toBe(false);
    expect(putAside()).toEqual([]);
  });
});

describe('another tab', () => {
  it('is noticed by its text in the store, until this one takes over', () => {
    expect(readKept()).toBeNull();
    expect(isOfAnotherTab()).toBe(false);
    keep(workbook(), 'here');
    expect(isOfAnotherTab()).toBe(false);
    store.setItem(KEY, text({ format: 2, keptAt: '' }));
    expect(isOfAnotherTab()).toBe(true);
    takeOver();
    expect(isOfAnotherTab()).toBe(false);
    store.removeItem(KEY);
    expect(isOfAnotherTab()).toBe(true);
  });
});
