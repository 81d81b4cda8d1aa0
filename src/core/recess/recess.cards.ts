import { card, ITSELF, type Calculation, type Relation } from '../card';
import { below, goesThrough } from '../read/relation';
import { numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { readQuantity } from '../read/read-quantity';
import { headDiameter, headHeight, hole, screwDiameter } from '../read/sources';
import { CONE, ownAngleDeg } from './countersink';
import * as F from './recess';

const T = 'Head recess';
const length = numeric(LENGTH);
const boardPlane = param('board_plane', length, { symbol: 'B', above: 0 });
const upToBoardPlane: Relation = { holds: [['>=', 'board_plane', ITSELF]], words: 'at most board_plane' };
const HEX = /\shex$/i;
const toolDiameter = numeric(LENGTH, {
  words: 'a hexagon by its flats, "1/4 in hex": taken across corners',
  read: text => (HEX.test(text.trim()) ? F.acrossCornersMm(readQuantity(text.trim().replace(HEX, ''), LENGTH)) : undefined),
});

export const RECESS_CARDS: readonly Calculation[] = [
  card(
    'RECESS.DIAMETER',
    T,
    [
      param('head_diameter', headDiameter('max'), { symbol: 'd_k', above: 0 }),
      param('allowance', length, { symbol: 'c', atLeast: 0 }),
      param('distance', length, { symbol: 'z', atLeast: 0, default: 0 }),
      param('draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, default: 0 }),
    ],
    F.recessDiaMm,
    { result: { shape: 'number', name: 'recess diameter', symbol: 'D_r', unit: 'mm' } },
  ),
  card('RECESS.DEPTH', T, [boardPlane, param('seat', length, { symbol: 's', atLeast: 0, relation: upToBoardPlane })], F.recessDepthMm, {
    result: { shape: 'number', name: 'recess depth', symbol: 'h_r', unit: 'mm' },
  }),
  card('RECESS.SEAT', T, [boardPlane, param('depth', length, { symbol: 'h_r', atLeast: 0, relation: upToBoardPlane })], F.recessSeatMm, {
    result: { shape: 'number', name: 'seat left', symbol: 's', unit: 'mm' },
  }),
  card(
    'RECESS.DEPTH.MIN',
    T,
    [param('head_height', headHeight('max'), { symbol: 'k', above: 0 }), param('subflush', length, { symbol: 'u', atLeast: 0 })],
    F.recessDepthMinMm,
    { result: { shape: 'number', name: 'least recess depth', symbol: 'h_r', unit: 'mm' } },
  ),
  card(
    'RECESS.FLUSH',
    T,
    [param('depth', length, { symbol: 'h_r', atLeast: 0 }), param('head_height', headHeight('max'), { symbol: 'k', above: 0 })],
    F.subflushMm,
    { result: { shape: 'number', name: 'head below the face', symbol: 'u', unit: 'mm' } },
  ),
  card(
    'RECESS.FLOAT',
    T,
    [
      param('head_diameter', headDiameter('max'), { symbol: 'd_k', above: 0 }),
      param('hole', hole('max'), { symbol: 'd_h', above: 0 }),
      param('screw', screwDiameter('min'), { symbol: 'd', above: 0, relation: goesThrough('hole') }),
      param('margin', length, { symbol: 'c', atLeast: 0 }),
    ],
    F.recessFloatMm,
    { result: { shape: 'number', name: 'recess diameter', symbol: 'D_r', unit: 'mm' } },
  ),
  card(
    'RECESS.CONE',
    T,
    [
      param('sharp_diameter', CONE, { symbol: 'd_s', blank: 'refused', relation: { holds: [['>', '.sharpMm', 0]], words: 'above 0 mm' } }),
      param('hole', hole(), { symbol: 'd_h', above: 0, relation: below('sharp_diameter.sharpMm', 'below sharp_diameter') }),
      param('angle', numeric(ANGLE), { symbol: 'θ', above: 0, below: 180, blank: { sameAs: 'sharp_diameter', take: ownAngleDeg } }),
    ],
    F.recessConeMm,
    { result: { shape: 'number', name: 'countersink depth', symbol: 'h_s', unit: 'mm' } },
  ),
  card(
    'RECESS.TOOL',
    T,
    [
      param('recess_diameter', length, { symbol: 'D_r', above: 0 }),
      param('tool_diameter', toolDiameter, { symbol: 'd_t', above: 0 }),
      param('margin', length, { symbol: 'c', atLeast: 0, default: 0.5 }),
    ],
    F.toolRoomMm,
    { result: { shape: 'number', name: 'room on diameter', symbol: 'r', unit: 'mm' } },
  ),
];
