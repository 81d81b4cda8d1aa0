// The documents of the project and what can be checked in them: commands, links, anchors.
import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = 'src/docs/';

export const DOCUMENTS: readonly string[] = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(new URL(`../../${FOLDER}`, import.meta.url))
    .filter(name => name.endsWith('.md'))
    .map(name => FOLDER + name),
];

export const textOf = (document: string): string => readFileSync(new URL(`../../${document}`, import.meta.url), 'utf8');

const FENCE = /^```(\S*)[^\n]*\n([^]*?)^```$/gm;
/** A span of code that starts as a command does. */
const COMMAND = /^(?:[A-Z_]+=\S+ )*(?:npm|npx|node|git|unzip|curl|cd|\.ci\/run)(?=\s|$)/;

/** Every command in a fence without a language, and every span of code that is one; `a && b` are two. */
export function commandsIn(text: string): string[] {
  const fenced = [...text.matchAll(FENCE)].flatMap(([, language = '', body = '']) =>
    language === ''
      ? body
          .split('\n')
          .filter(line => COMMAND.test(line))
          .map(line => line.replace(/\s+#.*/, ''))
      : [],
  );
  const spans = [...text.replace(FENCE, '').matchAll(/`([^`\n]+)`/g)]
    .map(([, span = '']) => span)
    .filter(span => (COMMAND.test(span) && span.includes(' ')) || span === '.ci/run');
  return [...new Set([...fenced, ...spans].flatMap(line => line.split(' && ')).map(line => line.trim()))];
}

/** Where the links and pictures of a document lead. */
export function linksIn(text: string): string[] {
  const prose = text.replace(FENCE, '').replace(/`[^`\n]*`/g, '');
  return [...new Set([...prose.matchAll(/\]\(([^)\s]+)\)/g)].map(([, target = '']) => target))];
}

/** The anchors that a page of this text has: its headings in small letters, without marks, hyphens for spaces. */
export function anchorsIn(text: string): Set<string> {
  const headings = [...text.replace(FENCE, '').matchAll(/^#+ (.+)$/gm)].map(([, words = '']) => words);
  return new Set(
    headings.map(words =>
      words
        .toLowerCase()
        .replace(/[^\p{L}\p{N}\s_-]/gu, '')
        .trim()
        .replace(/\s/g, '-'),
    ),
  );
}
