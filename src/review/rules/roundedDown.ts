import type { CallExpression } from "@borgar/fx";
import type { Role } from "../../headings/roles";
import { units } from "../../headings/units";
import { isWholeThing } from "../../headings/words";
import { must } from "../../quantities/must";
import type { Cell } from "../book";
import { PatternReader } from "../formula/pattern";
import { calledName, isBinary, isCall, isNumber, spanOf, type Tree, textOf, walk } from "../formula/tree";
import type { Study } from "../study";
import { change, eachFormula, type Observation, type Rule } from "./rule";

const DOWN = new Set(["ROUNDDOWN", "INT", "TRUNC", "FLOOR", "FLOOR.MATH", "QUOTIENT"]);
/** Adding this much or more before rounding down makes up for it. */
const HALF = 0.4;
const MONEY = new Set<Role>(["cost", "price", "unit cost", "unit price"]);

export const roundedDown: Rule = {
  id: "rounded-down",
  title: "Something you buy whole isn't rounded up",
  level: "error",
  rank: 15,
  matters: "You can't buy part of a bag or roll, so the crew comes up one short.",
  covers: ["unlike-neighbors"],
  look: (study) => eachFormula(study, (cell, { tree = null }) => (roundingIn(tree) ? observe(study, cell) : undefined)),
};

function observe(study: Study, cell: Cell): Observation | undefined {
  const { book } = study;
  const { heading, label, role } = must(book.places[cell.sheet]).describe(cell.row, cell.column);
  const unit = must(book.places[cell.sheet]).unitOf(cell.row, cell.column);
  // The cost of stakes is money, though their label names a count.
  const isQuantity =
    role === "quantity" || heading === "" || (unit && units[unit].measures === "count" && !(role && MONEY.has(role)));
  const isCounted = isWholeThing(heading) || (isQuantity && isWholeThing(`${label} ${unitBeside(study, cell)}`));
  if (!isCounted) return undefined;
  const formula = must(must(book.grids[cell.sheet]).formula(cell.row, cell.column));
  // The places in the text have to be those of this cell's own formula.
  const own = new PatternReader().read(formula, cell.row, cell.column);
  const call = own.tree && roundingIn(own.tree);
  if (!call) return undefined;
  const name = calledName(call);
  const nearest = name === "ROUND";
  const corrected = roundedUp(formula, call);
  return {
    cell,
    group: `${cell.sheet}:${cell.column}:${name}`,
    about: formula,
    seen: `has ${formula}, which rounds ` + (nearest ? "to the nearest whole one, down as often as up." : "down."),
    todo: "Round up.",
    rank: Math.max(
      roundedDown.rank,
      Math.min(100, Math.round(100 / Math.max(1, must(book.grids[cell.sheet]).number(cell.row, cell.column) ?? 1))),
    ),
    ...(corrected !== undefined && { fix: [change(study, cell, corrected)] }),
  };
}

function unitBeside({ book }: Study, { sheet, row, column }: Cell): string {
  const grid = must(book.grids[sheet]);
  return grid.isTypedText(row, column + 1) ? String(grid.value(row, column + 1)) : "";
}

/** The call that makes the whole number; undefined where the formula makes up for it, as `INT(x)+1` does. */
function roundingIn(tree: Tree): CallExpression | undefined {
  for (const { part, around } of walk(tree)) {
    if (!isCall(part) || !isWholeRounding(part)) continue;
    const parent = around.at(-1) ?? null;
    const addsOne =
      isBinary(parent) && parent.operator === "+" && parent.arguments.some((one) => isNumber(one) && one.value >= 1);
    const [inner = null] = part.arguments as Tree[];
    // −INT(−x) rounds up, and so does what was raised before.
    const turned = parent?.type === "UnaryExpression" && parent.operator === "-" && startsWithMinus(inner);
    const raised =
      isBinary(inner) && inner.operator === "+" && inner.arguments.some((one) => isNumber(one) && one.value >= HALF);
    // B2=INT(B2) asks whether it's whole.
    const asked =
      isBinary(parent) && parent.operator === "=" && parent.arguments.some((one) => written(one) === written(inner));
    if (!addsOne && !turned && !raised && !asked) return part;
  }
  return undefined;
}

/** A part of a formula, wherever in it that is. */
const written = (tree: Tree) => JSON.stringify(tree, (key, value) => (key === "loc" ? undefined : value));

function isWholeRounding(call: CallExpression): boolean {
  const name = calledName(call);
  const digits = call.arguments[1] as Tree | undefined;
  const isWhole = digits === undefined || digits === null || (isNumber(digits) && digits.value === 0);
  if (name === "ROUND" || name === "ROUNDDOWN" || name === "TRUNC") return isWhole;
  return DOWN.has(name);
}

function startsWithMinus(tree: Tree): boolean {
  if (tree?.type === "UnaryExpression") return tree.operator === "-";
  return isBinary(tree) ? startsWithMinus(tree.arguments[0] ?? null) : isNumber(tree) && tree.value < 0;
}

function roundedUp(formula: string, call: CallExpression): string | undefined {
  const span = spanOf(formula, call);
  const [first, second] = call.arguments.map((one) => textOf(formula, one as Tree));
  if (!span || !first) return undefined;
  const name = calledName(call);
  const up = name.startsWith("FLOOR")
    ? `CEILING(${first},${second || "1"})`
    : name === "QUOTIENT"
      ? `ROUNDUP((${first})/(${second}),0)`
      : `ROUNDUP(${first},0)`;
  return formula.slice(0, span[0]) + up + formula.slice(span[1]);
}
