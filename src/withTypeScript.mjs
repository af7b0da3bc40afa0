import { mkdtemp, rm } from "node:fs/promises";
import { basename, extname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

/**
 * Does something with a module that is written in TypeScript, for scripts that run without a build.
 *
 * @template T
 * @param {string} root the project's folder.
 * @param {string} file the module's file.
 * @param {(module: any, inputs: string[]) => Promise<T>} action what to do with it; the module is gone after that. The
 *   inputs are the files that it was made of.
 * @returns {Promise<T>}
 */
export async function withTypeScript(root, file, action) {
  // Inside the project, so that the packages it imports are found; in a new folder, so that nothing old is imported.
  const folder = await mkdtemp(join(root, "node_modules/.module-"));
  const outfile = join(folder, `${basename(file, extname(file))}.mjs`);
  try {
    const { metafile } = await build({
      absWorkingDir: root,
      entryPoints: [file],
      outfile,
      metafile: true,
      bundle: true,
      platform: "node",
      format: "esm",
      packages: "external",
      logLevel: "warning",
    });
    const inputs = Object.keys(metafile.inputs).map((input) => join(root, input));
    return await action(await import(pathToFileURL(outfile).href), inputs);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
