// bosswright compare: what came back beside what was sent.
import { writeFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { UserFault } from '../cli/user-fault';
import { bytesAt, packageAt } from './cli';
import { changeLists } from './compare/change-lists';
import { compare } from './compare/compare';
import { ownPlaces } from './compare/own-place';
import { comparedOf } from './compare/compared-of';
import { accepted, type Ask } from './write/accepted';
import { readWithRemarks, workbookIn, type RemarkedWorkbook } from '../hosts/xlsx/read';
import { given } from '../cli/options';

export const USAGE = `bosswright compare sent.xlsx returned.xlsx [--into mine.xlsx --out new.xlsx]

Lists inputs and formulas that were changed, answers, results, and what is missing or was added. With --into it asks of each
changed input whether it goes into your own workbook, which is written under the name after --out.`;

async function askedAtTerminal(question: string): Promise<boolean> {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  try {
    return /^y(es)?$/i.test((await terminal.question(`${question} [y/n] `)).trim());
  } finally {
    terminal.close();
  }
}

async function openedWithRemarks(path: string): Promise<RemarkedWorkbook> {
  return readWithRemarks(await bytesAt(path)).catch((fault: unknown) => {
    throw new UserFault(`${path}: ${fault instanceof Error ? fault.message : String(fault)}`);
  });
}

export async function main(args: readonly string[], print: (line: string) => void, ask: Ask = askedAtTerminal): Promise<void> {
  const {
    files: [sentPath = '', returnedPath = ''],
    values: { into, out },
  } = given(args, USAGE, ['into', 'out'], [2, 2]);
  if ((into === undefined) !== (out === undefined)) throw new UserFault(USAGE);
  const returned = await openedWithRemarks(returnedPath);
  if (returned.outside.length > 0) throw new UserFault(`${returnedPath} leads out of the file: ${returned.outside.join(', ')}`);
  const sent = comparedOf(basename(sentPath), await openedWithRemarks(sentPath));
  const changes = compare(sent, comparedOf(basename(returnedPath), { ...returned, names: [] }));
  for (const { title, lines } of changeLists(changes)) {
    print(`${title}: ${lines.length === 0 ? 'none' : lines.length}`);
    for (const line of lines) print(`  ${line}`);
  }
  if (into === undefined || out === undefined) return;
  const own = await packageAt(into);
  const { bytes, lines } = await accepted(own, changes.changedInputs, ownPlaces(sent, comparedOf(basename(into), workbookIn(own))), ask);
  for (const line of lines) print(line);
  await writeFile(out, bytes);
  print(out);
}
