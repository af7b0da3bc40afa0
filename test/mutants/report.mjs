// What came of the mutants, as text: a score for each folder, then each mutant that no test noticed.
import { dirname } from "node:path";

/** @param {readonly { file: string, line: number, mutator: string, from: string, to: string, status: string }[]} mutants */
export function reportOf(mutants) {
  const folders = groupBy(mutants, ({ file }) => dirname(file));
  const rows = [...folders].map(([folder, inside]) => rowOf(folder, inside));
  const scores = [...rows, rowOf("all", mutants)].join("\n");
  const left = [...groupBy(mutants.filter(isLeft), ({ file }) => file)].map(
    ([file, inside]) => `${file}\n${inside.map(lineOf).join("\n")}`,
  );
  return `\n${HEAD}\n${scores}\n\n${left.join("\n")}\n`;
}

const HEAD = `${"folder".padEnd(36)} score  killed  timeout  survived  uncovered`;
const isLeft = ({ status }) => status === "survived" || status === "uncovered";

function rowOf(folder, mutants) {
  const count = (status) => mutants.filter((mutant) => mutant.status === status).length;
  const [killed, timeout, survived, uncovered] = ["killed", "timeout", "survived", "uncovered"].map(count);
  const score = ((100 * (killed + timeout)) / mutants.length).toFixed(1);
  const cells = [killed, timeout, survived, uncovered].map((number, at) => `${number}`.padStart([7, 9, 10, 11][at]));
  return `${folder.padEnd(36)}${score.padStart(5)}%${cells.join("")}`;
}

function lineOf({ line, mutator, from, to, status }) {
  return `  ${line}: ${short(from)} → ${short(to)}${status === "uncovered" ? "  (no test runs it)" : ""}  [${mutator}]`;
}

function short(text) {
  const one = text.replace(/\s+/g, " ");
  return one.length > 70 ? `${one.slice(0, 50)} … ${one.slice(-17)}` : one;
}

function groupBy(items, keyOf) {
  const groups = new Map();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
}
