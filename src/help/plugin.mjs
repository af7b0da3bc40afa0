import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { withTypeScript } from "../withTypeScript.mjs";

const NAME = "HelpPages";

/**
 * Writes the help into `help/` of the build: a page a function from the functions' own docstrings, an index, the
 * guide, the list for the pane; and tells the host the address of each function's page.
 */
export class HelpPages {
  /** @param {{ origin: string }} place where the build will be served, such as https://tools.example. */
  constructor({ origin }) {
    this.origin = new URL(origin).origin;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, sources } = compiler.webpack;
    const root = compiler.context;
    const folder = join(root, "src/help");
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      compilation.contextDependencies.add(folder);
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tapPromise({ name: NAME, stage }, async () => {
        const emit = (name, content) => compilation.emitAsset(`help/${name}`, new sources.RawSource(content));
        for (const [name, text] of await helpFiles(root)) emit(name, text);
        emit("help.css", await readFile(join(folder, "help.css")));
        const pictures = join(folder, "guide/pictures");
        for (const name of await readdir(pictures).catch(() => []))
          emit(`pictures/${name}`, await readFile(join(pictures, name)));
        compilation.updateAsset("functions.json", (metadata) => {
          return new sources.RawSource(withHelp(metadata.source().toString(), this.origin));
        });
      });
    });
  }
}

/**
 * The functions' metadata with the address of each one's page.
 *
 * @param {string} metadata functions.json.
 * @param {string} origin such as https://tools.example.
 * @returns {string}
 */
export function withHelp(metadata, origin) {
  const all = JSON.parse(metadata);
  for (const one of all.functions) one.helpUrl = `${origin}/help/${one.id}.html`;
  return JSON.stringify(all, null, 2);
}

/**
 * The pages, made by the TypeScript beside this file.
 *
 * @param {string} root the project's folder.
 * @returns {Promise<Map<string, string>>}
 */
export async function helpFiles(root) {
  return withTypeScript(root, join(root, "src/help/pages.ts"), async ({ helpFiles: made }) => made(root));
}
