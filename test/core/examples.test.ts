import { describe, expect, test } from 'vitest';
import { CARDS, call } from '../../src/registry';
import { expectPrinted } from '../kit/near';

describe('the example of every card computes', () => {
  test.each([...CARDS.values()].map(card => [card.id, card] as const))('%s', (id, card) => {
    const answer = call(id, card.example.args);
    if (!answer.ok) expect.fail(`${answer.code} ${answer.message}`);
    if ('row' in card.example) expectPrinted((answer.value as unknown[][])[card.example.row], card.example.values);
    else expectPrinted(answer.value, card.example.result);
  });
});
