import { COMMON_PRACTICE, GEOMETRY, type CardWords } from '../core/card';

const NOT_COMPARED =
  'A row that lacks a number in any column, such as a header, is shown as – and not ' +
  'compared; a bare 0 is a blank, so write a true zero with its unit.';

export const VARIANT_WORDS: Readonly<Record<string, CardWords>> = {
  'VARIANT.GRID': {
    kind: 'geometry',
    sources: [{ title: 'every combination', held: 'derived' }],
    example: {
      args: [
        [['screw'], ['ST2.9'], ['ST3.5']],
        [['wall'], [2], [2.5]],
      ],
      result: [
        ['screw', 'wall'],
        ['ST2.9', 2],
        ['ST2.9', 2.5],
        ['ST3.5', 2],
        ['ST3.5', 2.5],
      ],
    },
    notLive: 'a table of its own',
    caution: 'No header row unless every list is headed by a joint input.',
  },
  'VARIANT.RANK': {
    kind: 'common practice',
    sources: COMMON_PRACTICE,
    example: {
      args: [
        [
          [2.5, 10],
          [2, 12],
          [2.2, 9],
        ],
        [['max'], ['min']],
        [[2], [1]],
      ],
      result: [[1], [3], [2]],
    },
    notLive: 'a column as long as its table',
    caution: `The weights decide, and adding a variant can change the ranks of the others. ${NOT_COMPARED}`,
  },
  'VARIANT.FRONT': {
    kind: 'geometry',
    sources: GEOMETRY,
    example: {
      args: [
        [
          [2.5, 10],
          [2, 12],
          [2.2, 9],
        ],
        [['max'], ['min']],
      ],
      result: [[true], [false], [true]],
    },
    notLive: 'a column as long as its table',
    caution: NOT_COMPARED,
  },
};
