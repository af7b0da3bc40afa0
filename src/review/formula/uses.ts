import type { Pattern } from "./pattern";
import type { Reference } from "./reference";
import { calledName, isCall, isReference, type Tree, walk } from "./tree";

/** One reference in a formula, and the parts of the formula around it. */
export interface Use {
  readonly reference: Reference;
  readonly tree: Tree;
  /** From the whole formula to the part right around the reference. */
  readonly around: readonly Tree[];
}

const known = new WeakMap<Pattern, readonly Use[]>();

/** All references of a formula with what stands around them. */
export function usesOf(pattern: Pattern): readonly Use[] {
  const before = known.get(pattern);
  if (before) return before;
  const uses: Use[] = [];
  for (const { part, around } of walk(pattern.tree ?? null)) {
    if (!isReference(part)) continue;
    const start = part.loc?.[0];
    const reference = pattern.references.find((one) => one.start === start);
    if (reference) uses.push({ reference, tree: part, around });
  }
  known.set(pattern, uses);
  return uses;
}

/** The call right around a use: its name, and which argument the use is in; undefined outside all calls. */
export function callAround({ tree, around }: Use): { readonly name: string; readonly argument: number } | undefined {
  let inner: Tree = tree;
  for (const part of around.toReversed()) {
    if (isCall(part)) return { name: calledName(part), argument: part.arguments.indexOf(inner as never) };
    inner = part;
  }
  return undefined;
}
