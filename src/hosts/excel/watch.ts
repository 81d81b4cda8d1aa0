// What happens in the workbook, told with places that the events bring: nothing is asked of Excel for a move inside a sheet.
import { type Rectangle, rectangleOf } from '../../sheet/addresses';
import type { Selection, SheetListener } from '../../sheet/port';
import type { ExcelRun } from './exchange';

/** `B4:D9`, `B:C`, `4:9`, several with a comma or a semicolon: the first of them. */
export function areaAt(address: string): Rectangle | undefined {
  const [first = ''] = address.slice(address.lastIndexOf('!') + 1).split(/[,;]/);
  const bare = first.replaceAll('$', '').trim();
  return /^[A-Z]+\d+(:[A-Z]+\d+)?$/.test(bare) ? rectangleOf(bare) : undefined;
}

/** The cell at its top left corner. */
function firstCell(address: string): string {
  const [, letters = 'A', digits = '1'] = /^\$?([A-Z]*)\$?(\d*)/.exec(address.slice(address.lastIndexOf('!') + 1)) ?? [];
  return `${letters === '' ? 'A' : letters}${digits === '' ? '1' : digits}`;
}

/** @param also what else is asked for in the same exchange. */
async function selectionIn(context: Excel.RequestContext, also?: Excel.WorksheetCollection): Promise<Selection> {
  const cell = context.workbook.getActiveCell();
  const { worksheet } = cell;
  cell.load('address');
  worksheet.load('name');
  also?.load('items/name,items/id');
  await context.sync();
  return { sheetName: worksheet.name, at: cell.address.slice(cell.address.lastIndexOf('!') + 1) };
}

/** Where a chart or a picture is selected, there is no active cell. */
const noneSelected = (thrown: unknown): null => {
  if ((thrown as { readonly code?: unknown }).code === 'InvalidSelection') return null;
  throw thrown;
};

export const selection = (run: ExcelRun): Promise<Selection | null> => run(context => selectionIn(context)).catch(noneSelected);

export function watch(run: ExcelRun, listener: SheetListener): () => void {
  /** Names of the sheets by their ids, which events bring. */
  let names: ReadonlyMap<string, string> = new Map();
  let isStopped = false;
  let asked = 0;
  const learn = ({ items }: Excel.WorksheetCollection) => {
    const before = [...names.values()];
    names = new Map(items.map(({ id, name }) => [id, name]));
    const now = new Set(names.values());
    for (const name of before) if (!now.has(name) && !isStopped) listener.gone(name);
  };
  const learnt = () =>
    run(async context => {
      const { worksheets } = context.workbook;
      worksheets.load('items/name,items/id');
      await context.sync();
      learn(worksheets);
    });
  const nameOf = async (id: string): Promise<string | undefined> => {
    if (!names.has(id)) await learnt();
    return names.get(id);
  };
  const told = async (id: string, tell: (sheetName: string) => void) => {
    const name = await nameOf(id);
    if (name !== undefined && !isStopped) tell(name);
  };
  // Another sheet may also have another name than before.
  const onActivated = async () => {
    const mine = ++asked;
    const now = await run(async context => {
      const { worksheets } = context.workbook;
      const selected = await selectionIn(context, worksheets);
      learn(worksheets);
      return selected;
    }).catch(noneSelected);
    if (now !== null && mine === asked && !isStopped) listener.selected(now);
  };
  const added = run(async context => {
    const { worksheets } = context.workbook;
    worksheets.load('items/name,items/id');
    const handlers = [
      worksheets.onSelectionChanged.add(({ worksheetId, address }) => {
        asked++;
        return told(worksheetId, sheetName => listener.selected({ sheetName, at: firstCell(address) }));
      }),
      worksheets.onActivated.add(onActivated),
      worksheets.onChanged.add(({ worksheetId, address, changeType }) =>
        told(worksheetId, sheetName =>
          listener.changed(sheetName, changeType === Excel.DataChangeType.rangeEdited ? areaAt(address) : undefined),
        ),
      ),
      worksheets.onCalculated.add(({ worksheetId }) => told(worksheetId, sheetName => listener.calculated(sheetName))),
    ];
    await context.sync();
    learn(worksheets);
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
