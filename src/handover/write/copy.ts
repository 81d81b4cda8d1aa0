// The hand-over copy of a workbook file: its package with the cells that change, and our sheets behind its own.
import type { Carried, CarriedKind } from '../../package/carried';
import { callsLeft } from '../../package/calls-left';
import { edited, type EditedPackage, type PackageEdit } from '../../package/edit';
import { type Elsewhere, elsewhereOf } from '../../package/elsewhere';
import type { UserPackage } from '../../package/read';
import type { WorkbookPlan } from '../../sheet/plan';
import { callsOurs, fromFile } from '../../sheet/stored-formulas';
import type { SourceWorkbook } from '../../sheet/workbook-values';
import { WORDS } from '../words/words';
import { ASKED_KINDS } from './carrying';
import { changesOf } from './changes';
import { losing, namesIn } from './gone-names';
import type { OutsideSheet } from './outside-cells';
import { changesElsewhere, type Fate, told, workedOut } from './outside-fate';
import { wantedSheets } from './wanted-sheets';
import { handover, type Handover, type Making } from '../handover';
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

/** The copy as it will be, and what in the file becomes of it; nothing is written yet. */
export interface PlannedCopy {
  readonly copy: Handover;
  /** Sheets of the sender that stay behind. */
  readonly left: readonly Carried[];
  readonly elsewhere: readonly Elsewhere[];
  readonly fate: Fate;
  readonly isAsked: (kind: CarriedKind) => boolean;
}

/** @param source what stands in the cells of the file. */
export function plannedCopy(
  file: UserPackage,
  source: SourceWorkbook,
  title: TitleBlock,
  { goesAlong: isAsked = () => false, ...making }: Omit<Writing, 'write'>,
): PlannedCopy {
  const hasNamed = file.names.some(({ meaning }) => isOurs(meaning));
  const found = elsewhereOf(file, formula => isOurs(formula) || (hasNamed && namesIn(formula).length > 0));
  const elsewhere = found.filter(({ kind, formula }) => kind === 'placeholder' || isOurs(formula));
  const readers = found.filter(one => !elsewhere.includes(one));
  const words = WORDS[(making.choice ?? CHOSEN_BY_ITSELF).language];
  const wanted = making.choice?.sheets && wantedSheets(source, making.choice.sheets);
  const isWanted = (name: string): boolean => wanted?.has(name) ?? true;
  const sent: SourceWorkbook = {
    ...source,
    sheets: source.sheets.filter(({ name }) => isWanted(name)),
    otherSheets: [...(source.otherSheets ?? []), ...source.sheets.flatMap(({ name }) => (isWanted(name) ? [] : [name]))],
  };
  // what goes with a sheet that stays behind is not told; a pivot table may have its cache from another
  const isSent = ({ spot: { sheet }, kind }: Elsewhere): boolean => sheet === undefined || isWanted(sheet) || kind === 'pivot';
  const fateOf = (outside: OutsideSheet): Fate => {
    const gone = elsewhere.filter(one => one.kind === 'name' && !outside.reads.has(one));
    return { outside, lost: losing(readers, file.names, gone) };
  };
  const taken = new Set([...file.names, ...file.tables].map(({ name }) => name.toLowerCase()));
  const { copy, fate } = workedOut(sent, elsewhere.filter(isSent), words, taken, fateOf, (all, own) =>
    handover(all, title, {
      ...making,
      found: [...elsewhere, ...own.lost.keys()].filter(isSent).flatMap(one => told(one, own, words.conversion.said)),
      keepsLinks: isAsked('external link'),
      outside: { name: own.outside.source.name, dressed: own.outside.dressed },
    }),
  );
  return {
    copy,
    fate,
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
  const { copy, left, elsewhere, fate, isAsked } = plannedCopy(file, source, title, making);
  const ours = copy.plan.sheets.filter(({ name }) => copy.own.has(name));
  const own = await write({ ...copy.plan, sheets: ours, names: fate.outside.names });
  const asked = new Set(ASKED_KINDS.filter(kind => !isAsked(kind)));
  const drop = [...file.carries.filter(({ kind, part }) => asked.has(kind) && !left.some(sheet => sheet.part === part)), ...left];
  const written = edited(file, {
    cells: changesOf(file.sheets, copy),
    elsewhere: changesElsewhere(elsewhere, fate),
    ...own,
    drop,
    mentions: MENTIONS,
  });
  const isKnown = new Set(elsewhere.filter(({ canGo }) => !canGo).map(({ part }) => part));
  const call = callsLeft(written.bytes, isOurs, MENTIONS, written.quiet).find(({ part }) => !isKnown.has(part));
  if (call !== undefined) throw new Error(`${call.part}: a call of the add-in is left: ${call.text.slice(0, 120)}`);
  return {
    ...copy,
    ...written,
    goesAlong: file.carries.filter(({ kind }) => !asked.has(kind)),
  };
}
