// The cells of a workbook file as a source.
import type { Cell } from '../../core/kinds';
import type { DefinedName, FilledRange } from '../../sheet/plan';
import { CARDS } from '../../registry';
import { isOwnCall, ownFunction, parseFormula } from '../../sheet/formula';
import { nameKey, type SourceCell, type SourceTable, type SourceWorkbook } from '../../sheet/workbook-values';

export interface FileCell {
  readonly at: string;
  readonly value: Cell | null;
  readonly formula?: string;
  /** The cell whose formula spilled into this one. */
  readonly spilledFrom?: string;
  readonly array?: FilledRange;
}

export interface FileSheet {
  readonly name: string;
  readonly cells: readonly FileCell[];
}

export interface FileContents {
  readonly sheets: readonly FileSheet[];
  readonly names?: readonly DefinedName[];
  readonly tables?: readonly SourceTable[];
  /** Names of sheets without cells. */
  readonly otherSheets?: readonly string[];
}

/** Some programs keep a name that they do not know beside the one that is meant. */
const isBroken = ({ meaning }: DefinedName): boolean => /^#[A-Z]/.test(meaning);
const keyed = ({ name, meaning, sheet }: DefinedName): [string, string] => [nameKey(name, sheet), meaning];

/** A call that gives one value fills several cells where it is asked for each cell of a range: that table is not its own. */
export function isOurTable(formula: string): boolean {
  const tree = isOwnCall(formula) ? parseFormula(formula) : undefined;
  const shape = tree && CARDS.get(ownFunction(tree) ?? '')?.result.shape;
  return tree !== undefined && shape !== 'number' && shape !== 'text';
}

/** Cells that a table of ours filled are left out: they are filled anew. */
export function sourceOfFile(name: string, { sheets, names = [], tables = [], otherSheets = [] }: FileContents): SourceWorkbook {
  return {
    name,
    tables,
    otherSheets,
    names: new Map([...names.filter(isBroken), ...names.filter(name => !isBroken(name))].map(keyed)),
    sheets: sheets.map(sheet => {
      const ours = new Set(sheet.cells.flatMap(({ at, formula }) => (formula !== undefined && isOurTable(formula) ? [at] : [])));
      const kept = sheet.cells.filter(({ spilledFrom }) => spilledFrom === undefined || !ours.has(spilledFrom));
      return {
        name: sheet.name,
        cells: new Map(
          kept.map(({ at, value, formula, array }): [string, SourceCell] => [
            at,
            formula === undefined ? { value } : { value, formula, ...(array && !ours.has(at) && { array }) },
          ]),
        ),
      };
    }),
  };
}
