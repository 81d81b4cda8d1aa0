// References picked from the sheet, as they are written into a formula.
import { sheetPrefix } from '../sheet/addresses';
import { areaOf, parseFormula, qualified, rewritten } from '../sheet/formula';
import type { Selection } from '../sheet/port';

const CELL = /^=?((?:'(?:[^']|'')+'|\w+)!)?\$?([A-Z]+)\$?(\d+)$/i;

const written = ({ sheetName, at }: Selection, home: string): string => `=${sheetName === home ? '' : sheetPrefix(sheetName)}${at}`;

/** A first pick is a cell; where a range is taken, a second pick on the same sheet makes the range between the two. */
export function picked(text: string, selection: Selection, home: string, takesRange: boolean): string {
  const one = written(selection, home);
  const trimmed = text.trim();
  const tree = takesRange && CELL.test(trimmed) ? parseFormula(trimmed) : undefined;
  const first = tree && areaOf(tree, home);
  return first?.sheet === selection.sheetName && trimmed !== one ? `${trimmed}:${selection.at}` : one;
}

/** The same cells from a formula on another sheet. */
export function onSheet(text: string, from: string, to: string): string {
  const tree = from === to ? undefined : parseFormula(text);
  return tree === undefined ? text : rewritten(text, [0, text.length], qualified(tree, from));
}
