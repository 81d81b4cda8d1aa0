// The package as npm run library leaves it: alone it works, it brings its types, and a bundler takes only what is used.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { runInNewContext } from 'node:vm';
import { build } from 'esbuild';
import ts from 'typescript';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { call } from '../../src/registry';

const PACKAGE = 'dist-library';

/** A project of somebody else, with the package and nothing besides. */
let project: string;
const file = (name: string): string => path.join(project, name);
beforeAll(() => {
  if (!existsSync(PACKAGE)) throw new Error(`${PACKAGE} is missing: run npm run library first`);
  project = mkdtempSync(path.join(tmpdir(), 'library-'));
  mkdirSync(file('node_modules'));
  cpSync(PACKAGE, file('node_modules/bosswright'), { recursive: true });
  writeFileSync(file('package.json'), '{ "type": "module" }');
});
afterAll(() => rmSync(project, { recursive: true }));

async function bundled(source: string, format: 'esm' | 'iife' = 'esm'): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: source, resolveDir: project },
    bundle: true,
    minify: true,
    format,
    globalName: 'made',
    platform: 'neutral',
    write: false,
  });
  return outputFiles[0]?.text ?? '';
}

describe('a bundler', () => {
  it('takes one formula alone', async () => {
    const [one, all] = await Promise.all([
      bundled('export { bossOutsideDiaMm } from "bosswright"'),
      bundled('export { call } from "bosswright"'),
    ]);
    expect(one.length).toBeLessThan(300);
    expect(all.length).toBeGreaterThan(100_000);
    console.log(`one formula ${one.length} bytes, all functions ${all.length} bytes`);
  });

  it('needs no page and no Node for any of it', async () => {
    const context: { made?: Record<string, unknown> } = {};
    runInNewContext(`${await bundled('export * from "bosswright"', 'iife')}; this.made = made`, context);
    const made = context.made as { call: typeof call };
    expect(made.call('BOSS.OD', ['0.167 in + 0.25 mm', 1.2])).toEqual({ ok: true, value: 6.8918 });
    expect(made.call('STACK.PPM', [0, 1, -3, 3])).toEqual(call('STACK.PPM', [0, 1, -3, 3]));
  });
});

const EXAMPLES = [...readFileSync('src/docs/library.md', 'utf8').matchAll(/```ts\n([^]*?)```/g)].map(([, code = '']) => code);

describe('the examples of its document', () => {
  it('are there', () => expect(EXAMPLES.length).toBe(3));

  it.each(EXAMPLES.map((code, i) => [i, code] as const))('example %i prints what it says', (i, code) => {
    const said = [...code.matchAll(/\/\/ (.*)/g)].map(([, text]) => text);
    writeFileSync(file(`example-${i}.js`), code);
    const printed = execFileSync(process.execPath, [file(`example-${i}.js`)], { encoding: 'utf8', cwd: project });
    expect(printed.trimEnd().split('\n')).toEqual(said);
  });

  it.each([
    ['a bundler', ts.ModuleKind.ESNext, ts.ModuleResolutionKind.Bundler],
    ['Node', ts.ModuleKind.Node16, ts.ModuleResolutionKind.Node16],
  ])('have types under the rules of %s', (_, module, moduleResolution) => {
    const names = EXAMPLES.map((code, i) => (writeFileSync(file(`typed-${i}.ts`), code), file(`typed-${i}.ts`)));
    writeFileSync(
      file('wrong.ts'),
      'import { bossOutsideDiaMm, nothing } from "bosswright"; bossOutsideDiaMm("2.4", 1.2, 14, 0.5); nothing();',
    );
    const wrong = file('wrong.ts');
    // of the library's own types nothing is skipped; console is all that the examples need besides
    writeFileSync(file('console.d.ts'), 'declare const console: { log(...parts: unknown[]): void };');
    const program = ts.createProgram([...names, wrong, file('console.d.ts')], {
      module,
      moduleResolution,
      target: ts.ScriptTarget.ES2022,
      lib: ['lib.es2022.d.ts'],
      strict: true,
      noEmit: true,
      types: [],
    });
    const faults = ts
      .getPreEmitDiagnostics(program)
      .map(
        ({ file: source, messageText }) => `${path.basename(source?.fileName ?? '')}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`,
      );
    expect(faults.sort()).toEqual([
      expect.stringMatching(/^wrong.ts: Argument of type 'string' is not assignable to parameter of type 'number'/),
      expect.stringMatching(/^wrong.ts: Module .* has no exported member 'nothing'/),
    ]);
  });
});

describe('what is packed', () => {
  const held = JSON.parse(readFileSync(path.join(PACKAGE, 'package.json'), 'utf8')) as {
    readonly sideEffects: boolean;
    readonly dependencies: Readonly<Record<string, string>>;
  };
  const [packed] = JSON.parse(
    execFileSync('npm', ['pack', '--dry-run', '--json'], { cwd: PACKAGE, encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] }),
  ) as [{ readonly files: readonly { readonly path: string }[] }];
  const files = packed.files.map(({ path: name }) => name);

  it('has its documents, licences and schema, and nothing of tests or sources', () => {
    expect(files).toEqual(
      expect.arrayContaining(['README.md', 'command-line.md', 'LICENSE', 'licences.txt', 'joint-inputs.schema.json', 'library/index.d.ts']),
    );
    expect(files.filter(name => /(^|\/)test\/|\.test\.|(?<!\.d)\.ts$|\.map$|\.tgz$/.test(name))).toEqual([]);
    expect(held.sideEffects).toBe(false);
  });

  it('asks for packages by exact versions, and its modules for none', () => {
    expect(Object.values(held.dependencies).every(version => /^\d+\.\d+\.\d+$/.test(version))).toBe(true);
    const asks = files
      .filter(name => name.endsWith('.js') && !name.startsWith('bin/'))
      .filter(name => /^(?:import|export)\b[^;]*? from ["'](?![./])/m.test(readFileSync(path.join(PACKAGE, name), 'utf8')));
    expect(asks).toEqual([]);
    const licences = readFileSync(path.join(PACKAGE, 'licences.txt'), 'utf8');
    for (const name of ['pure-rand', 'fastest-levenshtein', '@stdlib/math-base-special-ln']) expect(licences).toContain(`${name} `);
  });

  it('leads nowhere astray', () => {
    for (const name of ['README.md', 'command-line.md'])
      for (const [, target = ''] of readFileSync(path.join(PACKAGE, name), 'utf8').matchAll(/\]\((?!https:)([^)#\s]+)/g))
        expect(files, name).toContain(target);
  });

  it('its command answers', () => {
    const said = execFileSync(process.execPath, [path.join(PACKAGE, 'bin/bosswright.js'), 'table', '-', '--results', 'engagement min'], {
      input: 'screw,head,length,seat,board\nST2.9,pan,13,2.5,1.6\n',
      encoding: 'utf8',
    });
    expect(said).toMatch(/^screw,head,length,seat,board,engagement min \(mm\)\r\nST2\.9,pan,13,2\.5,1\.6,4\.6\d*\r\n$/);
  });
});
