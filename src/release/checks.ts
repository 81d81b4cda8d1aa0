// What must hold of a folder that is served, each with the faults that were found. The files are read; none is run.
import { type Files, SUMS, textOf } from './files';
import { readManifest } from './manifest';
import { type Registered, registered } from './registered';
import { broken, RELEASED, signaturesOf } from './signatures';
import { listed, sha256, type Sums } from './sums';

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

/** Sums that did not come with the files. */
export interface Packed {
  readonly sums: Sums;
  readonly from: string;
}

export function checks(files: Files, packed?: Packed): readonly Check[] {
  const functions = listedFunctions(files);
  const found = registered(textOf(files, 'functions.js'));
  return [
    packed === undefined ? besideSums(files) : packedAs(files, packed),
    addresses(files),
    ids(functions, found),
    versions(files, found),
    kept(functions),
    help(files),
    pages(files),
    sizes(files),
  ];
}

function packedAs(files: Files, { sums, from }: Packed): Check {
  return { name: 'checksums', seen: `${sums.size} files as in ${from}, none besides`, faults: differing(files, sums) };
}

/** Whoever changes a file can change the list that lies beside it. */
function besideSums(files: Files): Check {
  const sums = listed(files.get(SUMS) ?? new Uint8Array());
  const own = new Map(files);
  own.delete(SUMS);
  return {
    name: 'checksums',
    seen: `${own.size} files agree with the list beside them, which shows accidental damage only`,
    faults: sums === undefined ? [`${SUMS} is missing, or is not a list of checksums`] : differing(own, sums),
  };
}

const differing = (files: Files, sums: Sums): string[] => [
  ...[...sums].flatMap(([path, sum]) => {
    const content = files.get(path);
    if (content === undefined) return [`${path} is missing`];
    return sha256(content) === sum ? [] : [`${path} is not as it was packed`];
  }),
  ...[...files.keys()].filter(path => !sums.has(path)).map(path => `${path} does not belong to the release`),
];

function addresses(files: Files): Check {
  const { addresses: all, base } = readManifest(textOf(files, 'manifest.xml'));
  return {
    name: 'manifest',
    seen: `${all.length} addresses under ${base}, each a file`,
    faults: [
      ...(all.length === 0 ? ['manifest.xml has no addresses'] : []),
      ...[...new Set(all)].flatMap(address => awry(files, base, address, 'manifest.xml')),
    ],
  };
}

/** What is wrong with an address of ours. */
function awry(files: Files, base: string, address: string, where: string): string[] {
  if (!address.startsWith('https://')) return [`${where}: ${address} is not https`];
  if (!address.startsWith(base)) return [`${where}: ${address} is not under ${base}`];
  const path = address.slice(base.length).replace(/#.*/, '');
  return files.has(path) ? [] : [`${where}: ${address} leads to a file that is not there`];
}

/** The English ones first. */
const LISTS = ['functions.json', 'functions-de.json'] as const;

function listedFunctions(files: Files, list: (typeof LISTS)[number] = 'functions.json'): readonly Listed[] {
  try {
    return (JSON.parse(textOf(files, list)) as { readonly functions: readonly Listed[] }).functions;
  } catch {
    return [];
  }
}

function ids(functions: readonly Listed[], found: Registered | string): Check {
  const name = 'functions';
  if (typeof found === 'string') return { name, seen: '', faults: [found] };
  const known = new Set(functions.map(({ id }) => id));
  const twice = found.ids.filter((id, i) => found.ids.indexOf(id) !== i);
  return {
    name,
    seen: `${known.size} listed, the same registered by the text of functions.js`,
    faults: [
      ...(known.size === 0 ? ['functions.json lists nothing'] : []),
      ...(twice.length === 0 ? [] : [`functions.js registers twice: ${twice.join(', ')}`]),
      ...[...known].filter(id => !found.ids.includes(id)).map(id => `${id} is in functions.json, but functions.js does not register it`),
      ...[...new Set(found.ids)].filter(id => !known.has(id)).map(id => `${id} is registered, but functions.json does not list it`),
    ],
  };
}

function versions(files: Files, found: Registered | string): Check {
  const name = 'versions';
  if (typeof found === 'string') return { name, seen: '', faults: [found] };
  const { version } = readManifest(textOf(files, 'manifest.xml'));
  const said = [...new Set(found.versions)].join(' and ') || 'nothing';
  const agrees = `${said}.0` === version;
  return {
    name,
    seen: `${version} in the manifest, ${said} in the text of functions.js`,
    faults: agrees ? [] : [`the manifest says ${version}, functions.js says ${said}`],
  };
}

function kept(functions: readonly Listed[]): Check {
  return {
    name: 'signatures',
    seen: `all ${Object.keys(RELEASED).length} that were released`,
    faults: broken(RELEASED, signaturesOf(functions)),
  };
}

function help(files: Files): Check {
  const { base } = readManifest(textOf(files, 'manifest.xml'));
  const links = LISTS.flatMap(list =>
    [...new Set(listedFunctions(files, list).flatMap(({ helpUrl }) => helpUrl ?? []))].map(link => ({ list, link })),
  );
  return {
    name: 'help',
    seen: links.length === 0 ? 'no help addresses in functions.json' : `${links.length} help addresses, each a file`,
    faults: links.flatMap(({ list, link }) => awry(files, base, link, list)),
  };
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
  return {
    name: 'pages',
    seen: `${html.length} pages with a policy; nothing from elsewhere but Office.js`,
    faults: html.length === 0 ? ['there are no pages'] : faults,
  };
}

function sizes(files: Files): Check {
  const bytes = (path: string): number => files.get(path)?.length ?? 0;
  const kilobytes = (count: number): string => `${Math.ceil(count / 1000)} kB`;
  const total = [...files.values()].reduce((sum, content) => sum + content.length, 0);
  return {
    name: 'sizes',
    seen:
      `functions.js ${kilobytes(bytes('functions.js'))}, functions.json ${kilobytes(bytes('functions.json'))}, everything ` +
      `${kilobytes(total)}`,
    faults: [
      ...[...files.keys()].filter(path => bytes(path) === 0).map(path => `${path} is empty`),
      ...(bytes('functions.json') > MEGABYTE
        ? [`functions.json has ${bytes('functions.json')} bytes; desktop Excel refuses more than ${MEGABYTE}`]
        : []),
    ],
  };
}
