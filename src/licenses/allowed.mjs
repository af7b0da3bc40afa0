/**
 * The licenses under which others' code may be shipped: permissive ones, which ask for their notice and no more. By their
 * SPDX names. BSL-1.0 is Boost's, and not the Business Source License, which is called BUSL.
 */
export const ALLOWED = [
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "0BSD",
  "Apache-2.0",
  "BSL-1.0",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Unlicense",
  "Zlib",
];

/**
 * The license under which a package is taken, where it may be shipped.
 *
 * @param {string | undefined} expression as its package.json says it: "MIT", "(MIT OR GPL-3.0-or-later)".
 * @returns {string | undefined} of several to choose from, the first that is allowed; of several that hold together, all
 *   of them; undefined where none is allowed, or none is told.
 */
export function chosenLicense(expression) {
  const choices = expression?.replace(/[()]/g, " ").split(/\sOR\s/) ?? [];
  return choices
    .map((choice) => choice.trim())
    .find((choice) => choice.split(/\sAND\s/).every((one) => ALLOWED.includes(one.trim())));
}
