// Files that follow from others are as npm run generate would write them now; it and nothing else writes them. The plain forms are held by
// test/kit/forms.ts, before any test.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { BY, GENERATED } from '../../src/tools/generated';

/** Files go on changing after the page was written; how many had then is no fault of it. */
const SINCE = /^Mutants: \d+ of the \d+ files have changed since /m;
const anyDay = (text: string): string => text.replace(SINCE, '');

const lines = (text: string): string[] => anyDay(text).split('\n');

describe.each(GENERATED.map(one => [one.file, one] as const))('%s', (file, { is, from }) => {
  test('is what npm run generate writes', () => {
    const [has, asked] = [lines(is), lines(from(is))];
    expect(has.length).toBeGreaterThan(25);
    expect(
      has.filter((line, i) => line !== asked[i]),
      `${file}: npm run generate`,
    ).toEqual([]);
    expect(has.length, `${file}: npm run generate`).toBe(asked.length);
  });

  test('says so', () => expect(is.split(BY).length - 1).toBe(1));
});

test('the plain forms say so too', () => {
  expect(readFileSync(new URL('../../src/plain/forms.json', import.meta.url), 'utf8')).toMatch(new RegExp(`^{\n"generated":"${BY}",`));
});

test('a line that was typed in is found', () => {
  const { is, from } = GENERATED.find(({ file }) => file === 'src/docs/functions.md') ?? expect.fail();
  const typed = is.replace('## Units\n', '## Units\nby hand\n');
  expect(typed).not.toBe(is);
  expect(lines(from(typed))).toEqual(lines(is));
});
