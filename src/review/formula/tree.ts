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
