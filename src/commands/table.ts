// bosswright table: every row of inputs with its results, one row after another.
import type { Cell } from '../core/kinds';
import { labelCell } from '../joint/table';
import { joints, rowsAsked, sliceOf } from './joints';
import type { Main } from '../cli/ended';
import { refuseOver } from '../cli/file-fault';
import { given } from '../cli/options';
import { progressOf } from './progress';
import { UserFault } from '../cli/user-fault';
import { formatOf, writeTable } from './table-file';

export const USAGE = `bosswright table in.csv|xlsx|json [--base base.csv] [--results "state, reason"] [--rows 1-25000]
                 [--out out.csv|xlsx|json|md]

The first row of the file holds names of inputs (ENCL.JOINT.INPUTS() lists them), each further row is a joint; columns headed variant,
name, note or part, or in brackets, are labels. - reads standard input; without --out the table goes to standard output, --as json|md
in another form than CSV.
  --base     values that replace the defaults, in two columns or a row under their names
  --results  names of ENCL.JOINT.OUTPUTS(); every output but the remedy if left out
  --rows     these rows alone, counted without the heading; a part that does not begin with 1 has no heading, so that parts put
             together are the whole`;

const MOST_TOLD = 20;

const isUnknown = (cell: Cell): boolean => cell === 'not checked' || (typeof cell === 'string' && cell.startsWith('no value'));

export const listed = (names: string | undefined): string[] | undefined =>
  names
    ?.split(',')
    .map(name => name.trim())
    .filter(name => name !== '');

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['base', 'results', 'rows', 'out', 'as'], [1, 1]);
  const format = formatOf(values.out, values.as);
  const asked = listed(values.results);
  if (asked?.length === 0) throw new UserFault('--results names nothing; leave it out for every output but the remedy');
  const slice = rowsAsked(values.rows);
  await refuseOver(values.out, files[0], values.base);
  const table = await joints(files[0] ?? '-', values.base);
  const inputs = table.file.heading.cells.map(String);
  // labels are among the inputs as they stand
  const { heading, answer, refused } = table.answering(asked);
  const labels = asked === undefined ? heading.filter(name => inputs.includes(String(name))).length : 0;
  const progress = progressOf(table.file.progress);
  let told = 0;
  async function* rows(): AsyncGenerator<(Cell | null)[]> {
    for await (const row of sliceOf(table, slice)) {
      const cells = answer(row.cells);
      if (cells.some(isUnknown))
        for (const { column, message } of refused(row.cells))
          if (told++ < MOST_TOLD) console.error(`${table.placeOf(row, column)}: ${message}`);
      progress.step();
      yield [...inputs.map((_, i) => asGiven(row.cells[i])), ...cells.slice(labels)];
    }
  }
  try {
    await writeTable({ inputs, results: heading.slice(labels).map(String), rows: rows(), isContinued: slice[0] > 1 }, format, values.out);
  } finally {
    progress.end();
  }
  if (told > MOST_TOLD) console.error(`and ${told - MOST_TOLD} more`);
};

const asGiven = (raw: unknown): Cell | null => (raw === null || raw === undefined ? null : labelCell(raw));
