// Guards: conditions that hold while the cells that no formula follows are as they were sent.
import { address, fixedCell } from '../../sheet/addresses';
import { areaOf, type FormulaNode, walk } from '../../sheet/formula';
import type { Known } from '../../sheet/workbook-values';
import type { Argument } from './arguments/argument';
import type { ConversionContext } from './context';
import { sameAs } from './inputs';

/** Cells whose change would not be followed can be watched up to this number. */
export const MOST_WATCHED = 60;

/** What a cell holds on the hand-over. */
export const exportedValue = ({ source, converted }: Pick<ConversionContext, 'source' | 'converted'>, sheet: string, at: string): Known =>
  converted.get(`${sheet}!${at}`)?.value ?? source.value(sheet, at);

/** Conditions that hold while the cells of an argument are as they were sent. Undefined where they cannot be watched. */
export function unchanged(
  context: Pick<ConversionContext, 'source' | 'converted'>,
  { node, sheet }: Pick<Argument, 'node' | 'sheet'>,
  except?: FormulaNode | null,
): readonly string[] | undefined {
  const conditions = new Set<string>();
  for (const part of walk(node)) {
    if (part === except || part.type !== 'ReferenceIdentifier') continue;
    const area = areaOf(part, sheet);
    if (area === undefined || (area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST_WATCHED) return undefined;
    for (let r = area.top; r <= area.bottom; r++) {
      for (let c = area.left; c <= area.right; c++) {
        const same = sameAs(fixedCell(area.sheet, r, c), exportedValue(context, area.sheet, address(r, c)));
        if (same === undefined) return undefined;
        same.forEach(condition => conditions.add(condition));
      }
    }
  }
  return conditions.size > MOST_WATCHED ? undefined : [...conditions];
}
