// A served folder is broken in every way that the checks claim to see: one fault each, and the check that names it.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { version } from '../../package.json';
import { baseUrl } from '../../src/release/base-url';
import { checks } from '../../src/release/checks';
import { type Files, SUMS, textOf } from '../../src/release/files';
import { releaseOf, sha256 } from '../../src/release/release';
import { main } from '../../src/release/verify';
import { BUILT, TEXTS } from './built';

const whole = releaseOf(BUILT, baseUrl('https://example.org/bosswright/'), version, TEXTS);
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

type Break = (files: Map<string, Uint8Array>) => void;
const edited = (file: string, from: string | RegExp, to: string): Break => files => {
  const before = textOf(files, file);
  const after = before.replace(from, to);
  if (after === before) throw new Error(`${file} is not changed`);
  files.set(file, bytes(after));
};

/** As if it had been packed so: the checksums agree with what was broken. */
function packed(spoil: Break): Files {
  const files = new Map(whole);
  spoil(files);
  files.set(SUMS, bytes([...files].filter(([file]) => file !== SUMS).map(([file, content]) => `${sha256(content)}  ${file}\n`).join('')));
  return files;
}
/** As if someone had changed it on the server. */
function touched(spoil: Break): Files {
  const files = new Map(whole);
  spoil(files);
  return files;
}
const faultsOf = (files: Files): Record<string, readonly string[]> => Object.fromEntries(checks(files).filter(({ faults }) => faults.length > 0).map(({ name, faults }) => [name, faults]));

it('a release has no fault', () => {
  expect(faultsOf(whole)).toEqual({});
  expect(checks(whole).map(({ name }) => name)).toEqual(['checksums', 'manifest', 'functions', 'versions', 'signatures', 'help', 'pages', 'sizes']);
});

const NOT_RUN = 'functions.js was not run, because it is not as it was packed';

describe('on the server', () => {
  it.each<[string, Break, Record<string, readonly string[]>]>([
    ['a changed file', edited('pane.html', 'away', 'astray'), { checksums: ['pane.html is not as it was packed'] }],
    ['a missing file', files => files.delete('CHANGES.md'), { checksums: ['CHANGES.md is missing'] }],
    ['a file that was added', files => files.set('old.js', bytes('1')), { checksums: ['old.js does not belong to the release'] }],
    ['a missing icon', files => files.delete('icons/icon-80.png'), { checksums: ['icons/icon-80.png is missing'], manifest: ['manifest.xml: https://example.org/bosswright/icons/icon-80.png leads to no file'] }],
    ['changed functions, which are not run', edited('functions.js', 'CustomFunctions', 'process.exit(); CustomFunctions'), { checksums: ['functions.js is not as it was packed'], functions: [NOT_RUN], versions: [NOT_RUN] }],
  ])('%s', (_, spoil, faults) => expect(faultsOf(touched(spoil))).toEqual(faults));

  it('no checksums', () => {
    expect(faultsOf(touched(files => files.delete(SUMS)))['checksums']).toContain('SHA256SUMS is missing or empty');
  });
});

const functions = (change: (list: { id: string; parameters: unknown[]; helpUrl: string }[]) => unknown): Break => files => {
  const metadata = JSON.parse(textOf(files, 'functions.json')) as { functions: Parameters<typeof change>[0] };
  change(metadata.functions);
  files.set('functions.json', bytes(JSON.stringify(metadata)));
};

describe('in what was packed', () => {
  it.each<[string, Break, Record<string, readonly string[]>]>([
    ['a manifest with http', edited('manifest.xml', /(id="Bench.Url" DefaultValue=")https/, '$1http'), { manifest: ['manifest.xml: http://example.org/bosswright/index.html is not https'] }],
    ['a manifest with an address elsewhere', edited('manifest.xml', /(id="Bench.Url" DefaultValue=")https:\/\/example.org/, '$1https://localhost:3000'), { manifest: ['manifest.xml: https://localhost:3000/bosswright/index.html is not under https://example.org/bosswright/'] }],
    ['a manifest with an address of no file', edited('manifest.xml', /(id="Bench.Url" DefaultValue="[^"]*)index/, '$1start'), { manifest: ['manifest.xml: https://example.org/bosswright/start.html leads to no file'] }],
    ['a function that is not registered', edited('functions.js', /.*"BOSS.OD".*\n/, ''), { functions: ['BOSS.OD is in functions.json, but functions.js does not register it'] }],
    ['a function that is not listed', edited('functions.js', /^/, 'CustomFunctions.associate("BOSS.NEW", () => 0);'), { functions: ['BOSS.NEW is registered, but functions.json does not list it'] }],
    ['a function registered twice', edited('functions.js', /^/, 'CustomFunctions.associate("GRIP", () => 0);'), { functions: ['functions.js registers twice: GRIP'], versions: ['functions.js registers twice: GRIP'] }],
    ['functions that do not load', edited('functions.js', /^/, 'nothing.here();'), { functions: ['functions.js does not load: ReferenceError: nothing is not defined'], versions: ['functions.js does not load: ReferenceError: nothing is not defined'] }],
    ['another version in the manifest', edited('manifest.xml', `${version}.0`, '9.9.9.0'), { versions: [expect.stringContaining('the manifest says 9.9.9.0, the functions say "Bosswright ')] }],
    ['another version in the functions', edited('functions.js', `Bosswright ${version}`, 'Bosswright 9.9.9'), { versions: [expect.stringContaining('the functions say "Bosswright 9.9.9')] }],
    ['a released function gone', files => (edited('functions.js', /.*"LIP.SKIN".*\n/, '')(files), functions(list => list.splice(list.findIndex(({ id }) => id === 'LIP.SKIN'), 1))(files)), { signatures: ['LIP.SKIN is gone; workbooks call it, so it must stay'] }],
    ['a released argument gone', functions(list => list.find(({ id }) => id === 'LIP.SKIN')?.parameters.pop()), { signatures: ['LIP.SKIN has lost its argument gaps'] }],
    ['a help address of no file', functions(list => Object.assign(list[0] ?? {}, { helpUrl: 'https://example.org/bosswright/help/none.html#x' })), { help: ['functions.json: https://example.org/bosswright/help/none.html#x leads to no file'] }],
    ['a help address elsewhere', functions(list => Object.assign(list[0] ?? {}, { helpUrl: 'https://example.com/help' })), { help: ['functions.json: https://example.com/help is not under https://example.org/bosswright/'] }],
    ['a page without a policy', edited('index.html', 'http-equiv="Content-Security-Policy"', ''), { pages: ['index.html has no content security policy'] }],
    ['a policy that lets others in', edited('pane.html', "'self';", "'self' https://example.com;"), { pages: ['pane.html: its policy lets https://example.com in'] }],
    ['a policy that lets everybody in', edited('pane.html', "'self';", '*;'), { pages: ['pane.html: its policy lets * in'] }],
    ['a script from elsewhere', edited('pane.html', /$/, '<script defer src="https://example.com/a.js"></script>'), { pages: ['pane.html loads https://example.com/a.js'] }],
    ['a style sheet from elsewhere', edited('pane.html', /$/, '<link rel="stylesheet" href="//example.com/a.css">'), { pages: ['pane.html loads //example.com/a.css'] }],
    ['a link to http', edited('pane.html', 'href="https:', 'href="http:'), { pages: ['pane.html names http://example.org/, which is not https'] }],
    ['an empty file', files => files.set('CHANGES.md', bytes('')), { sizes: ['CHANGES.md is empty'] }],
    ['metadata too large for Excel', files => files.set('functions.json', bytes(textOf(files, 'functions.json') + ' '.repeat(1_000_000))), { sizes: [expect.stringContaining('desktop Excel refuses more than 1000000')] }],
  ])('%s', (_, spoil, faults) => expect(faultsOf(packed(spoil))).toEqual(faults));

  it.each(['manifest.xml', 'functions.json', 'functions.js'])('no %s', file => {
    expect(Object.keys(faultsOf(packed(files => files.delete(file)))).length).toBeGreaterThan(0);
  });

  it('no pages', () => {
    expect(faultsOf(packed(files => ['pane.html', 'index.html', 'help/functions.html'].forEach(file => files.delete(file))))['pages']).toEqual(['there are no pages']);
  });
});

describe('the command', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'verify-'));
    for (const [file, content] of whole) {
      mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
      writeFileSync(path.join(folder, file), content);
    }
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  const run = (...args: readonly string[]): string[] => {
    const lines: string[] = [];
    main(args, line => lines.push(line));
    return lines;
  };

  it('lists what it saw, and ends with an error where something is wrong', () => {
    expect(run(folder).at(-1)).toBe(`8 checks passed: ${folder}`);
    writeFileSync(path.join(folder, 'pane.html'), 'changed');
    expect(() => run(folder)).toThrow(`2 faults in ${folder}`);
  });

  it('asks for one folder that is there', () => {
    expect(() => run()).toThrow('npm run verify -- folder');
    expect(() => run('a', 'b')).toThrow('npm run verify -- folder');
    expect(() => run(path.join(folder, 'nowhere'))).toThrow('is no folder');
  });
});
