// Arguments that read their source themselves, and what a message says about an argument.
import { describe, expect, test } from 'vitest';
import { type Kind, NOTHING_READ } from '../../src/core/card';
import { accepts, acceptedBy, choicesOf } from '../../src/core/read/accepts';
import { LIMIT } from '../../src/core/read/limit';
import { LABELS, VALUES, words } from '../../src/core/read/lists';
import { shown, usedLength } from '../../src/core/read/cells';
import { DEVIATIONS, numbers } from '../../src/core/read/lists';
import {
  ANYTHING,
  AS_IT_CAME,
  BLOCK,
  choice,
  DEVIATION,
  named as namedKind,
  numeric,
  param,
  readArgument,
} from '../../src/core/read/params';
import * as Q from '../../src/core/read/quantity';
import { below } from '../../src/core/read/relation';
import { FIT, headDiameter, headHeight, hole, lengthTolerance, MATERIAL, point, SIZE } from '../../src/core/read/sources';
import { WHOLE } from '../../src/core/read/whole';
import { GRADE, MOULDED_GROUP } from '../../src/core/tolerance/tolerance-read';
import { number, refusal, value } from '../kit/ask';

describe('which single value of a table a text names, as the hand-over asks', () => {
  const named = (kind: Kind<number>, text: string): unknown => {
    const found = kind.from?.tableValue?.(text);
    return found && [found.table.standard, found.row, found.key];
  };

  test('head diameter and height: one value each, but the whole height of a raised head is a sum', () => {
    expect(named(headDiameter('max'), 'M3 pan')).toEqual(['ISO 7045', 'M3', 'dkMax']);
    expect(named(headDiameter('min'), 'ST2.9 pan')).toEqual(['ISO 7049', 'ST2.9', 'dkMin']);
    expect(named(headHeight('max'), 'M3 pan')).toEqual(['ISO 7045', 'M3', 'kMax']);
    expect(named(headHeight('max'), 'M3 raised countersunk')).toBeUndefined();
    expect(named(headDiameter('max'), '5.6')).toBeUndefined();
    expect(named(headHeight('max'), '2.4 mm')).toBeUndefined();
  });

  test('a point: of a tapping screw a value, of a machine screw twice its pitch', () => {
    expect(named(point, 'ST2.9')).toEqual(['ISO 1478', 'ST2.9', 'pointCone']);
    expect(named(point, 'ST2.9 flat')).toEqual(['ISO 1478', 'ST2.9', 'pointFlat']);
    expect(named(point, 'M3')).toBeUndefined();
    expect(named(point, '#4-40')).toBeUndefined();
    expect(named(point, '2.1')).toBeUndefined();
  });

  test('a hole is worked out or chosen by its fit: none', () => expect(named(hole(), 'M3 medium')).toBeUndefined());
});

describe('a screw where a number is asked', () => {
  test('a diameter: the screw alone', () => {
    expect(number('HOLE.FLOATING', 'M3', 0.2)).toBeCloseTo(2.98 + 0.2, 12);
    expect(number('HOLE.FLOATING', 3, 0.2)).toBeCloseTo(3.2, 12);
    expect(refusal('HOLE.FLOATING', 'M3 pan', 0.2)).toBe('#VALUE! screw is "M3 pan": give the screw alone, "M3"');
    expect(refusal('HOLE.FLOATING', 'wide', 0.2)).toMatch(/screw is "wide": not a length/);
  });

  test('a head: the screw with it', () => {
    expect(refusal('RECESS.DIAMETER', 'M3', 0.6)).toBe('#VALUE! head_diameter is "M3": say the head too, "M3 pan", for its head diameter');
    expect(refusal('RECESS.FLUSH', 3, 'M3')).toBe('#VALUE! head_height is "M3": say the head too, "M3 pan", for its head height');
  });

  test('a hole: the screw with a fit, a share or a material', () => {
    expect(number('HOLE.AT', 'M3 medium', 0)).toBe(3.4);
    expect(number('HOLE.AT', 'ST2.9 75 %', 0)).toBe(number('HOLE.PILOT', 'ST2.9', 0.75));
    expect(number('HOLE.AT', 'ST2.9 ABS', 0)).toBe(number('HOLE.PILOT', 'ST2.9', 'ABS'));
    expect(refusal('HOLE.AT', 'M3', 0)).toBe('#VALUE! mouth is "M3": say the fit, "M3 medium", or the thread share, "M3 75 %"');
    expect(refusal('HOLE.AT', 'M3 tight', 0)).toMatch(/^#VALUE! mouth is "M3 tight": give one of "fine", "medium", "coarse", "din 74-1"/);
  });

  test('a point and a length tolerance: the screw with its end, which is a cone unless it is said', () => {
    const layers = [16, 'ST2.9', 4.1, 0.26, 0, 0] as const;
    const withPoint = (text: unknown): unknown => value('ENGAGEMENT.LIMITS', ...layers, text);
    expect(withPoint('ST2.9')).toEqual(withPoint(2.6));
    expect(withPoint('ST2.9 flat')).toEqual(withPoint(2.1));
    expect(withPoint('ST2.9 Type F')).toEqual(withPoint('ST2.9 flat'));
    const withTolerance = (text: unknown): unknown => value('ENGAGEMENT.LIMITS', 16, text, 4.1, 0.26, 0, 0, '0 mm');
    expect(withTolerance('ST2.9')).toEqual(withTolerance(0.8));
    expect(withTolerance('ST2.9 flat')).toEqual(withTolerance('+0/-0.8'));
    expect(refusal('ENGAGEMENT.LIMITS', 16, 'ST2.9 sharp', 4.1, 0.26)).toMatch(/length_tol is "ST2.9 sharp": give one of "cone", "flat"/);
  });

  test('a strength: a material or an own card of two columns', () => {
    expect(number('PULLOUT', 'ST2.9', 6, 'ABS')).toBe(number('PULLOUT', 'ST2.9', 6, 38));
    expect(number('PULLOUT', 'ST2.9', 6, [['strength', 40]])).toBe(number('PULLOUT', 'ST2.9', 6, 40));
    expect(refusal('PULLOUT', 'ST2.9', 6, [['strength', 40, 1]])).toMatch(/a material card is two columns: quantity and value/);
    expect(refusal('MATERIAL.TABLE', 3)).toBe('#VALUE! material is 3: put the name in quotes, "ABS"');
  });
});

describe('how a message shows what was given', () => {
  test.each([
    ['wall', '"wall"'],
    ['x'.repeat(60), `"${'x'.repeat(60)}"`],
    ['x'.repeat(61), `"${'x'.repeat(59)}…"`],
    [{ cellError: '#N/A' }, '#N/A'],
    [
      [
        [1, 2],
        [3, 4],
      ],
      'a range of 2 × 2 cells',
    ],
    [[1, 2], 'a range of 2 × 1 cells'],
    [true, 'TRUE'],
    [false, 'FALSE'],
    [{ name: 'picture' }, 'a value of another kind'],
    [null, 'blank'],
    [undefined, 'blank'],
    [1.5, '1.5'],
  ])('%j: %s', (raw, words) => expect(shown(raw)).toBe(words));
});

describe('what a kind accepts, in words', () => {
  test('units only where there are some, a source only where there is one', () => {
    expect(accepts(numeric(Q.RATIO))).toBe('a plain number');
    expect(accepts(numeric(Q.LENGTH))).toBe('4.2, "4.2 mm" or "0.167 in" (units: mm, cm, m, µm, in, mil)');
    expect(accepts(headHeight('max'))).toMatch(/ mil\); or screw and head, "M3 pan": its max height$/);
    expect(numeric(Q.LENGTH).shape).toBe('one');
    expect(numeric(Q.STRESS, { words: 'a material', read: () => undefined, range: () => 40 }).shape).toBe('block');
  });

  const LENGTH_WORDS = '4.2, "4.2 mm" or "0.167 in" (units: mm, cm, m, µm, in, mil)';
  const TOLERANCE_WORDS = '0.1 for ±0.1, or "+0/-0.8"; units: mm, cm, m, µm, in, mil';
  const rowOf = (words: string): string => `a row or column of ${words}`;
  test.each<[what: string, kind: Kind<unknown>, said: string]>([
    ['a limit', LIMIT, `${LENGTH_WORDS}; or "none"`],
    ['a count', WHOLE, 'a whole number'],
    ['a tolerance', DEVIATION, TOLERANCE_WORDS],
    ['a tolerance that a screw may name', lengthTolerance, `${TOLERANCE_WORDS}; or the screw with its end, "ST2.9 cone"`],
    ['a word', FIT, '"fine", "medium", "coarse", "din 74-1"'],
    ['a screw size', SIZE, 'text such as "M3"'],
    ['a name', namedKind('joint output', 'grip', text => text), 'text such as "grip"'],
    ['a material', MATERIAL, 'a symbol such as "ABS", or a two-column range of quantity and value'],
    ['lengths', numbers(Q.LENGTH), rowOf('lengths, or one value')],
    ['words', words('direction', { max: ['maximum'], min: [] }), rowOf('"max", "min", or one for all')],
    ['tolerances', DEVIATIONS, rowOf(`tolerances, or one for all; each ${TOLERANCE_WORDS}`)],
    ['names of rows', LABELS, 'a row or column of names; a blank one is shown as –'],
    ['values', VALUES, 'a row or column of values'],
    ['a rectangle', BLOCK, 'a range'],
    ['anything', ANYTHING, 'anything'],
    ['a grade', GRADE, '"IT11" or 11; IT5 to IT16'],
    [
      'a group',
      MOULDED_GROUP,
      '"DIN 16901-130" or "DIN 16742-TG6"; or your own table of three columns: upper limit of size, ± same, ± across',
    ],
  ])('%s', (_, kind, said) => expect(accepts(kind)).toBe(said));

  test('only where a word is asked for there are words to choose from', () => {
    expect(choicesOf(param('end', choice('screw end', { cone: ['c'], flat: ['f'] })))).toEqual(['cone', 'flat']);
    expect(choicesOf(param('wall', numeric(Q.LENGTH)))).toEqual([]);
  });

  test('how it must stand to another is said with it, and asked of it', () => {
    const inside = param('hole', numeric(Q.LENGTH), { relation: below('od') });
    expect(acceptedBy(inside)).toBe(`${LENGTH_WORDS}; below od`);
    expect(readArgument(inside, 3.9, new Map([['od', 4]]))).toBe(3.9);
    expect(() => readArgument(inside, 4, new Map([['od', 4]]))).toThrow('hole is 4: must be below od');
    expect(acceptedBy(param('hole', numeric(Q.LENGTH)))).toBe(LENGTH_WORDS);
  });

  test('a number asked for is a finite number, no truth and no range', () => {
    const length = numeric(Q.LENGTH);
    expect(() => length.read(NaN, NOTHING_READ)).toThrow('not a finite number');
    expect(() => length.read(Infinity, NOTHING_READ)).toThrow('not a finite number');
    expect(() => length.read(true, NOTHING_READ)).toThrow('TRUE/FALSE is not a number');
    expect(() => length.read([[1], [2]], NOTHING_READ)).toThrow('give one value, not a range');
    expect(refusal('BOSS.OD', true, 1.2)).toBe('#VALUE! hole is TRUE: TRUE/FALSE is not a number');
    expect(refusal('BOSS.OD', [[3], [4]], 1.2)).toBe('#VALUE! hole is a range of 2 × 1 cells: give one value, not a range');
    expect(value('BOSS.OD', [[3]], 1.2)).toBeCloseTo(5.4, 12);
  });
});

describe('a blank, a bare zero and a name', () => {
  test('what is required says what it accepts and its limits', () => {
    expect(refusal('BOSS.OD', 0, 1.2)).toMatch(/^#VALUE! hole is 0 or blank; give 4\.2, "4\.2 mm" or .*, above 0 mm$/);
    expect(refusal('BOSS.OD', ' ', 1.2)).toMatch(/^#VALUE! hole is blank; give /);
    expect(refusal('SCREW.PITCH', null)).toBe('#VALUE! size is blank: put the name in quotes, "M3"');
    expect(refusal('SCREW.PITCH', 0)).toBe('#VALUE! size is 0 or blank: put the name in quotes, "M3"');
    expect(refusal('SCREW.PITCH', 3)).toBe('#VALUE! size is 3: put the name in quotes, "M3"');
    expect(refusal('MATERIAL', '', 'strength')).toBe('#VALUE! material is blank: put the name in quotes, "ABS"');
    expect(refusal('TOL.MOULDED', 10, null)).toBe('#VALUE! group is blank: put the name in quotes, "DIN 16901-130" or "DIN 16742-TG6"');
    expect(refusal('TOL.IT', 10, 0)).toMatch(/^#N\/A grade is 0: not a grade held/);
  });

  test('a word is found in any spelling, and left out is its default', () => {
    expect(number('SCREW.POINT', 'ST2.9', ' Flat ')).toBe(2.1);
    expect(number('SCREW.POINT', 'ST2.9', 'TYPE F')).toBe(2.1);
    for (const blank of [undefined, null, '', 0]) expect(number('SCREW.POINT', 'ST2.9', blank)).toBe(2.6);
    expect(refusal('SCREW.POINT', 'ST2.9', 5)).toBe('#VALUE! end is 5: give one of "cone", "flat"');
  });

  test('a zero that matters is written with its unit', () => {
    const withUnit = (quantity: Q.Quantity) => param('draft', numeric(quantity), { blank: 'explicit' });
    expect(() => readArgument(withUnit(Q.ANGLE), 0, NOTHING_READ)).toThrow('draft is 0 or blank; write "0°" for none');
    expect(() => readArgument(withUnit(Q.LENGTH), null, NOTHING_READ)).toThrow('draft is 0 or blank; write "0 mm" for none');
    expect(readArgument(withUnit(Q.ANGLE), '0°', NOTHING_READ)).toBe(0);
  });

  test('a zero inside a range: written with its unit where there may be one, else the limits are said', () => {
    expect(() => readArgument(param('gaps', numbers(Q.LENGTH)), [[1], [0]], NOTHING_READ)).toThrow(
      'gaps row 2 is 0 or blank; write "0 mm" for a true zero',
    );
    expect(() => readArgument(param('shares', numbers(Q.RATIO)), [[1], ['']], NOTHING_READ)).toThrow(
      'shares row 2 is blank; write "0" for a true zero',
    );
    expect(() => readArgument(param('walls', numbers(Q.LENGTH, { above: 0 })), [[1], [0]], NOTHING_READ)).toThrow(
      'walls row 2 is 0 or blank; must be above 0 mm',
    );
    expect(() => readArgument(param('walls', numbers(Q.LENGTH, { above: 0 })), [[1], [-2]], NOTHING_READ)).toThrow(
      'walls row 2 is -2: must be above 0 mm',
    );
  });

  test('limits at both ends, in words and at their edge', () => {
    const share = param('share', numeric(Q.SHARE), { atLeast: 0, atMost: 1 });
    expect([readArgument(share, '0', NOTHING_READ), readArgument(share, 1, NOTHING_READ)]).toEqual([0, 1]);
    expect(() => readArgument(share, 1.01, NOTHING_READ)).toThrow('share is 1.01: must be at least 0 and at most 1');
    const draft = param('draft', numeric(Q.ANGLE), { above: 0, below: 90 });
    expect(() => readArgument(draft, 90, NOTHING_READ)).toThrow('draft is 90: must be above 0° and below 90°');
    expect(() => readArgument(draft, '0°', NOTHING_READ)).toThrow('must be above 0° and below 90°');
  });

  test('an error is told, unless the argument takes everything', () => {
    const error = { cellError: '#REF!' };
    expect(() => readArgument(param('wall', numeric(Q.LENGTH)), error, NOTHING_READ)).toThrow('wall is #REF!');
    expect(() => readArgument(param('wall', numeric(Q.LENGTH)), [[error]], NOTHING_READ)).toThrow('wall is #REF!');
    expect(readArgument(param('anything', ANYTHING), error, NOTHING_READ)).toBe(error);
    expect(readArgument(param('anything', AS_IT_CAME), [[1, 2]], NOTHING_READ)).toEqual([[1, 2]]);
    expect(readArgument(param('anything', ANYTHING), [[7]], NOTHING_READ)).toBe(7);
  });

  test('what is used of a range ends at its last value', () => {
    expect([[], [[0]], [[''], [null]], [[1]], [[0], [1], [0], ['']]].map(usedLength)).toEqual([0, 0, 0, 1, 2]);
  });
});
