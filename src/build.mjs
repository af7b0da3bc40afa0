// @ts-check
// npm run build [-- --origin https://tools.example] [--to folder]: makes dist/ for production.
import { existsSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import webpack from "webpack";
import config from "../webpack.config.js";
import { run } from "./building/cli.mjs";
import { stamped } from "./building/inputs.mjs";

const ROOT = resolve(import.meta.dirname, "..");

await run(async () => {
  const { values } = parseArgs({ options: { origin: { type: "string" }, to: { type: "string", default: "dist" } } });
  const folder = resolve(ROOT, values.to ?? "dist");
  if (existsSync(folder) && readdirSync(folder).length > 0 && !existsSync(join(folder, "practice.html")))
    throw new Error(`${values.to} holds something other than a build, so it's left alone. Name another folder.`);
  const succeeded = await stamped(ROOT, folder, () => build(folder, values.origin));
  if (!succeeded) throw new Error("The build failed.");
});

/**
 * @param {string} folder
 * @param {string | undefined} origin
 * @returns {Promise<boolean>} whether it succeeded; what is wrong has been printed.
 */
function build(folder, origin) {
  const settings = config(origin === undefined ? {} : { origin }, { mode: "production" });
  const compiler = webpack({ ...settings, context: ROOT, output: { ...settings.output, path: folder } });
  if (!compiler) throw new Error("webpack.config.js has no settings.");
  return new Promise((done, failed) => {
    compiler.run((error, stats) => {
      compiler.close(() => {
        if (error || !stats) return failed(error ?? new Error("webpack says nothing."));
        if (stats.hasErrors() || stats.hasWarnings()) console.error(stats.toString("errors-warnings"));
        done(!stats.hasErrors());
      });
    });
  });
}
