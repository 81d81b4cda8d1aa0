// Calls of ours in names, conditions and validations: each is worked out on a sheet of ours, where the name or rule then reads it.
import type { Elsewhere } from '../../package/elsewhere';
import { fromPlace, inPlace } from '../../package/shared-formula';
import {
  address,
  cellCount,
  columnName,
  fixedArea,
  fixedCell,
  isOneCell,
  placesIn,
  type Rectangle,
  rectangleOf,
} from '../../sheet/addresses';
import { areaOf, calledName, type FormulaNode, ownFunction, parseFormula, qualified, rewritten, walk } from '../../sheet/formula';
import { ERROR_CODE } from '../../sheet/known';
import type { DefinedName, PlanCell, SheetPlan } from '../../sheet/plan';
import { fromFile } from '../../sheet/stored-formulas';
import type { SourceCell, SourceSheet } from '../../sheet/workbook-values';
import { isPlain } from '../compile/allowed';
import { isOurTable } from '../read/from-file';
import type { FindingWords } from '../words/finding-words';
import type { PageWords } from '../words/words';

/** A rule over more cells is not worked out for each of them. */
const MOST_CELLS = 5_000;
const ONE_CELL: Rectangle = { top: 0, left: 0, bottom: 0, right: 0 };
const HEADER = 2;
const FIRST_COLUMN = 2;
const WIDTHS = [34, 44, 12];

/** A call that can be worked out in cells: on a sheet, for each cell to which its rule belongs. */
export interface OutsideCall {
  readonly elsewhere: Elsewhere;
  /** The cells of a rule whose references move with them; one cell where none does. */
  readonly cells: Rectangle;
  readonly formulaAt: (row: number, column: number) => string;
}

const FIXED = /^(?:.*!)?\$[A-Z]{1,3}\$\d+(?::\$[A-Z]{1,3}\$\d+)?$/i;
const AREA = /^[A-Z]{1,3}\d+(?::[A-Z]{1,3}\d+)?$/;
const RULES: ReadonlySet<string> = new Set(['condition', 'validation']);

/** Nothing but calls of ours that give one value, cells of sheets that are sent, and what every program reads. */
function isReadable(tree: FormulaNode, home: string, sheets: ReadonlySet<string>): boolean {
  return [...walk(tree)].every(node => {
    if (node.type === 'LetExpression' || node.type === 'LambdaExpression' || node.operator === '#') return false;
    const called = calledName(node);
    if (called !== undefined) return ownFunction(node) !== undefined || isPlain(called);
    if (node.type !== 'ReferenceIdentifier') return true;
    const area = areaOf(node, home);
    return area !== undefined && sheets.has(area.sheet);
  });
}

/** Undefined where it cannot be worked out in cells. */
export function outsideCall(elsewhere: Elsewhere, sheets: ReadonlySet<string>): OutsideCall | undefined {
  const { kind, spot, place } = elsewhere;
  const isName = kind === 'name';
  if (!isName && !RULES.has(kind)) return undefined;
  // a name of a sheet that says no sheet is of the one where it is read
  const home = isName ? '' : (spot.sheet ?? '');
  const formula = `=${fromFile(elsewhere.formula)}`;
  const tree = parseFormula(formula);
  if (tree === undefined || isOurTable(formula) || !isReadable(tree, home, sheets)) return undefined;
  const isFixed = [...walk(tree)].every(({ type, value }) => type !== 'ReferenceIdentifier' || FIXED.test(String(value)));
  if (isFixed) return { elsewhere, cells: ONE_CELL, formulaAt: () => onSheet(formula, home) };
  const cells = rectangleOf(spot.what);
  // a scale of colours has one value for all its cells
  const isScale = [...place.around, place.element].some(({ local }) => local === 'cfvo');
  if (isName || isScale || !AREA.test(spot.what) || cellCount(cells) > MOST_CELLS) return undefined;
  const counted = fromPlace(formula, address(cells.top, cells.left));
  return { elsewhere, cells, formulaAt: (row, column) => onSheet(inPlace(counted, address(row, column)), home) };
}

function onSheet(formula: string, home: string): string {
  const tree = parseFormula(formula);
  return tree === undefined ? formula : rewritten(formula, [0, formula.length], qualified(tree, home));
}

/** `name minWall`, `condition C2:C7 on Bosses`. */
export function outsidePlace({ kind, spot: { what, table, sheet } }: Elsewhere, said: FindingWords): string {
  if (kind === 'placeholder') return what;
  const of = table === undefined ? what : said.ofTable(what, table);
  return `${said.elsewhere[kind]} ${sheet === undefined ? of : said.onSheet(of, sheet)}`;
}

export const calledThere = ({ formula }: Elsewhere): string => fromFile(formula).replace(/ENCL\./gi, '');

/** A cell of the rule reads what stands at its place, wherever the rule is moved to; of a rule that has grown since, nothing. */
function ofItsPlace(name: string, rule: Rectangle): string {
  const fixed = (row: number, column: number): string => `$${columnName(column)}$${row + 1}`;
  const first = fixed(rule.top, rule.left);
  const cells = `${first}:${fixed(rule.bottom, rule.right)}`;
  const at = `INDEX(${name},ROW()-ROW(${first})+1,COLUMN()-COLUMN(${first})+1)`;
  return `IF(ROWS(${cells})*COLUMNS(${cells})=${cellCount(rule)},${at},NA())`;
}

/** The sheet of what stands outside cells, before it is worked out, and what is read where. */
export interface OutsideSheet {
  readonly source: SourceSheet;
  /** As it is handed over. */
  dressed(plan: SheetPlan): SheetPlan;
  readonly names: readonly DefinedName[];
  /** What stands in the place of each call from now on. */
  readonly reads: ReadonlyMap<Elsewhere, string>;
  /** Calls that follow their inputs nowhere, or have a value that does not: an error is none, nor is "", as where a row is still blank. */
  notLive(plan: SheetPlan | undefined): OutsideCall[];
}

const isError = (value: unknown): boolean => typeof value === 'string' && ERROR_CODE.test(value);

/** What compares goes on reading an error, or a text without words, as it did: words are above all numbers, and a blank cell is 0. */
function withoutValue(cell: PlanCell): PlanCell {
  if (cell.formula !== undefined) return cell;
  if (cell.value === '') return { ...cell, formula: '=""' };
  return isError(cell.value) ? { ...cell, value: '#N/A', formula: '=NA()' } : cell;
}

export function outsideSheet(
  name: string,
  calls: readonly OutsideCall[],
  { outside, conversion: { said } }: PageWords,
  isTaken: (name: string) => boolean,
): OutsideSheet {
  const cells = new Map<string, SourceCell>();
  const labels: PlanCell[] = [
    { at: 'A1', role: 'title', value: outside.title },
    ...outside.headers.map((value, column): PlanCell => ({ at: address(HEADER, column), role: 'header', value })),
  ];
  const names: DefinedName[] = [];
  const reads = new Map<Elsewhere, string>();
  const placed = new Map<OutsideCall, readonly string[]>();
  let last = 0;
  const freeName = (): string => {
    for (;;) {
      const called = `${name}_${++last}`;
      if (!isTaken(called)) return called;
    }
  };
  let row = HEADER + 1;
  for (const call of calls) {
    const { elsewhere, cells: rule, formulaAt } = call;
    const top = row;
    const area = {
      sheet: name,
      top,
      left: FIRST_COLUMN,
      bottom: top + rule.bottom - rule.top,
      right: FIRST_COLUMN + rule.right - rule.left,
    };
    labels.push(
      { at: address(top, 0), role: 'label', value: outsidePlace(elsewhere, said) },
      { at: address(top, 1), role: 'text', value: calledThere(elsewhere) },
    );
    const ats = placesIn(rule).map(({ row: r, column: c }) => {
      const at = address(top + r - rule.top, FIRST_COLUMN + c - rule.left);
      cells.set(at, { value: null, formula: formulaAt(r, c) });
      return at;
    });
    placed.set(call, ats);
    const meaning = isOneCell(area) ? fixedCell(name, top, FIRST_COLUMN) : fixedArea(area);
    if (elsewhere.kind === 'name') reads.set(elsewhere, meaning);
    else {
      // not every program lets a rule read another sheet but by a name
      const called = freeName();
      names.push({ name: called, meaning });
      reads.set(elsewhere, isOneCell(area) ? called : ofItsPlace(called, rule));
    }
    row = area.bottom + 1;
  }
  return {
    source: { name, cells },
    dressed: plan => ({ ...plan, widths: WIDTHS, frozenRows: HEADER + 1, cells: [...labels, ...plan.cells.map(withoutValue)] }),
    names,
    reads,
    notLive: plan => {
      const byAddress = new Map(plan?.cells.map(cell => [cell.at, cell]));
      const isLive = (at: string): boolean => {
        const { formula, isFixed, value } = byAddress.get(at) ?? {};
        // what has no value here, as where ranges are multiplied, may have another one in a cell
        return formula !== undefined && isFixed !== true && value !== undefined;
      };
      return calls.filter(call => {
        const ats = placed.get(call) ?? [];
        const isVoid = (at: string): boolean => byAddress.get(at)?.value === '' || isError(byAddress.get(at)?.value);
        return !ats.some(isLive) || !ats.every(at => isLive(at) || isVoid(at));
      });
    },
  };
}
