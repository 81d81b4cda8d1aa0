// SCREW.LENGTHS: a line a length, from the cells of its table.
import { lengthTable } from '../../../../core/screw/length';
import type { Size } from '../../../../core/screw/size';
import { threadRow, threadTable } from '../../../../core/screw/thread';
import { atom } from '../../../../plain/spreadsheet';
import { sizeKey } from '../../arguments/screw';
import type { CallBlock } from '../call-site';
import { boundTable, type TableSite } from './table-site';

/** Cell r of a range of one column. */
export const cellIn = (range: string, r: number): string =>
  range.replace(/^(.*!\$[A-Z]+\$)(\d+):.*$/, (_, column: string, top: string) => `${column}${Number(top) + r}`);

export function standardLengthsBlock(site: TableSite): CallBlock | undefined {
  const { context, args, values, body, title, card } = site;
  const size = values[0] as Size;
  const argument = args[0];
  const key = argument && sizeKey(context, argument, threadRow(size));
  if (key === undefined) return undefined;
  // the sizes of a family share their lengths
  const isInFamily = key.key.startsWith('"') ? [] : [`ISNUMBER(MATCH(${key.key},${context.data.names(threadTable(size))},0))`];
  const bound = boundTable(site, new Set(), () => ({ ref: atom('""'), conditions: [...key.conditions, ...isInFamily], live: key.live }));
  if (bound === undefined) return undefined;
  const lengths = context.data.column(lengthTable(size), 'length');
  const lines = context.tables.begin(title, [{ title: 'length (mm)', words: context.sourceWords.kind(card.kind) }], body.length);
  const cells = body.map(([value = ''], r) => lines.put(r, 0, bound.guarded(cellIn(lengths, r), value), value));
  return { cells, live: bound.live, range: lines.column(0, body.length) };
}
