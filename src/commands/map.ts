// bosswright map: one row over two of its inputs.
import { typed } from './joint-file';
import { oneRow } from './joints';
import type { Main } from '../cli/ended';
import { given } from '../cli/options';
import { refuseOver } from '../cli/file-fault';
import { UserFault } from '../cli/user-fault';
import { study } from './study';
import { listed } from './table';

export const USAGE = `bosswright map in.csv|xlsx|json --x NAME --x-values 2,2.5,3 --y NAME --y-values 6,7 [--result state] [--row 1]
               [--base base.csv] [--out out.csv|xlsx|json|md|svg|png]

One output of one joint over two of its inputs: x along the top, y down the side; ENCL.JOINT.MAP. As SVG or PNG the
states are drawn, whatever the result. Without --out it goes to standard output; --as chooses the form.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['x', 'x-values', 'y', 'y-values', 'result', 'row', 'base', 'out', 'as'], [1, 1]);
  const { x, y, result = 'state' } = values;
  const [across, down] = [listed(values['x-values']), listed(values['y-values'])];
  if (x === undefined || y === undefined || across === undefined || down === undefined)
    throw new UserFault(`give --x, --x-values, --y and --y-values\n\n${USAGE}`);
  await refuseOver(values.out, files[0], values.base);
  const { inputs, base } = await oneRow(files[0] ?? '-', values.row, values.base);
  await study('JOINT.MAP', [inputs, x, [across.map(typed)], y, [down.map(typed)], result, base], values);
};
