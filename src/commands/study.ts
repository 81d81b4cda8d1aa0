// Studies of one row: what the function of that name answers, as a table.
import { Readable } from 'node:stream';
import type { Cell } from '../core/kinds';
import { UserFault } from '../cli/user-fault';
import { call } from '../studies';
import { formatOf, writeTable } from './table-file';

export async function study(id: string, args: readonly unknown[], to: { readonly out?: string; readonly as?: string }): Promise<void> {
  const format = formatOf(to.out, to.as);
  const answer = call(id, args);
  if (!answer.ok) throw new UserFault(answer.message);
  const [heading = [], ...rows] = answer.value as Cell[][];
  await writeTable({ inputs: [], results: heading.map(String), rows: Readable.from(rows), isContinued: false }, format, to.out);
}
