// Runs every *.bench.ts beside this file and prints its tables: `npm run bench`, or `npm run bench -- cutting`.
// With --write, the tables also go into the help: `npm run bench -- --write`.

import { readdir, readFile, writeFile } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { withTypeScript } from "../../src/withTypeScript.mjs";
import { inLines } from "../generated/inLines.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = join(here, "../..");
const measuredFile = join(root, "test/generated/measured.json");
const given = process.argv.slice(2);
const writes = given.includes("--write");
const wanted = given.filter((word) => !word.startsWith("--"));
const files = (await readdir(here)).filter(
  (file) => file.endsWith(".bench.ts") && (wanted.length === 0 || wanted.some((name) => file.startsWith(name))),
);
for (const file of files) {
  const tables = await withTypeScript(root, join(here, file), async ({ bench }) => [await bench()].flat());
  for (const { title, rows } of tables) {
    console.log(`\n${title}`);
    console.table(rows);
  }
  // Written one by one, so that a long run that is broken off has not been for nothing.
  if (writes) await keep(file.replace(".bench.ts", ""), tables);
}

/** Puts the tables of a benchmark in the place of those that the help has of it. */
async function keep(name, tables) {
  const measured = JSON.parse(await readFile(measuredFile, "utf8").catch(() => '{ "benches": {} }'));
  const on = new Date().toISOString().slice(0, 10);
  const machine = `${availableParallelism()} cores of a server, Node ${process.versions.node.split(".")[0]}`;
  measured.benches[name] = { on, machine, tables };
  const sorted = Object.entries(measured.benches).sort(([one], [other]) => (one < other ? -1 : 1));
  await writeFile(measuredFile, inLines({ benches: Object.fromEntries(sorted) }));
}
