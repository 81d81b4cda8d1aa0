// A table of joints as long as it is asked for.
const NAMES = [
  'screw',
  'head',
  'end',
  'length',
  'material',
  'wall',
  'board plane',
  'seat',
  'board',
  'hole',
  'relief',
  'pilot',
  'pilot held at',
  'boss OD',
  'boss height',
  'hole depth',
  'bottom gap',
];
const row = (i: number): readonly (string | number)[] => [
  'ST2.9',
  'ISO 7049',
  'cone',
  [9.5, 13, 16, 19][i % 4] ?? 13,
  'ABS',
  2.5 + (i % 7) / 10,
  5.5,
  2.5,
  1.6,
  3.4,
  0.8,
  2.4,
  'mouth',
  6.4,
  14,
  14.75,
  1,
];

/** A row of names, then a row a variant. */
export const inputsOf = (variants: number): readonly (readonly (string | number)[])[] => [
  NAMES,
  ...Array.from({ length: variants }, (_, i) => row(i)),
];
