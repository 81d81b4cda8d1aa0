// The hand-over copy of a workbook file: its package with the cells that change, and our sheets behind its own.
import type { Carried, CarriedKind } from '../../package/carried';
import { callsLeft } from '../../package/calls-left';
import { edited, type EditedPackage, type PackageEdit } from '../../package/edit';
import { type Elsewhere, elsewhereOf } from '../../package/elsewhere';
import type { UserPackage } from '../../package/read';
import type { WorkbookPlan } from '../../sheet/plan';
import { callsOurs, fromFile } from '../../sheet/stored-formulas';
import type { SourceWorkbook } from '../../sheet/workbook-values';
import type { FindingWords } from '../words/finding-words';
import { WORDS } from '../words/words';
import { ASKED_KINDS } from './carrying';
import { changesOf } from './changes';
import { wantedSheets } from './wanted-sheets';
import { handover, type Handover, type Making } from '../handover';
import type { HandoverFinding } from '../read/finding';
import { CHOSEN_BY_ITSELF } from '../pages/choice';
import type { TitleBlock } from '../pages/title-block';

export interface Writing extends Making {
  /** Our sheets as a workbook file of their own. */
  readonly write: (plan: WorkbookPlan) => Promise<Pick<PackageEdit, 'own' | 'ownRows'>>;
  /** Whether what the workbook carries unseen goes along; without it nothing does. */
  readonly goesAlong?: (kind: CarriedKind) => boolean;
}

export interface WrittenCopy extends EditedPackage, Handover {
  /** What the workbook carries and the sender sends. */
  readonly goesAlong: readonly Carried[];
}

const MENTIONS = /ENCL/i;
const isOurs = (formula: string): boolean => MENTIONS.test(formula) && callsOurs(fromFile(formula));

/** Calls of ours outside cells go with the rule, name or column formula that they stand in: no program without the add-in has them. */
const takenOut = (found: readonly Elsewhere[]): ReadonlyMap<Elsewhere, 'out'> =>
  new Map(found.filter(({ canGo }) => canGo).map(elsewhere => [elsewhere, 'out']));

const told = ({ kind, spot: { what, table, sheet }, formula, canGo }: Elsewhere, said: FindingWords): HandoverFinding[] => {
  if (kind === 'placeholder') return [];
  const called = fromFile(formula).replace(/ENCL\./gi, '');
  const of = table === undefined ? what : said.ofTable(what, table);
  const placed = sheet === undefined ? of : said.onSheet(of, sheet);
  const words = `${said.elsewhere[kind]} ${placed}: ${canGo ? said.takenOut(called) : said.leftAsIs(called)}`;
  return [{ sheet: '', at: '', what: canGo ? 'changed' : 'error', words }];
};

/** The copy as it will be, and what in the file becomes of it; nothing is written yet. */
export interface PlannedCopy {
  readonly copy: Handover;
  /** Sheets of the sender that stay behind. */
  readonly left: readonly Carried[];
  readonly elsewhere: readonly Elsewhere[];
  readonly isAsked: (kind: CarriedKind) => boolean;
}

/** @param source what stands in the cells of the file. */
export function plannedCopy(
  file: UserPackage,
  source: SourceWorkbook,
  title: TitleBlock,
  { goesAlong: isAsked = () => false, ...making }: Omit<Writing, 'write'>,
): PlannedCopy {
  const elsewhere = elsewhereOf(file, isOurs);
  const { said } = WORDS[(making.choice ?? CHOSEN_BY_ITSELF).language].conversion;
  const wanted = making.choice?.sheets && wantedSheets(source, making.choice.sheets);
  const isWanted = (name: string): boolean => wanted?.has(name) ?? true;
  const sent: SourceWorkbook = {
    ...source,
    sheets: source.sheets.filter(({ name }) => isWanted(name)),
    otherSheets: [...(source.otherSheets ?? []), ...source.sheets.flatMap(({ name }) => (isWanted(name) ? [] : [name]))],
  };
  return {
    copy: handover(sent, title, { ...making, found: elsewhere.flatMap(one => told(one, said)), keepsLinks: isAsked('external link') }),
    left: file.sheets
      .filter(({ name }) => !isWanted(name))
      .map(({ name, part }): Carried => ({ kind: 'sheet', part, count: 1, words: name })),
    elsewhere,
    isAsked,
  };
}

/** @param source what stands in the cells of the file. */
export async function copyOf(
  file: UserPackage,
  source: SourceWorkbook,
  title: TitleBlock,
  { write, ...making }: Writing,
): Promise<WrittenCopy> {
  const { copy, left, elsewhere, isAsked } = plannedCopy(file, source, title, making);
  const ours = copy.plan.sheets.filter(({ name }) => copy.own.has(name));
  const own = await write({ ...copy.plan, sheets: ours });
  const asked = new Set(ASKED_KINDS.filter(kind => !isAsked(kind)));
  const drop = [...file.carries.filter(({ kind, part }) => asked.has(kind) && !left.some(sheet => sheet.part === part)), ...left];
  const written = edited(file, { cells: changesOf(file.sheets, copy), elsewhere: takenOut(elsewhere), ...own, drop, mentions: MENTIONS });
  const isKnown = new Set(elsewhere.filter(({ canGo }) => !canGo).map(({ part }) => part));
  const call = callsLeft(written.bytes, isOurs, MENTIONS, written.quiet).find(({ part }) => !isKnown.has(part));
  if (call !== undefined) throw new Error(`${call.part}: a call of the add-in is left: ${call.text.slice(0, 120)}`);
  return {
    ...copy,
    ...written,
    goesAlong: file.carries.filter(({ kind }) => !asked.has(kind)),
  };
}
