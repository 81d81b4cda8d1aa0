// Faults that wild calls have found, each kept from coming back.
import { describe, expect, test } from 'vitest';
import { call } from '../../src/registry';
import { quietMs } from '../kit/best-of';

describe('a material card', () => {
  test.each([[[['strength', { cellError: '#N/A' }]]], [[[{ cellError: '#N/A' }, 40]]]])('hands on an error in it: %j', card => {
    expect(call('PULLOUT', ['ST2.9', 6, card])).toMatchObject({ ok: false, code: '#N/A', argument: 'yield_stress' });
  });

  test.each(['constructor', '__proto__', 'toString'])('knows no quantity %s', word => {
    expect(call('MATERIAL', [[[word, 1]], 'strength'])).toMatchObject({ ok: false, code: '#VALUE!', argument: 'material' });
  });
});

test('a range need not be rows of cells, and its rows need not be equally long', () => {
  expect(call('GRIP', [[1, 2, 3]])).toEqual({ ok: true, value: 6 });
  expect(call('GRIP', [[[1, 2, 3]]])).toEqual({ ok: true, value: 6 });
  for (const range of [
    [1, null, 3],
    [null, []],
    [[1], [2, 3]],
    [[[1]], [2]],
  ])
    expect(call('GRIP', [range]), JSON.stringify(range)).toMatchObject({ ok: false, code: '#VALUE!', argument: 'layers' });
});

test('a list of 10,000 rows is read at once', () => {
  const rows = Array.from({ length: 10_000 }, (_, i) => [i + 1]);
  expect(call('GRIP', [rows])).toEqual({ ok: true, value: 50_005_000 });
  expect(quietMs(() => void call('GRIP', [rows]))).toBeLessThan(50);
});
