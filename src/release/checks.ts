// What must hold of a folder that is served, each with the faults that were found.
import { runInNewContext } from 'node:vm';
import { type Files, SUMS, textOf } from './files';
import { readManifest } from './manifest';
import { sha256 } from './release';
import { broken, RELEASED, signaturesOf } from './signatures';

export interface Check {
  readonly name: string;
  /** What was looked at, where nothing is wrong. */
  readonly seen: string;
  readonly faults: readonly string[];
}

type Listed = Parameters<typeof signaturesOf>[0][number] & { readonly helpUrl?: string };

const MEGABYTE = 1_000_000;
/** Office.js has no other home; nothing else may come from elsewhere. */
const OFFICE = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';

export function checks(files: Files): readonly Check[] {
  const sums = checksums(files);
  const functions = listed(files);
  const registered = sums.faults.some(fault => fault.startsWith('functions.js ')) ? undefined : register(textOf(files, 'functions.js'));
  return [sums, addresses(files), ids(functions, registered), versions(files, registered), kept(functions), help(files, functions), pages(files), sizes(files)];
}

function checksums(files: Files): Check {
  const lines = textOf(files, SUMS).split('\n').filter(line => line !== '');
  const sums = new Map(lines.map(line => [line.slice(66), line.slice(0, 64)]));
  const faults = [
    ...(sums.size === 0 ? [`${SUMS} is missing or empty`] : []),
    ...[...sums].flatMap(([path, sum]) => {
      const content = files.get(path);
      if (content === undefined) return [`${path} is missing`];
      return sha256(content) === sum ? [] : [`${path} is not as it was packed`];
    }),
    ...[...files.keys()].filter(path => path !== SUMS && !sums.has(path)).map(path => `${path} does not belong to the release`),
  ];
  return { name: 'checksums', seen: `${sums.size} files as packed, none besides`, faults };
}

function addresses(files: Files): Check {
  const { addresses: all, base } = readManifest(textOf(files, 'manifest.xml'));
  return { name: 'manifest', seen: `${all.length} addresses under ${base}, each a file`, faults: [...(all.length === 0 ? ['manifest.xml has no addresses'] : []), ...[...new Set(all)].flatMap(address => awry(files, base, address, 'manifest.xml'))] };
}

/** What is wrong with an address of ours. */
function awry(files: Files, base: string, address: string, where: string): string[] {
  if (!address.startsWith('https://')) return [`${where}: ${address} is not https`];
  if (!address.startsWith(base)) return [`${where}: ${address} is not under ${base}`];
  const path = address.slice(base.length).replace(/#.*/, '');
  return files.has(path) ? [] : [`${where}: ${address} leads to no file`];
}

function listed(files: Files): readonly Listed[] {
  try {
    return (JSON.parse(textOf(files, 'functions.json')) as { readonly functions: readonly Listed[] }).functions;
  } catch {
    return [];
  }
}

/** What functions.js registers when it is loaded; a text where it cannot be. */
function register(script: string): ReadonlyMap<string, () => unknown> | string {
  const found = new Map<string, () => unknown>();
  const twice = new Set<string>();
  const associate = (id: string, wrapper: () => unknown): void => {
    if (found.has(id)) twice.add(id);
    found.set(id, wrapper);
  };
  try {
    runInNewContext(script, { CustomFunctions: { associate } }, { timeout: 10_000 });
  } catch (fault) {
    return `functions.js does not load: ${String(fault)}`;
  }
  return twice.size === 0 ? found : `functions.js registers twice: ${[...twice].join(', ')}`;
}

type Registered = ReturnType<typeof register> | undefined;

/** A changed functions.js is not run; its checksum has been reported. */
const NOT_RUN = 'functions.js was not run, because it is not as it was packed';

function ids(functions: readonly Listed[], registered: Registered): Check {
  const name = 'functions';
  if (registered === undefined || typeof registered === 'string') return { name, seen: '', faults: [registered ?? NOT_RUN] };
  const known = new Set(functions.map(({ id }) => id));
  return {
    name,
    seen: `${known.size} listed, the same registered`,
    faults: [
      ...(known.size === 0 ? ['functions.json lists nothing'] : []),
      ...[...known].filter(id => !registered.has(id)).map(id => `${id} is in functions.json, but functions.js does not register it`),
      ...[...registered.keys()].filter(id => !known.has(id)).map(id => `${id} is registered, but functions.json does not list it`),
    ],
  };
}

function versions(files: Files, registered: Registered): Check {
  const name = 'versions';
  if (registered === undefined || typeof registered === 'string') return { name, seen: '', faults: [registered ?? NOT_RUN] };
  const { version } = readManifest(textOf(files, 'manifest.xml'));
  const said = String(registered.get('VERSION')?.() ?? 'nothing');
  const agrees = said.startsWith(`Bosswright ${version.replace(/\.0$/, '')},`);
  return { name, seen: `${version} in the manifest; the functions say "${said}"`, faults: agrees ? [] : [`the manifest says ${version}, the functions say "${said}"`] };
}

function kept(functions: readonly Listed[]): Check {
  return { name: 'signatures', seen: `all ${Object.keys(RELEASED).length} that were released`, faults: broken(RELEASED, signaturesOf(functions)) };
}

function help(files: Files, functions: readonly Listed[]): Check {
  const { base } = readManifest(textOf(files, 'manifest.xml'));
  const links = [...new Set(functions.flatMap(({ helpUrl }) => helpUrl ?? []))];
  return { name: 'help', seen: links.length === 0 ? 'no help addresses in functions.json' : `${links.length} help addresses, each a file`, faults: links.flatMap(link => awry(files, base, link, 'functions.json')) };
}

const POLICY = /<meta\s+http-equiv="Content-Security-Policy"\s+content="([^"]*)"/;
/** What a page loads by itself; where a link leads is the reader's choice, but not to http. */
const LOADED = /<(?:script|img|link|iframe|embed|object|source|video|audio)\b[^>]*?\s(?:src|href|data|srcset)="([^"]*)"/g;
const NAMED = /\s(?:src|href|action|data|srcset)="(http:[^"]*)"/g;

function pages(files: Files): Check {
  const html = [...files.keys()].filter(path => path.endsWith('.html'));
  const faults = html.flatMap(path => {
    const text = textOf(files, path).replace(/<!--[^]*?-->/g, '');
    const policy = POLICY.exec(text)?.[1];
    const allowed = [...(policy ?? '').matchAll(/\s((?:\w+:\/\/|\*)[^\s;]*)/g)].map(([, origin = '']) => origin);
    const loaded = [...text.matchAll(LOADED)].map(([, address = '']) => address);
    return [
      ...(policy === undefined ? [`${path} has no content security policy`] : []),
      ...allowed.filter(origin => origin !== new URL(OFFICE).origin).map(origin => `${path}: its policy lets ${origin} in`),
      ...loaded.filter(address => /^(\w+:)?\/\//.test(address) && address !== OFFICE).map(address => `${path} loads ${address}`),
      ...[...text.matchAll(NAMED)].map(([, address = '']) => `${path} names ${address}, which is not https`),
    ];
  });
  return { name: 'pages', seen: `${html.length} pages with a policy; nothing from elsewhere but Office.js`, faults: html.length === 0 ? ['there are no pages'] : faults };
}

function sizes(files: Files): Check {
  const bytes = (path: string): number => files.get(path)?.length ?? 0;
  const kilobytes = (count: number): string => `${Math.ceil(count / 1000)} kB`;
  const total = [...files.values()].reduce((sum, content) => sum + content.length, 0);
  return {
    name: 'sizes',
    seen: `functions.js ${kilobytes(bytes('functions.js'))}, functions.json ${kilobytes(bytes('functions.json'))}, everything ${kilobytes(total)}`,
    faults: [
      ...[...files.keys()].filter(path => bytes(path) === 0).map(path => `${path} is empty`),
      ...(bytes('functions.json') > MEGABYTE ? [`functions.json has ${bytes('functions.json')} bytes; desktop Excel refuses more than ${MEGABYTE}`] : []),
    ],
  };
}
