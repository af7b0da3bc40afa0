import type { Cell } from "../book";
import type { Study } from "../study";
import type { Pattern } from "./pattern";
import type { Reference } from "./reference";
import { calledName, isBinary, isCall, isReference, type Tree, walk } from "./tree";

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

/** A use of a cell in the formula of another, which may have had it handed on. */
export interface CellUse extends Use {
  readonly reader: Cell;
  readonly pattern: Pattern;
  /** It was read as part of a range. */
  readonly inRange: boolean;
}

/** As many formulas are followed for one cell; what the first ones do with it, the others do, too. */
const MOST_USES = 24;
const MOST_STEPS = 3;

/** How a cell is used, also through formulas that only hand it on, as `=B4` and `IF(H5="labor",B4,B5)` do. */
export function usesThrough(study: Study, cell: Cell, steps = MOST_STEPS): CellUse[] {
  const found: CellUse[] = [];
  for (const { pattern, reference, target, ...reader } of study.readers.of(cell).slice(0, MOST_USES)) {
    const use = usesOf(pattern).find((one) => one.reference === reference);
    if (!use) continue;
    found.push({ ...use, reader, pattern, inRange: target.rows * target.columns > 1 });
    if (steps > 1 && target.rows * target.columns === 1 && isHandedOn(use))
      found.push(...usesThrough(study, reader, steps - 1));
  }
  return found;
}

/** Whether a formula gives what it reads as it is. */
export function isHandedOn({ tree, around }: Use): boolean {
  let inner: Tree = tree;
  return around.toReversed().every((part) => {
    const place = isCall(part) && calledName(part) === "IF" ? part.arguments.indexOf(inner as never) : -1;
    inner = part;
    return place > 0;
  });
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

/** Whether a formula looks first if a cell is blank, with `B4=""` or ISBLANK: then a blank is an answer. */
export function asksFirst(pattern: Pattern, text: string | undefined): boolean {
  return usesOf(pattern).some(({ reference, around }) => {
    const parent = around.at(-1) ?? null;
    if (reference.text !== text) return false;
    if (isCall(parent)) return calledName(parent) === "ISBLANK";
    const isCompared = isBinary(parent) && /^(=|<>)$/.test(parent.operator);
    return isCompared && parent.arguments.some((one) => one?.type === "Literal" && one.value === "");
  });
}
