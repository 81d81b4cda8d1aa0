// A snap hook before it enters: what its functions call length, thickness, deflection and angle.
import { matingForceN, snapForceN, snapStrain } from '../core/snap/snap';
import { hatches, style } from '../figure/style';
import { el, line, type Markup, type Point, text, through } from '../figure/svg';
import type { Figure } from './sketches';

const WIDTH_PX = 330;
const HEIGHT_PX = 190;
const [ROOT_X, TIP_X, TOP_Y] = [60, 240, 70];
const PX_PER_MM = (TIP_X - ROOT_X) / 15;

/** Invented: mm, MPa, degrees. */
const HOOK = { deflection: 2, length: 15, width: 5, root: 2, tip: 1, modulus: 2300, angle: 30, friction: 0.3 };
const FORCE_N = snapForceN(HOOK.deflection, HOOK.length, HOOK.width, HOOK.root, HOOK.modulus, HOOK.tip);

/** Named as the functions name their results; which of them a function works out is bold on its page. */
const LEGEND = [
  ['A', 'length', HOOK.length, 'mm'],
  ['B', 'thickness at the root', HOOK.root, 'mm'],
  ['C', 'thickness at the tip', HOOK.tip, 'mm'],
  ['D', 'deflection at the tip', HOOK.deflection, 'mm'],
  ['E', 'angle of the ramp', HOOK.angle, '°'],
  ['F', 'bending force at the tip', FORCE_N, 'N'],
  ['G', 'axial force', matingForceN(FORCE_N, HOOK.angle, HOOK.friction), 'N'],
  ['H', 'largest strain', 100 * snapStrain(HOOK.deflection, HOOK.length, HOOK.root, HOOK.tip), '%'],
] as const;

/** Root, tip, and the head with its ramp, moved down at the tip by so much. */
const outline = (downPx: number): Point[] => [
  [ROOT_X, TOP_Y],
  [TIP_X - 16, TOP_Y + downPx],
  [TIP_X - 16, TOP_Y - 24 + downPx],
  [TIP_X + 26, TOP_Y + downPx],
  [TIP_X + 26, TOP_Y + HOOK.tip * PX_PER_MM + downPx],
  [TIP_X, TOP_Y + HOOK.tip * PX_PER_MM + downPx],
  [ROOT_X, TOP_Y + HOOK.root * PX_PER_MM],
];

const letter = (of: string, at: Point): Markup => text(of, at, { anchor: 'middle', className: 'bw-strong bw-halo' });

/** A line with a head at its end. */
function arrow([x, y]: Point, [toX, toY]: Point): Markup[] {
  const size = Math.hypot(toX - x, toY - y);
  const [ux, uy] = [(toX - x) / size, (toY - y) / size];
  const back = (aside: number): Point => [toX - 8 * ux - aside * uy, toY - 8 * uy + aside * ux];
  return [line('bw-thin', [x, y], [toX, toY]), el('path', { class: 'bw-solid', d: through([[toX, toY], back(3), back(-3)], true) })];
}

const between = (from: Point, to: Point): Markup[] => [...arrow(from, to), ...arrow(to, from)];

export function hookFigure(own: string | undefined): Figure {
  const downPx = HOOK.deflection * PX_PER_MM;
  const wall = through(
    [
      [20, 26],
      [ROOT_X, 26],
      [ROOT_X, 150],
      [20, 150],
    ],
    true,
  );
  const [bottomY, tipY] = [TOP_Y + HOOK.root * PX_PER_MM, TOP_Y + HOOK.tip * PX_PER_MM];
  const svg = el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${WIDTH_PX} ${HEIGHT_PX}`,
      width: WIDTH_PX,
      height: HEIGHT_PX,
      role: 'img',
      class: 'bw-figure',
    },
    el('title', {}, 'A snap hook on its wall'),
    el('desc', {}, 'A cantilever that tapers from root to tip, with a ramp at its head; broken lines show it bent aside.'),
    style(),
    hatches(),
    el('rect', { class: 'bw-sheet', width: WIDTH_PX, height: HEIGHT_PX }),
    el('path', { class: 'bw-head-half', d: wall }),
    el('path', { fill: 'url(#bw-hatch-head-half)', d: wall }),
    el('path', { class: 'bw-head-half', d: through(outline(0), true) }),
    line('bw-visible', [ROOT_X, 26], ...outline(0), [ROOT_X, 150]),
    el('path', { class: 'bw-phantom', d: through(outline(downPx)) }),
    line('bw-extension', [TIP_X, tipY], [TIP_X, 172]),
    line('bw-extension', [ROOT_X, 150], [ROOT_X, 172]),
    ...between([ROOT_X, 168], [TIP_X, 168]),
    letter('A', [(ROOT_X + TIP_X) / 2, 164]),
    ...between([ROOT_X + 16, TOP_Y], [ROOT_X + 16, bottomY]),
    letter('B', [ROOT_X + 28, TOP_Y + 16]),
    ...arrow([TIP_X - 30, TOP_Y - 16], [TIP_X - 30, TOP_Y]),
    ...arrow([TIP_X - 30, tipY + 20], [TIP_X - 30, tipY + 2]),
    letter('C', [TIP_X - 42, TOP_Y - 8]),
    line('bw-extension', [TIP_X + 26, tipY], [TIP_X + 54, tipY]),
    line('bw-extension', [TIP_X + 26, tipY + downPx], [TIP_X + 54, tipY + downPx]),
    ...between([TIP_X + 48, tipY], [TIP_X + 48, tipY + downPx]),
    letter('D', [TIP_X + 62, tipY + downPx / 2 + 4]),
    line('bw-thin', [TIP_X - 10, TOP_Y], [TIP_X + 26, TOP_Y]),
    letter('E', [TIP_X + 2, TOP_Y - 3]),
    ...arrow([TIP_X, 14], [TIP_X, TOP_Y - 18]),
    letter('F', [TIP_X + 12, 22]),
    ...arrow([TIP_X + 80, TOP_Y], [TIP_X + 30, TOP_Y]),
    letter('G', [TIP_X + 60, TOP_Y - 6]),
    letter('H', [ROOT_X + 10, TOP_Y - 6]),
  );
  return {
    caption: W => W.hook,
    isJoint: false,
    svg: svg.markup,
    legend: LEGEND.map(([mark, name, value, unit]) => ({ letter: mark, name, of: name, value, unit, isOwn: name === own })),
  };
}
