// What the sign @ takes of a range: the cell in the row or the column of the formula.
import { columnName, type Place } from '../../sheet/addresses';
import { parseFormula, partsOf } from '../../sheet/formula';

type EdgeOfRange = number | null | undefined;

const isWithin = (at: number, from: EdgeOfRange, to: EdgeOfRange): boolean => (from ?? at) <= at && at <= (to ?? at);
const isLine = (from: EdgeOfRange, to: EdgeOfRange): from is number => typeof from === 'number' && from === to;

/** The text itself where it is one cell or no range: a call gives one value by itself. Undefined where no cell stands there. */
export function oneOfRange(text: string, { row, column }: Place): string | undefined {
  if (text.endsWith('#')) return undefined;
  const node = parseFormula(`=${text}`);
  const isReference = node?.type === 'ReferenceIdentifier' && typeof node.value === 'string';
  const { range } = isReference ? partsOf(node.value as string) : {};
  if (range === undefined) return text;
  const { top, left, bottom, right } = range;
  const [isRow, isColumn] = [isLine(top, bottom), isLine(left, right)];
  if (isRow && isColumn) return text;
  const prefix = text.slice(0, text.lastIndexOf('!') + 1);
  if (isLine(left, right) && isWithin(row, top, bottom)) return `${prefix}${columnName(left)}${row + 1}`;
  if (isLine(top, bottom) && isWithin(column, left, right)) return `${prefix}${columnName(column)}${top + 1}`;
  return undefined;
}
