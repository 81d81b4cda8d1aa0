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
import { choiceOf } from './pages/choice';
import type { Language } from './words/language';
import { WORDS } from './words/words';
import { accepted, type Ask } from './write/accepted';
import { readWithRemarks, workbookIn, type RemarkedWorkbook } from '../hosts/xlsx/read';
import { given } from '../cli/options';

export const USAGE = `bosswright compare sent.xlsx returned.xlsx [--language german] [--into mine.xlsx --out new.xlsx]

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

function languageNamed(asked: string | undefined): Language {
  try {
    return choiceOf(asked === undefined ? {} : { language: asked }).language ?? 'English';
  } catch (fault) {
    throw new UserFault(fault instanceof Error ? fault.message : String(fault));
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
    values: { into, out, language },
  } = given(args, USAGE, ['into', 'out', 'language'], [2, 2]);
  const words = WORDS[languageNamed(language)];
  if ((into === undefined) !== (out === undefined)) throw new UserFault(USAGE);
  const returned = await openedWithRemarks(returnedPath);
  if (returned.outside.length > 0) throw new UserFault(`${returnedPath} leads out of the file: ${returned.outside.join(', ')}`);
  const sent = comparedOf(basename(sentPath), await openedWithRemarks(sentPath));
  const changes = compare(sent, comparedOf(basename(returnedPath), { ...returned, names: [] }), words);
  for (const { heading, lines } of changeLists(changes, words)) {
    print(`${heading}: ${lines.length === 0 ? words.compare.none : lines.length}`);
    for (const line of lines) print(`  ${line}`);
  }
  if (into === undefined || out === undefined) return;
  const own = await packageAt(into);
  const placeOf = ownPlaces(sent, comparedOf(basename(into), workbookIn(own)), words);
  const { bytes, lines } = await accepted(own, changes.changedInputs, placeOf, ask, words);
  for (const line of lines) print(line);
  await writeFile(out, bytes);
  print(out);
}
