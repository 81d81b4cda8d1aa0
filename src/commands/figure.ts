// bosswright figure: one row in section.
import { writeFile } from 'node:fs/promises';
import { section } from '../figure/section';
import { sectionDxf } from '../figure/section-dxf';
import { baseOf, variantsOf } from '../joint/table';
import { oneRow } from './joints';
import { PICTURES, writePicture } from './picture';
import type { Main } from '../cli/ended';
import { refuseOver } from '../cli/file-fault';
import { endingOf, given } from '../cli/options';

export const USAGE = `bosswright figure in.csv|xlsx|json out.svg|png|dxf [--row 1] [--base base.csv]

The joint of one row in section, to scale, with what fails marked where it fails; as DXF the outlines in mm, on layers.`;

export const main: Main = async args => {
  const { files, values } = given(args, USAGE, ['row', 'base'], [2, 2]);
  const [from = '-', to = ''] = files;
  const ending = endingOf([...PICTURES, 'dxf'], to);
  await refuseOver(to, from, values.base);
  const { inputs, base } = await oneRow(from, values.row, values.base);
  const [variant] = variantsOf(inputs, baseOf(base));
  if (variant === undefined) return;
  if (ending === 'dxf') await writeFile(to, sectionDxf(variant));
  else await writePicture(section(variant).svg, to);
};
