import type { AstExpression, BinaryExpression, CallExpression, Literal, ReferenceIdentifier } from "@borgar/fx";

/** A part of a formula. An argument that was left blank, as in `IF(A1,,2)`, is null. */
export type Tree = AstExpression | null;

export const isCall = (tree: Tree): tree is CallExpression => tree?.type === "CallExpression";
export const isBinary = (tree: Tree): tree is BinaryExpression => tree?.type === "BinaryExpression";
export const isReference = (tree: Tree): tree is ReferenceIdentifier => tree?.type === "ReferenceIdentifier";
export const isNumber = (tree: Tree): tree is Literal & { value: number } =>
  tree?.type === "Literal" && typeof tree.value === "number";

/** The name of the function that is called, in capitals. */
export const calledName = (call: CallExpression): string => call.callee.name.toUpperCase();

/** The parts that a part is made of, in the order in which they are written. */
export function partsOf(tree: Tree): readonly Tree[] {
  switch (tree?.type) {
    case "CallExpression":
    case "BinaryExpression":
    case "UnaryExpression":
      return tree.arguments;
    case "ArrayExpression":
      return tree.elements.flat();
    case "LetExpression":
      return [...tree.declarations.map(({ init }) => init), tree.body] as Tree[];
    case "LambdaExpression":
      return [tree.body];
    default:
      return [];
  }
}

/** Every part of a formula, the whole first, each with the parts around it, the nearest last. */
export function* walk(
  tree: Tree,
  around: readonly Tree[] = [],
): Generator<{ readonly part: Exclude<Tree, null>; readonly around: readonly Tree[] }> {
  if (tree === null) return;
  yield { part: tree, around };
  for (const part of partsOf(tree)) yield* walk(part, [...around, tree]);
}

/** The factors of a product, each above or below the line: `A1*B1/27` gives A1, B1 above and 27 below. */
export function factorsOf(tree: Tree, above = true): { readonly factor: Tree; readonly above: boolean }[] {
  if (isBinary(tree) && (tree.operator === "*" || tree.operator === "/")) {
    const [left = null, right = null] = tree.arguments;
    return [...factorsOf(left, above), ...factorsOf(right, tree.operator === "*" ? above : !above)];
  }
  return [{ factor: tree, above }];
}

/** The terms of a sum: `A1+B1+C1` gives all three. Undefined where anything is taken off. */
export function termsOf(tree: Tree): Tree[] | undefined {
  if (!isBinary(tree) || tree.operator !== "+") return [tree];
  const [left, right] = tree.arguments.map((part) => termsOf(part));
  return left && right && [...left, ...right];
}

/** A part of a formula as it is written, with the brackets that belong to it; "" for an argument that is left out. */
export function textOf(whole: string, part: Tree): string {
  const [start, end] = spanOf(whole, part) ?? [0, 0];
  return whole.slice(start, end);
}

/** Where a part is in the formula's text; the parser leaves brackets at its ends out. */
export function spanOf(whole: string, part: Tree): readonly [start: number, end: number] | undefined {
  if (!part?.loc) return undefined;
  let [start, end] = part.loc as [number, number];
  for (let open = openIn(whole.slice(start, end)); open > 0; open = openIn(whole.slice(start, end))) {
    const close = whole.indexOf(")", end);
    if (close < 0) break;
    end = close + 1;
  }
  for (let open = openIn(whole.slice(start, end)); open < 0; open = openIn(whole.slice(start, end))) {
    const before = whole.lastIndexOf("(", start - 1);
    if (before < 0) break;
    start = before;
  }
  return [start, end];
}

/** How many brackets are opened and not closed; less than 0 where more are closed. */
function openIn(text: string): number {
  const bare = text.replaceAll(/"[^"]*"/g, "").replaceAll(/'[^']*'/g, "");
  return bare.split("(").length - bare.split(")").length;
}
