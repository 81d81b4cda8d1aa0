import type { CardWords } from '../card';

const held = 'read in secondary copies; each value says how in SCREW.CARD';
const THREADS = [{ title: 'ISO 965-2 (6g), ISO 1478, ASME B1.1 (2A), ASME B18.6.3 (AB, B)', held }];
const HEADS = [{ title: 'ISO 7045, 14583, 1580, 1207, 4762, 7380-1, 7046, 7047, 7049, 14585, 7050, 7051; DIN 7981; ASME B18.6.3', held }];
const LENGTHS = [
  {
    title: 'ISO 888, ISO 7049, ASME B18.6.3; ISO 4759-1 limits',
    held: 'read in secondary copies; inch list and some tolerances from memory',
  },
];
const LOOKUP_WORDS = { kind: 'standard table' } as const;

export const SCREW_WORDS: Readonly<Record<string, CardWords>> = {
  'SCREW.MAJOR': { ...LOOKUP_WORDS, sources: THREADS, example: { args: ['ST2.9'], result: 2.9 } },
  'SCREW.ROOT': { ...LOOKUP_WORDS, sources: THREADS, example: { args: ['ST2.9'], result: 2.18 } },
  'SCREW.PITCH': { ...LOOKUP_WORDS, sources: THREADS, example: { args: ['M3'], result: 0.5 } },
  'SCREW.POINT': {
    ...LOOKUP_WORDS,
    sources: [
      {
        title: 'ISO 1478 y; ASME B18.6.3 type B point taper; ISO 4753 two pitches for machine screws',
        held: 'read in secondary copies; ISO 4753 from memory',
      },
    ],
    example: { args: ['ST2.9', 'flat'], result: 2.1 },
  },
  'SCREW.HEAD.DIAMETER': { ...LOOKUP_WORDS, sources: HEADS, example: { args: ['M3', 'pan'], result: 5.6 } },
  'SCREW.HEAD.HEIGHT': { ...LOOKUP_WORDS, sources: HEADS, example: { args: ['M3', 'pan'], result: 2.4 } },
  'SCREW.LENGTHS': {
    ...LOOKUP_WORDS,
    sources: LENGTHS,
    example: { args: ['ST2.9'], result: [[4.5], [6.5], [9.5], [13], [16], [19], [22], [25], [32], [38], [45], [50]] },
  },
  'SCREW.LENGTH.TOL': { ...LOOKUP_WORDS, sources: LENGTHS, example: { args: ['ST2.9', 13, 'flat'], result: [[-0.8, 0]] } },
  'SCREW.CARD': {
    ...LOOKUP_WORDS,
    sources: [...THREADS, ...HEADS],
    example: { args: ['ST2.9', 'pan'], row: 3, values: ['pitch P', 1.1, 'mm', 'approx', 'ISO 1478:1999', 'read in 3 secondary copies'] },
    notLive: 'text and values of standards',
  },
  'HOLE.CLEARANCE': {
    ...LOOKUP_WORDS,
    sources: [{ title: 'ISO 273:1979; ASME B18.2.8-1999; DIN 74-1 form C (withdrawn)', held }],
    example: { args: ['M3'], result: 3.4 },
  },
  MATERIAL: {
    kind: 'common practice',
    sources: [{ title: 'collected ranges by ISO 1043 symbol', held: 'read in secondary copies or from memory; see MATERIAL.TABLE' }],
    example: { args: ['ABS', 'strength'], result: 45 },
    notLive: 'a start value, as it was',
    caution: 'A typical value inside a range: the data sheet of the grade governs.',
  },
  'MATERIAL.TABLE': {
    kind: 'common practice',
    sources: [{ title: 'collected ranges by ISO 1043 symbol', held: 'each row says how' }],
    example: {
      args: ['ABS'],
      row: 3,
      values: ['strength', 45, 38, 50, 'MPa', 'yield', 'range merged from secondary tables and memory, typical value from memory'],
    },
    notLive: 'text and values',
  },
};
