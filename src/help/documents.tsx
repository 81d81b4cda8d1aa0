// The documents of the project as pages of the help: Markdown in, a page out.
import { Marked } from 'marked';
import type { JSX } from 'preact';
import { ENGLISH, useLanguage } from './language';
import { written } from './page';

/** Markdown by file name, without its ending. */
export type Documents = ReadonlyMap<string, string>;

export const documentFile = (name: string): string => `docs/${name}.html`;

/** By TypeDoc, which runs behind every build; the server that reloads has none. */
export const LIBRARY_PAGES = 'api/index.html';

/** What one looks for first; the others follow. */
const FIRST: readonly string[] = ['demo', 'cells', 'glossary', 'functions', 'hand-over', 'excel'];

const TITLE = /^# (.+)$/m;
const titleOf = (text: string): string => TITLE.exec(text)?.[1] ?? '';

/** The anchor of a heading, as a forge makes it. */
const anchorOf = (words: string): string =>
  words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .trim()
    .replace(/\s/g, '-');

/** What lies outside the documents is no page of the help: its words stay, the link goes. */
const addressOf = (href: string): string | undefined => {
  const [, name, anchor = ''] = /^([\w-]+)\.md(#.*)?$/.exec(href) ?? [];
  if (name !== undefined) return `${name}.html${anchor}`;
  return /^(https:|#|[\w.-]+\.json$)/.test(href) ? href : undefined;
};

const { parse } = new Marked({
  async: false,
  renderer: {
    heading({ tokens, depth, text }) {
      return `<h${depth} id="${anchorOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
    link({ href, tokens }) {
      const words = this.parser.parseInline(tokens);
      const address = addressOf(href);
      return address === undefined ? words : `<a href="${address}">${words}</a>`;
    },
    image: ({ href, text }) => `<img src="${href}" alt="${text}" />`,
    // who wrote it
    html: () => '',
  },
});

export const documentPage = (text: string): string =>
  written(ENGLISH, {
    title: titleOf(text),
    root: '../',
    children: <div class="document" dangerouslySetInnerHTML={{ __html: parse(text) as string }} />,
  });

export function DocumentList({ documents }: { readonly documents: Documents }): JSX.Element {
  const { english, up, words: W } = useLanguage();
  return (
    <ul>
      {[...FIRST, ...[...documents.keys()].filter(name => !FIRST.includes(name))].map(name => (
        <li>
          <a lang={english} href={`${up}${documentFile(name)}`}>
            {titleOf(documents.get(name) ?? '')}
          </a>
        </li>
      ))}
      <li>
        <a href={`${up}${LIBRARY_PAGES}`}>{W.library}</a>
      </li>
    </ul>
  );
}
