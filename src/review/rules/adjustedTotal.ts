import { must } from "../../quantities/must";
import type { Cell } from "../book";
import type { Pattern } from "../formula/pattern";
import { calledName, isBinary, isCall, isNumber, isReference, type Tree } from "../formula/tree";
import type { Study } from "../study";
import { list, short } from "../words";
import { eachFormula, type Observation, offBy, type Rule } from "./rule";

/** The same number in this many formulas of one kind is how the sheet works, and no adjustment of one total. */
const REPEATED = 3;
const SUMS = new Set(["SUM", "SUBTOTAL"]);

export const adjustedTotal: Rule = {
  id: "adjusted-total",
  title: "A total has a typed number in it",
  level: "warning",
  rank: 30,
  matters: "It belongs to no line, no one sees it in the total, and it stays when the lines change.",
  *look(study) {
    const cells = new Map<number, number>();
    for (const { from, to, pattern } of study.readers.runs)
      cells.set(pattern.id, (cells.get(pattern.id) ?? 0) + to - from + 1);
    yield* eachFormula(study, (cell, pattern) =>
      must(cells.get(pattern.id)) >= REPEATED ? undefined : observe(study, cell, pattern),
    );
  },
};

function observe(study: Study, cell: Cell, pattern: Pattern): Observation | undefined {
  const terms = signedTerms(innerOf(pattern.tree ?? null));
  const typed = terms.flatMap(({ term, sign }) => (isNumber(term) && term.value !== 0 ? [sign * term.value] : []));
  if (typed.length === 0 || !isTotal(terms, typed)) return undefined;
  const total = study.valueAt(cell);
  const by = typed.reduce((sum, one) => sum + one, 0);
  const ways = typed.map((one) => `${one < 0 ? "takes off" : "adds"} ${short(Math.abs(one))}`);
  return {
    cell,
    group: `${cell.sheet}:${cell.row}:${cell.column}`,
    about: typed.join(),
    seen: `${list(ways)}, typed into its formula.`,
    todo: "Put the amount on a line of its own with a label, or ignore this and say why.",
    ...(typeof total === "number" && { rank: Math.max(5, offBy(total, total - by, adjustedTotal.rank)) }),
  };
}

interface Term {
  readonly term: Tree;
  readonly sign: 1 | -1;
}

/** Adding 1 to the distance of two cells counts both ends, as in the days of a job. */
function isTotal(terms: readonly Term[], typed: readonly number[]): boolean {
  // What is left of the whole, as in `1-SUM(B2:B4)`.
  const isRest = terms.every(({ term, sign }) => isNumber(term) || sign < 0);
  if (isRest && typed.length === 1 && (typed[0] === 1 || typed[0] === 100)) return false;
  if (terms.some(({ term }) => isCall(term) && SUMS.has(calledName(term)))) return true;
  const references = terms.filter(({ term }) => isReference(term));
  const isDistance = references.length === 2 && new Set(references.map(({ sign }) => sign)).size === 2;
  return references.length >= 2 && !(isDistance && typed.every((one) => Math.abs(one) === 1));
}

/** What a formula does before it rounds. */
const innerOf = (tree: Tree): Tree =>
  isCall(tree) && calledName(tree) === "ROUND" ? (tree.arguments[0] ?? null) : tree;

/** The terms of a sum with their signs, also those among the arguments of SUM: `SUM(E4:E9,50)-F2` has three. */
function signedTerms(tree: Tree, sign: 1 | -1 = 1): Term[] {
  const turned = sign === 1 ? -1 : 1;
  if (isBinary(tree) && (tree.operator === "+" || tree.operator === "-")) {
    const [left = null, right = null] = tree.arguments;
    return [...signedTerms(left, sign), ...signedTerms(right, tree.operator === "+" ? sign : turned)];
  }
  if (tree?.type === "UnaryExpression" && (tree.operator === "+" || tree.operator === "-"))
    return signedTerms(tree.arguments[0] ?? null, tree.operator === "+" ? sign : turned);
  const inside = isCall(tree) && calledName(tree) === "SUM" ? tree.arguments.filter((one) => isNumber(one)) : [];
  return [{ term: tree, sign }, ...inside.map((term) => ({ term, sign }))];
}
