// bosswright card: all about one row.
import { Readable } from 'node:stream';
import { jointCard } from '../joint/card';
import { oneRow } from './joints';
import type { Main } from '../cli/ended';
import { refuseOver } from '../cli/file-fault';
import { given } from '../cli/options';
import { formatOf, writeTable } from './table-file';

export const USAGE = `bosswright card in.csv|xlsx|json [--row 1] [--base base.csv] [--out out.csv|xlsx|json|md]

Every value of one joint with its unit, formula, state and source. Without --out it goes to standard output; --as chooses the form.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['row', 'base', 'out', 'as'], [1, 1]);
  const format = formatOf(values.out, values.as);
  await refuseOver(values.out, files[0], values.base);
  const { inputs, base } = await oneRow(files[0] ?? '-', values.row, values.base);
  const rows = jointCard(inputs, 1, base);
  await writeTable(
    { inputs: [], results: ['name', 'value', 'unit', 'working', 'state', 'source'], rows: Readable.from(rows), isContinued: false },
    format,
    values.out,
  );
};
