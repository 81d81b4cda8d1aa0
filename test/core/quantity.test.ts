import fc from 'fast-check';
import Qty from 'js-quantities';
import { describe, expect, test } from 'vitest';
import * as Q from '../../src/core/read/quantity';
import { unitsOf, type Quantity } from '../../src/core/read/quantity';
import { readAnyQuantity, readQuantity } from '../../src/core/read/read-quantity';
import { Refused } from '../../src/core/refuse';
import { call } from '../../src/registry';
import { quietMs } from '../kit/best-of';
import { SEED } from '../kit/seed';

/** Spelling here -> spelling there. The library rounds the pound force to 7 digits and the psi to 6. */
interface Oracle {
  readonly quantity: Quantity;
  readonly core: string;
  readonly spellings: Readonly<Record<string, string>>;
  readonly within?: Readonly<Record<string, number>>;
}

const ORACLES: readonly Oracle[] = [
  {
    quantity: Q.LENGTH,
    core: 'mm',
    spellings: {
      mm: 'mm',
      MM: 'mm',
      cm: 'cm',
      m: 'm',
      µm: 'um',
      μm: 'um',
      um: 'um',
      in: 'in',
      In: 'in',
      IN: 'in',
      inch: 'in',
      inches: 'in',
      '"': 'in',
      '″': 'in',
      '”': 'in',
      mil: 'mil',
      thou: 'mil',
    },
  },
  {
    quantity: Q.ANGLE,
    core: 'deg',
    spellings: { deg: 'deg', '°': 'deg', º: 'deg', "'": 'arcmin', '′': 'arcmin', '’': 'arcmin', rad: 'rad' },
  },
  { quantity: Q.FORCE, core: 'N', spellings: { N: 'N', kN: 'kN', lbf: 'lbf' }, within: { lbf: 1e-7 } },
  {
    quantity: Q.TORQUE,
    core: 'N*m',
    spellings: {
      'N·m': 'N*m',
      'N.m': 'N*m',
      Nm: 'N*m',
      'N·cm': 'N*cm',
      'N.cm': 'N*cm',
      Ncm: 'N*cm',
      'N·mm': 'N*mm',
      'N.mm': 'N*mm',
      Nmm: 'N*mm',
      'in·lbf': 'in*lbf',
      'in.lbf': 'in*lbf',
      'lbf·in': 'in*lbf',
      'lbf.in': 'in*lbf',
    },
    within: { 'in·lbf': 1e-7, 'in.lbf': 1e-7, 'lbf·in': 1e-7, 'lbf.in': 1e-7 },
  },
  {
    quantity: Q.STRESS,
    core: 'MPa',
    spellings: { Pa: 'Pa', kPa: 'kPa', MPa: 'MPa', GPa: 'GPa', 'N/mm²': 'N/mm^2', 'N/mm2': 'N/mm^2', psi: 'psi', ksi: 'kpsi' },
    within: { psi: 1e-6, ksi: 1e-6 },
  },
  { quantity: Q.SHARE, core: '1', spellings: { '%': '%' } },
  { quantity: Q.TEMPERATURE, core: 'degC', spellings: { '°C': 'degC', C: 'degC' } },
  { quantity: Q.TEMPERATURE_CHANGE, core: 'degK', spellings: { K: 'degK', '°C': 'degC', C: 'degC' } },
  { quantity: Q.MASS, core: 'g', spellings: { g: 'g', kg: 'kg', oz: 'oz', lb: 'lb' }, within: { oz: 1e-6, lb: 1e-6 } },
  { quantity: Q.DENSITY, core: 'g/cm^3', spellings: { 'g/cm³': 'g/cm^3', 'g/cm3': 'g/cm^3' } },
  { quantity: Q.DIFFUSIVITY, core: 'mm^2/s', spellings: { 'mm²/s': 'mm^2/s', 'mm2/s': 'mm^2/s' } },
  { quantity: Q.EXPANSION, core: 'ppm/degK', spellings: { 'ppm/K': 'ppm/degK' } },
];

/** Numbers as people type them, none of them in scientific notation. */
const typed = fc
  .tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 9_999 }))
  .map(([whole, part]) => `${whole}.${String(part).padStart(4, '0')}`);

describe('an outside library agrees on every unit', () => {
  test('no spelling is left out', () => {
    const ours = ORACLES.flatMap(({ quantity }) => Object.keys(quantity.units));
    expect(ours.length).toBe(63);
    expect(ours).toEqual(ORACLES.flatMap(({ spellings }) => Object.keys(spellings)));
  });

  describe.each(ORACLES)('$quantity.noun', ({ quantity, core, spellings, within }) => {
    test.each(Object.entries(spellings))(`%s = %s (seed ${SEED})`, (unit, theirs) => {
      fc.assert(
        fc.property(typed, fc.constantFrom('', ' ', '\u00a0', '\u202f'), (number, space) => {
          const expected = Qty(Number(number), theirs).to(core).scalar;
          expect(Math.abs(readQuantity(`${number}${space}${unit}`, quantity) - expected)).toBeLessThanOrEqual(
            (within?.[unit] ?? 1e-12) * expected,
          );
        }),
        { seed: SEED, numRuns: 50 },
      );
    });
  });
});

describe('one comma before exactly three digits: 1 or 1000?', () => {
  test.each<[string, string, string]>([
    ['1,000', '1.000', '1000'],
    ['1,000 mm', '1.000', '1000'],
    ['-2,500 mm', '2.500', '2500'],
    ['+12,345', '12.345', '12345'],
    ['1 mm + 1,250 in', '1.250', '1250'],
    ['1,250 in - 1 mm', '1.250', '1250'],
    ['1,500/16 in', '1.500', '1500'],
    ['1,000e3', '1.000', '1000'],
    [',125 mm', '.125', '125'],
    ['00,125 mm', '00.125', '00125'],
  ])('%s is refused, and both ways are said', (text, point, thousand) => {
    const digits = /\d*,\d{3}/.exec(text)?.[0] ?? '';
    expect(() => readQuantity(text, Q.LENGTH)).toThrow(`("${digits}" can be read two ways: write ${point} or ${thousand})`);
  });

  /** Wherever text becomes a number: units, tolerances, limits, names with a number behind them, cards, lists, joints. */
  const EVERYWHERE: readonly (readonly [id: string, ...args: unknown[]])[] = [
    ['BOSS.OD', '1,000', 1.2],
    ['LENGTH.MM', '1,000 mm'],
    ['ANGLE.DEG', '1,000°'],
    ['LIMITS', '1,600 ±0.1'],
    ['LIMITS', '1.6 ±1,000'],
    ['LIMITS', '3 +1,000/-0'],
    ['LIMITS', '3 +0/-1,000 mm'],
    ['LIMITS', '3,400..3.600'],
    ['LIMITS', '1.6 ±1,000%'],
    ['ENGAGEMENT.LIMITS', 13, '±1,000', [[2.5]], 0.1],
    ['ENGAGEMENT.LIMITS', 13, '+0/-1,000', [[2.5]], 0.1],
    ['ENGAGEMENT.LIMITS', 13, 0.5, [['2,500'], [1.6]], 0.1],
    ['GRIP', [['2,500'], [1.6]]],
    ['STACK.WORST', [['±1,000']]],
    ['STACK.NOMINAL', [[1]], [['1,000']]],
    ['HOLE.PILOT', 'ST2.9', '75,000 %'],
    ['BOSS.OD', 'ST2.9 75,000 %', 1.2],
    ['PULLOUT', 'ST2.9', 6, '1,000 MPa'],
    ['PULLOUT', 'ST2.9', 6, [['strength', '1,000']]],
    ['MATERIAL', 'density 1,050 g/cm³', 'density'],
    ['TOL.MOULDED', 10, [['1,000', 1, 2]]],
    ['STACK.PPM', 0, 1, '-1,000', 'none'],
    ['DUAL', 4.2, '1,000'],
    ['RECESS.TOOL', 8, '1,250 in hex'],
    ['JOINT.VALUE', [['wall']], [['2,500']], 'feature wall'],
    ['VARIANT.RANK', [[1]], 'max', '1,000'],
  ];
  test.each(EVERYWHERE.map(([id, ...args]) => ({ id, args })))('$id $args', ({ id, args }) => {
    const answer = call(id, args);
    expect(answer).toMatchObject({ ok: false, code: '#VALUE!' });
    expect(answer.ok || answer.message).toMatch(/"(\d+),(\d{3})" can be read two ways: write \1\.\2 or \1\2\)/);
  });

  test('nothing is checked and nothing is ranked by it', () => {
    expect(call('CHECK.MAX', ['1,000', 2])).toEqual({ ok: true, value: 'not checked' });
    expect(call('VARIANT.RANK', [[['1,000'], [2]], 'max', 1])).toEqual({ ok: true, value: [['–'], [1]] });
    expect(call('SCREW.PITCH', ['M2,500'])).toMatchObject({ ok: false, code: '#VALUE!' });
    expect(call('SCREW.PITCH', ['M2,5'])).toEqual(call('SCREW.PITCH', ['M2.5']));
  });
});

describe('every text of the contract', () => {
  // computed by hand from 1 in = 25.4 mm, 1 lbf = 4.4482216152605 N
  test.each<[string, Quantity, number]>([
    ['0.167 in', Q.LENGTH, 4.2418],
    ['0.167in + 0.25 mm', Q.LENGTH, 4.4918],
    ['1/16 in', Q.LENGTH, 1.5875],
    ['1 1/4 in', Q.LENGTH, 31.75],
    ['62 mil', Q.LENGTH, 1.5748],
    ['62 thou', Q.LENGTH, 1.5748],
    ['0.16 cm', Q.LENGTH, 1.6],
    ['25 µm', Q.LENGTH, 0.025],
    ['25 μm', Q.LENGTH, 0.025],
    ['25 um', Q.LENGTH, 0.025],
    ['0.25"', Q.LENGTH, 6.35],
    ['1,6 mm', Q.LENGTH, 1.6],
    ['0.5 deg', Q.ANGLE, 0.5],
    ['0.5°', Q.ANGLE, 0.5],
    ["30'", Q.ANGLE, 0.5],
    ["0°30'", Q.ANGLE, 0.5],
    ["1° 15'", Q.ANGLE, 1.25],
    ["-0°30'", Q.ANGLE, -0.5],
    ['12 lbf', Q.FORCE, 53.378659383126],
    ['4.3 in.lbf', Q.TORQUE, 0.485834764819],
    ['35 N.cm', Q.TORQUE, 0.35],
    ['0.35 N·m', Q.TORQUE, 0.35],
    ['6500 psi', Q.STRESS, 44.815922405594],
    ['2.4 GPa', Q.STRESS, 2400],
    ['0.6 %', Q.SHARE, 0.006],
    ['0.006', Q.SHARE, 0.006],
    ['-0.2 mm', Q.LENGTH, -0.2],
    ['−0.2 mm', Q.LENGTH, -0.2],
    ['5 mm - 1/4 in', Q.LENGTH, -1.35],
    ['1 1/4 in + 1/16 in', Q.LENGTH, 33.3375],
    ['4.2', Q.LENGTH, 4.2],
    ['  4.2  mm ', Q.LENGTH, 4.2],
    ['4.2\tmm', Q.LENGTH, 4.2],
    ['.5 mm', Q.LENGTH, 0.5],
    ['1 / 16 in', Q.LENGTH, 1.5875],
    ['1e3 mm', Q.LENGTH, 1000],
    ['2.5E+2 mm', Q.LENGTH, 250],
    ['25e-3 mm', Q.LENGTH, 0.025],
    ['1e2', Q.LENGTH, 100],
    ['90 ppm/K', Q.EXPANSION, 90],
    ['16/.5e1 mm', Q.LENGTH, 3.2],
    ['0,125 in', Q.LENGTH, 3.175],
    ['-0,125 mm', Q.LENGTH, -0.125],
    ['1,0000 mm', Q.LENGTH, 1],
    ['1,00 mm', Q.LENGTH, 1],
    ['1000 mm', Q.LENGTH, 1000],
    ['1.000 mm', Q.LENGTH, 1],
  ])('%s', (text, quantity, value) => {
    expect(readQuantity(text, quantity)).toBeCloseTo(value, 10);
  });

  test.each<[string, string, Quantity]>([
    ['a thousands mark and a decimal point', '1,600.5 mm', Q.LENGTH],
    ['a thousands point and a decimal comma', '1.600,5 mm', Q.LENGTH],
    ['two points', '1.2.3 mm', Q.LENGTH],
    ['a bare number in a sum', '1 + 2 mm', Q.LENGTH],
    ['a bare number at the end of a sum', '1 mm + 2', Q.LENGTH],
    ['no sign between terms', '1 in 2 mm', Q.LENGTH],
    ['an arc minute for a length', "30'", Q.LENGTH],
    ['an inch mark for an angle', '30"', Q.ANGLE],
    ['minutes before degrees', "30'1°", Q.ANGLE],
    ['an unknown unit', '3 ft', Q.LENGTH],
    ['a longer word', '3 mmm', Q.LENGTH],
    ['a unit alone', 'mm', Q.LENGTH],
    ['a sign alone', '-', Q.LENGTH],
    ['a sum that is not finished', '1 mm +', Q.LENGTH],
    ['two terms in the unit of the core', '1 mm 2 mm', Q.LENGTH],
    ['a mixed number without a fraction', '1 1 24 mm', Q.LENGTH],
    ['a point without a digit behind it', '4.in', Q.LENGTH],
    ['a comma without a digit behind it', '4, mm', Q.LENGTH],
    ['an exponent without a number', '1e mm', Q.LENGTH],
    ['an exponent with a sign alone', '1e+ mm', Q.LENGTH],
    ['one length over another', '1/mm', Q.LENGTH],
    ['two signs', '1 mm + - 2 mm', Q.LENGTH],
    ['a product', '2 * 3 mm', Q.LENGTH],
    ['brackets', '(1 mm)', Q.LENGTH],
    ['a division by zero', '1/0 in', Q.LENGTH],
    ['a fraction of a fraction', '1/2/3 in', Q.LENGTH],
    ['a fraction of decimals', '0.1/0.05', Q.LENGTH],
    ['a decimal under a whole number', '1/0.5 in', Q.LENGTH],
    ['a decimal before a fraction', '1.5 1/4 in', Q.LENGTH],
    ['a decimal inside a mixed number', '1 1.5/4 in', Q.LENGTH],
    ['a number for no value', 'NaN', Q.LENGTH],
    ['a word for no end', 'Infinity', Q.LENGTH],
    ['hexadecimal', '0x10 mm', Q.LENGTH],
    ['full-width digits', '３ mm', Q.LENGTH],
    ['Arabic digits', '٣ mm', Q.LENGTH],
    ['a cell error as text', '#DIV/0!', Q.LENGTH],
    ['a number without end', '1e999 mm', Q.LENGTH],
    ['a unit that leads out of all numbers', '1e308 m', Q.LENGTH],
    ['a sum that leads out of all numbers', '1e308 mm + 1e308 mm', Q.LENGTH],
    ['nothing', '', Q.LENGTH],
  ])('%s is refused with the units that fit', (_, text, quantity) => {
    expect(messageOf(text, quantity)).toContain(`units: ${unitsOf(quantity)}`);
  });

  test('a unit of another quantity is named, with the units that fit', () => {
    const all = ORACLES.filter(({ quantity }) => quantity !== Q.TEMPERATURE && quantity !== Q.TEMPERATURE_CHANGE);
    let pairs = 0;
    for (const { quantity } of all) {
      for (const other of all.filter(o => o.quantity !== quantity)) {
        for (const unit of Object.keys(other.quantity.units)) {
          expect(messageOf(`1 ${unit}`, quantity)).toMatch(/units: \S/);
          expect(messageOf(`1 ${unit}`, quantity)).toContain(`"${unit}" is not a unit of ${quantity.noun}`);
          pairs++;
        }
      }
    }
    expect(pairs).toBe(9 * 58);
  });

  test.each<[string, Quantity, string]>([
    [
      '1,600.5 mm',
      Q.LENGTH,
      'not a length (one decimal separator, no thousands mark); give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil',
    ],
    [
      '1.2.3',
      Q.LENGTH,
      'not a length (one decimal separator, no thousands mark); give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil',
    ],
    ['1 + 2 mm', Q.LENGTH, 'not a length (give every term its unit); give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil'],
    ['1 − 2', Q.LENGTH, 'not a length (give every term its unit); give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil'],
    ['1/0.5 in', Q.LENGTH, 'not a length (a fraction has whole numbers); give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil'],
    ['0.1/.05', Q.LENGTH, 'not a length (a fraction has whole numbers); give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil'],
    ['3 N', Q.ANGLE, `not an angle ("N" is not a unit of angle); give 0.5, "0.5°" or "0°30'"; units: deg, ', rad`],
    // a longer word than a unit is no unit
    ['3 Newton', Q.ANGLE, `not an angle; give 0.5, "0.5°" or "0°30'"; units: deg, ', rad`],
    ['x', Q.RATIO, 'not a number; give a plain number'],
    ['x', Q.EXPANSION, 'not an expansion; give 90 or "90 ppm/K"; units: ppm/K'],
  ])('%s says what is wrong', (text, quantity, message) => expect(messageOf(text, quantity)).toBe(message));

  test.each([
    ['12', { value: 12, noun: '' }],
    ['-1.5e3', { value: -1500, noun: '' }],
    ['1/2', { value: 0.5, noun: '' }],
    ['12 mm', { value: 12, noun: 'length' }],
    ['2 N', { value: 2, noun: 'force' }],
    ['40 K', { value: 40, noun: 'temperature change' }],
    ['90 ppm/K', { value: 90, noun: 'expansion' }],
    ['12 ft', undefined],
    ['mm', undefined],
  ])('of any quantity, %s', (text, read) => expect(readAnyQuantity(text)).toEqual(read));

  test.each([
    ['length', Q.LENGTH, 'mm, cm, m, µm, in, mil'],
    ['angle', Q.ANGLE, "deg, ', rad"],
    ['force', Q.FORCE, 'N, kN, lbf'],
    ['stress', Q.STRESS, 'Pa, kPa, MPa, GPa, psi, ksi'],
    ['share', Q.SHARE, '%'],
  ])('units offered for a %s: one spelling a size', (_, quantity, words) => {
    expect(unitsOf(quantity)).toBe(words);
  });
});

function messageOf(text: string, quantity: Quantity): string {
  try {
    const value = readQuantity(text, quantity);
    return `read as ${value}`;
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    expect(fault.code).toBe('#VALUE!');
    return fault.message;
  }
}

describe('time grows with the text alone', () => {
  const long = (piece: string): string => piece.repeat(Math.ceil(200_000 / piece.length));
  test.each([
    '1 mm + ',
    '1',
    '1 ',
    ' ',
    '+',
    '-',
    '1/',
    '1 1/4 in + ',
    "1'",
    "1°1'",
    'm',
    'mm',
    '.',
    ',',
    '1,',
    'e',
    '1e',
    '"',
    'N.m ',
    '\u00a0',
    '1 mm - - ',
  ])('%j for 200,000 characters', piece => {
    const text = long(piece);
    expect(text.length).toBeGreaterThanOrEqual(200_000);
    for (const quantity of [Q.LENGTH, Q.ANGLE]) expect(quietMs(() => void messageOf(text, quantity))).toBeLessThan(400);
  });
});
