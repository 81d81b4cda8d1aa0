// A formula that a file holds once for many cells, as it reads in each of them.
import {
  isRange,
  MAX_COLS,
  MAX_ROWS,
  parseR1C1Ref,
  type RangeR1C1,
  stringifyA1Ref,
  tokenize,
  tokenTypes,
  translateFormulaToA1,
  translateFormulaToR1C1,
} from '@borgar/fx/xlsx';
import { columnName, type Place } from '../sheet/addresses';

/** The formula of a cell with its references counted from there. */
export const fromPlace = (formula: string, at: string): string => translateFormulaToR1C1(formula, at);

/** The same in another cell. What would lie beyond the edge of the sheet is #REF!. */
export const inPlace = (counted: string, at: string): string => translateFormulaToA1(counted, at, { wrapEdges: false });

/** A row or a column; null is no end, as that of a whole column. */
type AxisEnd = number | null | undefined;
interface RangeEnd {
  readonly line: AxisEnd;
  readonly isFixed: boolean;
}

/** As it is seen from a cell; NaN beyond the edge. */
function end(line: AxisEnd, isFixed: boolean | null | undefined, from: number, most: number): RangeEnd {
  if (typeof line !== 'number' || isFixed) return { line, isFixed: isFixed === true };
  const to = from + line;
  return { line: to < 0 || to > most ? NaN : to, isFixed: false };
}

/** The smaller one first, nothing being 0. */
const inOrder = (a: RangeEnd, b: RangeEnd): readonly [RangeEnd, RangeEnd] => (Number(a.line ?? 0) > Number(b.line ?? 0) ? [b, a] : [a, b]);

const NAMES: string[] = [];
const nameOfColumn = (column: number): string => (NAMES[column] ??= columnName(column));
const dollar = ({ isFixed }: RangeEnd): string => (isFixed ? '$' : '');
const LOST = '#REF!';

/** A reference counted from a cell, as a cell writes it. */
function rangeText({ r0, $r0, r1, $r1, c0, $c0, c1, $c1, trim }: RangeR1C1, { row, column }: Place): string {
  const [top, bottom] = inOrder(end(r0, $r0, row, MAX_ROWS), end(r1, $r1, row, MAX_ROWS));
  const [left, right] = inOrder(end(c0, $c0, column, MAX_COLS), end(c1, $c1, column, MAX_COLS));
  const [t, b, l, r] = [top.line, bottom.line, left.line, right.line];
  if ([t, b, l, r].some(Number.isNaN)) return LOST;
  const hasEnds = typeof t === 'number' && typeof b === 'number' && typeof l === 'number' && typeof r === 'number';
  if (hasEnds && !trim && b - t < MAX_ROWS && r - l < MAX_COLS) {
    const first = dollar(left) + nameOfColumn(l) + dollar(top) + String(t + 1);
    const last = dollar(right) + nameOfColumn(r) + dollar(bottom) + String(b + 1);
    return first === last ? first : `${first}:${last}`;
  }
  // whole columns are not rare
  if (typeof l === 'number' && typeof r === 'number' && typeof t !== 'number' && typeof b !== 'number' && !trim)
    return `${dollar(left)}${nameOfColumn(l)}:${dollar(right)}${nameOfColumn(r)}`;
  const [$top, $bottom, $left, $right] = [top.isFixed, bottom.isFixed, left.isFixed, right.isFixed];
  return stringifyA1Ref({
    range: { top: t ?? null, bottom: b ?? null, left: l ?? null, right: r ?? null, $top, $bottom, $left, $right, ...(trim && { trim }) },
  });
}

interface Reference {
  /** The sheet, with its exclamation mark. */
  readonly on: string;
  readonly range: RangeR1C1;
}

/** As it reads in another cell. */
export type MovableFormula = (to: Place) => string;

/** The formula of a cell, prepared to be read in many others: the same as `inPlace`, many times as fast. */
export function movable(formula: string, at: string): MovableFormula {
  const tokens = tokenize(fromPlace(formula, at), { allowTernary: true, r1c1: true });
  const pieces = tokens.map((token, i): string | Reference => {
    const found = isRange(token) ? parseR1C1Ref(token.value, { allowTernary: true }) : undefined;
    if (found === undefined || !('range' in found)) return token.value;
    const on = inPlace(token.value, at);
    const sheet = on.slice(0, on.lastIndexOf('!') + 1);
    const [before] = tokens.slice(i - 1, i);
    const isEnd = i > 1 && before?.type === tokenTypes.OPERATOR && before.value === ':';
    return { on: isEnd && sheet !== '' && !sheet.startsWith("'") ? `'${sheet.slice(0, -1)}'!` : sheet, range: found.range };
  });
  return to =>
    pieces
      .map(piece => {
        if (typeof piece === 'string') return piece;
        const text = rangeText(piece.range, to);
        return text === LOST ? text : piece.on + text;
      })
      .join('');
}
