// bosswright handover: a workbook file in, the hand-over copy out.
import { readFile, writeFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { demoWorkbook } from '../demo/demo';
import { GUIDES } from '../demo/guides';
import { pngRenderer } from '../hosts/png/node';
import { workbookIn } from '../hosts/xlsx/read';
import { pagesOf } from '../hosts/xlsx/print';
import { writeOwnSheets, writeWorkbook } from '../hosts/xlsx/write';
import type { CarriedKind } from '../package/carried';
import { readPackage, type UserPackage } from '../package/read';
import { rememberedIn, withRemembered } from '../package/remembered';
import { FILE_FAULTS, UnreadableFile } from '../package/unreadable';
import { ASKED_KINDS, linesOf, optionOf, shownLine } from './write/carrying';
import { copyOf, type WrittenCopy, type Writing } from './write/copy';
import { cannotBeRead, isSameFile } from '../cli/file-fault';
import { unknownOption } from '../cli/options';
import { UserFault } from '../cli/user-fault';
import { sourceOfFile } from './read/from-file';
import { chooseLines } from './own-pages';
import { choiceOf, CHOSEN_BY_ITSELF, type HandoverChoice, readChoice } from './pages/choice';
import type { TitleBlock } from './pages/title-block';
import { STATUSES, type Status } from './words/status';

const OPTIONS =
  '[--part …] [--number …] [--revision …] [--date …] [--status "for quotation"] [--made-by …] [--checked-by …]\n' +
  '  [--paper letter] [--language german] [--sheets "Joint; Variants"] [--variants "F; D"] ' +
  '[--characteristics "boss OD; pilot mouth"]\n  [--with comments,hidden-sheet,… | --with all] [--pages] [--remember]';
export const USAGE = `bosswright handover in.xlsx out.xlsx ${OPTIONS}
bosswright handover --demo out.xlsx
bosswright handover --guide ${GUIDES.map(({ name }) => name).join('|')} out.xlsx

Writes a copy in which every call is plain formulas, for those without the add-in; then what is not live, and what was left out.
  --part … --checked-by  go into the title block; --status is ${STATUSES.join(', ')}
  --sheets, --variants, --characteristics  what goes into the copy, by name, between semicolons
  --with                 kinds of what your workbook carries that go along, as comments; all of them
  --pages                lists what could be chosen, and writes nothing
  --remember             keeps the choice in your workbook`;

const TITLE = {
  part: { type: 'string' },
  number: { type: 'string' },
  revision: { type: 'string' },
  date: { type: 'string' },
  status: { type: 'string' },
  'made-by': { type: 'string' },
  'checked-by': { type: 'string' },
} as const;

type PrintLine = (line: string) => void;

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...TITLE,
        paper: { type: 'string' },
        language: { type: 'string' },
        sheets: { type: 'string' },
        variants: { type: 'string' },
        characteristics: { type: 'string' },
        pages: { type: 'boolean' },
        remember: { type: 'boolean' },
        with: { type: 'string' },
        demo: { type: 'boolean' },
        guide: { type: 'string' },
      },
    });
  } catch (fault) {
    throw new UserFault(`${unknownOption(fault)}\n\n${USAGE}`);
  }
}

export async function main(args: readonly string[], print: PrintLine): Promise<void> {
  const { values, positionals } = parsed(args);
  const [first, second] = positionals;
  const own = values.guide !== undefined ? guideNamed(values.guide) : values.demo === true ? demoWorkbook : undefined;
  if (first === undefined || (second === undefined) !== (own !== undefined) || positionals.length > 2) throw new UserFault(USAGE);
  const title: TitleBlock = {
    part: values.part ?? own?.name ?? basename(first).replace(/\.xlsx$/i, ''),
    number: values.number ?? '',
    revision: values.revision ?? '',
    date: values.date ?? '',
    status: statusOf(values.status ?? 'for quotation'),
    madeBy: values['made-by'] ?? '',
    checkedBy: values['checked-by'] ?? '',
  };
  const asked = askedChoice(values);
  const file = own !== undefined ? readPackage(await writeWorkbook(own)) : await packageAt(first);
  const choice: HandoverChoice = { ...(readChoice(rememberedIn(file)) ?? CHOSEN_BY_ITSELF), ...asked };
  const making: Writing = {
    choice,
    pngOf: await pngRenderer(),
    write: writeOwnSheets,
    goesAlong: withOf(values.with ?? ''),
  };
  if (second !== undefined && (await isSameFile(first, second)))
    throw new UserFault('the copy would take the place of the workbook: give it another name');
  const copy = await copied(file, own?.name ?? basename(first), title, making);
  for (const line of pageLines(copy)) print(line);
  if (values.pages === true) return chooseLines(copy.choosable).forEach(print);
  if (values.remember === true && own === undefined) await writeFile(first, withRemembered(file, JSON.stringify(choice)));
  return written(copy, second ?? first, print);
}

async function copied(file: UserPackage, name: string, title: TitleBlock, making: Writing): Promise<WrittenCopy> {
  try {
    return await copyOf(file, sourceOfFile(name, workbookIn(file)), title, making);
  } catch (fault) {
    // whatever a workbook of anybody leads to is told in a sentence
    throw new UserFault(`${name}: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
}

/** Kinds of what a workbook carries by their options; `all` of them. */
function withOf(given: string): (kind: CarriedKind) => boolean {
  const asked = new Set(given.split(/[\s,]+/).filter(word => word !== ''));
  const options = ['all', ...ASKED_KINDS.map(optionOf)];
  for (const word of asked) if (!options.includes(word)) throw new UserFault(`--with ${word}: it is one of ${options.join(', ')}`);
  return kind => asked.has('all') || asked.has(optionOf(kind));
}

function guideNamed(name: string): typeof demoWorkbook {
  const guide = GUIDES.find(one => one.name === name);
  if (guide === undefined) throw new UserFault(`guide is one of ${GUIDES.map(one => one.name).join(', ')}`);
  return guide.workbook;
}

function statusOf(text: string): Status {
  const status = STATUSES.find(one => one === text);
  if (status === undefined) throw new UserFault(`status is one of ${STATUSES.join(', ')}`);
  return status;
}

function askedChoice(given: Parameters<typeof choiceOf>[0]): Partial<HandoverChoice> {
  try {
    return choiceOf(given);
  } catch (fault) {
    throw new UserFault(fault instanceof Error ? fault.message : String(fault));
  }
}

function pageLines({ plan, own }: WrittenCopy): string[] {
  const ours = plan.sheets.filter(({ name, print }) => own.has(name) && print?.screenOnly === undefined);
  const pages = ours.map(sheet => ({ name: sheet.name, count: pagesOf(sheet) }));
  const theirs = plan.sheets.length - plan.sheets.filter(({ name }) => own.has(name)).length;
  const total = pages.reduce((sum, { count }) => sum + count, 0);
  return [
    `pages: ${total} of ours (${pages.map(({ name, count }) => `${name} ${count}`).join(', ')}); ` +
      `your ${theirs} sheets print as you set them up`,
  ];
}

export async function bytesAt(path: string): Promise<Uint8Array> {
  const bytes = await readFile(path).catch((fault: unknown) => {
    throw cannotBeRead(path, fault);
  });
  return new Uint8Array(bytes);
}

export async function packageAt(path: string): Promise<UserPackage> {
  const bytes = await bytesAt(path);
  try {
    return readPackage(bytes);
  } catch (fault) {
    throw new UserFault(`${path}: ${fault instanceof UnreadableFile ? fault.message : FILE_FAULTS.noWorkbook()}`);
  }
}

async function written(
  { bytes, findings, live, asValues, dropped, kept, goesAlong, ending }: WrittenCopy,
  path: string,
  print: PrintLine,
): Promise<void> {
  for (const line of linesOf(dropped)) print(`left out: ${shownLine(line)}; with it: --with ${optionOf(line.kind)}`);
  for (const line of linesOf(goesAlong)) print(`goes along: ${shownLine(line)}`);
  for (const { carried, why } of kept) print(`goes along: ${shownLine({ ...carried, words: [carried.words ?? ''] })}: ${why}`);
  for (const { sheet, at, what, words } of findings)
    if (what !== 'live') print(`${[sheet, at].filter(part => part !== '').join(' ') || 'workbook'}: ${what}: ${words}`);
  if (!path.toLowerCase().endsWith(ending))
    throw new UserFault(`with what is in it the copy is called ${ending}: give it a name that ends so`);
  await writeFile(path, bytes);
  print(`${live} values live, ${asValues} as values: ${path}`);
}
