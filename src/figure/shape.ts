// The joint as a shape, mm. Datum is the boss face, z grows into the boss; radii from the axis. What is refused is left out, and said.
import { isCountersunk, type Head } from '../core/screw/head';
import { tanDeg } from '../core/maths';
import { Refused } from '../core/refuse';
import type { Screw } from '../core/screw/thread';
import { NotApplicable } from '../joint/graph';
import { OUTPUTS, type Variant } from '../joint/evaluate';
import { INPUTS } from '../joint/inputs';

/** A cone of a countersunk head: its theoretical edge lies at the bearing plane. */
export interface ConeShape {
  readonly sharpR: number;
  readonly slope: number;
}

export interface HeadHalf {
  readonly outer: number;
  readonly floor: number;
  readonly plane: number;
  /** Free end: of the sleeve, or the board plane. */
  readonly end: number;
  /** Inner side of the housing wall. */
  readonly inner: number;
  readonly mouthR: number;
  readonly floorR: number;
  readonly holeR: number;
  /** Where the straight hole begins: the floor, or the end of the countersink. */
  readonly boreFrom: number;
  readonly postR: number;
  readonly postRootR: number;
  readonly sleeveR?: number;
  readonly cone?: ConeShape;
}

export interface Board {
  readonly top: number;
  readonly bottom: number;
  /** Left out where it is not known; the board then ends in a break line outside `clearR`. */
  readonly holeR?: number;
  readonly clearR: number;
  /** What was drawn for want of a board hole. */
  readonly note?: string;
}

export interface ThreadHalf {
  readonly root: number;
  readonly back: number;
  readonly odR: number;
  readonly rootR: number;
  readonly holeBottom: number;
  /** 0 without relief; where it is no wider than the pilot, as wide as that. */
  readonly relief: number;
  readonly reliefR: number;
  readonly pilotAt: (z: number) => number;
}

export interface ScrewShape {
  readonly screw: Screw;
  readonly head: Head;
  readonly bearing: number;
  readonly headR: number;
  readonly headHeight: number;
  readonly length: number;
  /** Length without full thread at the tip; left out where none is held. */
  readonly point?: number;
  readonly isFlatEnd: boolean;
  readonly penetrationMax?: number;
  readonly cone?: ConeShape;
}

export interface Shape {
  readonly headHalf?: HeadHalf;
  readonly board?: Board;
  readonly threadHalf?: ThreadHalf;
  readonly screw?: ScrewShape;
}

/** Reads values of a variant and keeps what was refused. */
export class JointValues {
  /** Reason, and the names that have no value for it. */
  readonly missing = new Map<string, string[]>();

  constructor(readonly variant: Variant) {}

  /** The value, or nothing where it is refused or does not apply. */
  get(name: string): unknown {
    try {
      return this.variant.value(name);
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      if (!(fault instanceof NotApplicable)) this.note(name, fault.message);
      return undefined;
    }
  }

  mm(name: string): number | undefined {
    const value = this.get(name);
    return typeof value === 'number' ? value : undefined;
  }

  /** Whether it was asked for and refused. */
  lacks(name: string): boolean {
    return [...this.missing.values()].some(names => names.includes(name));
  }

  /** Helpers of the joint that no user knows by name are not listed. */
  note(name: string, reason: string): void {
    if (!OUTPUTS.includes(name) && !INPUTS.has(name)) return;
    const names = this.missing.get(reason) ?? [];
    if (!names.includes(name)) this.missing.set(reason, [...names, name]);
  }

  /** All of them, or nothing. */
  all<K extends string>(names: Readonly<Record<K, string>>): Readonly<Record<K, number>> | undefined {
    const entries = Object.entries<string>(names).map(([key, name]) => [key, this.mm(name)] as const);
    return entries.every(([, value]) => value !== undefined) ? (Object.fromEntries(entries) as Record<K, number>) : undefined;
  }
}

const half = (diameterMm: number): number => Math.max(0, diameterMm / 2);

function coneOf(read: JointValues): ConeShape | undefined {
  if (read.get('is countersunk') !== true) return undefined;
  const cone = read.all({ sharp: 'cone sharp', angle: 'cone angle' });
  return cone && { sharpR: half(cone.sharp), slope: tanDeg(cone.angle / 2) };
}

function headHalfOf(read: JointValues, plane: number): HeadHalf | undefined {
  if (read.get('has recess') !== true) return undefined;
  const v = read.all({
    boardPlane: 'board plane',
    depth: 'recess depth',
    wall: 'wall',
    mouth: 'recess mouth',
    floor: 'recess diameter',
    hole: 'hole',
    post: 'post OD',
    draft: 'recess draft',
    sleeve: 'sleeve',
    outsideDraft: 'outside draft',
  });
  const sleeveOd = v !== undefined && v.sleeve > 0 ? read.mm('sleeve OD') : undefined;
  const cone = coneOf(read);
  if (v === undefined || (v.sleeve > 0 && sleeveOd === undefined) || (cone === undefined && read.get('is countersunk') !== false))
    return undefined;
  const outer = plane - v.boardPlane;
  const inner = outer + Math.min(v.wall, v.boardPlane);
  const floor = outer + v.depth;
  return {
    outer,
    inner,
    plane,
    floor,
    end: plane + v.sleeve,
    boreFrom: cone === undefined ? floor : floor + (cone.sharpR - half(v.hole)) / cone.slope,
    mouthR: half(v.mouth),
    floorR: half(v.floor),
    holeR: half(v.hole),
    postR: half(v.post),
    // the post runs parallel to the recess inside it: one wall all along
    postRootR: half(v.post) + (plane - inner) * tanDeg(v.draft),
    ...(sleeveOd !== undefined && { sleeveR: half(sleeveOd) }),
    ...(cone !== undefined && { cone }),
  };
}

function boardOf(read: JointValues, plane: number): Board | undefined {
  const v = read.all({ board: 'board', sleeve: 'sleeve' });
  if (v === undefined || v.board === 0) return undefined;
  const [given, hole] = [read.mm('board hole'), v.sleeve > 0 ? undefined : read.mm('hole')];
  const clear = Math.max(read.mm('sleeve OD') ?? 0, read.mm('boss OD') ?? 0);
  const common = { top: plane, bottom: plane + v.board, clearR: half(clear) };
  if (given !== undefined) return { ...common, holeR: half(given) };
  if (hole === undefined) return { ...common, note: 'the board hole is not given: the board ends in a break line' };
  // the joint itself takes the clearance hole for the hole in the board
  return {
    ...common,
    holeR: half(hole),
    ...(read.get('has recess') === true && { note: 'the board hole is not given: drawn as the clearance hole' }),
  };
}

function threadHalfOf(read: JointValues): ThreadHalf | undefined {
  const v = read.all({
    od: 'boss OD',
    root: 'boss OD root',
    height: 'boss height',
    wall: 'wall',
    depth: 'hole depth',
    mouth: 'pilot mouth',
    relief: 'relief',
    reliefDia: 'relief diameter',
    draft: 'hole draft',
  });
  if (v === undefined) return undefined;
  return {
    root: v.height,
    back: v.height + v.wall,
    odR: half(v.od),
    rootR: half(v.root),
    holeBottom: v.depth,
    relief: Math.min(v.relief, v.depth),
    reliefR: half(v.relief > 0 ? Math.max(v.reliefDia, v.mouth) : v.mouth),
    pilotAt: z => Math.max(0, v.mouth / 2 - z * tanDeg(v.draft)),
  };
}

function screwOf(read: JointValues): ScrewShape | undefined {
  const screw = read.get('screw') as Screw | undefined;
  const head = read.get('head') as Head | undefined;
  const v = read.all({ grip: 'grip', length: 'screw length', headDiameter: 'head diameter', headHeight: 'head height' });
  const cone = head !== undefined && isCountersunk(head) ? coneOf(read) : undefined;
  if (screw === undefined || head === undefined || v === undefined || (isCountersunk(head) && cone === undefined)) return undefined;
  const point = read.mm('point');
  const penetrationMax = read.mm('penetration max');
  return {
    screw,
    head,
    bearing: -v.grip,
    headR: half(v.headDiameter),
    headHeight: v.headHeight,
    length: v.length,
    isFlatEnd: read.get('end') === 'flat',
    ...(point !== undefined && { point }),
    ...(penetrationMax !== undefined && { penetrationMax }),
    ...(cone !== undefined && { cone }),
  };
}

export function shapeOf(read: JointValues): Shape {
  const stack = read.all({ between: 'between', gap: 'gap' });
  const plane = stack && -stack.gap - stack.between;
  const parts = {
    headHalf: plane === undefined ? undefined : headHalfOf(read, plane),
    board: plane === undefined ? undefined : boardOf(read, plane),
    threadHalf: threadHalfOf(read),
    screw: screwOf(read),
  };
  return Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined));
}

/** The room the shape needs. */
export function extentOf({ headHalf, board, threadHalf, screw }: Shape): {
  readonly top: number;
  readonly bottom: number;
  readonly radius: number;
} {
  const top = Math.min(headHalf?.outer ?? 0, board?.top ?? 0, screw === undefined ? 0 : screw.bearing - screw.headHeight);
  const bottom = Math.max(
    threadHalf?.back ?? 0,
    threadHalf?.holeBottom ?? 0,
    board?.bottom ?? 0,
    headHalf?.end ?? 0,
    screw === undefined ? 0 : Math.max(screw.bearing + screw.length, screw.penetrationMax ?? 0),
  );
  const radius = Math.max(
    headHalf?.mouthR ?? 0,
    headHalf?.floorR ?? 0,
    headHalf?.postRootR ?? 0,
    headHalf?.sleeveR ?? 0,
    board?.holeR ?? board?.clearR ?? 0,
    threadHalf?.rootR ?? 0,
    threadHalf?.reliefR ?? 0,
    screw?.headR ?? 0,
  );
  return { top, bottom, radius };
}
