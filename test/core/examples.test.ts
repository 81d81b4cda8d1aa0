import { describe, expect, test } from 'vitest';
import { CARDS, call } from '../../src/registry';
import { expectPrinted } from '../kit/near';

/** Rounded to three digits or more; what has fewer is exact. */
function printed(shown: unknown): unknown {
  if (Array.isArray(shown)) return shown.map(printed);
  return typeof shown === 'number' && String(shown).replace('.', '').replace(/^-?0*/, '').length >= 3 ? String(shown) : shown;
}

describe('the example of every card computes', () => {
  test.each([...CARDS.values()].map(card => [card.id, card] as const))('%s', (id, card) => {
    const answer = call(id, card.example.args);
    if (!answer.ok) expect.fail(`${answer.code} ${answer.message}`);
    if ('row' in card.example) expectPrinted((answer.value as unknown[][])[card.example.row], printed(card.example.values));
    else expectPrinted(answer.value, printed(card.example.result));
  });
});
