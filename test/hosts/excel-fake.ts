// Excel as far as the pane's host uses it, stricter than the real one: what was not loaded and sent for cannot be read,
// what was not sent does not happen, and a name that this fake does not know is a fault.
import { address, cellPosition, common, LAST_PLACE, type Rectangle, rectangleOf } from '../../src/sheet/addresses';

type Content = string | number | boolean;

/** `fill.color`, `font.bold`, `wrapText`, `numberFormat` */
export type Looks = Record<string, unknown>;

export interface FakeSheet {
  name: string;
  /** Formulas and values by address; of a formula, its value too. */
  readonly cells: Map<string, { formula?: string; value: Content }>;
  readonly pictures: Record<string, unknown>[];
  isProtected?: boolean;
  /** What was set on cells beyond their content, by address. */
  readonly looks: Map<string, Looks>;
  /** What may be typed, by address: rule, prompt, alert and whether blanks are let through. */
  readonly rules: Map<string, Record<string, unknown>>;
  /** Conditional formats that are on, by their ids: where they are. */
  readonly conditions: Map<string, string>;
  /** Tables; one formula written into a cell of a column is copied down it, and what would spill is #SPILL!. */
  readonly tables?: readonly { readonly name: string; readonly body: string }[];
  /** Of a sheet that is made up cell by cell: what it fills, which is one region. */
  readonly used?: Rectangle;
  /** Cells that a formula fills beyond its own, by its address. */
  readonly spilled: Map<string, readonly string[]>;
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
  /** Between areas of a list; on the desktop that of the user's country. */
  listSeparator: ',' | ';';
  decimalSeparator: '.' | ',';
  calculation: { mode: string; state: string };
  /** What formulas give; where it is left out nobody works them out, and a new one is #BUSY! for ever. */
  answers?: (sheets: readonly FakeSheet[]) => (sheetName: string, at: string) => readonly (readonly Content[])[];
  /** Works every formula out in its time: until `settle` cells show what they showed before, as Excel does while an add-in thinks. */
  isSlow: boolean;
  /** Cells have their values, and Excel says so; nothing happens where calculation is manual. */
  settle(): Promise<void>;
  /** Milliseconds of an exchange. */
  waitMs: number;
  /** Exchanges under way at the same time, at most. */
  mostAtOnce: number;
  /** Options that exchanges were begun with. */
  readonly options: object[];
  /** Names of the workbook. */
  readonly names: Map<string, { formula: string; visible: boolean }>;
  /** The workbook as a file, given in slices as large as they are asked for, and no more than two files at a time. */
  readonly file: {
    bytes: Uint8Array;
    url: string;
    isOpen: number;
    /** Slices that were asked for, and how large they might be. */
    readonly slices: number[];
    sliceBytes: number;
    /** What Excel refuses: the file, or a slice of it. */
    refuses?: 'file' | number;
    /** Slices end too soon. */
    isShort?: boolean;
  };
  /** Files that became new workbooks, in base 64. */
  readonly created: string[];
  /** A fault that Excel answers with at the next exchange. */
  fail?: { code: string; afterSyncs: number };
  /** As Excel does: the event brings the sheet and an address. */
  fire(
    event: 'selection' | 'activated' | 'changed' | 'calculated',
    address?: string,
    changeType?: string,
    sheetName?: string,
  ): Promise<void>;
  readonly handlers: Map<string, Set<(args: unknown) => Promise<void>>>;
  isSupported: (set: string, version: string) => boolean;
}

class Fault extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

/** Exchanges under way. */
let open = 0;

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
    open++;
    this.fake.mostAtOnce = Math.max(this.fake.mostAtOnce, open);
    await (this.fake.waitMs === 0 ? Promise.resolve() : new Promise(resolve => setTimeout(resolve, this.fake.waitMs)));
    open--;
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

  readonly application = client(
    this,
    this.fake,
    'application',
    {
      calculationMode: () => this.fake.calculation.mode,
      calculationState: () => this.fake.calculation.state,
      decimalSeparator: () => this.fake.decimalSeparator,
    },
    {},
  );
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
function recorder(context: Context, fake: FakeExcel, name: string, onSet?: (name: string, value: unknown) => void): object {
  return new Proxy(() => undefined, {
    get: (_, key) => (typeof key === 'symbol' || key === 'then' ? undefined : recorder(context, fake, `${name}.${key}`, onSet)),
    set(_, key, value) {
      context.later(() => {
        fake.done.push(`${name}.${String(key)} = ${typeof value === 'object' ? JSON.stringify(value) : String(value)}`);
        onSet?.(`${name}.${String(key)}`, value);
      });
      return true;
    },
    apply(_, __, args) {
      const call = `${name}(${args.map(String).join(',')})`;
      context.later(() => fake.done.push(call));
      return recorder(context, fake, call, onSet);
    },
  });
}

let nextId = 0;

/** Of a cell on which nothing was set. */
const PLAIN: Looks = { 'font.color': '#000000', 'font.size': 11, 'font.bold': false, 'font.italic': false, wrapText: false };

/** The members of a range that set its looks and tell them. */
function looksOf(context: Context, fake: FakeExcel, sheet: () => FakeSheet, rectangle: () => Rectangle, name: string): Members {
  const places = () => {
    const { top, left, bottom, right } = rectangle();
    return Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (__, c) => address(top + r, left + c)),
    );
  };
  const put = (at: string, key: string, value: unknown) => {
    const looks = { ...sheet().looks.get(at), [key]: value };
    if (value === (PLAIN[key] ?? undefined)) delete looks[key];
    sheet().looks.set(at, looks);
    if (Object.keys(looks).length === 0) sheet().looks.delete(at);
  };
  const validation = recorder(context, fake, `${name} dataValidation`, (path, value) => {
    const key = path.slice(`${name} dataValidation.`.length);
    for (const at of places().flat()) sheet().rules.set(at, { ...sheet().rules.get(at), [key]: value });
  });
  const first = (key: string) => sheet().looks.get(places()[0]?.[0] ?? '')?.[key];
  const told = new Map<string, unknown>();
  const format = recorder(context, fake, `${name} format`, (path, value) => {
    const key = path.slice(`${name} format.`.length);
    for (const at of places().flat()) put(at, key, value);
  });
  return {
    format: new Proxy(format, {
      get(target, key) {
        if (key === 'load')
          return () =>
            context.later(() => {
              told.set('wrapText', first('wrapText') ?? false);
              told.set('columnWidth', first('columnWidth') ?? 48);
            });
        return told.has(String(key)) ? told.get(String(key)) : Reflect.get(target, key);
      },
    }),
    dataValidation: new Proxy(validation, {
      get(target, key) {
        if (key === 'load')
          return (names: string) =>
            context.later(() => {
              const all = places()
                .flat()
                .map(at => sheet().rules.get(at) ?? {});
              const isAlike = all.every(one => JSON.stringify(one) === JSON.stringify(all[0]));
              const [rule = {}] = all;
              const type = !isAlike ? 'inconsistent' : rule['rule'] === undefined ? 'none' : 'custom';
              const nothing = { rule: {}, prompt: { showPrompt: true, title: '', message: '' }, errorAlert: {}, ignoreBlanks: true };
              const here: Record<string, unknown> = isAlike ? { ...nothing, ...rule, type } : { type, prompt: null };
              for (const each of names.split(',')) told.set(`validation ${each}`, here[each] ?? null);
            });
        if (key === 'clear')
          return () =>
            context.later(() => {
              fake.done.push(`${name} dataValidation.clear()`);
              for (const at of places().flat()) sheet().rules.delete(at);
            });
        const asked = `validation ${String(key)}`;
        return told.has(asked) ? told.get(asked) : Reflect.get(target, key);
      },
    }),
    getCellProperties() {
      const result: { value?: unknown } = {};
      context.later(() => {
        result.value = places().map(line =>
          line.map(at => {
            const looks = { ...PLAIN, ...sheet().looks.get(at) };
            const font = Object.fromEntries(['color', 'size', 'bold', 'italic'].map(key => [key, looks[`font.${key}`]]));
            const color = looks['fill.color'];
            return {
              format: {
                font,
                wrapText: looks['wrapText'],
                fill: { color: color ?? '#FFFFFF', pattern: color === undefined ? 'none' : 'solid' },
              },
            };
          }),
        );
      });
      return result;
    },
    setCellProperties: (given: readonly (readonly { format: Record<string, Record<string, unknown>> }[])[]) =>
      context.later(() => {
        places().forEach((line, r) =>
          line.forEach((at, c) => {
            const { font = {}, fill, wrapText } = given[r]?.[c]?.format ?? {};
            for (const [key, value] of Object.entries(font)) put(at, `font.${key}`, value);
            if (fill !== undefined) put(at, 'fill.color', fill['color']);
            put(at, 'wrapText', wrapText);
          }),
        );
      }),
    clear: (what: string) =>
      context.later(() => {
        if (what !== 'formats') throw new Fault('InvalidArgument');
        for (const at of places().flat()) sheet().looks.delete(at);
      }),
    conditionalFormats: {
      add(type: string) {
        const id = `{${nextId++}}`;
        let isSent = false;
        context.later(() => {
          fake.done.push(`${name} conditionalFormats.add(${type})`);
          sheet().conditions.set(id, name);
        });
        return {
          cellValue: recorder(context, fake, `${name} conditionalFormats.add(${type}).cellValue`),
          load: () => context.later(() => (isSent = true)),
          get id() {
            if (!isSent) throw new Error('the id was read before it was loaded and sent for');
            return id;
          },
        };
      },
      getItem: (id: string) => ({
        delete: () =>
          context.later(() => {
            if (!sheet().conditions.delete(id)) throw new Fault('ItemNotFound');
          }),
      }),
    },
    putFormats: (rows: readonly (readonly string[])[]) =>
      places().forEach((line, r) =>
        line.forEach((at, c) => put(at, 'numberFormat', rows[r]?.[c] === 'General' ? undefined : rows[r]?.[c])),
      ),
    formats: () => places().map(line => line.map(at => sheet().looks.get(at)?.['numberFormat'] ?? 'General')),
  };
}

const NOBODY: Rectangle = { top: 0, left: 0, bottom: 0, right: 0 };

/** What cells of a sheet fill within a rectangle. */
function usedIn({ cells, used }: FakeSheet, within: Rectangle): Rectangle | undefined {
  if (used !== undefined) return common(used, within);
  const places = [...cells.keys()]
    .map(cellPosition)
    .filter(({ row, column }) => common({ top: row, left: column, bottom: row, right: column }, within));
  if (places.length === 0) return undefined;
  const [rows, columns] = [places.map(({ row }) => row), places.map(({ column }) => column)];
  return { top: Math.min(...rows), left: Math.min(...columns), bottom: Math.max(...rows), right: Math.max(...columns) };
}

const WHOLE_SHEET: Rectangle = { top: 0, left: 0, bottom: LAST_PLACE.row, right: LAST_PLACE.column };

/** The rectangle round a cell whose border is blank. */
function regionOf(sheet: FakeSheet, at: Rectangle): Rectangle {
  if (sheet.used !== undefined && common(sheet.used, at)) return sheet.used;
  let region = { ...at };
  for (;;) {
    const wider = {
      top: Math.max(0, region.top - 1),
      left: Math.max(0, region.left - 1),
      bottom: region.bottom + 1,
      right: region.right + 1,
    };
    const filled = usedIn(sheet, wider);
    const next =
      filled === undefined
        ? region
        : {
            top: Math.min(region.top, filled.top),
            left: Math.min(region.left, filled.left),
            bottom: Math.max(region.bottom, filled.bottom),
            right: Math.max(region.right, filled.right),
          };
    if (JSON.stringify(next) === JSON.stringify(region)) return region;
    region = next;
  }
}

const nameOf = ({ top, left, bottom, right }: Rectangle): string =>
  top === bottom && left === right ? address(top, left) : `${address(top, left)}:${address(bottom, right)}`;

/** @param find the rectangle, once the exchange is made; undefined where there is none. */
function range(context: Context, fake: FakeExcel, sheet: () => FakeSheet, find: () => Rectangle | undefined, name: string): object {
  const rectangle = (): Rectangle => {
    const found = find();
    if (found === undefined) return NOBODY;
    if (found.bottom > LAST_PLACE.row || found.right > LAST_PLACE.column) throw new Fault('InvalidArgument');
    return found;
  };
  const grid = (of: (cell: { formula?: string; value: Content } | undefined) => Content) => () => {
    if (find() === undefined) return undefined;
    const { top, left, bottom, right } = rectangle();
    const { cells } = sheet();
    fake.readings.push((bottom - top + 1) * (right - left + 1));
    return Array.from({ length: bottom - top + 1 }, (_, r) =>
      Array.from({ length: right - left + 1 }, (__, c) => of(cells.get(address(top + r, left + c)))),
    );
  };
  const looks = looksOf(context, fake, sheet, rectangle, name);
  const reads: Reads = {
    numberFormat: looks['formats'] as () => unknown,
    values: grid(cell => cell?.value ?? ''),
    formulas: grid(cell => cell?.formula ?? cell?.value ?? ''),
    address: () => `${/^\w+$/.test(sheet().name) ? sheet().name : `'${sheet().name}'`}!${nameOf(rectangle())}`,
    left: () => rectangle().left * 50,
    top: () => rectangle().top * 20,
    isNullObject: () => find() === undefined,
    rowIndex: () => rectangle().top,
    columnIndex: () => rectangle().left,
    rowCount: () => rectangle().bottom - rectangle().top + 1,
    columnCount: () => rectangle().right - rectangle().left + 1,
  };
  const made = (of: () => Rectangle | undefined, part: string): object => range(context, fake, sheet, of, `${name} ${part}`);
  const members: Members = {
    ...looks,
    find,
    worksheet: client(context, fake, 'worksheet', { name: () => sheet().name }, {}),
    select: () =>
      context.later(() => {
        fake.active = { sheetName: sheet().name, at: nameOf(rectangle()) };
      }),
    getEntireColumn: () => {
      const column = range(context, fake, sheet, () => ({ ...rectangle(), top: 0, bottom: LAST_PLACE.row }), `${name} column`);
      return new Proxy(column, {
        get: (target, key) => (key === 'format' ? recorder(context, fake, `${name} column.format`) : Reflect.get(target, key)),
      });
    },
    getIntersection: (other: { find: () => Rectangle | undefined }) =>
      made(() => common(rectangle(), other.find() ?? NOBODY), 'intersection'),
    getIntersectionOrNullObject: (other: { find: () => Rectangle | undefined }) =>
      made(() => common(rectangle(), other.find() ?? NOBODY), 'intersection'),
    getUsedRangeOrNullObject: () => made(() => usedIn(sheet(), rectangle()), 'used'),
    getSurroundingRegion: () => made(() => regionOf(sheet(), rectangle()), 'region'),
    getRow: (row: number) => made(() => ({ ...rectangle(), top: rectangle().top + row, bottom: rectangle().top + row }), 'row'),
    getResizedRange: (rows: number, columns: number) =>
      made(() => ({ ...rectangle(), bottom: rectangle().bottom + rows, right: rectangle().right + columns }), 'resized'),
    getTables: () => {
      let items: object[] | undefined;
      return {
        get items() {
          if (items === undefined) throw new Error('the tables were read before they were loaded and sent for');
          return items;
        },
        load: () =>
          context.later(() => {
            items = (sheet().tables ?? [])
              .filter(({ body }) => common(rectangleOf(body), rectangle()))
              .map(table => ({
                name: table.name,
                getDataBodyRange: () => range(context, fake, sheet, () => rectangleOf(table.body), table.name),
              }));
          }),
      };
    },
    merge: (across: boolean) => context.later(() => fake.done.push(`${name} merged ${across}`)),
  };
  return client(context, fake, name, reads, members, {
    numberFormat: (rows: readonly (readonly string[])[]) => {
      fake.done.push(`${name} numberFormat = ${JSON.stringify(rows)}`);
      (looks['putFormats'] as (rows: readonly (readonly string[])[]) => void)(rows);
    },
    formulasLocal: (rows: readonly (readonly Content[])[]) => {
      const { top, left } = rectangle();
      sheet().cells.set(address(top, left), { formula: `local ${String(rows[0]?.[0])}`, value: '#BUSY!' });
    },
    formulas: (rows: readonly (readonly Content[])[]) => {
      if (sheet().isProtected === true) throw new Fault('AccessDenied');
      const { top, left, bottom, right } = rectangle();
      if (rows.length !== bottom - top + 1 || rows.some(row => row.length !== right - left + 1)) throw new Fault('InvalidArgument');
      rows.forEach((row, r) => row.forEach((content, c) => enter(sheet(), address(top + r, left + c), content)));
      fillDown(sheet(), rectangle(), rows[0]?.[0] ?? '');
      if (fake.isSlow || fake.calculation.mode === 'manual') fake.calculation.state = 'pending';
      else workOut(fake);
    },
  });
}

/** As typed; what was spilled from here is gone. */
function enter({ cells, spilled }: FakeSheet, at: string, content: Content): void {
  for (const one of spilled.get(at) ?? []) cells.delete(one);
  spilled.delete(at);
  if (content === '') cells.delete(at);
  else cells.set(at, cellOf(content));
}

/** Every formula has its value; one that fills several cells has no room in a table or where others stand. */
function workOut({ answers, sheets }: FakeExcel): void {
  const answer = answers?.(sheets);
  if (answer !== undefined) for (const sheet of sheets) place(sheet, at => answer(sheet.name, at));
}

function place({ cells, spilled, tables = [] }: FakeSheet, answer: (at: string) => readonly (readonly Content[])[]): void {
  for (const [at, { formula }] of [...cells]) {
    if (formula === undefined || formula.startsWith('local ')) continue;
    const rows = answer(at);
    for (const one of spilled.get(at) ?? []) cells.delete(one);
    spilled.delete(at);
    const { row, column } = cellPosition(at);
    const filled = rows
      .flatMap((line, r) => line.map((value, c) => [address(row + r, column + c), value] as const))
      .filter(([one]) => one !== at);
    const isInTable = tables.some(({ body }) => common(rectangleOf(body), { top: row, left: column, bottom: row, right: column }));
    const hasRoom = filled.length === 0 || (!isInTable && filled.every(([one]) => !cells.has(one)));
    cells.set(at, { formula, value: hasRoom ? (rows[0]?.[0] ?? '') : '#SPILL!' });
    if (!hasRoom || filled.length === 0) continue;
    for (const [one, value] of filled) cells.set(one, { value });
    spilled.set(
      at,
      filled.map(([one]) => one),
    );
  }
}

/** As a table does with one formula. */
function fillDown({ cells, tables = [] }: FakeSheet, { top, left, bottom, right }: Rectangle, content: Content): void {
  if (top !== bottom || left !== right || typeof content !== 'string' || !content.startsWith('=')) return;
  for (const body of tables.map(table => rectangleOf(table.body))) {
    if (!common(body, { top, left, bottom, right })) continue;
    for (let row = body.top; row <= body.bottom; row++) cells.set(address(row, left), cellOf(content));
  }
}

/** As Excel takes an entry: an apostrophe keeps a text a text. */
function cellOf(content: Content): { formula?: string; value: Content } {
  if (typeof content !== 'string') return { value: content };
  if (content.startsWith("'")) return { value: content.slice(1) };
  if (content.startsWith('=')) return { formula: content, value: '#BUSY!' };
  return { value: content.trim() !== '' && Number.isFinite(Number(content)) ? Number(content) : content };
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
      getRange: (at = '') => {
        if (/[,;]/.test(at)) throw new Fault('InvalidArgument');
        return range(context, fake, sheet, () => rectangleOf(at === '' ? 'A1' : at), at);
      },
      getRanges: (list: string) => {
        if (list.length > 8192 || list.includes(fake.listSeparator === ',' ? ';' : ',')) throw new Fault('InvalidArgument');
        return recorder(context, fake, list);
      },
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) => {
        const rectangle = { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
        return range(context, fake, sheet, () => rectangle, nameOf(rectangle));
      },
      getUsedRangeOrNullObject: () => range(context, fake, sheet, () => usedIn(sheet(), WHOLE_SHEET), 'used'),
      shapes: { addImage: (base64: string) => picture(context, sheet().pictures, base64) },
      freezePanes: { freezeRows: (count: number) => context.later(() => fake.done.push(`frozen ${count}`)) },
    },
  );
}

const blankSheet = (name: string): FakeSheet => ({
  name,
  cells: new Map(),
  pictures: [],
  looks: new Map(),
  rules: new Map(),
  conditions: new Map(),
  spilled: new Map(),
});

const idOf = (name: string): string => `{${name}}`;

function event(context: Context, fake: FakeExcel, name: string): object {
  return {
    add(handler: (args: unknown) => Promise<void>) {
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
      if (!['items/name', 'items/name,items/id'].includes(names)) throw new Error(`this fake does not load ${names}`);
      context.later(() => {
        items = fake.sheets.map(({ name }) => (names === 'items/name' ? { name } : { name, id: idOf(name) }));
      });
    },
    add: (name: string) => {
      context.later(() => {
        if (named(name)() !== undefined) throw new Fault('ItemAlreadyExists');
        if (name.length > 31 || /[:\\/?*[\]]/.test(name)) throw new Fault('InvalidArgument');
        fake.sheets.push(blankSheet(name));
      });
      return worksheet(context, fake, named(name));
    },
    getItem: (name: string) => worksheet(context, fake, named(name)),
    getItemOrNullObject: (name: string) => worksheet(context, fake, named(name)),
    onActivated: event(context, fake, 'activated'),
    onChanged: event(context, fake, 'changed'),
    onCalculated: event(context, fake, 'calculated'),
    onSelectionChanged: event(context, fake, 'selection'),
  };
  const sheet = () => fake.sheets.find(({ name }) => name === fake.active.sheetName) ?? blankSheet('');
  const nameNamed = (name: string) =>
    client(
      context,
      fake,
      'name',
      { isNullObject: () => !fake.names.has(name), formula: () => fake.names.get(name)?.formula },
      { delete: () => context.later(() => fake.names.delete(name)) },
      {
        visible: (visible: boolean) => {
          const named = fake.names.get(name);
          if (named === undefined) throw new Fault('ItemNotFound');
          named.visible = visible;
        },
      },
    );
  return {
    worksheets,
    names: {
      getItemOrNullObject: nameNamed,
      getItem: nameNamed,
      add(name: string, formula: string) {
        context.later(() => {
          if (fake.names.has(name)) throw new Fault('ItemAlreadyExists');
          if (!formula.startsWith('=') || formula.length > 8192) throw new Fault('InvalidArgument');
          fake.names.set(name, { formula, visible: true });
        });
        return nameNamed(name);
      },
    },
    getActiveCell: () => range(context, fake, sheet, () => rectangleOf(fake.active.at), 'active'),
  };
}

type Told = (result: { status: string; value?: unknown; error?: { message: string } }) => void;

/** The older part of Office.js, which answers by telling. */
function documentOf({ file }: FakeExcel): object {
  const later = (tell: () => void) => void setTimeout(tell, 0);
  const failed = (message: string) => ({ status: 'failed', error: { message } });
  let asked = 0;
  const opened = () => ({
    size: file.bytes.length,
    sliceCount: Math.ceil(file.bytes.length / file.sliceBytes),
    getSliceAsync(index: number, told: Told) {
      asked++;
      later(() => {
        asked--;
        if (asked > 0) throw new Error('a slice was asked for before the one before it was there');
        file.slices.push(index);
        if (file.refuses === index) return told(failed('the slice is gone'));
        const end = file.isShort === true ? file.bytes.length - 1 : undefined;
        const data = [...file.bytes.subarray(index * file.sliceBytes, Math.min((index + 1) * file.sliceBytes, end ?? Infinity))];
        told({ status: 'succeeded', value: { data, index, size: data.length } });
      });
    },
    closeAsync(told: Told) {
      file.isOpen--;
      later(() => told({ status: 'succeeded' }));
    },
  });
  return {
    get url() {
      return file.url;
    },
    getFileAsync(type: string, { sliceSize }: { sliceSize: number }, told: Told) {
      later(() => {
        if (type !== 'compressed' || sliceSize > 4_194_304) return told(failed('InvalidArgument'));
        if (file.refuses === 'file' || file.isOpen >= 2) return told(failed('An internal error has occurred.'));
        file.isOpen++;
        file.sliceBytes ||= sliceSize;
        told({ status: 'succeeded', value: opened() });
      });
    },
  };
}

/** Puts the fake where Office.js would be. */
export function fakeExcel(...sheets: readonly Partial<FakeSheet>[]): FakeExcel {
  const fake: FakeExcel = {
    sheets: sheets.map(({ name = 'Sheet1', ...rest }) => ({ ...blankSheet(name), ...rest })),
    active: { sheetName: sheets[0]?.name ?? 'Sheet1', at: 'A1' },
    done: [],
    readings: [],
    syncs: 0,
    handlers: new Map(),
    isSupported: (_, version) => version !== '1.20',
    listSeparator: ',',
    decimalSeparator: '.',
    calculation: { mode: 'automatic', state: 'done' },
    isSlow: false,
    async settle() {
      if (fake.calculation.mode === 'manual') return;
      workOut(fake);
      fake.calculation.state = 'done';
      for (const { name } of fake.sheets) await fake.fire('calculated', 'A1', '', name);
    },
    waitMs: 0,
    mostAtOnce: 0,
    options: [],
    names: new Map(),
    file: { bytes: new Uint8Array(), url: '', isOpen: 0, slices: [], sliceBytes: 0 },
    created: [],
    async fire(name, at = fake.active.at, changeType = 'rangeEdited', sheetName = fake.active.sheetName) {
      const args = { worksheetId: idOf(sheetName), address: at, changeType };
      for (const handler of fake.handlers.get(name) ?? []) await handler(args);
    },
  };
  const words = (): object => new Proxy({}, { get: (_, key) => String(key) });
  const run = async (...args: unknown[]) => {
    const work = args.at(-1) as (context: unknown) => Promise<unknown>;
    if (args.length > 1 && !(args[0] instanceof Context)) fake.options.push(args[0] as object);
    const given = args.length > 1 && args[0] instanceof Context ? args[0] : new Context(fake);
    return work(given);
  };
  const createWorkbook = async (base64: string) => {
    if (fake.fail !== undefined) throw new Fault(fake.fail.code);
    fake.created.push(base64);
  };
  const Excel = new Proxy({ run, createWorkbook }, { get: (target, key) => (key in target ? Reflect.get(target, key) : words()) });
  Object.assign(globalThis, {
    Excel,
    Office: {
      AsyncResultStatus: { Succeeded: 'succeeded', Failed: 'failed' },
      FileType: { Compressed: 'compressed' },
      context: {
        requirements: { isSetSupported: (set: string, version: string) => fake.isSupported(set, version) },
        document: documentOf(fake),
      },
    },
  });
  return fake;
}
