import { type AstExpression, parse, type Token } from "@borgar/fx";

/**
 * Names that a formula gives to values within itself, in small letters.
 *
 * @throws {SyntaxError} where the tokens make no formula.
 */
export function ownNames(tokens: readonly Token[]): ReadonlySet<string> {
  const names = new Set<string>();
  // Long sums are trees as deep as they are long, so they are not walked by calls.
  const open: (AstExpression | null | undefined)[] = [parse([...tokens]) as AstExpression];
  for (let part = open.pop(); open.length > 0 || part !== undefined; part = open.pop()) {
    if (!part) continue;
    if (part.type === "LetExpression") {
      for (const { id, init } of part.declarations) {
        names.add(id.name.toLowerCase());
        open.push(init);
      }
      open.push(part.body);
    } else if (part.type === "LambdaExpression") {
      for (const { name } of part.params) names.add(name.toLowerCase());
      open.push(part.body);
    } else if (part.type === "CallExpression") {
      open.push(...part.arguments);
      // A function may be written where it is called; the parser's types leave that out.
      open.push(part.callee as unknown as AstExpression);
    } else if (part.type === "BinaryExpression" || part.type === "UnaryExpression") open.push(...part.arguments);
    else if (part.type === "ArrayExpression") open.push(...part.elements.flat());
  }
  return names;
}
