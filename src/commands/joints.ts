// The joints of a file, each with its answer; what is wrong with it is told by row and column.
import { Refused } from '../core/refuse';
import { jointRows, type JointRows } from '../joint/table';
import { headerOf, isHeading } from '../joint/headings';
import { columnName } from '../sheet/addresses';
import { type JointFile, jointFile, type FileRow } from './joint-file';
import { UserFault } from '../cli/user-fault';

/** The first column that is at fault by itself. */
const columnAtFault = (heading: readonly unknown[]): number => heading.findIndex(cell => !isHeading(cell));

const placeIn = (file: JointFile, { number }: FileRow, column?: number): string => {
  if (file.counts === 'entry') return number === 0 ? file.name : `${file.name}, entry ${number}`;
  return `${file.name}, row ${number}${column === undefined || column < 0 ? '' : `, column ${columnName(column)}`}`;
};

/** What a refusal says, without the name of an argument that a file has not. */
const sentence = (fault: Refused): string => fault.message.replace(/^(?:inputs|base|outputs)(?:: | (?=has ))/, '');

function refusing<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    throw new UserFault(`${place}: ${sentence(fault)}`);
  }
}

async function baseIn(file: string | undefined): Promise<unknown[][] | undefined> {
  if (file === undefined) return undefined;
  const { name, heading, rows } = await jointFile(file);
  const all = [[...heading.cells]];
  for await (const { cells } of rows) all.push([...cells]);
  refusing(name, () => jointRows(['screw'], undefined, all));
  return all;
}

export interface AskedJoints {
  readonly file: JointFile;
  /** What replaces the defaults. */
  readonly base: unknown[][] | undefined;
  /** What is asked, of the rows of this file. */
  answering(outputs: readonly string[] | undefined): JointRows;
  /** As it is told: its file, its row, a column of it. */
  placeOf(row: FileRow, column?: number): string;
}

export async function joints(path: string, basePath: string | undefined): Promise<AskedJoints> {
  const base = await baseIn(basePath);
  const file = await jointFile(path);
  const { cells } = file.heading;
  refusing(placeIn(file, file.heading, columnAtFault(cells)), () => jointRows(cells, [['state']], base));
  return {
    file,
    base,
    answering: outputs => refusing('--results', () => jointRows(cells, outputs === undefined ? undefined : [[...outputs]], base)),
    placeOf: (row, column) => placeIn(file, row, column),
  };
}

/** What the first column of labels says of a row. */
function labelOf(heading: readonly unknown[], cells: readonly unknown[]): string {
  const [label] = headerOf(heading).labels;
  return label === undefined ? '' : String(cells[label.column] ?? '');
}

/** A row by its number, counted without the heading, under its names; what is no value in it is told. */
export async function oneRow(
  path: string,
  asked = '1',
  basePath: string | undefined,
): Promise<{ readonly inputs: unknown[][]; readonly base: unknown[][] | undefined; readonly label: string }> {
  const table = await joints(path, basePath);
  if (!/^[1-9]\d*$/.test(asked)) throw new UserFault(`--row ${asked}: give one number, counted without the heading`);
  const number = Number(asked);
  for await (const row of sliceOf(table, [number, number])) {
    for (const { column, message } of table.answering(['state']).refused(row.cells))
      console.error(`${table.placeOf(row, column)}: ${message}`);
    const { cells } = row;
    return { inputs: [[...table.file.heading.cells], [...cells]], base: table.base, label: labelOf(table.file.heading.cells, cells) };
  }
  throw new UserFault(`${table.file.name} has no row ${number} below its heading`);
}

/** `2-5` or `7`, counted without the heading, from 1; the rest of the file is not read. */
export function rowsAsked(text: string | undefined): readonly [first: number, last: number] {
  if (text === undefined) return [1, Infinity];
  const [, first = '', last = first] = /^(\d+)(?:-(\d+))?$/.exec(text) ?? [];
  if (first === '' || Number(first) < 1 || Number(last) < Number(first))
    throw new UserFault(`--rows ${text}: give 7 or 1-500, counted without the heading`);
  return [Number(first), Number(last)];
}

export async function* sliceOf({ file }: AskedJoints, [first, last]: readonly [number, number]): AsyncGenerator<FileRow> {
  let at = 0;
  for await (const row of file.rows) {
    if (++at < first) continue;
    yield row;
    if (at >= last) return;
  }
}
