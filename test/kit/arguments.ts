// Arguments for any function, made from its card: what fits, what is at the edge, and what no designer should send.
import fc from 'fast-check';
import type { Card, Param } from '../../src/core/card';
import type { Limits } from '../../src/core/kinds';
import { acceptedBy } from '../../src/core/read/accepts';
import { withinLimits } from '../../src/core/read/limits';

/** Where values of a quantity lie in the trade, in core units. */
const USUAL: Readonly<Record<string, readonly [number, number]>> = {
  length: [0.2, 30],
  angle: [0.1, 10],
  force: [1, 2000],
  torque: [0.01, 5],
  stress: [1, 5000],
  'line load': [0.05, 5],
  'second moment': [5, 5000],
  share: [0.01, 0.99],
  number: [0.1, 5],
  temperature: [20, 280],
  mass: [2, 200],
  density: [0.8, 2],
  diffusivity: [0.05, 0.2],
  expansion: [10, 120],
  tolerance: [0.01, 0.5],
};

const NAMES: Readonly<Record<string, readonly string[]>> = {
  'screw size': ['M3', 'm 2.5', 'ST2.9', 'ST3.5', '#4-40', '#4 AB', '#4 B', '#4', 'M1.6', 'ST9.5'],
  screw: ['M3', 'm 2.5', 'ST2.9', 'ST3.5', '#4-40', '#4 AB', '#4 B', 'M1.6'],
  nut: ['M2', 'm 2.5', 'M3', 'M6', 'ST2.9', '#4-40'],
  head: ['pan', 'countersunk', 'oval', 'ISO 7045', 'ISO 7049', 'cheese', 'Pan Head'],
  material: ['ABS', 'pc', 'PA66-GF30', 'PP'],
};

/** `length` of `range of lengths`. */
export const nounOf = ({ kind }: Param): string => kind.noun.replace(/^range of (.+)s$/, '$1');
export const isNumber = (param: Param): boolean => USUAL[nounOf(param)] !== undefined;
export const isWhole = ({ kind }: Param): boolean => kind.is === 'whole';
/** The texts that a message offers. */
export const offered = (param: Param): string[] => [...acceptedBy(param).matchAll(/"([^"]+)"/g)].map(([, text]) => text ?? '');

export function usualNumber(noun: string, limits: Limits | undefined): fc.Arbitrary<number> {
  const [low, high] = USUAL[noun] ?? [0, 1];
  const bottom = Math.max(low, limits?.above ?? -Infinity, limits?.atLeast ?? -Infinity);
  const top = Math.min(high, limits?.below ?? Infinity, limits?.atMost ?? Infinity);
  return fc.double({ min: Math.min(bottom, top), max: Math.max(bottom, top), noNaN: true }).filter(value => withinLimits(value, limits));
}

export function fitting(card: Card, i: number): fc.Arbitrary<unknown> {
  const param = card.params[i] as Param;
  const choices: fc.Arbitrary<unknown>[] = [fc.constant(card.example.args[i])];
  const texts = [...offered(param), ...(NAMES[nounOf(param)] ?? [])];
  if (texts.length > 0) choices.push(fc.constantFrom(...texts));
  if (isNumber(param)) {
    const number = isWhole(param) ? fc.integer({ min: 1, max: 9 }) : usualNumber(nounOf(param), param.limits);
    const one =
      param.kind.unit === 'mm'
        ? fc.oneof(
            number,
            number.map(v => `${v} mm`),
            number.map(v => `${v / 25.4} in`),
          )
        : number;
    choices.push(param.kind.shape === 'list' ? fc.array(one, { minLength: 1, maxLength: 6 }).map(list => list.map(x => [x])) : one);
  }
  return fc.oneof(...choices);
}

const ERROR = { cellError: '#DIV/0!' };
const MANY = Array.from({ length: 1000 }, (_, i) => [i + 1]);

export const HOSTILE: readonly unknown[] = [
  1e308,
  -1e308,
  Number.MAX_VALUE,
  5e-324,
  1e-300,
  -5e-324,
  0,
  -0,
  -1,
  NaN,
  Infinity,
  -Infinity,
  true,
  false,
  null,
  undefined,
  '',
  ' ',
  ' \t\u00a0\n',
  'x'.repeat(20_000),
  '9'.repeat(20_000),
  '1 mm + '.repeat(3000),
  '1/'.repeat(10_000),
  ' '.repeat(20_000),
  `M3 ${' '.repeat(20_000)}pan`,
  '+'.repeat(20_000),
  '/-'.repeat(10_000),
  '1e308 m',
  '1e308 mm + 1e308 mm',
  '1e-320 mm',
  '-5 mm',
  '0 mm',
  '0°',
  '90°',
  '-90°',
  '1 000,5',
  '1.000,5',
  '1,2,3',
  '١٢ mm',
  '１２ mm',
  '½ in',
  '0x10',
  '1e5',
  'NaN',
  'Infinity',
  '±',
  '+0/-',
  '±-1',
  '0/0',
  '+1/+2',
  '1..2',
  '2..1',
  '%',
  '100 %',
  '5 %',
  '#DIV/0!',
  '=1+1',
  '–',
  'M3',
  'M 99',
  'ST2.9',
  'M3 pan',
  'M3 medium',
  'ST2.9 ABS',
  'ST2.9 75 %',
  '#4',
  '#4-40',
  '1/4',
  'ABS',
  'pass',
  'none',
  'default',
  'IT11',
  'BOSS.OD',
  'ENCL.BOSS.OD',
  'constructor',
  '__proto__',
  'toString',
  'hasOwnProperty',
  '\u0000',
  '\ud800',
  '💥',
  '\u202e3 mm',
  'strength',
  'strength 40',
  'strength 40 MPa; constructor 1',
  '{"cellError":"#N/A"}',
  ERROR,
  { cellError: '#N/A' },
  {},
  { basicValue: 3 },
  [],
  [[]],
  [[], []],
  [[null]],
  [[0], [0]],
  [['']],
  [[1], [2, 3]],
  [[1, 2], [3]],
  [[], [1]],
  [
    [1, 2],
    [3, 4],
  ],
  [1, 2, 3],
  [[[1]]],
  [[undefined]],
  [[NaN], [Infinity]],
  [[1e308], [1e308]],
  [[-1], [1]],
  [[ERROR]],
  [[1], [ERROR]],
  [[1, ERROR]],
  [['1 mm'], ['2 in'], [3]],
  [['M3'], ['ST2.9']],
  [['pass'], ['fail']],
  [['strength', 40]],
  [['strength', '40 mm']],
  [['constructor', 1]],
  [
    ['__proto__', 1],
    ['a', 2],
  ],
  [['screw', 'M3']],
  [['screw'], ['M3']],
  MANY,
  MANY.map(row => [...row, 'x']),
  [MANY.map(([x]) => x)],
];

export const hostile: fc.Arbitrary<unknown> = fc.constantFrom(...HOSTILE);

/** Mostly fitting, some hostile; now and then too few or too many. */
export function anyArguments(card: Card): fc.Arbitrary<unknown[]> {
  const fit = card.params.map((_, i) => fitting(card, i));
  const mixed = fc.tuple(...fit.map(one => fc.oneof({ weight: 5, arbitrary: one }, { weight: 1, arbitrary: hostile })));
  return fc.oneof(
    { weight: 4, arbitrary: fc.tuple(...fit) },
    { weight: 4, arbitrary: mixed },
    { weight: 1, arbitrary: fc.array(hostile, { maxLength: card.params.length + 2 }) },
    { weight: 1, arbitrary: fc.tuple(mixed, fc.nat(card.params.length)).map(([args, n]) => args.slice(0, n)) },
  );
}

/** Examples with a number where the card's own has text that brings a second value along, and with few samples. */
const IN_NUMBERS: Readonly<Record<string, readonly unknown[]>> = {
  'RECESS.CONE': [6.3, 3.4, 90],
  'PIN.DEFLECTION': [10, 2.4, 10, 210_000],
  'STACK.SIMULATE': [[[5], [0.02]], [[0.3], [0.4]], 1, 4, 6, 1000],
  // no two in one place, whatever stands for the places along x or y
  'PATTERN.FIT': [[[10], [90], [88], [12]], [[10], [12], [60], [58]], 0.2, 0.2, 0.4, 1000],
};

export function exampleInNumbers(card: Card): readonly unknown[] {
  return IN_NUMBERS[card.id] ?? card.example.args;
}

/** The example with one argument replaced. */
export function exampleWith(card: Card, i: number, value: unknown): unknown[] {
  const args: unknown[] = card.params.map((_, j) => card.example.args[j]);
  args[i] = value;
  return args;
}
