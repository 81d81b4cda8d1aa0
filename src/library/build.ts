// npm run library: the core as a package in dist-library/, a module a file so that a bundler takes only what is used, with its types beside
// it; and the command line.
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import path from 'node:path';
import { build, type BuildOptions, type Plugin } from 'esbuild';
import ts from 'typescript';
import { checkForms } from '../plain/read';

const SRC = path.resolve('src');
const OUT = path.resolve('dist-library');
const PACKAGES = 'packages';
const BIN = 'bin';
/** What the command reads from their packages when it draws. */
const LOADED_AS_FILES = ['@resvg/resvg-wasm', 'dejavu-fonts-ttf'];

checkForms();
rmSync(OUT, { recursive: true, force: true });

const { config } = ts.readConfigFile('tsconfig.json', name => ts.sys.readFile(name)) as { config: { compilerOptions: object } };
const { options } = ts.convertCompilerOptionsFromJson(
  {
    ...config.compilerOptions,
    lib: ['ES2021'],
    types: [],
    noEmit: false,
    declaration: true,
    emitDeclarationOnly: true,
    rootDir: SRC,
    outDir: OUT,
  },
  '.',
);
const program = ts.createProgram([path.join(SRC, 'library/index.ts')], options);
/** Node and its rules for types ask for the extension that the sources leave out. */
const withExtensions = (text: string): string => text.replace(/(from |import\()(["'])(\.[^"']*)\2/g, '$1$2$3.js$2');
const { diagnostics } = program.emit(undefined, (file, text) => {
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, withExtensions(text));
});
const faults = [...ts.getPreEmitDiagnostics(program), ...diagnostics];
if (faults.length > 0)
  throw new Error(
    ts.formatDiagnostics(faults, { getCanonicalFileName: name => name, getCurrentDirectory: () => '.', getNewLine: () => '\n' }),
  );

const packages = new Map<string, string>();
const modules: Plugin = {
  name: 'a module a file',
  setup: ({ onResolve }) =>
    onResolve({ filter: /.*/ }, ({ kind, path: asked, importer }) => {
      if (kind === 'entry-point' || asked.endsWith('.json')) return undefined;
      if (asked.startsWith('.')) return { path: `${asked}.js`, external: true };
      const file = asked.replace(/\W+/g, '-').replace(/^-/, '');
      packages.set(file, asked);
      return {
        path: path
          .relative(path.dirname(importer), path.join(SRC, PACKAGES, `${file}.js`))
          .split(path.sep)
          .join('/'),
        external: true,
      };
    }),
};
const common: BuildOptions = { bundle: true, format: 'esm', target: 'es2021', charset: 'utf8', logLevel: 'warning', outdir: OUT };
const sources = program
  .getSourceFiles()
  .map(({ fileName }) => path.resolve(fileName))
  .filter(file => file.startsWith(SRC) && /(?<!\.d)\.ts$/.test(file));
await build({ ...common, entryPoints: sources, outbase: SRC, plugins: [modules] });
await build({
  ...common,
  entryPoints: Object.fromEntries(packages),
  outdir: path.join(OUT, PACKAGES),
  platform: 'neutral',
  mainFields: ['module', 'main'],
});

// the command, its packages left to npm: what it asks for is read from what it imports
const { metafile } = await build({
  ...common,
  target: 'node20',
  platform: 'node',
  entryPoints: { bosswright: 'src/commands/bin.ts' },
  outdir: path.join(OUT, BIN),
  splitting: true,
  packages: 'external',
  metafile: true,
});
const asked = new Set(
  Object.values(metafile.outputs)
    .flatMap(({ imports }) => imports)
    .filter(({ path: from, external }) => external === true && !isBuiltin(from))
    .map(({ path: from }) => /^(?:@[^/]+\/)?[^/]+/.exec(from)?.[0] ?? from),
);
const root = JSON.parse(readFileSync('package.json', 'utf8')) as {
  readonly name: string;
  readonly version: string;
  readonly exports: object;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
} & Readonly<Record<string, unknown>>;
const pins = { ...root.devDependencies, ...root.dependencies };
const inside: unknown = JSON.parse(JSON.stringify(root.exports).replaceAll('/dist-library/', '/'));
writeFileSync(
  path.join(OUT, 'package.json'),
  `${JSON.stringify(
    {
      name: root.name,
      version: root.version,
      description: 'Screw joints of two-part injection-moulded housings: functions, joint tables and a command line',
      license: root.license,
      type: 'module',
      engines: root.engines,
      sideEffects: false,
      exports: inside,
      bin: { bosswright: `${BIN}/bosswright.js` },
      dependencies: Object.fromEntries([...asked, ...LOADED_AS_FILES].sort().map(one => [one, pins[one]])),
    },
    null,
    2,
  )}\n`,
);
cpSync('LICENSE', path.join(OUT, 'LICENSE'));
cpSync('src/docs/joint-inputs.schema.json', path.join(OUT, 'joint-inputs.schema.json'));

/** The documents as they are, their links to what the package has not taken out. */
const outside = /\[([^\]]+)\]\((?!https:|#|(?:command-line|joint-inputs\.schema)\.)[^)]+\)/g;
const [library = '', commands = ''] = ['library', 'command-line'].map(document =>
  readFileSync(`src/docs/${document}.md`, 'utf8').replace(outside, '$1'),
);
writeFileSync(path.join(OUT, 'README.md'), library.replace('# The library', '# Bosswright'));
writeFileSync(path.join(OUT, 'command-line.md'), commands);
writeFileSync(path.join(OUT, 'licences.txt'), [...packages.values()].map(licenceOf).join('\n'));

/** Of a package whose code is among the modules. */
function licenceOf(from: string): string {
  const folder = path.join('node_modules', /^(?:@[^/]+\/)?[^/]+/.exec(from)?.[0] ?? from);
  const { name, version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as Record<string, string>;
  const texts = readdirSync(folder).filter(file => /^(licen[cs]e|notice)/i.test(file));
  return [`${name} ${version}, ${license}`, '', ...texts.map(file => readFileSync(path.join(folder, file), 'utf8'))].join('\n');
}
