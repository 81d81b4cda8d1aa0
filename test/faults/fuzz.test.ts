// Calls with wild values over all functions: each gives a whole answer or a refusal that says why, and soon.
// In npm test a few for each; npm run test:fuzz makes 200,000 of them, FUZZ_CALLS=2000000 as many as it says, FUZZ_SEED=1 others.
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { CARDS } from '../../src/registry';
import { SEED } from '../kit/seed';
import { check } from '../kit/whole';
import { wildArguments } from './wild';

const { FUZZ_CALLS, FUZZ_SEED, npm_lifecycle_event: script } = process.env;
const isWhole = script === 'test:fuzz' || FUZZ_CALLS !== undefined;
const calls = Number(FUZZ_CALLS ?? 200_000);
const seed = Number(FUZZ_SEED ?? SEED);
const cards = [...CARDS.values()].map(card => [card.id, card] as const);
const each = isWhole ? Math.ceil(calls / cards.length) : 40;

let made = 0;
let answered = 0;

describe(`wild calls (seed ${seed})`, () => {
  test.each(cards)(
    '%s',
    (_, card) => {
      const before = made;
      fc.assert(
        fc.property(wildArguments(card), args => {
          made++;
          if (check(card, args)) answered++;
        }),
        { seed, numRuns: each },
      );
      expect(made - before).toBe(each);
    },
    600_000,
  );

  test('enough of them, and both sides of the limits', () => {
    expect(made).toBeGreaterThanOrEqual(cards.length * each);
    expect(answered / made).toBeGreaterThan(0.05);
    expect(answered / made).toBeLessThan(0.95);
  });
});

afterAll(() => console.log(`fuzz: ${made} calls, seed ${seed}: ${answered} answered, ${made - answered} refused, nothing else thrown`));
