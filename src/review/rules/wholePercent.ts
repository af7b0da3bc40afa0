import type { Role } from "../../headings/roles";
import { units } from "../../headings/units";
import { must } from "../../quantities/must";
import type { Cell } from "../book";
import { type Use, usesOf, usesThrough } from "../formula/readers";
import { calledName, isBinary, isCall, isNumber } from "../formula/tree";
import { knownFunction } from "../knowledge";
import type { Study } from "../study";
import { percent, short } from "../words";
import { change, eachCell, type Observation, type Rule } from "./rule";

const SHARES = new Set<Role>(["margin", "markup", "overhead", "tax", "waste"]);
/** Waste and margin have to stay under the whole; a markup may be twice the cost. */
const MOST: Partial<Record<Role, number>> = { waste: 1, margin: 1 };
export const MOST_OTHERWISE = 2;

export const wholePercent: Rule = {
  id: "whole-percent",
  title: "A percent is typed as 10 instead of 10%",
  level: "error",
  rank: 100,
  matters: "It counts as ten times the whole, not a tenth.",
  covers: ["typed-over"],
  look: (study) =>
    eachCell(study, (cell, grid) => {
      const value = grid.isTypedNumber(cell.row, cell.column) ? must(grid.number(cell.row, cell.column)) : 0;
      return value >= 1 && value <= 100 ? observe(study, cell, value) : undefined;
    }),
};

function observe(study: Study, cell: Cell, value: number): Observation | undefined {
  const { book } = study;
  const grid = must(book.grids[cell.sheet]);
  const { role, unit, roleFrom } = must(book.places[cell.sheet]).describe(cell.row, cell.column);
  const looksLikeShare = (role !== undefined && SHARES.has(role)) || (unit && units[unit].measures === "share");
  if (!looksLikeShare && !isReadAsShare(study, cell)) return undefined;
  const most = (role && MOST[role]) ?? MOST_OTHERWISE;
  // A whole 1 in a share that may be more than the whole is no sign of anything.
  if (value < most || (value === most && most > 1)) return undefined;
  const usages = usesThrough(study, cell).flatMap((use) => (use.inRange ? [] : [usageOf(study, use)]));
  if (usages.includes("divided by 100")) return undefined;
  // 1.08 times the stone is how some write 8 % of waste.
  const isShare =
    (unit && units[unit].measures === "share") ||
    roleFrom === "heading" ||
    must(book.places[cell.sheet]).standsAlone(cell.row);
  const isUsed =
    usages.includes("share") || (looksLikeShare && isShare && value >= MOST_OTHERWISE && usages.includes("factor"));
  const isShown =
    grid.format(cell.row, cell.column).includes("%") && usages.length === 0 && looksLikeShare && value > MOST_OTHERWISE;
  if (!isUsed && !isShown) return undefined;
  return {
    cell,
    group: `${cell.sheet}:${cell.column}:${role ?? ""}`,
    about: String(value),
    seen: `holds ${short(value)}, which is ${percent(value)}.`,
    todo: `Type ${short(value)}% (or ${short(value / 100)}).`,
    fix: [change(study, cell, Number((value / 100).toPrecision(12)))],
  };
}

/** Whether the formulas that read a cell are known to take it as a share; asked of patterns, not of cells. */
function isReadAsShare(study: Study, cell: Cell): boolean {
  const asShare = study.once("patterns that take shares", () => {
    const found = new Set<string>();
    for (const pattern of study.book.patterns) {
      for (const use of usesOf(pattern))
        if (usageOf(study, use) === "share") found.add(`${pattern.id}:${use.reference.start}`);
    }
    return found;
  });
  return study.readers.mayBeReadBy(cell, ({ id }, { start }) => asShare.has(`${id}:${start}`));
}

type Usage = "divided by 100" | "share" | "factor" | "other";

/** How a formula uses a cell: as a share that is added to or taken from the whole, as a factor, or otherwise. */
function usageOf(study: Study, { tree, around }: Use): Usage {
  const parent = around.at(-1) ?? null;
  if (parent?.type === "UnaryExpression" && parent.operator === "%") return "divided by 100";
  if (isCall(parent)) {
    const argument = knownFunction(study.knowledge, calledName(parent))?.arguments[
      parent.arguments.indexOf(tree as never)
    ];
    return argument?.kind === "share" ? "share" : "other";
  }
  if (!isBinary(parent)) return "other";
  const other = parent.arguments.find((one) => one !== tree);
  if (isNumber(other ?? null)) {
    const number = (other as { value: number }).value;
    if ((parent.operator === "/" && number === 100) || (parent.operator === "*" && number === 0.01))
      return "divided by 100";
    // As a factor: 1 is added to a count of months, too.
    const outer = around.at(-2) ?? null;
    const isFactor = isBinary(outer) && (outer.operator === "*" || outer.operator === "/");
    if ((parent.operator === "+" || parent.operator === "-") && number === 1) return isFactor ? "share" : "other";
  }
  return parent.operator === "*" ? "factor" : "other";
}
