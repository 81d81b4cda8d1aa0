// Whatever is sent, every function gives a full rectangle of finite numbers and text, or a refusal that says why.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { RELEASED } from '../../src/release/signatures';
import { anyArguments, exampleWith, HOSTILE } from '../kit/arguments';
import { SEED } from '../kit/seed';
import { answerTo, check, QUOTING } from '../kit/whole';

const cards = [...CARDS.values()].map(card => [card.id, card] as const);

describe(`any arguments (seed ${SEED})`, () => {
  test('every function is here', () => expect(cards.map(([id]) => id).sort()).toEqual(Object.keys(RELEASED).sort()));

  test.each(cards)('%s', (id, card) => {
    let answered = 0;
    fc.assert(
      fc.property(anyArguments(card), args => {
        if (check(card, args)) answered++;
      }),
      // these search a remedy for every rule, a hundred times the work of any other
      { seed: SEED, numRuns: /^CHECK\.(JOINT|BOSS)$/.test(id) ? 100 : 300 },
    );
    expect(answered, 'calls with a result').toBeGreaterThan(5);
  });
});

describe('one hostile argument at a time, the others from the example: whole, and a refusal names an argument', () => {
  /** About all of them at once. */
  const OF_THE_WHOLE = /^(no finite result for these inputs$|no standard length of |the (result|lists) (has|make) )/;
  const counts = { answered: 0, named: 0, whole: 0 };

  test.each(cards)('%s', (id, card) => {
    const names = QUOTING.includes(id) ? /(?:)/ : new RegExp(`\\b(${card.params.map(({ name }) => name).join('|')})\\b`);
    card.params.forEach((param, i) => {
      for (const value of HOSTILE) {
        const answer = answerTo(card, exampleWith(card, i, value));
        if (answer.ok) counts.answered++;
        else if (OF_THE_WHOLE.test(answer.message)) counts.whole++;
        else if (names.test(answer.message)) counts.named++;
        else expect.fail(`${param.name}: ${answer.message} names no argument`);
      }
    });
  });

  test('enough of each', () => {
    expect(counts.answered, 'answered').toBeGreaterThan(6000);
    expect(counts.named, 'refused by name').toBeGreaterThan(40_000);
    expect(counts.whole, 'refused as a whole').toBeGreaterThan(200);
  });
});

describe('an error handed in comes back as that error', () => {
  const takesErrors = (card: Card, i: number): boolean =>
    card.params[i]?.kind.takesEverything === true || /^(CHECK|VARIANT|JOINT|REASON|WORKING)/.test(card.id);
  const pairs = cards
    .flatMap(([id, card]) => card.params.map((param, i) => [id, param.name, card, i] as const))
    .filter(([, , card, i]) => !takesErrors(card, i));

  test('arguments', () => expect(pairs.length).toBeGreaterThan(330));

  test.each(pairs)('%s %s', (id, name, card, i) => {
    for (const code of ['#DIV/0!', '#REF!', '#N/A']) {
      const single = call(id, exampleWith(card, i, { cellError: code }));
      expect(single).toMatchObject({ ok: false, code, argument: name });
      if (card.params[i]?.kind.shape === 'list')
        expect(call(id, exampleWith(card, i, [[{ cellError: code }]]))).toMatchObject({ ok: false, code, argument: name });
    }
  });
});
