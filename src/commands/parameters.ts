// bosswright parameters: the lengths and angles of one row, for the parameter table of a CAD program.
import { writeFile } from 'node:fs/promises';
import { PARAMETER_FORMATS, parametersOf } from '../joint/parameters';
import { baseOf, variantsOf } from '../joint/table';
import { oneRow } from './joints';
import type { Main } from '../cli/ended';
import { refuseOver } from '../cli/file-fault';
import { endingOf, given } from '../cli/options';

export const USAGE = `bosswright parameters in.csv|xlsx|json out.csv|json [--row 1] [--base base.csv]

The lengths and angles of one row: name, value, unit, lower and upper deviation, source. A name is the label of the row, or joint, and
what the value is called, joined by underscores.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['row', 'base'], [2, 2]);
  const [from = '-', to = ''] = files;
  const format = PARAMETER_FORMATS[endingOf(['csv', 'json'], to)];
  await refuseOver(to, from, values.base);
  const { inputs, base, label } = await oneRow(from, values.row, values.base);
  const [variant] = variantsOf(inputs, baseOf(base));
  if (variant !== undefined) await writeFile(to, format(parametersOf(variant, label)));
};
