// Words, symbols and the arguments of examples, which no outside source fixes, pinned as they are: a change of one is seen, and is meant.
// They say nothing of what is right.
// npm run generate pins them anew.
import { describe, expect, test } from 'vitest';
import { pinnedWords, type PinnedWords } from '../../src/tools/pinned-words';
import PINNED from './pinned.json';

const now: Readonly<Record<string, PinnedWords>> = pinnedWords();
const { generated: _, ...pinned } = PINNED;

describe.each(Object.keys(now))('%s', part => {
  const [have, held] = [now[part], (pinned as typeof now)[part]] as [PinnedWords, PinnedWords];

  test('are those that were pinned, in their order', () => expect(Object.keys(have)).toEqual(Object.keys(held)));

  test.each(Object.keys(held))('%s is worded as pinned', name =>
    expect(have[name], 'once it is meant: npm run generate').toEqual(held[name]),
  );
});
