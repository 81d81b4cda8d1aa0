// The screw, not cut, as fasteners are drawn: head, thread to scale where it is large enough, the point, and where the tip reaches at most.
import { tanDeg } from '../core/maths';
import { mirrored, onSheet } from './outline';
import { deepestShift, deepestTip, headOutline, type Profile, profileOf, rootLine, shankOutline } from './screw-outline';
import type { ScrewShape } from './shape';
import { el, line, type Markup, type Point, through } from './svg';
import { at, type AxialPoint, type View } from './view';

/** Below this pitch the thread is drawn with a thin line at its root, as in ISO 6410-1. */
const MIN_PITCH_PX = 6;

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
  const outline = onSheet(view, shankOutline(shape));
  const root = rootLine(shape);
  const tip = outline.length / 2;
  return [
    el('path', { class: 'bw-screw', d: through(outline, true) }),
    line('bw-thin', ...onSheet(view, root)),
    line('bw-thin', ...onSheet(view, mirrored(root))),
    line('bw-visible', outline[tip] as Point, outline[tip - 1] as Point),
  ];
}

/** The tip once more where the longest screw in the thinnest stack would have it. */
function drawDeepestTip(view: View, shape: ScrewShape): Markup[] {
  if (deepestShift(shape) * view.scale < 1.5) return [];
  return [line('bw-phantom', ...deepestTip(shape).map(place => at(view, place)))];
}

export function drawScrew(view: View, shape: ScrewShape): Markup[] {
  const shank = shape.screw.pitchMm * view.scale < MIN_PITCH_PX ? plainShank(view, shape) : detailedShank(view, shape);
  const head = el('path', { class: 'bw-screw', d: through(onSheet(view, headOutline(shape)), true) });
  return [...shank, head, ...drawDeepestTip(view, shape)];
}
