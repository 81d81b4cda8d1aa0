// bosswright sensitivity: what moves one output of one row.
import { oneRow } from './joints';
import type { Main } from '../cli/ended';
import { refuseOver } from '../cli/file-fault';
import { given } from '../cli/options';
import { UserFault } from '../cli/user-fault';
import { study } from './study';

export const USAGE = `bosswright sensitivity in.csv|xlsx|json --result "engagement min" [--row 1] [--base base.csv]
                       [--out out.csv|xlsx|json|md|svg|png]

What each input and its tolerance make of one output, largest first; ENCL.JOINT.SENSITIVITY. As SVG or PNG it is drawn as bars.
Without --out it goes to standard output; --as chooses the form.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['result', 'row', 'base', 'out', 'as'], [1, 1]);
  if (values.result === undefined) throw new UserFault(`give --result\n\n${USAGE}`);
  await refuseOver(values.out, files[0], values.base);
  const { inputs, base } = await oneRow(files[0] ?? '-', values.row, values.base);
  await study('JOINT.SENSITIVITY', [inputs, values.result, base], values);
};
