import { describe, expect, test } from 'vitest';
import { refusal, value } from '../kit/ask';

const cells = (...args: unknown[]): unknown[][] => value('MATERIAL.TABLE', ...args) as unknown[][];

describe('a symbol, however it is typed', () => {
  test.each([
    ['abs', 'ABS'],
    ['  ABS ', 'ABS'],
    ['PC/ABS', 'PC+ABS'],
    ['PC-ABS', 'PC+ABS'],
    ['HDPE', 'PE-HD'],
    ['pe hd', 'PE-HD'],
    ['PA66   conditioned', 'PA66 conditioned'],
  ])('"%s" is %s', (typed, symbol) => expect(value('MATERIAL', typed, 'strength')).toBe(value('MATERIAL', symbol, 'strength')));

  test.each(['XHDPE', 'HDPE2', 'PE HD x', 'x PC/ABS', 'ABSX', '45 MPa'])('"%s" is no material, and those that are held are told', typed =>
    expect(refusal('MATERIAL', typed, 'strength')).toMatch(/^#N\/A .*is not a material held here; held are ABS, PC, /),
  );
});

describe('an own card', () => {
  test('as text: parts between semicolons, a last one may be empty', () => {
    const text = 'strength 40 MPa;  Thread Share 0.8 ; od ratio 2.2; ';
    expect(value('MATERIAL', text, 'strength')).toBe(40);
    expect(value('MATERIAL', text, 'thread share')).toBe(0.8);
    expect(value('MATERIAL', text, 'od ratio')).toBe(2.2);
    expect(value('MATERIAL', ' modulus 2.1 GPa', 'modulus')).toBe(2100);
  });

  test('a part that begins with no quantity is refused with its words alone', () => {
    expect(refusal('MATERIAL', 'strength 40 MPa;  colour red ', 'strength')).toMatch(
      /^#VALUE! .*"colour red" does not begin with one of density, shrinkage/,
    );
  });

  test('as cells: blank rows and blank values are left out', () => {
    const rows = [
      [' Strength ', '6.5 ksi'],
      [null, null],
      ['modulus', null],
      [null, 3],
      ['melt', 240],
    ];
    expect(value('MATERIAL', rows, 'strength')).toBeCloseTo(44.82, 2);
    expect(value('MATERIAL', rows, 'melt')).toBe(240);
    expect(refusal('MATERIAL', rows, 'modulus')).toMatch(/^#N\/A .*modulus is not held for own card/);
  });

  test('an error in it says its row; an unknown quantity its name', () => {
    expect(
      refusal(
        'MATERIAL',
        [
          ['strength', 40],
          ['modulus', { cellError: '#DIV/0!' }],
        ],
        'strength',
      ),
    ).toMatch(/^#DIV\/0! .*row 2 is #DIV\/0!/);
    expect(
      refusal(
        'MATERIAL',
        [
          ['strength', 40],
          ['colour', 1],
        ],
        'strength',
      ),
    ).toMatch(/"colour" is not a quantity of a material card; say density, /);
    expect(
      refusal(
        'MATERIAL',
        [
          ['strength', 40],
          ['toString', 1],
        ],
        'strength',
      ),
    ).toMatch(/"toString" is not a quantity/);
  });

  test('its table has value and unit, and says that it is the own card', () => {
    expect(
      cells([
        ['Strength', '40 MPa'],
        ['od ratio', 2.2],
        ['melt', 240],
      ]),
    ).toEqual([
      ['quantity', 'typical', 'low', 'high', 'unit', 'yield or break', 'how held'],
      ['strength', 40, '–', '–', 'MPa', '–', 'own card'],
      ['od ratio', 2.2, '–', '–', '–', '–', 'own card'],
      ['melt', 240, '–', '–', '°C', '–', 'own card'],
    ]);
  });
});

describe('MATERIAL.TABLE', () => {
  test('of all: the symbol in front of the rows of each', () => {
    const [header, ...rows] = cells();
    expect(header).toEqual(['material', 'quantity', 'typical', 'low', 'high', 'unit', 'yield or break', 'how held']);
    for (const symbol of ['ABS', 'PA66-GF30 conditioned']) {
      expect(rows.filter(([name]) => name === symbol).map(row => row.slice(1))).toEqual(cells(symbol).slice(1));
    }
  });

  test('a share has no unit', () => {
    const unit = (quantity: string): unknown => cells('ABS').find(([name]) => name === quantity)?.[4];
    expect(unit('thread share')).toBe('–');
    expect(unit('modulus')).toBe('MPa');
  });
});
