// @ts-check
import { resolve } from "node:path";
import { build } from "esbuild";

/**
 * A webpack loader that bundles and minifies a file of packages with esbuild and hands webpack the result as one
 * CommonJS module, to be left unparsed. The practice grid is 8 MB of source: webpack takes most of its time for it,
 * and esbuild runs beside it on the other core.
 *
 * @this {import("webpack").LoaderContext<object>}
 * @returns {Promise<string>}
 */
export default async function gridBundle() {
  const root = this.rootContext;
  const { outputFiles, metafile } = await build({
    absWorkingDir: root,
    entryPoints: [this.resourcePath],
    bundle: true,
    write: false,
    metafile: true,
    format: "cjs",
    platform: "browser",
    target: "es2022",
    minify: true,
    legalComments: "eof",
    define: { "process.env.NODE_ENV": '"production"' },
    plugins: [withoutHyphenation, withOwnNumberParser],
    logLevel: "silent",
  });
  // For the list of licenses: the files whose code is in the bundle, which is not all of those that were read.
  const module = /** @type {import("webpack").NormalModule} */ (this._module);
  const [output] = Object.values(metafile.outputs);
  const bundledFiles = Object.entries(output?.inputs ?? {})
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([file]) => resolve(root, file));
  Object.assign(module.buildInfo ?? {}, { bundledFiles });
  return outputFiles[0]?.text ?? "";
}

/**
 * What people type into the grid goes through its number parser, which would make 46 of 4'6: the packages get ours.
 *
 * @type {import("esbuild").Plugin}
 */
const withOwnNumberParser = {
  name: "with-own-number-parser",
  setup({ onResolve, initialOptions }) {
    const path = resolve(initialOptions.absWorkingDir ?? "", "src/practice/browser/numberParser.ts");
    onResolve({ filter: /^numfmt$/ }, ({ importer }) => (importer === path ? undefined : { path }));
  },
};

/**
 * The grid would bring hyphenation rules for seventy languages, not all under a permissive license. Sheets don't
 * hyphenate.
 *
 * @type {import("esbuild").Plugin}
 */
const withoutHyphenation = {
  name: "without-hyphenation",
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\.\/[\w-]+\.js$/ }, ({ resolveDir, path }) =>
      /engine-render[\\/]lib[\\/]es$/.test(resolveDir) ? { path, namespace: "hyphenation" } : undefined,
    );
    onLoad({ filter: /.*/, namespace: "hyphenation" }, () => ({ contents: "export {}" }));
  },
};
