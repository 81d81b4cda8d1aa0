// Small drawings of what no section through a joint shows: a board that bends, a rim between its screws, a cord in its groove, a ring.
import type { LegendEntry } from '../figure/section';
import { style } from '../figure/style';
import type { HelpWords } from './words/english';
import { type Child, el, line, type Markup, type Point, text, through } from '../figure/svg';

export interface Figure {
  /** Which joint it is, or what is seen. */
  readonly caption: (words: HelpWords['figures']) => string;
  /** In section, with the names of the joint, in the language of the page; a sketch has English names. */
  readonly isJoint: boolean;
  readonly svg: string;
  readonly legend: readonly (LegendEntry & { readonly isOwn: boolean })[];
}

export interface Sketch {
  readonly svg: string;
  /** What its letters are, from A: arguments by name, or the result. */
  readonly letters: readonly string[];
}

export const RESULT = 'result';
const WIDTH_PX = 330;

const drawn = (description: string, heightPx: number, ...content: readonly Child[]): string =>
  el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH_PX} ${heightPx}`,
      width: WIDTH_PX,
      height: heightPx,
      role: 'img',
      class: 'bw-figure',
    },
    el('title', {}, description),
    style(),
    el('rect', { class: 'bw-sheet', width: WIDTH_PX, height: heightPx }),
    content,
  ).markup;

const area = (className: string, ...points: readonly Point[]): Markup[] => [
  el('path', { class: className, d: through(points, true) }),
  el('path', { class: 'bw-visible', d: through(points, true) }),
];
/** A head at the end of a line that comes from there. */
function head([fromX, fromY]: Point, [x, y]: Point): Markup {
  const length = Math.hypot(x - fromX, y - fromY);
  const [ux, uy] = [(x - fromX) / length, (y - fromY) / length];
  const back = (side: number): Point => [x - 7 * ux - 2.5 * side * uy, y - 7 * uy + 2.5 * side * ux];
  return el('path', { class: 'bw-solid', d: through([[x, y], back(1), back(-1)], true) });
}
/** From outside where there is little room between. */
const dimension = (letter: string, from: Point, to: Point, at: Point, isTight = false): Markup[] => {
  const beyond = ([ax, ay]: Point, [bx, by]: Point): Point => [ax + 16 * Math.sign(ax - bx), ay + 16 * Math.sign(ay - by)];
  const [start, end] = isTight ? [beyond(from, to), beyond(to, from)] : [to, from];
  return [
    line('bw-thin', isTight ? start : from, isTight ? end : to),
    head(start, from),
    head(end, to),
    text(letter, at, { anchor: 'middle', className: 'bw-strong bw-halo' }),
  ];
};

const rim = (letters: readonly string[]): Sketch => {
  const [left, right, face, bulge] = [70, 260, 96, 16];
  const opened = (x: number): number => face - (bulge * (1 - Math.cos((2 * Math.PI * (x - left)) / (right - left)))) / 2;
  const along = Array.from({ length: 59 }, (_, i) => 20 + 5 * i);
  const screw = (x: number): Child[] => [
    ...area('bw-screw', [x - 14, face - 40], [x + 14, face - 40], [x + 14, face - 28], [x - 14, face - 28]),
    line('bw-centre', [x, face - 50], [x, face + 52]),
  ];
  return {
    letters,
    svg: drawn(
      'A rim that a seal presses open between two screws',
      190,
      area('bw-thread-half', [20, face + 6], [310, face + 6], [310, face + 34], [20, face + 34]),
      area('bw-head-half', ...along.map((x): Point => [x, opened(x) - 28]), ...[...along].reverse().map((x): Point => [x, opened(x)])),
      [85, 110, 135, 195, 220, 245].map(x => [line('bw-thin', [x, face + 6], [x, opened(x)]), head([x, face + 6], [x, opened(x)])]),
      line('bw-asked', [left, face], [right, face]),
      screw(left),
      screw(right),
      dimension('A', [left, face + 60], [right, face + 60], [(left + right) / 2, face + 78]),
      text('B', [122, face + 26], { anchor: 'middle', className: 'bw-strong bw-halo' }),
      dimension('C', [165, face - bulge], [165, face], [178, face + 26], true),
    ),
  };
};

const groove = (third: 'gap' | 'width', letters: readonly string[]): Sketch => {
  const [left, right, face, floor, gap] = [112, 212, 92, 142, 9];
  const [radius, middle] = [34, (left + right) / 2];
  const lid = third === 'gap' ? face - gap : face;
  const high = floor - lid;
  // its area is that of the round cord
  const wide = high + (Math.PI * (radius ** 2 - (high / 2) ** 2)) / high;
  const cord = { x: middle - wide / 2, y: lid, width: wide, height: high, rx: high / 2 };
  return {
    letters,
    svg: drawn(
      'A cord in its groove, free and pressed',
      200,
      area('bw-head-half', [30, 40], [300, 40], [300, lid], [30, lid]),
      area('bw-thread-half', [30, face], [left, face], [left, floor], [right, floor], [right, face], [300, face], [300, 176], [30, 176]),
      el('rect', { class: 'bw-insert', ...cord }),
      el('rect', { class: 'bw-visible', ...cord }),
      el('circle', { class: 'bw-phantom', cx: middle, cy: floor - radius, r: radius }),
      dimension('A', [middle, floor - 2 * radius], [middle, floor], [middle + 12, floor - radius + 4]),
      line('bw-extension', [right, floor], [272, floor]),
      dimension('B', [262, face], [262, floor], [274, (face + floor) / 2 + 4]),
      third === 'gap'
        ? dimension('C', [66, lid], [66, face], [54, (lid + face) / 2 + 4], true)
        : [[left, right].map(x => line('bw-extension', [x, floor], [x, 192])), dimension('C', [left, 186], [right, 186], [left - 12, 190])],
    ),
  };
};

const ring = (letters: readonly string[]): Sketch => ({
  letters,
  svg: drawn(
    'A ring as it lies, and the groove that it is stretched on',
    200,
    [56, 44].map(r => el('circle', { class: 'bw-phantom', cx: 90, cy: 96, r })),
    [67, 56].map(r => el('circle', { class: 'bw-visible', cx: 240, cy: 96, r })),
    dimension('A', [46, 96], [134, 96], [90, 90]),
    dimension('B', [184, 96], [296, 96], [240, 90]),
  ),
});

/** A strip between two supports, pressed in its middle: to that side a share of its length that can be seen. */
const strip = (letters: readonly string[]): Sketch => {
  const [left, right, top, thick, sag] = [60, 270, 84, 12, 20];
  const middle = (left + right) / 2;
  const bent = (x: number): number => {
    const share = (middle - Math.abs(x - middle) - left) / (right - left);
    return top + sag * share * (3 - 4 * share ** 2);
  };
  const along = Array.from({ length: 43 }, (_, i) => left + 5 * i);
  const support = (x: number): Markup[] => area('bw-thread-half', [x, top + thick], [x + 9, top + thick + 22], [x - 9, top + thick + 22]);
  return {
    letters,
    svg: drawn(
      'A strip of a board between two supports, bent by a force in its middle',
      190,
      area('bw-board', ...along.map((x): Point => [x, bent(x)]), ...[...along].reverse().map((x): Point => [x, bent(x) + thick])),
      line('bw-phantom', [left, top], [right, top]),
      support(left),
      support(right),
      line('bw-visible', [middle, 34], [middle, top + sag]),
      head([middle, 34], [middle, top + sag]),
      text('A', [middle + 14, 46], { anchor: 'middle', className: 'bw-strong bw-halo' }),
      dimension('B', [left, 150], [right, 150], [middle, 168]),
      dimension('C', [left + 42, bent(left + 42)], [left + 42, bent(left + 42) + thick], [left + 58, bent(left + 42) + 38], true),
      letters.length > 3 ? dimension('D', [middle + 22, top], [middle + 22, top + sag], [middle + 38, top - 6], true) : [],
      line('bw-extension', [middle, top + sag], [middle + 28, top + sag]),
    ),
  };
};

const plate = (letters: readonly string[]): Sketch => {
  const [left, right, top, bottom] = [70, 250, 30, 150];
  const wave = (lift: number): Point[] => Array.from({ length: 37 }, (_, i) => [left + 5 * i, 206 - lift * Math.sin((Math.PI * i) / 36)]);
  return {
    letters,
    svg: drawn(
      'A rectangular board from above, and how it swings from the side',
      240,
      area('bw-board', [left, top], [right, top], [right, bottom], [left, bottom]),
      dimension('A', [left, 168], [right, 168], [(left + right) / 2, 164]),
      line('bw-extension', [left, bottom], [left, 174]),
      line('bw-extension', [right, bottom], [right, 174]),
      dimension('B', [272, top], [272, bottom], [288, (top + bottom) / 2 + 4]),
      line('bw-extension', [right, top], [278, top]),
      line('bw-extension', [right, bottom], [278, bottom]),
      [14, -14].map(lift => el('path', { class: 'bw-phantom', d: through(wave(lift), false) })),
      line('bw-visible', [left, 206], [right, 206]),
    ),
  };
};

export const SKETCHES: Readonly<Record<string, Sketch>> = {
  'BOARD.SAG': strip(['force', 'span', 'thickness', RESULT]),
  'BOARD.STRAIN': strip(['force', 'span', 'thickness']),
  'BOARD.FREQUENCY': plate(['length', 'width']),
  'RIM.SAG': rim(['pitch', 'line_load', RESULT]),
  'RIM.PITCH': rim([RESULT, 'line_load', 'sag']),
  'SEAL.SQUEEZE': groove('gap', ['cord', 'groove_depth', 'gap']),
  'SEAL.FILL': groove('width', ['cord', 'groove_depth', 'groove_width']),
  'SEAL.STRETCH': ring(['ring_inside', 'groove_inside']),
};
