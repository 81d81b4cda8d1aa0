// The screw, not cut, as fasteners are drawn: head, thread to scale where it is large enough, the point, and where the tip reaches at most.
import type { Screw } from '../core/screw/thread';
import { tanDeg } from '../core/maths';
import type { ScrewShape } from './shape';
import { el, line, type Markup, type Point, px, through } from './svg';
import { at, type AxialPoint, type View, xOf, yOf } from './view';

/** Below this pitch the thread is drawn with a thin line at its root, as in ISO 6410-1. */
const MIN_PITCH_PX = 6;
/** Point of 45°: ISO 1478. */
const POINT_SLOPE = tanDeg(22.5);

interface Profile {
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

function profileOf({ screw, length, point, isFlatEnd, cone }: ScrewShape): Profile {
  const [major, root] = [majorR(screw), rootR(screw)];
  const neck = (cone === undefined ? 0 : (cone.sharpR - root) / cone.slope) + screw.pitchMm / 2;
  const threadFrom = Math.min(neck, length);
  const pointFrom = Math.max(0, length - (screw.isTapping ? (point ?? major / POINT_SLOPE) : screw.pitchMm));
  const rootFrom = screw.isTapping && !isFlatEnd ? Math.max(pointFrom, length - root / POINT_SLOPE) : pointFrom;
  const tipR = !screw.isTapping ? root : isFlatEnd ? 0.8 * root : 0;
  return { threadFrom, pointFrom, rootFrom, crest: tapering(pointFrom, major, length, tipR), root: tapering(rootFrom, root, length, tipR) };
}

/** Crests on one side, each with the half width of its foot. */
function crests(
  { crest, root, threadFrom }: Profile,
  { screw, length }: ScrewShape,
  phase: number,
): { readonly t: number; readonly foot: number }[] {
  const count = Math.max(0, Math.floor((length - threadFrom) / screw.pitchMm - phase) + 1);
  return Array.from({ length: count }, (_, k) => {
    const t = threadFrom + (k + phase) * screw.pitchMm;
    return { t, foot: Math.min(0.48 * screw.pitchMm, (crest(t) - root(t)) * tanDeg(screw.flankDeg)) };
  }).filter(({ t, foot }) => foot > 0.01 && t + foot < length && t - foot > threadFrom - screw.pitchMm / 2);
}

const RIGHT = 0.25;
const LEFT = 0.75;

function shankSide(shape: ScrewShape, profile: Profile, phase: number): AxialPoint[] {
  const { crest, root } = profile;
  const flat = shape.screw.isTapping ? 0 : shape.screw.pitchMm / 16;
  const teeth = crests(profile, shape, phase).flatMap(({ t, foot }): AxialPoint[] => [
    [root(t - foot), t - foot],
    [crest(t - flat), t - flat],
    [crest(t + flat), t + flat],
    [root(t + foot), t + foot],
  ]);
  const last = teeth[teeth.length - 1]?.[1] ?? 0;
  return [[root(0), 0], ...teeth, ...[profile.rootFrom, shape.length].filter(t => t > last).map((t): AxialPoint => [root(t), t])];
}

function detailedShank(view: View, shape: ScrewShape): Markup[] {
  const profile = profileOf(shape);
  const place = ([r, t]: AxialPoint): Point => at(view, [r, shape.bearing + t]);
  const right = shankSide(shape, profile, RIGHT);
  const left = shankSide(shape, profile, LEFT).map(([r, t]): AxialPoint => [-r, t]);
  const half = shape.screw.pitchMm / 2;
  // right-handed: in front of the axis the thread rises from left to right
  const turns = crests(profile, shape, RIGHT).flatMap(({ t, foot }): (readonly [AxialPoint, AxialPoint])[] => {
    const s = Math.min(t + half, shape.length);
    const end = Math.min(s + foot, shape.length);
    return [
      [
        [profile.crest(t), t],
        [-profile.crest(s), s],
      ],
      [
        [profile.root(t + foot), t + foot],
        [-profile.root(end), end],
      ],
    ];
  });
  return [
    el('path', { class: 'bw-screw', d: through([...right, ...left.reverse()].map(place), true) }),
    ...turns.map(([from, to]) => line('bw-extension', place(from), place(to))),
  ];
}

/** Major diameter in a thick line, root in a thin one. */
function plainShank(view: View, shape: ScrewShape): Markup[] {
  const profile = profileOf(shape);
  const { bearing, length } = shape;
  const stops = [0, profile.pointFrom, Math.max(profile.pointFrom, profile.rootFrom), length];
  const side = (radius: (t: number) => number, sign: 1 | -1): Point[] => stops.map(t => at(view, [sign * radius(t), bearing + t]));
  return [
    el('path', { class: 'bw-screw', d: through([...side(profile.crest, 1), ...side(profile.crest, -1).reverse()], true) }),
    line('bw-thin', ...side(profile.root, 1)),
    line('bw-thin', ...side(profile.root, -1)),
    line('bw-visible', at(view, [-profile.crest(length), bearing + length]), at(view, [profile.crest(length), bearing + length])),
  ];
}

const CYLINDERS = /cheese|cap|fillister/;
const DOMES = /button|round/;

function flatSeatedHead(view: View, { head, bearing, headR, headHeight }: ScrewShape): string {
  const [x, y] = [(r: number) => px(xOf(view, r * headR)), (k: number) => px(yOf(view, bearing - k * headHeight))];
  const subject = head.word ?? head.table.subject;
  if (CYLINDERS.test(subject)) return `M${x(-1)} ${y(0)}V${y(0.9)}L${x(-0.94)} ${y(1)}H${x(0.94)}L${x(1)} ${y(0.9)}V${y(0)}Z`;
  const [side, top] = DOMES.test(subject) ? [0.1, 0.3] : [0.4, 0.45];
  return (
    `M${x(-1)} ${y(0)}V${y(side)}C${x(-1)} ${y(0.75)} ${x(-0.8)} ${y(1)} ${x(-top)} ${y(1)}H${x(top)}` +
    `C${x(0.8)} ${y(1)} ${x(1)} ${y(0.75)} ${x(1)} ${y(side)}V${y(0)}Z`
  );
}

/** The edge of a countersunk head is cut off below its theoretical diameter; a raised one has a dome on it. */
function countersunkHead(
  view: View,
  { screw, head, bearing, headR, headHeight }: ScrewShape,
  { sharpR, slope }: { readonly sharpR: number; readonly slope: number },
): string {
  const neckR = rootR(screw);
  const edgeZ = bearing + Math.max(0, sharpR - headR) / slope;
  const neckZ = Math.max(edgeZ, bearing + (sharpR - neckR) / slope);
  const raised = head.style === 'raised countersunk' ? Math.max(0, headHeight - (sharpR - majorR(screw)) / slope) : 0;
  const points: AxialPoint[] = [
    [-headR, bearing],
    [-headR, edgeZ],
    [-neckR, neckZ],
    [neckR, neckZ],
    [headR, edgeZ],
    [headR, bearing],
  ];
  const [left, top] = at(view, [-headR, bearing - 2 * raised]);
  // a quadratic curve reaches half way to its control point
  return `${through(points.map(place => at(view, place)))}Q${px(view.axisX)} ${px(top)} ${px(left)} ${px(yOf(view, bearing))}Z`;
}

/** The tip once more where the longest screw in the thinnest stack would have it. */
function deepestTip(view: View, shape: ScrewShape): Markup[] {
  const { bearing, length, penetrationMax } = shape;
  const shift = penetrationMax === undefined ? 0 : penetrationMax - (bearing + length);
  if (shift * view.scale < 1.5) return [];
  const { crest, pointFrom } = profileOf(shape);
  const side = (sign: 1 | -1): Point[] => [pointFrom, length].map(t => at(view, [sign * crest(t), bearing + t + shift]));
  return [line('bw-phantom', ...side(-1), ...side(1).reverse())];
}

export function drawScrew(view: View, shape: ScrewShape): Markup[] {
  const shank = shape.screw.pitchMm * view.scale < MIN_PITCH_PX ? plainShank(view, shape) : detailedShank(view, shape);
  const head = shape.cone === undefined ? flatSeatedHead(view, shape) : countersunkHead(view, shape, shape.cone);
  return [...shank, el('path', { class: 'bw-screw', d: head }), ...deepestTip(view, shape)];
}
