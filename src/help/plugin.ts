// Build step: writes the help pages beside the add-in, and their addresses into functions.json.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { tsImport } from 'tsx/esm/api';
import type { Compiler } from 'webpack';
import { inGerman } from '../german/metadata';
import type { Described } from './described-function';
import type { HelpLanguage } from './language';
import type * as Pages from './pages';

const MANIFEST = new URL('../../manifest.xml', import.meta.url);

/** Where the manifest says that the add-in is. */
const baseOf = (manifest: string): string | undefined => /SourceLocation DefaultValue="([^"]*\/)pane\.html"/.exec(manifest)?.[1];

/** What the generator has no option for: help addresses, and the mark without which Excel never calls a function that is given an error. */
export function completed<T extends { readonly id: string }>(
  metadata: { readonly functions: readonly T[] },
  folder: HelpLanguage['folder'] = '',
) {
  const base = baseOf(readFileSync(MANIFEST, 'utf8'));
  return {
    allowErrorForDataTypeAny: true,
    ...metadata,
    functions: metadata.functions.map(listed => ({ ...listed, helpUrl: `${base}help/${folder}${listed.id}.html` })),
  };
}

const DOCUMENTS = new URL('../docs/', import.meta.url);

/** The Markdown beside the sources, by file name without its ending. */
export const documents = (): Map<string, string> =>
  new Map(
    readdirSync(DOCUMENTS)
      .filter(file => file.endsWith('.md'))
      .map(file => [file.slice(0, -'.md'.length), readFileSync(new URL(file, DOCUMENTS), 'utf8')]),
  );

/** The pages as they are now, and the files that they come from. */
export async function loaded() {
  const files = new Set<string>();
  const onImport = (url: string): void => void (url.startsWith('file:') && files.add(fileURLToPath(url)));
  const { helpPages } = (await tsImport('./pages.ts', { parentURL: import.meta.url, onImport })) as typeof Pages;
  return { files, helpPages };
}

const NAME = 'HelpPages';

/** Runs before the copies and the minimiser: the pages are written as they are. */
export const helpPages = {
  apply(compiler: Compiler): void {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap(NAME, compilation => {
      compilation.hooks.processAssets.tapPromise(NAME, async () => {
        const asset = compilation.getAsset('functions.json');
        if (asset === undefined) return;
        const generated = JSON.parse(String(asset.source.source())) as { functions: Described[] };
        const metadata = completed(generated);
        const german = completed({ ...generated, functions: generated.functions.map(inGerman) }, 'de/');
        compilation.updateAsset('functions.json', new RawSource(JSON.stringify(metadata)));
        compilation.emitAsset('functions-de.json', new RawSource(JSON.stringify(german)));
        const { files, helpPages } = await loaded();
        compilation.fileDependencies.addAll(files);
        compilation.contextDependencies.add(fileURLToPath(DOCUMENTS));
        for (const [file, text] of helpPages(metadata.functions, documents())) compilation.emitAsset(`help/${file}`, new RawSource(text));
      });
    });
  },
};
