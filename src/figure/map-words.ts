// What stands in the way on a map, written where it does.
import type { StateMap } from './state-map';
import { fitted, type Point, textWidthPx } from './svg';

/** Where the values of an axis stand in the picture, and the ends of their cells. */
export interface AxisPlace {
  readonly at: (value: number) => number;
  readonly edges: readonly number[];
}

/** The narrowest words, px, and how far lines of them are apart. */
const [NARROWEST_PX, APART_PX] = [56, 15];

export interface MapWords {
  readonly words: string;
  readonly at: Point;
  readonly halfPx: number;
}

const isApart = (one: MapWords, other: MapWords): boolean =>
  Math.abs(one.at[1] - other.at[1]) >= APART_PX || Math.abs(one.at[0] - other.at[0]) >= one.halfPx + other.halfPx + 6;

export const isFree = (one: MapWords, taken: readonly MapWords[]): boolean => taken.every(other => isApart(one, other));

/** What limits, in the widest row where it does, of equal ones in the middle one; never over what stands there already. */
export function limitWords({ limits }: StateMap, x: AxisPlace, y: AxisPlace, taken: readonly MapWords[]): MapWords[] {
  const runs = limits.flatMap((row, r) => {
    const starts = row.flatMap((words, c) => (c === 0 || words !== row[c - 1] ? [c] : []));
    return starts.map((start, i) => {
      const [left, right] = [x.edges[start] as number, x.edges[starts[i + 1] ?? row.length] as number];
      const middleY = ((y.edges[r] as number) + (y.edges[r + 1] as number)) / 2;
      return { words: row[start] as string, left, right, middleY };
    });
  });
  const placed: MapWords[] = [];
  for (const words of new Set(runs.map(run => run.words).filter(one => one !== ''))) {
    const own = runs.filter(run => run.words === words);
    const middleY = own.reduce((sum, run) => sum + run.middleY / own.length, 0);
    const wide = (run: (typeof own)[number]): number => run.right - run.left;
    const [found] = own
      .filter(run => wide(run) >= NARROWEST_PX)
      .sort((a, b) => Math.round(wide(b) - wide(a)) || Math.abs(a.middleY - middleY) - Math.abs(b.middleY - middleY))
      .map((run): MapWords => {
        const shownWords = fitted(words, wide(run) - 8, 11);
        return { words: shownWords, at: [(run.left + run.right) / 2, run.middleY + 4], halfPx: textWidthPx(shownWords, 11) / 2 };
      })
      .filter(one => isFree(one, [...taken, ...placed]));
    if (found !== undefined) placed.push(found);
  }
  return placed;
}

/** What stands in the way somewhere, most of all first. */
export function limitsSaid({ limits }: StateMap): string {
  const counts = new Map<string, number>();
  for (const words of limits.flat()) if (words !== '') counts.set(words, (counts.get(words) ?? 0) + 1);
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([words]) => words)
    .join(', ');
}
