// Bundles each test file with the code it reaches, so that a fresh copy of it loads in a few milliseconds.
import { readFile } from "node:fs/promises";
import { dirname, extname, join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";

/**
 * @param {string} root the repository's folder.
 * @param {readonly string[]} tests test files, as paths from there.
 * @param {ReadonlyMap<string, string>} code instrumented files, which take the place of those on disk.
 * @param {string} folder where the bundles go.
 * @returns {Promise<{ test: string, bundle: string, packages: string[] }[]>} the tests that reach one of those files,
 *   each with its bundle and the packages it needs.
 */
export async function bundle(root, tests, code, folder) {
  const { metafile } = await build({
    absWorkingDir: root,
    entryPoints: [...tests],
    outdir: folder,
    outbase: root,
    entryNames: "[dir]/[name]",
    bundle: true,
    format: "cjs",
    platform: "node",
    target: "node20",
    packages: "external",
    metafile: true,
    jsx: "automatic",
    jsxImportSource: "preact",
    logLevel: "error",
    plugins: [{ name: "mutants", setup: (plugin) => plugin.onLoad({ filter: /\.tsx?$/ }, load) }],
  });
  return Object.entries(metafile.outputs)
    .filter(([, { entryPoint, inputs }]) => entryPoint && Object.keys(inputs).some((file) => code.has(file)))
    .map(([file, { entryPoint, imports }]) => ({
      test: entryPoint,
      bundle: join(root, file),
      packages: [...new Set(imports.filter(({ external }) => external).map(({ path }) => path))],
    }));

  async function load({ path }) {
    const contents = code.get(relative(root, path)) ?? (await readFile(path, "utf8"));
    return { contents: withOwnPlace(contents, path), loader: extname(path).slice(1) };
  }
}

/** A bundle is somewhere else, so files that look beside themselves are told where they came from. */
function withOwnPlace(contents, path) {
  return contents
    .replaceAll("import.meta.dirname", JSON.stringify(dirname(path)))
    .replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href));
}
