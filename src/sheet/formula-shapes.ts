// Formulas that differ in their cells, numbers and texts alone are one shape, which is parsed once.
import { type Area, columnNumber, LAST_PLACE } from './addresses';
import { areaOf, type FormulaNode, parseFormula, walk } from './formula';

/** What a formula has where others of its shape have something else: cells (without a sheet, those of its own one), a number or a text. */
export type Leaf = Area | number | string;

export interface FormulaShape {
  /** Of the first formula that had the shape. */
  readonly tree: FormulaNode;
  /** The nodes of it that are leaves, by their number. */
  readonly leafAt: ReadonlyMap<FormulaNode, number>;
}

export interface ShapedFormula {
  /** Undefined where the formula is read by itself. */
  readonly shape: FormulaShape | undefined;
  readonly leaves: readonly Leaf[];
}

/** A leaf as it is read in the formula. */
interface Found {
  readonly from: number;
  readonly to: number;
  readonly leaf: Leaf;
}

/** A text, cells, a number with a sign that belongs to it, or a word, which holds neither. */
const PIECE = new RegExp(
  '"((?:[^"]|"")*)"' +
    "|(?:(?:'((?:[^'\\[\\]:]|'')+)'|([A-Za-z_\\u0080-\\uffff][\\w.\\u0080-\\uffff]*))!)?" +
    '\\$?([A-Z]{1,3})\\$?([1-9]\\d{0,6})(?::\\$?([A-Z]{1,3})\\$?([1-9]\\d{0,6}))?(?![\\w.!:\\u0080-\\uffff]|\\s*\\()' +
    '|((?:(?<=[=(,<>&*/^+-])-)?(?:\\d+\\.?\\d*|\\.\\d+)(?:[Ee][+-]?\\d+)?)' +
    '|[A-Za-z_\\u0080-\\uffff][\\w.\\u0080-\\uffff]*',
  'g',
);
/** What stands in a shape for cells, cells of a named sheet, a number, a text. */
const [HERE, ON_SHEET, NUMBER, TEXT] = ['\u0001', '\u0002', '\u0003', '\u0004'];
// eslint-disable-next-line no-control-regex -- marks that no file can have
const MARKS = /[\u0001-\u0004]/;
/** Outside leaves: other workbooks, tables, whole columns, ranges that are worked out. */
const OTHERWISE = /[[\]:]/;

/** More shapes than a workbook has that was filled down. */
const MOST_KEPT = 5000;
const kept = new Map<string, FormulaShape | undefined>();

/** Its shape, and what it has of its own. */
export function shaped(formula: string): ShapedFormula {
  const found: Found[] = [];
  const key = keyOf(formula, found);
  let shape = key === undefined ? undefined : kept.get(key);
  if (key !== undefined && shape === undefined && !kept.has(key)) {
    if (kept.size >= MOST_KEPT) kept.clear();
    shape = shapeOf(formula, found);
    kept.set(key, shape);
  }
  return { shape, leaves: shape === undefined ? [] : found.map(({ leaf }) => leaf) };
}

/** Undefined where it has something that is not read here. */
function keyOf(formula: string, found: Found[]): string | undefined {
  let [key, at] = ['', 0];
  PIECE.lastIndex = 0;
  for (let piece = PIECE.exec(formula); piece !== null; piece = PIECE.exec(formula)) {
    const [whole, text, quotedSheet, sheet, column, row, lastColumn, lastRow, number] = piece;
    const from = piece.index;
    const add = (leaf: Leaf, mark: string): void => {
      found.push({ from, to: from + whole.length, leaf });
      key += formula.slice(at, from) + mark;
      at = from + whole.length;
    };
    if (text !== undefined) add(text.replaceAll('""', '"'), TEXT);
    else if (number !== undefined) add(Number(number), NUMBER);
    else if (column !== undefined && row !== undefined) {
      const [left, top] = [columnNumber(column), Number(row) - 1];
      const area = {
        sheet: sheet ?? quotedSheet?.replaceAll("''", "'") ?? '',
        top,
        left,
        bottom: lastRow === undefined ? top : Number(lastRow) - 1,
        right: lastColumn === undefined ? left : columnNumber(lastColumn),
      };
      if (area.bottom > LAST_PLACE.row || area.right > LAST_PLACE.column || area.bottom < top || area.right < left) return undefined;
      add(area, area.sheet === '' ? HERE : ON_SHEET);
    }
  }
  key += formula.slice(at);
  return OTHERWISE.test(key) || MARKS.test(formula) ? undefined : key;
}

/** Undefined where the parser reads the formula in another way than its leaves were read here. */
function shapeOf(formula: string, found: readonly Found[]): FormulaShape | undefined {
  const tree = parseFormula(formula);
  const leafAt = new Map<FormulaNode, number>();
  const byPlace = new Map(found.map(({ from, to }, i) => [`${from},${to}`, i]));
  for (const node of walk(tree ?? null)) {
    const i = byPlace.get(node.loc.join());
    if (i !== undefined && isLeaf(node, found[i]?.leaf)) leafAt.set(node, i);
  }
  return tree !== undefined && leafAt.size === found.length ? { tree, leafAt } : undefined;
}

function isLeaf(node: FormulaNode, leaf: Leaf | undefined): boolean {
  if (typeof leaf !== 'object') return node.type === 'Literal' && node.value === leaf;
  const area = areaOf(node, '');
  return area !== undefined && (Object.keys(leaf) as (keyof Area)[]).every(side => area[side] === leaf[side]);
}
