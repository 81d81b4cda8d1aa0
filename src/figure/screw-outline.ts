// The screw, not cut, in mm: its head and how crest and root of its thread run.
import type { Screw } from '../core/screw/thread';
import { tanDeg } from '../core/maths';
import { type Corner, corner, straight } from './outline';
import type { ConeShape, ScrewShape } from './shape';
import type { AxialPoint } from './view';

/** Point of 45°: ISO 1478. */
const POINT_SLOPE = tanDeg(22.5);

export interface Profile {
  /** Radii at a distance from the bearing plane. */
  readonly crest: (t: number) => number;
  readonly root: (t: number) => number;
  readonly threadFrom: number;
  /** Where crest and root begin to taper towards the tip. */
  readonly pointFrom: number;
  readonly rootFrom: number;
}

const rootR = ({ rootMaxMm }: Screw): number => rootMaxMm / 2;
const majorR = ({ majorMaxMm }: Screw): number => majorMaxMm / 2;

/** One radius up to here, then straight to another at the tip. */
const tapering =
  (from: number, r: number, tip: number, tipR: number) =>
  (t: number): number =>
    t <= from ? r : t >= tip ? tipR : r + ((tipR - r) * (t - from)) / (tip - from);

export function profileOf({ screw, length, point, isFlatEnd, cone }: ScrewShape): Profile {
  const [major, root] = [majorR(screw), rootR(screw)];
  const neck = (cone === undefined ? 0 : (cone.sharpR - root) / cone.slope) + screw.pitchMm / 2;
  const threadFrom = Math.min(neck, length);
  const pointFrom = Math.max(0, length - (screw.isTapping ? (point ?? major / POINT_SLOPE) : screw.pitchMm));
  const rootFrom = screw.isTapping && !isFlatEnd ? Math.max(pointFrom, length - root / POINT_SLOPE) : pointFrom;
  const tipR = !screw.isTapping ? root : isFlatEnd ? 0.8 * root : 0;
  return { threadFrom, pointFrom, rootFrom, crest: tapering(pointFrom, major, length, tipR), root: tapering(rootFrom, root, length, tipR) };
}

/** Where a side changes its direction, from the bearing plane to the tip. */
export const stopsOf = ({ pointFrom, rootFrom }: Profile, length: number): number[] => [
  0,
  pointFrom,
  Math.max(pointFrom, rootFrom),
  length,
];

/** Head and tip are joined by the major diameter: both sides and the tip, from the right of the bearing plane to its left. */
export function shankOutline(shape: ScrewShape): Corner[] {
  const profile = profileOf(shape);
  const side = stopsOf(profile, shape.length).map((t): AxialPoint => [profile.crest(t), shape.bearing + t]);
  return straight(...side, ...side.map(([r, z]): AxialPoint => [-r, z]).reverse());
}

/** The root of the thread on the right. */
export function rootLine(shape: ScrewShape): Corner[] {
  const profile = profileOf(shape);
  return straight(...stopsOf(profile, shape.length).map((t): AxialPoint => [profile.root(t), shape.bearing + t]));
}

const CYLINDERS = /cheese|cap|fillister/;
const DOMES = /button|round/;

/** From the left to the right over a top that is so much higher. */
function dome(r: number, z: number, rise: number): Corner[] {
  if (rise <= 0) return straight([-r, z], [r, z]);
  const centre: AxialPoint = [0, z - rise + (r * r + rise * rise) / (2 * rise)];
  return [corner(-r, z), corner(0, z - rise, centre), corner(r, z, centre)];
}

function flatSeatedHead({ head, bearing, headR: r, headHeight: h }: ScrewShape): Corner[] {
  const subject = head.word ?? head.table.subject;
  const up = (share: number): number => bearing - share * h;
  if (CYLINDERS.test(subject))
    return straight([-r, bearing], [-r, up(0.9)], [-0.94 * r, up(1)], [0.94 * r, up(1)], [r, up(0.9)], [r, bearing]);
  if (DOMES.test(subject)) return [corner(-r, bearing), ...dome(r, up(0.1), 0.9 * h), corner(r, bearing)];
  const round = 0.6 * Math.min(h, r);
  const [edge, top] = [bearing - h + round, bearing - h];
  return [
    ...straight([-r, bearing], [-r, edge]),
    corner(round - r, top, [round - r, edge]),
    corner(r - round, top),
    corner(r, edge, [r - round, edge]),
    corner(r, bearing),
  ];
}

/** The edge of a countersunk head is cut off below its theoretical diameter; a raised one has a dome on it. */
function countersunkHead({ screw, head, bearing, headR, headHeight }: ScrewShape, { sharpR, slope }: ConeShape): Corner[] {
  const neckR = screw.rootMaxMm / 2;
  const edgeZ = bearing + Math.max(0, sharpR - headR) / slope;
  const neckZ = Math.max(edgeZ, bearing + (sharpR - neckR) / slope);
  const raised = head.style === 'raised countersunk' ? Math.max(0, headHeight - (sharpR - screw.majorMaxMm / 2) / slope) : 0;
  return [...straight([-headR, edgeZ]), ...dome(headR, bearing, raised), ...straight([headR, edgeZ], [neckR, neckZ], [-neckR, neckZ])];
}

export const headOutline = (shape: ScrewShape): Corner[] =>
  shape.cone === undefined ? flatSeatedHead(shape) : countersunkHead(shape, shape.cone);

/** How much deeper the tip is where the longest screw stands in the thinnest stack; 0 where that is not known. */
export const deepestShift = ({ bearing, length, penetrationMax }: ScrewShape): number =>
  penetrationMax === undefined ? 0 : penetrationMax - (bearing + length);

/** The tip there, from left to right. */
export function deepestTip(shape: ScrewShape): AxialPoint[] {
  const { crest, pointFrom } = profileOf(shape);
  const shift = deepestShift(shape);
  const side = (sign: 1 | -1): AxialPoint[] =>
    [pointFrom, shape.length].map((t): AxialPoint => [sign * crest(t), shape.bearing + t + shift]);
  return [...side(-1), ...side(1).reverse()];
}
