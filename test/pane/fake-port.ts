// A workbook in memory behind the sheet port: cells of plans, formulas worked out, tables spilled. For tests and for looking at the views.
import type { Cell } from '../../src/core/kinds';
import { address, cellCount, cellPosition, type Rectangle, rectangleOf } from '../../src/sheet/addresses';
import { isFault, isRows, WorkbookValues, type SourceCell } from '../../src/sheet/workbook-values';
import { call } from '../../src/registry';
import { type Dress, LONGEST_CHOICES } from '../../src/sheet/dress';
import type { SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import { aroundIn, partOf } from '../../src/sheet/parts';
import type { Selection, SheetCell, SheetListener, SheetPort } from '../../src/sheet/port';

type Cells = Map<string, SourceCell>;

export interface FakePort extends SheetPort {
  /** Selects as a user would. */
  select(sheetName: string, at: string): void;
  /** Puts a cell as it is, an error value beside its formula for example. */
  plant(sheetName: string, at: string, cell: SourceCell): void;
  /** The workbook as it is now. */
  plan(): Promise<WorkbookPlan>;
  readonly went: Selection[];
  /** Looks that are on. */
  readonly dressed: Dress[];
}

const cellsOf = ({ cells }: SheetPlan): Cells =>
  new Map(
    cells
      .filter(({ value = '', formula }) => formula !== undefined || value !== '')
      .map(({ at, value = null, formula }) => [at, { value, ...(formula !== undefined && { formula }) }]),
  );

const content = (typed: Cell, isText = false): SourceCell =>
  !isText && typeof typed === 'string' && typed.startsWith('=') ? { value: null, formula: typed } : { value: typed };

/** The grid from A1 with every table spilled; a value that was planted beside a formula stays. */
function gridOf(name: string, sheets: ReadonlyMap<string, Cells>): SheetCell[][] {
  const source = new WorkbookValues({ name: '', sheets: [...sheets].map(([sheet, cells]) => ({ name: sheet, cells })) }, call);
  const shown = new Map<string, SheetCell>();
  for (const [at, cell] of sheets.get(name) ?? []) {
    if (cell.formula === undefined || cell.value !== null) {
      shown.set(at, cell);
      continue;
    }
    const { row, column } = cellPosition(at);
    const result = source.result(name, at);
    const rows = isRows(result) ? result : [[result ?? null]];
    rows.forEach((line, r) =>
      line.forEach((value, c) => {
        const cellValue = isFault(value) ? value.cellError : value;
        shown.set(address(row + r, column + c), { value: cellValue, ...(r === 0 && c === 0 && { formula: cell.formula as string }) });
      }),
    );
  }
  const places = [...shown.keys()].map(cellPosition);
  const [height, width] = [Math.max(-1, ...places.map(({ row }) => row)) + 1, Math.max(-1, ...places.map(({ column }) => column)) + 1];
  return Array.from({ length: height }, (_, r) => Array.from({ length: width }, (__, c) => shown.get(address(r, c)) ?? { value: null }));
}

const NO_CELLS: Rectangle = { top: 0, left: 0, bottom: -1, right: -1 };

const usedOf = (grid: readonly (readonly SheetCell[])[]): Rectangle | null =>
  grid.length === 0 ? null : { top: 0, left: 0, bottom: grid.length - 1, right: (grid[0]?.length ?? 1) - 1 };

const cut = (grid: readonly (readonly SheetCell[])[], { top, left, bottom, right }: Rectangle): SheetCell[][] =>
  grid.slice(top, bottom + 1).map(line => line.slice(left, right + 1));

export function fakePort(plan: WorkbookPlan): FakePort {
  const sheets = new Map(plan.sheets.map(sheet => [sheet.name, cellsOf(sheet)]));
  const listeners = new Set<SheetListener>();
  let now: Selection | null = null;
  const cells = (name: string): Cells => {
    const found = sheets.get(name);
    if (found === undefined) throw new Error(`there is no sheet "${name}"`);
    return found;
  };
  const select = (sheetName: string, at: string) => {
    now = { sheetName, at };
    for (const listener of listeners) listener.selected(now);
  };
  const went: Selection[] = [];
  const dressed: Dress[] = [];
  return {
    went,
    dressed,
    async dress(dress) {
      cells(dress.sheetName);
      for (const { choices } of dress.dropDowns) if (choices.join(',').length > LONGEST_CHOICES) throw new Error('InvalidArgument');
      dressed.push(dress);
      return async () => void dressed.splice(dressed.indexOf(dress), 1);
    },
    plan: async () => ({
      name: plan.name,
      sheets: [...sheets].map(([name, own]) => {
        const grid = gridOf(name, sheets);
        return {
          name,
          widths: [],
          cells: [...own].map(([at, { formula }]) => {
            const { row, column } = cellPosition(at);
            const { value = null } = grid[row]?.[column] ?? {};
            return { at, role: 'text' as const, ...(value !== null && { value }), ...(formula !== undefined && { formula }) };
          }),
        };
      }),
    }),
    select,
    plant: (sheetName, at, cell) => {
      cells(sheetName).set(at, cell);
      for (const listener of listeners) listener.changed(sheetName, rectangleOf(at));
    },
    sheetNames: async () => [...sheets.keys()],
    async add(added) {
      let name = added.name;
      for (let number = 2; sheets.has(name); number++) name = `${added.name} ${number}`;
      sheets.set(name, cellsOf(added));
      return name;
    },
    read: async sheetName => (cells(sheetName), gridOf(sheetName, sheets)),
    sizes: async () =>
      [...sheets.keys()].map(sheetName => ({ sheetName, cells: cellCount(usedOf(gridOf(sheetName, sheets)) ?? NO_CELLS) })),
    async around(place) {
      cells(place.sheetName);
      const grid = gridOf(place.sheetName, sheets);
      return aroundIn(place, usedOf(grid), rectangle => cut(grid, rectangle));
    },
    readAreas: async areas =>
      areas
        .filter(({ sheet }) => sheets.has(sheet))
        .map(area => {
          const grid = gridOf(area.sheet, sheets);
          return partOf(area, usedOf(grid), rectangle => cut(grid, rectangle));
        }),
    selection: async () => now,
    watch(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    async write(entries) {
      const before = entries.map(({ sheetName, at }) => {
        const { value = null, formula } = cells(sheetName).get(at) ?? {};
        return { sheetName, at, content: formula ?? value ?? '' };
      });
      for (const { sheetName, at, content: typed, isText } of entries) {
        if (typed === '') cells(sheetName).delete(at);
        else cells(sheetName).set(at, content(typed, isText));
      }
      for (const listener of listeners) for (const { sheetName, at } of entries) listener.changed(sheetName, rectangleOf(at));
      return before;
    },
    async goTo(sheetName, at) {
      cells(sheetName);
      went.push({ sheetName, at });
      select(sheetName, at);
    },
    async remove(sheetName) {
      cells(sheetName);
      sheets.delete(sheetName);
      for (const listener of listeners) listener.gone(sheetName);
    },
  };
}
