// The hand-over copy of a workbook file: its package with the cells that change, and our sheets behind its own.
import { edited, type EditedPackage } from '../package/edit';
import type { UserPackage } from '../package/read';
import type { WorkbookPlan } from '../sheet/plan';
import type { SourceWorkbook } from '../sheet/workbook-values';
import { changesOf } from './changes';
import { handover, type Handover, type Making } from './handover';
import type { TitleBlock } from './pages/title-block';

export interface Writing extends Making {
  /** A plan as a workbook file of its own. */
  readonly write: (plan: WorkbookPlan) => Promise<Uint8Array>;
}

export interface WrittenCopy extends EditedPackage, Handover {}

/** @param source what stands in the cells of the file. */
export async function copyOf(file: UserPackage, source: SourceWorkbook, title: TitleBlock, making: Writing): Promise<WrittenCopy> {
  const copy = handover(source, () => ({}), title, making);
  const ours = copy.plan.sheets.filter(({ name }) => copy.own.has(name));
  const own = await making.write({ ...copy.plan, sheets: ours });
  return { ...copy, ...edited(file, { cells: changesOf(file.sheets, copy), own }) };
}
