// Words, symbols and the arguments of examples, which no outside source fixes, pinned as they are: a change of one is seen, and is meant. They say nothing of what is right.
// To pin anew: UPDATE_PINNED=1 npx vitest run test/contract/pinned.test.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { INPUTS } from '../../src/joint/inputs';
import { NODES } from '../../src/joint/nodes';
import { RULES } from '../../src/joint/rules';
import { CARDS } from '../../src/registry';

const FILE = new URL('pinned.json', import.meta.url);

/** Function, input, node or rule -> its words. */
type Words = Readonly<Record<string, unknown>>;

const now: Readonly<Record<string, Words>> = {
  functions: Object.fromEntries(
    [...CARDS.values()].map(({ id, params, result, kind, sources, example, notLive, caution }) => [
      id,
      {
        symbols: params.map(({ symbol }) => symbol ?? '–').join(', '),
        result: JSON.stringify(result),
        example: JSON.stringify(example.args),
        kind,
        sources: sources.map(({ title, held }) => `${title} | ${held}`),
        ...(notLive === undefined ? {} : { notLive }),
        ...(caution === undefined ? {} : { caution }),
      },
    ]),
  ),
  inputs: Object.fromEntries([...INPUTS].map(([name, { meaning, defaultWords }]) => [name, `${defaultWords} | ${meaning}`])),
  nodes: Object.fromEntries([...NODES].map(([name, { unit, meaning }]) => [name, `${unit} | ${meaning}`])),
  rules: Object.fromEntries(RULES.map(({ name, basis, words }) => [name, [basis, ...(words === undefined ? [] : [words])].join(' | ')])),
};

if (process.env['UPDATE_PINNED'] === '1') writeFileSync(FILE, `${JSON.stringify(now, null, 1)}\n`);
const pinned = JSON.parse(readFileSync(FILE, 'utf8')) as typeof now;

describe.each(Object.keys(now))('%s', part => {
  const [have, held] = [now[part], pinned[part]] as [Words, Words];

  test('are those that were pinned, in their order', () => expect(Object.keys(have)).toEqual(Object.keys(held)));

  test.each(Object.keys(held))('%s is worded as pinned', name => expect(have[name]).toEqual(held[name]));
});
