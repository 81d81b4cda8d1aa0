// Studies as SVG text: the plane of two inputs with the state of each joint, and what moves an output.
import type { State } from '../core/check/check';
import {
  MARGIN_PX,
  NAME_SHARE,
  bar,
  chart,
  type ChartOptions,
  DEFAULT_WIDTH_PX,
  frameOf,
  MIN_WIDTH_PX,
  nameText,
  nameWidthPx,
} from './charts';
import { contour } from './contour';
import { type AxisPlace, isFree, limitsSaid, limitWords, type MapWords } from './map-words';
import { ENGLISH, type FigureSpeech, numberIn } from './speech';
import type { MapAxis, StateMap } from './state-map';
import { type Child, el, fitted, line, type Markup, type Point, text, textWidthPx, through } from './svg';

/** Colour and hatch say the same; what passes has none. */
const MAP_CSS =
  '.bw-map-pass{fill:var(--bw-map-pass,#dcefe0)}.bw-map-review{fill:var(--bw-map-review,#fbeab0)}' +
  '.bw-map-fail{fill:var(--bw-map-fail,#f0c5bf)}' +
  '.bw-map-unchecked{fill:var(--bw-sheet,#fff)}.bw-map-line{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:.9}' +
  '.bw-map-edge{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:2}';

const CLASS: Readonly<Record<State, string>> = {
  pass: 'bw-map-pass',
  review: 'bw-map-review',
  fail: 'bw-map-fail',
  'not checked': 'bw-map-unchecked',
};
const HATCH: Readonly<Record<Exclude<State, 'pass'>, { readonly size: number; readonly path: string }>> = {
  review: { size: 8, path: 'M-2 10L10 -2' },
  fail: { size: 6, path: 'M0 0L6 6M6 0L0 6' },
  'not checked': { size: 6, path: 'M3 2V4' },
};
const idOf = (state: State): string => `bw-map-${state.replace(' ', '-')}-hatch`;

const LEFT_PX = 64;
const TOP_PX = 62;
const BOTTOM_PX = 46;
const KEY_Y = 36;
const LINES = 3;

/** Ends of the cells: half way to the neighbours. */
function edgesOf(values: readonly number[]): number[] {
  const [first = 0, second = first + 1] = values;
  const [last = 0, before = last - 1] = [...values].reverse();
  const inner = values.slice(1).map((value, i) => (value + (values[i] as number)) / 2);
  return [first - (second - first) / 2, ...inner, last + (last - before) / 2];
}

function placeOf({ values }: MapAxis, from: number, to: number): AxisPlace {
  const edges = edgesOf(values);
  const [low, high] = [edges[0] as number, edges[edges.length - 1] as number];
  const at = (value: number): number => from + ((value - low) / (high - low)) * (to - from);
  return { at, edges: edges.map(at) };
}

/** A row of equal states is one area. */
function areas({ states }: StateMap, x: AxisPlace, y: AxisPlace): Markup[] {
  return states.flatMap((row, r) => {
    const [bottom, top] = [y.edges[r] as number, y.edges[r + 1] as number];
    const starts = row.flatMap((state, c) => (c === 0 || state !== row[c - 1] ? [c] : []));
    return starts.flatMap((start, i) => {
      const state = row[start] as State;
      const [left, right] = [x.edges[start] as number, x.edges[starts[i + 1] ?? row.length] as number];
      const area = { x: left, y: top, width: right - left, height: bottom - top };
      const tint = el('rect', { class: CLASS[state], ...area });
      return state === 'pass' ? [tint] : [tint, el('rect', { fill: `url(#${idOf(state)})`, ...area })];
    });
  });
}

/** Between the values of the grid. */
const between = (values: readonly number[], position: number): number => {
  const [i, share] = [Math.min(Math.floor(position), values.length - 2), position - Math.min(Math.floor(position), values.length - 2)];
  return (values[i] as number) * (1 - share) + (values[i + 1] as number) * share;
};

/** Two digits that count, and two places at least. */
const placesOf = (level: number): number => Math.max(2, 1 - Math.floor(Math.log10(level)));

/** The edge of what fails, and lines of equal margin inside it, each with its margin where that stands over nothing else. */
function lines({ x, y, margins }: StateMap, across: AxisPlace, up: AxisPlace, taken: MapWords[], speech: FigureSpeech): Child[] {
  const most = Math.max(0, ...margins.flatMap(row => row.map(margin => margin ?? 0)));
  const levels = most === 0 ? [0] : Array.from({ length: LINES }, (_, i) => (most * i) / LINES);
  return levels.map(level => {
    const place = ([column, row]: Point): Point => [across.at(between(x.values, column)), up.at(between(y.values, row))];
    const pieces = contour(margins, level).map(([from, to]) => [place(from), place(to)] as const);
    const words = level === 0 ? '' : numberIn(speech, level, placesOf(level));
    const halfPx = textWidthPx(words, 11) / 2;
    const later = pieces.slice(Math.floor(pieces.length / 2));
    const label = later
      .map(([[left, top]]): MapWords => ({ words, at: [left + 3 + halfPx, top - 3], halfPx }))
      .find(one => words !== '' && isFree(one, taken));
    if (label !== undefined) taken.push(label);
    return [
      el('path', { class: level === 0 ? 'bw-map-edge' : 'bw-map-line', d: pieces.map(piece => through(piece)).join('') }),
      label && text(words, label.at, { anchor: 'middle', className: 'bw-small bw-halo' }),
    ];
  });
}

/** Undefined where the joint is not on the map. */
function presentPlace({ x, y }: StateMap, across: AxisPlace, up: AxisPlace): Point | undefined {
  if (x.now === undefined || y.now === undefined) return undefined;
  const [left, right] = [across.edges[0] as number, across.edges[across.edges.length - 1] as number];
  const [bottom, top] = [up.edges[0] as number, up.edges[up.edges.length - 1] as number];
  const [cx, cy] = [across.at(x.now), up.at(y.now)];
  return cx < left || cx > right || cy > bottom || cy < top ? undefined : [cx, cy];
}

const present = ([cx, cy]: Point, now: string): Child => [
  el('circle', { class: 'bw-outline bw-map-now', cx, cy, r: 5 }),
  el('circle', { class: 'bw-solid', cx, cy, r: 2 }),
  text(now, [cx + 8, cy + 4], { className: 'bw-strong bw-halo' }),
];
function nowWords([cx, cy]: Point, now: string): MapWords {
  /** From the mark to the end of its word. */
  const widePx = 18 + textWidthPx(now, 12, 'bold');
  return { words: now, at: [cx + widePx / 2 - 5, cy + 4], halfPx: widePx / 2 };
}

const named = ({ name, unit }: MapAxis): string => (unit === '' ? name : `${name}, ${unit}`);
const ends = ({ values }: MapAxis, speech: FigureSpeech): readonly [string, string] => [
  numberIn(speech, values[0] ?? 0),
  numberIn(speech, values[values.length - 1] ?? 0),
];

function key(states: readonly State[]): Child[] {
  let at = MARGIN_PX;
  return states.map(state => {
    const box = { x: at, y: KEY_Y, width: 18, height: 12 };
    const entry = [
      el('rect', { class: `${CLASS[state]} bw-map-key`, ...box }),
      state === 'pass' ? undefined : el('rect', { fill: `url(#${idOf(state)})`, ...box }),
      text(state, [at + 23, KEY_Y + 10], { className: 'bw-small' }),
    ];
    at += 96;
    return entry;
  });
}

/** Which states there are, worst first. */
const SHOWN_FIRST: readonly State[] = ['fail', 'not checked', 'review', 'pass'];

export function stateMapSvg(given: StateMap, { widthPx: askedPx = DEFAULT_WIDTH_PX, speech = ENGLISH }: ChartOptions = {}): string {
  const { words: W } = speech;
  const map: StateMap = { ...given, limits: given.limits.map(row => row.map(speech.limit)) };
  const widthPx = Math.max(MIN_WIDTH_PX, askedPx);
  const [right, bottom] = [widthPx - MARGIN_PX, TOP_PX + Math.round(0.62 * (widthPx - LEFT_PX))];
  const [x, y] = [placeOf(map.x, LEFT_PX, right), placeOf(map.y, bottom, TOP_PX)];
  const found = SHOWN_FIRST.filter(state => map.states.some(row => row.includes(state)));
  const count = (state: State): number => map.states.flat().filter(one => one === state).length;
  const said = found.map(state => `${count(state)} ${W.states[state]}`).join(', ');
  const [lowX, highX] = ends(map.x, speech);
  const [lowY, highY] = ends(map.y, speech);
  const now = presentPlace(map, x, y);
  const taken = now === undefined ? [] : [nowWords(now, W.now)];
  const limits = limitsSaid(map);
  const title = W.mapTitle(map.x.name, map.y.name);
  const [across, upwards] = [W.across(named(map.x), lowX, highX), W.upwards(named(map.y), lowY, highY)];
  const description = `${across}, ${upwards}: ${said}.${limits === '' ? '' : ` ${W.inTheWay(limits)}`}`;
  return chart(title, description, widthPx, bottom + BOTTOM_PX, [
    el('style', {}, { markup: MAP_CSS }),
    el(
      'defs',
      {},
      Object.entries(HATCH).map(([state, { size, path }]) =>
        el(
          'pattern',
          { id: idOf(state as State), width: size, height: size, patternUnits: 'userSpaceOnUse' },
          el('path', { class: 'bw-hatch', d: path }),
        ),
      ),
    ),
    key(found),
    areas(map, x, y),
    lines(map, x, y, taken, speech),
    line('bw-thin', [LEFT_PX, TOP_PX], [right, TOP_PX], [right, bottom], [LEFT_PX, bottom], [LEFT_PX, TOP_PX]),
    limitWords(map, x, y, taken).map(({ words, at }) => text(words, at, { anchor: 'middle', className: 'bw-small bw-halo bw-map-limit' })),
    now && present(now, W.now),
    text(lowX, [x.at(map.x.values[0] ?? 0), bottom + 16], { anchor: 'middle', className: 'bw-small' }),
    text(highX, [right, bottom + 16], { anchor: 'end', className: 'bw-small' }),
    text(fitted(named(map.x), right - LEFT_PX, 12), [(LEFT_PX + right) / 2, bottom + 34], { anchor: 'middle' }),
    text(lowY, [LEFT_PX - 6, bottom - 2], { anchor: 'end', className: 'bw-small' }),
    text(highY, [LEFT_PX - 6, TOP_PX + 10], { anchor: 'end', className: 'bw-small' }),
    el(
      'text',
      { x: 14, y: (TOP_PX + bottom) / 2, 'text-anchor': 'middle', transform: `rotate(-90 14 ${(TOP_PX + bottom) / 2})` },
      fitted(named(map.y), bottom - TOP_PX, 12),
    ),
  ]);
}

/** What the tolerance of one input makes of an output. */
export interface Contribution {
  readonly name: string;
  /** ±, in the unit of the output. */
  readonly change: number;
  readonly share: number;
}

const ROW_PX = 24;
const BARS_TOP_PX = 44;
const BEHIND_PX = 130;

/** Bars as long as the changes, in the order given. */
export function sensitivityChartSvg(
  output: string,
  unit: string,
  rows: readonly Contribution[],
  { widthPx: askedPx = DEFAULT_WIDTH_PX, speech = ENGLISH }: ChartOptions = {},
): string {
  const { words: W } = speech;
  const widthPx = Math.max(MIN_WIDTH_PX, askedPx);
  const namePx = Math.min(NAME_SHARE * widthPx, nameWidthPx(rows.map(({ name }) => name))) + 10;
  const frame = frameOf(widthPx, namePx, BEHIND_PX, Math.max(Number.MIN_VALUE, ...rows.map(({ change }) => change)));
  const worth = ({ change, share }: Contribution): string =>
    `±${numberIn(speech, change, 3)}${unit === '' ? '' : ` ${unit}`}, ${numberIn(speech, 100 * share, 1)} %`;
  const said = rows.map(row => `${row.name} ${worth(row)}`).join('; ');
  return chart(
    W.moves(output),
    rows.length === 0 ? W.noMove : `${said}.`,
    widthPx,
    BARS_TOP_PX + rows.length * ROW_PX + MARGIN_PX,
    rows.map((row, i) => {
      const y = BARS_TOP_PX + i * ROW_PX;
      return [
        nameText(row.name, frame, y + 10),
        bar('bw-nominal-bar', frame, y, row.change),
        text(worth(row), [frame.barX + row.change * frame.scale + 5, y + 10], { className: 'bw-small bw-halo' }),
      ];
    }),
  );
}
