// bosswright compare: what came back beside what was sent.
import { comparison } from '../handover/cli';
import type { Main } from '../cli/ended';
import { given } from './options';

export const USAGE = `bosswright compare sent.xlsx returned.xlsx

Lists inputs and formulas that were changed, answers, results, and what is missing or was added.`;

export const main: Main = (args, print) => {
  const {
    files: [sent = '', returned = ''],
  } = given(args, USAGE, [], [2, 2]);
  return comparison(sent, returned, print);
};
