import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';

export const RECESS_WORDS: Readonly<Record<string, CardWords>> = {
  'RECESS.DIAMETER': { kind: 'geometry', sources: GEOMETRY, example: { args: ['0.167 in', 0.25], result: 4.4918 } },
  'RECESS.DEPTH': { kind: 'geometry', sources: GEOMETRY, example: { args: [5.5, 2.5], result: 3 } },
  'RECESS.SEAT': { kind: 'geometry', sources: GEOMETRY, example: { args: [5.5, 3], result: 2.5 } },
  'RECESS.DEPTH.MIN': { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: ['ST2.9 ISO 7049', 0.6], result: 3 } },
  'RECESS.FLUSH': { kind: 'geometry', sources: GEOMETRY, example: { args: [3, 2.4], result: 0.6 } },
  'RECESS.FLOAT': { kind: 'geometry', sources: GEOMETRY, example: { args: [5.6, 3.5, 2.76, 0.1], result: 6.54 } },
  'RECESS.CONE': {
    kind: 'geometry',
    sources: [...GEOMETRY, { title: 'included angles: ISO 7721-1 90°, ASME B18.6.3 82°, DIN 7982 80°', held: 'read in secondary copies' }],
    example: { args: ['M3 countersunk', 3.4], result: 1.45 },
    caution: 'A countersunk head wedges its seat open; prefer flat-seated heads in plastic.',
  },
  'RECESS.TOOL': {
    kind: 'geometry',
    sources: [...GEOMETRY, { title: 'margin of 0.5 mm', held: 'common practice' }],
    example: { args: [8, '1/4 in hex'], result: 0.168 },
  },
};
