// Whatever is sent, every function gives a full rectangle of finite numbers and text, or a refusal that says why.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { anyArguments, exampleWith, HOSTILE } from '../kit/arguments';
import { SEED } from '../kit/seed';
import { check, QUOTING } from '../kit/whole';

const cards = [...CARDS.values()].map(card => [card.id, card] as const);

describe(`any arguments (seed ${SEED})`, () => {
  test('every function is here', () => expect(cards.length).toBe(126));

  test.each(cards)('%s', (_, card) => {
    let answered = 0;
    let tried = 0;
    fc.assert(
      fc.property(anyArguments(card), args => {
        tried++;
        if (check(card, args)) answered++;
      }),
      { seed: SEED, numRuns: 300 },
    );
    expect(tried).toBeGreaterThanOrEqual(300);
    expect(answered, 'calls with a result').toBeGreaterThan(10);
  });
});

describe('one hostile argument at a time, the others from the example', () => {
  test.each(cards)('%s', (_, card) => {
    let tried = 0;
    card.params.forEach((_param, i) => {
      for (const value of HOSTILE) {
        check(card, exampleWith(card, i, value));
        tried++;
      }
    });
    expect(tried).toBe(card.params.length * HOSTILE.length);
  });
});

describe('a refusal names an argument', () => {
  /** About all of them at once. */
  const OF_THE_WHOLE = /^(no finite result for these inputs$|no standard length of |the (result|lists) (has|make) )/;

  test.each(cards.filter(([id]) => !QUOTING.includes(id)))('%s', (id, card) => {
    const names = new RegExp(`\\b(${card.params.map(({ name }) => name).join('|')})\\b`);
    card.params.forEach((param, i) => {
      for (const value of HOSTILE) {
        const answer = call(id, exampleWith(card, i, value));
        if (!answer.ok && !OF_THE_WHOLE.test(answer.message)) expect(answer.message, param.name).toMatch(names);
      }
    });
  });
});

describe('an error handed in comes back as that error', () => {
  const takesErrors = (card: Card, i: number): boolean => card.params[i]?.kind.takesEverything === true || /^(CHECK|VARIANT|JOINT|REASON|WORKING)/.test(card.id);
  const pairs = cards.flatMap(([id, card]) => card.params.map((param, i) => [id, param.name, card, i] as const)).filter(([, , card, i]) => !takesErrors(card, i));

  test('arguments', () => expect(pairs.length).toBeGreaterThan(330));

  test.each(pairs)('%s %s', (id, name, card, i) => {
    for (const code of ['#DIV/0!', '#REF!', '#N/A']) {
      const single = call(id, exampleWith(card, i, { cellError: code }));
      expect(single).toMatchObject({ ok: false, code, argument: name });
      if (card.params[i]?.kind.shape === 'list') expect(call(id, exampleWith(card, i, [[{ cellError: code }]]))).toMatchObject({ ok: false, code, argument: name });
    }
  });
});
