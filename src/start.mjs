// @ts-check
// npm start [-- --open] [--port 8081]: builds the practice workbook where it is not built yet, serves it, and rests.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { resolve } from "node:path";
import { announce, readOptions, run, serveAt } from "./building/cli.mjs";
import { isBuilt } from "./building/inputs.mjs";

const ROOT = resolve(import.meta.dirname, "..");
const DIST = resolve(ROOT, "dist");

await run(async () => {
  const options = readOptions("npm start", process.argv.slice(2));
  if (!isBuilt(ROOT, DIST)) {
    console.log("Building the practice workbook…");
    await build();
  }
  await announce(await serveAt(DIST, options.port), options);
});

/** In a process of its own, so that nothing of it is left while the server rests. */
async function build() {
  const child = spawn(process.execPath, [resolve(ROOT, "src/build.mjs")], { cwd: ROOT, stdio: "inherit" });
  const [code] = await once(child, "exit");
  if (code !== 0) throw new Error("There is nothing to open until that is fixed.");
}
