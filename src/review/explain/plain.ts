import { tokenize } from "@borgar/fx";
import type { Kind } from "../../functions/declare";
import { dayShown, shareShown, shown } from "../../functions/working";
import { calledName, isCall, type Tree, textOf } from "../formula/tree";
import { isFailure, isRange, type Value } from "../formula/values";
import type { Evaluate } from "./explanation";

/** Money with its cents. */
export const moneyShown = (value: number): string =>
  value.toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** What a unit is called behind a number; "" where there is none. */
const UNITS: Partial<Record<Kind, string>> = {
  count: "",
  amount: "",
  money: "",
  stone: "tons/cu yd",
  soil: "",
  degrees: "degrees",
};

/** A number of a kind with its unit: `2.5 in`, `8 %`, `Mon 2026-03-02`. */
export function withUnit(value: number, kind: Kind): string {
  if (kind === "share" || kind === "soil") return shareShown(value);
  if (kind === "date") return dayShown(value);
  return `${shown(value)} ${UNITS[kind] ?? kind}`.trim();
}

/** Any value as it is shown in a formula with numbers in it. */
export function valueShown(value: Value | undefined): string {
  if (value === undefined) return "?";
  if (value === null) return "blank";
  if (isFailure(value)) return value.error;
  if (isRange(value)) return `${value.length} × ${value[0]?.length ?? 0} cells`;
  if (typeof value === "number") return shown(value);
  return typeof value === "boolean" ? String(value).toUpperCase() : `“${value}”`;
}

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
      `${withNumbers(condition, evaluate)} is ${holds ? "true" : "false"}: ${holds ? "takes the first part" : "takes the second part"}`,
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
