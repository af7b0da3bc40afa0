import { readFileSync } from "node:fs";
import CopyPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import { Budget } from "./src/budget.mjs";
import { FunctionsScript } from "./src/building/functionsScript.mjs";
import { listFunctions } from "./src/building/listFunctions.mjs";
import { SmallScripts } from "./src/building/smallScripts.mjs";
import { HelpPages } from "./src/help/plugin.mjs";
import { Licenses } from "./src/licenses/plugin.mjs";
import { adaptManifest, PLACEHOLDER_ORIGIN } from "./src/manifest.mjs";

listFunctions();

const here = (file) => new URL(file, import.meta.url);
/** The style of each of the grid's packages that the practice page uses. */
const gridStyles = [
  "preset-sheets-conditional-formatting",
  "preset-sheets-core",
  "preset-sheets-data-validation",
  "preset-sheets-drawing",
].map((preset) => `node_modules/@univerjs/${preset}/lib/index.css`);
/** What is minified elsewhere: the grid before webpack gets it, and the pane by `SmallScripts`. */
const MINIFIED = /^(chunks\/grid-packages|pane)\.js$/;

/**
 * Builds dist/: the functions for the host, and the pages that show themselves, of which two load the functions first.
 *
 * @param {{ origin?: string }} env the origin for the manifest and the functions' help, such as https://tools.example.
 * @param {{ mode?: "production" | "development" }} options
 * @returns {import("webpack").Configuration}
 */
export default ({ origin }, { mode = "production" }) => ({
  mode,
  target: ["web", "es2022"],
  // No eval in any build: the pages' content security policy forbids it.
  devtool: mode === "production" ? false : "cheap-source-map",
  entry: { pane: "./src/pane/index.tsx", practice: "./src/practice/practice.ts" },
  output: { filename: "[name].js", chunkFilename: "chunks/[name].js", clean: true, publicPath: "auto" },
  resolve: { extensions: [".ts", ".tsx", ".mjs", ".js"] },
  module: {
    noParse: /gridPackages\.ts$/,
    rules: [
      {
        oneOf: [
          { test: /gridPackages\.ts$/, loader: "./src/building/gridBundle.mjs" },
          // Both only take the types off, a file at a time; `npm run check` checks them. The screens go through TypeScript,
          // so that their JSX is what tsconfig.json says; all else through esbuild, which does it in a tenth of the time.
          {
            test: /\.tsx$/,
            loader: "ts-loader",
            options: { transpileOnly: true, compilerOptions: { noEmit: false } },
          },
          { test: /\.ts$/, loader: "esbuild-loader", options: { target: "es2022" } },
        ],
      },
    ],
  },
  optimization: {
    minimizer: [new EsbuildPlugin({ target: "es2022", legalComments: "eof", exclude: MINIFIED })],
    splitChunks: {
      cacheGroups: {
        gridPackages: { test: /gridPackages\.ts$/, name: "grid-packages", chunks: "async", enforce: true },
      },
    },
    // The entries stand on one page and share the chunks they fetch, so a module must be the same for all of them.
    usedExports: "global",
  },
  plugins: [
    new FunctionsScript({ entry: "./src/functions/entry.ts", file: "functions.js", global: "BedrowFunctions" }),
    new SmallScripts(["pane.js"]),
    // What loads with every workbook, in kilobytes. The practice grid is large, and says so while it loads.
    new Budget({ "functions.js": 26, "pane.js": 60 }),
    new Licenses({ file: "licenses.txt", bundled: ["functions", "practice"] }),
    new HelpPages({ origin: origin ?? PLACEHOLDER_ORIGIN, metadata: "functions.json" }),
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
        { from: "manifest.xml", transform: (xml) => adaptManifest(xml.toString(), { origin }) },
        {
          from: "manifest.xml",
          to: "manifest.dev.xml",
          transform: (xml) =>
            adaptManifest(xml.toString(), { origin: origin ?? "https://localhost:3000", development: true }),
        },
        // Named one by one: a pattern would watch the folder that all of them lie in, which is the project's.
        {
          from: gridStyles[0],
          to: "univer.css",
          transform: () => gridStyles.map((file) => readFileSync(here(file), "utf8")).join("\n"),
        },
      ],
    }),
  ],
  performance: { hints: false },
});
