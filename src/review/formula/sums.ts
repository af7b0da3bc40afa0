import type { Book, Cell, Target } from "../book";
import type { Pattern } from "./pattern";
import { calledName, isCall, isReference, type Tree, termsOf, walk } from "./tree";

/** Functions that take up whole ranges, and which of their arguments the ranges are. */
const RANGES: Readonly<Record<string, (given: readonly Tree[]) => readonly Tree[]>> = {
  SUM: (given) => given,
  AVERAGE: (given) => given,
  SUBTOTAL: (given) => given.slice(1),
  AGGREGATE: (given) => given.slice(2),
  SUMPRODUCT: (given) => given,
  SUMIF: (given) => given.slice(0, 1).concat(given.slice(2)),
  SUMIFS: (given) => given.slice(0, 1),
  AVERAGEIF: (given) => given.slice(0, 1).concat(given.slice(2)),
};
/** Functions that add up everything they are given. */
const TAKES_ALL = new Set(["SUM", "AVERAGE", "SUBTOTAL", "AGGREGATE"]);
/** Functions that skip what they are told to, or what has the same function in it. */
const SKIPS_NESTED = new Set(["SUBTOTAL", "AGGREGATE"]);

/** One adding up in a formula: a call such as SUM, or a chain of single cells with plus signs. */
export interface Sum {
  /** "SUM", "AVERAGE", …; "+" for a chain. */
  readonly name: string;
  /** What each argument reaches, as written. */
  readonly targets: readonly Target[];
  /** It takes up all of it; SUMIF and SUMPRODUCT choose or weigh. */
  readonly takesAll: boolean;
  /** SUBTOTAL and AGGREGATE leave out what is itself a subtotal. */
  readonly skipsNested: boolean;
  /** What SUBTOTAL or AGGREGATE is told to do: 109 leaves hidden rows out. */
  readonly task: number | undefined;
}

/** Everything that the formula of a cell adds up. */
export function sumsOf(book: Book, cell: Cell, pattern: Pattern): Sum[] {
  if (!pattern.tree) return [];
  const sums: Sum[] = [];
  for (const { part } of walk(pattern.tree)) {
    if (!isCall(part)) continue;
    const name = calledName(part);
    const targets = RANGES[name]?.(part.arguments).flatMap((one) => targetOfTree(book, cell, pattern, one) ?? []);
    if (!targets || targets.length === 0) continue;
    const [first] = part.arguments;
    const skipsNested = SKIPS_NESTED.has(name);
    const task = skipsNested && first?.type === "Literal" ? Number(first.value) : undefined;
    sums.push({ name, targets, takesAll: TAKES_ALL.has(name), skipsNested, task });
  }
  const chain = chainOf(book, cell, pattern);
  if (chain) sums.push(chain);
  return sums;
}

/** `=E4+E5+E6`: a sum that is written out. Calls among its terms are sums of their own. */
function chainOf(book: Book, cell: Cell, pattern: Pattern): Sum | undefined {
  const terms = termsOf(pattern.tree ?? null);
  if (!terms || terms.length < 2) return undefined;
  const targets = terms.flatMap((term) => {
    const target = targetOfTree(book, cell, pattern, term);
    return target && target.rows === 1 && target.columns === 1 ? [target] : [];
  });
  return targets.length >= 2 ? { name: "+", targets, takesAll: true, skipsNested: false, task: undefined } : undefined;
}

/**
 * A formula that is nothing but parts added up, as one sum over everything that it takes: `=SUM(E4:E9)+E12`.
 * Undefined where anything else happens in it.
 */
export function addendsOf(book: Book, cell: Cell, pattern: Pattern): Sum | undefined {
  const terms = termsOf(pattern.tree ?? null);
  if (!terms) return undefined;
  const targets: Target[] = [];
  const sums: string[] = [];
  for (const term of terms) {
    const parts = isCall(term) && calledName(term) === "SUM" ? term.arguments : [term];
    if (isCall(term)) sums.push(calledName(term));
    for (const part of parts) {
      const target = targetOfTree(book, cell, pattern, part);
      if (!target) return undefined;
      targets.push(target);
    }
  }
  if (sums.length === 0 && terms.length < 2) return undefined;
  return { name: sums[0] ?? "+", targets, takesAll: true, skipsNested: false, task: undefined };
}

/** What a part of a formula reaches if it is a plain reference. */
export function targetOfTree(book: Book, cell: Cell, pattern: Pattern, tree: Tree): Target | undefined {
  if (!isReference(tree)) return undefined;
  const start = tree.loc?.[0] ?? -1;
  const reference = pattern.references.find((one) => one.start === start);
  return reference && book.targetOf(reference, cell);
}

/** Whether a formula is nothing but a sum: then a cell with it is a subtotal. */
export function isPlainSum({ tree = null }: Pattern): boolean {
  const inner = isCall(tree) && calledName(tree) === "ROUND" ? (tree.arguments[0] ?? null) : tree;
  if (isCall(inner)) return TAKES_ALL.has(calledName(inner));
  const terms = termsOf(inner);
  return terms !== undefined && terms.length >= 2 && terms.every((term) => isReference(term) || isCall(term));
}

/** Whether a formula takes up other cells of the line it is in, as the total below a column does. */
export function sumsItsOwnLine(book: Book, cell: Cell, pattern: Pattern, direction: "down" | "across"): boolean {
  return sumsOf(book, cell, pattern).some(({ targets }) =>
    targets.some((target) =>
      target.sheet !== cell.sheet
        ? false
        : direction === "down"
          ? target.column <= cell.column && cell.column < target.column + target.columns && target.rows > 1
          : target.row <= cell.row && cell.row < target.row + target.rows && target.columns > 1,
    ),
  );
}
