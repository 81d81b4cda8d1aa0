import { describe, expect, test } from 'vitest';
import { callCard, MAX_CELLS } from '../../src/core/call';
import { type Calculation, card } from '../../src/core/card';
import type { Table } from '../../src/standards/table';
import { ANYTHING, param } from '../../src/core/read/params';
import { Refused } from '../../src/core/refuse';
import { columnOf, hasRow, heldOf, tableRange, valueOf, valueOrNone, worthOf } from '../../src/core/table';
import { number, refusal, value } from '../kit/ask';

describe('what a formula gives back', () => {
  const NUMBER = { shape: 'number', name: 'result', unit: 'mm' } as const;
  const of = (formula: (given: unknown) => unknown, result: Calculation['result'] = NUMBER): Calculation =>
    card('TEST', 'Units', [param('anything', ANYTHING)], formula, {
      result,
    });
  const giving = (result: unknown, shape?: Calculation['result']): Calculation => of(() => result, shape);

  test('a number, a text, a truth', () => {
    expect(callCard(giving(1.5), [1])).toEqual({ ok: true, value: 1.5 });
    expect(callCard(giving('pass'), [1])).toEqual({ ok: true, value: 'pass' });
    expect(callCard(giving(true), [1])).toEqual({ ok: true, value: true });
  });

  test('a negative zero is a zero', () => {
    const answer = callCard(giving(-0), [1]);
    expect(answer.ok && Object.is(answer.value, 0)).toBe(true);
  });

  test('no number is refused, and the refusal is about no argument', () => {
    for (const result of [NaN, Infinity, -Infinity]) {
      expect(Object.entries(callCard(giving(result), [1]))).toEqual([
        ['ok', false],
        ['code', '#VALUE!'],
        ['message', 'no finite result for these inputs'],
      ]);
    }
  });

  test('a table of exactly the most cells is given, one row more is refused with its size', () => {
    const rows = (count: number): number[][] => Array.from({ length: count }, () => [1, 2]);
    expect(callCard(giving(rows(MAX_CELLS / 2), { shape: 'table', columns: [] }), [1]).ok).toBe(true);
    expect(
      callCard(
        giving(rows(MAX_CELLS / 2), {
          shape: 'table',
          columns: [
            { name: 'a', unit: 'mm' },
            { name: 'b', unit: '' },
          ],
        }),
        [1],
      ),
    ).toMatchObject({
      code: '#VALUE!',
      message: 'the result has 20002 cells; at most 20000 are given',
    });
  });

  test('a table has a header row with units, a row has none', () => {
    const columns = [
      { name: 'a', unit: 'mm' },
      { name: 'b', unit: '' },
    ];
    expect(callCard(giving([[1, 2]], { shape: 'table', columns }), [1])).toEqual({
      ok: true,
      value: [
        ['a (mm)', 'b'],
        [1, 2],
      ],
    });
    expect(callCard(giving([1, 2], { shape: 'row', columns }), [1])).toEqual({ ok: true, value: [[1, 2]] });
  });

  test('a fault of the program is no refusal', () => {
    expect(() =>
      callCard(
        of(() => ({ not: 'a cell' })),
        [1],
      ),
    ).toThrow(TypeError);
    expect(() =>
      callCard(
        of(() => undefined),
        [1],
      ),
    ).toThrow(TypeError);
    expect(() =>
      callCard(
        of(() => {
          throw new RangeError('slip');
        }),
        [1],
      ),
    ).toThrow(RangeError);
    expect(
      callCard(
        of(() => {
          throw new Refused('#N/A', 'not held', 'size');
        }),
        [1],
      ),
    ).toEqual({ ok: false, code: '#N/A', message: 'not held', argument: 'size' });
  });
});

describe('ranges that belong together', () => {
  const LIMITS = ['ENGAGEMENT.LIMITS', 16, 0.8] as const;
  const layers = [[2.5], [1.6]];

  test('one value, and one cell, stand for every row', () => {
    const each = value(...LIMITS, layers, [[0.1], [0.1]]);
    expect(value(...LIMITS, layers, 0.1)).toEqual(each);
    expect(value(...LIMITS, layers, [[0.1]])).toEqual(each);
    expect(value(...LIMITS, layers, [['±0.1']])).toEqual(each);
  });

  test('a row is as good as a column, and blank rows at the end of all do not count', () => {
    const each = value(...LIMITS, layers, [[0.1], [0.2]]);
    expect(value(...LIMITS, [[2.5, 1.6]], [[0.1, 0.2]])).toEqual(each);
    expect(value(...LIMITS, [...layers, [0], ['']], [[0.1], [0.2], [null], [0]])).toEqual(each);
  });

  test('unequal counts are refused with both', () => {
    expect(refusal(...LIMITS, layers, [[0.1], [0.1], [0.1]])).toBe(
      '#VALUE! layers has 2 rows and tolerances has 3; give equal counts, or one value for all',
    );
  });

  test('a range of blanks is none, and blanks beside values are told by their row', () => {
    expect(refusal(...LIMITS, [[0], [null]], 0.1)).toMatch(/^#VALUE! layers is 0 or blank/);
    expect(refusal(...LIMITS, [[0]], 0.1)).toMatch(/^#VALUE! layers is 0 or blank/);
    expect(refusal(...LIMITS, [], 0.1)).toMatch(/^#VALUE! layers is blank/);
    expect(refusal(...LIMITS, layers, [[''], ['']])).toMatch(/^#VALUE! tolerances row 1 is blank/);
    expect(refusal(...LIMITS, layers, [[0], [0]])).toMatch(/^#VALUE! tolerances row 1 is 0 or blank; write "0 mm" for a true zero/);
    expect(
      refusal(
        ...LIMITS,
        [
          [2.5, 1],
          [1.6, 1],
        ],
        0.1,
      ),
    ).toBe('#VALUE! layers: give one row or one column');
  });

  test('exactly the most cells', () => {
    const ten = Array.from({ length: 10 }, (_, i) => [i + 1]);
    const lists = [ten, ten, Array.from({ length: 50 }, (_, i) => [i + 1])];
    expect(value('VARIANT.GRID', ...lists, 1)).toHaveLength(5000);
    expect(refusal('VARIANT.GRID', ...lists, 1, 2)).toBe('#VALUE! the result has 25000 cells; at most 20000 are given');
  });

  test('an error in a range says its row, alone it does not', () => {
    expect(refusal(...LIMITS, [[2.5], [{ cellError: '#N/A' }]], 0.1)).toBe('#N/A layers row 2 is #N/A');
    expect(refusal(...LIMITS, { cellError: '#REF!' }, 0.1)).toBe('#REF! layers is #REF!');
  });
});

describe('a published table', () => {
  const TABLE: Table = {
    standard: 'a made-up standard',
    edition: '1',
    subject: 'nothing',
    table: '1',
    columns: [
      { key: 'wide', title: 'width b', unit: 'in', held: 'from memory' },
      { key: 'deep', title: 'depth t', unit: 'mm', held: 'by hand' },
      { key: 'rough', title: 'roughness', unit: 'µm', held: 'by hand' },
      { key: 'count', title: 'count', unit: '1', held: 'by hand' },
    ],
    rows: [
      ['A', 1, 2, 3, 4],
      ['B', 0.5, null, 6, 7],
      ['C', 0.25, 8, 9, 10],
    ],
    exceptions: [{ row: 'B', key: 'wide', held: 'read once' }],
  };

  test('in core units', () => {
    expect([valueOf(TABLE, 'B', 'wide'), valueOf(TABLE, 'C', 'deep'), valueOf(TABLE, 'A', 'rough'), valueOf(TABLE, 'A', 'count')]).toEqual([
      12.7, 8, 0.003, 4,
    ]);
  });

  test('a gap, no such row and no such column are nothing, or refused with what there is', () => {
    expect(valueOrNone(TABLE, 'B', 'deep')).toBeUndefined();
    expect(valueOrNone(TABLE, 'D', 'deep')).toBeUndefined();
    expect(valueOrNone(TABLE, 'A', 'tall')).toBeUndefined();
    expect(() => valueOf(TABLE, 'B', 'deep')).toThrow('depth t of B is not held for a made-up standard');
    expect(() => valueOf(TABLE, 'A', 'tall')).toThrow('tall of A is not held for a made-up standard');
    expect(() => valueOf(TABLE, 'D', 'deep')).toThrow('D is not in a made-up standard (A to C)');
  });

  test('rows, columns and the range', () => {
    expect([hasRow(TABLE, 'B'), hasRow(TABLE, 'D')]).toEqual([true, false]);
    expect(columnOf(TABLE, 'deep')?.title).toBe('depth t');
    expect(columnOf(TABLE, 'tall')).toBeUndefined();
    expect(tableRange(TABLE)).toBe('a made-up standard (A to C)');
  });

  test('how a value is held: its own word before that of its column', () => {
    expect(heldOf(TABLE, 'B', 'wide')).toBe('read once');
    expect(heldOf(TABLE, 'A', 'wide')).toBe('from memory');
    expect(heldOf(TABLE, 'B', 'rough')).toBe('by hand');
    expect(heldOf(TABLE, 'A', 'tall')).toBe('');
  });

  test('a sum of readings: as they stand, times a factor, a number over one', () => {
    const reading = (row: string, key: string) => ({ table: TABLE, row, key });
    expect(worthOf([])).toBe(0);
    expect(worthOf([reading('C', 'deep'), { ...reading('A', 'deep'), times: 3 }, { ...reading('A', 'count'), over: 25.4 }])).toBe(
      8 + 6 + 6.35,
    );
  });

  test('a look-up that finds nothing is about its first argument', () => {
    expect(refusal('SCREW.MAJOR', 'M7')).toBe('#N/A size: M7 is not in ISO 965-2 (M1.6 to M6)');
    expect(number('SCREW.MAJOR', 'M3', 'nominal')).toBe(3);
  });
});
