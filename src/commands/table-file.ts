// A table of any length, written row by row: CSV, a workbook, JSON or Markdown.
import { createWriteStream } from 'node:fs';
import { Readable, type Writable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import type { ReadableStream } from 'node:stream/web';
import { formatCsvValue } from 'hucre/csv';
import { writeXlsxStream } from 'hucre/xlsx';
import type { Cell } from '../core/kinds';
import { UserFault } from '../cli/user-fault';
import { endingOf, oneOf } from '../cli/options';

export interface WrittenTable {
  /** Above the inputs, then above the results. */
  readonly inputs: readonly string[];
  readonly results: readonly string[];
  readonly rows: AsyncIterable<readonly (Cell | null)[]>;
  /** A part that is not the first is put behind it. */
  readonly isContinued: boolean;
}

export const FORMATS = ['csv', 'xlsx', 'json', 'md'] as const;
export type Format = (typeof FORMATS)[number];

async function* json({ inputs, results, rows }: WrittenTable): AsyncGenerator<string> {
  const named = (names: readonly string[], cells: readonly unknown[]) =>
    Object.fromEntries(names.map((name, i) => [name, cells[i] ?? null]));
  let before = '[\n';
  for await (const row of rows) {
    yield `${before}${JSON.stringify({ inputs: named(inputs, row), results: named(results, row.slice(inputs.length)) })}`;
    before = ',\n';
  }
  yield before === '[\n' ? '[]\n' : '\n]\n';
}

/** A stroke would end the cell, a line the row. */
const inMarkdown = (cell: Cell | null): string =>
  cell === null
    ? ''
    : typeof cell === 'number'
      ? String(Number(cell.toPrecision(6)))
      : String(cell).replace(/[|\\]/g, '\\$&').replace(/\s+/g, ' ');

async function* markdown({ inputs, results, rows, isContinued }: WrittenTable): AsyncGenerator<string> {
  const line = (cells: readonly (Cell | null)[]): string => `| ${cells.map(inMarkdown).join(' | ')} |\n`;
  const heading = [...inputs, ...results];
  if (!isContinued) yield line(heading) + line(heading.map(() => '---'));
  for await (const row of rows) yield line(row);
}

type CellRow = (Cell | null)[];

/** Each row a line, the last one too: parts are put together as they are. */
const csvLine = (cells: readonly (Cell | null)[]): string => `${cells.map(cell => formatCsvValue(cell)).join(',')}\r\n`;

async function* csv({ inputs, results, rows, isContinued }: WrittenTable): AsyncGenerator<string> {
  if (!isContinued) yield csvLine([...inputs, ...results]);
  for await (const row of rows) yield csvLine(row);
}

const PIECE = 1 << 16;

/** Many short lines are few long texts. */
async function* pieces(lines: AsyncIterable<string>): AsyncGenerator<string> {
  let piece = '';
  for await (const line of lines) {
    piece += line;
    if (piece.length < PIECE) continue;
    yield piece;
    piece = '';
  }
  yield piece;
}

const workbook = ({ inputs, results, rows }: WrittenTable): ReadableStream<Uint8Array> =>
  writeXlsxStream(rows as AsyncIterable<CellRow>, {
    name: 'Joints',
    columns: [...inputs, ...results].map(name => ({ header: name })),
    freezePane: { rows: 1 },
  }) as ReadableStream<Uint8Array>;

const STREAMS: Readonly<Record<Format, (table: WrittenTable) => Readable>> = {
  csv: table => Readable.from(pieces(csv(table))),
  xlsx: table => Readable.fromWeb(workbook(table)),
  json: table => Readable.from(pieces(json(table))),
  md: table => Readable.from(pieces(markdown(table))),
};

/** By the ending of the file, or by what is asked for standard output. */
export function formatOf(file: string | undefined, as: string | undefined): Format {
  if (file === undefined) return oneOf(FORMATS, as ?? 'csv', '--as');
  if (as !== undefined) throw new UserFault('--as is for standard output; a file is written by its ending');
  return endingOf(FORMATS, file, '--out ');
}

export async function writeTable(table: WrittenTable, format: Format, file: string | undefined): Promise<void> {
  const to: Writable = file === undefined ? process.stdout : createWriteStream(file);
  await pipeline(STREAMS[format](table), to, { end: file !== undefined });
}
