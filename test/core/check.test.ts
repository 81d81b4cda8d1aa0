import { describe, expect, test } from 'vitest';
import { refusal, value } from '../kit/ask';

const ERROR = { cellError: '#DIV/0!' };

describe('CHECK.MAX and CHECK.MIN', () => {
  test.each([
    [1, 'pass'],
    [1.05, 'review'],
    [1.2, 'review'],
    [1.21, 'fail'],
  ])('%s against 1.2, review from 1: %s', (size, state) => {
    expect(value('CHECK.MAX', size, 1.2, 1)).toBe(state);
    expect(value('CHECK.MIN', -size, -1.2, -1)).toBe(state);
  });

  test('without a review, also a blank one, there is only pass and fail', () => {
    for (const review of [[], [null], [''], ['  '], [0]]) {
      expect(value('CHECK.MAX', 1.1, 1.2, ...review)).toBe('pass');
      expect(value('CHECK.MAX', 1.3, 1.2, ...review)).toBe('fail');
      expect(value('CHECK.MIN', 1.3, 1.2, ...review)).toBe('pass');
      expect(value('CHECK.MIN', 1.1, 1.2, ...review)).toBe('fail');
    }
  });

  test('0.1 + 0.2 keeps a limit of 0.3, and a billionth is the whole margin', () => {
    expect(value('CHECK.MAX', 0.1 + 0.2, 0.3)).toBe('pass');
    expect(value('CHECK.MAX', 0.3 + 2e-9, 0.3)).toBe('fail');
    expect(value('CHECK.MIN', 0.3 - 2e-9, 0.3)).toBe('fail');
  });

  test('a blank, a bare 0, a word, an error or no number is nothing to check, wherever it stands', () => {
    for (const nothing of [null, '', 0, 'wall', true, ERROR, NaN, Infinity]) {
      expect(value('CHECK.MAX', nothing, 1.2)).toBe('not checked');
      expect(value('CHECK.MAX', 1, nothing)).toBe('not checked');
      expect(value('CHECK.MIN', nothing, nothing)).toBe('not checked');
    }
    for (const nothing of ['wall', true, ERROR]) expect(value('CHECK.MAX', 1, 1.2, nothing)).toBe('not checked');
  });

  test('a true zero has its unit', () => {
    expect(value('CHECK.MIN', '0 mm', 0.2)).toBe('fail');
    expect(value('CHECK.MAX', '0 mm', 0.2)).toBe('pass');
    expect(value('CHECK.MAX', -1, '0 mm')).toBe('pass');
  });

  test('units of one quantity are compared, of two refused; a bare number goes with each', () => {
    expect(value('CHECK.MAX', '0.1 in', '2.54 mm')).toBe('pass');
    expect(value('CHECK.MAX', '0.11 in', '2.54 mm')).toBe('fail');
    expect(value('CHECK.MAX', 0.4, '50 N.cm')).toBe('pass');
    expect(value('CHECK.MAX', '30 N.cm', 0.4, '20 N.cm')).toBe('review');
    expect(refusal('CHECK.MAX', '1 mm', '2 N')).toMatch(/^#VALUE! value and limit are not the same quantity: length and force/);
    expect(refusal('CHECK.MAX', '1 mm', '2 mm', '1 N')).toMatch(/not the same quantity: length and force/);
  });

  test('review must lie on the side that passes', () => {
    expect(refusal('CHECK.MAX', 1, 1.2, 1.3)).toMatch(/^#VALUE! review is 1.3: must be at most the limit 1.2/);
    expect(refusal('CHECK.MIN', 1, 1.2, 1.1)).toMatch(/^#VALUE! review is 1.1: must be at least the limit 1.2/);
  });
});

describe('CHECK.WORST', () => {
  test.each([
    [['pass', 'pass'], 'pass'],
    [['pass', 'review'], 'review'],
    [['review', 'not checked', 'pass'], 'not checked'],
    [['not checked', 'fail', 'pass'], 'fail'],
    [[' Pass ', 'REVIEW'], 'review'],
    [['pass', ''], 'not checked'],
    [['pass', null], 'not checked'],
    [['pass', 0], 'not checked'],
    [['pass', 'passed'], 'not checked'],
    [['pass', ERROR], 'not checked'],
  ])('%j: %s', (states, worst) => {
    expect(
      value(
        'CHECK.WORST',
        states.map(state => [state]),
      ),
    ).toBe(worst);
    expect(value('CHECK.WORST', [states])).toBe(worst);
  });

  test('one cell, as some hosts hand it over', () => {
    expect(value('CHECK.WORST', 'pass')).toBe('pass');
    for (const blank of [null, '', 0, ERROR]) {
      expect(value('CHECK.WORST', blank)).toBe('not checked');
      expect(value('CHECK.WORST', [[blank]])).toBe('not checked');
    }
  });
});

describe('CHECK.CLEAR: a gap against nothing', () => {
  test.each([
    [-0.1, undefined, 'fail'],
    ['0 mm', undefined, 'fail'],
    ['-0.1 mm', 0.2, 'fail'],
    [1e-6, undefined, 'pass'],
    [0.1, 0.2, 'review'],
    [0.2, 0.2, 'review'],
    [0.201, '0.2 mm', 'pass'],
    [0, undefined, 'not checked'],
    [null, 0.2, 'not checked'],
    ['', undefined, 'not checked'],
    ['wide', undefined, 'not checked'],
    [{ cellError: '#N/A' }, undefined, 'not checked'],
  ])('%j, review to %j: %s', (gap, review, state) => expect(value('CHECK.CLEAR', gap, review)).toBe(state));

  test('a review below 0 is no clearance', () =>
    expect(refusal('CHECK.CLEAR', 1, -0.1)).toBe('#VALUE! review is -0.1: must be at least 0'));
});
