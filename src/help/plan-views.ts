// What no section through a joint shows: a boss in a corner and a pattern of holes, seen along the screws, with numbers of the examples.
import type { Card } from '../core/card';
import { roomInCornerMm } from '../core/boss/boss';
import { tanDeg } from '../core/maths';
import { style } from '../figure/style';
import { type Child, el, line, type Point, px, text } from '../figure/svg';
import { call, CARDS } from '../registry';
import type { Figure } from './sketches';
import { ENGLISH } from './words/english';

const WIDTH_PX = 330;
const HEIGHT_PX = 300;

/** Numbers of the example of a function, by argument, its result as `result`. */
function exampleOf(id: string): (name: string) => number {
  const { params, example } = CARDS.get(id) as Card;
  const answer = call(id, example.args);
  const numbers = new Map(params.map(({ name }, i): [string, unknown] => [name, example.args[i]]));
  if (answer.ok) numbers.set('result', answer.value);
  return name => Number.parseFloat(String(numbers.get(name)));
}

type LegendRow = readonly [letter: string, name: string, value: number, unit?: string];

const figure = (view: 'corner' | 'pattern', own: readonly string[], rows: readonly LegendRow[], ...drawing: Child[]): Figure => ({
  caption: W => W[view],
  isJoint: false,
  svg: el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH_PX} ${HEIGHT_PX}`,
      width: WIDTH_PX,
      height: HEIGHT_PX,
      role: 'img',
      class: 'bw-figure',
    },
    el('title', {}, ENGLISH.figures[view]),
    style(),
    el('rect', { class: 'bw-sheet', width: WIDTH_PX, height: HEIGHT_PX }),
    drawing,
  ).markup,
  legend: rows.map(([letter, name, value, unit = 'mm']) => ({ letter, name, of: name, value, unit, isOwn: own.includes(name) })),
});

const letter = (content: string, at: Point): Child => text(content, at, { anchor: 'middle', className: 'bw-strong bw-halo' });
const circle = (className: string, [cx, cy]: Point, r: number): Child => el('circle', { class: className, cx, cy, r });
const path = (className: string, d: string): Child => el('path', { class: className, d });

const STEEL = 'mould steel at the floor';

/** The boss in its corner; the farther line of each pair is that at the free end. */
export function cornerFigure(): Figure {
  const of = exampleOf('BOSS.CORNER');
  const [od, x, y, radius] = [of('od'), of('x'), of('y'), of('corner_radius')];
  const [height, bossDraft, wallDraft] = [of('height'), of('boss_draft'), of('wall_draft')];
  const inward = height * tanDeg(wallDraft);
  const floorR = od / 2 + height * tanDeg(bossDraft);
  const constant = roomInCornerMm(x - inward, y - inward, radius) - floorR;
  const scale = 30;
  const [left, bottom] = [34, HEIGHT_PX - 34];
  const at = (xMm: number, yMm: number): Point => [left + scale * xMm, bottom - scale * yMm];
  const [right, top] = [(WIDTH_PX - left) / scale, bottom / scale];
  const walls = (from: number, r: number): string => {
    const [[x1, y1], [x2, y2], [x3, y3], [x4, y4]] = [at(from, top), at(from, from + r), at(from + r, from), at(right, from)];
    return `M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}A${px(scale * r)} ${px(scale * r)} 0 0 0 ${px(x3)} ${px(y3)}L${px(x4)} ${px(y4)}`;
  };
  const middle = at(x, y);
  // towards the corner, beside each other
  const steel = (lengthMm: number, aside: number, className: string): Child => {
    const along = (distanceMm: number): Point => [
      middle[0] - (scale * distanceMm) / Math.SQRT2 + aside,
      middle[1] + (scale * distanceMm) / Math.SQRT2 + aside,
    ];
    return line(className, along(floorR), along(floorR + lengthMm));
  };
  return figure(
    'corner',
    [STEEL],
    [
      ['A', STEEL, of('result')],
      ['B', 'the same where the radius is kept constant', constant],
      ['C', 'outside diameter at the free end', od],
      ['D', 'x', x],
      ['E', 'y', y],
      ['F', 'corner radius at the free end', radius],
      ['–', 'height', height],
      ['–', 'boss draft', bossDraft, '°'],
      ['–', 'wall draft', wallDraft, '°'],
    ],
    path('bw-thread-half', `${walls(inward, radius - inward)}V${HEIGHT_PX}H0V0Z`),
    path('bw-visible', walls(inward, radius - inward)),
    path('bw-thin', walls(0, radius)),
    path('bw-asked', walls(inward, radius)),
    circle('bw-thread-half', middle, scale * floorR),
    circle('bw-visible', middle, scale * floorR),
    circle('bw-thin', middle, (scale * od) / 2),
    steel(of('result'), -4, 'bw-worst'),
    steel(constant, 4, 'bw-nominal'),
    letter('A', at(x - floorR * 0.9, y - floorR * 0.62)),
    letter('B', at(x - floorR * 0.6, y - floorR * 0.9)),
    line('bw-thin', at(x - od / 2, y), at(x + od / 2, y)),
    letter('C', at(x + 1.2, y + 0.15)),
    line('bw-thin', at(0, y + 1), at(x, y + 1)),
    line('bw-centre', at(x, y + 1.6), at(x, -0.3)),
    letter('D', at(x / 2, y + 1.15)),
    line('bw-thin', at(x + 0.8, 0), at(x + 0.8, y)),
    letter('E', at(x + 1.1, y / 2)),
    line('bw-thin', at(radius, radius), at(radius - radius * Math.cos(0.35), radius - radius * Math.sin(0.35))),
    letter('F', at(radius - 0.9, radius - 0.05)),
  );
}

/** A board on a round hole and a slot, not to scale: what is small is drawn large. */
export function patternFigure(id?: string): Figure {
  const [slot, turn, fit] = [exampleOf('PATTERN.SLOT'), exampleOf('PATTERN.TURN'), exampleOf('PATTERN.FIT')];
  const [length, most] = ['length of the slot', 'largest turn'];
  const [round, far]: [Point, Point] = [
    [80, 200],
    [250, 200],
  ];
  const screws: readonly Point[] = [
    [80, 80],
    [250, 80],
  ];
  const board = { x: 40, y: 40, width: 250, height: 200, rx: 10 };
  return figure(
    'pattern',
    id === 'PATTERN.SLOT' ? [length] : id === 'PATTERN.TURN' ? [most] : [],
    [
      ['A', 'hole', slot('hole')],
      ['B', length, slot('result')],
      ['C', 'distance', slot('distance')],
      ['D', most, turn('result'), '°'],
      ['E', 'position zone of a boss', fit('zone_boss')],
      ['F', 'play of a screw in its hole, on diameter', fit('play')],
    ],
    el('rect', { class: 'bw-board', ...board }),
    el('rect', { class: 'bw-phantom', ...board, transform: `rotate(4 ${round[0]} ${round[1]})` }),
    circle('bw-outline', round, 18),
    el('rect', { class: 'bw-outline', x: far[0] - 26, y: far[1] - 18, width: 52, height: 36, rx: 18 }),
    ...screws.map(at => circle('bw-outline', at, 24)),
    ...[round, far, ...screws].map(at => circle('bw-screw', at, 14)),
    ...screws.map(at => circle('bw-asked', at, 7)),
    line('bw-centre', [30, 200], [300, 200]),
    line('bw-thin', [62, 235], [98, 235]),
    letter('A', [80, 232]),
    line('bw-thin', [224, 235], [276, 235]),
    letter('B', [250, 232]),
    line('bw-thin', [80, 258], [250, 258]),
    ...[round, far].map(([x]) => line('bw-extension', [x, 186], [x, 264])),
    letter('C', [165, 254]),
    letter('D', [304, 222]),
    line('bw-thin', [87, 80], [112, 60]),
    letter('E', [118, 58]),
    line('bw-thin', [236, 80], [226, 80], [212, 60]),
    letter('F', [206, 58]),
  );
}
