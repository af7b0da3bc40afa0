// Runs every *.bench.ts beside this file and prints its tables: `npm run bench`, or `npm run bench -- cutting`.
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { withTypeScript } from "../../src/withTypeScript.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
const root = join(here, "../..");
const wanted = process.argv.slice(2);
const files = (await readdir(here)).filter(
  (file) => file.endsWith(".bench.ts") && (wanted.length === 0 || wanted.some((name) => file.startsWith(name))),
);
for (const file of files) {
  await withTypeScript(root, join(here, file), async ({ bench }) => {
    const result = await bench();
    for (const { title, rows } of Array.isArray(result) ? result : [result]) {
      console.log(`\n${title}`);
      console.table(rows);
    }
  });
}
