import type { CardWords } from '../card';

const BENT =
  'An estimate: a strip as wide as what carries, whole and of one thickness. Real ends lie between simple and clamped. What parts and ' +
  'solder bear, and fatigue, are not computed.';

export const BENDING_WORDS: Readonly<Record<string, CardWords>> = {
  'BOARD.SAG': {
    kind: 'handbook formula',
    sources: [
      {
        title: 'beam with a force in the middle, F·L³/(48·E·I), with clamped ends F·L³/(192·E·I)',
        held: 'from memory, integrated in a test',
      },
    ],
    example: { args: [10, 60, 20, 1.6, 20000], result: 0.32959 },
    caution: BENT,
  },
  'BOARD.STRAIN': {
    kind: 'handbook formula',
    sources: [
      { title: 'beam with a force in the middle, moment F·L/4, with clamped ends F·L/8', held: 'from memory, integrated in a test' },
    ],
    example: { args: [10, 60, 20, 1.6, 20000], result: 878.906 },
    caution: BENT,
  },
  'BOARD.FREQUENCY': {
    kind: 'handbook formula',
    sources: [
      { title: 'thin plate, exact for simple edges', held: 'derived' },
      {
        title: 'clamped: Warburton 1954, as in Blevins, Formulas for Natural Frequency and Mode Shape, 1979: G 1.506, H and J 1.248',
        held: 'from memory',
      },
      { title: 'corners: Blevins, ν 0.3: 7.12, 8.92, 9.29, 9.39 at sides 1, 1.5, 2, 2.5 : 1, a line between', held: 'from memory' },
    ],
    example: { args: [100, 80, 1.6, 60, 20000, 0.2, 'simple'], result: 391.942 },
    caution:
      'An estimate: nothing but bending; slots and heavy parts change it. Clamped within 1 %, corners up to ν 0.4 within 5 % of Ritz’s ' +
      'method. What vibration and fatigue do to a board is not computed.',
  },
};
