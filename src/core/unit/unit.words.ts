import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../card';

const INTERNATIONAL_INCH = [{ title: 'international inch of 1959: 25.4 mm exactly', held: 'from memory' }];

export const UNIT_WORDS: Readonly<Record<string, CardWords>> = {
  'LENGTH.MM': { kind: 'geometry', sources: INTERNATIONAL_INCH, example: { args: ['0.167 in + 0.25 mm'], result: 4.4918 } },
  'ANGLE.DEG': { kind: 'geometry', sources: GEOMETRY, example: { args: ["0°30'"], result: 0.5 } },
  DUAL: { kind: 'geometry', sources: INTERNATIONAL_INCH, example: { args: ['0.167 in'], result: '4.24 mm (0.167 in)' }, notLive: 'text' },
  LIMITS: { kind: 'geometry', sources: GEOMETRY, example: { args: ['10 -0.2/-0.4'], result: [[10, 9.6, 9.8]] }, notLive: 'it reads text' },
  'UNIT.CHECK': {
    kind: 'common practice',
    sources: COMMON_PRACTICE,
    example: { args: [3.15, 'board edge'], result: 'looks like inches (then 80.01 mm); board edge is usually 12 to 500 mm' },
    notLive: 'a sentence',
    caution: 'The bands are wide: ok means only that no obvious slip was found.',
  },
};
