// Which sheet of one workbook is which of another: by its name, else by the texts that stand in it.
import type { SeenGrid } from './seen';

/** Cells of a sheet that must be the same to take it for another one under a new name. */
const SAME_SHEET = 0.5;

export interface PairedSheets {
  readonly pairs: ReadonlyMap<SeenGrid, SeenGrid>;
  /** Those of the first workbook that the other has under another name, and those that it has not. */
  readonly renamed: readonly SeenGrid[];
  readonly missing: readonly SeenGrid[];
  readonly added: readonly SeenGrid[];
  /** Those for which another sheet would do as well. */
  readonly doubtful: ReadonlySet<SeenGrid>;
}

export function pairedSheets(ours: readonly SeenGrid[], theirs: readonly SeenGrid[]): PairedSheets {
  const left = new Map(theirs.map(grid => [grid.sheet.name, grid]));
  const pairs = new Map<SeenGrid, SeenGrid>();
  const [renamed, missing]: [SeenGrid[], SeenGrid[]] = [[], []];
  const doubtful = new Set<SeenGrid>();
  const take = (grid: SeenGrid, there: SeenGrid | undefined): void => {
    if (there === undefined) return;
    pairs.set(grid, there);
    left.delete(there.sheet.name);
  };
  for (const grid of ours) take(grid, left.get(grid.sheet.name));
  for (const grid of ours) {
    if (pairs.has(grid)) continue;
    const [best, second] = [...left.values()].map(other => ({ other, like: sameShare(grid, other) })).sort((a, b) => b.like - a.like);
    if (best === undefined || best.like < SAME_SHEET) missing.push(grid);
    else {
      renamed.push(grid);
      if (second?.like === best.like) doubtful.add(grid);
      take(grid, best.other);
    }
  }
  return { pairs, renamed, missing, added: [...left.values()], doubtful };
}

/** Of the texts of a sheet those that the other has. */
function sameShare(a: SeenGrid, b: SeenGrid): number {
  const texts = ({ sheet }: SeenGrid): string[] =>
    [...sheet.cells.values()].flatMap(({ value, formula }) =>
      formula === undefined && typeof value === 'string' && value !== '' ? [value] : [],
    );
  const [ours, theirs] = [texts(a), new Set(texts(b))];
  return ours.length === 0 ? 0 : ours.filter(text => theirs.has(text)).length / ours.length;
}
