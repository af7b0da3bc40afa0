// A bundled test file: loads fresh copies of it, and finds its tests.
import { readFileSync } from "node:fs";
import { Script } from "node:vm";
import { collect, testsOf, vitest } from "./harness.mjs";

/** Packages that bundles ask for, which are loaded once and shared. */
const packages = new Map([["vitest", vitest]]);

/** Loads what bundles ask for; some packages are modules, which only `import` can load. */
export async function loadPackages(names) {
  for (const name of names) {
    if (packages.has(name)) continue;
    const loaded = await import(name);
    packages.set(name, { ...(name === "fast-check" ? quick(loaded) : loaded), __esModule: true });
  }
}

/** Properties are tried on few cases, the same each time, and the first that fails is enough. */
function quick(fastCheck) {
  fastCheck.configureGlobal({ seed: 1, endOnFailure: true });
  const assert = (property, options) =>
    fastCheck.assert(property, { ...options, numRuns: Math.min(options?.numRuns ?? MOST_RUNS, MOST_RUNS) });
  return { ...fastCheck, assert, default: { ...fastCheck.default, assert } };
}

const MOST_RUNS = 20;

export class TestFile {
  /** @param {string} bundle the bundle's path. */
  constructor(bundle) {
    // esbuild takes every package for CommonJS where a repository is made of modules; ours are marked, see above.
    const code = readFileSync(bundle, "utf8").replace(/(__toESM\(require\("[^"]+"\)), 1\)/g, "$1)");
    this.script = new Script(`(module, exports, require) => {${code}\n}`, { filename: bundle });
  }

  /** Runs the file's code again, with whatever mutant is on, and collects its tests. */
  fresh() {
    const run = this.script.runInThisContext();
    const root = collect("", () => {
      const module = { exports: {} };
      run(module, module.exports, (name) => {
        if (!packages.has(name)) throw new Error(`${name} was not loaded`);
        return packages.get(name);
      });
    });
    const tests = testsOf(root);
    for (const [index, test] of tests.entries()) test.index = index;
    return { root, tests };
  }
}
