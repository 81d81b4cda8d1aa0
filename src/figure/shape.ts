// The joint as a shape, mm. Datum is the boss face, z grows into the boss; radii from the axis. What is refused is left out.
import type { Head } from '../core/screw/head';
import type { Screw } from '../core/screw/thread';

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
  readonly note?: 'broken' | 'as the clearance hole';
}

export interface ThreadHalf {
  readonly root: number;
  readonly back: number;
  readonly odR: number;
  readonly rootR: number;
  /** Where the boss ends: the inner face of the wall, or the floor of the groove round it. */
  readonly foot: number;
  /** Where groove or fillet end beside it; the root radius where there is neither. */
  readonly footR: number;
  readonly fillet: number;
  readonly holeBottom: number;
  /** 0 without relief; where it is no wider than the pilot, as wide as that. */
  readonly relief: number;
  readonly reliefR: number;
  readonly pilotAt: (z: number) => number;
  /** Depth at which the thread begins: the relief, or an insert below the face. */
  readonly threadFrom: number;
  readonly insert?: Insert;
}

export interface Insert {
  readonly outerR: number;
  readonly top: number;
  readonly bottom: number;
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
    threadHalf?.footR ?? 0,
    threadHalf?.reliefR ?? 0,
    screw?.headR ?? 0,
  );
  return { top, bottom, radius };
}
