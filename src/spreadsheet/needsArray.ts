import { type AstExpression, parse, tokenize } from "@borgar/fx";

/** Work through whole lists by themselves, but for choices and turned lists in their arguments. */
export const LISTWISE = new Set(["SUMPRODUCT", "MMULT", "LOOKUP"]);
/** Make one value of one value, so that several are worked through only in an array formula. */
export const SINGLE =
  /^(?:ABS|CEILING|EXACT|FIND|FLOOR|IF|INT|ISBLANK|ISERROR|ISNUMBER|ISTEXT|LEFT|LEN|LOWER|MID|MOD|NOT|RIGHT|ROUND|ROUNDDOWN|ROUNDUP|SEARCH|SIGN|SQRT|SUBSTITUTE|TRIM|UPPER|VALUE)$/;
/** Give lists. */
export const LISTS = /^(?:_xlfn\.)?(?:_xlws\.)?(?:TRANSPOSE|FILTER|SORT|SORTBY|UNIQUE|SEQUENCE|RANDARRAY)$/i;

/**
 * Whether a formula works through several cells at once where one value is the rule, so that a file must hold it as an
 * array formula: if not, programs use only one of the cells.
 *
 * @param formula with its "=".
 * @example needsArray("=SUM(IF(A1:A3>0,A1:A3))") // true
 */
export function needsArray(formula: string): boolean {
  // Most formulas have no range and no list in them, and need no parsing.
  if (!/[:{]|TRANSPOSE|FILTER|SORT|UNIQUE|SEQUENCE|RANDARRAY/i.test(formula)) return false;
  const tree = parsed(formula);
  return tree !== undefined && worksThroughSeveral(tree);
}

function worksThroughSeveral(node: AstExpression): boolean {
  switch (node.type) {
    case "UnaryExpression":
      // The sign says that one value is meant.
      if (node.operator === "@") return false;
      return node.operator !== "#" && node.arguments.some((one) => isSeveral(one) || worksThroughSeveral(one));
    case "BinaryExpression":
      if (node.operator === ":" || node.operator === " " || node.operator === ",") return false;
      return node.arguments.some((one) => isSeveral(one) || worksThroughSeveral(one));
    case "CallExpression": {
      const name = node.callee.type === "Identifier" ? node.callee.name.toUpperCase() : "";
      if (LISTS.test(name)) return true;
      const given = node.arguments.filter((one) => one !== null);
      if (LISTWISE.has(name)) return given.some(choosesOrTurns);
      const asks = SINGLE.test(name);
      return given.some((one) => (asks && isSeveral(one)) || worksThroughSeveral(one));
    }
    default:
      return false;
  }
}

function isSeveral(node: AstExpression): boolean {
  if (node.type === "ArrayExpression") return true;
  if (node.type !== "ReferenceIdentifier") return false;
  return node.kind === "beam" || (node.kind === "range" && node.value.includes(":"));
}

function choosesOrTurns(node: AstExpression): boolean {
  if (node.type === "UnaryExpression" || node.type === "BinaryExpression") return node.arguments.some(choosesOrTurns);
  if (node.type !== "CallExpression") return false;
  const name = node.callee.type === "Identifier" ? node.callee.name.toUpperCase() : "";
  if (LISTS.test(name)) return true;
  const given = node.arguments.filter((one) => one !== null);
  return name === "IF" ? given.some((one) => isSeveral(one) || worksThroughSeveral(one)) : given.some(choosesOrTurns);
}

/**
 * A formula as a tree.
 *
 * @returns undefined where it cannot be read as a formula.
 */
export function parsed(formula: string): AstExpression | undefined {
  try {
    return parse(tokenize(formula, { mergeRefs: true }));
  } catch {
    return undefined;
  }
}
