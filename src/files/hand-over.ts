// The hand-over of a workbook file: what the copy will be, and the copy.
import { hashOf } from '../handover/handover';
import { CHOSEN_BY_ITSELF, type HandoverChoice, readChoice } from '../handover/pages/choice';
import type { SvgToPng } from '../handover/pages/figure';
import type { TitleBlock } from '../handover/pages/title-block';
import { sourceOfFile } from '../handover/read/from-file';
import { amountOf, ASKED_KINDS, linesOf } from '../handover/write/carrying';
import { copyOf, plannedCopy, type Writing } from '../handover/write/copy';
import { pagesOf } from '../hosts/xlsx/print';
import { workbookIn } from '../hosts/xlsx/read';
import { writeOwnSheets } from '../hosts/xlsx/write';
import { type UserPackage, readPackage } from '../package/read';
import { rememberedIn, rememberedName } from '../package/remembered';
import type { SourceWorkbook } from '../sheet/workbook-values';
import type { NamedFile } from '../sheet/workbook-files';
import type { Copy, CopySummary, FileJobs, Wanted } from './jobs';

/** The counts do not depend on what stands in the title block. */
const UNTITLED: TitleBlock = { part: '', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' };

/** A figure is as high with an empty picture. */
const NO_PICTURE = (): Uint8Array => new Uint8Array();

interface OpenedFile {
  readonly file: UserPackage;
  readonly source: SourceWorkbook;
  readonly choice: HandoverChoice;
  readonly goesAlong: NonNullable<Writing['goesAlong']>;
}

export function opened({ name, bytes }: NamedFile, { choice, along, language }: Omit<Wanted, 'file'>): OpenedFile {
  const file = readPackage(bytes);
  return {
    file,
    source: sourceOfFile(name, workbookIn(file)),
    choice: choice ?? readChoice(rememberedIn(file)) ?? { ...CHOSEN_BY_ITSELF, language },
    goesAlong: kind => along.includes(kind),
  };
}

export function summary({ file: given, ...wanted }: Wanted): CopySummary {
  const { file, source, choice, goesAlong } = opened(given, wanted);
  const { copy, left } = plannedCopy(file, source, UNTITLED, { choice, goesAlong, pngOf: NO_PICTURE });
  const { live, asValues, findings, choosable, plan, own } = copy;
  const isLeft = new Set(left.map(({ part }) => part));
  return {
    choice,
    live,
    asValues,
    findings,
    choosable,
    pages: plan.sheets.filter(({ name }) => own.has(name)).reduce((sum, sheet) => sum + pagesOf(sheet), 0),
    userSheets: file.sheets.map(({ name, part }) => ({ name, goesAlong: !isLeft.has(part) })),
    carried: linesOf(file.carries.filter(({ part }) => !isLeft.has(part))).map(line => ({
      kind: line.kind,
      amount: amountOf(line),
      isAsked: ASKED_KINDS.includes(line.kind),
    })),
    mark: hashOf(source),
  };
}

export async function handedOver(
  { file: given, title, mark, ...wanted }: FileJobs['handOver']['given'],
  renderer: () => Promise<SvgToPng>,
): Promise<Copy | undefined> {
  const { file, source, choice, goesAlong } = opened(given, wanted);
  if (hashOf(source) !== mark) return undefined;
  const making: Writing = { choice, goesAlong, pngOf: await renderer(), write: writeOwnSheets };
  const { bytes, live, asValues, ending } = await copyOf(file, source, title, making);
  return { bytes, live, asValues, ending, remembers: rememberedName(JSON.stringify(choice)) };
}
