import { type AstExpression, parse, tokenize } from "@borgar/fx";
import { LISTS, LISTWISE, SINGLE } from "./needsArray";

/** Take lists as they are, besides those that work through lists by themselves. */
const WHOLE =
  /^(?:CORREL|COVAR|FREQUENCY|GROWTH|INTERCEPT|LINEST|LOGEST|MDETERM|MINVERSE|MODE|PEARSON|RSQ|SLOPE|STEYX|SUMX2MY2|SUMX2PY2|SUMXMY2|TREND)$/;
/** The arguments of which one value is wanted, where the others are taken as they are; by their places. */
const SINGLE_AT: Readonly<Record<string, (place: number) => boolean>> = {
  VLOOKUP: (place) => place !== 1,
  HLOOKUP: (place) => place !== 1,
  MATCH: (place) => place === 0,
  INDEX: (place) => place > 0,
  OFFSET: (place) => place > 0,
  COUNTIF: (place) => place === 1,
  SUMIF: (place) => place === 1,
  AVERAGEIF: (place) => place === 1,
  COUNTIFS: (place) => place % 2 === 1,
  SUMIFS: (place) => place > 0 && place % 2 === 0,
  AVERAGEIFS: (place) => place > 0 && place % 2 === 0,
};
/** Hand on one of their values, so that what is wanted of them is wanted of it. */
const CHOOSING = /^(?:IF|CHOOSE)$/;

/**
 * An ordinary formula with the sign for "the cell in this row or column" before each range of which one value is wanted.
 * That is what an ordinary formula of a file means by a range; here the formula would take as many cells as the range.
 *
 * @param formula with its "=".
 * @param isSeveral whether a name stands for several cells.
 * @example intersecting("=$A$1:$A$5*2", () => false) // "=@$A$1:$A$5*2"
 * @example intersecting("=SUM(A1:A5)", () => false) // "=SUM(A1:A5)"
 */
export function intersecting(formula: string, isSeveral: (name: string) => boolean): string {
  const tree = located(formula);
  if (!tree) return formula;
  const found: Reference[] = [];
  visit(tree, "one", isSeveral, found);
  const places = found.map(({ loc, kind }) => {
    const [start = 0, end = 0] = loc ?? [];
    return { start, end, isName: kind === "name" };
  });
  // From the end, so that the places before stay where they are.
  return places
    .sort((one, other) => other.start - one.start)
    .reduce((text, { start, end, isName }) => {
      const own = text.slice(start, end);
      // The grid reads a name right behind the sign as another name.
      return `${text.slice(0, start)}@${isName ? `(${own})` : own}${text.slice(end)}`;
    }, formula);
}

type Reference = Extract<AstExpression, { type: "ReferenceIdentifier" }>;

/** What is wanted of a part of a formula: one value, what it refers to, or a list. */
type Wanted = "one" | "reference" | "list";

function visit(node: AstExpression, wanted: Wanted, isSeveral: (name: string) => boolean, found: Reference[]): void {
  switch (node.type) {
    case "ReferenceIdentifier":
      if (wanted === "one" && standsForSeveral(node, isSeveral)) found.push(node);
      return;
    case "UnaryExpression":
    case "BinaryExpression": {
      if ([":", " ", ",", "@", "#"].includes(node.operator)) return;
      for (const one of node.arguments) visit(one, wanted === "list" ? "list" : "one", isSeveral, found);
      return;
    }
    case "CallExpression": {
      const name = node.callee.type === "Identifier" ? node.callee.name.toUpperCase() : "";
      const isWhole = wanted === "list" || LISTWISE.has(name) || LISTS.test(name) || WHOLE.test(name);
      node.arguments.forEach((one, place) => {
        if (!one) return;
        const isSingle = CHOOSING.test(name) ? place === 0 : SINGLE.test(name) || SINGLE_AT[name]?.(place);
        const rest = CHOOSING.test(name) ? wanted : "reference";
        visit(one, isWhole ? "list" : isSingle ? "one" : rest, isSeveral, found);
      });
      return;
    }
    default:
  }
}

function standsForSeveral({ kind, value }: Reference, isSeveral: (name: string) => boolean): boolean {
  if (kind === "name") return isSeveral(value);
  return kind === "beam" || (kind === "range" && value.includes(":"));
}

function located(formula: string): AstExpression | undefined {
  try {
    return parse(tokenize(formula, { mergeRefs: true, withLocation: true }));
  } catch {
    return undefined;
  }
}
