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
 * @param {unknown} expression as its package.json says it: "MIT", "(MIT OR GPL-3.0-or-later)". What is no text tells
 *   nothing.
 * @returns {string | undefined} of several to choose from, the first that is allowed; of several that hold together, all
 *   of them; undefined where none is allowed, none is told, or the expression cannot be read.
 */
export function chosenLicense(expression) {
  const words = typeof expression === "string" ? (expression.match(/[()]|[^\s()]+/g) ?? []) : [];
  const chosen = readChoices(words);
  return words.length === 0 ? chosen : undefined;
}

/*
 * An expression has choices between parts that hold together, each of them a license or an expression in parentheses.
 * What has been read is taken off the words.
 */

/** @param {string[]} words */
function readChoices(words) {
  const choices = [readTogether(words)];
  while (words[0] === "OR") {
    words.shift();
    choices.push(readTogether(words));
  }
  return choices.find((choice) => choice !== undefined);
}

/** @param {string[]} words */
function readTogether(words) {
  const parts = [readOne(words)];
  while (words[0] === "AND") {
    words.shift();
    parts.push(readOne(words));
  }
  return parts.includes(undefined) ? undefined : [...new Set(parts)].join(" AND ");
}

/** A license with an exception, `GPL-2.0 WITH …`, is none of those that are allowed. @param {string[]} words */
function readOne(words) {
  const word = words.shift();
  if (word === "(") {
    const chosen = readChoices(words);
    return words.shift() === ")" ? chosen : undefined;
  }
  // What breaks off leaves something over, and so is not taken for read.
  if (word === undefined) words.push("");
  if (words[0] !== "WITH") return ALLOWED.find((name) => name === word);
  words.splice(0, 2);
  return undefined;
}
