import { type AstExpression, parse, tokenize } from "@borgar/fx";

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
