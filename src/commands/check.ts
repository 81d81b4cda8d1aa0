// bosswright check: for a design's own tests.
import type { Cell } from '../core/kinds';
import { joints, rowsAsked, sliceOf } from './joints';
import type { Main } from '../cli/ended';
import { given } from '../cli/options';
import { UserFault } from '../cli/user-fault';

export const USAGE = `bosswright check in.csv|xlsx|json [--base base.csv] [--rows 1-25000]

Lists the rows that do not pass, with reason and remedy. Exits with 1 if a row fails or is not checked; a row to review is listed
and does not change that.`;

export const main: Main = async (args, print) => {
  const { files, values } = given(args, USAGE, ['base', 'rows'], [1, 1]);
  const table = await joints(files[0] ?? '-', values.base);
  const judged = table.answering(['state', 'reason']);
  const mended = table.answering(['remedy']);
  const counts = new Map<Cell, number>();
  for await (const row of sliceOf(table, rowsAsked(values.rows))) {
    const [state = '', reason = ''] = judged.answer(row.cells);
    counts.set(state, (counts.get(state) ?? 0) + 1);
    if (state === 'pass') continue;
    const refused = state === 'not checked' ? judged.refused(row.cells) : [];
    for (const { column, message } of refused) print(`${table.placeOf(row, column)}: ${state}: ${message}`);
    if (refused.length > 0) continue;
    const [remedy = '–'] = mended.answer(row.cells);
    print(`${table.placeOf(row)}: ${state}: ${reason}${remedy === '–' || state === 'not checked' ? '' : `; remedy: ${remedy}`}`);
  }
  if (counts.size === 0) throw new UserFault(`${table.file.name} has no such rows below its heading`);
  print([...counts].map(([state, count]) => `${count} ${state}`).join(', '));
  const bad = (counts.get('fail') ?? 0) + (counts.get('not checked') ?? 0);
  if (bad > 0) throw new UserFault(`${bad} of ${[...counts.values()].reduce((sum, one) => sum + one, 0)} rows fail or are not checked`);
};
