import { card, ITSELF, type Calculation } from '../card';
import { DEVIATION, numeric, param } from '../read/params';
import { ANGLE, LENGTH, SHARE } from '../read/quantity';
import { about, exists } from '../read/relation';
import { hole, ofMaterial, SCREW } from '../read/sources';
import * as F from './hole';

const T = 'Holes and core pins';
const draft = param('draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, default: 0 });
/** The hole is still open at that depth. */
const openDraft = param('draft', numeric(ANGLE), {
  symbol: 'α',
  atLeast: 0,
  below: 90,
  default: 0,
  relation: exists(
    [['>', { formula: { holeAtDepthMm: F.holeAtDepthMm }, of: ['mouth', 'depth', ITSELF] }, 0]],
    (number, draftDeg) => `the hole closes at ${about(F.holeClosesAtMm(number('mouth'), draftDeg))}`,
  ),
});
const depth = param('depth', numeric(LENGTH), { symbol: 'h', atLeast: 0 });
const size = param('size', SCREW);

export const HOLE_CARDS: readonly Calculation[] = [
  card(
    'HOLE.PILOT',
    T,
    [size, param('thread_share', ofMaterial(SHARE, 'thread share'), { symbol: 'e', atLeast: 0, atMost: 1, blank: 'refused' })],
    F.pilotHoleMm,
    { result: { shape: 'number', name: 'pilot hole', symbol: 'd_h', unit: 'mm' } },
  ),
  card(
    'HOLE.THREAD.SHARE',
    T,
    [
      size,
      param('hole', hole(), {
        symbol: 'd_h',
        above: 0,
        relation: {
          holds: [['>=', 'size.majorMaxMm', ITSELF]],
          words: 'at most the major diameter of the screw: a wider hole leaves no thread',
        },
      }),
    ],
    F.threadShare,
    { result: { shape: 'number', name: 'thread share', symbol: 'e', unit: '' } },
  ),
  card('HOLE.AT', T, [param('mouth', hole(), { symbol: 'd_m', above: 0 }), depth, openDraft], F.holeAtDepthMm, {
    result: { shape: 'number', name: 'hole at depth', symbol: 'd', unit: 'mm' },
  }),
  card('HOLE.MOUTH', T, [param('diameter', hole(), { symbol: 'd', above: 0 }), depth, draft], F.holeMouthMm, {
    result: { shape: 'number', name: 'hole at the mouth', symbol: 'd_m', unit: 'mm' },
  }),
  card('HOLE.TIGHT', T, [size, param('mouth', hole(), { symbol: 'd_m', above: 0 }), depth, openDraft], F.holeTightness, {
    result: { shape: 'number', name: 'hole ÷ root', unit: '' },
  }),
  card(
    'HOLE.DEPTH',
    T,
    [
      param('penetration_max', numeric(LENGTH), { symbol: 'P', atLeast: 0 }),
      param('bottom_gap', numeric(LENGTH), { symbol: 'g', atLeast: 0 }),
      param('depth_tol', DEVIATION, {
        symbol: 't',
        default: 0,
        relation: exists(
          [['>=', { formula: { holeDepthNeededMm: F.holeDepthNeededMm }, of: ['penetration_max', 'bottom_gap', ITSELF] }, 0]],
          () => 'no depth is left for the hole',
        ),
      }),
    ],
    F.holeDepthNeededMm,
    { result: { shape: 'number', name: 'hole depth needed', symbol: 'H', unit: 'mm' } },
  ),
  card(
    'HOLE.FLOOR',
    T,
    [
      param('wall', numeric(LENGTH), { symbol: 'T', above: 0 }),
      param('boss_height', numeric(LENGTH), { symbol: 'h', above: 0 }),
      param('hole_depth', numeric(LENGTH), {
        symbol: 'H',
        atLeast: 0,
        relation: exists(
          [['>=', { formula: { holeFloorMm: F.holeFloorMm }, of: ['wall', 'boss_height', ITSELF] }, 0]],
          number => `the hole comes out of the outer face at ${about(number('wall') + number('boss_height'))}`,
        ),
      }),
    ],
    F.holeFloorMm,
    { result: { shape: 'number', name: 'floor under the hole', unit: 'mm' } },
  ),
  card('HOLE.RELIEF', T, [size, param('play', numeric(LENGTH), { atLeast: 0, default: 0.2 })], F.reliefDiaMm, {
    result: { shape: 'number', name: 'relief diameter', symbol: 'd_c', unit: 'mm' },
  }),
];
