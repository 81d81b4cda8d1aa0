// What is shipped comes under permissive licences, file by file where not, and their texts go along.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { BUILT } from './excel';

const PERMISSIVE = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'ISC', 'MIT'];
/** Bound to their own files, which go along unchanged: package, licence, reason. */
const FILE_LEVEL: Readonly<Record<string, { readonly licence: string; readonly reason: string }>> = {
  '@resvg/resvg-wasm': { licence: 'MPL-2.0', reason: 'draws the figures of the hand-over; the file goes along as it came' },
  'dejavu-fonts-ttf': {
    licence: 'Bitstream-Vera',
    reason: 'the letters in those figures; the font may not be sold by itself or changed under its name',
  },
};

interface Shipped {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

function shippedIn(list: string): Shipped[] {
  return list
    .split(/^== /m)
    .slice(1)
    .map(part => {
      const [, name = '', version = '', licence = '', text = ''] = /^(\S+) (\S+) \| (.+)\n\n([^]*)$/.exec(part) ?? [];
      return { name, version, licence, text: text.trim() };
    });
}

const unfit = (list: readonly Shipped[]): string[] =>
  list
    .filter(({ name, licence }) => !PERMISSIVE.includes(licence) && FILE_LEVEL[name]?.licence !== licence)
    .map(({ name, licence }) => `${name}: ${licence}`);

const shipped = shippedIn(readFileSync(path.join(BUILT, 'licences.txt'), 'utf8'));

describe('the licences of what is bundled', () => {
  test('every package of ours that runs in a page is in the list, with its version in the lock file', () => {
    const { packages } = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
      readonly packages: Readonly<Record<string, { readonly version: string }>>;
    };
    expect(shipped.map(({ name }) => name)).toEqual(
      expect.arrayContaining([
        '@borgar/fx',
        '@microsoft/office-js-helpers',
        '@stdlib/math-base-special-erfc',
        '@univerjs/core',
        'fastest-levenshtein',
        'fflate',
        'hucre',
        'preact',
        'pure-rand',
        'react-dom',
        'rxjs',
      ]),
    );
    for (const { name, version } of shipped)
      expect(
        Object.entries(packages)
          .filter(([place]) => place.endsWith(`node_modules/${name}`))
          .map(([, one]) => one.version),
        name,
      ).toContain(version);
  });

  test('all are permissive, or bound to their files and listed with the reason', () => {
    expect(shipped.length).toBeGreaterThan(50);
    expect(unfit(shipped)).toEqual([]);
  });

  test('a copyleft licence is found out', () => {
    expect(
      unfit(shippedIn('== one 1.0.0 | MIT\n\ntext\n\n== other 2.0.0 | GPL-3.0-only\n\ntext\n\n== third 1.0.0 | none stated\n\ntext\n')),
    ).toEqual(['other: GPL-3.0-only', 'third: none stated']);
  });

  test('each brings the text of its licence, or says who the author is', () => {
    for (const { name, text } of shipped) expect(text, name).toMatch(/copyright|permission|licen[cs]e|Author: \w/i);
    expect(shipped.filter(({ text }) => text.length < 500).map(({ name }) => name)).toEqual([
      '@resvg/resvg-wasm',
      '@univerjs/protocol',
      'ot-json1',
      'ot-text-unicode',
      'react-remove-scroll-bar',
      'saxes',
      'unicount',
    ]);
  });
});
