// What a cell says of a function: all that fits, and what does not is named; where a value came from.
import { describe, expect, test } from 'vitest';
import { CARDS } from '../../src/registry';
import { value } from '../kit/ask';

const ITEMS = ['what', 'formula', 'symbols', 'limits', 'source', 'held', 'caution', 'example'];
const about = (id: string, ...item: string[]): string => String(value('ABOUT', id, ...item));
const FUNCTIONS = [...CARDS.keys()];

describe('ABOUT of a function in one text', () => {
  test('a caution, the sources and how they are held are there to the end', () => {
    let cautions = 0;
    for (const id of FUNCTIONS) {
      const text = about(id);
      expect(text.length, id).toBeLessThanOrEqual(1000);
      for (const item of ['what', 'limits', 'source', 'held', 'caution']) {
        const part = about(id, item);
        if (part !== '–') expect(text, `${id} ${item}`).toContain(part);
        if (item === 'caution' && part !== '–') cautions++;
      }
    }
    expect(cautions).toBeGreaterThanOrEqual(60);
  });

  test('what is left out of a text that would be too long is named, and nothing else is', () => {
    let shortened = 0;
    for (const id of FUNCTIONS) {
      const text = about(id);
      const named = /\nToo long to show here; ask by name: (.*)$/.exec(text)?.[1]?.split(', ') ?? [];
      if (named.length > 0) shortened++;
      const missing = ITEMS.filter(item => about(id, item) !== '–' && !text.includes(about(id, item)));
      expect(named, id).toEqual(missing);
      // no shorter than it must be: an example alone was one line too many
      if (named.length === 1) expect(text.replace(/Too long.*$/, `Example: ${about(id, 'example')}`).length, id).toBeGreaterThan(1000);
    }
    expect(shortened).toBeGreaterThanOrEqual(10);
    expect(shortened).toBeLessThan(20);
  });
});

test('WORKING says that a value comes from an own card, not from a word of it', () => {
  const card = [
    ['modulus', 20_000],
    ['poisson', 0.15],
  ];
  const text = String(value('WORKING', 'BOARD.FREQUENCY', 100, 80, 1.6, 60, card, card, 'simple'));
  expect(text).toMatch(/^modulus, a range of 2 × 2 cells = 20000 MPa\npoisson, a range of 2 × 2 cells = 0.15\n/);
  expect(String(value('WORKING', 'SNAP.FORCE', 2, 15, 5, 2, 'ABS'))).toMatch(/^modulus "ABS" = \d+ MPa\n/);
});
