// What a cell is called: the text that stands to its left.
import { address, cellPosition } from '../../sheet/addresses';
import type { WorkbookValues } from '../../sheet/workbook-values';
import { cellText } from '../../sheet/cell-text';

/** Long enough for a heading. */
const LONGEST = 80;

export function labelBeside(
  source: WorkbookValues,
  sheet: string,
  at: string,
  isLabel: (at: string) => boolean = () => true,
): string | undefined {
  const { row, column } = cellPosition(at);
  for (let c = column - 1; c >= 0; c--) {
    const place = address(row, c);
    const value = source.value(sheet, place);
    if (typeof value === 'string' && value.trim() !== '' && isLabel(place)) return cellText(value).slice(0, LONGEST);
  }
  return undefined;
}

/** `Joint B44, outside diameter by rule: BOSS.OD.RULE`. */
export function blockTitle(source: WorkbookValues, sheet: string, at: string, what: string): string {
  const label = labelBeside(source, sheet, at);
  return `${sheet} ${at}${label === undefined ? '' : `, ${label}`}: ${what}`;
}
