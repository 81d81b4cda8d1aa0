// Every relative link and anchor in the documents leads somewhere, every picture is there, no drawing can be out of date.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { anchorsIn, DOCUMENTS, linksIn, textOf } from './documents';

const isElsewhere = (target: string): boolean => /^(https?|mailto):/.test(target);

function astray(document: string, text: string): string[] {
  return linksIn(text)
    .filter(target => !isElsewhere(target))
    .filter(target => {
      const [file = '', anchor] = target.split('#');
      const place = file === '' ? document : path.join(path.dirname(document), file);
      if (!existsSync(place)) return true;
      return anchor !== undefined && !anchorsIn(file === '' ? text : textOf(place)).has(anchor);
    });
}

describe.each(DOCUMENTS)('%s', document => {
  it('leads nowhere astray', () => expect(astray(document, textOf(document))).toEqual([]));
});

it('the README leads to its pictures and to every document', () => {
  const links = linksIn(textOf('README.md'));
  expect(links).toContain('src/bench/bench.png');
  expect(DOCUMENTS.filter(document => document !== 'README.md' && !links.includes(document))).toEqual([]);
  expect(DOCUMENTS.length).toBeGreaterThan(10);
});

it('a link astray is found', () => {
  const text =
    '# One Two\n[a](nowhere.md) [b](#one-two) [c](#two) [d](DEVELOPERS.md#the-house) [e](DEVELOPERS.md#none) ![f](none.png) [g](https://example.org/) `[h](code.md)`\n```\n[i](fence.md)\n```\n';
  expect(astray('README.md', text)).toEqual(['nowhere.md', '#two', 'DEVELOPERS.md#none', 'none.png']);
});

it('no drawing is committed that the code could draw; the icon is drawn by hand', () => {
  const committed = execFileSync('git', ['ls-files', '*.svg'], { encoding: 'utf8' }).trim().split('\n');
  expect(committed, 'a committed figure can be out of date: draw it in the build, or compare it with what the code draws').toEqual([
    'src/pane/icons/icon.svg',
  ]);
});
