// Formulas that differ in their cells, numbers and texts alone are one shape, which is parsed once.
import { type Area, columnNumber, LAST_PLACE } from './addresses';
import { areaOf, type FormulaNode, parseFormula, walk } from './formula';
import { inRow } from './row-forms';

/** What a formula has where others of its shape have something else: cells (without a sheet, those of its own one), a number or a text. */
export type Leaf = Area | number | string;

/** The leaves of one formula of a shape; those that move with their row stand so many rows further down. */
export interface Leaves {
  readonly all: readonly Leaf[];
  readonly moves: readonly boolean[];
  readonly down: number;
}

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

/** Where a leaf stands. */
type Spot = readonly [from: number, to: number];

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
  const [leaves, spots]: [Leaf[], Spot[]] = [[], []];
  const key = read(formula, leaves, spots);
  if (key === undefined) return ALONE;
  let shape = kept.get(key);
  if (shape === undefined && !kept.has(key)) {
    if (kept.size >= MOST_KEPT) kept.clear();
    shape = shapeOf(formula, leaves, spots);
    kept.set(key, shape);
  }
  return shape === undefined ? ALONE : { shape, leaves };
}

const ALONE: ShapedFormula = { shape: undefined, leaves: [] };

export interface ShapedForm {
  readonly shape: FormulaShape;
  /** Its leaves in the first row, and which of them move. */
  readonly all: readonly Leaf[];
  readonly moves: readonly boolean[];
}

const keptForms = new Map<string, ShapedForm | undefined>();

/** The shape that a form has in every row; undefined where it is read by itself. */
export function shapedForm(form: string): ShapedForm | undefined {
  if (keptForms.has(form)) return keptForms.get(form);
  if (keptForms.size >= MOST_KEPT) keptForms.clear();
  const [{ shape, leaves }, below] = [shaped(inRow(form, 0)), shaped(inRow(form, 1))];
  const move = leaves.map((leaf, i) => rowsBetween(leaf, below.leaves[i]));
  const known =
    shape === undefined || below.shape !== shape || move.includes(undefined)
      ? undefined
      : { shape, all: leaves, moves: move.map(rows => rows === 1) };
  keptForms.set(form, known);
  return known;
}

/** How far a leaf moves with its row: 0 or 1, undefined where it does neither. */
function rowsBetween(leaf: Leaf, below: Leaf | undefined): 0 | 1 | undefined {
  if (typeof leaf !== 'object' || typeof below !== 'object') return leaf === below ? 0 : undefined;
  const [top, bottom] = [below.top - leaf.top, below.bottom - leaf.bottom];
  return top === bottom && (top === 0 || top === 1) ? top : undefined;
}

/** The formula with marks in place of its leaves. Undefined where it has something that is not read here. */
function read(formula: string, leaves: Leaf[], spots: Spot[]): string | undefined {
  let [key, at] = ['', 0];
  PIECE.lastIndex = 0;
  for (let piece = PIECE.exec(formula); piece !== null; piece = PIECE.exec(formula)) {
    const [, text, , , column, , , , number] = piece;
    if (text === undefined && number === undefined && column === undefined) continue;
    const leaf = text !== undefined ? unquoted(text, '"') : number !== undefined ? Number(number) : cellsOf(piece);
    if (leaf === undefined) return undefined;
    const mark = typeof leaf === 'string' ? TEXT : typeof leaf === 'number' ? NUMBER : leaf.sheet === '' ? HERE : ON_SHEET;
    const to = PIECE.lastIndex;
    key += formula.slice(at, piece.index) + mark;
    leaves.push(leaf);
    spots.push([piece.index, to]);
    at = to;
  }
  key += formula.slice(at);
  return OTHERWISE.test(key) || MARKS.test(formula) ? undefined : key;
}

const unquoted = (text: string, quote: string): string => (text.includes(quote) ? text.replaceAll(quote + quote, quote) : text);

/** Undefined where no sheet has such cells, or they are named from the end. */
function cellsOf(piece: RegExpExecArray): Area | undefined {
  const [, , quotedSheet, sheet, column = '', row, lastColumn, lastRow] = piece;
  const [left, top] = [columnNumber(column), Number(row) - 1];
  const right = lastColumn === undefined ? left : columnNumber(lastColumn);
  const bottom = lastRow === undefined ? top : Number(lastRow) - 1;
  return bottom > LAST_PLACE.row || right > LAST_PLACE.column || bottom < top || right < left
    ? undefined
    : { sheet: sheet ?? (quotedSheet === undefined ? '' : unquoted(quotedSheet, "'")), top, left, bottom, right };
}

/** Undefined where the parser reads the formula in another way than its leaves were read here. */
function shapeOf(formula: string, leaves: readonly Leaf[], spots: readonly Spot[]): FormulaShape | undefined {
  const tree = parseFormula(formula);
  const leafAt = new Map<FormulaNode, number>();
  const bySpot = new Map(spots.map((spot, i) => [spot.join(), i]));
  for (const node of walk(tree ?? null)) {
    const i = bySpot.get(node.loc.join());
    if (i !== undefined && isLeaf(node, leaves[i])) leafAt.set(node, i);
  }
  return tree !== undefined && leafAt.size === leaves.length ? { tree, leafAt } : undefined;
}

function isLeaf(node: FormulaNode, leaf: Leaf | undefined): boolean {
  if (typeof leaf !== 'object') return node.type === 'Literal' && node.value === leaf;
  const area = areaOf(node, '');
  return area !== undefined && (Object.keys(leaf) as (keyof Area)[]).every(side => area[side] === leaf[side]);
}
