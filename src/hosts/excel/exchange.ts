// One exchange with Excel, and what it answers when it refuses.
export const LONGEST_NAME = 31;

const CODE_WORDS: Readonly<Record<string, string>> = {
  AccessDenied: 'the sheet or the workbook is protected',
  InsertDeleteConflict: 'Excel cannot insert or delete here',
  InvalidArgument: 'Excel does not take this: a formula that it cannot read, or an address that it does not know',
  ItemNotFound: 'the sheet is not there any more',
  Timeout: 'Excel did not answer in time',
};

/** The requirement set; where it lacks, what needs it is left out. */
export const has = (version: string): boolean => Office.context.requirements.isSetSupported('ExcelApi', version);

/** Since when several exchanges can be one step of undo. */
const UNDO_GROUPS = '1.20';

let last: Promise<unknown> = Promise.resolve();

/** One at a time, in the order in which they are asked for: what is typed into cells does not wait for many. */
export function run<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  const mine = last.then(() => exchange(work));
  last = mine.catch(() => {});
  return mine;
}

/** While a cell is being typed into, it waits. All that it writes is one step of undo, where Excel can. */
async function exchange<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true, ...(has(UNDO_GROUPS) && { mergeUndoGroup: true }) }, work);
  } catch (thrown) {
    const { code } = thrown as { readonly code?: unknown };
    const words = typeof code === 'string' ? CODE_WORDS[code] : undefined;
    throw words === undefined ? thrown : new Error(words);
  }
}

export async function sheetNamed(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  sheet.load('isNullObject');
  await context.sync();
  if (sheet.isNullObject) throw new Error(`there is no sheet "${name}"`);
  return sheet;
}

export async function namesIn(context: Excel.RequestContext): Promise<string[]> {
  const { worksheets } = context.workbook;
  worksheets.load('items/name');
  await context.sync();
  return worksheets.items.map(({ name }) => name);
}
