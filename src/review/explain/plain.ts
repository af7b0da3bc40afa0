import { tokenize } from "@borgar/fx";
import { calledName, isCall, type Tree, textOf } from "../formula/tree";
import { isFailure, type Value } from "../formula/values";
import type { Evaluate } from "./explanation";
import { valueShown } from "./numbers";

const REFERENCES = new Set(["range", "range_beam", "range_ternary", "range_named", "structured"]);
const SIGNS: Readonly<Record<string, string>> = {
  "*": " × ",
  "/": " ÷ ",
  "+": " + ",
  "-": " − ",
  "<=": " ≤ ",
  ">=": " ≥ ",
  "<>": " ≠ ",
  "=": " = ",
  "<": " < ",
  ">": " > ",
  ",": "; ",
  "&": " & ",
};

/** The lines of a formula that is no call of ours: the branch it takes, the numbers put in, and what comes out. */
export function plainWorking(whole: string, tree: Tree, evaluate: Evaluate): string[] {
  const lines: string[] = [];
  let [part, partText] = [tree, whole.slice(1)];
  while (isCall(part) && calledName(part) === "IF") {
    const [condition = "", ...branches] = part.arguments.map((one) => textOf(whole, one as Tree));
    const holds = evaluate(condition);
    if (typeof holds !== "boolean" && typeof holds !== "number") break;
    lines.push(
      `${withNumbers(condition, evaluate)} is ${holds ? "true" : "not true"}: ${holds ? "the first part counts" : "the second part counts"}`,
    );
    const place = holds ? 0 : 1;
    if (branches[place] === undefined || branches[place] === "") break;
    [part, partText] = [part.arguments[place + 1] as Tree, branches[place]];
  }
  const value = evaluate(partText);
  const numbers = withNumbers(partText, evaluate);
  const shown = valueShown(value);
  if (numbers !== shown) lines.push(`${numbers} = ${shown}`);
  else if (lines.length === 0 || part !== tree) lines.push(shown);
  return lines;
}

/** The formula with what its cells hold in place of their addresses: `B4*D4` as `12 × 48`. */
export function withNumbers(text: string, evaluate: Evaluate): string {
  const tokens = tokenize(text.startsWith("=") ? text : `=${text}`, { mergeRefs: true });
  return tokens
    .slice(1)
    .map(({ type, value }, place, rest) => {
      if (REFERENCES.has(type))
        return REFERENCES.has(rest[place + 1]?.type ?? "") ? value : put(value, evaluate(value));
      if (type !== "operator") return type === "whitespace" ? "" : value;
      // A sign before a number or a bracket is no taking off.
      const before = rest[place - 1];
      const isSign =
        value === "-" &&
        (before === undefined || (before.type === "operator" && before.value !== ")" && before.value !== "%"));
      return isSign ? "−" : (SIGNS[value] ?? value);
    })
    .join("")
    .trim();
}

/** A range stays an address, since its cells do not fit in a line. */
function put(address: string, value: Value | undefined): string {
  if (value === undefined || (typeof value === "object" && value !== null && !isFailure(value))) return address;
  return valueShown(value);
}
