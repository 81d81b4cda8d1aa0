// A file of joints, one row each: CSV, a workbook or JSON, told apart by what is in it.
import { createReadStream, statSync } from 'node:fs';
import { Readable } from 'node:stream';
import { buffer } from 'node:stream/consumers';
import { parse } from 'csv-parse';
import { detectDelimiter } from 'hucre/csv';
import { readWorkbook } from '../hosts/xlsx/read';
import { cellPosition } from '../sheet/addresses';
import { UserFault } from '../cli/user-fault';

export interface FileRow {
  readonly cells: readonly unknown[];
  /** As the file counts: its line or row; of JSON the entry, from 1. */
  readonly number: number;
}

export interface JointFile {
  readonly name: string;
  readonly heading: FileRow;
  readonly rows: AsyncIterable<FileRow> | Iterable<FileRow>;
  /** How much of it was read, of 1; undefined where its end is not known. */
  readonly progress: () => number | undefined;
}

/** As a spreadsheet reads what is typed. */
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;
const typed = (text: string): string | number | null => (text === '' ? null : NUMBER.test(text) ? Number(text) : text);

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
    throw new UserFault(`${name} cannot be read`);
  }
}

async function* chunks({ first, rest }: Opened): AsyncGenerator<Buffer> {
  yield first;
  for (let next = await rest.next(); next.done !== true; next = await rest.next()) yield next.value;
}

const whole = (source: Opened): Promise<Buffer> => buffer(Readable.from(chunks(source)));

export async function jointFile(file: string): Promise<JointFile> {
  const source = await opened(file);
  const begin = source.first.subarray(0, 4096).toString('utf8');
  if (begin.startsWith('PK')) return ofWorkbook(source.name, await whole(source));
  if (/^\uFEFF?\s*[[{]/.test(begin)) return ofJson(source.name, (await whole(source)).toString('utf8'));
  return ofCsv(source, detectDelimiter(begin), file === '-' ? undefined : statSync(file).size);
}

async function ofCsv(source: Opened, delimiter: string, size: number | undefined): Promise<JointFile> {
  let read = 0;
  async function* counted(): AsyncGenerator<Buffer> {
    for await (const chunk of chunks(source)) {
      read += chunk.length;
      yield chunk;
    }
  }
  const parser = Readable.from(counted()).pipe(parse({ bom: true, delimiter, relax_column_count: true, trim: true }));
  const records = parser[Symbol.asyncIterator]() as AsyncIterator<string[]>;
  let number = 0;
  /** Lines with nothing on them are counted, and are no joint. */
  const next = async (): Promise<FileRow | undefined> => {
    try {
      for (;;) {
        const { value, done } = await records.next();
        if (done === true) return undefined;
        number++;
        if (value.length > 1 || value[0] !== '') return { cells: value.map(typed), number };
      }
    } catch (fault) {
      throw new UserFault(`${source.name}: ${fault instanceof Error ? fault.message : String(fault)}`);
    }
  };
  async function* rows(): AsyncGenerator<FileRow> {
    for (let row = await next(); row !== undefined; row = await next()) yield row;
  }
  const heading = await next();
  if (heading === undefined) throw new UserFault(`${source.name} is empty`);
  return { name: source.name, heading, rows: rows(), progress: () => (size === undefined ? undefined : read / size) };
}

/** Rows with a value; the first is the heading. */
function headed(name: string, rows: readonly FileRow[]): JointFile {
  const [heading, ...body] = rows.filter(({ cells }) => cells.some(cell => cell !== null && cell !== undefined && cell !== ''));
  if (heading === undefined) throw new UserFault(`${name} is empty`);
  return { name, heading, rows: body, progress: () => undefined };
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
  return headed(
    name,
    [...grid].map((cells = [], row) => ({ cells: [...cells], number: row + 1 })),
  );
}

function ofJson(name: string, text: string): JointFile {
  let parsed: unknown;
  try {
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (fault) {
    throw new UserFault(`${name}: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
  const joints: readonly unknown[] = Array.isArray(parsed) ? parsed : [parsed];
  const wrong = joints.findIndex(joint => typeof joint !== 'object' || joint === null || Array.isArray(joint));
  if (wrong >= 0) throw new UserFault(`${name}, entry ${wrong + 1}: give an object with a value for each name`);
  const objects = joints as readonly Readonly<Record<string, unknown>>[];
  const names = [...new Set(objects.flatMap(joint => Object.keys(joint)))];
  return headed(name, [
    { cells: names, number: 0 },
    ...objects.map((joint, i) => ({ cells: names.map(one => joint[one] ?? null), number: i + 1 })),
  ]);
}
