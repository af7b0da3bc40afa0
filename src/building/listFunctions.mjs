// @ts-check
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";

const FUNCTIONS = resolve(import.meta.dirname, "../functions");

/**
 * Lists the files of src/functions/each, so that a new worksheet function is one new file: `functions.ts` exports what
 * functions.js runs, and `declared.ts` what everything else knows of it. Git ignores both; whatever builds, checks, or
 * tests makes them first.
 *
 * @param {string} [folder]
 */
export function listFunctions(folder = FUNCTIONS) {
  const names = readdirSync(join(folder, "each"))
    .filter((file) => /^[a-z]\w*\.ts$/.test(file))
    .map((file) => file.slice(0, -".ts".length))
    .sort();
  mkdirSync(join(folder, "listed"), { recursive: true });
  writeIfNew(join(folder, "listed/functions.ts"), names, idOf);
  writeIfNew(join(folder, "listed/declared.ts"), names, (name) => `${name}Declared`);
}

/** The function of a file: stoneTons.ts has STONE_TONS. */
const idOf = (/** @type {string} */ name) => name.replace(/[A-Z]/g, "_$&").toUpperCase();

/**
 * @param {string} file
 * @param {readonly string[]} names
 * @param {(name: string) => string} exported what is exported of each.
 */
function writeIfNew(file, names, exported) {
  const text = names.map((name) => `export { ${exported(name)} } from "../each/${name}";\n`).join("");
  // A file that is written again, though the same, would start a build for whoever watches.
  if (!existsSync(file) || readFileSync(file, "utf8") !== text) writeFileSync(file, text);
}

if (process.argv[1] === import.meta.filename) listFunctions();
