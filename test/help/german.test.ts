// The help pages in German: what has German shows it, what has none says that it is English, and both lead to each other.
import { describe, expect, test } from 'vitest';
import { GERMAN } from '../../src/help/language';
import { helpPages } from '../../src/help/pages';
import { documents } from '../../src/help/plugin';
import { ENGLISH as ENGLISH_WORDS } from '../../src/help/words/english';
import { GERMAN as GERMAN_WORDS } from '../../src/help/words/german';
import { CARDS } from '../../src/registry';
import { METADATA } from '../../src/tools/metadata';

const PAGES = helpPages(METADATA.functions, documents());
const german = [...PAGES].filter(([file]) => file.startsWith('de/'));
const page = (file: string): string => PAGES.get(file) ?? expect.fail(`there is no page ${file}`);

/** What is not marked as English, without drawings, formulas, what is typed, and the state of two words. */
function ownText(markup: string): string {
  let text = markup.replaceAll(/<(style|math|code)\b.*?<\/\1>/gs, ' ');
  for (let before = ''; before !== text;)
    [before, text] = [text, text.replaceAll(/<((?!html)\w+)\b(?=[^>]*\slang="en)[^>]*>(?:(?!<\1\b).)*?<\/\1>/gs, ' ')];
  return text.replaceAll(/<[^>]*>/g, ' ').replaceAll(/"[^"]*"|&quot;.*?&quot;|not checked/g, ' ');
}

/** English that stands in no name of a function, an argument or the joint. */
const ENGLISH = /\b(the|of|is|are|and|with|from|this|that|which|must|given|what|where|its|not|for)\b/;

describe('a German page', () => {
  test('has no English of its own that it does not mark', () => {
    expect(german.length).toBeGreaterThan(170);
    const left = german.flatMap(([file, text]) => {
      const found = ENGLISH.exec(ownText(text));
      return found === null ? [] : [`${file}: ${found.input.slice(found.index - 40, found.index + 60)}`];
    });
    expect(left).toEqual([]);
    for (const [file, text] of german) expect(text, file).toContain('<html lang="de">');
  });

  test('would show what is not marked', () => {
    expect(ownText('<p>what <span lang="en">is the <b>of</b></span> Maß</p>').trim()).toMatch(/^what\s+Maß$/);
    const shown = german.filter(([file]) => ENGLISH.test(ownText(page(file.slice('de/'.length)))));
    expect(shown.length).toBe(german.length);
  });

  test('says sentence, arguments and caution in German', () => {
    for (const listed of METADATA.functions) {
      const card = CARDS.get(listed.id);
      if (card === undefined) continue;
      const text = page(`de/${listed.id}.html`).replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&amp;', '&');
      const { description, parameters } = GERMAN.described(listed);
      const caution = GERMAN.caution(card);
      for (const words of [description, ...parameters.map(each => each.description), ...(caution === undefined ? [] : [caution])])
        expect(text.includes(words), `${listed.id}: ${words}`).toBe(true);
      expect(caution === undefined, listed.id).toBe(card.caution === undefined);
    }
  });

  test('leads to the same page in English, and that back', () => {
    for (const [file, text] of german) {
      const other = file.slice('de/'.length);
      const up = '../'.repeat(file.split('/').length - 1);
      expect(text, file).toContain(`<a lang="en-GB" hreflang="en-GB" href="${up}${other}">English</a>`);
      expect(page(other), other).toContain(`<a lang="de" hreflang="de" href="${up.slice(3)}de/${other}">Deutsch</a>`);
    }
  });

  test('has numbers with a comma', () => {
    expect(page('de/HOLE.PILOT.html')).toContain('ergibt <output>2,324</output>');
    expect(page('de/BOSS.OD.html')).toContain('<td class="number">3,2 mm</td>');
  });
});

test('no word of the frame is the same in both, but names', () => {
  const texts = (table: object): string[] =>
    Object.values(table).flatMap((value: unknown) =>
      typeof value === 'string' ? [value] : typeof value === 'object' && value !== null ? texts(value) : [],
    );
  const [english, other] = [texts(ENGLISH_WORDS), texts(GERMAN_WORDS)];
  expect(english.length).toBe(other.length);
  expect(english.length).toBeGreaterThan(100);
  expect(english.filter((text, i) => text !== '' && text === other[i])).toEqual([]);
});
