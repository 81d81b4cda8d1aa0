// From millimetres to pixels: one scale for both directions, the axis upright.
import type { Point } from './svg';

export interface View {
  readonly scale: number;
  readonly axisX: number;
  readonly faceY: number;
  /** Half width of what is drawn of walls and board. */
  readonly edgePx: number;
}

/** Radius, negative to the left of the axis, and height below the boss face. */
export type AxialPoint = readonly [r: number, z: number];

export const yOf = (view: View, z: number): number => view.faceY + z * view.scale;
export const xOf = (view: View, r: number): number => view.axisX + r * view.scale;
export const at = (view: View, [r, z]: AxialPoint): Point => [xOf(view, r), yOf(view, z)];

const WAVE_STEP = 4;

/** A break line by free hand, from the first height to the second. */
export function wave(x: number, fromY: number, toY: number): Point[] {
  const steps = Math.max(2, Math.round(Math.abs(toY - fromY) / WAVE_STEP));
  return Array.from({ length: steps + 1 }, (_, i): Point => {
    const y = fromY + ((toY - fromY) * i) / steps;
    return [i === 0 || i === steps ? x : x + 1.7 * Math.sin(y / 4.1) + 0.9 * Math.sin(y / 1.7), y];
  });
}
