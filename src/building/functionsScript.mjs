// @ts-check
import { join } from "node:path";
import { build } from "esbuild";
import { inWorker } from "./inWorker.mjs";

const NAME = "FunctionsScript";

/**
 * Builds the worksheet functions as one plain script that runs in any host, beside the pages and not through webpack:
 * it loads with every workbook, so it holds what the functions use and nothing else.
 */
export class FunctionsScript {
  /** @param {{ entry: string, file: string, global: string }} options the global holds the functions by name. */
  constructor({ entry, file, global }) {
    this.entry = entry;
    this.file = file;
    this.global = global;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, WebpackError, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      // Begun at once, and awaited only where webpack has its own scripts ready.
      const made = this.make(compiler).then(
        (script) => ({ script, error: undefined }),
        (error) => ({ script: undefined, error }),
      );
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tapPromise({ name: NAME, stage }, async () => {
        const { script, error } = await made;
        if (!script) {
          // What was read isn't known, so whatever is changed may fix it.
          compilation.contextDependencies.add(join(compiler.context, "src"));
          compilation.errors.push(new WebpackError(`${this.file}: ${error.message}`));
          return;
        }
        compilation.fileDependencies.addAll(script.inputs);
        compilation.emitAsset(this.file, new sources.RawSource(script.code), { minimized: true });
      });
    });
  }

  /** @param {import("webpack").Compiler} compiler */
  async make({ context, options }) {
    const { outputFiles, metafile } = await build({
      absWorkingDir: context,
      entryPoints: [this.entry],
      bundle: true,
      write: false,
      metafile: true,
      format: "iife",
      globalName: this.global,
      target: "es2022",
      logLevel: "silent",
    });
    const [{ text }] = /** @type {[import("esbuild").OutputFile]} */ (outputFiles);
    const inputs = Object.keys(metafile.inputs).map((file) => join(context, file));
    if (options.mode !== "production") return { code: text, inputs };
    /** @type {string} */
    const code = await inWorker(new URL("./minifySmall.mjs", import.meta.url), text);
    return { code, inputs };
  }
}
