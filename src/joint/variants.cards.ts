import { card, COMMON_PRACTICE, GEOMETRY, type Card, type Param } from '../core/card';
import type { Cell } from '../core/kinds';
import { VALUES, words } from '../core/read/lists';
import { numbers } from '../core/read/lists';
import { BLOCK, param } from '../core/read/params';
import { RATIO } from '../core/read/quantity';
import { variantGrid } from './grid';
import { variantFront, variantRanks, type Direction } from './ranking';

const T = 'Checks, variants, trace';
const table = param('table', BLOCK);
const directions = param('directions', words<Direction>('direction', { max: ['maximum'], min: ['minimum'] }), { group: 'directions' });
// each list stands for itself: lengths need not agree
const list = (number: number): Param<readonly Cell[] | undefined> =>
  param(`list${number}`, VALUES, { group: `list${number}`, ...(number === 1 ? {} : { blank: 'absent' as const }) });
const NOT_COMPARED =
  'A row without a number in every column, a header say, is shown as – and not ' +
  'compared; a bare 0 is a blank, so write a true zero with its unit.';

export const VARIANT_CARDS: readonly Card[] = [
  card('VARIANT.GRID', T, [list(1), list(2), list(3), list(4), list(5), list(6), list(7), list(8)], variantGrid, {
    result: { shape: 'table', columns: [] },
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
  }),
  card(
    'VARIANT.RANK',
    T,
    [table, directions, param('weights', numbers(RATIO, { above: 0 }), { group: 'weights' }), param('states', BLOCK, { blank: 'absent' })],
    variantRanks,
    {
      result: { shape: 'column', name: 'rank', unit: '' },
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
      caution: `The weights decide, and one variant more can change the ranks of the others. ${NOT_COMPARED}`,
    },
  ),
  card('VARIANT.FRONT', T, [table, directions], variantFront, {
    result: { shape: 'column', name: 'not beaten', unit: '' },
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
  }),
];
