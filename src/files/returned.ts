// A file that came back: what was changed in it, and which of its inputs the own workbook can take over.
import { changeLine, changeLists } from '../handover/compare/change-lists';
import { compare } from '../handover/compare/compare';
import { comparedOf } from '../handover/compare/compared-of';
import { titleIn } from '../handover/compare/title-in';
import type { ChangedInput } from '../handover/compare/returned-changes';
import type { SvgToPng } from '../handover/pages/figure';
import { accepted } from '../handover/write/accepted';
import { copyOf } from '../handover/write/copy';
import { readWithRemarks, type RemarkedWorkbook } from '../hosts/xlsx/read';
import { writeOwnSheets } from '../hosts/xlsx/write';
import { readPackage } from '../package/read';
import type { NamedFile } from '../sheet/workbook-files';
import { opened } from './hand-over';
import type { FileJobs, Offer, Offers, Returned } from './jobs';

const withRemarks = ({ name, bytes }: NamedFile): Promise<RemarkedWorkbook> =>
  readWithRemarks(bytes).catch((fault: unknown) => {
    throw new Error(`${name}: ${fault instanceof Error ? fault.message : String(fault)}`);
  });

/** What would be sent now, under the title and in the language of what came back. */
async function sentNow(own: NamedFile, back: RemarkedWorkbook, pngOf: SvgToPng): Promise<NamedFile> {
  const { file, source, choice, goesAlong } = opened(own, { along: ['comments', 'threaded comments'] });
  const { title, language = choice.language } = titleIn(comparedOf('', back));
  const { bytes } = await copyOf(file, source, title, { choice: { ...choice, language }, goesAlong, pngOf, write: writeOwnSheets });
  return { name: own.name, bytes };
}

export async function returned(
  { own, sent, returned: back }: FileJobs['compare']['given'],
  renderer: () => Promise<SvgToPng>,
): Promise<Returned> {
  const came = await withRemarks(back);
  if (came.outside.length > 0) throw new Error(`${back.name} leads out of the file: ${came.outside.join(', ')}`);
  const went = sent ?? (await sentNow(own, came, await renderer()));
  const changes = compare(comparedOf(went.name, await withRemarks(went)), comparedOf(back.name, { ...came, names: [] }));
  return { lists: changeLists(changes), ...(await offers({ own, inputs: changes.changedInputs })) };
}

/** The inputs are asked for as on the command line, and each answer is no: nothing is written here. */
export async function offers({ own, inputs }: FileJobs['offers']['given']): Promise<Offers> {
  const found: Offer[] = [];
  const left = [...inputs];
  const takeNext = (question: string): ChangedInput => {
    const at = left.findIndex(input => question.startsWith(changeLine(input)));
    return left.splice(0, at + 1)[at] as ChangedInput;
  };
  const { lines } = await accepted(readPackage(own.bytes), inputs, async question => {
    found.push({ input: takeNext(question), words: question.replace(/\?$/, '') });
    return false;
  });
  return { offers: found, refused: lines };
}
