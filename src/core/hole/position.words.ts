import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';
import { type Source } from '../kinds';

const APPENDIX: readonly Source[] = [
  { title: 'ASME Y14.5 (1994 and later), non-mandatory appendix B', held: 'read in secondary copies; edition from memory' },
];

export const POSITION_WORDS: Readonly<Record<string, CardWords>> = {
  'HOLE.FLOATING': {
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [6, 0.44], result: 6.44 },
    caution: 'At worst case the screw just passes, with no clearance left.',
  },
  'HOLE.FIXED': {
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [6, 0.22, 0.22], result: 6.44 },
    caution: 'Only for a tolerance zone of the boss that is projected through the part that the screw passes; else use HOLE.PROJECTED.',
  },
  'HOLE.PROJECTED': {
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [4, 0.2, 0.2, 2, 6], result: 4.5333 },
    caution: 'For a boss zone that is not projected; for a projected one HOLE.FIXED needs less. At worst case no clearance is left.',
  },
  'POSITION.ZONE': { kind: 'geometry', sources: GEOMETRY, example: { args: [0.1], result: 0.283 } },
  'PIN.RATIO': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: [12, 2.4], result: 5 } },
  'PIN.DEFLECTION': {
    kind: 'handbook formula',
    sources: [{ title: 'cantilever under a uniformly distributed load, q·L⁴/(8·E·I)', held: 'derived' }],
    example: { args: [10, 2.4, 10], result: 0.0877 },
    caution: 'An estimate: the pressure difference across the pin is seldom known, and the mould steel that holds the pin gives too.',
  },
};
