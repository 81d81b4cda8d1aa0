// The table of words: the same keys in both languages, nothing left in English, and every word that a page asks for.
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { GUIDES } from '../../src/demo/guides';
import { TEMPLATES } from '../../src/demo/templates';
import { DEFAULTS } from '../../src/german/accepts';
import { INPUTS } from '../../src/joint/inputs';
import { GERMAN } from '../../src/words/german/german';
import { ENGLISH } from '../../src/words/english';
import { textAt, withWords } from '../../src/words/text-at';

type Leaf = string | ((...args: never[]) => unknown);

/** Every text and every sentence with something in it, by its path. */
function leaves(table: object, path = ''): Map<string, Leaf> {
  const found = new Map<string, Leaf>();
  for (const [name, value] of Object.entries(table) as [string, Leaf | object][]) {
    const at = path === '' ? name : `${path}.${name}`;
    if (typeof value === 'string' || typeof value === 'function') found.set(at, value as Leaf);
    else for (const [below, leaf] of leaves(value, at)) found.set(below, leaf);
  }
  return found;
}

const [english, german] = [leaves(ENGLISH), leaves(GERMAN)];

/** Alike in both: names, formats, units. */
const ALIKE = [
  'figure.kinds.svg',
  'functions.optional',
  'figure.kinds.dxf',
  'functions.seeAbove',
  'handOver.revision',
  'handOver.papers.A4',
  'frame.calculation.settled',
  'check.problems.refused.words',
  'check.problems.state.words',
];

it('has the same words in both languages', () => {
  expect(english.size).toBeGreaterThan(350);
  expect([...german.keys()]).toEqual([...english.keys()]);
  console.log(`${english.size} texts and sentences in each language`);
});

it('leaves no text in English', () => {
  const texts = [...english].filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  expect(texts.length).toBeGreaterThan(250);
  const same = texts.filter(([path, text]) => german.get(path) === text && /\p{L}/u.test(text) && !/ \(new window\)$/.test(text));
  expect(same.map(([path]) => path).filter(path => !ALIKE.includes(path))).toEqual([]);
});

it('says the sentences of German with what they are given, one and many', () => {
  const sentences = [...german].filter(([, leaf]) => typeof leaf === 'function');
  expect(sentences.length).toBeGreaterThan(100);
  for (const [path, leaf] of sentences) {
    if (/[.](guide|ready|fault|failed|shelved|openedAs|saved|units|carriedOf)$/.test(path)) continue;
    const say = leaf as unknown as (...args: unknown[]) => string;
    for (const count of [1, 2]) {
      const given = Array.from({ length: 5 }, () => count);
      const [here, there] = [say(...given), (english.get(path) as unknown as typeof say)(...given)];
      expect([path, here.includes(String(count)), here.includes('undefined')]).toEqual([path, there.includes(String(count)), false]);
    }
  }
});

it('has German for every guide, template and ready sheet', () => {
  const listed = [...TEMPLATES, ...GUIDES];
  expect(listed.length).toBeGreaterThan(10);
  for (const guide of listed) expect(GERMAN.sheets.guide(guide).title).not.toBe(guide.title);
  for (const { name } of demoWorkbook.sheets.filter(sheet => sheet.name !== 'Read me')) expect(GERMAN.sheets.ready(name, '')).not.toBe('');
});

it('has German for what counts where an input is not given, and for nothing else', () => {
  const words = new Set([...INPUTS.values()].map(({ defaultWords }) => defaultWords).filter(text => /[a-z]{2}/.test(text)));
  expect(words.size).toBeGreaterThan(25);
  expect(
    Object.keys(DEFAULTS)
      .filter(text => /[a-z]{2}/.test(text))
      .sort(),
  ).toEqual([...words].sort());
});

const bench = readFileSync('src/bench/bench.html', 'utf8');

it('has every word that the page of the bench asks for, and that page has none of its own', () => {
  const paths = [...bench.matchAll(/data-(?:words|label|href)="([^"]+)"/g)].map(([, path = '']) => path);
  expect(paths.length).toBeGreaterThan(35);
  for (const path of paths) expect([textAt(ENGLISH, path), textAt(GERMAN, path)]).not.toContain('');
  const body = bench.slice(bench.indexOf('<body>')).replaceAll(/<!--.*?-->/gs, '');
  const bare = body
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  expect(bare).toBe('Bosswright F2 Z F6');
  expect(body).not.toMatch(/(aria-label|title|placeholder)="/);
});

it('stands on the page as built, in English', () => {
  const built = withWords(bench, ENGLISH);
  expect(built).toMatch(/id="open" data-words="bench.page.open">Open…</);
  expect(built).toMatch(/aria-label="Spreadsheet"/);
  expect(built).not.toMatch(/data-words="[^"]*"[^>]*><\/(?!span class="bw-unseen")/);
  expect(() => textAt(ENGLISH, 'bench.page.nothing')).toThrow('there are no words at');
});
