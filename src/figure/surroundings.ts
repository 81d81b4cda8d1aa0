// What stands around the part: heading, pull directions, scale bar, centre line.
import type { State } from '../core/check/check';
import { mark } from './marks';
import type { Shape } from './shape';
import { el, fitted, line, type Markup, type Point, px, text, textWidthPx } from './svg';
import { type View, yOf } from './view';

/** What is drawn left, and the state with its shape right. */
export function heading(title: string, state: State | undefined, marginPx: number, widthPx: number): Markup[] {
  if (state === undefined) return [text(fitted(title, widthPx - 2 * marginPx, 13), [marginPx, 22], { className: 'bw-strong' })];
  const wordX = widthPx - marginPx - textWidthPx(state, 13);
  return [
    text(fitted(title, wordX - 40 - marginPx, 13), [marginPx, 22], { className: 'bw-strong' }),
    ...mark(state, [wordX - 16, 18]),
    text(state, [wordX, 22], { className: 'bw-strong' }),
  ];
}

export const centreLine = ({ axisX }: View, top: number, bottom: number): Markup => line('bw-centre', [axisX, top], [axisX, bottom]);

const PULL_PX = 24;

/** An outlined arrow from its foot: the way the mould half leaves the part. */
function pull([x, y]: Point, way: 1 | -1): Markup {
  const tip = y + way * PULL_PX;
  const neck = tip - way * 9;
  const d = `M${px(x)} ${px(tip)}L${px(x + 7)} ${px(neck)}H${px(x + 2.5)}V${px(y)}H${px(x - 2.5)}V${px(neck)}H${px(x - 7)}Z`;
  return el('path', { class: 'bw-outline', d });
}

/** Middle of the widest stretch between the heights that no line crosses; undefined where an arrow does not fit. */
function freeMiddle(fromY: number, toY: number, runs: readonly number[]): number | undefined {
  const stops = [fromY, ...runs.filter(y => y > fromY && y < toY).sort((a, b) => a - b), toY];
  const gaps = stops.slice(1).map((end, i) => ({ middle: (end + (stops[i] ?? end)) / 2, height: end - (stops[i] ?? end) }));
  const widest = gaps.reduce((best, gap) => (gap.height > best.height ? gap : best), { middle: 0, height: 0 });
  return widest.height >= PULL_PX + 6 ? widest.middle : undefined;
}

/** Head half: its outside leaves upwards, its inside downwards. Thread half: the boss is drawn out towards the board. */
export function pulls(view: View, { headHalf, threadHalf, board }: Shape, left: readonly number[], right: readonly number[]): Markup[] {
  const [leftX, rightX] = [view.axisX - view.edgePx + 12, view.axisX + view.edgePx - 12];
  const between = (from: number, to: number, way: 1 | -1): Markup[] => {
    const [fromY, toY] = [yOf(view, from), yOf(view, to)];
    const onLeft = freeMiddle(fromY, toY, left);
    const y = onLeft ?? freeMiddle(fromY, toY, right);
    return y === undefined ? [] : [pull([onLeft === undefined ? rightX : leftX, y - (way * PULL_PX) / 2], way)];
  };
  return [
    ...(headHalf === undefined ? [] : [pull([rightX, yOf(view, headHalf.outer) - 5], -1), ...between(headHalf.inner, headHalf.plane, 1)]),
    ...(threadHalf === undefined ? [] : between(board?.bottom ?? headHalf?.plane ?? 0, threadHalf.root, -1)),
  ];
}

const BARS_MM = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** A length of the drawing, and the unit of all numbers on it. */
export function scaleBar(view: View, [x, y]: Point, lengthText: (mm: number) => string, note: string): Markup[] {
  const barMm = BARS_MM.find(mm => mm * view.scale >= 50) ?? 1000;
  const end = x + barMm * view.scale;
  const noteX = end + 24 + textWidthPx(lengthText(barMm), 12);
  return [
    line('bw-visible', [x, y], [end, y]),
    line('bw-visible', [x, y - 4], [x, y + 4]),
    line('bw-visible', [end, y - 4], [end, y + 4]),
    text(lengthText(barMm), [end + 8, y + 4]),
    pull([noteX + 6, y + PULL_PX / 2], -1),
    text(note, [noteX + 20, y + 4], { className: 'bw-quiet' }),
  ];
}
