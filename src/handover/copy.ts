// The hand-over copy of a workbook file: its package with the cells that change, and our sheets behind its own.
import type { Carried, CarriedKind } from '../package/carried';
import { edited, type EditedPackage, type PackageEdit } from '../package/edit';
import type { UserPackage } from '../package/read';
import type { WorkbookPlan } from '../sheet/plan';
import type { SourceWorkbook } from '../sheet/workbook-values';
import { kindsOf } from './carrying';
import { changesOf } from './changes';
import { handover, type Handover, type Making } from './handover';
import type { TitleBlock } from './pages/title-block';

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

/** @param source what stands in the cells of the file. */
export async function copyOf(
  file: UserPackage,
  source: SourceWorkbook,
  title: TitleBlock,
  { write, goesAlong: isAsked = () => false, ...making }: Writing,
): Promise<WrittenCopy> {
  const copy = handover(source, title, { ...making, keepsLinks: isAsked('external link') });
  const ours = copy.plan.sheets.filter(({ name }) => copy.own.has(name));
  const own = await write({ ...copy.plan, sheets: ours });
  const asked = new Set(kindsOf(file.carries).filter(kind => !isAsked(kind)));
  const drop = file.carries.filter(({ kind }) => asked.has(kind));
  return {
    ...copy,
    ...edited(file, { cells: changesOf(file.sheets, copy), ...own, drop }),
    goesAlong: file.carries.filter(({ kind }) => !asked.has(kind)),
  };
}
