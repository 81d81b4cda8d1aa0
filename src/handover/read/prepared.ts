// The workbook of the user before it is converted: names of sheets that every program takes, defined names put in,
// and which formulas cannot go along because what they point at does not.
import type { HandoverFinding } from './finding';
import { cellPosition } from '../../sheet/addresses';
import { depthOf, LONGEST_FORMULA, parseFormula } from '../../sheet/formula';
import { plainSheetName, type SheetNames } from '../../sheet/sheet-names';
import type { SourceCell, SourceSheet, SourceWorkbook } from '../../sheet/workbook-values';
import { type SettledFormula, Settling } from './settled';
import type { Site } from './tables';

export interface Prepared {
  readonly workbook: SourceWorkbook;
  /** Name at home by name on the hand-over. */
  readonly homeNames: ReadonlyMap<string, string>;
  /** Why a formula stays behind, by `Sheet!B4`. */
  readonly refused: ReadonlyMap<string, string>;
  readonly findings: readonly HandoverFinding[];
}

/** Deeper than any sheet that was made by hand. */
const DEEPEST = 500;

export function prepared(home: SourceWorkbook, names: SheetNames): Prepared {
  const findings: HandoverFinding[] = [];
  const refused = new Map<string, string>();
  const homeNames = new Map<string, string>();
  const newNames = new Map<string, string>();
  for (const { name } of home.sheets) {
    const free = names.free(plainSheetName(name));
    homeNames.set(free, name);
    newNames.set(name.toLowerCase(), free);
  }
  const settling = new Settling(home, newNames);
  const cellOf = (sheet: string, homeSheet: string, at: string, cell: SourceCell): SourceCell => {
    if (cell.formula === undefined) return cell;
    const { formula, why } = settledOrNot(settling, cell.formula, { sheet: homeSheet, ...cellPosition(at) });
    if (why !== undefined) refused.set(`${sheet}!${at}`, why);
    return { ...cell, formula };
  };
  const sheets = home.sheets.map((sheet): SourceSheet => {
    const name = newNames.get(sheet.name.toLowerCase()) ?? sheet.name;
    if (name !== sheet.name) findings.push({ sheet: name, at: '', what: 'changed', words: `the sheet was called "${sheet.name}"` });
    if (sheet.isHidden === true)
      findings.push({ sheet: name, at: '', what: 'changed', words: 'the sheet was hidden; here it can be seen' });
    return { ...sheet, name, cells: new Map([...sheet.cells].map(([at, cell]) => [at, cellOf(name, sheet.name, at, cell)])) };
  });
  return { workbook: { ...home, sheets }, homeNames, refused, findings };
}

function settledOrNot(settling: Settling, formula: string, site: Site): SettledFormula {
  if (formula.length > LONGEST_FORMULA)
    return { formula, why: `the formula has ${formula.length} characters; ${LONGEST_FORMULA} is the most` };
  const typed = parseFormula(formula);
  if (typed !== undefined && depthOf(typed) > DEEPEST) return { formula, why: `the formula is nested more than ${DEEPEST} times` };
  const settled = settling.settled(formula, site);
  const tree = parseFormula(settled.formula);
  return { ...settled, why: settled.why ?? (tree === undefined ? 'the formula cannot be read' : undefined) };
}
