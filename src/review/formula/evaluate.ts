import type { CellValue } from "../facts";
import { natives } from "./natives";
import { calledName, isCall, isReference, type Tree } from "./tree";
import { isFailure, numberOf, single, textOf, truthOf, Unknown, type Value } from "./values";

/** What a formula needs from around it. */
export interface Surroundings {
  /** What a reference reaches, by its place in the formula; undefined where that is not known. */
  readonly reach: (text: string, start: number) => Value | undefined;
  /** Calls a worksheet function that is not one of the plain ones; undefined where it is not known. */
  readonly call: (name: string, given: readonly Value[]) => Value | undefined;
  /**
   * What is from one reference to a row and a column, both from 1, of another: `B4:INDEX(B4:B9,3)`. Undefined where that
   * is not known.
   */
  readonly span?: (from: number, to: number, row: number, column: number) => Value | undefined;
  /** Whether a cell holds a formula, for ISFORMULA. */
  readonly isFormula?: (text: string, start: number) => boolean;
}

/**
 * Works out a formula from the values around it, to show a working or to say what a formula would give. It knows
 * the plain functions of `natives.ts` and those that it is handed; it is no engine, and does not need to be one.
 *
 * @returns undefined where something in the formula is not known here.
 */
export function evaluate(tree: Tree, around: Surroundings): Value | undefined {
  try {
    return workOut(tree, around);
  } catch (reason) {
    if (reason instanceof Unknown) return undefined;
    throw reason;
  }
}

function workOut(tree: Tree, around: Surroundings): Value {
  if (tree === null) return null;
  switch (tree.type) {
    case "Literal":
      return tree.value;
    case "ErrorLiteral":
      return { error: tree.value };
    case "ReferenceIdentifier": {
      const value = around.reach(tree.value, tree.loc?.[0] ?? 0);
      if (value === undefined) throw new Unknown(tree.value);
      return value;
    }
    case "UnaryExpression": {
      if (tree.operator === "#" || tree.operator === "@") throw new Unknown(tree.operator);
      const number = numberOf(workOut(tree.arguments[0] ?? null, around));
      if (typeof number !== "number") return number;
      return tree.operator === "-" ? -number : tree.operator === "%" ? number / 100 : number;
    }
    case "BinaryExpression":
      if (tree.operator === ":") return spanned(tree.arguments, around);
      return binary(
        tree.operator,
        workOut(tree.arguments[0] ?? null, around),
        workOut(tree.arguments[1] ?? null, around),
      );
    case "CallExpression":
      return called(calledName(tree), tree.arguments, around);
    default:
      throw new Unknown(tree.type);
  }
}

function called(name: string, given: readonly Tree[], around: Surroundings): Value {
  // These look at their arguments before they work them out.
  if (name === "IF") {
    const condition = truthOf(workOut(given[0] ?? null, around));
    if (typeof condition !== "boolean") return condition;
    const chosen = given[condition ? 1 : 2];
    return chosen === undefined ? condition : workOut(chosen, around);
  }
  if (name === "IFERROR" || name === "IFNA") {
    const value = workOut(given[0] ?? null, around);
    const caught = isFailure(value) && (name === "IFERROR" || value.error === "#N/A");
    return caught ? workOut(given[1] ?? null, around) : value;
  }
  if (name === "ISFORMULA") {
    const [cell] = given;
    if (cell?.type !== "ReferenceIdentifier" || !around.isFormula) throw new Unknown(name);
    return around.isFormula(cell.value, cell.loc?.[0] ?? 0);
  }
  const values = given.map((one) => workOut(one, around));
  const native = natives[name];
  if (native) return native(values);
  const value = around.call(name, values);
  if (value === undefined) throw new Unknown(name);
  return value;
}

/** A range that ends where INDEX says. */
function spanned([from = null, end = null]: readonly Tree[], around: Surroundings): Value {
  const [to = null, ...places] = isCall(end) && calledName(end) === "INDEX" ? end.arguments : [];
  if (!isReference(from) || !isReference(to as Tree)) throw new Unknown(":");
  const [row, column] = [0, 1].map((place) => {
    const given = places[place] as Tree | undefined;
    return given === undefined ? 1 : numberOf(workOut(given, around));
  });
  if (typeof row !== "number" || typeof column !== "number") throw new Unknown(":");
  const value = around.span?.(from.loc?.[0] ?? 0, (to as Tree)?.loc?.[0] ?? 0, row, column);
  if (value === undefined) throw new Unknown(":");
  return value;
}

function binary(operator: string, left: Value, right: Value): Value {
  const [one, other] = [single(left), single(right)];
  if (isFailure(one)) return one;
  if (isFailure(other)) return other;
  if (operator === "&") return textOf(one) + textOf(other);
  if (["=", "<>", "<", ">", "<=", ">="].includes(operator)) return compared(operator, one, other);
  const [a, b] = [numberOf(one), numberOf(other)];
  if (typeof a !== "number") return a;
  if (typeof b !== "number") return b;
  switch (operator) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return b === 0 ? { error: "#DIV/0!" } : a / b;
    case "^":
      return a ** b;
    default:
      throw new Unknown(operator);
  }
}

function compared(operator: string, one: CellValue | null, other: CellValue | null): boolean {
  const blank = (value: CellValue | null, like: CellValue | null): CellValue =>
    value ?? (typeof like === "string" ? "" : typeof like === "boolean" ? false : 0);
  const [a, b] = [blank(one, other), blank(other, one)].map((value) =>
    typeof value === "string" ? value.toLowerCase() : value,
  ) as [CellValue, CellValue];
  // Numbers come before texts, and those before truths.
  const order = { number: 0, string: 1, boolean: 2 } as const;
  const kind = (value: CellValue) => order[typeof value as keyof typeof order];
  const sign = kind(a) !== kind(b) ? kind(a) - kind(b) : a < b ? -1 : a > b ? 1 : 0;
  switch (operator) {
    case "=":
      return sign === 0;
    case "<>":
      return sign !== 0;
    case "<":
      return sign < 0;
    case ">":
      return sign > 0;
    case "<=":
      return sign <= 0;
    default:
      return sign >= 0;
  }
}
