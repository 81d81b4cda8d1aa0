import type { CardWords } from '../card';

const BENT =
  'An estimate: a strip without slots, of one thickness, as wide as the part of the board that carries the force. Real ends lie ' +
  'between simple and clamped. The stress in components and solder joints, and fatigue, are not computed.';

export const BENDING_WORDS: Readonly<Record<string, CardWords>> = {
  'BOARD.SAG': {
    kind: 'handbook formula',
    sources: [
      {
        title: 'beam with a central force, F·L³/(48·E·I) on simple supports, F·L³/(192·E·I) with clamped ends',
        held: 'from memory, integrated in a test',
      },
    ],
    example: { args: [10, 60, 20, 1.6, 20000], result: 0.32959 },
    caution: BENT,
  },
  'BOARD.STRAIN': {
    kind: 'handbook formula',
    sources: [
      {
        title: 'beam with a central force, moment F·L/4 on simple supports, F·L/8 with clamped ends',
        held: 'from memory, integrated in a test',
      },
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
      { title: 'corners: Blevins, ν 0.3: 7.12, 8.92, 9.29, 9.39 at aspect ratios of 1, 1.5, 2, 2.5, linear between', held: 'from memory' },
    ],
    example: { args: [100, 80, 1.6, 60, 20000, 0.2, 'simple'], result: 391.942 },
    caution:
      'An estimate from plate bending alone: slots and heavy components change it. It agrees with the Ritz method within 1 % for ' +
      'clamped edges, and within 5 % for corners up to ν 0.4. The response to vibration, and fatigue, are not computed.',
  },
};
