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
    caution: 'The screw just passes, without play, when everything is at its worst.',
  },
  'HOLE.FIXED': {
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [6, 0.22, 0.22], result: 6.44 },
    caution: 'Holds for a boss zone that is projected over the part the screw goes through; without that the hole must be larger.',
  },
  'HOLE.PROJECTED': {
    kind: 'handbook formula',
    sources: APPENDIX,
    example: { args: [4, 0.2, 0.2, 2, 6], result: 4.5333 },
    caution: 'For a boss zone that is not projected: with a projected one HOLE.FIXED asks for less. Nothing is left over at the limit.',
  },
  'POSITION.ZONE': { kind: 'geometry', sources: GEOMETRY, example: { args: [0.1], result: 0.283 } },
  'PIN.RATIO': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: [12, 2.4], result: 5 } },
  'PIN.DEFLECTION': {
    kind: 'handbook formula',
    sources: [{ title: 'cantilever under an even load, q·L⁴/(8·E·I)', held: 'derived' }],
    example: { args: [10, 2.4, 10], result: 0.0877 },
    caution: 'An estimate: the pressure difference across the pin is seldom known, and the seat of the pin yields too.',
  },
};
