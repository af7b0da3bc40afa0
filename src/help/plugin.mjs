import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { inWorker } from "../building/inWorker.mjs";
import { describe } from "./describe.mjs";

const NAME = "HelpPages";

/**
 * Writes what describes the functions: their metadata for the host, with the address of each one's page; and the help
 * into `help/` of the build: a page a function from its declaration, an index, the guide, the list for the pane.
 */
export class HelpPages {
  /**
   * @param {object} options
   * @param {string} options.origin where the build will be served, such as https://tools.example.
   * @param {string} options.metadata the metadata's file in the build.
   */
  constructor({ origin, metadata }) {
    this.origin = new URL(origin).origin;
    this.metadata = metadata;
    /** What was made last, for a build that changes nothing of it. */
    this.kept = undefined;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, WebpackError, sources } = compiler.webpack;
    const folder = join(compiler.context, "src/help");
    // What tests and benchmarks found out, which some pages show.
    const tables = join(compiler.context, "test/generated");
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      const made = this.made(compiler, [folder, tables]).catch((error) => error);
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tapPromise({ name: NAME, stage }, async () => {
        const emit = (name, content) => compilation.emitAsset(name, new sources.RawSource(content));
        const described = await made;
        for (const read of [folder, tables]) compilation.contextDependencies.add(read);
        if (described instanceof Error) {
          // What was read isn't known, so whatever is changed may fix it.
          compilation.contextDependencies.add(join(compiler.context, "src"));
          compilation.errors.push(new WebpackError(`help/: ${described.message}`));
          return;
        }
        const { texts, metadata, inputs } = described;
        compilation.fileDependencies.addAll(inputs);
        emit(this.metadata, metadata);
        for (const [name, text] of texts) emit(`help/${name}`, text);
        emit("help/help.css", await readFile(join(folder, "help.css")));
        const pictures = join(folder, "guide/pictures");
        for (const name of await readdir(pictures).catch(() => []))
          emit(`help/pictures/${name}`, await readFile(join(pictures, name)));
      });
    });
  }

  /**
   * @param {import("webpack").Compiler} compiler
   * @param {readonly string[]} folders whose files the pages are made of, beside the modules.
   */
  async made({ context, modifiedFiles, removedFiles, watchMode }, folders) {
    // A first build knows of no changes; a build of a watcher knows all of them.
    const changed = modifiedFiles && [...modifiedFiles, ...(removedFiles ?? [])];
    const { kept } = this;
    const reads = (file) => kept.inputs.includes(file) || folders.some((folder) => file.startsWith(folder));
    if (!kept || !changed || changed.some(reads)) {
      this.kept = undefined;
      const given = { root: context, origin: this.origin };
      // One build is done sooner with a thread for it; a watcher, with a compiler that is loaded already.
      this.kept = await (watchMode ? describe(given) : inWorker(new URL("./worker.mjs", import.meta.url), given));
    }
    return this.kept;
  }
}
