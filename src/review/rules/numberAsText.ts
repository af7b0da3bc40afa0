import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import type { Cell } from "../book";
import { type CellUse, callAround, isHandedOn, usesThrough } from "../formula/readers";
import { isBinary } from "../formula/tree";
import { knownFunction } from "../knowledge";
import type { SheetGrid } from "../sheet/grid";
import type { Study } from "../study";
import { list } from "../words";
import { change, eachCell, type Observation, type Rule } from "./rule";

const PLAIN = /^[-+]?\$?\d{1,3}(,\d{3})+(\.\d+)?\s?%?$|^[-+]?\$?(\d+\.?\d*|\.\d+)\s?%?$/;
/** Given a text in a cell, these go on without it. */
const TAKES_NUMBERS = new Set(
  "SUM AVERAGE MAX MIN SUBTOTAL AGGREGATE PRODUCT SUMPRODUCT COUNT MEDIAN LARGE SMALL STDEV STDEV.S STDEV.P VAR".split(
    " ",
  ),
);
/** So do these, of the range that they add up; in the others they look for what a text says. */
const ADDS_UP: Readonly<Record<string, number>> = { SUMIF: 2, AVERAGEIF: 2, SUMIFS: 0, AVERAGEIFS: 0 };
/** These ask what a cell is, and take nothing from it. */
const LOOKS_AT = new Set(["COUNTA", "ROWS", "COLUMNS", "ISBLANK", "ISNUMBER", "ISTEXT", "ISNONTEXT", "ISERROR"]);
/** These take a text as it is. */
const TAKES_TEXT = new Set("IF VLOOKUP HLOOKUP XLOOKUP MATCH XMATCH INDEX CONCAT CONCATENATE TEXT TEXTJOIN".split(" "));

export const numberAsText: Rule = {
  id: "number-as-text",
  title: "A number is stored as text",
  level: "error",
  rank: 40,
  matters: "Totals skip it, so it looks charged but isn't.",
  look: (study) =>
    eachCell(study, (cell, grid) => {
      if (!grid.isTypedText(cell.row, cell.column)) return undefined;
      const number = readNumber(String(grid.value(cell.row, cell.column)));
      return number === undefined || isNumbering(grid, cell) ? undefined : observe(study, cell, number);
    }),
};

/** How far the number before or behind may be, past lines without one. */
const REACH = 12;

/** `1.3` below `1.2`, or above `1.4`, is the number of a line. */
function isNumbering(grid: SheetGrid, { row, column }: Cell): boolean {
  // `1.` in front of a name.
  if (/^\d+\.$/.test(String(grid.value(row, column)).trim()) && grid.isTypedText(row, column + 1)) return true;
  const [, part, last] = /^(\d+\.(?:\d+\.)*)(\d+)$/.exec(String(grid.value(row, column)).trim()) ?? [];
  if (part === undefined) return false;
  const beside = new Set([`${part}${Number(last) - 1}`, `${part}${Number(last) + 1}`]);
  for (let by = -REACH; by <= REACH; by++)
    if (grid.isTypedText(row + by, column) && beside.has(String(grid.value(row + by, column)).trim())) return true;
  return false;
}

/** The number that a text is, if it is nothing else; a text such as 007 is a mark and no number. */
export function readNumber(text: string): number | undefined {
  const plain = text
    .replace(/^'/, "")
    .replaceAll(/[\s\u00a0]+/g, " ")
    .trim();
  if (!PLAIN.test(plain) || /^0\d/.test(plain)) return undefined;
  const number = Number(plain.replaceAll(/[$,%\s]/g, ""));
  if (!Number.isFinite(number)) return undefined;
  return plain.endsWith("%") ? Number((number / 100).toPrecision(12)) : number;
}

type Reading = "passed over" | "taken as a number" | "taken as text" | "looked at";

function observe(study: Study, cell: Cell, number: number): Observation | undefined {
  const { book } = study;
  const uses = usesThrough(study, cell).filter((use) => !isHandedOn(use));
  const readings = uses.map((use) => readingOf(study, use));
  const passed = uses.filter((_, place) => readings[place] === "passed over").map(({ reader }) => reader);
  const isOutlier = study.isOutlier(cell);
  const isTakenAsNumber = readings.includes("taken as a number") && !readings.includes("taken as text");
  if (passed.length === 0 && !isOutlier && !isTakenAsNumber) return undefined;
  const grid = must(book.grids[cell.sheet]);
  const text = String(grid.value(cell.row, cell.column)).trim();
  const over =
    passed.length > 0
      ? ` ${list(passed.map((reader) => areaAddress(reader)))} skip${passed.length === 1 ? "s" : ""} it.`
      : "";
  return {
    cell,
    group: `${cell.sheet}:${cell.column}`,
    about: text,
    seen: `holds the text “${text}”, not a number.${over}`,
    todo: "Change it to a number.",
    ...(passed.length === 0 &&
      !isOutlier && {
        level: "warning",
        rank: 15,
        matters: "It works as a number here, but totals would skip it.",
      }),
    fix: [change(study, cell, number, grid.format(cell.row, cell.column) === "@" ? "General" : undefined)],
  };
}

/** How a formula takes a text that looks like a number. */
function readingOf(study: Study, use: CellUse): Reading {
  const call = callAround(use);
  if (!call)
    return use.around.some((part) => isBinary(part) && part.operator === "&") ? "taken as text" : "taken as a number";
  // Our own functions read numbers from text as they read tape text.
  if (knownFunction(study.knowledge, call.name)) return "taken as text";
  if (LOOKS_AT.has(call.name)) return "looked at";
  if (TAKES_TEXT.has(call.name))
    return call.name === "IF" && isBinary(use.around.at(-1) ?? null) ? "taken as a number" : "taken as text";
  if (TAKES_NUMBERS.has(call.name) || ADDS_UP[call.name] === call.argument) return "passed over";
  // Most functions find a number in a text, too; what the rest make of a range isn't known here.
  return use.inRange ? "looked at" : "taken as a number";
}
