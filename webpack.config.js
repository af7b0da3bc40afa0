import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import CopyPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import webpack from "webpack";
import { Budget } from "./src/budget.mjs";
import { HelpPages } from "./src/help/plugin.mjs";
import { Licenses } from "./src/licenses/plugin.mjs";
import { adaptManifest, PLACEHOLDER_ORIGIN } from "./src/manifest.mjs";

const require = createRequire(import.meta.url);
const FunctionMetadataPlugin = require("custom-functions-metadata-plugin");

const functionFiles = JSON.parse(readFileSync(new URL("./src/functions/files.json", import.meta.url), "utf8"));
const FUNCTIONS = "functions.js";
const licenses = new Licenses({ file: "licenses.txt", writtenBy: "pages" });
const univer = (preset) => `node_modules/@univerjs/${preset}/lib/index.css`;

/**
 * Builds dist/: the functions for the host, and the pages that show themselves, of which two load the functions first.
 * `--env origin=https://tools.example` writes that origin into the manifest and into the functions' help.
 */
export default (env, { mode = "production" }) => [functionsOf(mode), pagesOf(env, mode)];

/** What both builds have in common. */
const common = (mode) => ({
  mode,
  target: ["web", "es2022"],
  // No eval in any build: the pages' content security policy forbids it.
  devtool: mode === "production" ? false : "cheap-source-map",
  resolve: { extensions: [".ts", ".tsx", ".mjs", ".js"] },
  module: {
    rules: [
      { test: /\.tsx?$/, loader: "ts-loader", options: { transpileOnly: true, compilerOptions: { noEmit: false } } },
    ],
  },
  // The practice grid is large and says so while it loads; what the office loads has its own budget.
  performance: { hints: false },
  stats: "errors-warnings",
});

/**
 * functions.js, which loads with every workbook: a build of its own, with what the functions use and nothing else, and
 * with the slower minifier, which makes it a twentieth smaller.
 */
const functionsOf = (mode) => ({
  ...common(mode),
  name: "functions",
  // The functions are there by name for the pane, too, which explains a cell by calling them once more.
  entry: { functions: { import: "./src/functions/entry.ts", library: { name: "BedrowFunctions", type: "global" } } },
  output: { globalObject: "globalThis", filename: FUNCTIONS },
  plugins: [new Budget({ [FUNCTIONS]: 25 }), licenses],
});

const pagesOf = (env, mode) => ({
  ...common(mode),
  name: "pages",
  // The list of licenses is written once the functions are built, too.
  dependencies: ["functions"],
  entry: { pane: "./src/pane/index.tsx", practice: "./src/practice/practice.ts" },
  output: {
    filename: "[name].js",
    chunkFilename: "chunks/[name].js",
    clean: { keep: FUNCTIONS },
    publicPath: "auto",
  },
  optimization: {
    minimizer: [new EsbuildPlugin({ target: "es2022", legalComments: "eof" })],
    // The entries stand on one page and share the chunks they fetch, so a module must be the same for all of them.
    usedExports: "global",
  },
  plugins: [
    new Budget({ "pane.js": 60 }),
    licenses,
    // The grid would bring rules for breaking words in seventy languages, not all of which have a permissive license. A
    // sheet breaks no words.
    new webpack.NormalModuleReplacementPlugin(/^\.\/[\w-]+\.js$/, (wanted) => {
      if (/engine-render[\\/]lib[\\/]es$/.test(wanted.context)) wanted.request = "data:text/javascript,export {}";
    }),
    // Describes the functions to the host. Their files are not part of this build, so nothing is added to them.
    new FunctionMetadataPlugin({
      input: functionFiles.map((file) => `./src/functions/${file}`),
      output: "functions.json",
    }),
    new HelpPages({ origin: env.origin ?? PLACEHOLDER_ORIGIN }),
    new CopyPlugin({
      patterns: [
        { from: "src/pane/pane.html" },
        { from: "src/pane/pane.css" },
        { from: "src/practice/practice.html" },
        { from: "src/practice/practice.css" },
        {
          from: "assets",
          to: "assets",
          globOptions: { ignore: ["**/*.mjs", "**/practice-office.json", "**/templates/**"] },
        },
        // The office's own templates come into this folder on its host; a few invented ones are there from the start.
        { from: "assets/templates", to: "templates", noErrorOnMissing: true },
        { from: "assets/practice-office.json" },
        { from: "LICENSE", to: "LICENSE.txt", toType: "file" },
        { from: "manifest.xml", transform: (xml) => adaptManifest(xml.toString(), { origin: env.origin }) },
        {
          from: "manifest.xml",
          to: "manifest.dev.xml",
          transform: (xml) =>
            adaptManifest(xml.toString(), { origin: env.origin ?? "https://localhost:3000", development: true }),
        },
        {
          from:
            "{" +
            [
              "preset-sheets-core",
              "preset-sheets-drawing",
              "preset-sheets-conditional-formatting",
              "preset-sheets-data-validation",
            ]
              .map(univer)
              .join(",") +
            "}",
          to: "univer.css",
          transformAll: (files) => files.map((file) => file.data.toString()).join("\n"),
        },
      ],
    }),
  ],
  devServer: {
    host: "localhost",
    port: env.port ?? "auto",
    hot: false,
    client: false,
    liveReload: false,
    static: false,
    // The bare address shows the practice workbook, too.
    devMiddleware: { index: "practice.html" },
    setupExitSignals: true,
    onListening(server) {
      const { port } = server.server.address();
      server.compiler.hooks.done.tap("Address", (stats) => {
        if (!stats.hasErrors())
          console.log(`\nPractice workbook: http://localhost:${port}/practice.html\n(Ctrl+C stops it.)`);
      });
    },
  },
});
