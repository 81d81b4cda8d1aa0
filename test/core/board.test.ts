// The board in its pocket, on its boss, beside the screw.
import { describe, expect } from 'vitest';
import { CARDS } from '../../src/registry';
import { number, refusal, value } from '../kit/ask';
import { expectPrinted } from '../kit/near';
import { refereed } from '../kit/refereed';

const test = refereed('core/board.test.ts');

describe('gap in the pocket', () => {
  test('by hand: ((61 − 0.3) − (60 + 0.2))/2 = 0.25 per side', () => {
    expectPrinted(number('BOARD.GAP', 60, 0.2, 61, 0.3), 0.25);
  });
  test('by hand: 5 mm above the floor 1° opens 0.0873 per side more', () => {
    expectPrinted(number('BOARD.GAP', 60, 0.2, 61, 0.3, 5, '1°') - number('BOARD.GAP', 60, 0.2, 61, 0.3), '0.0873');
  });
  test('the wide board in the narrow pocket: upper deviation of one, lower of the other', () => {
    expectPrinted(number('BOARD.GAP', 60, '+0.2/-0', 61, '+0.4/-0.1'), 0.35);
    expectPrinted(number('BOARD.GAP', 60, '+0/-0.2', 61, '+0/-0.6'), 0.2);
  });
  test('a board that does not go in at its worst is refused', () => {
    expect(refusal('BOARD.GAP', 60, 0.5, 61, 0.6)).toContain('the largest board does not go into the smallest pocket');
    expectPrinted(number('BOARD.GAP', 60, 0.5, 61, 0.5), 0);
  });
});

describe('clamped board', () => {
  // 1.6 ± 10 % is the usual thickness (fabricators, read in 2 pages): 1.44 to 1.76
  test('by hand: space 1.8 ± 0.1: 1.70 − 1.76, 1.8 − 1.6, 1.9 − 1.44', () => {
    expectPrinted(value('BOARD.CLAMP', 1.8, 0.1, 1.6, 0.16), [[-0.06, 0.2, 0.46]]);
  });
  test('one-sided tolerances', () => {
    expectPrinted(value('BOARD.CLAMP', 1.8, '+0.1/-0', 1.6, '0 / -0.2'), [[0.2, 0.2, 0.5]]);
  });
  test('identity: min and max lie as far from nominal as the tolerances add up', () => {
    const [min, nominal, max] = (value('BOARD.CLAMP', 2, 0.07, 1.6, 0.16) as number[][])[0] as [number, number, number];
    expect(nominal - min).toBeCloseTo(0.23, 12);
    expect(max - nominal).toBeCloseTo(0.23, 12);
  });
});

describe('metal beside copper', () => {
  test('by hand: 5.6/2 + (3.5 − 2.76)/2 + 0.1 = 3.27', () => {
    expectPrinted(number('BOARD.REACH', 5.6, 3.5, 2.76, 0.1), 3.27);
  });
  test('from text: largest head (ISO 7045 M3: 5.6), largest hole (ISO 273 medium H13: 3.58), smallest screw (M3 6g: 2.874)', () => {
    expectPrinted(number('BOARD.REACH', 'M3 pan', 'M3 medium', 'M3'), 3.153);
  });
  test('by hand: copper at 5, reach 3.27, 1 asked for: 0.73; too close is negative', () => {
    expectPrinted(number('BOARD.MARGIN', 5, 3.27, 1), 0.73);
    expectPrinted(number('BOARD.MARGIN', 4, 3.27, 1), -0.27);
  });
  test.each([0, null, undefined, '', ' ', '0 mm', -1])('a required distance of %j is refused: there is no default', required => {
    expect(refusal('BOARD.MARGIN', 5, 3.27, required)).toMatch(/^#VALUE! required /);
  });
  test('whoever asks is told who decides', () => {
    expect(CARDS.get('BOARD.MARGIN')?.caution).toMatch(
      /No electrical distance is supplied.*standard that applies to your product.*licensed reviewer decide/,
    );
  });
  test('no limit, default or example of the board supplies an electrical distance: required has nothing but "above 0"', () => {
    const required = CARDS.get('BOARD.MARGIN')?.params[2];
    expect([required?.blank, required?.limits, required?.optional]).toEqual(['refused', { above: 0 }, false]);
  });
  test('quoted as practice under IPC-2221 in 2018 (read in 1 secondary copy): 1.25 × the largest hardware, M3 pan 5.6: 7.0', () => {
    expectPrinted(number('BOARD.KEEPOUT', 'M3 pan'), 7);
    expectPrinted(number('BOARD.KEEPOUT', 5.6, 1.5), 8.4);
  });
});

describe('board on the sleeve', () => {
  test('by hand: (6 − 5.6)/2 = 0.2 per side, 0.15 after a shift of 0.05, refused where it does not enter', () => {
    expectPrinted(number('BOARD.SLEEVE', 6, 5.6), 0.2);
    expectPrinted(number('BOARD.SLEEVE', 6, 5.6, 0.05), 0.15);
    expect(refusal('BOARD.SLEEVE', 5.6, 6)).toContain('it does not go through');
    expect(refusal('BOARD.SLEEVE', 6, 5.6, 0.25)).toContain('has 0.2 mm of play per side');
  });
  test('by hand: (8 − 6)/2 − (6 − 5.6)/2 − 0.05 = 0.75', () => {
    expectPrinted(number('BOARD.HOLD', 8, 6, 5.6, 0.05), 0.75);
  });
  test('identity: a ring of (D − hole)/2 less the play and twice the shift that the play already counts', () => {
    const [od, hole, sleeve, shift] = [9, 6.4, 5.7, 0.1];
    expect(number('BOARD.HOLD', od, hole, sleeve, shift)).toBeCloseTo(
      (od - hole) / 2 - number('BOARD.SLEEVE', hole, sleeve, shift) - 2 * shift,
      12,
    );
  });
  test('a wider board hole costs the ring twice: it is smaller, and the board moves further', () => {
    expect(number('BOARD.HOLD', 8, 6, 5.6) - number('BOARD.HOLD', 8, 6.2, 5.6)).toBeCloseTo(0.2, 12);
  });
});

describe('thermal expansion', () => {
  test('by hand: 150 mm, 80 against 15, −40 K: 0.390; 100 mm, 90 against 16, 65 K: 0.481', () => {
    expectPrinted(number('THERMAL.GAP', 150, 80, 15, -40), 0.39);
    expectPrinted(number('THERMAL.GAP', 100, 90, 16, 65), 0.481);
  });
  test('Crawford, Plastics Engineering, p. 63 (read in 1 secondary copy): acetal 80 on steel 11, 40 mm, 80 °C: 0.22 mm', () => {
    expectPrinted(number('THERMAL.GAP', 40, 80, 11, 80), '0.22');
  });
  test('either way round, warmer or colder: the same gap', () => {
    expect(number('THERMAL.GAP', 150, 15, 80, 40)).toBe(number('THERMAL.GAP', 150, 80, 15, -40));
  });
  test('a material brings its expansion', () => {
    expect(number('THERMAL.GAP', 150, 'PC+ABS', 15, 40)).toBe(number('THERMAL.GAP', 150, 80, 15, 40));
  });
  test('a forgotten change of temperature does not pass for none', () => {
    expect(refusal('THERMAL.GAP', 150, 80, 15, 0)).toMatch(/temperature_change is 0 or blank/);
  });
});
