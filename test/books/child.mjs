// Opens the workbooks that it's told to, one after the other, in a process of its own.

import { fileURLToPath } from "node:url";
import { withTypeScript } from "../../src/withTypeScript.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
await withTypeScript(root, fileURLToPath(new URL("books.ts", import.meta.url)), async ({ compareBook, readBook }) => {
  process.on("message", async ({ path, copy, compares }) => {
    process.send(await (compares ? compareBook(path) : readBook(path, copy)));
  });
  await new Promise(() => undefined);
});
