// npm run library: the core as a package in dist-library/, a module a file so that a bundler takes only what is used, with its types beside
// it.
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build, type BuildOptions, type Plugin } from 'esbuild';
import ts from 'typescript';
import { checkForms } from '../plain/read';

const SRC = path.resolve('src');
const OUT = path.resolve('dist-library');
const PACKAGES = 'packages';

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

const { name, version, description, license, engines, exports } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<
  string,
  unknown
>;
const inside: unknown = JSON.parse(JSON.stringify(exports).replaceAll('/dist-library/', '/'));
writeFileSync(
  path.join(OUT, 'package.json'),
  `${JSON.stringify({ name, version, description, license, type: 'module', engines, sideEffects: false, exports: inside }, null, 2)}\n`,
);
cpSync('LICENSE', path.join(OUT, 'LICENSE'));
