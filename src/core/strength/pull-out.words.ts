import { type Source } from '../kinds';
import type { CardWords } from '../card';

const SHEAR_CYLINDER: readonly Source[] = [
  { title: 'shear yield σ/√3 (von Mises)', held: 'derived' },
  { title: 'design guides for moulded resins: cylinder at the pitch diameter over the full thread', held: 'from memory' },
  { title: 'where less than half of the flank depth bites, less of the cylinder is plastic: min(1, 2·e)', held: 'derived' },
  { title: 'ISO 1478 and ASME B18.6.3 thread limits', held: 'read in secondary copies' },
];

export const PULL_OUT_WORDS: Readonly<Record<string, CardWords>> = {
  PULLOUT: {
    kind: 'handbook formula',
    sources: SHEAR_CYLINDER,
    example: { args: ['ST2.9', 6, 40], result: 1105.7 },
    caution:
      'A short-term estimate at room temperature: no weld line, no creep, no overheated ' +
      'thread. Other guides take 0.5·σ or the major diameter (−13 % to +14 %). Confirm by test.',
  },
  'PULLOUT.BOSS': {
    kind: 'handbook formula',
    sources: [{ title: 'net tension on the ring between outside and thread', held: 'derived' }],
    example: { args: [6, 'ST2.9', 40], result: 866.8 },
    caution: 'An estimate: uniform stress over the ring, no notch at the thread or the root, no weld line. Confirm by test.',
  },
  'PULLOUT.SEAT': {
    kind: 'handbook formula',
    sources: [{ title: 'shear yield σ/√3 (von Mises) on the cylinder under the head', held: 'derived' }],
    example: { args: [5.3, 2, 40], result: 769.05 },
    caution: 'An estimate: the seat also bends and creeps, and a weld line at the hole weakens it. Confirm by test.',
  },
  'SCREW.COUNT': {
    kind: 'common practice',
    sources: [{ title: 'load shared evenly by the screws', held: 'common practice' }],
    example: { args: [2000, 1105.7], result: 4 },
    caution: 'An estimate for a short-term load that all screws share evenly; under a lasting load plastic creeps and the joint relaxes.',
  },
};
