// The study that the selected cell belongs to: a map or what moves an output, through the call that stands there or spills over it.
import { Refused } from '../core/refuse';
import { calledFigure, givenArguments, isDrawn, type StudyFigure } from '../figure/study-figure';
import type { Area } from '../sheet/addresses';
import { areaOf, ownFunction, parseFormula, type FormulaNode } from '../sheet/formula';
import type { Selection } from '../sheet/port';
import { type FormulaSite, type Grid, holdsCell, lastFilledRow, nearest, type PaneValues, sitesOn, sourceOf } from './workbook';

export interface Study {
  /** The cell of the call. */
  readonly place: Selection;
  /** Or why there is none. */
  readonly figure: StudyFigure | string;
}

interface StudyCall {
  readonly site: FormulaSite;
  readonly id: Parameters<typeof calledFigure>[0];
  readonly args: readonly (FormulaNode | null)[];
}

const SENSITIVITY_COLUMNS = 7;
/** Where a map has its values. */
const [X_VALUES, Y_VALUES] = [2, 4];

function callAt(site: FormulaSite): StudyCall[] {
  const tree = parseFormula(site.formula);
  const id = tree === undefined ? undefined : ownFunction(tree);
  return tree === undefined || id === undefined || !isDrawn(id) ? [] : [{ site, id, args: tree.arguments ?? [] }];
}

export class Studies {
  private readonly sites: readonly FormulaSite[];

  constructor(
    private readonly grids: ReadonlyMap<string, Grid>,
    private readonly source: PaneValues = sourceOf(grids),
  ) {
    this.sites = [...grids].flatMap(([sheetName, grid]) => sitesOn(sheetName, grid, /JOINT\.(MAP|SENSITIVITY)/i));
  }

  at(selection: Selection): Study | undefined {
    const here = nearest(this.sites, selection).filter(({ sheetName }) => sheetName === selection.sheetName);
    const call = here.flatMap(callAt).find(one => holdsCell(this.filled(one), selection));
    if (call === undefined) return undefined;
    const { site, args } = call;
    // All that it reads is asked for before any of it is worked with.
    const isRead = args.map(node => this.isKnown(node, site.sheetName));
    return isRead.includes(false) ? undefined : { place: { sheetName: site.sheetName, at: site.at }, figure: this.figure(call) };
  }

  private isKnown(node: FormulaNode | null, sheetName: string): boolean {
    const area = node === null ? undefined : areaOf(node, sheetName);
    return area === undefined || this.source.has(area);
  }

  private given({ site: { sheetName, row, column }, id, args }: StudyCall): readonly unknown[] {
    const values = args.map(node => (this.isKnown(node, sheetName) ? this.source.evaluate(node, sheetName) : null));
    return givenArguments(id, values, (below, beside) => this.grids.get(sheetName)?.[row + below]?.[column + beside]?.value ?? null);
  }

  private figure(call: StudyCall): Study['figure'] {
    try {
      return calledFigure(call.id, this.given(call));
    } catch (fault) {
      if (fault instanceof Refused) return fault.message;
      throw fault;
    }
  }

  private filled(call: StudyCall): Area {
    const { sheetName, row, column } = call.site;
    const given = call.id === 'JOINT.MAP' ? this.given(call) : [];
    const count = (at: number): number => {
      const values = given[at] ?? null;
      return Array.isArray(values) ? values.flat().length : values === null ? 0 : 1;
    };
    const [bottom, right] =
      call.id === 'JOINT.MAP'
        ? [row + count(Y_VALUES), column + count(X_VALUES)]
        : [lastFilledRow(this.grids.get(sheetName) ?? [], row, column), column + SENSITIVITY_COLUMNS - 1];
    return { sheet: sheetName, top: row, left: column, bottom: Math.max(row, bottom), right };
  }
}
