// An outline in mm: corners joined by straight lines or by arcs.
import type { Point } from './svg';
import { at, type AxialPoint, type View } from './view';

export interface Corner {
  readonly place: AxialPoint;
  /** Centre of the arc, less than half a turn, that leads here; a straight line where it is left out. */
  readonly about?: AxialPoint;
}

export const corner = (r: number, z: number, about?: AxialPoint): Corner => ({ place: [r, z], ...(about !== undefined && { about }) });
export const straight = (...places: readonly AxialPoint[]): Corner[] => places.map(place => ({ place }));

const opposite = ([r, z]: AxialPoint): AxialPoint => [-r, z];

/** On the other side of the axis. */
export const mirrored = (outline: readonly Corner[]): Corner[] =>
  outline.map(({ place, about }) => ({ place: opposite(place), ...(about !== undefined && { about: opposite(about) }) }));

/** The same the other way round. */
export const reversed = (outline: readonly Corner[]): Corner[] =>
  outline
    .map(({ place }, i) => ({ place, ...(outline[i + 1]?.about !== undefined && { about: outline[i + 1]?.about as AxialPoint }) }))
    .reverse();

const ARC_STEPS = 8;

/** How far an arc turns, in radians: the shorter way round. */
export function turn([fromR, fromZ]: AxialPoint, [toR, toZ]: AxialPoint, [r, z]: AxialPoint): number {
  const angle = Math.atan2(toZ - z, toR - r) - Math.atan2(fromZ - z, fromR - r);
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

/** As straight pieces. */
const flattened = (outline: readonly Corner[]): AxialPoint[] =>
  outline.flatMap(({ place, about }, i) => {
    const from = outline[i - 1]?.place;
    if (about === undefined || from === undefined) return [place];
    const [radius, start, angle] = [
      Math.hypot(from[0] - about[0], from[1] - about[1]),
      Math.atan2(from[1] - about[1], from[0] - about[0]),
      turn(from, place, about),
    ];
    const between = Array.from({ length: ARC_STEPS - 1 }, (_, step): AxialPoint => {
      const at = start + (angle * (step + 1)) / ARC_STEPS;
      return [about[0] + radius * Math.cos(at), about[1] + radius * Math.sin(at)];
    });
    return [...between, place];
  });

/** As it is drawn in a picture. */
export const onSheet = (view: View, outline: readonly Corner[]): Point[] => flattened(outline).map(place => at(view, place));
