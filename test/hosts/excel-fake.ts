// Excel as far as the pane's host uses it, stricter than the real one: what was not loaded and sent for cannot be read,
// what was not sent does not happen, and a name that this fake does not know is a fault.
import { address, cellPosition } from '../../src/sheet/addresses';

type Content = string | number | boolean;

export interface FakeSheet {
  name: string;
  /** Formulas and values by address; of a formula, its value too. */
  readonly cells: Map<string, { formula?: string; value: Content }>;
  readonly pictures: Record<string, unknown>[];
  isProtected?: boolean;
}

export interface FakeExcel {
  readonly sheets: FakeSheet[];
  active: { sheetName: string; at: string };
  /** Everything that was set and called beyond cells, in order: `Part!B4 format.font.color = #22303A`. */
  readonly done: string[];
  /** Cells of each reading. */
  readonly readings: number[];
  /** How many exchanges there were. */
  syncs: number;
  /** A fault that Excel answers with at the next exchange. */
  fail?: { code: string; afterSyncs: number };
  fire(event: 'selection' | 'activated' | 'changed'): Promise<void>;
  readonly handlers: Map<string, Set<() => Promise<void>>>;
  isSupported: (set: string, version: string) => boolean;
}

class Fault extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

type Reads = Readonly<Record<string, () => unknown>>;
type Members = Readonly<Record<string, unknown>>;

class Context {
  private queue: (() => void)[] = [];
  constructor(private readonly fake: FakeExcel) {}

  later(work: () => void): void {
    this.queue.push(work);
  }

  async sync(): Promise<void> {
    this.fake.syncs++;
    await Promise.resolve();
    if (this.fake.fail !== undefined && this.fake.syncs > this.fake.fail.afterSyncs) {
      const { code } = this.fake.fail;
      delete this.fake.fail;
      throw new Fault(code);
    }
    for (const work of this.queue.splice(0)) work();
  }

  get workbook(): unknown {
    return workbook(this, this.fake);
  }
}

/** @param members methods and parts that need no loading. Other names may be set, or led on from, and are written down. */
function client(
  context: Context,
  fake: FakeExcel,
  name: string,
  reads: Reads,
  members: Members,
  sets: Readonly<Record<string, (value: never) => void>> = {},
): object {
  const loaded = new Map<string, unknown>();
  return new Proxy(
    {},
    {
      get(_, key) {
        if (typeof key === 'symbol' || key === 'then') return undefined;
        if (key === 'load')
          return (names: string) => {
            for (const asked of names.split(',')) {
              const read = reads[asked];
              if (read === undefined) throw new Error(`${name} has nothing called ${asked} to load`);
              context.later(() => loaded.set(asked, read()));
            }
          };
        if (key in members) return members[key];
        if (key in reads) {
          if (!loaded.has(key)) throw new Error(`${name}.${key} was read before it was loaded and sent for`);
          return loaded.get(key);
        }
        return recorder(context, fake, `${name} ${key}`);
      },
      set(_, key, value: never) {
        const set = sets[String(key)];
        context.later(() => {
          if (set === undefined)
            fake.done.push(`${name} ${String(key)} = ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`);
          else set(value);
        });
        return true;
      },
    },
  );
}

/** Formats and the like: may be set, called and led on from, never read. */
function recorder(context: Context, fake: FakeExcel, name: string): object {
  return new Proxy(() => undefined, {
    get: (_, key) => (typeof key === 'symbol' || key === 'then' ? undefined : recorder(context, fake, `${name}.${key}`)),
    set(_, key, value) {
      context.later(() => fake.done.push(`${name}.${String(key)} = ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`));
      return true;
    },
    apply(_, __, args) {
      const call = `${name}(${args.map(String).join(',')})`;
      context.later(() => fake.done.push(call));
      return recorder(context, fake, call);
    },
  });
}

const rectangle = (at: string): { top: number; left: number; bottom: number; right: number } => {
  const [first = '', last = first] = at.split(':');
  const [from, to] = [cellPosition(first), cellPosition(last)];
  return { top: from.row, left: from.column, bottom: to.row, right: to.column };
};

function range(context: Context, fake: FakeExcel, sheet: () => FakeSheet, at: string): object {
  const { top, left, bottom, right } = rectangle(at === '' ? 'A1' : at);
  const grid = (of: (cell: { formula?: string; value: Content } | undefined) => Content) => () => {
    fake.readings.push((bottom - top + 1) * (right - left + 1));
    return Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (__, c) => of(sheet().cells.get(address(top + r, left + c)))),
    );
  };
  const reads: Reads = {
    values: grid(cell => cell?.value ?? ''),
    formulas: grid(cell => cell?.formula ?? cell?.value ?? ''),
    address: () => `${/^\w+$/.test(sheet().name) ? sheet().name : `'${sheet().name}'`}!${at}`,
    left: () => left * 50,
    top: () => top * 20,
    isNullObject: () => false,
    rowIndex: () => top,
    columnIndex: () => left,
    rowCount: () => bottom - top + 1,
    columnCount: () => right - left + 1,
  };
  const members: Members = {
    worksheet: client(context, fake, 'worksheet', { name: () => sheet().name }, {}),
    select: () =>
      context.later(() => {
        fake.active = { sheetName: sheet().name, at };
      }),
    getEntireColumn: () => recorder(context, fake, `${at} column`),
    merge: (across: boolean) => context.later(() => fake.done.push(`${at} merged ${across}`)),
  };
  return client(context, fake, `${at}`, reads, members, {
    formulas: (rows: readonly (readonly Content[])[]) => {
      if (sheet().isProtected === true) throw new Fault('AccessDenied');
      if (rows.length !== bottom - top + 1 || rows.some(row => row.length !== right - left + 1)) throw new Fault('InvalidArgument');
      rows.forEach((row, r) => row.forEach((content, c) => sheet().cells.set(address(top + r, left + c), cellOf(content))));
    },
  });
}

/** As Excel takes an entry: an apostrophe keeps a text a text. */
function cellOf(content: Content): { formula?: string; value: Content } {
  if (typeof content !== 'string') return { value: content };
  if (content.startsWith("'")) return { value: content.slice(1) };
  if (content.startsWith('=')) return { formula: content, value: '#BUSY!' };
  return { value: content.trim() !== '' && Number.isFinite(Number(content)) ? Number(content) : content };
}

function usedRange(context: Context, fake: FakeExcel, sheet: () => FakeSheet): object {
  const area = () => {
    const places = [...sheet().cells.keys()].map(cellPosition);
    const [rows, columns] = [places.map(({ row }) => row), places.map(({ column }) => column)];
    return { top: Math.min(...rows), left: Math.min(...columns), bottom: Math.max(...rows), right: Math.max(...columns) };
  };
  const isEmpty = () => sheet().cells.size === 0;
  const of = (part: (area: { top: number; left: number; bottom: number; right: number }) => number) => () =>
    isEmpty() ? undefined : part(area());
  return client(
    context,
    fake,
    'used',
    {
      isNullObject: isEmpty,
      rowIndex: of(({ top }) => top),
      columnIndex: of(({ left }) => left),
      rowCount: of(({ top, bottom }) => bottom - top + 1),
      columnCount: of(({ left, right }) => right - left + 1),
    },
    {},
  );
}

function picture(context: Context, pictures: FakeSheet['pictures'], base64: string): object {
  const shape: Record<string, unknown> = { base64 };
  context.later(() => pictures.push(shape));
  return new Proxy(
    {},
    {
      set: (_, key, value) => (
        context.later(() => {
          shape[String(key)] = value;
        }),
        true
      ),
    },
  );
}

function worksheet(context: Context, fake: FakeExcel, find: () => FakeSheet | undefined): object {
  const sheet = (): FakeSheet => {
    const found = find();
    if (found === undefined) throw new Fault('ItemNotFound');
    return found;
  };
  return client(
    context,
    fake,
    'sheet',
    { name: () => sheet().name, isNullObject: () => find() === undefined },
    {
      activate: () =>
        context.later(() => {
          fake.active = { sheetName: sheet().name, at: 'A1' };
        }),
      delete: () =>
        context.later(() => {
          if (fake.sheets.length === 1) throw new Fault('InvalidOperation');
          fake.sheets.splice(fake.sheets.indexOf(sheet()), 1);
        }),
      getRange: (at = '') => range(context, fake, sheet, at),
      getRanges: (list: string) => {
        if (list.length > 8192) throw new Fault('InvalidArgument');
        return recorder(context, fake, list);
      },
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        range(context, fake, sheet, `${address(row, column)}:${address(row + rows - 1, column + columns - 1)}`),
      getUsedRangeOrNullObject: () => usedRange(context, fake, sheet),
      shapes: { addImage: (base64: string) => picture(context, sheet().pictures, base64) },
      freezePanes: { freezeRows: (count: number) => context.later(() => fake.done.push(`frozen ${count}`)) },
    },
  );
}

function event(context: Context, fake: FakeExcel, name: string): object {
  return {
    add(handler: () => Promise<void>) {
      context.later(() => fake.handlers.set(name, new Set([...(fake.handlers.get(name) ?? []), handler])));
      return { context, remove: () => context.later(() => fake.handlers.get(name)?.delete(handler)) };
    },
  };
}

function workbook(context: Context, fake: FakeExcel): object {
  const named = (name: string) => () => fake.sheets.find(sheet => sheet.name.toLowerCase() === name.toLowerCase());
  let items: readonly object[] | undefined;
  const worksheets = {
    get items() {
      if (items === undefined) throw new Error('the sheets were read before they were loaded and sent for');
      return items;
    },
    load(names: string) {
      if (names !== 'items/name') throw new Error(`this fake does not load ${names}`);
      context.later(() => {
        items = fake.sheets.map(({ name }) => ({ name }));
      });
    },
    add: (name: string) => {
      context.later(() => {
        if (named(name)() !== undefined) throw new Fault('ItemAlreadyExists');
        if (name.length > 31 || /[:\\/?*[\]]/.test(name)) throw new Fault('InvalidArgument');
        fake.sheets.push({ name, cells: new Map(), pictures: [] });
      });
      return worksheet(context, fake, named(name));
    },
    getItem: (name: string) => worksheet(context, fake, named(name)),
    getItemOrNullObject: (name: string) => worksheet(context, fake, named(name)),
    onActivated: event(context, fake, 'activated'),
    onChanged: event(context, fake, 'changed'),
  };
  const sheet = () => fake.sheets.find(({ name }) => name === fake.active.sheetName) ?? { name: '', cells: new Map(), pictures: [] };
  return {
    worksheets,
    getActiveCell: () => range(context, fake, sheet, fake.active.at),
    onSelectionChanged: event(context, fake, 'selection'),
  };
}

/** Puts the fake where Office.js would be. */
export function fakeExcel(...sheets: readonly Partial<FakeSheet>[]): FakeExcel {
  const fake: FakeExcel = {
    sheets: sheets.map(({ name = 'Sheet1', cells = new Map(), pictures = [], ...rest }) => ({ name, cells, pictures, ...rest })),
    active: { sheetName: sheets[0]?.name ?? 'Sheet1', at: 'A1' },
    done: [],
    readings: [],
    syncs: 0,
    handlers: new Map(),
    isSupported: () => true,
    async fire(name) {
      for (const handler of fake.handlers.get(name) ?? []) await handler();
    },
  };
  const words = (): object => new Proxy({}, { get: (_, key) => String(key) });
  const run = async (...args: unknown[]) => {
    const work = args.at(-1) as (context: unknown) => Promise<unknown>;
    const given = args.length > 1 && args[0] instanceof Context ? args[0] : new Context(fake);
    return work(given);
  };
  const Excel = new Proxy({ run }, { get: (target, key) => (key === 'run' ? target.run : words()) });
  Object.assign(globalThis, {
    Excel,
    Office: { context: { requirements: { isSetSupported: (set: string, version: string) => fake.isSupported(set, version) } } },
  });
  return fake;
}
