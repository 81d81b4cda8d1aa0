// A served folder is broken in every way that the checks claim to see: one fault each, and the check that names it.
import { existsSync, linkSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { version } from '../../package.json';
import { baseUrl } from '../../src/release/base-url';
import { checks } from '../../src/release/checks';
import { type Files, SUMS, textOf } from '../../src/release/files';
import { registered } from '../../src/release/registered';
import { releaseOf, zipOf } from '../../src/release/release';
import { listed, packedSums, sumList } from '../../src/release/sums';
import { main } from '../../src/release/verify';
import { BUILT, TEXTS } from './built';

const whole = releaseOf(BUILT, baseUrl('https://example.org/bosswright/'), version, TEXTS);
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

type Break = (files: Map<string, Uint8Array>) => void;
const edited =
  (file: string, from: string | RegExp, to: string): Break =>
  files => {
    const before = textOf(files, file);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${file} is not changed`);
    files.set(file, bytes(after));
  };

/** As if it had been packed so: the checksums agree with what was broken. */
function packed(spoil: Break): Files {
  const files = new Map(whole);
  spoil(files);
  files.delete(SUMS);
  files.set(SUMS, bytes(sumList(files)));
  return files;
}
/** As if someone had changed it on the server. */
function touched(spoil: Break): Files {
  const files = new Map(whole);
  spoil(files);
  return files;
}
const faultsOf = (files: Files): Record<string, readonly string[]> =>
  Object.fromEntries(
    checks(files)
      .filter(({ faults }) => faults.length > 0)
      .map(({ name, faults }) => [name, faults]),
  );

it('a release has no fault', () => {
  expect(faultsOf(whole)).toEqual({});
  expect(checks(whole).map(({ name }) => name)).toEqual([
    'checksums',
    'manifest',
    'functions',
    'versions',
    'signatures',
    'help',
    'pages',
    'sizes',
  ]);
});

describe('on the server', () => {
  it.each<[string, Break, Record<string, readonly string[]>]>([
    ['a changed file', edited('pane.html', 'away', 'astray'), { checksums: ['pane.html is not as it was packed'] }],
    ['a missing file', files => files.delete('CHANGES.md'), { checksums: ['CHANGES.md is missing'] }],
    ['a file that was added', files => files.set('old.js', bytes('1')), { checksums: ['old.js does not belong to the release'] }],
    [
      'a missing icon',
      files => files.delete('icons/icon-80.png'),
      {
        checksums: ['icons/icon-80.png is missing'],
        manifest: ['manifest.xml: https://example.org/bosswright/icons/icon-80.png leads to a file that is not there'],
      },
    ],
    [
      'one byte more',
      files => files.set('LICENSE', bytes(`${textOf(files, 'LICENSE')} `)),
      { checksums: ['LICENSE is not as it was packed'] },
    ],
    ['one digit in the functions', edited('functions.js', '() => 0', '() => 1'), { checksums: ['functions.js is not as it was packed'] }],
  ])('%s', (_, spoil, faults) => expect(faultsOf(touched(spoil))).toEqual(faults));

  it('no checksums', () => {
    expect(faultsOf(touched(files => files.delete(SUMS)))['checksums']).toContain('SHA256SUMS is missing, or is not a list of checksums');
  });

  it.each(['', 'no sums\n', `${'0'.repeat(63)}  pane.html\n`, `${'0'.repeat(64)}  pane.html\nand a word\n`])('%j is no list', text => {
    expect(listed(bytes(text))).toBeUndefined();
    expect(faultsOf(touched(files => files.set(SUMS, bytes(text))))['checksums']).toEqual([
      'SHA256SUMS is missing, or is not a list of checksums',
    ]);
  });
});

const functions =
  (change: (list: { id: string; parameters: unknown[]; helpUrl: string }[]) => unknown): Break =>
  files => {
    const metadata = JSON.parse(textOf(files, 'functions.json')) as { functions: Parameters<typeof change>[0] };
    change(metadata.functions);
    files.set('functions.json', bytes(JSON.stringify(metadata)));
  };

describe('in what was packed', () => {
  it.each<[string, Break, Record<string, readonly string[]>]>([
    [
      'a manifest with http',
      edited('manifest.xml', /(id="Help.Url" DefaultValue=")https/, '$1http'),
      { manifest: ['manifest.xml: http://example.org/bosswright/help/index.html is not https'] },
    ],
    [
      'a manifest with an address elsewhere',
      edited('manifest.xml', /(id="Help.Url" DefaultValue=")https:\/\/example.org/, '$1https://localhost:3000'),
      { manifest: ['manifest.xml: https://localhost:3000/bosswright/help/index.html is not under https://example.org/bosswright/'] },
    ],
    [
      'a manifest with an address of no file',
      edited('manifest.xml', /(id="Help.Url" DefaultValue="[^"]*)index/, '$1start'),
      { manifest: ['manifest.xml: https://example.org/bosswright/help/start.html leads to a file that is not there'] },
    ],
    [
      'a function that is not registered',
      edited('functions.js', /.*"BOSS.OD".*\n/, ''),
      { functions: ['BOSS.OD is in functions.json, but functions.js does not register it'] },
    ],
    [
      'a function that is not listed',
      edited('functions.js', /^/, 'CustomFunctions.associate("BOSS.NEW", () => 0);'),
      { functions: ['BOSS.NEW is registered, but functions.json does not list it'] },
    ],
    [
      'a function registered twice',
      edited('functions.js', /^/, 'CustomFunctions.associate("GRIP", () => 0);'),
      { functions: ['functions.js registers twice: GRIP'] },
    ],
    [
      'a function whose name is worked out',
      edited('functions.js', /^/, 'CustomFunctions.associate("GR" + "IP", () => 0);'),
      {
        functions: ['functions.js registers what is no plain name: "GR" + "IP"'],
        versions: ['functions.js registers what is no plain name: "GR" + "IP"'],
      },
    ],
    [
      'functions that are no script',
      edited('functions.js', /^/, 'function ('),
      {
        functions: [expect.stringContaining('functions.js is no script: ')],
        versions: [expect.stringContaining('functions.js is no script: ')],
      },
    ],
    [
      'another version in the manifest',
      edited('manifest.xml', `${version}.0`, '9.9.9.0'),
      { versions: [`the manifest says 9.9.9.0, functions.js says ${version}`] },
    ],
    [
      'another version in the functions',
      edited('functions.js', `Bosswright ${version}`, 'Bosswright 9.9.9'),
      { versions: [`the manifest says ${version}.0, functions.js says 9.9.9`] },
    ],
    ['a version said twice is one', edited('functions.js', /$/, `;"Bosswright ${version}, data 2026-01-01"`), {}],
    [
      'two versions in the functions',
      edited('functions.js', /$/, ';"Bosswright 9.9.9, data 2026-01-01"'),
      { versions: [`the manifest says ${version}.0, functions.js says ${version} and 9.9.9`] },
    ],
    [
      'a released function gone',
      files => (
        edited('functions.js', /.*"LIP.SKIN".*\n/, '')(files),
        functions(list =>
          list.splice(
            list.findIndex(({ id }) => id === 'LIP.SKIN'),
            1,
          ),
        )(files)
      ),
      { signatures: ['LIP.SKIN is gone; workbooks call it, so it must stay'] },
    ],
    [
      'a released argument gone',
      functions(list => list.find(({ id }) => id === 'LIP.SKIN')?.parameters.pop()),
      { signatures: ['LIP.SKIN has lost its argument gaps'] },
    ],
    [
      'a help address of no file',
      functions(list => Object.assign(list[0] ?? {}, { helpUrl: 'https://example.org/bosswright/help/none.html#x' })),
      { help: ['functions.json: https://example.org/bosswright/help/none.html#x leads to a file that is not there'] },
    ],
    [
      'a German help address of no file',
      edited('functions-de.json', 'help/de/functions.html#BOSS.OD"', 'help/de/none.html"'),
      { help: ['functions-de.json: https://example.org/bosswright/help/de/none.html leads to a file that is not there'] },
    ],
    [
      'a help address elsewhere',
      functions(list => Object.assign(list[0] ?? {}, { helpUrl: 'https://example.com/help' })),
      { help: ['functions.json: https://example.com/help is not under https://example.org/bosswright/'] },
    ],
    [
      'a page without a policy',
      edited('index.html', 'http-equiv="Content-Security-Policy"', ''),
      { pages: ['index.html has no content security policy'] },
    ],
    [
      'a policy that lets others in',
      edited('pane.html', "'self';", "'self' https://example.com;"),
      { pages: ['pane.html: its policy lets https://example.com in'] },
    ],
    ['a policy that lets everybody in', edited('pane.html', "'self';", '*;'), { pages: ['pane.html: its policy lets * in'] }],
    [
      'a script from elsewhere',
      edited('pane.html', /$/, '<script defer src="https://example.com/a.js"></script>'),
      { pages: ['pane.html loads https://example.com/a.js'] },
    ],
    [
      'a style sheet from elsewhere',
      edited('pane.html', /$/, '<link rel="stylesheet" href="//example.com/a.css">'),
      { pages: ['pane.html loads //example.com/a.css'] },
    ],
    [
      'a link to http',
      edited('pane.html', 'href="https:', 'href="http:'),
      { pages: ['pane.html names http://example.org/, which is not https'] },
    ],
    ['an empty file', files => files.set('CHANGES.md', bytes('')), { sizes: ['CHANGES.md is empty'] }],
    [
      'metadata too large for Excel',
      files => files.set('functions.json', bytes(textOf(files, 'functions.json') + ' '.repeat(1_000_000))),
      { sizes: [expect.stringContaining('desktop Excel refuses more than 1000000')] },
    ],
  ])('%s', (_, spoil, faults) => expect(faultsOf(packed(spoil))).toEqual(faults));

  it.each(['manifest.xml', 'functions.json', 'functions.js'])('no %s', file => {
    expect(Object.keys(faultsOf(packed(files => files.delete(file)))).length).toBeGreaterThan(0);
  });

  it('no pages', () => {
    expect(
      faultsOf(
        packed(files =>
          [
            'pane.html',
            'index.html',
            ...['functions.html', 'index.html', 'de/functions.html', 'de/index.html', 'docs/support.html'].map(file => `help/${file}`),
          ].forEach(file => files.delete(file)),
        ),
      )['pages'],
    ).toEqual(['there are no pages']);
  });
});

describe('the functions are read, not run', () => {
  it('names in calls count; names in texts, comments and other objects do not', () => {
    const script = `CustomFunctions.associate("A.B", f), CustomFunctions.associate(\`C\`, () => { throw 1 });
      // CustomFunctions.associate("D", f)
      "CustomFunctions.associate('E', f)"; other.associate("F", f); (() => { while (true) CustomFunctions.associate('G', f) })()`;
    expect(registered(script)).toEqual({ ids: ['A.B', 'C', 'G'], versions: [] });
  });

  it('one too deep for the parser is refused', () => {
    expect(registered('('.repeat(1_000_000))).toMatch(/^functions.js (cannot be read|is no script): /);
  });
});

describe('the command', () => {
  let root: string;
  let folder: string;
  beforeEach(() => {
    root = mkdtempSync(path.join(tmpdir(), 'verify-'));
    folder = path.join(root, 'served');
    write(whole);
    writeFileSync(path.join(root, 'release.zip'), zipOf(whole));
    writeFileSync(path.join(root, 'sums'), whole.get(SUMS) ?? bytes(''));
  });
  afterEach(() => rmSync(root, { recursive: true }));

  const write = (files: Files): void => {
    for (const [file, content] of files) {
      mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
      writeFileSync(path.join(folder, file), content);
    }
  };
  const at = (file: string): string => path.join(root, file);
  const lines: string[] = [];
  const run = (...args: readonly string[]): string[] => {
    lines.length = 0;
    main(args, line => lines.push(line));
    return lines;
  };
  const OUTSIDE = ['release.zip', 'sums'];

  it('by the list beside the files: no accident, and what that does not show', () => {
    const last = run(folder).at(-1);
    expect(last).toBe(
      `8 checks passed, no accidental damage found: ${folder}\nThis shows accidental damage only: whoever changes a file on purpose can change the list beside it too. Give the zip, or a list that came another way: --sums FILE`,
    );
    expect(lines.join('\n')).toContain('agree with the list beside them, which shows accidental damage only');
    expect(lines.join('\n')).not.toContain('whole');
  });

  it.each(OUTSIDE)('by %s from outside: whole', file => {
    expect(run(folder, '--sums', at(file)).at(-1)).toBe(`8 checks passed, whole by ${at(file)}: ${folder}`);
    expect(lines[0]).toBe(`ok     checksums   ${whole.size} files as in ${at(file)}, none besides`);
  });

  it('ends with an error where something is wrong', () => {
    writeFileSync(path.join(folder, 'pane.html'), 'changed');
    expect(() => run(folder)).toThrow(`2 faults in ${folder}`);
  });

  it.each<[string, Break, number]>([
    ['a changed page', edited('pane.html', 'away', 'astray'), 1],
    ['one byte more', files => files.set('LICENSE', bytes(`${textOf(files, 'LICENSE')} `)), 1],
    ['one digit in the functions', edited('functions.js', '() => 0', '() => 1'), 1],
    ['a file more', files => files.set('old.js', bytes('1')), 1],
    ['an icon less', files => files.delete('icons/icon-80.png'), 2],
  ])('forged, %s and the list written anew: not whole by sums from outside', (_, spoil, faults) => {
    rmSync(folder, { recursive: true });
    write(packed(spoil));
    for (const file of OUTSIDE) {
      // and the list itself
      expect(() => run(folder, '--sums', at(file))).toThrow(`${faults + 1} faults in ${folder}`);
      expect(lines.join('\n')).toContain('SHA256SUMS is not as it was packed');
    }
  });

  describe('a forged functions.js that would write a file', () => {
    const trace = 'written-by-the-judged';
    const attack = (): string =>
      `const p = CustomFunctions.associate.constructor('return process')(); p.getBuiltinModule('fs').writeFileSync(${JSON.stringify(at(trace))}, String(p.pid));\n`;

    it('would write it where it is run with our objects in reach', () => {
      new Function('CustomFunctions', attack())({ associate: () => 0 });
      expect(readFileSync(at(trace), 'utf8')).toBe(String(process.pid));
    });

    it.each([['no sums'], ...OUTSIDE.map(file => [file])])('is not run, judged by %s', file => {
      write(packed(files => edited('functions.js', /^/, attack())(files)));
      if (file === 'no sums') expect(run(folder).join('\n')).not.toContain('whole');
      else expect(() => run(folder, '--sums', at(file))).toThrow(`2 faults in ${folder}`);
      expect(existsSync(at(trace))).toBe(false);
    });
  });

  it.each<[string, () => string]>([
    ['the list in it', () => path.join(folder, SUMS)],
    [
      'a zip in it',
      () => {
        writeFileSync(path.join(folder, 'release.zip'), zipOf(whole));
        return path.join(folder, 'release.zip');
      },
    ],
    [
      'a symbolic link to the list in it',
      () => {
        symlinkSync(path.join(folder, SUMS), at('link'));
        return at('link');
      },
    ],
    [
      'a path through a linked folder',
      () => {
        symlinkSync(folder, at('same'));
        return path.join(at('same'), SUMS);
      },
    ],
    [
      'another name of the list in it',
      () => {
        linkSync(path.join(folder, SUMS), at('name'));
        return at('name');
      },
    ],
  ])('%s is not taken for sums from outside', (_, made) =>
    expect(() => run(folder, '--sums', made())).toThrow('is in the folder that it is to judge'),
  );

  it.each(['icons/icon-16.png', 'old.js', 'more'])('%s as a symbolic link is refused, whatever it shows', file => {
    const place = path.join(folder, file);
    rmSync(place, { force: true });
    const shown = file === 'more' ? root : at('shown');
    writeFileSync(at('shown'), whole.get(file) ?? bytes('1'));
    symlinkSync(shown, place);
    for (const args of [[], ['--sums', at('release.zip')]]) expect(() => run(folder, ...args)).toThrow(`${place} is a link or a device`);
  });

  it('what a file is called cannot write over what is printed', () => {
    writeFileSync(path.join(folder, 'a\u001b[2J\n8 checks passed'), '1');
    expect(() => run(folder)).toThrow('1 fault');
    expect(lines.join('')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    expect(lines.join('')).toContain('a�[2J�8 checks passed does not belong to the release');
  });

  it('asks for one folder that is there, and for sums that are some', () => {
    for (const args of [[], ['a', 'b'], [folder, '--sums'], [folder, '--other', 'x'], [folder, '--sums', '']])
      expect(() => run(...args), args.join(' ')).toThrow(/^bosswright verify folder \[--sums FILE\]|cannot be read/);
    expect(() => run(path.join(folder, 'nowhere'))).toThrow('is no folder');
    expect(() => run(folder, '--sums', at('nowhere'))).toThrow('cannot be read');
    writeFileSync(at('words'), 'no sums');
    expect(() => run(folder, '--sums', at('words'))).toThrow('is neither the zip of a release nor a list of checksums');
    expect(packedSums(bytes(''))).toBeUndefined();
  });
});
