import { describe, expect, test } from 'vitest';
import { readDeviation } from '../../src/core/read/deviation';
import { refusal, value } from '../kit/ask';

describe('tolerances as people write them: lower and upper, mm', () => {
  test.each([
    ['0.1', -0.1, 0.1],
    ['  0.1 ', -0.1, 0.1],
    ['±0.1', -0.1, 0.1],
    ['± 0.1 mm', -0.1, 0.1],
    ['+-0.1', -0.1, 0.1],
    ['+−0.1', -0.1, 0.1],
    ['+/-0.1', -0.1, 0.1],
    ['+/−0.1', -0.1, 0.1],
    ['+/- 0.004 in', -0.1016, 0.1016],
    ['1/32 in', -0.79375, 0.79375],
    ['±1/32 in', -0.79375, 0.79375],
    ['+0/-0.8', -0.8, 0],
    ['0 / -0.8', -0.8, 0],
    ['0.1/-0.2', -0.2, 0.1],
    ['+0.1/0', 0, 0.1],
    ['0.1/0', 0, 0.1],
    ['+0.1/ 0 mm', 0, 0.1],
    ['+0.1 mm/0 mm', 0, 0.1],
    ['+0.1/+0.05', 0.05, 0.1],
    ['-0.1/-0.2', -0.2, -0.1],
    ['−0.1/−0.2', -0.2, -0.1],
    ['-0.1/-0.1', -0.1, -0.1],
    ['+0.004/-0.002 in', -0.0508, 0.1016],
    ['+0.004 in/-0.05 mm', -0.05, 0.1016],
    ['+1/32/-1/64 in', -0.396875, 0.79375],
    ['+1e-1/-1e-1', -0.1, 0.1],
  ])('"%s": %d and %d', (text, lowerMm, upperMm) => {
    const read = readDeviation(text);
    expect(read.lowerMm).toBeCloseTo(lowerMm, 12);
    expect(read.upperMm).toBeCloseTo(upperMm, 12);
  });

  test('no tolerance is no negative zero', () => {
    expect(readDeviation('0 mm')).toEqual({ upperMm: 0, lowerMm: 0 });
    expect(readDeviation('±0')).toEqual({ upperMm: 0, lowerMm: 0 });
  });

  test.each([
    ['+0.1', /one side only; write "\+0.1\/-0", or "±0.1" for both/],
    ['-0.1', /a half width of 0 or more, or "\+a\/-b"/],
    ['±-0.1', /a half width of 0 or more, or "\+a\/-b"/],
    ['+0.1/0.05', /one side only/],
    ['0.1/0.05', /a fraction has whole numbers/],
    ['-0.2/-0.1', /the first deviation must be the upper one/],
    ['+0.1/-1 mm - 1 in', /give every size its unit/],
    ['+0.1/', /one side only/],
    ['/0', /not a length/],
    ['/-0.1', /not a length/],
    ['±', /not a length/],
    ['0.1±', /not a length/],
    ['0.1+-', /not a length/],
    ['+0.1 -0.2', /one side only/],
    ['+0.1/-0.2 N', /"N" is not a unit of length/],
  ])('"%s" is refused', (text, message) => expect(() => readDeviation(text)).toThrow(message));

  test('a number in a cell is the half width', () => {
    expect(value('STACK.WORST', [[0.1], ['+/-0.2']])).toBeCloseTo(0.3, 12);
    expect(refusal('STACK.WORST', -0.1)).toMatch(/^#VALUE! tolerances is -0.1: a tolerance is a half width of 0 or more/);
  });
});
