// The dimensions as drawn: leaders to the labels on the left, dimension lines with extension lines on the right, labels in two columns.
import { placed } from './label-placement';
import { type Dimension, EDGE, type SpanLook } from './dimensions';
import { type Child, el, line, type Markup, type Point, px, textWidthPx } from './svg';
import { type AxialPoint, type View, xOf, yOf } from './view';

export interface Label {
  readonly dimension: Dimension;
  readonly words: string;
  readonly number: string;
  readonly isBalloon: boolean;
  /** Column of the dimension line, 0 nearest to the part. */
  readonly column: number;
}

export interface Sheet {
  readonly view: View;
  readonly top: number;
  readonly bottom: number;
  /** Where left labels end and right ones start. */
  readonly leftX: number;
  readonly rightX: number;
}

/** One side of the part. */
interface LabelColumn {
  readonly markup: readonly Child[];
  /** Heights at which lines run away from the part. */
  readonly runs: readonly number[];
}

export const LABEL_PITCH = 16;
export const COLUMN_PX = 13;
/** Room for the slanted part of the leaders. */
export const FAN_PX = 24;
/** A leader meets the end of a face a little inside it, clear of the line that ends there, and may slide on somewhat. */
const CLEAR_PX = 3;
const MEET_PX = { arrow: 5, dot: 12 } as const;
const SLIDE_PX = 18;
const ARROW_PX = 8;

/** Dimension lines packed from the shortest outwards, so that long ones stand outside short ones. */
export const columnsOf = (dimensions: readonly Dimension[]): ReadonlyMap<Dimension, number> =>
  new Map([...columnsBeside(dimensions, 'thread'), ...columnsBeside(dimensions, 'part')]);

function columnsBeside(dimensions: readonly Dimension[], beside: 'thread' | 'part'): Map<Dimension, number> {
  const spans = dimensions.flatMap(dimension =>
    dimension.place?.side === 'right' && dimension.place.beside === beside
      ? [
          {
            dimension,
            low: Math.min(dimension.place.from[1], dimension.place.to[1]),
            high: Math.max(dimension.place.from[1], dimension.place.to[1]),
          },
        ]
      : [],
  );
  const taken: { low: number; high: number }[][] = [];
  const columns = new Map<Dimension, number>();
  for (const { dimension, low, high } of spans.sort((a, b) => a.high - a.low - (b.high - b.low))) {
    const free = taken.findIndex(column => column.every(other => high <= other.low + 1e-6 || low >= other.high - 1e-6));
    const column = free < 0 ? taken.push([]) - 1 : free;
    taken[column]?.push({ low, high });
    columns.set(dimension, column);
  }
  return columns;
}

function arrow([x, y]: Point, [dx, dy]: readonly [number, number]): Markup {
  const [w, l] = [2.1, ARROW_PX];
  return el('path', {
    class: 'bw-solid',
    d: `M${px(x)} ${px(y)}L${px(x + l * dx - w * dy)} ${px(y + l * dy + w * dx)}L${px(x + l * dx + w * dy)} ${px(y + l * dy - w * dx)}Z`,
  });
}

const dot = ([x, y]: Point): Markup => el('circle', { class: 'bw-solid', cx: x, cy: y, r: 1.9 });

/** A stroke across the end of a dimension line that has no room for arrow heads. */
const stroke = ([x, y]: Point): Markup => line('bw-thin', [x - 3.5, y + 3.5], [x + 3.5, y - 3.5]);

const BALLOON_PX = 7.8;

export const labelWidthPx = ({ words, number, isBalloon }: Label): number =>
  isBalloon ? 2 * BALLOON_PX : textWidthPx(`${words} `, 11) + textWidthPx(number, 12, 'bold');

function balloon(number: string, x: number, y: number): Markup {
  return el(
    'g',
    {},
    el('circle', { class: 'bw-outline', cx: x, cy: y, r: BALLOON_PX }),
    el('text', { x, y: y + 4, 'text-anchor': 'middle', class: 'bw-label bw-strong' }, number),
  );
}

const labelText = ({ words, number, isBalloon }: Label, [x, y]: Point, anchor: 'start' | 'end'): Markup => {
  if (isBalloon) return balloon(number, anchor === 'end' ? x - BALLOON_PX : x + BALLOON_PX, y);
  const parts = [
    el('tspan', { class: 'bw-small bw-quiet' }, words),
    words === '' ? undefined : ' ',
    el('tspan', { class: 'bw-strong' }, number),
  ];
  return el('text', { x, y: y + 4, 'text-anchor': anchor === 'end' ? 'end' : undefined, class: 'bw-label' }, parts);
};

/** Where the leaders to the left meet the part, and where their labels stand. */
export function leftSpots({ view, top, bottom }: Sheet, labels: readonly Label[]) {
  const faces = labels
    .flatMap(label => (label.dimension.place?.side === 'left' ? [{ label, place: label.dimension.place }] : []))
    .map(({ label, place }) => {
      const [fromY, toY] = [yOf(view, place.from[1]), yOf(view, place.to[1])];
      const [height, way] = [Math.abs(toY - fromY), Math.sign(toY - fromY)];
      const along = (px: number): number => fromY + way * Math.min(px, height);
      const [near, best, far] =
        place.meets === 'middle'
          ? [fromY, (fromY + toY) / 2, toY]
          : [along(Math.min(CLEAR_PX, height / 2)), along(Math.min(MEET_PX[place.ends], height / 2)), along(SLIDE_PX)];
      const radiusAt = (y: number): number =>
        height === 0 ? place.from[0] : place.from[0] + ((place.to[0] - place.from[0]) * Math.abs(y - fromY)) / height;
      return { label, place, radiusAt, best, low: Math.min(near, far), high: Math.max(near, far), slides: false };
    })
    .sort((a, b) => a.best - b.best);
  const elbow = view.axisX - view.edgePx - 6;
  return placed(faces, LABEL_PITCH, top, bottom).map(spot => ({
    ...spot,
    tip: [xOf(view, -spot.radiusAt(spot.anchorY)), spot.anchorY] as Point,
    elbow: [elbow, spot.anchorY] as Point,
  }));
}

export function leftLabels(sheet: Sheet, labels: readonly Label[]): LabelColumn {
  const spots = leftSpots(sheet, labels);
  const markup = spots.flatMap(({ label, place, tip, elbow, labelY }) => [
    line('bw-thin bw-leader', tip, elbow, [sheet.leftX + 4, labelY]),
    place.ends === 'dot' ? dot(tip) : arrow(tip, [-1, 0]),
    labelText(label, [sheet.leftX, labelY], 'end'),
  ]);
  return { markup, runs: spots.map(({ anchorY }) => anchorY) };
}

const THICK: Readonly<Record<SpanLook, string>> = { worst: 'bw-worst', nominal: 'bw-nominal', asked: 'bw-asked', plain: 'bw-thin' };

const isShort = (fromY: number, toY: number): boolean => Math.abs(toY - fromY) < 2.4 * ARROW_PX;

function dimensionLine(x: number, fromY: number, toY: number, look: SpanLook): Child[] {
  const [low, high] = [Math.min(fromY, toY), Math.max(fromY, toY)];
  if (high - low < 1) return [];
  const shaft = line(THICK[look], [x, low], [x, high]);
  // hollow against solid: told apart without colour
  const core = look === 'nominal' ? line('bw-nominal-core', [x, low], [x, high]) : undefined;
  if (look !== 'plain') return [shaft, core, line('bw-thin', [x - 4, low], [x + 4, low]), line('bw-thin', [x - 4, high], [x + 4, high])];
  return [shaft, ...(isShort(low, high) ? [stroke([x, low]), stroke([x, high])] : [arrow([x, low], [0, 1]), arrow([x, high], [0, -1])])];
}

/** Dimension lines on the right with the starts of their extension lines, and where their labels stand. */
export function rightSpots({ view, top, bottom, rightX }: Sheet, labels: readonly Label[], threadX: number) {
  const partX = view.axisX + view.edgePx + COLUMN_PX;
  const startOf = ([r]: AxialPoint): number => (r === EDGE ? view.axisX + view.edgePx + 3 : xOf(view, r) + 2);
  const spans = labels
    .flatMap(label => (label.dimension.place?.side === 'right' ? [{ label, place: label.dimension.place }] : []))
    .map(({ label, place }) => {
      const [fromY, toY] = [yOf(view, place.from[1]), yOf(view, place.to[1])];
      const inset = Math.min(4, Math.abs(toY - fromY) / 2);
      return {
        label,
        place,
        fromY,
        toY,
        x: (place.beside === 'thread' ? threadX : partX) + label.column * COLUMN_PX,
        starts: [
          [startOf(place.from), fromY],
          [startOf(place.to), toY],
        ] as readonly Point[],
        best: (fromY + toY) / 2,
        low: Math.min(fromY, toY) + inset,
        high: Math.max(fromY, toY) - inset,
        slides: true,
      };
    })
    .sort((a, b) => a.best - b.best);
  const elbow = rightX - FAN_PX;
  return placed(spans, LABEL_PITCH, top, bottom).map(spot => ({
    ...spot,
    leader: [
      [spot.x, spot.anchorY],
      [Math.max(elbow, spot.x), spot.anchorY],
      [rightX - 4, spot.labelY],
    ] as readonly Point[],
  }));
}

export function rightLabels(sheet: Sheet, labels: readonly Label[], threadX: number): LabelColumn {
  const spots = rightSpots(sheet, labels, threadX);
  const extensions = spots.flatMap(({ starts, x }) => starts.map(start => line('bw-extension', start, [x + 4, start[1]])));
  const lines = spots.flatMap(({ place, fromY, toY, x }) => dimensionLine(x, fromY, toY, place.look));
  const leaders = spots.flatMap(({ label, x, fromY, toY, labelY, anchorY, leader }) => [
    line('bw-extension bw-leader', ...leader),
    isShort(fromY, toY) ? undefined : dot([x, anchorY]),
    labelText(label, [sheet.rightX, labelY], 'start'),
  ]);
  return {
    markup: [...extensions, ...lines, ...leaders],
    runs: spots.flatMap(({ place, fromY, toY }) => (place.beside === 'part' ? [fromY, toY] : [])),
  };
}
