// Studies of one row: what the function of that name answers, as a table, or as its figure where it has one.
import { Readable } from 'node:stream';
import type { Cell } from '../core/kinds';
import { Refused } from '../core/refuse';
import { UserFault } from '../cli/user-fault';
import { isDrawn, studyFigure } from '../figure/study-figure';
import { call } from '../studies';
import { endingOf, PICTURES, writePicture } from './picture';
import { formatOf, writeTable } from './table-file';

export async function study(id: string, args: readonly unknown[], to: { readonly out?: string; readonly as?: string }): Promise<void> {
  if (to.out !== undefined && isDrawn(id) && PICTURES.some(ending => ending === endingOf(to.out ?? '')))
    return writePicture(
      drawn(() => studyFigure(id, args).svg()),
      to.out,
    );
  const format = formatOf(to.out, to.as);
  const answer = call(id, args);
  if (!answer.ok) throw new UserFault(asOption(answer.message));
  const [heading = [], ...rows] = answer.value as Cell[][];
  await writeTable({ inputs: [], results: heading.map(String), rows: Readable.from(rows), isContinued: false }, format, to.out);
}

/** An argument by its option: the row of inputs has none. */
const asOption = (message: string): string =>
  message.replace(/^(?:x_values|y_values|x|y|output|samples|seed)\b/, argument =>
    argument === 'output' ? '--result' : `--${argument.replace('_', '-')}`,
  );

function drawn(svg: () => string): string {
  try {
    return svg();
  } catch (fault) {
    throw fault instanceof Refused ? new UserFault(asOption(fault.message)) : fault;
  }
}
