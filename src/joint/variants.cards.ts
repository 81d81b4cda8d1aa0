import { card, type Calculation, type Param } from '../core/card';
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

export const VARIANT_CARDS: readonly Calculation[] = [
  card('VARIANT.GRID', T, [list(1), list(2), list(3), list(4), list(5), list(6), list(7), list(8)], variantGrid, {
    result: { shape: 'table', columns: [] },
  }),
  card(
    'VARIANT.RANK',
    T,
    [table, directions, param('weights', numbers(RATIO, { above: 0 }), { group: 'weights' }), param('states', BLOCK, { blank: 'absent' })],
    variantRanks,
    { result: { shape: 'column', name: 'rank', unit: '' } },
  ),
  card('VARIANT.FRONT', T, [table, directions], variantFront, { result: { shape: 'column', name: 'not beaten', unit: '' } }),
];
