// What was built, as the files that are served: every address under one base, one version, checksums.
import { createHash } from 'node:crypto';
import { zipSync } from 'fflate';
import { UserFault } from '../cli/user-fault';
import { DEVELOPMENT } from './base-url';
import { type Files, SUMS, textOf } from './files';
import { sumList } from './sums';

export interface Texts {
  readonly licence: string;
  readonly hosting: string;
  /** DEVELOPERS.md, which holds the changes. */
  readonly developers: string;
}

const encoder = new TextEncoder();

export function releaseOf(built: Files, base: URL, version: string, texts: Texts): Files {
  const files = new Map(built);
  const rewrite = (path: string, change: (text: string) => string): void => {
    if (!built.has(path)) throw new UserFault(`${path} is missing in what was built`);
    files.set(path, encoder.encode(change(textOf(built, path))));
  };
  rewrite('manifest.xml', text => text.replaceAll(DEVELOPMENT, base.href).replace(/<Version>[^<]*/, `<Version>${version}.0`));
  for (const file of ['functions.json', 'functions-de.json']) rewrite(file, text => text.replaceAll(DEVELOPMENT, base.href));
  files.set('LICENSE', encoder.encode(texts.licence));
  files.set('HOSTING.md', encoder.encode(hostedAt(texts.hosting, base, version)));
  files.set('CHANGES.md', encoder.encode(changesIn(texts.developers, version)));
  const sorted = new Map([...files].sort(([a], [b]) => (a < b ? -1 : 1)));
  return sorted.set(SUMS, encoder.encode(sumList(sorted)));
}

/** The page with the names of this release in the place of those of its example. */
function hostedAt(page: string, base: URL, version: string): string {
  const names: Readonly<Record<string, string>> = {
    'https://example.org/bosswright/': base.href,
    'example.org': base.hostname,
    '/bosswright/': base.pathname,
    '443': base.port || '443',
    'bosswright-VERSION': `bosswright-${version}`,
  };
  return page.replace(
    /https:\/\/example\.org\/bosswright\/|example\.org|\/bosswright\/|443|bosswright-VERSION/g,
    name => names[name] ?? name,
  );
}

export function changesIn(developers: string, version: string): string {
  const [, changes = ''] = /^## Changes\n([^]*?)(?=^## |$(?![^]))/m.exec(developers) ?? [];
  if (!/^### Values changed\n+\S/m.test(changes))
    throw new UserFault(
      'DEVELOPERS.md has no changes with a block "Values changed": those who hold a sheet must be told which numbers move',
    );
  return `# Changes in Bosswright ${version}\n${changes.trimEnd()}\n`;
}

/** The same files give the same bytes, whenever and wherever they are packed. */
export const zipOf = (files: Files): Uint8Array =>
  zipSync(Object.fromEntries([...files].map(([path, content]) => [path, [content, { level: 9, mtime: dateOf(content) }]])));

/**
 * A date that follows from the content: web servers tell copies apart by date and size, so a changed file must have another one.
 * A local time, as zip files hold, in the middle of a day, where no clock is put forward.
 */
function dateOf(content: Uint8Array): Date {
  const digest = createHash('sha256').update(content).digest();
  const below = (at: number, limit: number): number => digest.readUInt16BE(at) % limit;
  return new Date(2000, 0, 1 + below(0, 7305), 9 + below(2, 10), below(4, 60), 2 * below(6, 30));
}
