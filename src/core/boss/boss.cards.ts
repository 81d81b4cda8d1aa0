import { card, ITSELF, type Calculation, type Relation, type Term } from '../card';
import { holeAtDepthMm, holeClosesAtMm } from '../hole/hole';
import { tanDeg } from '../maths';
import { numeric, param } from '../read/params';
import { ANGLE, DENSITY, LENGTH, RATIO, SHARE, TORQUE } from '../read/quantity';
import { about, below, exists } from '../read/relation';
import { hole, ofMaterial, SCREW } from '../read/sources';
import * as F from './boss';
import { bossEnds } from './boss-tables';

const T = 'Boss and wall';
const length = numeric(LENGTH);
const distance = param('distance', length, { symbol: 'z', atLeast: 0, default: 0 });
const outsideDraft = param('outside_draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, default: 0 });
// negative: a pin from the other side, the hole widens away from the free end
const holeDraft = param('hole_draft', numeric(ANGLE), { symbol: 'β', above: -90, below: 90, default: 0 });
const holeEnd: Term = { formula: { holeAtDepthMm }, of: ['hole', ITSELF, 'hole_draft'] };
const inside: Relation = exists(
  [
    ['>', holeEnd, 0],
    ['<', holeEnd, { formula: { outsideAtMm: F.outsideAtMm }, of: ['od', ITSELF, 'outside_draft'] }],
  ],
  number => {
    const [odMm, holeMm, outsideDeg, holeDeg] = [number('od'), number('hole'), number('outside_draft'), number('hole_draft')];
    if (holeDeg > 0) return `must end before ${about(holeClosesAtMm(holeMm, holeDeg))}, where the hole closes`;
    return (
      `must end before ` +
      `${about((odMm - holeMm) / (2 * (tanDeg(-holeDeg) - tanDeg(outsideDeg))))}, where the hole breaks out of the boss`
    );
  },
);
const clearOfWall: Relation = { holds: [['>', ['*', 2, ITSELF], 'od']], words: 'more than half of od' };
const leaning = [
  param('height', length, { symbol: 'h', above: 0 }),
  param('boss_draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, default: 0 }),
  param('wall_draft', numeric(ANGLE), { symbol: 'β', atLeast: 0, below: 90, default: 0 }),
] as const;
const holeInside = param('hole', hole(), { symbol: 'd_h', above: 0, relation: below('od') });

export const BOSS_CARDS: readonly Calculation[] = [
  card(
    'WALL.FEATURE',
    T,
    [param('wall', length, { symbol: 'T', above: 0 }), param('share', numeric(SHARE), { symbol: 'k', above: 0, atMost: 1, default: 0.6 })],
    F.wallFeatureMm,
    { result: { shape: 'number', name: 'wall of an internal feature', symbol: 't', unit: 'mm' } },
  ),
  card(
    'BOSS.OD',
    T,
    [
      param('hole', hole(), { symbol: 'd_h', above: 0 }),
      param('wall', length, { symbol: 't', above: 0 }),
      distance,
      param('draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, default: 0 }),
    ],
    F.bossOutsideDiaMm,
    { result: { shape: 'number', name: 'outside diameter', symbol: 'D', unit: 'mm' } },
  ),
  card(
    'BOSS.OD.RULE',
    T,
    [param('size', SCREW), param('ratio', ofMaterial(RATIO, 'od ratio'), { symbol: 'k', above: 0 })],
    F.bossOutsideDiaByRuleMm,
    { result: { shape: 'number', name: 'outside diameter', symbol: 'D', unit: 'mm' } },
  ),
  card(
    'BOSS.WALL',
    T,
    [
      param('od', length, { symbol: 'D', above: 0 }),
      holeInside,
      distance,
      outsideDraft,
      holeDraft,
      param('hole_depth', length, { symbol: 'H', atLeast: 0, sameAs: 'distance', relation: inside }),
    ],
    F.bossWallMm,
    { result: { shape: 'number', name: 'boss wall', symbol: 't', unit: 'mm' } },
  ),
  card(
    'BOSS.ENDS',
    T,
    [
      param('od', length, { symbol: 'D', above: 0 }),
      holeInside,
      param('height', length, { symbol: 'h', above: 0 }),
      outsideDraft,
      holeDraft,
      param('hole_depth', length, { symbol: 'H', atLeast: 0, sameAs: 'height', relation: inside }),
    ],
    bossEnds,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'at', unit: '' },
          { name: 'outside diameter', unit: 'mm' },
          { name: 'hole', unit: 'mm' },
          { name: 'wall', unit: 'mm' },
        ],
      },
    },
  ),
  card(
    'BOSS.SLENDER',
    T,
    [param('height', length, { symbol: 'h', above: 0 }), param('od', length, { symbol: 'D', above: 0 })],
    F.bossSlenderness,
    { result: { shape: 'number', name: 'height ÷ outside diameter', unit: '' } },
  ),
  card(
    'BOSS.SINK',
    T,
    [param('boss_wall', length, { symbol: 't', above: 0 }), param('wall', length, { symbol: 'T', above: 0 })],
    F.sinkRatio,
    { result: { shape: 'number', name: 'boss wall ÷ wall', unit: '' } },
  ),
  card(
    'BOSS.CIRCLE',
    T,
    [
      param('boss_wall', length, { symbol: 't', above: 0 }),
      param('wall', length, { symbol: 'T', above: 0 }),
      param('fillet', length, { symbol: 'R', atLeast: 0, default: 0 }),
      param('ring_depth', length, { symbol: 'h_g', atLeast: 0, default: 0, relation: below('wall') }),
      param('floor', length, { symbol: 'f', atLeast: 0, default: 0 }),
    ],
    F.bossCircleMm,
    { result: { shape: 'number', name: 'largest circle in the root of the boss', symbol: 'C', unit: 'mm' } },
  ),
  card(
    'BOSS.MASS',
    T,
    [
      param('od', length, { symbol: 'D', above: 0 }),
      holeInside,
      param('height', length, { symbol: 'h', above: 0 }),
      param('density', ofMaterial(DENSITY, 'density'), { symbol: 'ρ', above: 0 }),
      outsideDraft,
      holeDraft,
      param('hole_depth', length, { symbol: 'H', atLeast: 0, sameAs: 'height', relation: inside }),
    ],
    F.bossMassG,
    { result: { shape: 'number', name: 'mass of the boss', symbol: 'm', unit: 'g' } },
  ),
  card('BOSS.STEEL', T, [param('gap_top', length, { symbol: 's', above: 0 }), ...leaning], F.steelAtFloorMm, {
    result: { shape: 'number', name: 'mould steel at the floor', symbol: 's_f', unit: 'mm' },
  }),
  card(
    'BOSS.CORNER',
    T,
    [
      param('od', length, { symbol: 'D', above: 0 }),
      param('x', length, { symbol: 'x', above: 0, relation: clearOfWall }),
      param('y', length, { symbol: 'y', above: 0, relation: clearOfWall }),
      param('corner_radius', length, {
        symbol: 'R',
        atLeast: 0,
        relation: exists(
          [['>', ['*', 2, { formula: { roomInCornerMm: F.roomInCornerMm }, of: ['x', 'y', ITSELF] }], 'od']],
          () => 'the boss touches the corner at its free end',
        ),
      }),
      ...leaning,
    ],
    F.bossCornerMm,
    { result: { shape: 'number', name: 'mould steel at the floor', symbol: 's_f', unit: 'mm' } },
  ),
  card(
    'BOSS.FLAT',
    T,
    [
      // a negative steel says that the two have merged
      param('steel', length, { symbol: 's_f', blank: 'refused' }),
      param('boss_fillet', length, { symbol: 'R_b', atLeast: 0 }),
      param('wall_fillet', length, { symbol: 'R_w', atLeast: 0 }),
    ],
    F.flatBetweenFilletsMm,
    { result: { shape: 'number', name: 'flat between the fillets', symbol: 'f', unit: 'mm' } },
  ),
  card(
    'BOSS.CONFLICT',
    T,
    [
      param('size', SCREW),
      param('wall', length, { symbol: 'T', above: 0 }),
      param('pilot', hole(), { symbol: 'd_h', above: 0, relation: below('size.majorMaxMm', 'below the major diameter of the screw') }),
      param('od_ratio', ofMaterial(RATIO, 'od ratio'), { symbol: 'k', above: 1, default: 2 }),
      param('share', numeric(SHARE), { symbol: 's', above: 0, atMost: 1, default: 0.6 }),
    ],
    F.bossConflict,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'outside diameter required by the screw', unit: 'mm' },
          { name: 'outside diameter allowed by the wall', unit: 'mm' },
          { name: 'wall that satisfies both', unit: 'mm' },
          { name: 'state', unit: '' },
        ],
      },
    },
  ),
  card(
    'BOSS.GUSSET',
    T,
    [param('boss_height', length, { symbol: 'h', above: 0 }), param('wall', length, { symbol: 'T', above: 0 })],
    F.gussetStartValues,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'thickness', unit: 'mm' },
          { name: 'height', unit: 'mm' },
          { name: 'base', unit: 'mm' },
          { name: 'count', unit: '' },
        ],
      },
    },
  ),
  card(
    'BOSS.TORSION',
    T,
    [param('torque', numeric(TORQUE), { symbol: 'T', above: 0 }), param('od', length, { symbol: 'D', above: 0 }), holeInside],
    F.bossTorsionMpa,
    { result: { shape: 'number', name: 'shear stress at the outside', symbol: 'τ', unit: 'MPa' } },
  ),
];
