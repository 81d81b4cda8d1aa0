// What is dimensioned: words, value, and where on the part it belongs. One entry a dimension.
import { unitOf } from '../joint/outputs';
import type { JointValues } from './joint-values';
import type { Shape } from './shape';
import type { AxialPoint } from './view';

/** Left of the part: a leader straight to a face, or to a wall thickness. */
export interface FacePlace {
  readonly side: 'left';
  /** The face runs from here to there; the size is that of its first end, or, for a draft or a straight face, of all of it. */
  readonly from: AxialPoint;
  readonly to: AxialPoint;
  readonly meets: 'end' | 'middle';
  readonly ends: 'arrow' | 'dot';
}

export type SpanLook = 'worst' | 'nominal' | 'asked' | 'plain';

/** Right of the part: a dimension line between two heights, with extension lines from the radii. */
export interface SpanPlace {
  readonly side: 'right';
  readonly from: AxialPoint;
  readonly to: AxialPoint;
  /** Thread dimensions stand beside the boss, the others beside the part. */
  readonly beside: 'thread' | 'part';
  readonly look: SpanLook;
}

export interface Dimension {
  readonly words: string;
  /** What it is called where it stands alone. */
  readonly title: string;
  /** The name in the joint that has the value. */
  readonly name: string;
  readonly value: number | undefined;
  readonly unit: string;
  /** Undefined where there is no value. */
  readonly place: FacePlace | SpanPlace | undefined;
}

interface DimensionEntry {
  readonly words: string;
  readonly title?: string;
  readonly name: string;
  readonly unit: string;
  readonly value: (read: JointValues) => number | undefined;
  /** Only where it has a number. */
  readonly isNumbered?: true;
  readonly place: (shape: Shape, value: number) => FacePlace | SpanPlace | undefined;
}

/** Radius that stands for the broken edge of walls and board. */
export const EDGE = Infinity;

const list: DimensionEntry[] = [];
const dimension = (name: string, place: DimensionEntry['place'], words = name): void => {
  list.push({ words, name, unit: unitOf(name), value: read => read.mm(name), place });
};
const numbered = (name: string, place: DimensionEntry['place']): void => {
  list.push({ words: name, name, unit: unitOf(name), value: read => read.mm(name), place, isNumbered: true });
};

const end = (from: AxialPoint, to: AxialPoint, ends: FacePlace['ends'] = 'arrow'): FacePlace => ({
  side: 'left',
  from,
  to,
  meets: 'end',
  ends,
});
const face = (from: AxialPoint, to: AxialPoint): FacePlace => ({ side: 'left', from, to, meets: 'middle', ends: 'arrow' });
const span = (from: AxialPoint, to: AxialPoint, beside: SpanPlace['beside'] = 'part', look: SpanLook = 'plain'): SpanPlace => ({
  side: 'right',
  from,
  to,
  beside,
  look,
});
const mean = (a: number, b: number): number => (a + b) / 2;

// diameters, walls and drafts
dimension('recess mouth', ({ headHalf: h }) => h && end([h.mouthR, h.outer], [h.floorR, h.floor]));
dimension('recess draft', ({ headHalf: h }) => h && (h.floor > h.outer ? face([h.mouthR, h.outer], [h.floorR, h.floor]) : undefined));
dimension(
  'head diameter',
  ({ screw: s }) =>
    s &&
    (s.cone === undefined
      ? face([s.headR, s.bearing], [s.headR, s.bearing - 0.4 * s.headHeight])
      : end([s.headR, s.bearing], [s.headR, s.bearing + Math.max(0, s.cone.sharpR - s.headR) / s.cone.slope])),
);
dimension('recess diameter', ({ headHalf: h }) => h && (h.floor > h.outer ? end([h.floorR, h.floor], [h.mouthR, h.outer]) : undefined));
list.push({
  words: 'cone angle',
  name: 'cone angle',
  unit: '°',
  value: read => (read.get('is countersunk') === true ? read.mm('cone angle') : undefined),
  place: ({ headHalf: h }) => h?.cone && face([h.cone.sharpR, h.floor], [h.holeR, h.boreFrom]),
});
dimension('hole', ({ headHalf: h, board: b }, value) => {
  if (h !== undefined) return h.boreFrom < h.end ? face([h.holeR, h.boreFrom], [h.holeR, Math.max(h.boreFrom, h.plane)]) : undefined;
  return b?.holeR === value / 2 ? face([b.holeR, b.top], [b.holeR, b.bottom]) : undefined;
});
dimension('post OD', ({ headHalf: h }) => h && (h.inner < h.plane ? end([h.postR, h.plane], [h.postRootR, h.inner]) : undefined));
dimension('board hole', ({ board: b }) => (b?.holeR === undefined ? undefined : face([b.holeR, b.top], [b.holeR, b.bottom])));
dimension('sleeve OD', ({ headHalf: h }) =>
  h?.sleeveR === undefined ? undefined : face([h.sleeveR, mean(h.plane, h.end)], [h.sleeveR, h.end]),
);
dimension('boss OD', ({ threadHalf: t }) => t && end([t.odR, 0], [t.rootR, t.root]));
dimension('relief diameter', ({ threadHalf: t }) => t && (t.relief > 0 ? face([t.reliefR, 0], [t.reliefR, t.relief]) : undefined));
dimension('pilot mouth', ({ threadHalf: t }) => t && end([t.pilotAt(t.relief), t.relief], [t.pilotAt(t.holeBottom), t.holeBottom]));
numbered('insert hole', ({ threadHalf: t }) => t?.insert && end([t.insert.outerR, t.insert.top], [t.insert.outerR, t.insert.bottom]));
dimension('insert diameter', ({ threadHalf: t }) => t?.insert && face([t.insert.outerR, t.insert.top], [t.insert.outerR, t.insert.bottom]));
dimension('outside draft', ({ threadHalf: t }) => t && face([t.odR, 0], [t.rootR, t.root]));
dimension('hole draft', ({ threadHalf: t }) => {
  const z = t === undefined ? 0 : mean(t.relief, t.holeBottom);
  return t && face([t.pilotAt(z), z], [t.pilotAt(t.holeBottom), t.holeBottom]);
});
dimension('pilot at tip', ({ threadHalf: t, screw: s }) => {
  const z = s?.penetrationMax === undefined || s.point === undefined ? undefined : s.penetrationMax - s.point;
  return t && z !== undefined && z > t.relief && z < t.holeBottom ? end([t.pilotAt(z), z], [t.pilotAt(z), z]) : undefined;
});
dimension(
  'pilot bottom',
  ({ threadHalf: t }) =>
    t && (t.holeBottom <= t.back ? end([t.pilotAt(t.holeBottom), t.holeBottom], [t.pilotAt(t.relief), t.relief]) : undefined),
);
dimension(
  'boss wall root',
  ({ threadHalf: t }) =>
    t && (t.holeBottom >= t.root ? end([mean(t.rootR, t.pilotAt(t.root)), t.root], [mean(t.odR, t.pilotAt(0)), 0], 'dot') : undefined),
);
dimension('boss OD root', ({ threadHalf: t }) => t && end([t.rootR, t.root], [t.odR, 0]));

// heights along the pull
numbered('board plane', ({ headHalf: h }) => h && span([EDGE, h.outer], [EDGE, h.plane]));
dimension('recess depth', ({ headHalf: h }) => h && span([EDGE, h.outer], [h.floorR, h.floor]));
dimension('subflush', ({ headHalf: h, screw: s }) =>
  h === undefined || s === undefined || s.cone !== undefined ? undefined : span([EDGE, h.outer], [s.headR / 2, s.bearing - s.headHeight]),
);
dimension(
  'head height',
  ({ screw: s }) => s && (s.cone === undefined ? span([s.headR / 2, s.bearing - s.headHeight], [s.headR, s.bearing]) : undefined),
);
dimension('seat', ({ headHalf: h }) => h && span([h.floorR, h.floor], [h.postR, h.plane]));
dimension('cone depth', ({ headHalf: h }) => h?.cone && span([h.floorR, h.floor], [h.holeR, h.boreFrom]));
dimension(
  'seat under the cone',
  ({ headHalf: h }) => h?.cone && (h.boreFrom < h.plane ? span([h.holeR, h.boreFrom], [h.postR, h.plane]) : undefined),
);
dimension('board', ({ board: b }) => b && span([EDGE, b.top], [EDGE, b.bottom]));
dimension('sleeve', ({ headHalf: h }) => (h?.sleeveR === undefined ? undefined : span([h.postR, h.plane], [h.sleeveR, h.end])));
dimension('gap', ({ threadHalf: t }, value) => t && span([t.odR, -value], [t.odR, 0]));
dimension('relief', ({ threadHalf: t }, value) => t && span([t.odR, 0], [t.reliefR, value], 'thread'));

dimension(
  'insert length',
  ({ threadHalf: t }) => t?.insert && span([t.insert.outerR, t.insert.top], [t.insert.outerR, t.insert.bottom], 'thread'),
);

const fullThread = (words: string, name: string, look: SpanLook, title = `full thread, ${words}`): void => {
  list.push({
    words,
    title,
    name,
    unit: 'mm',
    value: read => read.mm(name),
    place: ({ threadHalf: t, screw: s }, mm) =>
      t && s && span([s.screw.majorMaxMm / 2, t.threadFrom], [s.screw.majorMaxMm / 2, t.threadFrom + Math.max(0, mm)], 'thread', look),
  });
};
fullThread('full thread, worst', 'engagement min', 'worst', 'full thread, worst');
fullThread('nominal', 'engagement', 'nominal');
fullThread('required', 'engagement required', 'asked');

dimension(
  'point',
  ({ screw: s, threadHalf: t }, value) =>
    s && span([s.screw.majorMaxMm / 2, s.bearing + s.length - value], [0, s.bearing + s.length], t && 'thread'),
);
dimension('screw length', ({ screw: s }, value) => s && span([s.headR, s.bearing], [0, s.bearing + value]));
dimension('penetration max', ({ threadHalf: t, screw: s }, value) => t && s && span([t.odR, 0], [0, value]));
dimension('bottom clearance', ({ threadHalf: t, screw: s }, value) =>
  t === undefined || s?.penetrationMax === undefined ? undefined : span([0, s.penetrationMax], [0, s.penetrationMax + value]),
);
dimension('hole depth', ({ threadHalf: t }) => t && span([t.odR, 0], [t.pilotAt(t.holeBottom), t.holeBottom]));
dimension('floor under hole', ({ threadHalf: t }) => t && span([t.pilotAt(t.holeBottom), t.holeBottom], [EDGE, t.back]));
dimension('boss height', ({ threadHalf: t }) => t && span([t.odR, 0], [EDGE, t.root]));
dimension('wall', ({ threadHalf: t }) => t && span([EDGE, t.root], [EDGE, t.back]));

/** Heights below this print as 0.00 and are left out. */
const NOTHING_MM = 0.005;

/** The dimensions of this joint in fixed order: those with a place, and those that should have a value and have none. */
export function dimensionsOf(read: JointValues, shape: Shape, hasNumber: (name: string) => boolean = () => false): Dimension[] {
  return list.flatMap(({ words, title = words, name, unit, value, place, isNumbered = false }): Dimension[] => {
    if (isNumbered && !hasNumber(name)) return [];
    const held = value(read);
    if (held === undefined) return read.lacks(name) ? [{ words, title, name, unit, value: undefined, place: undefined }] : [];
    const where = place(shape, held);
    if (where === undefined || (where.side === 'right' && Math.abs(held) < NOTHING_MM)) return [];
    return [{ words, title, name, unit, value: held, place: where }];
  });
}
