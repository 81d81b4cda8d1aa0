// Head half, board, thread half and insert in section: tint, hatching, visible edges, break lines.
import type { Board, HeadHalf, Insert, Shape, ThreadHalf } from './shape';
import { el, line, type Markup, type Point, through } from './svg';
import { at, type AxialPoint, type View, wave, yOf } from './view';

type PartName = 'head-half' | 'thread-half' | 'board' | 'insert';

const mirrored = (places: readonly AxialPoint[]): AxialPoint[] => places.map(([r, z]) => [-r, z]);

function filled(material: PartName, outline: readonly Point[]): Markup[] {
  const d = through(outline, true);
  return [el('path', { class: `bw-${material}`, d }), el('path', { fill: `url(#bw-hatch-${material})`, d })];
}

/** An area that ends in a break line beside the part: its visible edges run from the break, around, and back to it. */
function broken(view: View, material: PartName, profile: readonly AxialPoint[], side: 1 | -1): Markup[] {
  const points = (side === 1 ? profile : mirrored(profile)).map(place => at(view, place));
  const edgeX = view.axisX + side * view.edgePx;
  const [first, last] = [points[0] as Point, points[points.length - 1] as Point];
  const cut = wave(edgeX, last[1], first[1]);
  return [
    ...filled(material, [...points, ...cut]),
    line('bw-visible', [edgeX, first[1]], ...points, [edgeX, last[1]]),
    line('bw-thin', ...cut),
  ];
}

/** A board whose hole is not known is broken off so far from the part. */
const CLEAR_PX = 10;

const acrossBore = (view: View, r: number, z: number): Markup => line('bw-visible', at(view, [-r, z]), at(view, [r, z]));

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

function drawHeadHalf(view: View, part: HeadHalf): Markup[] {
  const { outer, floor, plane, end, inner, mouthR, floorR, postR, postRootR, sleeveR } = part;
  const inside = bore(part);
  const [throughR] = inside[inside.length - 1] as AxialPoint;
  const sleeve: AxialPoint[] =
    sleeveR === undefined
      ? []
      : [
          [sleeveR, end],
          [sleeveR, plane],
        ];
  const profile: AxialPoint[] = [[mouthR, outer], [floorR, floor], ...inside, ...sleeve, [postR, plane], [postRootR, inner]];
  const edges: AxialPoint[] = [[mouthR, outer], ...inside.slice(0, -1), [throughR, end]];
  return [
    ...broken(view, 'head-half', profile, 1),
    ...broken(view, 'head-half', profile, -1),
    ...edges.map(([r, z]) => acrossBore(view, r, z)),
  ];
}

function drawBoard(view: View, { top, bottom, holeR, clearR }: Board): Markup[] {
  if (holeR !== undefined) {
    const profile: AxialPoint[] = [
      [holeR, top],
      [holeR, bottom],
    ];
    return [
      ...broken(view, 'board', profile, 1),
      ...broken(view, 'board', profile, -1),
      acrossBore(view, holeR, top),
      acrossBore(view, holeR, bottom),
    ];
  }
  return ([1, -1] as const).flatMap(side => {
    const [innerX, outerX] = [view.axisX + side * (clearR * view.scale + CLEAR_PX), view.axisX + side * view.edgePx];
    const [topY, bottomY] = [yOf(view, top), yOf(view, bottom)];
    const [innerCut, outerCut] = [wave(innerX, bottomY, topY), wave(outerX, topY, bottomY)];
    return [
      ...filled('board', [...innerCut, ...outerCut]),
      line('bw-visible', [innerX, topY], [outerX, topY]),
      line('bw-visible', [innerX, bottomY], [outerX, bottomY]),
      line('bw-thin', ...innerCut),
      line('bw-thin', ...outerCut),
    ];
  });
}

const ARC_STEPS = 8;

/** From the boss into the wall, with groove and fillet where they are given. */
function footOf({ root, odR, rootR, foot, footR, fillet }: ThreadHalf): AxialPoint[] {
  const radius = Math.min(fillet, foot);
  const above = foot - radius;
  const startR = above < root ? odR + ((rootR - odR) * above) / root : rootR;
  const arc = Array.from({ length: ARC_STEPS + 1 }, (_, i): AxialPoint => {
    const angle = (i / ARC_STEPS) * (Math.PI / 2);
    return [startR + radius * (1 - Math.cos(angle)), above + radius * Math.sin(angle)];
  });
  const start: AxialPoint[] = above > root ? [[rootR, root]] : [];
  const end: AxialPoint[] =
    foot > root
      ? [
          [footR, foot],
          [footR, root],
        ]
      : [];
  return [...start, ...(radius > 0 ? arc : [[rootR, foot] as const]), ...end];
}

function drawThreadHalf(view: View, part: ThreadHalf): Markup[] {
  const { root, back, odR, holeBottom, relief, reliefR, pilotAt } = part;
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
  const side: AxialPoint[] = [[pilotAt(bottom), bottom], ...mouth, [odR, 0], ...footOf(part)];
  const edges = mouth.filter(([, z], i) => i === 0 || z === 0).map(([r, z]) => acrossBore(view, r, z));
  if (isThrough)
    return [
      ...broken(view, 'thread-half', side, 1),
      ...broken(view, 'thread-half', side, -1),
      acrossBore(view, pilotAt(back), back),
      ...edges,
    ];
  const over = [...mirrored(side).reverse(), ...side].map(place => at(view, place));
  const [left, right] = [view.axisX - view.edgePx, view.axisX + view.edgePx];
  const [rootY, backY] = [yOf(view, root), yOf(view, back)];
  const [rightCut, leftCut] = [wave(right, rootY, backY), wave(left, backY, rootY)];
  return [
    ...filled('thread-half', [...over, ...rightCut, ...leftCut]),
    line('bw-visible', [left, rootY], ...over, [right, rootY]),
    line('bw-visible', [left, backY], [right, backY]),
    line('bw-thin', ...rightCut),
    line('bw-thin', ...leftCut),
    ...edges,
  ];
}

/** As a sleeve of metal round the screw, whose thread closes it. */
function drawInsert(view: View, { outerR, top, bottom }: Insert, innerR: number): Markup[] {
  return ([1, -1] as const).flatMap(side => {
    const corners: AxialPoint[] = [
      [side * innerR, top],
      [side * outerR, top],
      [side * outerR, bottom],
      [side * innerR, bottom],
    ];
    const points = corners.map(place => at(view, place));
    return [...filled('insert', points), line('bw-visible', ...points)];
  });
}

export function drawPlastic(view: View, { headHalf, board, threadHalf, screw }: Shape): Markup[] {
  const insert = threadHalf?.insert;
  return [
    ...(board === undefined ? [] : drawBoard(view, board)),
    ...(headHalf === undefined ? [] : drawHeadHalf(view, headHalf)),
    ...(threadHalf === undefined ? [] : drawThreadHalf(view, threadHalf)),
    ...(insert === undefined
      ? []
      : drawInsert(view, insert, Math.min(screw === undefined ? insert.outerR / 2 : screw.screw.majorMaxMm / 2, insert.outerR))),
  ];
}
