// bosswright simulate: yield of one row.
import { typed } from './joint-file';
import { oneRow } from './joints';
import type { Main } from '../cli/ended';
import { refuseOver } from '../cli/file-fault';
import { given } from '../cli/options';
import { study } from './study';

export const USAGE = `bosswright simulate in.csv|xlsx|json [--row 1] [--samples 20000] [--seed 1] [--base base.csv]
                    [--out out.csv|xlsx|json|md]

How many joints meet each rule when every size that has limits is drawn within them; ENCL.JOINT.SIMULATE. The same seed gives the
same counts everywhere. Without --out it goes to standard output; --as chooses the form.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['row', 'samples', 'seed', 'base', 'out', 'as'], [1, 1]);
  await refuseOver(values.out, files[0], values.base);
  const { inputs, base } = await oneRow(files[0] ?? '-', values.row, values.base);
  const [samples, seed] = [values.samples, values.seed].map(text => (text === undefined ? undefined : typed(text)));
  await study('JOINT.SIMULATE', [inputs, samples, seed, base], values);
};
