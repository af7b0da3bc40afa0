// @ts-check
import { inWorker } from "./inWorker.mjs";

const NAME = "SmallScripts";

/** Makes scripts as small as they get, which takes longer than esbuild does: for what loads with every workbook. */
export class SmallScripts {
  /** @param {readonly string[]} files their names in dist/. */
  constructor(files) {
    this.files = files;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    if (compiler.options.mode !== "production") return;
    const { Compilation, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      // Before the other minimizer, which leaves alone what is marked as minimized.
      const stage = Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_SIZE - 1;
      compilation.hooks.processAssets.tapPromise({ name: NAME, stage }, async () => {
        for (const file of this.files) {
          const asset = compilation.getAsset(file);
          if (!asset) continue;
          /** @type {string} */
          const code = await inWorker(new URL("./minifySmall.mjs", import.meta.url), asset.source.source().toString());
          compilation.updateAsset(file, new sources.RawSource(code), { minimized: true });
        }
      });
    });
  }
}
