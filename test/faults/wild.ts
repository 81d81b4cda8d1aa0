// Values that no list foresees: numbers at every edge, texts put together from what the readers know, other people's digits, ranges of all of it.
import fc from 'fast-check';
import type { Card } from '../../src/core/card';
import { anyArguments, hostile } from '../kit/arguments';

/** What the readers of units, tolerances, sizes, heads, materials and states look for, and what stands next to it on a keyboard. */
const PIECES = [
  '0',
  '1',
  '9',
  '25',
  '0.5',
  '1e308',
  '1e-320',
  '.',
  ',',
  "'",
  '"',
  ' ',
  '\u00a0',
  '\u202f',
  '\t',
  '\n',
  '+',
  '-',
  '−',
  '–',
  '±',
  '+-',
  '/',
  '*',
  '^',
  '=',
  '%',
  '°',
  '(',
  ')',
  '..',
  ';',
  ':',
  'e',
  'E5',
  'mm',
  'MM',
  'cm',
  'm',
  'µm',
  'μm',
  'um',
  'in',
  'inch',
  'mil',
  'thou',
  'ft',
  'deg',
  'rad',
  'N',
  'kN',
  'lbf',
  'N·m',
  'N.cm',
  'in.lbf',
  'MPa',
  'GPa',
  'psi',
  'g/cm³',
  'mm²/s',
  'K',
  '°C',
  'M3',
  'M',
  'm 2.5',
  'ST2.9',
  'ST',
  '#4',
  '#4-40',
  '#',
  'AB',
  'pan',
  'ISO 7045',
  'ISO',
  'countersunk',
  'cone',
  'flat',
  'medium',
  'ABS',
  'PA66',
  'GF30',
  'DIN 16742-TG6',
  'IT11',
  'f',
  'none',
  'default',
  'pass',
  'fail',
  'review',
  'not checked',
  'BOSS.OD',
  'ENCL.',
  'screw',
  'wall',
  'max',
  'min',
  'grows',
  'hex',
  '١',
  '٫',
  '１',
  '．',
  'ｍｍ',
  '½',
  '²',
  'İ',
  'ß',
  'é',
  '💥',
  '\u0000',
  '\u200b',
  '\u202e',
  '\ud800',
  '__proto__',
  'constructor',
  '#N/A',
  'null',
];

const text = fc.oneof(
  { weight: 6, arbitrary: fc.array(fc.constantFrom(...PIECES), { maxLength: 10 }).map(pieces => pieces.join('')) },
  { weight: 2, arbitrary: fc.array(fc.constantFrom(...PIECES), { minLength: 1, maxLength: 4 }).map(pieces => pieces.join(' ')) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 20 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom(...PIECES), fc.constantFrom(...PIECES), fc.constantFrom(50, 3000))
      .map(([a, b, times]) => (a + b).repeat(times)),
  },
);

/** The digits of a number in Arabic, Devanagari and full width, and with the marks of other languages. */
const ZEROS = ['٠', '०', '０'] as const;
const foreign = fc
  .tuple(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constantFrom(...ZEROS), fc.constantFrom('.', ',', '٫', "'", '\u00a0'))
  .map(([value, zero, mark]) =>
    String(value)
      .replace(/\d/g, digit => String.fromCodePoint((zero.codePointAt(0) ?? 0) + Number(digit)))
      .replace('.', mark),
  );

const cell = fc.oneof(
  fc.double(),
  fc.double({ min: -100, max: 100, noNaN: true }),
  fc.integer({ min: -3, max: 40 }),
  text,
  foreign,
  fc.boolean(),
  fc.constantFrom(null, '', 0, -0, { cellError: '#N/A' }, { cellError: '#SPILL!' }),
  hostile,
);

/** Rows may differ in length, and need not be rows. */
const range = fc.array(fc.oneof({ weight: 9, arbitrary: fc.array(cell, { maxLength: 4 }) }, { weight: 1, arbitrary: cell }), {
  maxLength: 6,
});

const wild: fc.Arbitrary<unknown> = fc.oneof({ weight: 4, arbitrary: cell }, { weight: 1, arbitrary: range });

/** Arguments of the kit, some or all of them replaced. */
export function wildArguments(card: Card): fc.Arbitrary<unknown[]> {
  const places = card.params.length;
  const some = fc
    .tuple(anyArguments(card), fc.array(fc.tuple(fc.nat(Math.max(0, places - 1)), wild), { minLength: 1, maxLength: 2 }))
    .map(([args, changes]) => {
      const changed = [...args];
      for (const [i, value] of changes) changed[i] = value;
      return changed;
    });
  return fc.oneof({ weight: 3, arbitrary: some }, { weight: 1, arbitrary: fc.array(wild, { maxLength: places + 1 }) });
}
