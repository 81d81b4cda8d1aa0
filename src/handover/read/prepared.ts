// The workbook of the user before it is converted: its formulas in terms that every program reads, and which cannot be followed.
import { cellPosition } from '../../sheet/addresses';
import { depthOf, LONGEST_FORMULA, parseFormula, withoutTexts } from '../../sheet/formula';
import type { SourceCell, SourceWorkbook } from '../../sheet/workbook-values';
import type { FindingSentence } from '../words/finding-words';
import { type SettledFormula, Settling } from './settled';
import type { Site } from './tables';

/** Why a formula cannot be followed. */
export interface Unfollowed {
  readonly why: FindingSentence;
  /** It must not go along, though it is the user's own. */
  readonly staysBehind: boolean;
}

export interface Prepared {
  readonly workbook: SourceWorkbook;
  /** By `Sheet!B4`. */
  readonly refused: ReadonlyMap<string, Unfollowed>;
}

/** Deeper than any sheet that was made by hand. */
const DEEPEST = 500;

/** What starts another program, and what reads another workbook in a form that no file has. */
const STARTS = /\|/;
const SHEET_NAMES = /'(?:[^']|'')*'/g;
const READS_FILE = /\[[^\]]+\][^!]*!/;

/** @param keepsLinks whether the workbooks that formulas read are known to who gets the copy. */
export function prepared(home: SourceWorkbook, keepsLinks: boolean): Prepared {
  const refused = new Map<string, Unfollowed>();
  const settling = new Settling(home);
  const cellOf = (sheet: string, at: string, cell: SourceCell): SourceCell => {
    if (cell.formula === undefined) return cell;
    const { formula, why, reachesOut, leadsToFile } = settledOrNot(settling, cell.formula, { sheet, ...cellPosition(at) });
    if (why !== undefined)
      refused.set(`${sheet}!${at}`, { why, staysBehind: reachesOut === true || (leadsToFile === true && !keepsLinks) });
    return formula === cell.formula ? cell : { ...cell, formula };
  };
  const sheets = home.sheets.map(sheet => ({
    ...sheet,
    cells: new Map([...sheet.cells].map(([at, cell]) => [at, cellOf(sheet.name, at, cell)])),
  }));
  return { workbook: { ...home, sheets }, refused };
}

function settledOrNot(settling: Settling, formula: string, site: Site): SettledFormula {
  if (formula.length > LONGEST_FORMULA) return { formula, why: said => said.tooLong(formula.length, LONGEST_FORMULA) };
  const typed = parseFormula(formula);
  if (typed !== undefined && depthOf(typed) > DEEPEST) return { formula, why: said => said.tooDeep(DEEPEST) };
  const bare = withoutTexts(formula);
  const settled = settling.settled(formula, site);
  if (STARTS.test(bare.replace(SHEET_NAMES, ''))) return { ...settled, why: settled.why ?? (said => said.startsProgram), reachesOut: true };
  if (settled.why !== undefined || parseFormula(settled.formula) !== undefined) return settled;
  return { ...settled, why: said => said.unread, ...(READS_FILE.test(bare) && { leadsToFile: true }) };
}
