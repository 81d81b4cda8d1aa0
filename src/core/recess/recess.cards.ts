import { card, COMMON_PRACTICE, GEOMETRY, type Card } from '../card';
import { numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { headDiameter, headHeight } from '../read/sources';
import * as F from './recess';

const T = 'Head recess';
const length = numeric(LENGTH);
const boardPlane = param('board_plane', length, { symbol: 'B', above: 0 });

export const RECESS_CARDS: readonly Card[] = [
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
    { result: { shape: 'number', name: 'recess diameter', symbol: 'D_r', unit: 'mm' }, kind: 'geometry', sources: GEOMETRY, example: { args: ['0.167 in', 0.25], result: 4.4918 } },
  ),
  card('RECESS.DEPTH', T, [boardPlane, param('seat', length, { symbol: 's', atLeast: 0 })], F.recessDepthMm, {
    result: { shape: 'number', name: 'recess depth', symbol: 'h_r', unit: 'mm' },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [5.5, 2.5], result: 3 },
  }),
  card('RECESS.SEAT', T, [boardPlane, param('depth', length, { symbol: 'h_r', atLeast: 0 })], F.recessSeatMm, {
    result: { shape: 'number', name: 'seat left', symbol: 's', unit: 'mm' },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [5.5, 3], result: 2.5 },
  }),
  card('RECESS.DEPTH.MIN', T, [param('head_height', headHeight('max'), { symbol: 'k', above: 0 }), param('subflush', length, { symbol: 'u', atLeast: 0 })], F.recessDepthMinMm, {
    result: { shape: 'number', name: 'least recess depth', symbol: 'h_r', unit: 'mm' },
    kind: 'common practice',
    sources: COMMON_PRACTICE,
    example: { args: ['ST2.9 ISO 7049', 0.6], result: 3 },
  }),
  card('RECESS.FLUSH', T, [param('depth', length, { symbol: 'h_r', atLeast: 0 }), param('head_height', headHeight('max'), { symbol: 'k', above: 0 })], F.subflushMm, {
    result: { shape: 'number', name: 'head below the face', symbol: 'u', unit: 'mm' },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [3, 2.4], result: 0.6 },
  }),
];
