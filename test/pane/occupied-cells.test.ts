import { describe, expect, it } from 'vitest';
import { occupiedWords as occupied } from '../../src/pane/occupied-cells';
import { ENGLISH } from '../../src/words/english';

const occupiedWords = (grid: Parameters<typeof occupied>[0], at: string, answer: Parameters<typeof occupied>[2]) =>
  occupied(grid, at, answer, ENGLISH.functions);

describe('the room for a formula', () => {
  const grid = [
    [{ value: null }, { value: 1 }],
    [{ value: null }, { value: null, formula: '=A1' }],
  ];

  it('is asked about where something stands', () => {
    expect(occupiedWords(grid, 'A1', undefined)).toBeUndefined();
    expect(occupiedWords(grid, 'B1', undefined)).toBe('B1 holds 1. It will be replaced.');
    expect(occupiedWords(grid, 'B2', undefined)).toBe('B2 holds =A1. It will be replaced.');
    expect(occupiedWords(grid, 'Z99', 5)).toBeUndefined();
  });

  it('is asked about where a table would meet something', () => {
    expect(
      occupiedWords(grid, 'A1', [
        [1, 2],
        [3, 4],
      ]),
    ).toContain('B1 is not empty');
    expect(
      occupiedWords(grid, 'C1', [
        [1, 2],
        [3, 4],
      ]),
    ).toBeUndefined();
  });
});
