// One exchange with Excel, and what it answers when it refuses.
import { ExcelRefusal, type ExcelWords } from './words';

export const LONGEST_NAME = 31;

/** The requirement set; where it lacks, what needs it is left out. */
export const has = (version: string): boolean => Office.context.requirements.isSetSupported('ExcelApi', version);

/** Since when several exchanges can be one step of undo. */
const UNDO_GROUPS = '1.20';

export type ExcelRun = <T>(work: (context: Excel.RequestContext) => Promise<T>) => Promise<T>;

function saidOf(thrown: unknown, words: ExcelWords): string | undefined {
  if (thrown instanceof ExcelRefusal) return thrown.said(words);
  const { code } = thrown as { readonly code?: unknown };
  return typeof code === 'string' ? words.codes[code] : undefined;
}

let last: Promise<unknown> = Promise.resolve();

/**
 * One at a time, in the order in which they are asked for: what is typed into cells does not wait for many. While a cell is being
 * typed into, an exchange waits. All that it writes is one step of undo, where Excel can.
 */
export function exchanges(words: ExcelWords): ExcelRun {
  const exchange: ExcelRun = async work => {
    try {
      return await Excel.run({ delayForCellEdit: true, ...(has(UNDO_GROUPS) && { mergeUndoGroup: true }) }, work);
    } catch (thrown) {
      const said = saidOf(thrown, words);
      throw said === undefined ? thrown : new Error(said);
    }
  };
  return work => {
    const mine = last.then(() => exchange(work));
    last = mine.catch(() => {});
    return mine;
  };
}

export async function sheetNamed(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load('isNullObject');
  await context.sync();
  if (sheet.isNullObject) throw new ExcelRefusal(({ noSheet }) => noSheet(name));
  return sheet;
}

export async function namesIn(context: Excel.RequestContext): Promise<string[]> {
  const { worksheets } = context.workbook;
  worksheets.load('items/name');
  await context.sync();
  return worksheets.items.map(({ name }) => name);
}
