// Excel as a task sees it. Office.js, its loading and sending, are known here and in draw.ts alone.
import type { Cell } from '../../core/kinds';
import type { Picture, SheetPlan } from '../../sheet/plan';
import type { Selection, SheetCell, SheetPort } from '../../sheet/port';
import { draw, drawPicture } from './draw';

/** The newest requirement set of all that is called here. */
export const NEEDED = '1.10';
const LONGEST_NAME = 31;
/** Excel on the web refuses an answer that is too large. */
const MOST_CELLS_AT_ONCE = 50_000;

const CODE_WORDS: Readonly<Record<string, string>> = {
  AccessDenied: 'the sheet or the workbook is protected',
  InsertDeleteConflict: 'Excel cannot insert or delete here',
  Timeout: 'Excel did not answer in time',
};

/** One exchange with Excel; while a cell is being typed into, it waits. */
async function run<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, work);
  } catch (thrown) {
    const { code } = thrown as { readonly code?: unknown };
    const words = typeof code === 'string' ? CODE_WORDS[code] : undefined;
    throw words === undefined ? thrown : new Error(words);
  }
}

/** The name itself, or with a number behind it where it is taken; Excel takes capitals for the same. */
export function freeName(name: string, taken: readonly string[]): string {
  const names = new Set(taken.map(other => other.toLowerCase()));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? '' : ` ${number}`;
    const free = `${name.slice(0, LONGEST_NAME - tail.length)}${tail}`;
    if (!names.has(free.toLowerCase())) return free;
  }
}

async function namesIn(context: Excel.RequestContext): Promise<string[]> {
  const { worksheets } = context.workbook;
  worksheets.load('items/name');
  await context.sync();
  return worksheets.items.map(({ name }) => name);
}

async function sheetNamed(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load('isNullObject');
  await context.sync();
  if (sheet.isNullObject) throw new Error(`there is no sheet "${name}"`);
  return sheet;
}

const isFormula = (content: unknown): content is string => typeof content === 'string' && content.startsWith('=');

const cellOf = (value: unknown, formula: unknown): SheetCell => ({
  value: value === '' || value === null ? null : (value as Cell),
  ...(isFormula(formula) && { formula }),
});

async function readSheet(context: Excel.RequestContext, name: string): Promise<SheetCell[][]> {
  const sheet = await sheetNamed(context, name);
  const used = sheet.getUsedRangeOrNullObject(true);
  used.load('isNullObject,rowIndex,columnIndex,rowCount,columnCount');
  await context.sync();
  if (used.isNullObject) return [];
  const [rows, columns] = [used.rowIndex + used.rowCount, used.columnIndex + used.columnCount];
  const atOnce = Math.max(1, Math.floor(MOST_CELLS_AT_ONCE / columns));
  const cells: SheetCell[][] = [];
  for (let from = 0; from < rows; from += atOnce) {
    const part = sheet.getRangeByIndexes(from, 0, Math.min(atOnce, rows - from), columns);
    part.load('values,formulas');
    await context.sync();
    cells.push(...part.values.map((line, r) => line.map((value: unknown, c) => cellOf(value, part.formulas[r]?.[c]))));
  }
  return cells;
}

async function selectionIn(context: Excel.RequestContext): Promise<Selection> {
  const cell = context.workbook.getActiveCell();
  const { worksheet } = cell;
  cell.load('address');
  worksheet.load('name');
  await context.sync();
  return { sheetName: worksheet.name, at: cell.address.slice(cell.address.lastIndexOf('!') + 1) };
}

/** Where a chart or a picture is selected, there is no active cell. */
const selection = (): Promise<Selection | null> =>
  run(selectionIn).catch((thrown: unknown) => {
    if ((thrown as { readonly code?: unknown }).code === 'InvalidSelection') return null;
    throw thrown;
  });

function onSelection(listener: (selection: Selection) => void): () => void {
  let asked = 0;
  let isStopped = false;
  const tell = async () => {
    asked++;
    const mine = asked;
    const now = await selection();
    // An answer that was overtaken is dropped.
    if (now !== null && mine === asked && !isStopped) listener(now);
  };
  const added = run(async context => {
    const { workbook } = context;
    const handlers = [
      workbook.onSelectionChanged.add(tell),
      workbook.worksheets.onActivated.add(tell),
      workbook.worksheets.onChanged.add(tell),
    ];
    await context.sync();
    return { context, handlers };
  });
  // Without the events the pane still works, on what was selected when it opened.
  added.catch((thrown: unknown) => console.warn(thrown));
  const remove = async () => {
    const { context, handlers } = await added;
    await Excel.run(context, async same => {
      for (const handler of handlers) handler.remove();
      await same.sync();
    });
  };
  return () => {
    isStopped = true;
    remove().catch((thrown: unknown) => console.warn(thrown));
  };
}

const removeSheet = (name: string): Promise<void> =>
  run(async context => {
    (await sheetNamed(context, name)).delete();
    await context.sync();
  });

/** What was only half drawn is taken away again: the sheet is a new one. */
async function add(plan: SheetPlan): Promise<string> {
  const name = await run(async context => {
    const free = freeName(plan.name, await namesIn(context));
    // Throws where someone else took the name meanwhile; nothing is cleared or replaced.
    context.workbook.worksheets.add(free);
    await context.sync();
    return free;
  });
  try {
    await run(async context => {
      const sheet = context.workbook.worksheets.getItem(name);
      draw(sheet, plan);
      await context.sync();
      for (const picture of plan.pictures ?? []) await place(context, sheet, picture);
      await context.sync();
    });
  } catch (thrown) {
    await removeSheet(name);
    throw thrown;
  }
  return name;
}

async function place(context: Excel.RequestContext, sheet: Excel.Worksheet, picture: Picture): Promise<void> {
  const corner = sheet.getRange(picture.at);
  corner.load('left,top');
  await context.sync();
  drawPicture(sheet, corner, picture);
}

/** The workbook in Excel. Throws where this Excel is too old. */
export function excelPort(): SheetPort {
  if (!Office.context.requirements.isSetSupported('ExcelApi', NEEDED)) {
    throw new Error(
      `This Excel lacks what the pane works with (ExcelApi ${NEEDED}). The functions work; for the pane take Excel 2021, ` +
        'Microsoft 365 or Excel on the web.',
    );
  }
  return {
    sheetNames: () => run(namesIn),
    add,
    read: sheetName => run(context => readSheet(context, sheetName)),
    selection,
    onSelection,
    write: (sheetName, at, content) =>
      run(async context => {
        (await sheetNamed(context, sheetName)).getRange(at).formulas = [[content]];
        await context.sync();
      }),
    goTo: (sheetName, at) =>
      run(async context => {
        const sheet = await sheetNamed(context, sheetName);
        sheet.activate();
        sheet.getRange(at).select();
        await context.sync();
      }),
    remove: removeSheet,
    placePicture: (sheetName, picture) =>
      run(async context => {
        await place(context, await sheetNamed(context, sheetName), picture);
        await context.sync();
      }),
  };
}
