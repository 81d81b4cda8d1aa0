// The joint in section and seen along its axis, as a drawing for design programs: the outlines of the figure in mm, 1:1.
import { stateOf, verdict } from '../joint/verdict';
import type { Variant } from '../joint/variant';
import { arranged, DEFAULT_WIDTH_PX, numberText } from './arranged';
import { dimensionsOf } from './dimensions';
import { type Align, dxf, type Entity, type LayerLook } from './dxf';
import { dxfDimensions } from './dxf-dimensions';
import { JointValues } from './joint-values';
import { columnsOf, type Label } from './labels';
import { type Corner, corner, mirrored, reversed, straight, turn } from './outline';
import { boardCut, type Cut, headHalfCut, insertOutline, threadHalfCut } from './plastic-outline';
import { deepestShift, deepestTip, headOutline, rootLine, shankOutline } from './screw-outline';
import { titleOf } from './section';
import { ENGLISH } from './speech';
import { extentOf, type Shape } from './shape';
import { shapeOf } from './shape-of-joint';
import { type Point, shown } from './svg';
import type { AxialPoint } from './view';

const LAYERS = {
  HEAD_HALF: { colour: 5, lines: 'CONTINUOUS' },
  BOARD: { colour: 3, lines: 'CONTINUOUS' },
  THREAD_HALF: { colour: 30, lines: 'CONTINUOUS' },
  INSERT: { colour: 6, lines: 'CONTINUOUS' },
  SCREW: { colour: 7, lines: 'CONTINUOUS' },
  THREAD_ROOT: { colour: 8, lines: 'CONTINUOUS' },
  SCREW_DEEPEST: { colour: 8, lines: 'DASHED' },
  EDGES: { colour: 7, lines: 'CONTINUOUS' },
  BREAK: { colour: 8, lines: 'DASHED' },
  CENTRE: { colour: 8, lines: 'CENTER' },
  RECESS: { colour: 5, lines: 'CONTINUOUS' },
  POST: { colour: 5, lines: 'CONTINUOUS' },
  HOLE: { colour: 5, lines: 'CONTINUOUS' },
  SLEEVE: { colour: 5, lines: 'CONTINUOUS' },
  BOARD_HOLE: { colour: 3, lines: 'CONTINUOUS' },
  BOSS: { colour: 30, lines: 'CONTINUOUS' },
  RELIEF: { colour: 30, lines: 'CONTINUOUS' },
  PILOT: { colour: 30, lines: 'CONTINUOUS' },
  DIMENSIONS: { colour: 2, lines: 'CONTINUOUS' },
  NOTES: { colour: 7, lines: 'CONTINUOUS' },
} as const satisfies Readonly<Record<string, LayerLook>>;

type Layer = keyof typeof LAYERS;
type DrawnEntity = Entity<Layer>;

const DEG = 180 / Math.PI;
const SAME_MM = 1e-9;

/** Height of the letters of a note, px of the figure. */
const NOTE_PX = 9;
/** A wide letter of the usual line fonts, a share of the height. */
const LETTER = 1;

const line = (layer: Layer, from: Point, to: Point): DrawnEntity => ({ is: 'LINE', layer, from, to });
const text = (at: Point, heightMm: number, content: string, align: Align = 'left'): DrawnEntity => ({
  is: 'TEXT',
  layer: 'NOTES',
  at,
  heightMm,
  content,
  align,
});

/** The datum is the boss face, on the axis; up is out of the boss. */
const up = ([r, z]: AxialPoint): Point => [r, -z];

function stretch(layer: Layer, from: AxialPoint, { place, about }: Corner): DrawnEntity[] {
  if (Math.hypot(place[0] - from[0], place[1] - from[1]) < SAME_MM) return [];
  if (about === undefined) return [line(layer, up(from), up(place))];
  const [start, end, centre] = [up(from), up(place), up(about)];
  const angle = ([x, y]: Point): number => (Math.atan2(y - centre[1], x - centre[0]) * DEG + 360) % 360;
  const [first, last] = turn(start, end, centre) > 0 ? [start, end] : [end, start];
  const radiusMm = Math.hypot(start[0] - centre[0], start[1] - centre[1]);
  return [{ is: 'ARC', layer, centre, radiusMm, fromDeg: angle(first), toDeg: angle(last) }];
}

const run = (layer: Layer, outline: readonly Corner[]): DrawnEntity[] =>
  outline.slice(1).flatMap((next, i) => stretch(layer, (outline[i] as Corner).place, next));
const closed = (layer: Layer, outline: readonly Corner[]): DrawnEntity[] =>
  run(layer, [...outline, ...outline.slice(0, 1).map(({ place }) => ({ place }))]);

/** Cut off beside the part on both sides, and closed there by a break line. */
function onBothSides(layer: Layer, { outline, edges }: Cut, edgeMm: number): DrawnEntity[] {
  const [topZ, bottomZ] = [outline[0], outline[outline.length - 1]].map(end => end?.place[1] ?? 0) as [number, number];
  const whole = [corner(edgeMm, topZ), ...outline, corner(edgeMm, bottomZ)];
  const cut = straight([edgeMm, bottomZ], [edgeMm, topZ]);
  return [
    ...[whole, mirrored(whole)].flatMap(side => run(layer, side)),
    ...[cut, mirrored(cut)].flatMap(side => run('BREAK', side)),
    ...acrossBore(edges),
  ];
}

const acrossBore = (edges: readonly AxialPoint[]): DrawnEntity[] => edges.map(([r, z]) => line('EDGES', up([-r, z]), up([r, z])));

function threadHalf(part: NonNullable<Shape['threadHalf']>, edgeMm: number): DrawnEntity[] {
  const cut = threadHalfCut(part);
  if (cut.isThrough) return onBothSides('THREAD_HALF', cut, edgeMm);
  const { root, back } = part;
  return [
    ...run('THREAD_HALF', [corner(-edgeMm, root), ...reversed(mirrored(cut.outline)), ...cut.outline, corner(edgeMm, root)]),
    ...run('BREAK', straight([edgeMm, root], [edgeMm, back])),
    ...run('THREAD_HALF', straight([edgeMm, back], [-edgeMm, back])),
    ...run('BREAK', straight([-edgeMm, back], [-edgeMm, root])),
    ...acrossBore(cut.edges),
  ];
}

/** A board whose hole is not known is broken off half way to the part. */
function board(part: NonNullable<Shape['board']>, edgeMm: number): DrawnEntity[] {
  const { top, bottom, holeR, clearR } = part;
  if (holeR !== undefined) return onBothSides('BOARD', boardCut(part, holeR), edgeMm);
  const inner = (clearR + edgeMm) / 2;
  return [1, -1].flatMap(side => [
    ...[top, bottom].flatMap(z => run('BOARD', straight([side * inner, z], [side * edgeMm, z]))),
    ...[inner, edgeMm].flatMap(r => run('BREAK', straight([side * r, top], [side * r, bottom]))),
  ]);
}

function inSection(shape: Shape, edgeMm: number): DrawnEntity[] {
  const { headHalf, board: between, threadHalf: boss, screw } = shape;
  const insert = boss?.insert && insertOutline(boss.insert, shape);
  return [
    ...(headHalf === undefined ? [] : onBothSides('HEAD_HALF', headHalfCut(headHalf), edgeMm)),
    ...(between === undefined ? [] : board(between, edgeMm)),
    ...(boss === undefined ? [] : threadHalf(boss, edgeMm)),
    ...(insert === undefined ? [] : [insert, mirrored(insert)].flatMap(side => closed('INSERT', side))),
    ...(screw === undefined
      ? []
      : [
          ...closed('SCREW', shankOutline(screw)),
          ...closed('SCREW', headOutline(screw)),
          ...[rootLine(screw), mirrored(rootLine(screw))].flatMap(side => run('THREAD_ROOT', side)),
          ...(deepestShift(screw) > SAME_MM ? run('SCREW_DEEPEST', straight(...deepestTip(screw))) : []),
        ]),
  ];
}

type Circles = readonly (readonly [Layer, number | undefined])[];

/** What is round, seen along the axis: of the head half and the board from outside, of the thread half from the board. */
const viewsOf = ({ headHalf: h, board: b, threadHalf: t }: Shape): readonly (readonly [title: string, circles: Circles])[] => [
  [
    'head half and board, from outside',
    [
      ['RECESS', h?.mouthR],
      ['RECESS', h?.floorR],
      ['HOLE', h?.holeR],
      ['POST', h?.postR],
      ['SLEEVE', h?.sleeveR],
      ['BOARD_HOLE', b?.holeR],
    ],
  ],
  [
    'thread half, from the board',
    [
      ['BOSS', t?.odR],
      ['BOSS', t?.rootR],
      ['RELIEF', t !== undefined && t.relief > 0 ? t.reliefR : undefined],
      ['PILOT', t?.pilotAt(0)],
      ['PILOT', t?.pilotAt(Math.min(t.holeBottom, t.back))],
      ['INSERT', t?.insert?.outerR],
    ],
  ],
];

function alongAxis(shape: Shape, left: number, y: number, heightMm: number): DrawnEntity[] {
  const { radius } = extentOf(shape);
  const cross = radius + heightMm;
  const halfMm = Math.max(cross, ...viewsOf(shape).map(([title]) => (title.length * LETTER * heightMm) / 2)) + heightMm;
  return viewsOf(shape).flatMap(([title, circles], i) => {
    const x = left + (1 + 2 * i) * halfMm;
    const round = circles.flatMap(([layer, radiusMm]): DrawnEntity[] =>
      radiusMm === undefined || radiusMm <= 0 ? [] : [{ is: 'CIRCLE', layer, centre: [x, y], radiusMm }],
    );
    if (round.length === 0) return [];
    return [
      ...round,
      line('CENTRE', [x - cross, y], [x + cross, y]),
      line('CENTRE', [x, y - cross], [x, y + cross]),
      text([x, y - cross - 2 * heightMm], heightMm, title, 'centre'),
    ];
  });
}

const UNITS = 'All lengths in millimetres, drawn 1:1. Origin: boss face on the axis of the screw.';

/** The dimensions in words; without a part there is nothing to dimension. */
function dimensioned(read: JointValues, shape: Shape): ReturnType<typeof arranged> & { readonly labels: readonly Label[] } {
  const dMm = read.get('screw')?.nominalMm;
  const dimensions = dimensionsOf(read, shape);
  const columns = columnsOf(dimensions);
  const labels = dimensions.map((dimension): Label => ({
    dimension,
    words: dimension.words,
    number: numberText(dimension, dMm, shown),
    isBalloon: false,
    column: columns.get(dimension) ?? 0,
  }));
  return { ...arranged(shape, labels, DEFAULT_WIDTH_PX), labels };
}

function drawn(
  read: JointValues,
  shape: Shape,
): { readonly entities: readonly DrawnEntity[]; readonly left: number; readonly below: number; readonly heightMm: number } {
  const sheet = dimensioned(read, shape);
  const { view, labels } = sheet;
  const { top, bottom } = extentOf(shape);
  const [edgeMm, heightMm] = [view.edgePx / view.scale, NOTE_PX / view.scale];
  const right = (sheet.widthPx - view.axisX) / view.scale;
  return {
    entities: [
      ...inSection(shape, edgeMm),
      line('CENTRE', [0, -top + heightMm], [0, -bottom - heightMm]),
      ...alongAxis(shape, right, -(top + bottom) / 2, heightMm),
      ...dxfDimensions(sheet, labels),
    ],
    left: (sheet.leftX - view.axisX) / view.scale,
    below: (view.faceY - sheet.bottom) / view.scale,
    heightMm,
  };
}

/**
 * The joint in section and along its axis as DXF R12: outlines in mm on layers, with its dimensions.
 *
 * @param variant the joint
 */
export function sectionDxf(variant: Variant): string {
  const read = new JointValues(variant);
  const shape = shapeOf(read);
  const isEmpty = Object.keys(shape).length === 0;
  const { entities, left, below, heightMm } = isEmpty ? { entities: [], left: 0, below: 0, heightMm: 1 } : drawn(read, shape);
  const reason = verdict(variant, 'reason');
  const notes = [
    titleOf(shape.screw),
    UNITS,
    'Sizes as worked out, nominal; head and screw at their largest; walls and board cut off at the break lines.',
    `State of the joint: ${stateOf(variant)}${reason === '–' ? '' : ` - ${String(reason)}`}`,
    ...(shape.board?.note === undefined ? [] : [ENGLISH.words.boardHole[shape.board.note]]),
    ...[...read.missing].map(([why, names]) => `no ${names.join(', ')}: ${why}`),
  ];
  const lines = notes.map((note, i) => text([left, below - (3 + 1.8 * i) * heightMm], heightMm, note));
  return dxf(LAYERS, [...entities, ...lines], UNITS);
}
