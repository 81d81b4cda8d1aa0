import type { CardWords } from '../card';

const TABLE = { kind: 'standard table' } as const;

export const TOLERANCE_WORDS: Readonly<Record<string, CardWords>> = {
  'TOL.IT': {
    ...TABLE,
    sources: [
      {
        title: 'ISO 286-1, IT5 to IT16 up to 500 mm',
        held: 'read in 1 secondary copy; IT15, IT16 and sizes above 315 mm from memory, cross-checked',
      },
    ],
    example: { args: [25, 'IT11'], result: 0.13 },
  },
  'TOL.GENERAL': {
    ...TABLE,
    sources: [{ title: 'ISO 2768-1:1989, linear sizes', held: 'read in 3 secondary copies' }],
    example: { args: [30, 'm'], result: 0.2 },
    caution: 'Not written for mouldings: for those use TOL.MOULDED.',
  },
  'TOL.MOULDED': {
    ...TABLE,
    sources: [
      { title: 'DIN 16901:1982, group 130, withdrawn 2009', held: 'read in 3 secondary copies, two of them related' },
      {
        title: 'DIN 16742:2013, group TG6; ISO 20457:2018 has the same row',
        held: 'read in 2 secondary copies; same tool half and sizes above 250 mm in 1',
      },
    ],
    example: { args: [40, 'DIN 16742-TG6'], result: 0.37 },
    caution:
      'DIN 16901 was withdrawn in 2009. ISO 20457 was under revision in March 2026 (final draft): name the edition on the drawing. ' +
      'Enter other groups as a range, from your own copy of the standard.',
  },
};
