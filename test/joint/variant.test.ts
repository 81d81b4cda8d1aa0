import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { JOINT_INPUT_NAMES } from '../../src/joint/inputs';
import { refusal, value } from '../kit/ask';
import { SEED } from '../kit/seed';

const seeded = { seed: SEED };
const column = (...cells: unknown[]): unknown[][] => cells.map(cell => [cell]);
const upTo = (n: number): unknown[][] => Array.from({ length: n }, (_, i) => [i + 1]);
const rows = (id: string, ...args: unknown[]): unknown[][] => value(id, ...args) as unknown[][];
const flat = (id: string, ...args: unknown[]): unknown[] => rows(id, ...args).flat();

describe('every combination, by hand', () => {
  test('the last list changes fastest; rows and columns are read alike; lists of any length', () => {
    expect(rows('VARIANT.GRID', column('a', 'b'), [[1, 2, 3]])).toEqual([
      ['a', 1],
      ['a', 2],
      ['a', 3],
      ['b', 1],
      ['b', 2],
      ['b', 3],
    ]);
    expect(rows('VARIANT.GRID', 'a')).toEqual([['a']]);
    expect(rows('VARIANT.GRID', column(true, 'b'))).toEqual([[true], ['b']]);
  });

  test('a list left out in between, and blanks at the end of a list', () => {
    expect(rows('VARIANT.GRID', column('a', 'b', '', 0), null, column(1, 2, null))).toEqual([
      ['a', 1],
      ['a', 2],
      ['b', 1],
      ['b', 2],
    ]);
    expect(rows('VARIANT.GRID', column('a', 'b'), column(0), column('', null))).toEqual([['a'], ['b']]);
  });

  test('lists headed by joint inputs keep the names and feed JOINT.TABLE', () => {
    const grid = rows(
      'VARIANT.GRID',
      column('Screw', 'ST2.9', 'ST3.5'),
      column('head', 'pan'),
      column('wall', 2, 2.5),
      column('board plane', 5.5),
      column('hole', 4),
      column('boss height', 14),
      column('material', 'ABS'),
    );
    expect(grid[0]).toEqual(['screw', 'head', 'wall', 'board plane', 'hole', 'boss height', 'material']);
    expect(grid).toHaveLength(5);
    const table = rows('JOINT.TABLE', grid, [['feature wall', 'boss OD']]);
    expect(table.map(row => (row as number[]).map(x => (typeof x === 'number' ? Number(x.toFixed(4)) : x)))).toEqual([
      ['feature wall (mm)', 'boss OD (mm)'],
      [1.2, 6.38],
      [1.5, 6.38],
      [1.2, 7.766],
      [1.5, 7.766],
    ]);
  });

  test('every joint input is known as a head', () => {
    for (const name of JOINT_INPUT_NAMES) expect(rows('VARIANT.GRID', column(name, 1))).toEqual([[name], [1]]);
  });
});

describe('every combination, of any lists', () => {
  const list = fc.uniqueArray(fc.integer({ min: 1, max: 99 }), { minLength: 1, maxLength: 4 });
  test('as many rows as the product of the lists, each once, each cell from its list', () => {
    fc.assert(
      fc.property(fc.array(list, { minLength: 1, maxLength: 5 }), lists => {
        const grid = rows('VARIANT.GRID', ...lists.map(values => column(...values)));
        expect(grid).toHaveLength(lists.reduce((product, { length }) => product * length, 1));
        expect(new Set(grid.map(row => row.join())).size).toBe(grid.length);
        for (const row of grid) row.forEach((cell, j) => expect(lists[j]).toContain(cell));
      }),
      seeded,
    );
  });
});

describe('every combination, refused', () => {
  test('more than 5,000 rows or 20,000 cells', () => {
    expect(rows('VARIANT.GRID', upTo(50), upTo(100))).toHaveLength(5000);
    expect(refusal('VARIANT.GRID', upTo(50), upTo(100), column(1, 2))).toMatch(/^#VALUE! the lists make 10000 combinations; at most 5000/);
    expect(refusal('VARIANT.GRID', upTo(50), upTo(100), 1, 1, 1)).toMatch(/^#VALUE! the result has 25000 cells; at most 20000/);
  });

  test('a blank inside a list, some lists headed and some not, a name twice, a name alone, an error', () => {
    expect(refusal('VARIANT.GRID', column(1, 0, 2))).toMatch(/^#VALUE! list1 row 2 is 0: a blank is not a value; write "0 mm"/);
    expect(refusal('VARIANT.GRID', column('wall', 2), column(1, 2))).toMatch(
      /^#VALUE! list2 begins with 1, which is not a joint input, but list1 with wall/,
    );
    expect(refusal('VARIANT.GRID', column('wal', 2), column('screw', 'M3'))).toMatch(
      /^#VALUE! list1 begins with wal, which is not a joint input, but list2 with screw/,
    );
    expect(refusal('VARIANT.GRID', column('wall', 2), column('wall', 3))).toMatch(/^#VALUE! list2 is headed wall, like a list before it/);
    expect(refusal('VARIANT.GRID', column('wall'), column('screw', 'M3'))).toMatch(/^#VALUE! list1 has the name wall and no values/);
    expect(refusal('VARIANT.GRID', column(1, { cellError: '#REF!' }))).toMatch(/^#REF! list1 row 2 is #REF!/);
    expect(refusal('VARIANT.GRID', column(1, NaN))).toMatch(/^#VALUE! list1 row 2 is NaN: give a number or text/);
    expect(refusal('VARIANT.GRID', column(1, { name: 'a picture' }))).toMatch(
      /^#VALUE! list1 row 2 is a value of another kind: give a number or text/,
    );
    expect(refusal('VARIANT.GRID', null, column(1))).toMatch(/^#VALUE! list1 is blank/);
    expect(
      refusal('VARIANT.GRID', [
        [1, 2],
        [3, 4],
      ]),
    ).toMatch(/^#VALUE! list1: give one row or one column/);
  });
});

describe('ranks, by hand', () => {
  // strength more is better, mass less: scaled 1, 0, 0.4 and 2/3, 0, 1
  const TABLE = [
    [2.5, 10],
    [2, 12],
    [2.2, 9],
  ];

  test('weights decide', () => {
    expect(flat('VARIANT.RANK', TABLE, [['max', 'min']], [[2, 1]])).toEqual([1, 3, 2]);
    expect(flat('VARIANT.RANK', TABLE, [['max', 'min']], [[1, 2]])).toEqual([2, 3, 1]);
    expect(flat('VARIANT.RANK', TABLE, [['min', 'max']], 1)).toEqual([3, 1, 2]);
    expect(flat('VARIANT.RANK', TABLE, 'max', 1)).toEqual([1, 2, 3]);
  });

  test('ties share a rank and the next one is left out', () => {
    expect(flat('VARIANT.RANK', column(3, 1, 3, 2), 'max', 1)).toEqual([1, 4, 1, 3]);
    expect(
      flat(
        'VARIANT.RANK',
        [
          [1, 2],
          [2, 1],
          [1, 1],
        ],
        'max',
        1,
      ),
    ).toEqual([1, 1, 3]);
    expect(flat('VARIANT.RANK', column(0.1 + 0.2, 0.3, 0.2), 'max', 1)).toEqual([1, 1, 3]);
    expect(flat('VARIANT.RANK', column(5, 5), 'min', 1)).toEqual([1, 1]);
  });

  test('a column that says nothing changes nothing', () => {
    expect(
      flat(
        'VARIANT.RANK',
        TABLE.map(row => [...row, 7]),
        [['max', 'min', 'max']],
        [[2, 1, 9]],
      ),
    ).toEqual([1, 3, 2]);
  });

  test('what fails comes last, what was not checked before it; a review is no worse than a pass', () => {
    const best = column(9, 8, 7, 6, 5);
    expect(flat('VARIANT.RANK', best, 'max', 1, column('fail', 'not checked', 'review', 'pass', 'pass'))).toEqual([5, 4, 1, 2, 3]);
    expect(flat('VARIANT.RANK', best, 'max', 1, column('pass', 'good', null, { cellError: '#N/A' }, 'fail'))).toEqual([1, 2, 3, 4, 5]);
    expect(flat('VARIANT.RANK', column(1, 2), 'max', 1, column('Pass ', 'FAIL'))).toEqual([1, 2]);
    expect(flat('VARIANT.RANK', column(1, 2), 'max', 1, 'fail')).toEqual([2, 1]);
  });

  test('a header, a result without value, a blank or a bare 0 is not compared; a zero with its unit is', () => {
    expect(flat('VARIANT.RANK', column('play (mm)', 2, 'no value: hole is 0', '', 0, '0 mm', 1), 'max', 1)).toEqual([
      '–',
      1,
      '–',
      '–',
      '–',
      3,
      2,
    ]);
    expect(flat('VARIANT.RANK', [['1 in'], [20]], 'max', 1)).toEqual([1, 2]);
  });

  test('one blank in the last row leaves the row where it is; a date or a word is no number', () => {
    expect(
      flat(
        'VARIANT.RANK',
        [
          [1, 2],
          [2, 0],
        ],
        'max',
        1,
      ),
    ).toEqual([1, '–']);
    expect(flat('VARIANT.RANK', column(1, true, 'wide', '3 mm wide', 2), 'max', 1)).toEqual([2, '–', '–', '–', 1]);
    expect(flat('VARIANT.RANK', column(2, 3), ' Max ', 1)).toEqual([2, 1]);
  });

  test('blank rows at the end of table and states are left out', () => {
    expect(flat('VARIANT.RANK', column(1, 2, 0, null), 'max', 1)).toEqual([2, 1]);
    expect(flat('VARIANT.RANK', column(1, 2, 0, null), 'max', 1, column('pass', 'pass', '', 0))).toEqual([2, 1]);
    expect(flat('VARIANT.RANK', column(1, 2, 3, 0), 'max', 1, column('pass', 'fail', '', 0))).toEqual([1, 3, 2]);
  });
});

describe('not beaten, by hand', () => {
  test('better somewhere and nowhere worse beats', () => {
    expect(
      flat(
        'VARIANT.FRONT',
        [
          [2.5, 10],
          [2, 12],
          [2.2, 9],
        ],
        [['max', 'min']],
      ),
    ).toEqual([true, false, true]);
    expect(
      flat(
        'VARIANT.FRONT',
        [
          [1, 1],
          [1, 2],
          [2, 1],
        ],
        'max',
      ),
    ).toEqual([false, true, true]);
    expect(
      flat(
        'VARIANT.FRONT',
        [
          [1, 1],
          [1, 2],
          [2, 1],
        ],
        'min',
      ),
    ).toEqual([true, false, false]);
  });

  test('ties stay, and so does a difference of rounding', () => {
    expect(
      flat(
        'VARIANT.FRONT',
        [
          [1, 2],
          [1, 2],
        ],
        'max',
      ),
    ).toEqual([true, true]);
    expect(flat('VARIANT.FRONT', column(0.1 + 0.2, 0.3), 'max')).toEqual([true, true]);
  });

  test('a row that is not compared beats nothing', () => {
    expect(
      flat(
        'VARIANT.FRONT',
        [
          ['mass', 'play'],
          [9, 0],
          [1, 2],
          [2, 1],
        ],
        'max',
      ),
    ).toEqual(['–', '–', true, true]);
  });
});

describe('ranks and front together', () => {
  const tables = fc
    .integer({ min: 1, max: 4 })
    .chain(columns =>
      fc.array(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: columns, maxLength: columns }), { minLength: 1, maxLength: 12 }),
    );

  test('the first in rank is not beaten, and something is not beaten', () => {
    fc.assert(
      fc.property(tables, table => {
        const ranks = flat('VARIANT.RANK', table, 'max', 1);
        const front = flat('VARIANT.FRONT', table, 'max');
        expect(ranks).toContain(1);
        ranks.forEach((rank, i) => rank === 1 && expect(front[i]).toBe(true));
      }),
      seeded,
    );
  });

  test('exactly the beaten rows have a row that beats them', () => {
    fc.assert(
      fc.property(tables, table => {
        const beaten = table.map(row => table.some(other => other.every((x, j) => x >= (row[j] as number)) && other.join() !== row.join()));
        expect(flat('VARIANT.FRONT', table, 'max')).toEqual(beaten.map(is => !is));
      }),
      seeded,
    );
  });

  test('ranks do not depend on units, and turn with the directions', () => {
    fc.assert(
      fc.property(tables, table => {
        const ranks = flat('VARIANT.RANK', table, 'max', 1);
        expect(
          flat(
            'VARIANT.RANK',
            table.map(row => row.map(x => 25.4 * x)),
            'max',
            1,
          ),
        ).toEqual(ranks);
        expect(
          flat(
            'VARIANT.RANK',
            table.map(row => row.map(x => -x)),
            'min',
            1,
          ),
        ).toEqual(ranks);
      }),
      seeded,
    );
  });

  test('no fail before anything else, nothing unchecked before a pass or a review', () => {
    const order: Readonly<Record<string, number>> = { pass: 0, review: 0, 'not checked': 1, fail: 2 };
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.constantFrom('pass', 'review', 'not checked', 'fail')), {
          minLength: 2,
          maxLength: 10,
        }),
        variants => {
          const ranks = flat(
            'VARIANT.RANK',
            variants.map(([x]) => [x]),
            'max',
            1,
            variants.map(([, state]) => [state]),
          ) as number[];
          variants.forEach(([, a], i) =>
            variants.forEach(
              ([, b], j) => (order[a] as number) > (order[b] as number) && expect(ranks[i]).toBeGreaterThan(ranks[j] as number),
            ),
          );
        },
      ),
      seeded,
    );
  });
});

describe('ranks and front, refused', () => {
  test.each([
    [
      'VARIANT.RANK',
      [
        [
          [1, 2],
          [3, 4],
        ],
        column('max', 'min', 'max'),
        1,
      ],
      /^#VALUE! table has 2 columns and directions has 3 entries/,
    ],
    [
      'VARIANT.RANK',
      [
        [
          [1, 2],
          [3, 4],
        ],
        'max',
        column(1, 2, 3),
      ],
      /^#VALUE! table has 2 columns and weights has 3 entries/,
    ],
    ['VARIANT.RANK', [column(1, 2), 'up', 1], /^#VALUE! directions row 1 is "up": give one of "max", "min"/],
    ['VARIANT.RANK', [column(1, 2), 'max', -1], /^#VALUE! weights is -1: must be above 0/],
    ['VARIANT.RANK', [column(1, 2), 'max', 0], /^#VALUE! weights is 0 or blank/],
    ['VARIANT.RANK', [column(1, 2, 3), 'max', 1, column('pass', 'pass')], /^#VALUE! table has 3 rows and states has 2/],
    ['VARIANT.RANK', [column(1, 2), 'max', 1, column('pass', 'pass', 'fail')], /^#VALUE! table has 2 rows and states has 3/],
    ['VARIANT.RANK', [column(0, null), 'max', 1], /^#VALUE! table is blank/],
    ['VARIANT.RANK', [column(1, { cellError: '#DIV/0!' }), 'max', 1], /^#DIV\/0! table row 2, column 1, is #DIV\/0!/],
    ['VARIANT.FRONT', [[[1, 2]], column('max', 'min', 'max')], /^#VALUE! table has 2 columns and directions has 3 entries/],
    ['VARIANT.FRONT', [null, 'max'], /^#VALUE! table is blank/],
  ] as const)('%s %j', (id, args, message) => expect(refusal(id, ...args)).toMatch(message));
});
