// The tolerance stack that the selected cell belongs to: through the call that reads it or spills over it.
import type { StackShare } from '../figure/charts';
import { cellPosition, type Area } from '../sheet/addresses';
import { areaOf, ownFunction, parseFormula, walk, type FormulaNode } from '../sheet/formula';
import { isRows, type Known } from '../sheet/workbook-values';
import { call, CARDS } from '../registry';
import type { Selection } from '../sheet/port';
import { holdsCell, nearest, type PaneValues, type FormulaSite, sitesOn, sourceOf, type Grid } from './workbook';

/** A total of the stack; undefined where it is refused. */
export interface StackTotals {
  readonly nominalMm: number | undefined;
  readonly worstMm: number | undefined;
  readonly rootSumSquareMm: number | undefined;
}

export interface Stack {
  /** The cell of the call. */
  readonly place: Selection;
  readonly shares: readonly StackShare[];
  readonly totals: StackTotals;
  /** Why there are no shares. */
  readonly refusal: string | undefined;
}

type Part = 'labels' | 'values' | 'tolerances' | 'sensitivities';
const PARTS: readonly Part[] = ['labels', 'values', 'tolerances', 'sensitivities'];

interface StackCall {
  readonly place: Selection;
  readonly tree: FormulaNode;
  readonly node: FormulaNode;
  readonly id: string;
}

const partsOf = ({ id, node }: StackCall): ReadonlyMap<Part, FormulaNode | null> =>
  new Map(
    PARTS.flatMap((part): [Part, FormulaNode | null][] => {
      const at = CARDS.get(id)?.params.findIndex(({ name }) => name === part) ?? -1;
      return at < 0 ? [] : [[part, node.arguments?.[at] ?? null]];
    }),
  );

/** Rows and columns of a simulation, which is not drawn anew to learn them. */
const SIMULATION: readonly [rows: number, columns: number] = [7, 3];

const numberOf = (id: string, args: readonly Known[]): number | undefined => {
  const answer = call(id, [...args]);
  return answer.ok && typeof answer.value === 'number' ? answer.value : undefined;
};

export class Stacks {
  private readonly sites: readonly FormulaSite[];

  constructor(
    private readonly grids: ReadonlyMap<string, Grid>,
    private readonly source: PaneValues = sourceOf(grids),
  ) {
    this.sites = [...grids].flatMap(([sheetName, grid]) => sitesOn(sheetName, grid, /STACK\./i));
  }

  /** The call whose cells hold the selection comes before one that only reads it. */
  at(selection: Selection): Stack | undefined {
    const calls = nearest(this.sites, selection).flatMap(callsIn);
    const own =
      calls.find(one => holdsCell(this.filled(one), selection)) ??
      calls.find(one => this.reads(one).some(area => holdsCell(area, selection)));
    if (own === undefined) return undefined;
    // All that it reads is asked for before any of it is worked with.
    const isRead = this.reads(own).map(area => this.source.has(area));
    return isRead.includes(false) ? undefined : this.stackOf(own);
  }

  private filled({ place, tree, node, id }: StackCall): Area {
    const { row, column } = cellPosition(place.at);
    const isWhole = tree === node;
    const answer = isWhole && (id === 'STACK.SHARE' || id === 'STACK.TABLE') ? this.source.evaluate(node, place.sheetName) : undefined;
    const [rows, columns] =
      isWhole && id === 'STACK.SIMULATE' ? SIMULATION : isRows(answer) ? [answer.length, answer[0]?.length ?? 1] : [1, 1];
    return { sheet: place.sheetName, top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 };
  }

  private reads(one: StackCall): Area[] {
    return [...partsOf(one).values()].flatMap(node => (node === null ? [] : (areaOf(node, one.place.sheetName) ?? [])));
  }

  private stackOf(one: StackCall): Stack {
    const parts = partsOf(one);
    const read = (part: Part): Known => this.source.evaluate(parts.get(part) ?? null, one.place.sheetName);
    const [values, tolerances, sensitivities] = [read('values'), read('tolerances'), read('sensitivities')];
    const answer = call('STACK.SHARE', [tolerances, sensitivities]);
    const shares = answer.ok && Array.isArray(answer.value) ? answer.value.map(([share]) => Number(share)) : [];
    const names = this.names(one, parts, shares.length);
    return {
      place: one.place,
      shares: shares.map((share, i) => ({ name: names[i] ?? '', share })),
      totals: {
        nominalMm: parts.has('values') ? numberOf('STACK.NOMINAL', [values, sensitivities]) : undefined,
        worstMm: numberOf('STACK.WORST', [tolerances, sensitivities]),
        rootSumSquareMm: numberOf('STACK.RSS', [tolerances, sensitivities]),
      },
      refusal: answer.ok ? undefined : answer.message,
    };
  }

  /** The labels that the call is given, else the texts beside its tolerances, else none. */
  private names({ place }: StackCall, parts: ReadonlyMap<Part, FormulaNode | null>, count: number): string[] {
    const given = this.source.evaluate(parts.get('labels') ?? null, place.sheetName);
    const labels: readonly unknown[] = isRows(given) ? given.flat() : [];
    const tolerances = parts.get('tolerances');
    const area = tolerances ? areaOf(tolerances, place.sheetName) : undefined;
    return Array.from({ length: count }, (_, i) => {
      const label = labels[i];
      const found = typeof label === 'string' && label.trim() !== '' ? label : area && this.textBeside(area, i);
      return found ?? '';
    });
  }

  /** Of tolerances in a row, the text above. */
  private textBeside({ sheet, top, left, bottom, right }: Area, i: number): string | undefined {
    const grid = this.grids.get(sheet) ?? [];
    const isRow = top === bottom && right > left;
    const cells = isRow
      ? grid
          .slice(0, top)
          .reverse()
          .map(line => line[left + i])
      : (grid[top + i] ?? []).slice(0, left);
    return cells.flatMap(cell => (typeof cell?.value === 'string' && cell.value.trim() !== '' ? [cell.value.trim()] : []))[0];
  }
}

function callsIn({ formula, sheetName, at }: FormulaSite): StackCall[] {
  const tree = parseFormula(formula);
  if (tree === undefined) return [];
  return [...walk(tree)].flatMap((node): StackCall[] => {
    const id = ownFunction(node) ?? '';
    const isStack = id.startsWith('STACK.') && CARDS.get(id)?.params.some(({ name }) => name === 'tolerances') === true;
    return isStack ? [{ place: { sheetName, at }, tree, node, id }] : [];
  });
}
