// One configuration for everything that is served: the add-in (functions, pane) and the bench.
import { existsSync, readFileSync, readdirSync } from "node:fs";
import { homedir } from "node:os";
import path from "node:path";
import CopyPlugin from "copy-webpack-plugin";
import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import TerserPlugin from "terser-webpack-plugin";
import webpack from "webpack";

const here = import.meta.dirname;
const { version } = JSON.parse(readFileSync(path.join(here, "package.json"), "utf8"));
const wrappers = readdirSync(path.join(here, "functions"))
  .filter((name) => name.endsWith(".ts") && name !== "cell.ts")
  .map((name) => path.join(here, "functions", name));

/** The generator has no option for it: without this mark Excel never calls a function that is given an error. */
const errorsReachTheFunctions = {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("ErrorsReachTheFunctions", (compilation) => {
      compilation.hooks.processAssets.tap("ErrorsReachTheFunctions", () => {
        if (compilation.getAsset("functions.json") === undefined) return;
        compilation.updateAsset("functions.json", (source) =>
          new webpack.sources.RawSource(JSON.stringify({ allowErrorForDataTypeAny: true, ...JSON.parse(source.source()) })));
      });
    });
  },
};

/** The mathematics library brings stand-ins for what every browser that can run the add-in has. */
const native = {
  "@stdlib/array-float64": "var Float64Array",
  "@stdlib/array-uint32": "var Uint32Array",
  "@stdlib/array-uint16": "var Uint16Array",
  "@stdlib/array-uint8": "var Uint8Array",
  "@stdlib/string-format": "var String",
};

const smallest = /^(functions|pane|chunks\/view-\w+)\.js$/;

/** What Excel asks for is at https alone, at the address in manifest.xml; Excel on the web reads functions.json from a page of its own. */
const forExcel = {
  server: { type: "https", options: certificate() },
  port: Number(/https:\/\/localhost:(\d+)/.exec(readFileSync(path.join(here, "manifest.xml"), "utf8"))[1]),
  headers: { "Access-Control-Allow-Origin": "*" },
  open: false,
  onListening: ({ server }) => console.log(`For Excel: https://localhost:${server.address().port}/manifest.xml`),
};

/** The one that Office's own command makes and has trusted, where it was run; else the server signs one itself. */
function certificate() {
  const folder = path.join(homedir(), ".office-addin-dev-certs");
  const [key, cert] = ["localhost.key", "localhost.crt"].map((name) => path.join(folder, name));
  return existsSync(key) && existsSync(cert) ? { key, cert, ca: path.join(folder, "ca.crt") } : {};
}

// The dev server takes the first free port from here on.
process.env.WEBPACK_DEV_SERVER_BASE_PORT ??= "3000";

export default ({ excel = false } = {}, { mode = "production" } = {}) => ({
  mode,
  devtool: false,
  entry: {
    functions: wrappers,
    pane: "./src/pane/pane.ts",
    "custom-functions": "./src/hosts/bench/custom-functions.ts",
    bench: "./src/bench/bench.ts",
  },
  output: { path: path.join(here, "dist"), filename: "[name].js", chunkFilename: "chunks/[name].js", clean: true },
  resolve: { extensions: [".tsx", ".ts", ".js"] },
  externals: native,
  module: {
    rules: [
      { test: /\.tsx?$/, exclude: /node_modules/, loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
    ],
  },
  plugins: [
    new webpack.DefinePlugin({ BOSSWRIGHT_VERSION: JSON.stringify(version) }),
    new CustomFunctionsMetadataPlugin({ output: "functions.json", input: wrappers }),
    errorsReachTheFunctions,
    new MiniCssExtractPlugin({ filename: "[name].css" }),
    new CopyPlugin({
      patterns: ["manifest.xml", "src/pane/pane.html", "src/pane/pane.css", "src/bench/bench.html", "src/bench/index.html", { from: "src/pane/icons", to: "icons" }],
    }),
  ],
  cache: mode === "development" && { type: "filesystem", cacheDirectory: path.join(here, ".cache") },
  optimization: {
    minimizer: [
      // Smaller by a twentieth, and slow: for what Excel loads.
      new TerserPlugin({ include: smallest, terserOptions: { ecma: 2020, compress: { passes: 2 }, format: { ascii_only: true } } }),
      new TerserPlugin({ exclude: smallest, minify: TerserPlugin.esbuildMinify, terserOptions: { target: "es2021", legalComments: "eof" }, extractComments: false }),
    ],
  },
  performance: false,
  stats: "errors-warnings",
  infrastructureLogging: { level: "warn" },
  devServer: {
    host: "localhost",
    port: "auto",
    static: false,
    hot: false,
    client: false,
    open: process.platform !== "linux" || Boolean(process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY),
    onListening: ({ server }) => console.log(`Bench: http://localhost:${server.address().port}/`),
    ...(excel && forExcel),
  },
});
