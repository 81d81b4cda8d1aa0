// Head half, board, thread half and insert in section: tint, hatching, visible edges, break lines.
import { type Corner, mirrored, onSheet, reversed } from './outline';
import { boardCut, type Cut, headHalfCut, insertOutline, threadHalfCut } from './plastic-outline';
import type { Board, Shape, ThreadHalf } from './shape';
import { el, line, type Markup, type Point, through } from './svg';
import { at, type AxialPoint, type View, wave, yOf } from './view';

type PartName = 'head-half' | 'thread-half' | 'board' | 'insert';

function filled(material: PartName, outline: readonly Point[]): Markup[] {
  const d = through(outline, true);
  return [el('path', { class: `bw-${material}`, d }), el('path', { fill: `url(#bw-hatch-${material})`, d })];
}

/** An area that ends in a break line beside the part: its visible edges run from the break, around, and back to it. */
function broken(view: View, material: PartName, outline: readonly Corner[], side: 1 | -1): Markup[] {
  const points = onSheet(view, side === 1 ? outline : mirrored(outline));
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

const acrossBore = (view: View, [r, z]: AxialPoint): Markup => line('bw-visible', at(view, [-r, z]), at(view, [r, z]));

const onBothSides = (view: View, material: PartName, { outline, edges }: Cut): Markup[] => [
  ...broken(view, material, outline, 1),
  ...broken(view, material, outline, -1),
  ...edges.map(end => acrossBore(view, end)),
];

function drawBoard(view: View, board: Board): Markup[] {
  const { top, bottom, holeR, clearR } = board;
  if (holeR !== undefined) return onBothSides(view, 'board', boardCut(board, holeR));
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

function drawThreadHalf(view: View, part: ThreadHalf): Markup[] {
  const cut = threadHalfCut(part);
  if (cut.isThrough) return onBothSides(view, 'thread-half', cut);
  const over = onSheet(view, [...reversed(mirrored(cut.outline)), ...cut.outline]);
  const [left, right] = [view.axisX - view.edgePx, view.axisX + view.edgePx];
  const [rootY, backY] = [yOf(view, part.root), yOf(view, part.back)];
  const [rightCut, leftCut] = [wave(right, rootY, backY), wave(left, backY, rootY)];
  return [
    ...filled('thread-half', [...over, ...rightCut, ...leftCut]),
    line('bw-visible', [left, rootY], ...over, [right, rootY]),
    line('bw-visible', [left, backY], [right, backY]),
    line('bw-thin', ...rightCut),
    line('bw-thin', ...leftCut),
    ...cut.edges.map(end => acrossBore(view, end)),
  ];
}

function drawInsert(view: View, outline: readonly Corner[]): Markup[] {
  return [outline, mirrored(outline)].flatMap(side => {
    const points = onSheet(view, side);
    return [...filled('insert', points), line('bw-visible', ...points)];
  });
}

export function drawPlastic(view: View, shape: Shape): Markup[] {
  const { headHalf, board, threadHalf } = shape;
  const insert = threadHalf?.insert;
  return [
    ...(board === undefined ? [] : drawBoard(view, board)),
    ...(headHalf === undefined ? [] : onBothSides(view, 'head-half', headHalfCut(headHalf))),
    ...(threadHalf === undefined ? [] : drawThreadHalf(view, threadHalf)),
    ...(insert === undefined ? [] : drawInsert(view, insertOutline(insert, shape))),
  ];
}
