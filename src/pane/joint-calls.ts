// The calls of the joint in a workbook: which inputs each reads, and which cells it fills.
import { Refused } from '../core/refuse';
import { OUTPUTS } from '../joint/outputs';
import { askedCount } from '../joint/table';
import { address, type Area, cellCount, cellPosition } from '../sheet/addresses';
import { areaOf, ownFunction, parseFormula, walk, type FormulaNode } from '../sheet/formula';
import type { Selection } from '../sheet/port';
import { isRows } from '../sheet/workbook-values';
import { jointInputsOf, type InputCell, type JointInputs } from './joint-inputs';
import { lastFilledRow, type Grid, type PaneValues, type FormulaSite, sitesOn } from './workbook';

export interface JointCall {
  readonly inputs: JointInputs;
  readonly filled: Area;
  /** The variant of a row of what is filled. */
  readonly variantAt: (row: number) => number;
}

/** Columns of the tables that the checks and the card of a joint fill. */
const CARD_COLUMNS = 6;
const CHECK_COLUMNS = 7;

/** Where the base stands among the arguments behind the first. */
const BASE_BEHIND_FIRST: Readonly<Record<string, number>> = {
  'JOINT.TABLE': 1,
  'JOINT.CARD': 1,
  'JOINT.VALUE': 2,
  'CHECK.JOINT': 0,
  'CHECK.BOSS': 0,
};

interface JointCallSite extends FormulaSite {
  readonly grid: Grid;
  readonly source: PaneValues;
  /** For what is selected here the call is read. */
  readonly near: Selection | undefined;
}

/** An area that is read as a whole wherever a call points at it; of a larger one its names and the row that is asked for. */
const MOST_WHOLE = 2000;

interface CellsRead {
  readonly rows: readonly (readonly InputCell[])[];
  readonly area: Area | undefined;
}

/** The cells of an argument with their places, where it is a range; else the values alone. */
function cellsRead(node: FormulaNode | null, { sheetName, source }: JointCallSite): CellsRead | undefined {
  const plain = node ? areaOf(node, sheetName) : undefined;
  if (plain !== undefined && !source.has(plain)) return undefined;
  const known = source.evaluate(node, sheetName);
  if (!isRows(known)) return undefined;
  const isSpill = node?.type === 'UnaryExpression' && node.operator === '#';
  const range = isSpill ? node.arguments?.[0] : node;
  const named = range ? areaOf(range, sheetName) : undefined;
  const area = named && { ...named, bottom: named.top + known.length - 1, right: named.left + (known[0]?.length ?? 1) - 1 };
  const placeOf = (r: number, c: number) => area && { sheetName: area.sheet, at: address(area.top + r, area.left + c) };
  return { rows: known.map((line, r) => line.map((value, c) => ({ value, place: placeOf(r, c) }))), area };
}

/** The inputs of one range. */
function together(inputs: FormulaNode | null, site: JointCallSite): JointInputs | undefined {
  const area = inputs ? areaOf(inputs, site.sheetName) : undefined;
  if (area !== undefined && cellCount(area) > MOST_WHOLE && !site.source.knows(area)) return rowsOf(area, site);
  const read = cellsRead(inputs, site);
  return read && jointInputsOf(read.rows, read.area);
}

/** Of a long table its names, and those of its variants that were read; the one that is asked for is among them or noted. */
function rowsOf(area: Area, { near, source, sheetName, row, column }: JointCallSite): JointInputs | undefined {
  const { sheet, top, left, right } = area;
  const line = (at: number): Area => ({ sheet, top: at, left, bottom: at, right });
  if (!source.has(line(top))) return undefined;
  const cells = (at: number): InputCell[] =>
    (source.area(line(at))?.[0] ?? []).map((value, c) => ({ value, place: { sheetName: sheet, at: address(at, left + c) } }));
  if (near?.sheetName === sheetName && cellPosition(near.at).column >= column) {
    const asked = top + cellPosition(near.at).row - row;
    if (asked > top && asked <= area.bottom) source.has(line(asked));
  }
  const variants: InputCell[][] = Array.from({ length: area.bottom - top });
  variants.fill([]);
  for (const known of source.knownRows(area)) if (known > 0) variants[known - 1] = cells(top + known);
  return { names: cells(top), variants, area, form: 'below' };
}

function apart(names: FormulaNode | null, values: FormulaNode | null, site: JointCallSite): JointInputs | undefined {
  const [header, given] = [cellsRead(names, site), cellsRead(values, site)];
  return header && given && { names: header.rows.flat(), variants: [given.rows.flat()], area: given.area, form: 'apart' };
}

function columnsOf({ names }: JointInputs, outputs: FormulaNode | null, { sheetName, source }: JointCallSite): number {
  try {
    const asked = source.evaluate(outputs, sheetName);
    return askedCount(
      names.map(({ value }) => value),
      asked === null || asked === undefined ? undefined : isRows(asked) ? asked : [[asked]],
    );
  } catch (fault) {
    if (fault instanceof Refused) return 1;
    throw fault;
  }
}

function callIn(node: FormulaNode, isWhole: boolean, site: JointCallSite): JointCall | undefined {
  const { sheetName, row, column, grid, source } = site;
  const id = ownFunction(node) ?? '';
  const [first = null, second = null, ...rest] = node.arguments ?? [];
  const read = id === 'JOINT.VALUE' ? apart(first, second, site) : together(first, site);
  if (read === undefined) return undefined;
  const base = cellsRead([second, ...rest][BASE_BEHIND_FIRST[id] ?? 0] ?? null, site)?.rows.map(row => row.map(({ value }) => value));
  const inputs = base === undefined ? read : { ...read, base };
  const filledTo = (rows: number, columns: number): Area => ({
    sheet: sheetName,
    top: row,
    left: column,
    bottom: row + (isWhole ? rows : 1) - 1,
    right: column + (isWhole ? columns : 1) - 1,
  });
  switch (id) {
    case 'JOINT.TABLE':
      return { inputs, filled: filledTo(inputs.variants.length + 1, columnsOf(inputs, second, site)), variantAt: at => at - row - 1 };
    case 'JOINT.CARD': {
      const number = source.evaluate(second, sheetName);
      return { inputs, filled: filledTo(OUTPUTS.length + 1, CARD_COLUMNS), variantAt: () => (typeof number === 'number' ? number - 1 : 0) };
    }
    case 'JOINT.VALUE':
      return { inputs, filled: filledTo(1, 1), variantAt: () => 0 };
    case 'CHECK.JOINT':
    case 'CHECK.BOSS':
      return { inputs, filled: filledTo(lastFilledRow(grid, row, column) - row + 1, CHECK_COLUMNS), variantAt: () => 0 };
    default:
      return undefined;
  }
}

/** Formulas that may hold calls of the joint. */
export const jointSitesOn = (sheetName: string, grid: Grid): FormulaSite[] => sitesOn(sheetName, grid, /JOINT|CHECK/i);

/** Whether it may fill more than its own cell. */
export const maySpill = ({ formula }: FormulaSite): boolean => /JOINT\.(TABLE|CARD)|CHECK\.(JOINT|BOSS)/i.test(formula);

/** @param near the selection for which they are read: of a long table only what it needs. */
export function jointCallsAt(site: FormulaSite, grid: Grid, source: PaneValues, near: Selection | undefined): JointCall[] {
  const tree = parseFormula(site.formula);
  return [...walk(tree ?? null)].flatMap(node => callIn(node, node === tree, { ...site, grid, source, near }) ?? []);
}
