// What has no plain formula goes along as a value. It shows only while the cells it was worked out from are as they were sent.
import type { Card } from '../../core/card';
import type { Cell } from '../../core/kinds';
import { number } from '../../plain/spreadsheet';
import { sourcesOf } from '../words/source-words';
import type { ConversionContext } from './context';
import { reachesUnseen } from './arguments/expression';
import { exportedValue } from './unchanged';
import { address, fixedCell } from '../../sheet/addresses';
import { areaOf, type FormulaNode, calledName, LONGEST_FORMULA, walk } from '../../sheet/formula';
import { ERROR_CODE } from '../../sheet/known';
import { allOf, CHANGED, quoted, sameAs } from './inputs';
import { blockTitle } from './labels';
import type { Conversion } from './conversion';
import { isTooLong, StepBlock } from './step-block';
import { isFault, isRows } from '../../sheet/workbook-values';

/** More cells than this are not watched. */
const MOST_WATCHED = 400;
/** What one formula watches: so many conditions, of so many characters. */
const MOST_AT_ONCE = 60;
const LONGEST_AT_ONCE = LONGEST_FORMULA / 2;
const MOST_WORDS = 400;
const STATES: readonly unknown[] = ['pass', 'review', 'fail'];

interface Watched {
  readonly name: string;
  readonly value: Cell;
  readonly conditions: readonly string[];
}

/** The cells that a formula reads; undefined where one of them cannot be watched. */
function watched(
  context: Pick<ConversionContext, 'source' | 'converted'>,
  tree: FormulaNode,
  sheet: string,
): readonly Watched[] | undefined {
  const found = new Map<string, Watched>();
  if (reachesUnseen(tree)) return undefined;
  for (const node of walk(tree)) {
    if (node.type !== 'ReferenceIdentifier') continue;
    const area = areaOf(node, sheet);
    if (area === undefined || (area.bottom - area.top + 1) * (area.right - area.left + 1) > MOST_WATCHED) return undefined;
    for (let r = area.top; r <= area.bottom; r++) {
      for (let c = area.left; c <= area.right; c++) {
        const value = exportedValue(context, area.sheet, address(r, c));
        const conditions = sameAs(fixedCell(area.sheet, r, c), value);
        if (conditions === undefined || value === undefined || isRows(value)) return undefined;
        const name = `${area.sheet === sheet ? '' : `${area.sheet} `}${address(r, c)}`;
        found.set(name, { name, value: isFault(value) ? value.cellError : (value ?? ''), conditions });
      }
    }
  }
  return found.size > MOST_WATCHED ? undefined : [...found.values()];
}

function inParts(conditions: readonly string[]): string[][] {
  const parts: string[][] = [];
  let part: string[] = [];
  let length = Infinity;
  for (const condition of conditions) {
    length += condition.length;
    if (length > LONGEST_AT_ONCE || part.length >= MOST_AT_ONCE) {
      parts.push((part = []));
      length = condition.length;
    }
    part.push(condition);
  }
  return parts;
}

const mayFail = (tree: FormulaNode, cells: readonly Watched[]): boolean =>
  cells.some(({ value }) => typeof value === 'string' && ERROR_CODE.test(value)) ||
  [...walk(tree)].some(node => /^(IFERROR|IFNA|ISERROR)$/.test(calledName(node) ?? ''));

/**
 * Writes what a value without a formula was worked out from, and answers how it looks in a cell: a formula, or undefined where it
 * stays a bare value.
 */
export function frozen(
  { steps, said, sourceWords, ...context }: Pick<Conversion, 'source' | 'converted' | 'steps' | 'said' | 'sourceWords'>,
  card: Card | undefined,
  tree: FormulaNode,
  sheet: string,
  at: string,
): (value: Cell) => string | undefined {
  const cells = watched(context, tree, sheet);
  if (cells === undefined || cells.length === 0) return () => undefined;
  const block = new StepBlock();
  const why = card?.notLive === undefined ? said.noPlainFormula : said.notLive(card.notLive);
  const sent = cells
    .filter(({ value }) => value !== '')
    .map(({ name, value }) => `${name} ${String(value)}`)
    .join('; ');
  // round a call that may be an error, a cell that holds one now is not as it was sent
  const guarded = (same: string): string => (mayFail(tree, cells) ? `IFERROR(${same},FALSE)` : same);
  const parts = inParts(cells.flatMap(({ conditions }) => conditions)).map(conditions => guarded(allOf(conditions)));
  const [only] = parts;
  const holds = block.row({
    label: 'inputs as sent',
    formula:
      parts.length === 1 && only !== undefined
        ? only
        : allOf(parts.map((formula, i) => block.row({ label: `inputs as sent, part ${i + 1}`, formula, value: true }))),
    value: true,
    words: `${why}; ${said.sentFor(sent.length <= MOST_WORDS ? sent : `${sent.slice(0, MOST_WORDS)} …`)}`,
    ...(card === undefined ? {} : { source: sourcesOf(card, sourceWords) }),
  });
  const placed = steps.write(blockTitle(context.source, sheet, at, `${card?.id ?? 'formula'}, value, not live`), block);
  return value => (typeof value === 'boolean' || placed === undefined ? undefined : whileSent(placed(holds), value));
}

/** A value while a cell says that its inputs are as they were sent; undefined where it is too long for a formula. */
export function whileSent(holds: string, value: Cell): string | undefined {
  const shown = typeof value === 'number' ? number(value).text : typeof value === 'boolean' ? String(value).toUpperCase() : quoted(value);
  const formula = `IF(${holds},${shown},${STATES.includes(value) ? quoted('not checked') : CHANGED})`;
  return isTooLong(formula) ? undefined : formula;
}
