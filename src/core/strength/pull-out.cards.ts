import { card, type Calculation } from '../card';

import { numeric, param } from '../read/params';
import { FORCE, LENGTH, RATIO, SHARE, STRESS } from '../read/quantity';
import { ofMaterial, SCREW } from '../read/sources';
import * as F from './pull-out';
import { FLAT_HEAD_DIAMETER, TAPPING_SCREW } from './sources';

const T = 'Strength (estimates)';
const yieldStress = param('yield_stress', ofMaterial(STRESS, 'strength'), { symbol: 'σ', above: 0 });
const safety = param('safety', numeric(RATIO), { symbol: 'S', atLeast: 1, default: 1 });
const force = (name: string) => ({ shape: 'number', name, symbol: 'F', unit: 'N' }) as const;

export const PULL_OUT_CARDS: readonly Calculation[] = [
  card(
    'PULLOUT',
    T,
    [
      param('size', TAPPING_SCREW),
      param('engagement', numeric(LENGTH), { symbol: 'L', above: 0 }),
      yieldStress,
      safety,
      param('thread_share', ofMaterial(SHARE, 'thread share'), { symbol: 'e', above: 0, atMost: 1, default: 1 }),
    ],
    F.pullOutN,
    { result: force('thread pull-out') },
  ),
  card(
    'PULLOUT.BOSS',
    T,
    [
      param('od', numeric(LENGTH), { symbol: 'D', above: 0 }),
      param('size', SCREW, { relation: { holds: [['<', '.majorMaxMm', 'od']], words: 'a screw with a major diameter below od' } }),
      yieldStress,
      safety,
    ],
    F.bossTearN,
    { result: force('force that tears the boss') },
  ),
  card(
    'PULLOUT.SEAT',
    T,
    [
      param('head_diameter', FLAT_HEAD_DIAMETER, { symbol: 'd_k', above: 0 }),
      param('seat', numeric(LENGTH), { symbol: 's', above: 0 }),
      yieldStress,
      safety,
    ],
    F.seatShearN,
    { result: force('force that shears the seat') },
  ),
  card(
    'SCREW.COUNT',
    T,
    [
      param('load', numeric(FORCE), { symbol: 'F', above: 0 }),
      param('pullout', numeric(FORCE), { symbol: 'F_p', above: 0 }),
      param('safety', numeric(RATIO), { symbol: 'S', atLeast: 1, default: 2 }),
    ],
    F.screwCount,
    { result: { shape: 'number', name: 'screws', symbol: 'n', unit: '' } },
  ),
];
