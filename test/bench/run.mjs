// Runs every *.bench.ts beside this file and prints its tables: `npm run bench`, or `npm run bench -- cutting`.
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

const here = fileURLToPath(new URL(".", import.meta.url));
const wanted = process.argv.slice(2);
const files = (await readdir(here)).filter(
  (file) => file.endsWith(".bench.ts") && (wanted.length === 0 || wanted.some((name) => file.startsWith(name))),
);
// Inside the project, so that the packages it imports are found.
const folder = await mkdtemp(join(here, "../../node_modules/.bench-"));
try {
  for (const file of files) {
    const outfile = join(folder, file.replace(".ts", ".mjs"));
    await build({
      entryPoints: [join(here, file)],
      outfile,
      bundle: true,
      platform: "node",
      format: "esm",
      packages: "external",
      logLevel: "warning",
    });
    const { bench } = await import(pathToFileURL(outfile).href);
    const result = await bench();
    for (const { title, rows } of Array.isArray(result) ? result : [result]) {
      console.log(`\n${title}`);
      console.table(rows);
    }
  }
} finally {
  await rm(folder, { recursive: true, force: true });
}
