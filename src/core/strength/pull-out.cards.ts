import { card, type Card } from '../card';
import type { Source } from '../kinds';
import { numeric, param } from '../read/params';
import { FORCE, LENGTH, RATIO, SHARE, STRESS } from '../read/quantity';
import { ofMaterial, SCREW } from '../read/sources';
import * as F from './pull-out';
import { FLAT_HEAD_DIAMETER, TAPPING_SCREW } from './sources';

const T = 'Strength (estimates)';
const yieldStress = param('yield_stress', ofMaterial(STRESS, 'strength'), { symbol: 'σ', above: 0 });
const safety = param('safety', numeric(RATIO), { symbol: 'S', atLeast: 1, default: 1 });
const SHEAR_CYLINDER: readonly Source[] = [
  { title: 'shear yield σ/√3 (von Mises)', held: 'derived' },
  { title: 'design guides for moulded resins: cylinder at the pitch diameter over the full thread', held: 'from memory' },
  { title: 'where less than half of the flank depth bites, less of the cylinder is plastic: min(1, 2·e)', held: 'derived' },
  { title: 'ISO 1478 and ASME B18.6.3 thread limits', held: 'read in secondary copies' },
];
const force = (name: string) => ({ shape: 'number', name, symbol: 'F', unit: 'N' }) as const;

export const PULL_OUT_CARDS: readonly Card[] = [
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
    {
      result: force('thread pull-out'),
      kind: 'handbook formula',
      sources: SHEAR_CYLINDER,
      example: { args: ['ST2.9', 6, 40], result: 1105.7 },
      caution:
        'An estimate for a short pull at room temperature: no weld line, no creep, no overheated ' +
        'thread. Other guides take 0.5·σ or the major diameter (−13 % to +14 %). Confirm by test.',
    },
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
    {
      result: force('force that tears the boss'),
      kind: 'handbook formula',
      sources: [{ title: 'net tension on the ring between outside and thread', held: 'derived' }],
      example: { args: [6, 'ST2.9', 40], result: 866.8 },
      caution: 'An estimate: even stress over the ring, no notch at the thread or the root, no weld line. Confirm by test.',
    },
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
    {
      result: force('force that shears the seat'),
      kind: 'handbook formula',
      sources: [{ title: 'shear yield σ/√3 (von Mises) on the cylinder under the head', held: 'derived' }],
      example: { args: [5.3, 2, 40], result: 769.05 },
      caution: 'An estimate: the seat also bends and creeps, and a knit line around the hole weakens it. Confirm by test.',
    },
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
    {
      result: { shape: 'number', name: 'screws', symbol: 'n', unit: '' },
      kind: 'common practice',
      sources: [{ title: 'load shared evenly by the screws', held: 'common practice' }],
      example: { args: [2000, 1105.7], result: 4 },
      caution: 'An estimate for a short-term load that all screws share evenly; under a lasting load plastic creeps and the joint relaxes.',
    },
  ),
];
