import { GEOMETRY, type CardWords } from '../card';
import { type Source } from '../kinds';

const BEAM: readonly Source[] = [
  { title: 'Roark’s Formulas for Stress and Strain, 7th ed., table 8.1, cases 2d and 2e', held: 'from memory' },
];
const RIM_CAUTION =
  'An estimate: rigid screws, and a rim that only bends. Plastic creeps: for a lasting load enter the creep modulus. Test it.';
const SEAL_CAUTION = 'Test the seal: no degree of protection is claimed. Compression set and swelling of the rubber are not computed.';
const VOLUME: readonly Source[] = [...GEOMETRY, { title: 'rubber keeps its volume: the cord thins by 1/√(1 + stretch)', held: 'derived' }];

export const SEAL_WORDS: Readonly<Record<string, CardWords>> = {
  'RIM.SAG': { kind: 'handbook formula', sources: BEAM, example: { args: [40, 0.5, 2400, 80], result: 0.01736 }, caution: RIM_CAUTION },
  'RIM.PITCH': { kind: 'handbook formula', sources: BEAM, example: { args: [0.05, 0.5, 2400, 80], result: 52.11 }, caution: RIM_CAUTION },
  'SEAL.SQUEEZE': {
    kind: 'geometry',
    sources: VOLUME,
    example: { args: [2, 0.08, 1.5, 0.05, 0.1, 0.1, '2 %'], result: [[0.0795, 0.192, 0.2959]] },
    caution: SEAL_CAUTION,
  },
  'SEAL.FILL': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [2, 2.8, 1.5, 0.08, 0.05, 0.05], result: 0.8521 },
    caution: SEAL_CAUTION,
  },
  'SEAL.STRETCH': { kind: 'geometry', sources: GEOMETRY, example: { args: [50, 51], result: 0.02 }, caution: SEAL_CAUTION },
};
