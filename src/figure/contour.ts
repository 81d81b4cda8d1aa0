// Where a surface over a grid has one height: straight pieces through its cells.
import type { Point } from './svg';

/** Heights by row and column; undefined where there is none. */
export type Heights = readonly (readonly (number | undefined)[])[];

/** Pieces of the line of that height, in columns and rows of the grid. */
export function contour(heights: Heights, level: number): (readonly [Point, Point])[] {
  const pieces: (readonly [Point, Point])[] = [];
  for (let row = 0; row + 1 < heights.length; row++) {
    const [near = [], far = []] = [heights[row], heights[row + 1]];
    for (let column = 0; column + 1 < near.length; column++) {
      const corners = [near[column], near[column + 1], far[column + 1], far[column]];
      if (!corners.every(height => height !== undefined)) continue;
      const crossings = corners.flatMap((height, i): Point[] => {
        const next = corners[(i + 1) % 4] as number;
        if (height >= level === next >= level) return [];
        const way = (level - height) / (next - height);
        return [[column + ([way, 1, 1 - way, 0][i] as number), row + ([0, way, 1, 1 - way][i] as number)]];
      });
      // a saddle has four: its neighbours on the outline belong together
      for (let i = 0; i + 1 < crossings.length; i += 2) pieces.push([crossings[i] as Point, crossings[i + 1] as Point]);
    }
  }
  return pieces;
}
