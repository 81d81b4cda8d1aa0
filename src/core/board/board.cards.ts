import { card, ITSELF, type Calculation } from '../card';
import { DEVIATION, numeric, param } from '../read/params';
import { ANGLE, EXPANSION, LENGTH, RATIO, TEMPERATURE_CHANGE } from '../read/quantity';
import { about, exists, goesThrough } from '../read/relation';
import { headDiameter, hole, ofMaterial, screwDiameter } from '../read/sources';
import * as F from './board';

const T = 'Board and supports';
const length = numeric(LENGTH);
const boardTol = param('board_tol', DEVIATION, { symbol: 't_b' });
const shift = param('shift', length, { symbol: 'e', atLeast: 0, default: 0 });

export const BOARD_CARDS: readonly Calculation[] = [
  card(
    'BOARD.GAP',
    T,
    [
      param('board', length, { symbol: 'b', above: 0 }),
      boardTol,
      param('inside', length, { symbol: 'w', above: 0 }),
      param('inside_tol', DEVIATION, { symbol: 't_w', default: 0 }),
      param('height', length, { symbol: 'h', atLeast: 0, default: 0 }),
      param('draft', numeric(ANGLE), {
        symbol: 'α',
        atLeast: 0,
        below: 90,
        default: 0,
        relation: exists(
          [['>=', { formula: { boardGapMm: F.boardGapMm }, of: ['board', 'board_tol', 'inside', 'inside_tol', 'height', ITSELF] }, 0]],
          () => 'the largest board does not go into the smallest pocket',
        ),
      }),
    ],
    F.boardGapMm,
    { result: { shape: 'number', name: 'smallest gap per side', symbol: 'g', unit: 'mm' } },
  ),
  card(
    'BOARD.CLAMP',
    T,
    [
      param('space', length, { symbol: 's', above: 0 }),
      param('space_tol', DEVIATION, { symbol: 't_s' }),
      param('board', length, { symbol: 'b', above: 0 }),
      boardTol,
    ],
    F.boardClampMm,
    {
      result: {
        shape: 'row',
        columns: [
          { name: 'min', unit: 'mm' },
          { name: 'nominal', unit: 'mm' },
          { name: 'max', unit: 'mm' },
        ],
      },
    },
  ),
  card(
    'BOARD.REACH',
    T,
    [
      param('head_diameter', headDiameter('max'), { symbol: 'd_k', above: 0 }),
      param('hole', hole('max'), { symbol: 'd_h', above: 0 }),
      param('screw', screwDiameter('min'), { symbol: 'd', above: 0, relation: goesThrough('hole') }),
      shift,
    ],
    F.boardReachMm,
    { result: { shape: 'number', name: 'radius that metal can reach', symbol: 'r', unit: 'mm' } },
  ),
  card(
    'BOARD.MARGIN',
    T,
    [
      param('copper', length, { symbol: 'a', above: 0 }),
      param('reach', length, { symbol: 'r', above: 0 }),
      param('required', length, { symbol: 'c', above: 0 }),
    ],
    F.boardMarginMm,
    { result: { shape: 'number', name: 'distance beyond the required one', symbol: 'm', unit: 'mm' } },
  ),
  card(
    'BOARD.KEEPOUT',
    T,
    [
      param('hardware_diameter', headDiameter('max'), { symbol: 'd_k', above: 0 }),
      param('factor', numeric(RATIO), { symbol: 'k', atLeast: 1, default: 1.25 }),
    ],
    F.keepoutDiaMm,
    { result: { shape: 'number', name: 'keep-out diameter', symbol: 'D', unit: 'mm' } },
  ),
  card(
    'BOARD.SLEEVE',
    T,
    [
      param('hole', hole(), { symbol: 'd_h', above: 0 }),
      param('sleeve', length, { symbol: 'd_s', above: 0, relation: goesThrough('hole') }),
      param('shift', length, {
        symbol: 'e',
        atLeast: 0,
        default: 0,
        relation: exists(
          [['>=', { formula: { sleevePlayMm: F.sleevePlayMm }, of: ['hole', 'sleeve', ITSELF] }, 0]],
          number => `the sleeve has ${about(F.sleevePlayMm(number('hole'), number('sleeve'), 0))} of play per side`,
        ),
      }),
    ],
    F.sleevePlayMm,
    { result: { shape: 'number', name: 'play per side', symbol: 'p', unit: 'mm' } },
  ),
  card(
    'BOARD.HOLD',
    T,
    [
      param('boss_od', length, { symbol: 'D', above: 0 }),
      param('board_hole', hole(), { symbol: 'd_h', above: 0 }),
      param('sleeve', length, { symbol: 'd_s', above: 0, relation: goesThrough('board_hole') }),
      param('shift', length, {
        symbol: 'e',
        atLeast: 0,
        default: 0,
        relation: exists(
          [['>=', { formula: { boardHoldMm: F.boardHoldMm }, of: ['boss_od', 'board_hole', 'sleeve', ITSELF] }, 0]],
          number =>
            `the board slips off the boss, which holds it by ` +
            `${about(F.boardHoldMm(number('boss_od'), number('board_hole'), number('sleeve'), 0))} without a shift`,
        ),
      }),
    ],
    F.boardHoldMm,
    { result: { shape: 'number', name: 'ring that still holds the board', symbol: 'r', unit: 'mm' } },
  ),
  card(
    'THERMAL.GAP',
    T,
    [
      param('length', length, { symbol: 'L', above: 0 }),
      param('expansion_a', ofMaterial(EXPANSION, 'expansion'), { symbol: 'α_a', above: 0 }),
      param('expansion_b', ofMaterial(EXPANSION, 'expansion'), { symbol: 'α_b', above: 0 }),
      param('temperature_change', numeric(TEMPERATURE_CHANGE), { symbol: 'ΔT', blank: 'refused' }),
    ],
    F.thermalGapMm,
    { result: { shape: 'number', name: 'difference in length', symbol: 'ΔL', unit: 'mm' } },
  ),
];
