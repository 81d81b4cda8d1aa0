// Outlines of head half, board, thread half and insert, right of the axis, in mm.
import { type Corner, corner, straight } from './outline';
import type { Board, HeadHalf, Insert, Shape, ThreadHalf } from './shape';
import type { AxialPoint } from './view';

/** A part that ends in a break line: its outline comes from the break and goes back to it. */
export interface Cut {
  readonly outline: readonly Corner[];
  /** Ends of the edges that are seen across the bore. */
  readonly edges: readonly AxialPoint[];
}

const last = <T>(list: readonly T[]): T => list[list.length - 1] as T;

/** The bore of the seat: straight, or with the countersink at its top. */
function bore({ floor, end, floorR, holeR, boreFrom, cone }: HeadHalf): AxialPoint[] {
  if (cone === undefined)
    return [
      [holeR, floor],
      [holeR, end],
    ];
  const startR = Math.min(cone.sharpR, floorR);
  const start: AxialPoint = [startR, floor + (cone.sharpR - startR) / cone.slope];
  // a countersink deeper than the seat opens on its far side
  return boreFrom > end ? [start, [cone.sharpR - (end - floor) * cone.slope, end]] : [start, [holeR, boreFrom], [holeR, end]];
}

export function headHalfCut(part: HeadHalf): Cut {
  const { outer, floor, plane, end, inner, mouthR, floorR, postR, postRootR, sleeveR } = part;
  const inside = bore(part);
  const sleeve: AxialPoint[] =
    sleeveR === undefined
      ? []
      : [
          [sleeveR, end],
          [sleeveR, plane],
        ];
  return {
    outline: straight([mouthR, outer], [floorR, floor], ...inside, ...sleeve, [postR, plane], [postRootR, inner]),
    edges: [[mouthR, outer], ...inside.slice(0, -1), [last(inside)[0], end]],
  };
}

export const boardCut = ({ top, bottom }: Board, holeR: number): Cut => {
  const ends: AxialPoint[] = [
    [holeR, top],
    [holeR, bottom],
  ];
  return { outline: straight(...ends), edges: ends };
};

/** From the boss into the wall, with groove and fillet where they are given. */
function footOf({ root, odR, rootR, foot, footR, fillet }: ThreadHalf): Corner[] {
  const radius = Math.min(fillet, foot);
  const above = foot - radius;
  const startR = above < root ? odR + ((rootR - odR) * above) / root : rootR;
  return [
    ...(above > root ? [corner(rootR, root)] : []),
    ...(radius > 0 ? [corner(startR, above), corner(startR + radius, foot, [startR + radius, above])] : [corner(rootR, foot)]),
    ...(foot > root ? [corner(footR, foot), corner(footR, root)] : []),
  ];
}

/** From the bottom of the hole to the wall. A hole through the wall has no bottom: then it is a part on either side. */
export function threadHalfCut(part: ThreadHalf): Cut & { readonly isThrough: boolean } {
  const { back, odR, holeBottom, relief, reliefR, pilotAt } = part;
  const isThrough = holeBottom >= back;
  const bottom = Math.min(holeBottom, back);
  const mouth: AxialPoint[] =
    relief > 0
      ? [
          [pilotAt(relief), relief],
          [reliefR, relief],
          [reliefR, 0],
        ]
      : [[pilotAt(0), 0]];
  return {
    isThrough,
    outline: [...straight([pilotAt(bottom), bottom], ...mouth, [odR, 0]), ...footOf(part)],
    edges: [...(isThrough ? [[pilotAt(back), back] as const] : []), ...mouth.filter(([, z], i) => i === 0 || z === 0)],
  };
}

/** As a sleeve of metal round the screw, whose thread closes it. */
export function insertOutline({ outerR, top, bottom }: Insert, { screw }: Shape): Corner[] {
  const innerR = Math.min(screw === undefined ? outerR / 2 : screw.screw.majorMaxMm / 2, outerR);
  return straight([innerR, top], [outerR, top], [outerR, bottom], [innerR, bottom]);
}
