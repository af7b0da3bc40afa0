// Opens the workbooks that it's told to, one after the other, in a process of its own.

import { fileURLToPath } from "node:url";
import { withTypeScript } from "../../src/withTypeScript.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
await withTypeScript(root, fileURLToPath(new URL("readBook.ts", import.meta.url)), async ({ readBook }) => {
  process.on("message", async ({ path, copy }) => process.send(await readBook(path, copy)));
  await new Promise(() => undefined);
});
