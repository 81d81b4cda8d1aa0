// A workbook of others handed over, with what the copy says of itself.
import { copyOf, type WrittenCopy } from '../../../src/handover/write/copy';
import { sourceOfFile } from '../../../src/handover/read/from-file';
import { workbookIn } from '../../../src/hosts/xlsx/read';
import { writeOwnSheets } from '../../../src/hosts/xlsx/write';
import { readPackage, type UserPackage } from '../../../src/package/read';
import { callsOurs } from '../../../src/sheet/stored-formulas';
import type { SourceWorkbook } from '../../../src/sheet/workbook-values';
import { TITLE } from '../../handover/kit';
import type { ForeignFile } from './inputs';

export interface HandedOver extends ForeignFile {
  readonly file: UserPackage;
  readonly source: SourceWorkbook;
  readonly copy: WrittenCopy;
  /** Cells with a call of ours, by `Sheet!B4`. */
  readonly callers: readonly string[];
}

export interface Refused extends ForeignFile {
  readonly fault: string;
}

/** Programs save what a library wrote; from what they saved nothing unseen goes along, as when nobody asks for it. */
const goesAlong = ({ by }: ForeignFile): boolean => by !== 'LibreOffice';

export async function handedFile(foreign: ForeignFile): Promise<HandedOver | Refused> {
  try {
    const file = readPackage(foreign.bytes);
    const source = sourceOfFile(foreign.book, workbookIn(file));
    const copy = await copyOf(file, source, TITLE, { write: writeOwnSheets, goesAlong: () => goesAlong(foreign) });
    const callers = source.sheets.flatMap(({ name, cells }) =>
      [...cells].flatMap(([at, { formula }]) => (formula !== undefined && callsOurs(formula) ? [`${name}!${at}`] : [])),
    );
    return { ...foreign, file, source, copy, callers };
  } catch (fault) {
    return { ...foreign, fault: fault instanceof Error ? `${fault.name}: ${fault.message}` : String(fault) };
  }
}

export const isHanded = (one: HandedOver | Refused): one is HandedOver => !('fault' in one);

/** Places of findings of one kind, `Sheet!B4`. */
export const placesOf = ({ copy }: HandedOver, isKind: (what: string) => boolean): Set<string> =>
  new Set(copy.findings.flatMap(({ sheet, at, what }) => (isKind(what) ? [`${sheet}!${at}`] : [])));
