// Puts mutants into source files with Stryker's instrumenter. Each one is behind a switch, so all of them are in the
// code at once and a run only has to say which one is on.
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { Instrumenter } from "@stryker-mutator/instrumenter";

/**
 * Stryker leaves numbers as they are, and in the trade they are half of the truth: this changes each of them, a whole one by
 * one, any other by a quarter.
 */
const numberMutator = {
  name: "Number",
  *mutate({ node, key }) {
    if (node.type !== "NumericLiteral" || key === "key") return;
    yield { type: "NumericLiteral", value: Number.isInteger(node.value) ? node.value + 1 : node.value * 1.25 };
  },
};

/** The instrumenter takes no mutators from outside, but its list of them is open. */
async function addNumbers() {
  const its = import.meta.resolve("@stryker-mutator/instrumenter");
  const { allMutators } = await import(new URL("./mutators/mutate.js", its).href);
  if (!allMutators.includes(numberMutator)) allMutators.push(numberMutator);
}

const quiet = () => {};
const logger = { debug: quiet, info: quiet, warn: console.warn, error: console.error, isDebugEnabled: () => false };

/**
 * @typedef {{ id: number, file: string, line: number, mutator: string, before: string, from: string, to: string }} Mutant
 */

/**
 * @param {string} root the repository's folder.
 * @param {readonly string[]} files paths from there.
 * @param {boolean} withNumbers whether to change numbers as well.
 * @returns {Promise<{ mutants: Mutant[], ignored: number, code: Map<string, string> }>} the mutants to try, how many
 *   were left out because they only change text that people read, and each file's code with the switches in it.
 */
export async function instrument(root, files, withNumbers) {
  if (withNumbers) await addNumbers();
  const sources = new Map(
    await Promise.all(files.map(async (file) => [file, await readFile(join(root, file), "utf8")])),
  );
  const inputs = [...sources].map(([file, content]) => ({ name: file, content, mutate: true }));
  // Without Stryker's header, the switches are two functions of the global scope: see switches.mjs.
  const options = { plugins: null, excludedMutations: [], ignorers: [], noHeader: true };
  const result = await new Instrumenter(logger).instrument(inputs, options);
  const mutants = result.mutants
    .filter((mutant) => mutant.status === undefined)
    .map((mutant) => {
      const { start, end } = mutant.location;
      const source = sources.get(mutant.fileName);
      const from = textBetween(source, start, end);
      const before = source.split("\n")[start.line].slice(0, start.column);
      const { fileName: file, mutatorName: mutator, replacement: to } = mutant;
      return { id: Number(mutant.id), file, line: start.line + 1, mutator, before, from, to };
    });
  const tried = mutants.filter((mutant) => !isWording(mutant));
  const code = new Map(result.files.map(({ name, content }) => [name, byNumber(content)]));
  return { mutants: tried, ignored: result.mutants.length - tried.length, code };
}

/** Text for people: it has a space, a capital letter at its start, or a place to fill in, or names a unit. */
function isWording({ mutator, before, from }) {
  return mutator === "StringLiteral" && (/^`|\s|^["'][A-Z]/.test(from) || /[uU]nit: $/.test(before));
}

/** Numbers compare faster than strings, and the switches sit in the innermost loops. */
function byNumber(code) {
  return code.replace(/(stryMutAct_9fa48|stryCov_9fa48)\(([^()]*)\)/g, (_, name, ids) => {
    return `${name}(${ids.replaceAll('"', "")})`;
  });
}

function textBetween(source, start, end) {
  const lines = source.split("\n").slice(start.line, end.line + 1);
  lines[lines.length - 1] = lines.at(-1).slice(0, end.column);
  lines[0] = lines[0].slice(start.column);
  return lines.join("\n");
}
