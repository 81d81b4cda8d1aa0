// No cell goes out with a value that its own formula does not give. Each formula is worked out on the values beside it,
// so that the one that is wrong is found, and not all that depend on it.
//
// A formula of ours that gives another value is a fault of ours, and whatever follows from it would be wrong: there is no copy.
// A formula of the user reads what had to change on the way (a text with its unit is a number now): its value stays, without it.
import { call } from '../registry';
import type { PlanCell, SheetPlan } from '../sheet/plan';
import { Evaluator } from '../sheet/evaluator';
import type { HandoverFinding } from './read/finding';
import { FINDINGS, type FindingWords } from './words/finding-words';
import { cellPosition, type Place } from '../sheet/addresses';
import { ERROR_CODE, isFault, type Known, type One, scalar } from '../sheet/known';

const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
/** So many cells are named; the rest is counted. */
const MOST_NAMED = 5;

/** What stands in a cell once the file is open: of what was worked out, an error where the value is the code of one. */
const worthOf = ({ value, formula, role }: PlanCell): One =>
  (formula !== undefined || role === 'result') && typeof value === 'string' && ERROR_CODE.test(value)
    ? { cellError: value }
    : formula === undefined && value === ''
      ? null
      : (value ?? null);

class ValuesBeside extends Evaluator {
  private readonly sheets: ReadonlyMap<string, SheetPlan>;
  /** Row by row, as far as cells are filled; of a sheet that something reads. */
  private readonly filled = new Map<string, readonly (readonly One[] | undefined)[]>();
  private readonly last = new Map<string, Place>();

  constructor(sheets: readonly SheetPlan[]) {
    super(call);
    this.sheets = new Map(sheets.map(sheet => [sheet.name, sheet]));
  }

  private rowsOf(sheet: string): readonly (readonly One[] | undefined)[] | undefined {
    const known = this.filled.get(sheet);
    if (known !== undefined) return known;
    const plan = this.sheets.get(sheet);
    if (plan === undefined) return undefined;
    const rows = rowsOf(plan.cells);
    this.filled.set(sheet, rows);
    return rows;
  }

  protected override valueAt(sheet: string, row: number, column: number): One {
    const rows = this.rowsOf(sheet);
    return rows === undefined ? undefined : (rows[row]?.[column] ?? null);
  }

  protected override lastOf(sheet: string): Place {
    const rows = this.rowsOf(sheet) ?? [];
    const known = this.last.get(sheet) ?? {
      row: Math.max(0, rows.length - 1),
      column: rows.reduce((most, row = []) => Math.max(most, row.length - 1), 0),
    };
    this.last.set(sheet, known);
    return known;
  }

  protected override spilledAt(): Known {
    return undefined;
  }
}

const valueOf = (values: Evaluator, { at, rowForm }: PlanCell, formula: string, sheet: string): Known =>
  rowForm === undefined ? values.valueOfFormula(formula, sheet) : values.valueInRow(rowForm, cellPosition(at).row, sheet);

function rowsOf(cells: readonly PlanCell[]): readonly (readonly One[] | undefined)[] {
  const rows: (One[] | undefined)[] = [];
  for (const cell of cells) {
    const { row, column } = cellPosition(cell.at);
    (rows[row] ??= [])[column] = worthOf(cell);
  }
  return rows;
}

/** The same value, as two programs print it. */
const isSame = (a: One, b: One): boolean => {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(b));
  return isFault(a) || isFault(b) ? isFault(a) && isFault(b) && a.cellError === b.cellError : (a ?? '') === (b ?? '');
};

const shown = (value: One): string => (isFault(value) ? value.cellError : String(value ?? ''));

export interface Verified {
  readonly sheets: readonly SheetPlan[];
  readonly findings: readonly HandoverFinding[];
}

/** A copy that would not be true is not made. */
export class UntrueCopy extends Error {
  /** @param rows where they stand: `Variants_1!7`. */
  constructor(
    readonly cells: readonly string[],
    readonly rows: readonly string[] = [],
  ) {
    super(
      `this workbook is not handed over: ${cells.length === 1 ? 'a formula' : `${cells.length} formulas`} of the copy would give ` +
        `another value than the function: ${cells.slice(0, MOST_NAMED).join('; ')}`,
    );
  }
}

/**
 * @param own names of the sheets that we wrote ourselves.
 * @param beside sheets that the formulas read and that are not judged here.
 * @param said in which it is told.
 */
export function verified(
  sheets: readonly SheetPlan[],
  own: ReadonlySet<string>,
  beside: readonly SheetPlan[] = [],
  said: FindingWords = FINDINGS,
): Verified {
  const values = new ValuesBeside([...sheets, ...beside]);
  const findings: HandoverFinding[] = [];
  const untrue: string[] = [];
  const rows = new Set<string>();
  const judged = sheets.map(sheet => {
    const unknown: string[] = [];
    const cells = sheet.cells.map(cell => {
      if (cell.formula === undefined) return cell;
      // with its braces a formula may give another value than is worked out here
      const given = cell.array === undefined ? scalar(valueOf(values, cell, cell.formula, sheet.name)) : undefined;
      if (given === undefined) {
        unknown.push(cell.at);
        return cell;
      }
      if (isSame(worthOf(cell), given)) return cell;
      // a step that is not looked at may have no value: a root of less than nothing, a division by nothing, and no other error
      if (cell.value === undefined && isFault(given) && NO_NUMBER.includes(given.cellError)) return cell;
      if (own.has(sheet.name)) {
        rows.add(`${sheet.name}!${cellPosition(cell.at).row + 1}`);
        untrue.push(`${sheet.name}!${cell.at} ${shown(given)}, not ${shown(worthOf(cell))}`);
        return cell;
      }
      findings.push({
        sheet: sheet.name,
        at: cell.at,
        what: 'value, not live',
        words: said.changedHere(shown(given)),
        values: cell.role === 'result' ? 1 : 0,
      });
      return withoutFormula(cell, said);
    });
    if (unknown.length > 0)
      findings.push({ sheet: sheet.name, at: unknown[0] ?? '', what: 'not worked out here', words: told(unknown, said) });
    return { ...sheet, cells };
  });
  if (untrue.length > 0) throw new UntrueCopy(untrue, [...rows]);
  return { sheets: judged, findings };
}

const NO_NUMBER: readonly string[] = ['#NUM!', '#DIV/0!'];

function told(cells: readonly string[], said: FindingWords): string {
  const named = `${cells.slice(0, MOST_NAMED).join(', ')}${cells.length > MOST_NAMED ? ' …' : ''}`;
  return `${cells.length === 1 ? '' : `${said.formulas(cells.length, named)}: `}${said.valueKept}`;
}

function withoutFormula({ formula, ...cell }: PlanCell, said: FindingWords): PlanCell {
  return { ...cell, isFixed: true, note: said.wasFormula(formula ?? '') };
}
