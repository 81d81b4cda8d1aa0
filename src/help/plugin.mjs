// Build step: writes the help pages beside the add-in, and their addresses into functions.json.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Where the manifest says that the add-in is. */
const baseOf = manifest => /SourceLocation DefaultValue="([^"]*\/)pane\.html"/.exec(manifest)[1];

/** What the generator has no option for: help addresses, and the mark without which Excel never calls a function that is given an error. */
export function completed(metadata, manifest = readFileSync(`${root}manifest.xml`, 'utf8')) {
  const base = baseOf(manifest);
  return {
    allowErrorForDataTypeAny: true,
    ...metadata,
    functions: metadata.functions.map(listed => ({ ...listed, helpUrl: `${base}help/${listed.id}.html` })),
  };
}

/** The pages and the list of evidence as one module each, since Node does not run TypeScript. */
async function bundled() {
  const outdir = `${root}.cache/help`;
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: ['src/help/pages.ts', 'test/evidence/evidence.ts'],
    bundle: true,
    platform: 'node',
    format: 'esm',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    packages: 'external',
    outdir,
    outExtension: { '.js': '.mjs' },
    metafile: true,
    logLevel: 'error',
  });
  const load = name => import(`${outdir}/${name}.mjs?${Date.now()}`);
  return {
    inputs: Object.keys(metafile.inputs).map(file => root + file),
    pages: await load('src/help/pages'),
    evidence: await load('test/evidence/evidence'),
  };
}

const NAME = 'HelpPages';

/** Runs before the copies and the minimiser: the pages are written as they are. */
export const helpPages = {
  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap(NAME, compilation => {
      compilation.hooks.processAssets.tapPromise(NAME, async () => {
        const asset = compilation.getAsset('functions.json');
        if (asset === undefined) return;
        const metadata = completed(JSON.parse(asset.source.source()));
        compilation.updateAsset('functions.json', new RawSource(JSON.stringify(metadata)));
        const { inputs, pages, evidence } = await bundled();
        compilation.fileDependencies.addAll(inputs);
        for (const [file, text] of pages.helpPages(metadata.functions, evidence.EVIDENCE))
          compilation.emitAsset(`help/${file}`, new RawSource(text));
      });
    });
  },
};
