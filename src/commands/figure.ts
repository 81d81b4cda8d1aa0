// bosswright figure: one row in section.
import { section } from '../figure/section';
import { baseOf, variantsOf } from '../joint/table';
import { oneRow } from './joints';
import { endingOf, PICTURES, writePicture } from './picture';
import type { Main } from '../cli/ended';
import { given, oneOf } from '../cli/options';

export const USAGE = `bosswright figure in.csv|xlsx|json out.svg|png [--row 1] [--base base.csv]

The joint of one row in section, to scale, with what fails marked where it fails.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['row', 'base'], [2, 2]);
  const [from = '-', to = ''] = files;
  oneOf(PICTURES, endingOf(to), `${to}: ending`);
  const { inputs, base } = await oneRow(from, values.row, values.base);
  const [variant] = variantsOf(inputs, baseOf(base));
  if (variant === undefined) return;
  await writePicture(section(variant).svg, to);
};
