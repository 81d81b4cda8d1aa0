// From the values of a joint to its shape: each part from the values that it needs, or not at all.
import { tanDeg } from '../core/maths';
import { Refused } from '../core/refuse';
import { isCountersunk } from '../core/screw/head';
import type { Screw } from '../core/screw/thread';
import type { JointValues } from './joint-values';
import type { Board, ConeShape, HeadHalf, Insert, ScrewShape, Shape, ThreadHalf } from './shape';

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
    wall: 'head wall',
    mouth: 'recess mouth',
    floor: 'recess diameter',
    hole: 'hole',
    post: 'post OD',
    postRoot: 'post OD root',
    sleeve: 'sleeve',
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
    postRootR: half(v.postRoot),
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
  if (hole === undefined) return { ...common, note: 'broken' };
  // the joint itself takes the clearance hole for the hole in the board
  return {
    ...common,
    holeR: half(hole),
    ...(read.get('has recess') === true && { note: 'as the clearance hole' }),
  };
}

function threadHalfOf(read: JointValues): ThreadHalf | undefined {
  const v = read.all({
    od: 'boss OD',
    root: 'boss OD root',
    height: 'boss height',
    wall: 'wall',
    depth: 'hole depth',
    mouth: 'hole mouth',
    threadFrom: 'thread start',
    draft: 'hole draft',
    ring: 'ring depth',
    fillet: 'root fillet',
  });
  const insert = insertOf(read);
  const relief = read.get('has insert') === true ? { mm: 0, dia: 0 } : read.all({ mm: 'relief', dia: 'relief diameter' });
  if (v === undefined || relief === undefined) return undefined;
  const ring = Math.min(v.ring, v.wall);
  return {
    root: v.height,
    back: v.height + v.wall,
    odR: half(v.od),
    rootR: half(v.root),
    foot: v.height + ring,
    // no width is held for the groove: as wide as deep, or as its fillet needs
    footR: half(v.root) + Math.max(ring, v.fillet),
    fillet: v.fillet,
    holeBottom: v.depth,
    relief: Math.min(relief.mm, v.depth),
    reliefR: half(relief.mm > 0 ? Math.max(relief.dia, v.mouth) : v.mouth),
    pilotAt: z => Math.max(0, v.mouth / 2 - z * tanDeg(v.draft)),
    threadFrom: v.threadFrom,
    ...(insert !== undefined && { insert }),
  };
}

function insertOf(read: JointValues): Insert | undefined {
  if (read.get('has insert') !== true) return undefined;
  const v = read.all({ diameter: 'insert OD', below: 'insert below face', bottom: 'insert bottom' });
  return v && { outerR: half(v.diameter), top: v.below, bottom: v.bottom };
}

/** An own screw may lack what its thread is drawn from. */
function isDrawable(read: JointValues, screw: Screw): boolean {
  try {
    return [screw.majorMaxMm, screw.rootMaxMm, screw.pitchMm, screw.isTapping].length > 0;
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    read.note('screw', fault.message);
    return false;
  }
}

function screwOf(read: JointValues): ScrewShape | undefined {
  const screw = read.get('screw');
  const head = read.get('head');
  const v = read.all({ grip: 'grip', length: 'screw length', headDiameter: 'head diameter', headHeight: 'head height' });
  const cone = head !== undefined && isCountersunk(head) ? coneOf(read) : undefined;
  if (screw === undefined || head === undefined || v === undefined || (isCountersunk(head) && cone === undefined)) return undefined;
  if (!isDrawable(read, screw)) return undefined;
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
