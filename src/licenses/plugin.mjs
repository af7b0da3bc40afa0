import { basename, dirname, join } from "node:path";
import { packagesInside } from "./inside.mjs";
import { licenseTrouble, listing } from "./listing.mjs";
import { packageFacts, packageFolder } from "./packageFacts.mjs";

const NAME = "Licenses";

/** Lists the licenses of every package whose code is shipped, and fails the build where one is not permissive. */
export class Licenses {
  /** @param {{ file: string, bundled: readonly string[] }} options the list's file, and the parts that esbuild bundles. */
  constructor({ file, bundled }) {
    this.file = file;
    this.bundled = bundled;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    const { Compilation, WebpackError, sources } = compiler.webpack;
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      compilation.hooks.processAssets.tap({ name: NAME, stage: Compilation.PROCESS_ASSETS_STAGE_REPORT }, () => {
        const shipped = shippedIn(compilation, compiler.webpack.util.runtime.forEachRuntime, this.bundled);
        for (const trouble of shipped.map(licenseTrouble).filter(Boolean)) {
          compilation.errors.push(new WebpackError(trouble));
        }
        compilation.emitAsset(this.file, new sources.RawSource(listing(shipped)));
      });
    });
  }
}

/** @returns {import("./listing.mjs").Shipped[]} */
function shippedIn(compilation, forEachRuntime, bundled) {
  const parts = new Map();
  const inside = new Map();
  for (const [file, names] of filesByPart(compilation, forEachRuntime)) {
    const folder = packageFolder(file);
    parts.set(folder, new Set([...(parts.get(folder) ?? []), ...names]));
    for (const name of packagesInside(file)) inside.set(name, folder);
  }
  // The code that fetches the parts of the add-in is webpack's own, and a few lines in each bundle are esbuild's.
  parts.set(dirname(WEBPACK), new Set(compilation.entrypoints.keys()));
  parts.set(dirname(ESBUILD), new Set(bundled));
  const own = [...parts].map(([folder, names]) => ({
    ...packageFacts(nameOf(folder), folder),
    parts: [...names].sort(),
  }));
  const packed = [...inside].map(([name, within]) => ({
    ...packageFacts(name, join(modulesOf(within), name)),
    parts: [...parts.get(within)].sort(),
    within: nameOf(within),
  }));
  return [...own, ...packed];
}

const WEBPACK = new URL(import.meta.resolve("webpack/package.json")).pathname;
const ESBUILD = new URL(import.meta.resolve("esbuild/package.json")).pathname;

/** The name of a package by its folder: @scope/name or name. */
function nameOf(folder) {
  const scope = basename(dirname(folder));
  return scope.startsWith("@") ? `${scope}/${basename(folder)}` : basename(folder);
}

function modulesOf(folder) {
  return nameOf(folder).startsWith("@") ? dirname(dirname(folder)) : dirname(folder);
}

/** The files of packages that are in what is built, with the entries that hold them. */
function filesByPart({ modules, chunkGraph }, forEachRuntime) {
  const found = new Map();
  for (const module of modules) {
    const entries = new Set();
    for (const runtime of chunkGraph.getModuleRuntimes(module)) forEachRuntime(runtime, (entry) => entries.add(entry));
    if (entries.size === 0) continue;
    for (const { resource, buildInfo } of module.modules ?? [module]) {
      for (const file of [resource, ...(buildInfo?.bundledFiles ?? [])])
        if (packageFolder(file)) found.set(file, new Set([...(found.get(file) ?? []), ...entries]));
    }
  }
  return found;
}
