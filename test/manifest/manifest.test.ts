// What the schema cannot see in manifest.xml: links between ids, the icon files, https, texts, the version.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { version } from '../../package.json';
import { NAMESPACE } from '../../src/pane/function-list';

const ROOT = new URL('../../', import.meta.url);
const manifest = readFileSync(new URL('manifest.xml', ROOT), 'utf8');

type Attributes = Readonly<Record<string, string>>;
interface Element {
  readonly name: string;
  readonly parent: string;
  readonly attributes: Attributes;
  readonly text: string;
}

const TAG = /<(\/?)([\w:]+)((?:\s+[\w:]+="[^"]*")*)\s*(\/?)>([^<]*)/g;

/** Enough of XML for a manifest that has passed the schema: no CDATA, no entities in the names or ids. */
function elements(xml: string): Element[] {
  const found: Element[] = [];
  const open: string[] = [];
  for (const [, closing, name = '', attributes = '', empty, text = ''] of xml.replace(/<!--.*?-->/gs, '').matchAll(TAG)) {
    if (closing) {
      open.pop();
      continue;
    }
    const pairs = [...attributes.matchAll(/([\w:]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]);
    found.push({ name, parent: open.at(-1) ?? '', attributes: Object.fromEntries(pairs) as Attributes, text: text.trim() });
    if (!empty) open.push(name);
  }
  return found;
}

/** Width and height from the header of a PNG, or null where there is no such file. */
function pngSize(path: string): string | null {
  try {
    const header = readFileSync(new URL(path, ROOT)).subarray(0, 24);
    return header.toString('latin1', 1, 4) === 'PNG' ? `${header.readUInt32BE(16)}x${header.readUInt32BE(20)}` : 'not a PNG';
  } catch {
    return null;
  }
}

function faults(xml: string): string[] {
  const all = elements(xml);
  const named = (name: string) => all.filter(element => element.name === name);
  const value = (element: Element | undefined) => element?.attributes['DefaultValue'] ?? '';
  const resources = new Map(
    all
      .filter(({ name }) => ['bt:Image', 'bt:Url', 'bt:String'].includes(name))
      .flatMap(element => {
        const id = element.attributes['id'];
        return id === undefined ? [] : [[id, element] as const];
      }),
  );
  const found: string[] = [];
  const must = (holds: boolean, fault: string) => void (holds || found.push(fault));

  for (const element of all) {
    const isUrl = /Url$|^SourceLocation$/.test(element.name) || (element.name === 'bt:Image' && 'id' in element.attributes);
    if (isUrl && 'DefaultValue' in element.attributes) must(value(element).startsWith('https://'), `not https: ${value(element)}`);
    const resid = element.attributes['resid'];
    if (resid !== undefined) must(resources.has(resid), `resid without a resource: ${resid}`);
    if (element.name === 'bt:String') {
      const limit = element.parent === 'bt:ShortStrings' ? 125 : 250;
      must(value(element).length > 0 && value(element).length <= limit, `text empty or longer than ${limit}: ${element.attributes['id']}`);
    }
  }
  for (const id of resources.keys()) must(id.length <= 32, `resource id longer than 32: ${id}`);

  const icons = [
    ...named('bt:Image').flatMap(({ attributes: { size, resid } }) => (size && resid ? [{ size, url: value(resources.get(resid)) }] : [])),
    ...named('IconUrl').map(element => ({ size: '32', url: value(element) })),
    ...named('HighResolutionIconUrl').map(element => ({ size: '64', url: value(element) })),
  ];
  for (const { size, url } of icons) {
    const actual = pngSize(`src/pane${new URL(url || '/', 'https://localhost').pathname}`);
    must(actual === `${size}x${size}`, `icon of ${size} px: ${url} is ${actual ?? 'missing'}`);
  }
  const iconSets = all.filter(({ name }) => name === 'Icon').length;
  for (const size of ['16', '32', '80'])
    must(
      iconSets > 0 && named('bt:Image').filter(({ attributes }) => attributes['size'] === size).length === iconSets,
      `icon size left out: ${size} px`,
    );

  const namespace = value(resources.get(named('Namespace')[0]?.attributes['resid'] ?? ''));
  must(/^[A-Z]+$/.test(namespace) && namespace === NAMESPACE, `namespace: ${namespace}`);

  const runtime = all.filter(
    ({ name, parent }) =>
      name === 'Runtime' || name === 'FunctionFile' || (name === 'SourceLocation' && (parent === 'Page' || parent === 'Action')),
  );
  must(
    runtime.length === 4 && new Set(runtime.map(({ attributes }) => attributes['resid'])).size === 1,
    'the shared runtime names more than one page',
  );

  must(named('Version')[0]?.text === `${version}.0`, `version: ${named('Version')[0]?.text}`);
  return found;
}

describe('manifest.xml', () => {
  it('has none of the faults that the schema lets through', () => {
    expect(faults(manifest)).toEqual([]);
  });

  const long = (count: number) => 'x'.repeat(count);
  it.each<[what: string, from: string | RegExp, to: string, fault: string]>([
    ['a plain http page', /(<SourceLocation DefaultValue=")https/, '$1http', 'not https: http://localhost:3000/pane.html'],
    ['a plain http resource', /(id="Functions.Script.Url" DefaultValue=")https/, '$1http', 'not https: http://localhost:3000/functions.js'],
    ['a plain http icon', /(id="Icon.80" DefaultValue=")https/, '$1http', 'not https: http://localhost:3000/icons/icon-80.png'],
    ['a resid that leads nowhere', '<Label resid="Group.Label"', '<Label resid="Group.Lable"', 'resid without a resource: Group.Lable'],
    ['a resource id of 33 characters', /Pane\.Tip/g, long(33), `resource id longer than 32: ${long(33)}`],
    ['no 80 px icon in one place', '<bt:Image size="80" resid="Icon.80"/>', '', 'icon size left out: 80 px'],
    [
      'an icon file that does not exist',
      /icon-16\.png/,
      'icon-17.png',
      'icon of 16 px: https://localhost:3000/icons/icon-17.png is missing',
    ],
    ['an icon of another size', /icon-80\.png/, 'icon-64.png', 'icon of 80 px: https://localhost:3000/icons/icon-64.png is 64x64'],
    [
      'a small icon in the high resolution place',
      /icon-64\.png/,
      'icon-32.png',
      'icon of 64 px: https://localhost:3000/icons/icon-32.png is 32x32',
    ],
    ['a namespace with a digit', '"ENCL"', '"ENCL2"', 'namespace: ENCL2'],
    ['a namespace that the pane does not show', '"ENCL"', '"ENCLO"', 'namespace: ENCLO'],
    [
      'a second page in the shared runtime',
      '<FunctionFile resid="Pane.Url"',
      '<FunctionFile resid="Help.Url"',
      'the shared runtime names more than one page',
    ],
    ['no command file', '<FunctionFile resid="Pane.Url"/>', '', 'the shared runtime names more than one page'],
    ['a version of three numbers', /<Version>[^<]*/, `<Version>${version}`, `version: ${version}`],
    ["a version other than the package's", /<Version>[^<]*/, '<Version>9.9.9.0', 'version: 9.9.9.0'],
    [
      'a short text of 126 characters',
      /(id="Group.Label" DefaultValue=")[^"]*/,
      `$1${long(126)}`,
      'text empty or longer than 125: Group.Label',
    ],
    ['a long text of 251 characters', /(id="Pane.Tip" DefaultValue=")[^"]*/, `$1${long(251)}`, 'text empty or longer than 250: Pane.Tip'],
    ['an empty text', /(id="Pane.Label" DefaultValue=")[^"]*/, '$1', 'text empty or longer than 125: Pane.Label'],
  ])('is refused with %s', (_what, from, to, fault) => {
    const spoilt = manifest.replace(from, to);
    expect(spoilt).not.toBe(manifest);
    expect(faults(spoilt)).toContain(fault);
  });

  it('is not refused at the limits', () => {
    const full = manifest
      .replace(/(id="Group.Label" DefaultValue=")[^"]*/, `$1${long(125)}`)
      .replace(/(id="Pane.Tip" DefaultValue=")[^"]*/, `$1${long(250)}`)
      .replace(/Pane\.Tip/g, long(32));
    expect(faults(full)).toEqual([]);
  });
});
