import { calledName, isCall, isReference, partsOf, type Tree } from "./tree";
import { isFailure, type Value } from "./values";

/**
 * The parts of a formula that decide what it shows as things are: of an IF the branch that it takes, or where that is a
 * text of its own, what its condition reads. Each is a reference, or an INDEX of one.
 *
 * @param evaluate works a part out; undefined for what isn't known.
 * @example `=IF(B1>0,B1,"no rate")` with -1 in B1: the B1 of the condition
 */
export function takenParts(tree: Tree, evaluate: (part: Tree) => Value | undefined): Tree[] {
  if (isReference(tree)) return [tree];
  if (!isCall(tree)) return [];
  const [first = null, yes = null, no = null] = tree.arguments as Tree[];
  switch (calledName(tree)) {
    case "INDEX":
      return [tree];
    case "IFERROR":
    case "IFNA":
      return takenParts(isFailure(evaluate(first)) ? yes : first, evaluate);
    case "IF": {
      const holds = evaluate(first);
      if (typeof holds !== "boolean") return [];
      const branch = holds ? yes : no;
      return branch?.type === "Literal" ? readBy(first) : takenParts(branch, evaluate);
    }
    default:
      return [];
  }
}

/** What a part reads, an INDEX as one. */
function readBy(tree: Tree): Tree[] {
  if (isReference(tree) || (isCall(tree) && calledName(tree) === "INDEX")) return [tree];
  return partsOf(tree).flatMap(readBy);
}
