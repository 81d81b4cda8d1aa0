// Excel as a task sees it. Office.js, its loading and sending, are known in this folder alone.
import type { Picture, SheetPlan } from '../../sheet/plan';
import type { SheetPort } from '../../sheet/port';
import { draw, drawPicture } from './draw';
import { dress } from './dress';
import { exchanges, has, LONGEST_NAME, namesIn, type ExcelRun, sheetNamed } from './exchange';
import { readAreas, readAround, readSheet, signsIn, sizesIn } from './read';
import { selection, watch } from './watch';
import type { ExcelWords } from './words';
import { tableAt, write } from './write';

/** The newest requirement set of all that is asked for at the start. */
export const NEEDED = '1.10';

/** The name itself, or with a number behind it where it is taken; Excel takes capitals for the same. */
export function freeName(name: string, taken: readonly string[]): string {
  const names = new Set(taken.map(other => other.toLowerCase()));
  for (let number = 1; ; number++) {
    const tail = number === 1 ? '' : ` ${number}`;
    const free = `${name.slice(0, LONGEST_NAME - tail.length)}${tail}`;
    if (!names.has(free.toLowerCase())) return free;
  }
}

const removeSheet = (run: ExcelRun, name: string): Promise<void> =>
  run(async context => {
    (await sheetNamed(context, name)).delete();
    await context.sync();
  });

/** What was only half drawn is taken away again: the sheet is a new one. */
async function add(run: ExcelRun, plan: SheetPlan): Promise<string> {
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
    await removeSheet(run, name);
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
export function excelPort(words: ExcelWords): SheetPort {
  if (!has(NEEDED)) throw new Error(words.tooOld(NEEDED));
  const run = exchanges(words);
  return {
    sheetNames: () => run(namesIn),
    add: plan => add(run, plan),
    sizes: () => run(sizesIn),
    read: sheetName => run(context => readSheet(context, sheetName)),
    around: place => run(context => readAround(context, place)),
    readAreas: areas => run(context => readAreas(context, areas)),
    selection: () => selection(run),
    watch: listener => watch(run, listener),
    write: entries => run(context => write(context, entries)),
    signs: () => run(signsIn),
    tableAt: place => run(context => tableAt(context, place)),
    async dress(given) {
      const takeOff = await run(context => dress(context, given));
      return () => run(takeOff);
    },
    goTo: (sheetName, at) =>
      run(async context => {
        const sheet = await sheetNamed(context, sheetName);
        sheet.activate();
        sheet.getRange(at).select();
        await context.sync();
      }),
    remove: sheetName => removeSheet(run, sheetName),
    placePicture: (sheetName, picture) =>
      run(async context => {
        await place(context, await sheetNamed(context, sheetName), picture);
        await context.sync();
      }),
  };
}
