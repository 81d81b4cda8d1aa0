// A small folder as the build makes one: our manifest and metadata, pages and functions of a few lines.
import { readFileSync } from 'node:fs';
import { version } from '../../package.json';
import { inGerman } from '../../src/german/metadata';
import type { Texts } from '../../src/release/release';
import { METADATA } from '../../src/tools/metadata';

const read = (path: string): Uint8Array => readFileSync(new URL(`../../${path}`, import.meta.url));
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

const SAYS = { VERSION: `() => "Bosswright ${version}, data 2026-11-24"` } as Readonly<Record<string, string>>;
const PAGE = `<!doctype html><meta http-equiv="Content-Security-Policy" content="default-src 'self'; script-src 'self' https://appsforoffice.microsoft.com">
<link rel="icon" href="icons/icon-32.png"><script src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"></script><a href="https://example.org/">a link may lead away</a>`;

const LISTED = METADATA.functions.map(one => ({ ...one, helpUrl: `https://localhost:3000/help/functions.html#${one.id}` }));

export const BUILT: ReadonlyMap<string, Uint8Array> = new Map<string, Uint8Array>([
  ['manifest.xml', read('manifest.xml')],
  ['functions.json', bytes(JSON.stringify({ functions: LISTED }))],
  ['functions-de.json', bytes(JSON.stringify({ functions: LISTED.map(inGerman) }).replaceAll('/help/', '/help/de/'))],
  ['functions.js', bytes(METADATA.functions.map(({ id }) => `CustomFunctions.associate("${id}", ${SAYS[id] ?? '() => 0'});`).join('\n'))],
  ['help/functions.html', bytes(PAGE)],
  ['help/index.html', bytes(PAGE)],
  ['help/de/functions.html', bytes(PAGE)],
  ['help/de/index.html', bytes(PAGE)],
  ['help/docs/support.html', bytes(PAGE)],
  ['index.html', bytes(PAGE)],
  ['pane.html', bytes(PAGE)],
  ...['16', '32', '64', '80'].map(size => [`icons/icon-${size}.png`, read(`src/pane/icons/icon-${size}.png`)] as const),
]);

export const TEXTS: Texts = {
  licence: 'MIT',
  hosting: read('src/docs/hosting.md').toString(),
  developers: read('DEVELOPERS.md').toString(),
};
