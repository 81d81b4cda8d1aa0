import { card, ITSELF, type Calculation, type Param } from '../card';
import type { Deviation } from '../read/deviation';
import { DEVIATIONS, numbers } from '../read/lists';
import { DEVIATION, numeric, param } from '../read/params';
import { LENGTH, RATIO } from '../read/quantity';
import { about, exists } from '../read/relation';
import { END, lengthTolerance, point, pointOfNamedMm, SCREW } from '../read/sources';
import * as F from './engagement';
import { commonLengths, lengthTable, pickedLengthMm } from './screw-length';

const T = 'Grip, engagement, screw length';
const mm = numeric(LENGTH);
const length = param('length', mm, { symbol: 'L', above: 0 });
const lengthTol = param('length_tol', lengthTolerance, { symbol: 't_L' });
const layers = param('layers', numbers(LENGTH, { atLeast: 0 }), { symbol: 's_i' });
const grip = param('grip', numbers(LENGTH, { atLeast: 0 }), { symbol: 'G' });
const tolerances = param('tolerances', DEVIATIONS, {
  symbol: 't_i',
  relation: exists([['>=', { formula: { gripMinMm: F.gripMinMm }, of: ['layers', ITSELF] }, 0]], () => 'the least grip would be below 0'),
});
const relief = param('relief', mm, { symbol: 'c', atLeast: 0, default: 0 });
const reliefTol: Param<Deviation> = param('relief_tol', DEVIATION, { symbol: 't_c', default: 0 });
const POINT = { symbol: 'y', atLeast: 0, uncounted: 'point not counted' } as const;
const size = param('size', SCREW);
const ratio = param('ratio', numeric(RATIO), { symbol: 'k', above: 0 });
const holeDepth = param('hole_depth', mm, { symbol: 'H', above: 0 });
const bottomGap = param('bottom_gap', mm, { symbol: 'g', atLeast: 0 });
const end = param('end', END, { default: 'cone' });

export const ENGAGEMENT_CARDS: readonly Calculation[] = [
  card('GRIP', T, [layers], F.gripMm, { result: { shape: 'number', name: 'grip', symbol: 'G', unit: 'mm' } }),
  card('GRIP.LIMITS', T, [layers, tolerances], F.gripLimitsMm, {
    result: {
      shape: 'row',
      columns: [
        { name: 'min', unit: 'mm' },
        { name: 'nominal', unit: 'mm' },
        { name: 'max', unit: 'mm' },
      ],
    },
  }),
  card(
    'PENETRATION',
    T,
    [
      length,
      param('grip', numbers(LENGTH, { atLeast: 0 }), {
        symbol: 'G',
        relation: exists(
          [['>=', { formula: { penetrationMm: F.penetrationMm }, of: ['length', ITSELF] }, 0]],
          number => `the screw of ${about(number('length'))} ends before the boss face`,
        ),
      }),
    ],
    F.penetrationMm,
    { result: { shape: 'number', name: 'length below the boss face', symbol: 'P', unit: 'mm' } },
  ),
  card('ENGAGEMENT', T, [length, grip, relief, param('point', point, { ...POINT, default: 0 })], F.engagementMm, {
    result: { shape: 'number', name: 'full-thread engagement', symbol: 'L_e', unit: 'mm' },
  }),
  card(
    'ENGAGEMENT.LIMITS',
    T,
    [
      length,
      lengthTol,
      layers,
      tolerances,
      relief,
      reliefTol,
      param('point', point, { ...POINT, blank: { sameAs: 'length_tol', take: pointOfNamedMm } }),
    ],
    F.engagementLimitsMm,
    {
      result: {
        shape: 'row',
        columns: [
          { name: 'worst min', unit: 'mm' },
          { name: 'nominal', unit: 'mm' },
          { name: 'worst max', unit: 'mm' },
          { name: 'root-sum-square half spread', unit: 'mm' },
        ],
      },
    },
  ),
  card('ENGAGEMENT.RATIO', T, [param('engagement', mm, { symbol: 'L_e' }), size], F.engagementRatio, {
    result: { shape: 'number', name: 'engagement ÷ d', unit: '' },
  }),
  card(
    'SCREW.BOTTOM',
    T,
    [holeDepth, param('depth_tol', DEVIATION, { symbol: 't_H' }), length, lengthTol, layers, tolerances],
    F.bottomRoomMm,
    { result: { shape: 'number', name: 'room under the tip', unit: 'mm' } },
  ),
  card('SCREW.LENGTH.TABLE', T, [size, layers, tolerances, ratio, holeDepth, bottomGap, relief, reliefTol, end], lengthTable, {
    result: {
      shape: 'table',
      columns: [
        { name: 'length', unit: 'mm' },
        { name: 'worst engagement', unit: 'mm' },
        { name: 'worst engagement ÷ d', unit: '' },
        { name: 'hole depth needed', unit: 'mm' },
        { name: 'state', unit: '' },
        { name: 'reason', unit: '' },
      ],
    },
  }),
  card('SCREW.LENGTH.PICK', T, [size, layers, tolerances, ratio, holeDepth, bottomGap, relief, reliefTol, end], pickedLengthMm, {
    result: { shape: 'number', name: 'screw length', symbol: 'L', unit: 'mm' },
  }),
  card(
    'SCREW.LENGTH.COMMON',
    T,
    [
      size,
      param('grips', numbers(LENGTH, { atLeast: 0 }), { symbol: 'G_i' }),
      param('grip_tolerances', DEVIATIONS, { symbol: 't_i' }),
      param('hole_depths', numbers(LENGTH, { above: 0 }), { symbol: 'H_i' }),
      ratio,
      bottomGap,
      relief,
      reliefTol,
      end,
    ],
    commonLengths,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'length', unit: 'mm' },
          { name: 'joints passed', unit: '' },
          { name: 'joints', unit: '' },
        ],
      },
    },
  ),
];
