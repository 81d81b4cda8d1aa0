// The workbook of Excel as a file, and files as new workbooks.
import type { DefinedName } from '../../sheet/plan';
import type { NamedFile, WorkbookFiles } from '../../sheet/workbook-files';
import { base64 } from './draw';
import { exchanges } from './exchange';
import type { ExcelWords } from './words';

/** The largest that Excel takes. */
const SLICE_BYTES = 4_194_304;

/** What Excel answers to a call of its older kind. */
function answered<T>(refused: string, call: (told: (result: Office.AsyncResult<T>) => void) => void): Promise<T> {
  return new Promise((resolve, reject) => {
    try {
      call(({ status, value, error }) => {
        if (status === Office.AsyncResultStatus.Succeeded) resolve(value);
        else reject(new Error(`${refused} (${error.message}).`));
      });
    } catch (thrown) {
      reject(new Error(`${refused} (${thrown instanceof Error ? thrown.message : String(thrown)}).`));
    }
  });
}

/** One slice after the other, as Excel wants it. */
async function bytesOf(file: Office.File, W: ExcelWords): Promise<Uint8Array> {
  const bytes = new Uint8Array(file.size);
  let at = 0;
  for (let index = 0; index < file.sliceCount; index++) {
    const { data } = await answered<Office.Slice>(W.fileStopped(index + 1, file.sliceCount), told => file.getSliceAsync(index, told));
    const part = Uint8Array.from(data as ArrayLike<number>);
    if (at + part.length > bytes.length) throw new Error(W.fileGrew);
    bytes.set(part, at);
    at += part.length;
  }
  if (at < bytes.length) throw new Error(W.fileShort(at, bytes.length));
  return bytes;
}

/** The last part of a path or an address; a workbook that was never saved has none. */
function nameOf(url: string): string {
  const last = (url.split(/[?#]/)[0] ?? '').split(/[\\/]/).pop() ?? '';
  try {
    return decodeURIComponent(last) || 'Workbook.xlsx';
  } catch {
    return last;
  }
}

async function read(W: ExcelWords): Promise<NamedFile> {
  const { document } = Office.context;
  const file = await answered<Office.File>(W.noFile, told =>
    document.getFileAsync(Office.FileType.Compressed, { sliceSize: SLICE_BYTES }, told),
  );
  try {
    return { name: nameOf(document.url ?? ''), bytes: await bytesOf(file, W) };
  } finally {
    // Excel holds two files at most: one that stays open would be in the way of the next.
    await answered<unknown>('', told => file.closeAsync(told)).catch((thrown: unknown) => console.warn(thrown));
  }
}

type TakeBack = (context: Excel.RequestContext) => Promise<void>;

async function keepName(context: Excel.RequestContext, { name, meaning }: DefinedName): Promise<TakeBack | undefined> {
  const put = ({ workbook }: Excel.RequestContext, formula: string) => {
    workbook.names.add(name, formula).visible = false;
  };
  const formula = `=${meaning}`;
  const before = context.workbook.names.getItemOrNullObject(name);
  before.load('isNullObject,formula');
  await context.sync();
  const old = before.isNullObject ? undefined : before.formula;
  if (old === formula) return undefined;
  if (old !== undefined) before.delete();
  put(context, formula);
  await context.sync();
  return async later => {
    later.workbook.names.getItem(name).delete();
    if (old !== undefined) put(later, old);
    await later.sync();
  };
}

export function excelFiles(words: ExcelWords): WorkbookFiles {
  const run = exchanges(words);
  return {
    read: () => read(words),
    open: bytes => Excel.createWorkbook(base64(bytes)),
    async keepName(name) {
      const takeBack = await run(context => keepName(context, name));
      return takeBack && (() => run(takeBack));
    },
  };
}
