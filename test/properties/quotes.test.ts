// Whatever the user wrote and wherever: a message quotes at most 60 characters of it.
import { describe, expect, test } from 'vitest';
import { CARDS, call } from '../../src/registry';
import { exampleWith } from '../kit/arguments';

const LONG = 500;
/** Spelled like nothing that a message says by itself; upper case stays as it is. */
const MARK = 'Ж';
const LONGEST_RUN = new RegExp(`${MARK}{61}`, 'i');
const run = MARK.repeat(LONG);

/** As the text of each reader begins: units, sums, tolerances, sizes, heads, fits, materials, cards, calls, names. */
const TEXTS = [
  run,
  `3 ${run}`,
  `${run} mm`,
  `1 mm + ${run}`,
  `1.6 ±${run}`,
  `+0/-${run}`,
  `1..${run}`,
  `M3 ${run}`,
  `ST2.9 ${run}`,
  `#4-40 ${run}`,
  `ABS ${run}`,
  `strength ${run}`,
  `strength 40 MPa; ${run}`,
  `IT${run}`,
  `DIN 16742-${run}`,
  `BOSS.OD ${run}`,
  `=ENCL.${run}(1)`,
  `wall (${run})`,
  `variant ${run}`,
  run.split('').join(' '),
];
const DIGITS = '7'.repeat(LONG);
const NUMBERS = [`${DIGITS},777`, `7,${DIGITS}.7`, `${DIGITS} mm`, `${DIGITS}/0 mm`, `1e${DIGITS}`];
const LONGEST_NUMBER = /7{61}/;

const forms = (text: string): unknown[] => [
  text,
  [[text]],
  [[1], [text]],
  [[text], [1]],
  [[text, 1]],
  [['strength', text]],
  [
    ['wall', text],
    [2, 3],
  ],
  [['wall'], [text]],
  [[10, text, 1]],
  { cellError: text },
  [[{ cellError: text }], [1]],
];

/** Names and values that a table repeats as they are. */
const REPEATS = /^(STACK\.TABLE|VARIANT\.GRID)$/;

describe('messages are short', () => {
  let refused = 0;
  let quoted = 0;

  test.each([...CARDS.values()].map(card => [card.id, card] as const))('%s', (id, card) => {
    const said = (args: readonly unknown[]): string[] => {
      const answer = call(id, args);
      if (answer.ok) return REPEATS.test(id) ? [] : [answer.value].flat(2).map(String);
      refused++;
      if (answer.message.includes(MARK)) quoted++;
      expect(answer.message.length).toBeLessThan(600);
      return [answer.message];
    };
    card.params.forEach((_, i) => {
      for (const [texts, longest] of [
        [TEXTS, LONGEST_RUN],
        [NUMBERS, LONGEST_NUMBER],
      ] as const) {
        for (const text of texts)
          for (const form of forms(text)) for (const words of said(exampleWith(card, i, form))) expect(words).not.toMatch(longest);
      }
    });
  });

  test('enough of them, and many quote', () => {
    expect(refused).toBeGreaterThan(80_000);
    expect(quoted).toBeGreaterThan(15_000);
    console.log(`quotes: ${refused} refusals, ${quoted} of them quote the text`);
  });
});
