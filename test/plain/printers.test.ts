// One tree, three printers: what words, spreadsheets and mathematics must say, typed from the meaning of the tree.
import { describe, expect, test } from 'vitest';
import { calledBy } from '../../src/plain/forms';
import { type MathNode, type MathPiece, setForm, symbolPiece } from '../../src/plain/mathml';
import { known, phrase, type Piece, print, printSteps, stepWords, symbol } from '../../src/plain/print';
import { atom, negative, number, operand, type Ref, spreadsheetFormulas, text } from '../../src/plain/spreadsheet';
import { type Form, isLooser, type Tree, visit } from '../../src/plain/tree';

const PARAMS = ['a', 'b', 'c'];
const formOf = (result: Tree, steps: Form['steps'] = []): Form => ({ params: PARAMS, steps, result });

const inWords = (tree: Tree, args: readonly Piece[] = PARAMS.map(symbol)): string => print(formOf(tree), args).text;
const onSheet = (tree: Tree, args: readonly Ref[] = ['A1', 'B1', 'C1'].map(at => atom(at))): unknown =>
  spreadsheetFormulas(formOf(tree), args);

/** Mathematics on one line: a raised piece in braces behind ^, a fraction as {above}/{below}, cases between semicolons. */
function line(node: MathNode): string {
  if (typeof node === 'string') return node === '\u2061' ? '' : node;
  const [a = '', b = '', c = ''] = node.children.map(line);
  switch (node.tag) {
    case 'msup':
      return `${a}^{${b}}`;
    case 'msub':
      return `${a}_{${b}}`;
    case 'msubsup':
      return `${a}_{${b}}^{${c}}`;
    case 'mfrac':
      return `{${a}}/{${b}}`;
    case 'msqrt':
      return `√{${a}}`;
    case 'mroot':
      return `root ${b} {${a}}`;
    case 'munder':
      return `${a}_{${b}}`;
    case 'mtable':
      return node.children.map(line).join('; ');
    case 'mtr':
      return `${a}, ${b}`;
    default:
      return node.children.map(line).join('');
  }
}
const inMaths = (tree: Tree, args: readonly MathPiece[] = PARAMS.map(symbolPiece)): string => line(setForm(formOf(tree), args).result.node);

describe('brackets', () => {
  test.each<readonly [Tree, words: string, sheet: string, maths: string]>([
    [['+', ['+', 'a', 'b'], 'c'], 'a + b + c', 'A1+B1+C1', 'a+b+c'],
    [['-', 'a', ['+', 'b', 'c']], 'a − (b + c)', 'A1-(B1+C1)', 'a−(b+c)'],
    [['-', 'a', ['-', 'b', 'c']], 'a − (b − c)', 'A1-(B1-C1)', 'a−(b−c)'],
    [['-', ['-', 'a', 'b'], 'c'], 'a − b − c', 'A1-B1-C1', 'a−b−c'],
    [['+', 'a', ['-', 'b', 'c']], 'a + b − c', 'A1+B1-C1', 'a+b−c'],
    [['-', 'a', ['*', 'b', 'c']], 'a − b·c', 'A1-B1*C1', 'a−b·c'],
    [['*', ['+', 'a', 'b'], 'c'], '(a + b)·c', '(A1+B1)*C1', '(a+b)·c'],
    [['*', 'a', ['-', 'b', 'c']], 'a·(b − c)', 'A1*(B1-C1)', 'a·(b−c)'],
    [['*', ['*', 'a', 'b'], 'c'], 'a·b·c', 'A1*B1*C1', 'a·b·c'],
    [['/', 'a', ['*', 'b', 'c']], 'a/(b·c)', 'A1/(B1*C1)', '{a}/{b·c}'],
    [['/', 'a', ['/', 'b', 'c']], 'a/(b/c)', 'A1/(B1/C1)', '{a}/{{b}/{c}}'],
    [['/', ['*', 'a', 'b'], 'c'], 'a·b/c', 'A1*B1/C1', '{a·b}/{c}'],
    [['/', ['+', 'a', 'b'], 'c'], '(a + b)/c', '(A1+B1)/C1', '{a+b}/{c}'],
    [['/', 'a', ['^', 'b', 2]], 'a/b²', 'A1/B1^2', '{a}/{b^{2}}'],
    [['*', 'a', ['^', 'b', 3]], 'a·b³', 'A1*B1^3', 'a·b^{3}'],
    [['^', ['*', 'a', 'b'], 2], '(a·b)²', '(A1*B1)^2', '(a·b)^{2}'],
    [['^', ['/', 'a', 'b'], 4], '(a/b)⁴', '(A1/B1)^4', '({a}/{b})^{4}'],
    [['^', ['^', 'a', 2], 3], '(a²)³', '(A1^2)^3', '(a^{2})^{3}'],
    [['^', 'a', ['+', 'b', 1]], 'a^(b + 1)', 'A1^(B1+1)', 'a^{b+1}'],
    [['^', 'a', 0.5], 'a^0.5', 'A1^0.5', 'a^{0.5}'],
    // a sign is looser than a power on paper and tighter in a spreadsheet
    [['neg', ['^', 'a', 2]], '−a²', '-(A1^2)', '−a^{2}'],
    [['^', ['neg', 'a'], 2], '(−a)²', '(-A1)^2', '(−a)^{2}'],
    [['neg', ['+', 'a', 'b']], '−(a + b)', '-(A1+B1)', '−(a+b)'],
    [['neg', ['*', 'a', 'b']], '−(a·b)', '-(A1*B1)', '−(a·b)'],
    [['neg', ['neg', 'a']], '−(−a)', '-(-A1)', '−(−a)'],
    [['*', 'a', ['neg', 'b']], 'a·−b', 'A1*-B1', 'a·−b'],
    [['/', 'a', ['neg', 'b']], 'a/(−b)', 'A1/-B1', '{a}/{−b}'],
    [['+', 'a', ['neg', 'b']], 'a − b', 'A1+-B1', 'a+−b'],
    [['-', 'a', ['neg', 'b']], 'a + b', 'A1--B1', 'a−−b'],
    [['not', ['<', 'a', 'b']], 'not (a < b)', 'NOT(A1<B1)', 'not (a<b)'],
    [['and', ['<=', 'a', 'b'], ['>=', 'b', 'c']], 'a ≤ b and b ≥ c', 'AND(A1<=B1,B1>=C1)', 'a≤b and b≥c'],
    [['or', ['=', 'a', 'b'], ['<>', 'b', 'c']], 'a = b or b ≠ c', 'OR(A1=B1,B1<>C1)', 'a=b or b≠c'],
    [['>', ['+', 'a', 'b'], 'c'], 'a + b > c', 'A1+B1>C1', 'a+b>c'],
    [['=', ['<', 'a', 'b'], ['>', 'b', 'c']], 'a < b = b > c', '(A1<B1)=(B1>C1)', 'a<b=b>c'],
    [['if', ['<', 'a', 'b'], 'a', 'b'], 'if a < b: a, else b', 'IF(A1<B1,A1,B1)', '{a, if a<b; b, otherwise'],
    [['+', ['if', ['<', 'a', 'b'], 'a', 'b'], 'c'], '(if a < b: a, else b) + c', 'IF(A1<B1,A1,B1)+C1', '({a, if a<b; b, otherwise)+c'],
    [
      ['if', ['<', 'a', 'b'], 'a', ['if', ['<', 'b', 'c'], 'b', 'c']],
      'if a < b: a, else if b < c: b, else c',
      'IF(A1<B1,A1,IF(B1<C1,B1,C1))',
      '{a, if a<b; b, if b<c; c, otherwise',
    ],
    [['*', 'PI', 'a'], 'π·a', 'PI()*A1', 'π·a'],
    [['of', ['record', { upperMm: 'a', lowerMm: 'b' }], 'lowerMm'], 'b', 'B1', 'b'],
  ])('%j', (tree, words, sheet, maths) => {
    expect(inWords(tree)).toBe(words);
    expect(onSheet(tree)).toEqual({ formula: sheet });
    expect(inMaths(tree)).toBe(maths);
  });

  test('the one difference between hosts is one fact of the table', () => {
    expect(isLooser('sign', 'power')).toBe(true);
    expect(isLooser('power', 'spreadsheet sign')).toBe(true);
    expect(isLooser('atom', 'atom')).toBe(false);
    expect(isLooser('atom', 'choice')).toBe(false);
  });
});

describe('entries of the maths module', () => {
  const S: Tree = ['+', 'a', 'b'];
  const of = (name: string, ...args: Tree[]): Tree => ['call', name, ...args];
  const A: Tree = ['list', 'a', 'b'];
  const B: Tree = ['list', 'b', 'c'];
  const C: Tree = ['list', 'c', 'a'];
  test.each<readonly [Tree, words: string, sheet: string, maths: string]>([
    [of('tanDeg', 'a'), 'tan(a)', 'TAN(RADIANS(A1))', 'tana'],
    [of('cosDeg', S), 'cos(a + b)', 'COS(RADIANS(A1+B1))', 'cos(a+b)'],
    [of('atanDeg', 'a'), 'arctan(a)', 'DEGREES(ATAN(A1))', 'arctana'],
    [of('ln', S), 'ln(a + b)', 'LN(A1+B1)', 'ln(a+b)'],
    [of('sqrt', 'a'), '√a', 'SQRT(A1)', '√{a}'],
    [of('sqrt', S), '√(a + b)', 'SQRT(A1+B1)', '√{a+b}'],
    [of('cbrt', S), '∛(a + b)', '(A1+B1)^(1/3)', 'root 3 {a+b}'],
    [of('abs', 'a'), 'abs(a)', 'ABS(A1)', '|a|'],
    [of('min', 'a', S), 'min(a; a + b)', 'MIN(A1,A1+B1)', 'min(a,a+b)'],
    [of('max', 'a', 'b'), 'max(a; b)', 'MAX(A1,B1)', 'max(a,b)'],
    [of('wholeUp', S), 'round up(a + b)', 'ROUNDUP(A1+B1-1E-9,0)', '⌈a+b⌉'],
    [of('normalTail', S), 'normal tail beyond (a + b)', 'NORMSDIST(-(A1+B1))', 'Φ(−(a+b))'],
    [of('atMost', 'a', 'b'), 'a ≤ b', 'A1<=B1+1E-9', 'a≤b'],
    [of('atLeast', 'a', 'b'), 'a ≥ b', 'A1>=B1-1E-9', 'a≥b'],
    [of('sum', A), 'a + b', 'A1+B1', 'a+b'],
    [of('sumProducts', A, B), 'a·b + b·c', 'A1*B1+B1*C1', 'a·b+b·c'],
    [of('sumSquaredDifferences', A, B), '(a − b)² + (b − c)²', '(A1-B1)*(A1-B1)+(B1-C1)*(B1-C1)', '(a−b)^{2}+(b−c)^{2}'],
    [of('sumWidths', A, B, C), '|a|·(b − c) + |b|·(c − a)', 'A1*((A1>0)-(A1<0))*(B1-C1)+B1*((B1>0)-(B1<0))*(C1-A1)', '|a|·(b−c)+|b|·(c−a)'],
    [
      of('sumSquaredWidths', A, B, C),
      '(a·(b − c))² + (b·(c − a))²',
      'A1*(B1-C1)*A1*(B1-C1)+B1*(C1-A1)*B1*(C1-A1)',
      '(a·(b−c))^{2}+(b·(c−a))^{2}',
    ],
  ])('%j', (tree, words, sheet, maths) => {
    expect(inWords(tree)).toBe(words);
    expect(onSheet(tree)).toEqual({ formula: sheet });
    expect(inMaths(tree)).toBe(maths);
  });
  test('rows that count', () => expect(onSheet(of('countWidths', A, B, C))).toEqual({ formula: '0+(A1*(B1-C1)<>0)+0+(B1*(C1-A1)<>0)' }));

  const ranges: Ref[] = [
    { range: 'A1:A3', values: [1, -2, 3] },
    { range: 'B1:B3', values: [4, 5, 6] },
    { range: 'C1:C3', values: [1, 1, 6] },
  ];
  test.each<readonly [string, params: number, words: string, sheet: string, value: number, maths: string]>([
    ['sum', 1, 'Σ a', 'SUM(A1:A3)', 2, '∑_{i}a'],
    ['sumProducts', 2, 'Σ a·b', 'SUMPRODUCT(A1:A3*B1:B3)', 12, '∑_{i}a·b'],
    ['sumSquaredDifferences', 2, 'Σ (a − b)²', 'SUMPRODUCT((A1:A3-B1:B3)*(A1:A3-B1:B3))', 67, '∑_{i}(a−b)^{2}'],
    ['sumWidths', 3, 'Σ |a|·(b − c)', 'SUMPRODUCT(A1:A3*((A1:A3>0)-(A1:A3<0))*(B1:B3-C1:C3))', 11, '∑_{i}|a|·(b−c)'],
    ['sumSquaredWidths', 3, 'Σ (a·(b − c))²', 'SUMPRODUCT(A1:A3*(B1:B3-C1:C3)*A1:A3*(B1:B3-C1:C3))', 73, '∑_{i}(a·(b−c))^{2}'],
    ['countWidths', 3, 'n', 'SUMPRODUCT(0+(A1:A3*(B1:B3-C1:C3)<>0))', 2, 'counta·(b−c)≠0'],
  ])('%s over rows that are not known', (name, params, words, sheet, value, maths) => {
    const tree = of(name, ...PARAMS.slice(0, params));
    expect(inWords(tree)).toBe(words);
    expect(onSheet(tree, ranges)).toEqual({ formula: sheet, value });
    expect(inMaths(tree).replace(/[()]/g, '')).toBe(maths.replace(/[()]/g, ''));
  });

  test('a sum over rows ends at the next + or −', () => {
    expect(inWords(['-', 'b', of('sum', 'a')])).toBe('b − Σ a');
    expect(inWords(['*', 'b', of('sum', 'a')])).toBe('b·(Σ a)');
    expect(inWords(of('sqrt', of('sum', 'a')))).toBe('√(Σ a)');
  });
});

describe('words with values', () => {
  test.each<readonly [Tree, text: string, value: unknown]>([
    [['+', 'a', 'b'], '2 − 3', -1],
    [['-', 'a', 'b'], '2 + 3', 5],
    [['*', 'a', 'b'], '2·−3', -6],
    [['/', 'a', 'b'], '2/(−3)', 2 / -3],
    [['^', 'b', 'a'], '(−3)²', 9],
    [['neg', 'b'], '−(−3)', 3],
    [['+', 'a', 'c'], '2', 2],
    [['+', 'c', 'a'], '2', 2],
    [['-', 'a', 'c'], '2', 2],
    [['*', 'a', 'c'], '0', 0],
    [['<', 'a', 'b'], '2 < −3', false],
    [['<=', 'a', 'a'], '2 ≤ 2', true],
    [['>', 'a', 'a'], '2 > 2', false],
    [['>', 'a', 'b'], '2 > −3', true],
    [['>=', 'a', 'a'], '2 ≥ 2', true],
    [['<', 'a', 'a'], '2 < 2', false],
    [['=', 'a', 'a'], '2 = 2', true],
    [['<>', 'a', 'a'], '2 ≠ 2', false],
    [['and', ['=', 'a', 2], ['=', 'b', 2]], '2 = 2 and −3 = 2', false],
    [['or', ['=', 'a', 2], ['=', 'b', 2]], '2 = 2 or −3 = 2', true],
    [['not', ['=', 'a', 2]], 'not (2 = 2)', false],
    [['if', ['<', 'a', 'b'], 'a', 'b'], '−3', -3],
    [['if', ['>', 'a', 'b'], 'a', 'b'], '2', 2],
    [['call', 'tanDeg', 'c'], 'tan(0°)', 0],
    [['call', 'sqrt', ['call', 'abs', 'b']], '√abs(−3)', Math.sqrt(3)],
    [['call', 'cbrt', 'b'], '∛(−3)', Math.cbrt(-3)],
    [['call', 'min', 'a', 'b'], 'min(2; −3)', -3],
    [['call', 'sumWidths', ['list', 'b'], ['list', 'a'], ['list', 'c']], '3·2', 6],
    [['call', 'countWidths', ['list', 'b', 'c'], ['list', 'a', 'a'], ['list', 'c', 'c']], '1', 1],
    [['text', 'pass'], 'pass', 'pass'],
    ['PI', 'π', Math.PI],
  ])('%j', (tree, words, value) => {
    expect(print(formOf(tree), [known(2), known(-3), known(0)])).toMatchObject({ text: words, value });
    const formula = spreadsheetFormulas(formOf(tree), [atom('A1', 2), atom('B1', -3), atom('C1', 0)]);
    expect((formula as { value: unknown }).value).toEqual(value);
  });

  test('what is not known has no value, in words and on the sheet', () => {
    for (const tree of [
      ['+', 'a', 'b'],
      ['<', 'a', 'b'],
      ['neg', 'b'],
      ['not', ['<', 'a', 'b']],
      ['call', 'max', 'a', 'b'],
    ] as const) {
      expect(print(formOf(tree), [known(2), symbol('b')])).not.toHaveProperty('value');
      expect(spreadsheetFormulas(formOf(tree), [atom('A1', 2), atom('B1')])).not.toHaveProperty('value');
    }
  });

  test('numbers, words, lists and records', () => {
    expect(known(1 / 3).text).toBe('0.333333');
    expect(known([1, [2, 'x']]).text).toBe('1; 2; x');
    expect(known({ upperMm: 1 }).parts).toMatchObject({ upperMm: { text: '1', value: 1 } });
    expect([known(true).text, known(null).text, known(undefined).text]).toEqual(['true', '–', '–']);
    expect(inWords(['of', 'a', 'majorMaxMm'], [symbol('size')])).toBe('size majorMax');
    expect(inWords(['of', 'a', 'coneDeg'], [symbol('')])).toBe('cone');
    expect(inWords('a', [])).toBe('–');
    expect(inWords(['^', 'a', 2], [phrase('head diameter')])).toBe('(head diameter)²');
    expect(inWords(['/', 1, 'a'], [phrase('head diameter')])).toBe('1/head diameter');
  });

  test('steps take the worth of the steps before them', () => {
    const form = formOf(
      ['*', 'sumMm', 2],
      [
        ['sumMm', ['+', 'a', 'b']],
        ['halfMm', ['/', 'sumMm', 2]],
      ],
    );
    const { steps, result } = printSteps(form, [known(2), known(3)]);
    expect(steps.map(({ name, piece }) => `${name} = ${piece.text}`)).toEqual(['sumMm = 2 + 3', 'halfMm = 5/2']);
    expect(result).toMatchObject({ text: '5·2', value: 10 });
    expect(printSteps(form, [symbol('a'), known(3)]).result.text).toBe('(a + 3)·2');
  });

  test.each([
    ['shearStressMpa', 'shear stress'],
    ['areaMm2', 'area'],
    ['torqueNm', 'torque'],
    ['forceN', 'force'],
    ['slopeMmPer', 'slope'],
    ['isOpen', 'is open'],
  ])('%s is "%s"', (name, words) => expect(stepWords(name)).toBe(words));
});

describe('cells', () => {
  test('a step that is more than a cell gets a cell of its own, with its worth', () => {
    const put: unknown[] = [];
    const form = formOf(
      ['*', 'sumMm', 'sameMm'],
      [
        ['sumMm', ['+', 'a', 'b']],
        ['sameMm', 'a'],
      ],
    );
    const step = (...cell: readonly unknown[]): string => `S${put.push(cell)}`;
    expect(spreadsheetFormulas(form, [atom('A1', 2), atom('B1', 3)], step)).toEqual({ formula: 'S1*A1', value: 10 });
    expect(put).toEqual([['sumMm', 'A1+B1', 5]]);
    expect(spreadsheetFormulas(form, [atom('A1'), atom('B1')])).toEqual({ formula: '(A1+B1)*A1' });
  });

  test('an argument that the called formula reads twice is worked out once', () => {
    const put: unknown[] = [];
    const step = (...cell: readonly unknown[]): string => `S${put.push(cell)}`;
    // bearing under the head: its area reads each diameter once
    expect(
      spreadsheetFormulas(
        formOf(['call', 'bearingMpa', 'a', ['+', 'b', 1], 'c']),
        ['A1', 'B1', 'C1'].map(at => atom(at)),
        step,
      ),
    ).toEqual({
      formula: 'A1/S1',
    });
    expect(put).toEqual([['areaMm2', 'PI()/4*((B1+1)^2-C1^2)', undefined]]);
    put.length = 0;
    // the factor of a ring reads its pin above and below the stroke
    expect(
      spreadsheetFormulas(
        formOf(['call', 'ringFactor', ['+', 'a', 1], 'b']),
        ['A1', 'B1'].map(at => atom(at)),
        step,
      ),
    ).toEqual({
      formula: '(B1^2+S1^2)/(B1^2-S1^2)',
    });
    expect(put).toEqual([['pinMm', 'A1+1', undefined]]);
  });

  test('numbers and texts', () => {
    expect([1e-9, 1e99, -2.5].map(value => number(value).text)).toEqual(['1E-9', '1E99', '-2.5']);
    expect(onSheet(['^', -2, 2])).toEqual({ formula: '(-2)^2', value: 4 });
    expect(text('a "b"')).toMatchObject({ text: '"a ""b"""', value: 'a "b"' });
    expect(negative(atom('A1', 2))).toMatchObject({ text: '-A1', value: -2 });
    expect([operand(atom('A1')), operand(negative(atom('A1')))]).toEqual(['A1', '(-A1)']);
  });

  test('rows of results', () => {
    expect(onSheet(['list', 'a', ['+', 'a', 'b']])).toEqual([{ formula: 'A1' }, { formula: 'A1+B1' }]);
    expect(onSheet(['list', ['list', ['text', 'x'], 2]])).toEqual([
      [
        { formula: '"x"', value: 'x' },
        { formula: '2', value: 2 },
      ],
    ]);
  });

  test('what cannot be written says so', () => {
    expect(() => onSheet('nowhere')).toThrow('nowhere stands for nothing');
    expect(() => onSheet(['of', 'a', 'upperMm'])).toThrow('no cell for upperMm');
    expect(() => onSheet(['+', ['list', 'a'], 'b'])).toThrow('a list stands where one value is needed');
    expect(() => onSheet(['record', { upperMm: 'a' }])).toThrow('a formula must end in a value or a list of values');
    for (const printer of [onSheet, inWords, inMaths])
      expect(() => printer(['call', 'noFormula', 'a'])).toThrow('no plain form of noFormula');
    expect(onSheet('a', [])).toEqual({ formula: '0' });
  });
});

describe('mathematics', () => {
  test.each([
    ['d_h', 'd_{h}'],
    ['t_i⁺', 't_{i}^{+}'],
    ['x⁻', 'x^{−}'],
    ['d1 min', 'd_{1 min}'],
    ['d1', 'd_{1}'],
    ['head diameter', 'head diameter'],
    // a short word is no symbol with an index
    ['play', 'play'],
    ['low', 'low'],
    ['D_Rh', 'D_{Rh}'],
    ['x', 'x'],
  ])('%s', (symbolText, maths) => expect(line(symbolPiece(symbolText).node)).toBe(maths));

  test.each<readonly [number, string]>([
    [12345, '12\u202f345'],
    [9999, '9999'],
    [-2, '−2'],
    [1e99, '∞'],
  ])('%s', (value, maths) => expect(inMaths(value)).toBe(maths));

  test('one times something is that thing, a negative number under a power stands in brackets', () => {
    expect(inMaths(['*', 1, 'a'])).toBe('a');
    expect(inMaths(['^', -2, 2])).toBe('(−2)^{2}');
    expect(inMaths(['of', 'a', 'upperMm'])).toBe('a_{upper}');
    expect(inMaths(['text', 'pass'])).toBe('pass');
    expect(inMaths('diameterMm', [])).toBe('diameter');
    expect(inMaths('a', [])).toBe('a');
  });

  /** As markup, the application sign in words. */
  const markup = (node: MathNode): string =>
    typeof node === 'string'
      ? node.replace('\u2061', 'of')
      : `<${[node.tag, ...Object.entries(node.attributes).map(([key, value]) => `${key}=${value}`)].join(' ')}>${node.children.map(markup).join('')}</${node.tag}>`;

  test.each<readonly [string, string]>([
    ['x', '<mi>x</mi>'],
    ['Ra', '<mi>Ra</mi>'],
    ['wall', '<mi class=name>wall</mi>'],
    ['d1', '<msub><mi>d</mi><mn>1</mn></msub>'],
    ['d1 min', '<msub><mi>d</mi><mi class=name>1 min</mi></msub>'],
    ['d_h', '<msub><mi>d</mi><mi>h</mi></msub>'],
    ['D_Rh', '<msub><mi>D</mi><mi class=name>Rh</mi></msub>'],
    ['Re_h', '<msub><mi>Re</mi><mi>h</mi></msub>'],
    ['t_i⁻', '<msubsup><mi>t</mi><mi>i</mi><mo>−</mo></msubsup>'],
    ['t⁺', '<msup><mi>t</mi><mo>+</mo></msup>'],
  ])('%s as markup', (symbolText, expected) => expect(markup(symbolPiece(symbolText).node)).toBe(expected));

  test.each<readonly [Tree, string]>([
    [['+', 'a', 2], '<mrow><mi>a</mi><mo>+</mo><mn>2</mn></mrow>'],
    [['call', 'tanDeg', 'a'], '<mrow><mi>tan</mi><mo rspace=0.17em>of</mo><mi>a</mi></mrow>'],
    [
      ['call', 'ln', ['/', 'a', 'b']],
      '<mrow><mi>ln</mi><mo>of</mo><mrow><mo>(</mo><mfrac><mi>a</mi><mi>b</mi></mfrac><mo>)</mo></mrow></mrow>',
    ],
    [['call', 'cbrt', 'a'], '<mroot><mi>a</mi><mn>3</mn></mroot>'],
    [['call', 'sum', 'a'], '<mrow><munder><mo>∑</mo><mi>i</mi></munder><mi>a</mi></mrow>'],
    [['not', 'a'], '<mrow><mtext>not </mtext><mi>a</mi></mrow>'],
    [
      ['if', ['<', 'a', 'b'], 'a', 'b'],
      '<mrow><mo>{</mo><mtable class=cases displaystyle=true><mtr><mtd><mi>a</mi></mtd><mtd><mtext>if </mtext><mrow><mi>a</mi><mo><</mo><mi>b</mi></mrow></mtd></mtr><mtr><mtd><mi>b</mi></mtd><mtd><mtext>otherwise</mtext></mtd></mtr></mtable></mrow>',
    ],
  ])('%j as markup', (tree, expected) => expect(markup(setForm(formOf(tree), PARAMS.map(symbolPiece)).result.node)).toBe(expected));

  test('brackets inside powers and products', () => {
    expect(inMaths(['^', ['and', 'a', 'b'], 2])).toBe('(a and b)^{2}');
    expect(inMaths(['^', ['call', 'tanDeg', 'a'], 2])).toBe('(tana)^{2}');
    expect(inMaths(['^', ['-', 'a', 'b'], 2])).toBe('(a−b)^{2}');
    expect(inMaths(['*', ['-', 'a', 'b'], 'c'])).toBe('(a−b)·c');
    expect(inMaths(['*', ['+', 'a', 'b'], ['+', 'b', 'c']])).toBe('(a+b)·(b+c)');
    expect(inMaths(['^', 0, 2])).toBe('0^{2}');
    expect(inMaths(10000)).toBe('10\u202f000');
    expect(inMaths(123456)).toBe('123\u202f456');
    expect(inMaths('b', [])).toBe('b');
  });

  test('a step that is a list or a record stays what it is made of; a name that means something else already leaves its piece in place', () => {
    const form = formOf(
      ['+', ['call', 'sum', 'list'], ['+', ['of', 'record', 'upperMm'], ['+', 'areaMm', 'areaMm2']]],
      [
        ['list', ['list', 'a', 'b']],
        ['record', ['record', { upperMm: 'c' }]],
        ['areaMm', 'a'],
        ['areaMm2', ['*', 'a', 'b']],
      ],
    );
    const { lines, result } = setForm(form, PARAMS.map(symbolPiece));
    expect(lines.map(({ left, right }) => `${line(left)} = ${line(right)}`)).toEqual(['area = a']);
    expect(line(result.node)).toBe('a+b+c+area+a·b');
  });

  test('steps stand on lines of their own, each name once', () => {
    const form = formOf(
      ['*', 'sumMm', 'isOpen'],
      [
        ['sumMm', ['+', 'a', 'b']],
        ['isOpen', ['<', 'a', 'b']],
        ['sumNm', ['+', 'a', 'b']],
        ['sumN', 'c'],
      ],
    );
    const { lines, result } = setForm(form, PARAMS.map(symbolPiece));
    expect(lines.map(({ left, right, isCondition }) => `${line(left)} ${isCondition ? '⇔' : '='} ${line(right)}`)).toEqual([
      'sum = a+b',
      'is open ⇔ a<b',
    ]);
    expect(line(result.node)).toBe('sum·is open');
  });

  test('a choice of a called formula gets a line', () => {
    const { lines, result } = setForm(formOf(['+', ['call', 'mouthMm', 'a', 'b', 'b'], 'c']), PARAMS.map(symbolPiece));
    expect(lines.map(({ left, right }) => `${line(left)} = ${line(right)}`)).toEqual(['mouth = {max(b,b), if a>0; b, otherwise']);
    expect(line(result.node)).toBe('mouth+c');
  });
});

describe('the walk', () => {
  test('meets every name, part, call and choice, in branches and steps too', () => {
    const met: string[] = [];
    const form = formOf(
      ['if', ['<', 'a', 1], ['call', 'f', ['neg', 'b']], ['record', { x: ['list', ['of', 'c', 'upperMm']] }]],
      [['s', ['not', ['call', 'g']]]],
    );
    visit(form, {
      name: name => void met.push(name),
      call: name => void met.push(`call ${name}`),
      of: (_, part) => void met.push(`of ${part}`),
    });
    expect(met).toEqual(['call g', 'a', 'b', 'call f', 'c', 'of upperMm']);
  });

  test('finds the functions whose formula a formula calls, itself or through others', () => {
    expect(calledBy('ENGAGEMENT.LIMITS').sort()).toEqual(['ENGAGEMENT', 'PENETRATION']);
    expect(calledBy('DRAFT.OFFSET')).toEqual([]);
  });
});
