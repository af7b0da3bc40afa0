import { type Token, tokenize } from "@borgar/fx";

/** A formula in tokens, each reference in one piece. */
export function tokensOf(formula: string): Token[] {
  return tokenize(formula, { mergeRefs: true, allowTernary: true });
}
