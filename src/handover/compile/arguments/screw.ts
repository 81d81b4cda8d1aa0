// A screw by the rows of its thread table.
import { OWN } from '../../../core/screw/own';
import { columnOf } from '../../../core/table';
import { type Screw, threadRow, threadTable } from '../../../core/screw/thread';
import { atom } from '../../../plain/spreadsheet';
import type { ConversionContext } from '../context';
import { quoted } from '../inputs';
import { unchanged } from '../unchanged';
import { textStep } from './expression';
import { type BoundArgument, type Argument, isLiteral, cellOf, addressOf, oneCell } from './argument';

const SCREW_PARTS = [
  ['nominalMm', 'nominal diameter'],
  ['majorMaxMm', 'major diameter, max'],
  ['majorMinMm', 'major diameter, min'],
  ['rootMaxMm', 'root diameter, max'],
  ['pitchMm', 'pitch'],
  ['flankDeg', 'flank angle'],
] as const;

/** Which column of the thread table a part of a screw is, and what it is multiplied with. */
function screwColumn(screw: Screw, key: string): { readonly key: string; readonly inverse?: true } {
  const { family } = screw.size;
  if (key === 'pitchMm' && family !== 'M' && family !== 'ST' && family !== 'own') return { key: 'tpi', inverse: true };
  const columns: Readonly<Record<string, string>> = {
    nominalMm: family === 'own' || screw.isTapping ? 'majorMax' : 'nominal',
    majorMaxMm: 'majorMax',
    majorMinMm: 'majorMin',
    rootMaxMm: 'rootMax',
    pitchMm: 'pitch',
    flankDeg: 'flank',
  };
  return { key: columns[key] ?? key };
}

export interface SizeKey {
  /** Cell, or the name of the row in quotes. */
  readonly key: string;
  readonly conditions: readonly string[];
  readonly live: boolean;
}

/**
 * The cell or quoted text with which a table of this screw's family is entered. A size that is spelled otherwise than in the table
 * is not followed; the numbers of an own screw can be changed on the sheet of data.
 */
export function sizeKey(context: ConversionContext, argument: Argument, row: string): SizeKey | undefined {
  const area = oneCell(argument);
  const raw = area === undefined ? undefined : context.source.value(area.sheet, addressOf(area));
  if (area !== undefined && typeof raw === 'string' && raw.toLowerCase() === row.toLowerCase())
    return { key: cellOf(area), conditions: [], live: true };
  const worth = area === undefined && argument.node !== null ? context.source.evaluate(argument.node, argument.sheet) : undefined;
  const step = typeof worth === 'string' && worth.toLowerCase() === row.toLowerCase() ? textStep(context, argument, 'size') : undefined;
  if (step !== undefined) return { key: step, conditions: [], live: true };
  const conditions = unchanged(context, argument);
  return conditions === undefined ? undefined : { key: quoted(row), conditions, live: isLiteral(argument.node) || row === OWN };
}

/** Only the parts that the formula reads get a row. */
export function boundScrew(
  context: ConversionContext,
  argument: Argument,
  screw: Screw,
  needed: ReadonlySet<string>,
): BoundArgument | undefined {
  const table = threadTable(screw.size);
  const found = sizeKey(context, argument, threadRow(screw.size));
  if (found === undefined) return undefined;
  const isHeld = (part: string): boolean => part !== 'flankDeg' || columnOf(table, 'flank') !== undefined;
  const wanted = SCREW_PARTS.filter(([part]) => needed.has(part) && isHeld(part));
  const row = 1 + table.rows.findIndex(([name]) => name.toLowerCase() === threadRow(screw.size).toLowerCase());
  // looked up once for all that is read there
  const rowCell =
    wanted.length < 2 || table.rows.length === 1 || row === 0
      ? undefined
      : context.steps.row({
          label: 'screw: row of the table',
          formula: context.data.rowOf(table, found.key),
          value: row,
          words: `where its size stands in the table on ${context.data.name}`,
        });
  const parts = wanted.map(([part, label]) => {
    const column = screwColumn(screw, part);
    const looked =
      rowCell === undefined ? context.data.lookup(table, column.key, found.key) : context.data.inRow(table, column.key, rowCell);
    const value = screw[part];
    return [
      part,
      atom(
        context.steps.row({
          label: `screw: ${label}`,
          formula: column.inverse === true ? `25.4/${looked}` : looked,
          value,
          unit: part === 'flankDeg' ? '°' : 'mm',
          words: `from the table on ${context.data.name}`,
          source: `${table.standard}:${context.sourceWords.table(table.edition)}`,
        }),
        value,
      ),
    ] as const;
  });
  return { ref: { parts: Object.fromEntries(parts) }, conditions: found.conditions, live: found.live };
}
