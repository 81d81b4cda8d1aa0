// A file of joints, one row each: CSV, a workbook or JSON, told apart by what is in it.
import { createReadStream, statSync } from 'node:fs';
import { pipeline, Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { CsvError, parse } from 'csv-parse';
import { detectDelimiter } from 'hucre/csv';
import { readWorkbook } from '../hosts/xlsx/read';
import { isLabel } from '../joint/headings';
import { cellPosition } from '../sheet/addresses';
import { cannotBeRead } from '../cli/file-fault';
import { UserFault } from '../cli/user-fault';

export interface FileRow {
  readonly cells: readonly unknown[];
  /** As the file counts: its line or row; of JSON the entry, from 1. */
  readonly number: number;
}

export interface JointFile {
  readonly name: string;
  /** What its numbers count. */
  readonly counts: 'row' | 'entry';
  readonly heading: FileRow;
  readonly rows: AsyncIterable<FileRow> | Iterable<FileRow>;
  /** How much of it was read, of 1; undefined where its end is not known. */
  readonly progress: () => number | undefined;
}

/** As a spreadsheet reads what is typed. */
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;
export const typed = (text: string): string | number | null => {
  if (text === '') return null;
  const number = NUMBER.test(text) ? Number(text) : NaN;
  return Number.isFinite(number) ? number : text;
};

interface Opened {
  readonly name: string;
  readonly first: Buffer;
  readonly rest: AsyncIterator<Buffer>;
}

async function opened(file: string): Promise<Opened> {
  const name = file === '-' ? 'standard input' : file;
  const rest = (file === '-' ? process.stdin : createReadStream(file))[Symbol.asyncIterator]() as AsyncIterator<Buffer>;
  try {
    const { value, done } = await rest.next();
    if (done === true || value.length === 0) throw new UserFault(`${name} is empty`);
    return { name, first: value, rest };
  } catch (fault) {
    if (fault instanceof UserFault) throw fault;
    throw cannotBeRead(name, fault);
  }
}

async function* chunks({ first, rest }: Opened): AsyncGenerator<Buffer> {
  yield first;
  for (let next = await rest.next(); next.done !== true; next = await rest.next()) yield next.value;
}

const whole = (source: Opened): Promise<Buffer> => buffer(Readable.from(chunks(source)));

/** Text in UTF-8, or in UTF-16 by its mark: read as another encoding it would be other letters. */
function decoderOf({ name, first }: Opened): (bytes?: Uint8Array) => string {
  const decoder = new TextDecoder(first[0] === 0xff && first[1] === 0xfe ? 'utf-16le' : 'utf-8', { fatal: true });
  return bytes => {
    try {
      return decoder.decode(bytes, { stream: bytes !== undefined });
    } catch {
      throw new UserFault(`${name} is not text in UTF-8; in a spreadsheet, save it as "CSV UTF-8"`);
    }
  };
}

export async function jointFile(file: string): Promise<JointFile> {
  const source = await opened(file);
  if (source.first.subarray(0, 2).toString() === 'PK') return ofWorkbook(source.name, await whole(source));
  const begin = decoderOf(source)(source.first.subarray(0, 4096));
  if (/^\s*[[{]/.test(begin)) return ofJson(source.name, decoderOf(source)(await whole(source)));
  return ofCsv(source, detectDelimiter(begin), file === '-' ? undefined : statSync(file).size);
}

async function ofCsv(source: Opened, delimiter: string, size: number | undefined): Promise<JointFile> {
  let read = 0;
  async function* decoded(): AsyncGenerator<string> {
    const textOf = decoderOf(source);
    for await (const chunk of chunks(source)) {
      read += chunk.length;
      yield textOf(chunk);
    }
    yield textOf();
  }
  // the mark of an inch may stand in a cell without quotes
  const parser = parse({ delimiter, relax_column_count: true, relax_quotes: true, trim: true });
  // a fault of either ends the records
  pipeline(Readable.from(decoded()), parser, () => undefined);
  const records = parser[Symbol.asyncIterator]() as AsyncIterator<string[]>;
  let number = 0;
  /** Of a label every letter counts: 0012 is no number. */
  let labels: readonly boolean[] = [];
  /** Lines with nothing in them are counted, and are no joint. */
  const next = async (): Promise<FileRow | undefined> => {
    try {
      for (;;) {
        const { value, done } = await records.next();
        if (done === true) return undefined;
        number++;
        if (value.some(cell => cell !== ''))
          return { cells: value.map((cell, i) => (labels[i] === true && cell !== '' ? cell : typed(cell))), number };
      }
    } catch (fault) {
      if (!(fault instanceof CsvError)) throw fault;
      throw new UserFault(
        fault.code === 'CSV_QUOTE_NOT_CLOSED'
          ? `${source.name}, row ${number + 1}: a quote begins here and does not end`
          : `${source.name}, row ${number + 1}: ${fault.message}`,
      );
    }
  };
  async function* rows(): AsyncGenerator<FileRow> {
    for (let row = await next(); row !== undefined; row = await next()) yield row;
  }
  const heading = await next();
  if (heading === undefined) throw new UserFault(`${source.name} is empty`);
  labels = heading.cells.map(cell => typeof cell === 'string' && isLabel(cell));
  return { name: source.name, counts: 'row', heading, rows: rows(), progress: () => (size === undefined ? undefined : read / size) };
}

/** Rows with a value; the first is the heading. */
function headed(name: string, counts: JointFile['counts'], rows: readonly FileRow[]): JointFile {
  const [heading, ...body] = rows.filter(({ cells }) => cells.some(cell => cell !== null && cell !== undefined && cell !== ''));
  if (heading === undefined) throw new UserFault(`${name} is empty`);
  return { name, counts, heading, rows: body, progress: () => undefined };
}

async function ofWorkbook(name: string, bytes: Uint8Array): Promise<JointFile> {
  const { sheets } = await readWorkbook(bytes).catch((fault: unknown) => {
    throw new UserFault(`${name}: ${fault instanceof Error ? fault.message : String(fault)}`);
  });
  const grid: unknown[][] = [];
  for (const { at, value } of sheets[0]?.cells ?? []) {
    const { row, column } = cellPosition(at);
    (grid[row] ??= [])[column] = value;
  }
  const [sheet] = sheets;
  return headed(
    sheets.length > 1 && sheet !== undefined ? `${name}, sheet ${sheet.name}` : name,
    'row',
    [...grid].map((cells = [], row) => ({ cells: [...cells], number: row + 1 })),
  );
}

function ofJson(name: string, text: string): JointFile {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch (fault) {
    throw new UserFault(`${name} is not JSON: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
  const joints: readonly unknown[] = Array.isArray(parsed) ? parsed : [parsed];
  const wrong = joints.findIndex(joint => typeof joint !== 'object' || joint === null || Array.isArray(joint));
  if (wrong >= 0) throw new UserFault(`${name}, entry ${wrong + 1}: give an object with a value for each name`);
  const objects = joints as readonly Readonly<Record<string, unknown>>[];
  const names = [...new Set(objects.flatMap(joint => Object.keys(joint)))];
  return headed(name, 'entry', [
    { cells: names, number: 0 },
    ...objects.map((joint, i) => ({ cells: names.map(one => joint[one] ?? null), number: i + 1 })),
  ]);
}
