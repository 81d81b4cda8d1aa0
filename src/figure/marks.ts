// A state as a shape: square fail, triangle review, circle pass, broken square not checked. The word always stands beside it.
import type { State } from '../core/check/check';
import { el, type Markup, type Point, px, text } from './svg';

/** Half the size of a mark. */
export const MARK_PX = 9;

const square = (className: string, [x, y]: Point): Markup =>
  el('rect', { class: className, x: x - MARK_PX, y: y - MARK_PX, width: 2 * MARK_PX, height: 2 * MARK_PX });

const SHAPES: Readonly<Record<State, (centre: Point) => Markup>> = {
  fail: centre => square('bw-fail', centre),
  review: ([x, y]) =>
    el('path', {
      class: 'bw-review',
      d: `M${px(x)} ${px(y - MARK_PX - 3)}L${px(x + MARK_PX + 3)} ${px(y + MARK_PX)}H${px(x - MARK_PX - 3)}Z`,
    }),
  pass: ([x, y]) => el('circle', { class: 'bw-pass', cx: x, cy: y, r: MARK_PX - 2 }),
  'not checked': centre => square('bw-unchecked', centre),
};

/** The shape of the state, with a number in it where it refers to a list. */
export function mark(state: State, [x, y]: Point, number?: number): Markup[] {
  const content =
    number === undefined
      ? []
      : [
          text(String(number), [x, y + (state === 'review' ? 6 : 4)], {
            anchor: 'middle',
            className: state === 'fail' ? 'bw-number bw-on-fail' : 'bw-number',
          }),
        ];
  return [SHAPES[state]([x, y]), ...content];
}
