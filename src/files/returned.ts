// A file that came back: what was changed in it, and which of its inputs the own workbook can take over.
import { changeLists } from '../handover/compare/change-lists';
import { compare } from '../handover/compare/compare';
import { comparedOf } from '../handover/compare/compared-of';
import { ownPlaces } from '../handover/compare/own-place';
import type { ComparedWorkbook } from '../handover/compare/seen';
import { titleIn } from '../handover/compare/title-in';
import type { ChangedInput } from '../handover/compare/returned-changes';
import type { SvgToPng } from '../handover/pages/figure';
import type { Language } from '../handover/words/language';
import { type PageWords, WORDS } from '../handover/words/words';
import { type Offers, offersOf } from '../handover/write/accepted';
import { copyOf } from '../handover/write/copy';
import { readWithRemarks, workbookIn, type RemarkedWorkbook } from '../hosts/xlsx/read';
import { writeOwnSheets } from '../hosts/xlsx/write';
import { readPackage } from '../package/read';
import { troubleWith, UnreadableFile } from '../package/unreadable';
import type { NamedFile } from '../sheet/workbook-files';
import { opened } from './hand-over';
import { troubleOf } from './trouble';
import type { FileJobs, Returned } from './jobs';

const withRemarks = ({ name, bytes }: NamedFile): Promise<RemarkedWorkbook> =>
  readWithRemarks(bytes).catch((fault: unknown) => {
    throw troubleWith(name, troubleOf(fault));
  });

/** What would be sent now, under the title and in the language of what came back. */
async function sentNow(own: NamedFile, back: RemarkedWorkbook, spoken: Language, pngOf: SvgToPng): Promise<NamedFile> {
  const { file, source, choice, goesAlong } = opened(own, { along: ['comments', 'threaded comments'], language: spoken });
  const { title, language = choice.language } = titleIn(comparedOf('', back));
  const { bytes } = await copyOf(file, source, title, { choice: { ...choice, language }, goesAlong, pngOf, write: writeOwnSheets });
  return { name: own.name, bytes };
}

export async function returned(
  { own, sent, returned: back, language }: FileJobs['compare']['given'],
  renderer: () => Promise<SvgToPng>,
): Promise<Returned> {
  const came = await withRemarks(back);
  if (came.outside.length > 0) throw new UnreadableFile('leadsOut', back.name, came.outside.join(', '));
  const went = sent ?? (await sentNow(own, came, language, await renderer()));
  const before = comparedOf(went.name, await withRemarks(went));
  const words = WORDS[language];
  const changes = compare(before, comparedOf(back.name, { ...came, names: [] }), words);
  return { sent: went, lists: changeLists(changes, words), ...offersIn(own, before, changes.changedInputs, words) };
}

function offersIn(own: NamedFile, sent: ComparedWorkbook, inputs: readonly ChangedInput[], words: PageWords): Offers {
  const file = readPackage(own.bytes);
  return offersOf(file, inputs, ownPlaces(sent, comparedOf(own.name, workbookIn(file)), words), words);
}

export async function offers({ own, sent, inputs, language }: FileJobs['offers']['given']): Promise<Offers> {
  return offersIn(own, comparedOf(sent.name, await withRemarks(sent)), inputs, WORDS[language]);
}
