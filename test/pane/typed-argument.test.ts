import { describe, expect, it } from 'vitest';
import type { Param } from '../../src/core/card';
import { areasRead, preview } from '../../src/pane/preview';
import { formulaOf, typedArgument } from '../../src/pane/typed-argument';
import { sourceOf } from '../../src/pane/workbook';
import { ENGLISH } from '../../src/words/english';
import { blankWords, choicesOf, labelOf } from '../../src/pane/argument-words';
import { CARDS } from '../../src/registry';
import type { Card } from '../../src/core/card';

const { blank } = ENGLISH.functions;

const card = (id: string): Card => CARDS.get(id) as Card;
const param = (id: string, name: string): Param => card(id).params.find(one => one.name === name) as Param;
const wall = param('BOSS.OD', 'wall');
const size = param('SCREW.CARD', 'size');
const layers = param('GRIP', 'layers');

describe('what is typed for an argument', () => {
  it.each<[text: string, of: Param, is: object]>([
    ['', wall, { is: 'blank' }],
    ['  ', wall, { is: 'blank' }],
    ['2.5', wall, { is: 'value', value: 2.5 }],
    ['2,5', wall, { is: 'value', value: 2.5 }],
    ['0,125', wall, { is: 'value', value: 0.125 }],
    ['1,000', wall, { is: 'value', value: '1,000' }],
    ['−1,000e1', wall, { is: 'value', value: '−1,000e1' }],
    ['2,5; 1,000', layers, { is: 'list', values: [2.5, '1,000'] }],
    ['−1', wall, { is: 'value', value: -1 }],
    ['0.1 in', wall, { is: 'value', value: '0.1 in' }],
    ['"0 mm"', wall, { is: 'value', value: '0 mm' }],
    ['"a ""b"" c"', wall, { is: 'value', value: 'a "b" c' }],
    ['true', wall, { is: 'value', value: true }],
    ['B4', wall, { is: 'formula', text: 'B4' }],
    ["'My sheet'!$B$4", wall, { is: 'formula', text: "'My sheet'!$B$4" }],
    ['=B4*2', wall, { is: 'formula', text: 'B4*2' }],
    ['B4:B6', layers, { is: 'formula', text: 'B4:B6' }],
    ['2.5; 1.6', layers, { is: 'list', values: [2.5, 1.6] }],
    ['2.5; 1.6', wall, { is: 'value', value: '2.5; 1.6' }],
  ])('reads %s', (text, of, is) => {
    expect(typedArgument(of, text)).toEqual(is);
  });

  it('takes M3 for a screw where a screw is asked for, for a cell where it is not, and =M3 for a cell always', () => {
    expect(typedArgument(size, 'M3')).toEqual({ is: 'value', value: 'M3' });
    expect(typedArgument(wall, 'M3')).toEqual({ is: 'formula', text: 'M3' });
    expect(typedArgument(size, '=M3')).toEqual({ is: 'formula', text: 'M3' });
    expect(typedArgument(size, 'B4')).toEqual({ is: 'formula', text: 'B4' });
  });
});

describe('the formula of what is typed', () => {
  const formula = (id: string, ...texts: string[]): string =>
    formulaOf(
      `ENCL.${id}`,
      card(id).params,
      card(id).params.map((one, i) => typedArgument(one, texts[i] ?? '')),
    );

  it('leaves out blanks at the end and keeps those between', () => {
    expect(formula('BOSS.OD', 'B4', '1.2')).toBe('=ENCL.BOSS.OD(B4,1.2)');
    expect(formula('BOSS.OD', 'B4', '1.2', '', '0.5')).toBe('=ENCL.BOSS.OD(B4,1.2,,0.5)');
    expect(formula('JOINT.INPUTS')).toBe('=ENCL.JOINT.INPUTS()');
  });

  it('quotes texts, and writes lists as a column', () => {
    expect(formula('BOSS.OD', 'M3 "x"', '0.1 in')).toBe('=ENCL.BOSS.OD("M3 ""x""","0.1 in")');
    expect(formula('GRIP', '2.5; 1.6')).toBe('=ENCL.GRIP({2.5;1.6})');
  });
});

describe('an answer before it is in a cell', () => {
  const grid = [
    [{ value: 3.4 }, { value: 1.2 }],
    [{ value: 2.5 }, { value: null }],
    [{ value: 1.6 }, { value: null }],
  ];
  const source = sourceOf(new Map([['Part', grid]]));
  const answer = (id: string, ...texts: string[]) =>
    preview(
      card(id),
      card(id).params.map((one, i) => typedArgument(one, texts[i] ?? '')),
      source,
      'Part',
    );

  it('is that of the cell, with its working', () => {
    // 3.4 + 2·1.2
    expect(answer('BOSS.OD', 'A1', 'B1')).toMatchObject({ is: 'answer', value: 5.8, working: 'outside diameter = 3.4 + 2·1.2 = 5.8 mm' });
    // 2.5 + 1.6
    expect(answer('GRIP', 'A2:A3')).toMatchObject({ is: 'answer', value: 4.1 });
    expect(answer('GRIP', '2.5;1.6')).toMatchObject({ is: 'answer', value: 4.1 });
    expect(answer('BOSS.OD', '=A1*2', '1')).toMatchObject({ is: 'answer', value: 8.8 });
  });

  it('names what is still to be given', () => {
    expect(answer('BOSS.OD', '', '')).toEqual({ is: 'incomplete', missing: ['hole', 'wall'] });
    expect(answer('BOSS.OD', 'A1', '')).toEqual({ is: 'incomplete', missing: ['wall'] });
  });

  it('is refused at the argument', () => {
    expect(answer('BOSS.OD', 'A1', '-3')).toMatchObject({ is: 'refused', argument: 'wall' });
    expect(answer('BOSS.OD', 'A1', 'B2')).toMatchObject({ is: 'refused', argument: 'wall' });
  });

  it('is left to the sheet where a function of the sheet stands in it', () => {
    expect(answer('BOSS.OD', 'A1', '=WEIBULL.DIST(A1,1,2,TRUE)')).toEqual({ is: 'unknown', argument: 'wall' });
  });

  it('knows which sheets it reads', () => {
    const given = [
      typedArgument(wall, 'B4'),
      typedArgument(wall, 'Other!B4'),
      typedArgument(wall, "='My sheet'!B4+Other!B5"),
      typedArgument(wall, '2.5'),
    ];
    expect([...new Set(areasRead(given, 'Part').map(({ sheet }) => sheet))].sort()).toEqual(['My sheet', 'Other', 'Part']);
  });
});

describe('the words of an argument', () => {
  it('label it with its unit and say what a blank counts as', () => {
    expect(labelOf(wall)).toBe('wall (mm)');
    expect(blankWords(wall, blank)).toBe('');
    expect(blankWords(param('BOSS.OD', 'draft'), blank)).toBe('blank counts as 0');
    expect(blankWords(param('WALL.FEATURE', 'share'), blank)).toBe('blank counts as 0.6');
    expect(blankWords(param('JOINT.TABLE', 'outputs'), blank)).toBe('may be left out');
  });

  it('offer words only where a word is asked for', () => {
    expect(choicesOf(param('DRAFT.SIZE', 'direction'))).toEqual(['grows', 'shrinks']);
    expect(choicesOf(wall)).toEqual([]);
    expect(choicesOf(size)).toEqual([]);
  });
});
