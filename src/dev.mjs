// @ts-check
// npm run dev [-- --open] [--port 8081]: builds for development, serves it, and rebuilds what is changed.
import { EventEmitter, once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import webpack from "webpack";
import config from "../webpack.config.js";
import { announce, readOptions, run, serveAt } from "./building/cli.mjs";

const ROOT = resolve(import.meta.dirname, "..");

await run(async () => {
  const options = readOptions("npm run dev", process.argv.slice(2));
  // Not dist/, which is for production; and outside the project, where nothing watches it.
  const folder = mkdtempSync(join(tmpdir(), "bedrow-dev-"));
  process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
  const { built, stop } = watch(folder);
  const server = await serveAt(folder, options.port, built);
  await built();
  await announce(server, options, stop);
});

/**
 * Builds into a folder, now and whenever a file that the build reads is changed.
 *
 * @param {string} folder
 * @returns {{ built: () => Promise<void>, stop: () => Promise<void> }} `built` waits for the build that is under way.
 */
function watch(folder) {
  const settings = config({}, { mode: "development" });
  const compiler = webpack({ ...settings, context: ROOT, output: { ...settings.output, path: folder } });
  if (!compiler) throw new Error("webpack.config.js has no settings.");
  const builds = new EventEmitter().setMaxListeners(0);
  let building = true;
  compiler.hooks.invalid.tap("Dev", () => {
    building = true;
  });
  const watching = compiler.watch({ aggregateTimeout: 50, ignored: "**/node_modules/**" }, (error, stats) => {
    if (error) console.error(error);
    if (stats?.hasErrors() || stats?.hasWarnings()) console.error(stats.toString("errors-warnings"));
    if (stats && !stats.hasErrors()) console.log(`Built in ${seconds(stats)} s.`);
    building = false;
    builds.emit("end");
  });
  return {
    built: async () => {
      if (building) await once(builds, "end");
    },
    stop: () => new Promise((stopped) => watching?.close(() => stopped())),
  };
}

/** @param {import("webpack").Stats} stats */
function seconds({ startTime, endTime }) {
  return ((endTime - startTime) / 1000).toFixed(1);
}
