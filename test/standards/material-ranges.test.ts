// Materials: values typed from the reference, and the state of conditioned polyamide. Every value and unit is held in records.test.ts.
import { describe, expect, test } from 'vitest';
import { MATERIAL_RANGES, type MaterialRange, type MaterialRanges } from '../../src/standards/material-ranges';

const MATERIALS: Readonly<Record<string, MaterialRanges>> = MATERIAL_RANGES;

const SYMBOLS = [
  'ABS',
  'PC',
  'PC+ABS',
  'PP',
  'PE-HD',
  'PS',
  'PMMA',
  'POM',
  'PA6',
  'PA6 conditioned',
  'PA66',
  'PA66 conditioned',
  'PA66-GF30',
  'PA66-GF30 conditioned',
  'PBT',
  'PBT-GF30',
];

const range = (symbol: string, quantity: keyof MaterialRanges): MaterialRange => {
  const found = MATERIALS[symbol]?.[quantity];
  if (found === undefined) throw new Error(`${quantity} of ${symbol} is not held`);
  return found;
};

test('the symbols of the contract, each with thread share and OD ratio', () => {
  expect(Object.keys(MATERIALS)).toEqual(SYMBOLS);
});

describe.each(SYMBOLS)('%s', symbol => {
  test('the typical value lies in its range, and every value says how it is held', () => {
    for (const [quantity, { typ, low, high, held }] of Object.entries(MATERIALS[symbol] ?? {})) {
      expect(typ, quantity).toBeGreaterThanOrEqual(low ?? 0);
      expect(typ, quantity).toBeLessThanOrEqual(high ?? Infinity);
      expect(held, quantity).toMatch(
        /^(from memory|range merged from secondary tables and memory, typical value from memory|common practice, from memory)$/,
      );
    }
  });
});

test.each([
  ['ABS', 'melt', 190, 240, 270],
  ['ABS', 'shrinkage', 0.004, 0.006, 0.009],
  ['PC', 'mould', 80, 90, 120],
  ['PC+ABS', 'expansion', 70, 80, 85],
  ['PP', 'shrinkage', 0.01, 0.015, 0.03],
  ['PE-HD', 'density', 0.94, 0.955, 0.97],
  ['PS', 'strength', 35, 47, 60],
  ['PMMA', 'modulus', 2200, 3200, 3300],
  ['POM', 'diffusivity', 0.05, 0.06, 0.095],
  ['PA6', 'strength', 40, 80, 90],
  ['PA66', 'melt', 260, 285, 305],
  ['PA66-GF30', 'modulus', 5100, 10000, 10500],
  ['PBT', 'eject', 100, 120, 140],
  ['PBT-GF30', 'strain', 0.02, 0.025, 0.04],
] as const)('%s %s as in the reference', (symbol, quantity, low, typ, high) => {
  expect(range(symbol, quantity)).toMatchObject({ low, typ, high });
});

test.each([
  ['PP', 0.95, 2],
  ['PE-HD', 0.95, 2],
  ['PA6', 0.9, 2],
  ['PA66', 0.9, 2],
  ['PA6 conditioned', 0.95, 2],
  ['PA66 conditioned', 0.95, 2],
  ['POM', 0.9, 2],
  ['PBT', 0.9, 2],
  ['ABS', 0.8, 2.2],
  ['PC+ABS', 0.75, 2.3],
  ['PS', 0.75, 2.3],
  ['PC', 0.6, 2.5],
  ['PMMA', 0.6, 2.5],
  ['PA66-GF30', 0.7, 2],
  ['PA66-GF30 conditioned', 0.7, 2],
  ['PBT-GF30', 0.7, 2],
])('%s: thread share %d, OD ratio %d, common practice', (symbol, share, ratio) => {
  expect(range(symbol, 'threadShare')).toMatchObject({ typ: share, held: 'common practice, from memory' });
  expect(range(symbol, 'odRatio')).toMatchObject({ typ: ratio, held: 'common practice, from memory' });
});

describe('conditioned polyamide', () => {
  test.each([
    ['PA6', 45],
    ['PA66', 55],
    ['PA66-GF30', 130],
  ])('%s: strength %d MPa from memory, no range', (symbol, strength) => {
    expect(range(`${symbol} conditioned`, 'strength')).toMatchObject({ typ: strength, low: null, high: null, held: 'from memory' });
  });

  test.each(['PA6', 'PA66'])('%s: modulus half of the dry value', symbol => {
    expect(range(`${symbol} conditioned`, 'modulus').typ).toBe(range(symbol, 'modulus').typ / 2);
  });

  test('what the reference does not give for this state is left out', () => {
    expect(Object.keys(MATERIALS['PA66-GF30 conditioned'] ?? {})).toEqual(['strength', 'threadShare', 'odRatio']);
    expect(Object.keys(MATERIALS['PA6 conditioned'] ?? {})).toEqual(['strength', 'modulus', 'threadShare', 'odRatio']);
  });
});

test('brittle and filled materials are held by their strength at break', () => {
  const broken = SYMBOLS.filter(symbol => MATERIALS[symbol]?.strength?.strengthKind === 'break');
  expect(broken).toEqual(['PS', 'PMMA', 'PA66-GF30', 'PA66-GF30 conditioned', 'PBT-GF30']);
});
