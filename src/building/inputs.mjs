// @ts-check
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Everything that a build is made from, from the project's folder on. Of the packages, what the lock file says, and what
 * npm says that it installed.
 */
const INPUTS = [
  "src",
  "assets",
  "test/generated",
  "manifest.xml",
  "LICENSE",
  "package.json",
  "package-lock.json",
  "node_modules/.package-lock.json",
  "tsconfig.json",
  "webpack.config.js",
];

/** Tells what a build was made from; it is in the build's folder, so that it goes when the build does. */
export const STAMP = "built-from.txt";

/**
 * What the files that a build is made from hold, as one short text that changes when any of them does.
 *
 * @param {string} root the project's folder.
 */
export function hashInputs(root) {
  const hash = createHash("sha256");
  for (const file of INPUTS.flatMap((input) => filesIn(root, input))) {
    const content = readFileSync(join(root, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest("hex");
}

/**
 * Whether a folder holds a whole build of what the project's files are now.
 *
 * @param {string} root
 * @param {string} folder
 */
export function isBuilt(root, folder) {
  const stamp = join(folder, STAMP);
  return existsSync(stamp) && readFileSync(stamp, "utf8") === hashInputs(root);
}

/**
 * Builds, and leaves the stamp only once the build is whole.
 *
 * @param {string} root
 * @param {string} folder
 * @param {() => Promise<boolean>} build whether it succeeded.
 */
export async function stamped(root, folder, build) {
  // Taken first: what is changed while it builds may or may not be in it.
  const hash = hashInputs(root);
  rmSync(join(folder, STAMP), { force: true });
  const succeeded = await build();
  if (succeeded) writeFileSync(join(folder, STAMP), hash);
  return succeeded;
}

/**
 * @param {string} root
 * @param {string} path
 * @returns {string[]} in an order that is the same on every machine.
 */
function filesIn(root, path) {
  const found = statSync(join(root, path), { throwIfNoEntry: false });
  if (!found) return [];
  if (!found.isDirectory()) return [path];
  return readdirSync(join(root, path))
    .filter((name) => !/\.test\.tsx?$/.test(name))
    .sort()
    .flatMap((name) => filesIn(root, `${path}/${name}`));
}
