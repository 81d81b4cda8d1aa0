// One configuration for everything that is served: the add-in (functions, pane) and the bench.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { homedir } from 'node:os';
import path from 'node:path';
import CopyPlugin from 'copy-webpack-plugin';
import CustomFunctionsMetadataPlugin from 'custom-functions-metadata-plugin';
import { LicenseWebpackPlugin } from 'license-webpack-plugin';
import MiniCssExtractPlugin from 'mini-css-extract-plugin';
import TerserPlugin from 'terser-webpack-plugin';
import { tsImport } from 'tsx/esm/api';
import webpack from 'webpack';

const { helpPages } = await tsImport('./src/help/plugin.ts', import.meta.url);
const { ENGLISH } = await tsImport('./src/words/english.ts', import.meta.url);
const { withStartWords, withWords } = await tsImport('./src/words/text-at.ts', import.meta.url);
const { checkForms } = await tsImport('./src/plain/read.ts', import.meta.url);

const here = import.meta.dirname;
const { version } = JSON.parse(readFileSync(path.join(here, 'package.json'), 'utf8'));
const wrappers = readdirSync(path.join(here, 'functions'))
  .filter(name => name.endsWith('.ts') && name !== 'cell.ts')
  .map(name => path.join(here, 'functions', name));

/** What each package in the built files asks to go along: name, version, licence, and the text of it. Parts of preact have a package.json of their own. */
const licences = {
  perChunkOutput: false,
  outputFilename: 'licences.txt',
  excludedPackageTest: name => ['jsx-runtime', 'preact-hooks'].includes(name),
  // a package.json is silent or points at the licence file
  licenseTypeOverrides: { '@univerjs/telemetry': 'Apache-2.0', 'dejavu-fonts-ttf': 'Bitstream-Vera' },
  // the package brings no text
  licenseTextOverrides: {
    '@resvg/resvg-wasm':
      'This Source Code Form is subject to the terms of the Mozilla Public License, v. 2.0. If a copy of the MPL was not distributed with this file, You can obtain one at https://mozilla.org/MPL/2.0/. The file index_bg.wasm is unchanged; its source is in the repository that the npm package of this name and version points at.',
  },
  stats: { warnings: false, errors: true },
  renderLicenses: modules =>
    modules
      .map(
        ({ packageJson: { name, version, author }, licenseId, licenseText }) =>
          `== ${name} ${version} | ${licenseId ?? 'none stated'}\n\n${licenseText?.trim() ?? `The package brings no text of it. Author: ${author?.name ?? author}`}\n`,
      )
      .sort()
      .join('\n'),
};

/** The mathematics library brings stand-ins for what every browser that can run the add-in has. */
const native = {
  '@stdlib/array-float64': 'var Float64Array',
  '@stdlib/array-uint32': 'var Uint32Array',
  '@stdlib/array-uint16': 'var Uint16Array',
  '@stdlib/array-uint8': 'var Uint8Array',
  '@stdlib/string-format': 'var String',
};

/** Of the sheet engine: what reads font files, and what guesses a language to hyphenate. Nothing here asks for either. */
const unused = {
  'opentype.js': 'var { parse() { throw new Error("font files are not read here"); } }',
  'franc-min': 'var { franc: () => "und" }',
};

/** Photographs and emblems in the sheet engine, for parts of it that are switched off here: a quarter of a megabyte. */
const withoutPictures = {
  test: /@univerjs[\\/][\w-]+[\\/]lib[\\/]es[\\/]index\.js$/,
  loader: 'string-replace-loader',
  options: { search: 'data:image/(?:png|jpeg);base64,[A-Za-z0-9+/=]{4000,}', flags: 'g', replace: 'data:,' },
};

/** The sheet engine waits so long before it draws for the first time. */
const drawnAtOnce = {
  test: /@univerjs[\\/]ui[\\/]lib[\\/]es[\\/]index\.js$/,
  loader: 'string-replace-loader',
  options: { search: '}, 300);', replace: '});', strict: true },
};

/** What is said of the spreadsheet's own functions is loaded when the sheet stands: `src/hosts/univer/function-words.ts`. */
const wordsLater = {
  test: /@univerjs[\\/]preset-sheets-core[\\/]lib[\\/]es[\\/]locales[\\/]en-US\.js$/,
  resolve: { alias: { '@univerjs/sheets-formula/locale/en-US$': false } },
};

/** Chromium then reads their functions while they arrive, beside the page's own work: one by one as they are called is a quarter of the work until the sheet stands. */
const readOnArrival = new webpack.BannerPlugin({
  banner: '//# allFunctionsCalledOnLoad',
  raw: true,
  include: /^chunks\/bench-(engine|views|rest|page)\.js$/,
  stage: webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT,
});

/** Of the bench's start; of two that fit the higher priority has it. */
const bundled = (name, test, priority = 0) => ({
  test,
  priority,
  name: `bench-${name}`,
  chunks: ({ name }) => name === 'bench-page',
  enforce: true,
});

const smallest = /^(functions|pane|chunks\/view-\w+)\.js$/;

/** What Excel asks for is at https alone, at the address in manifest.xml; Excel on the web reads functions.json from a page of its own. */
const forExcel = {
  server: { type: 'https', options: certificate() },
  port: Number(/https:\/\/localhost:(\d+)/.exec(readFileSync(path.join(here, 'manifest.xml'), 'utf8'))[1]),
  headers: { 'Access-Control-Allow-Origin': '*' },
  open: false,
  onListening: ({ server }) => console.log(`For Excel: https://localhost:${server.address().port}/manifest.xml`),
};

/** The one that Office's own command makes and has trusted, where it was run; else the server signs one itself. */
function certificate() {
  const folder = path.join(homedir(), '.office-addin-dev-certs');
  const [key, cert] = ['localhost.key', 'localhost.crt'].map(name => path.join(folder, name));
  return existsSync(key) && existsSync(cert) ? { key, cert, ca: path.join(folder, 'ca.crt') } : {};
}

// The dev server takes the first free port from here on.
process.env.WEBPACK_DEV_SERVER_BASE_PORT ??= '3000';

/** A server goes on and says it until the forms are written anew. */
const freshForms = {
  apply: compiler =>
    compiler.hooks.thisCompilation.tap('FreshForms', ({ errors }) => {
      try {
        checkForms();
      } catch (fault) {
        errors.push(fault);
      }
    }),
};

export default ({ excel = false, 'without-bench': isWithoutBench = false } = {}, { mode = 'production' } = {}) => ({
  mode,
  devtool: false,
  entry: {
    functions: wrappers,
    // The pane uses the core that the functions have brought.
    pane: { import: './src/pane/pane.ts', dependOn: 'functions' },
    ...(!isWithoutBench && { 'custom-functions': './src/hosts/univer/custom-functions.ts', bench: './src/bench/bench.ts' }),
    'help/find': './src/help/find.ts',
    'help/decimal': './src/help/decimal.ts',
  },
  output: { path: path.join(here, 'dist'), filename: '[name].js', chunkFilename: 'chunks/[name].js', clean: true },
  resolve: {
    extensions: ['.tsx', '.ts', '.js'],
    // Every host has Object.defineProperty: what stands in for it is left out.
    alias: {
      '@stdlib/utils-define-property$': path.join(here, 'node_modules/@stdlib/utils-define-property/lib/builtin.js'),
      'cjk-regex$': path.join(here, 'src/hosts/univer/cjk.ts'),
    },
  },
  externals: { ...native, ...unused },
  module: {
    rules: [
      {
        test: /\.tsx?$/,
        exclude: /node_modules/,
        loader: 'ts-loader',
        options: { transpileOnly: true, compilerOptions: { noEmit: false } },
      },
      withoutPictures,
      drawnAtOnce,
      wordsLater,
      { test: /\.(wasm|ttf)$/, type: 'asset/resource', generator: { filename: 'assets/[name][ext]' } },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, 'css-loader'] },
    ],
  },
  plugins: [
    new webpack.DefinePlugin({ BOSSWRIGHT_VERSION: JSON.stringify(version) }),
    new CustomFunctionsMetadataPlugin({ output: 'functions.json', input: wrappers }),
    freshForms,
    readOnArrival,
    helpPages,
    new MiniCssExtractPlugin({ filename: '[name].css' }),
    new LicenseWebpackPlugin(licences),
    new CopyPlugin({
      patterns: [
        'manifest.xml',
        'src/pane/pane.html',
        'src/pane/pane.css',
        { from: 'src/pane/start.js', transform: script => withStartWords(script.toString()) },
        ...(isWithoutBench
          ? [{ from: 'src/help/start.html', to: 'index.html' }]
          : [{ from: 'src/bench/bench.html', transform: html => withWords(html.toString(), ENGLISH) }, 'src/bench/index.html']),
        { from: 'src/pane/icons', to: 'icons' },
        { from: 'src/help/help.css', to: 'help' },
        { from: 'src/docs/*.{png,json}', to: 'help/docs/[name][ext]' },
        { from: 'node_modules/dejavu-fonts-ttf/LICENSE', to: 'assets/DejaVuSans-LICENSE.txt', toType: 'file' },
      ],
    }),
  ],
  cache: mode === 'development' && { type: 'filesystem', cacheDirectory: path.join(here, '.cache') },
  optimization: {
    // The bench's spreadsheet comes in pieces that are read side by side; the pane is one file, which start.js knows by name.
    splitChunks: {
      chunks: chunk => chunk.name !== 'view-pane' && !chunk.canBeInitial(),
      cacheGroups: {
        engine: bundled('engine', /[\\/]@univerjs[\\/](core|engine-formula|engine-render|sheets)[\\/]lib[\\/]es[\\/]index\.js$/, 2),
        views: bundled('views', /[\\/](@univerjs[\\/](ui|sheets-ui|docs-ui|design|icons)|react|react-dom)[\\/]/, 1),
        rest: bundled('rest', /[\\/]node_modules[\\/]/),
      },
    },
    minimizer: [
      // Smaller by a twentieth, and slow: for what Excel loads.
      new TerserPlugin({ include: smallest, terserOptions: { ecma: 2020, compress: { passes: 2 }, format: { ascii_only: true } } }),
      new TerserPlugin({
        exclude: smallest,
        minify: TerserPlugin.swcMinify,
        terserOptions: { ecma: 2021, compress: { passes: 2 }, format: { asciiOnly: true, comments: 'some' } },
        extractComments: false,
      }),
    ],
  },
  performance: false,
  stats: 'errors-warnings',
  infrastructureLogging: { level: 'warn' },
  devServer: {
    host: 'localhost',
    port: 'auto',
    static: false,
    hot: false,
    client: false,
    open: process.platform !== 'linux' || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY),
    onListening: ({ server }) => console.log(`Bench: http://localhost:${server.address().port}/`),
    ...(excel && forExcel),
  },
});
