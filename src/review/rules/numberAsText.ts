import type { Cell } from "../book";
import { callAround, type Use, usesOf } from "../formula/uses";
import { knownFunction } from "../knowledge";
import type { Study } from "../study";
import { list, localAddress, nameOf } from "../words";
import { change, type Observation, type Rule } from "./rule";

const PLAIN = /^[-+]?\$?\d{1,3}(,\d{3})+(\.\d+)?\s?%?$|^[-+]?\$?(\d+\.?\d*|\.\d+)\s?%?$/;
const LOOKS_UP = /^(V|H|X)LOOKUP$|^X?MATCH$|^INDEX$|^IF$|^COUNTA$|^CONCAT|^TEXT|^ROWS$|^COLUMNS$|^IS[A-Z]+$/;

export const numberAsText: Rule = {
  id: "number-as-text",
  title: "A number is stored as text",
  level: "slip",
  rank: 40,
  matters: "Sums pass over it without a word, so that it looks charged and is not.",
  covers: ["typed-over"],
  *look(study) {
    for (const grid of study.book.grids) {
      if (!study.isChecked(grid.index)) continue;
      for (let row = grid.top; row <= grid.bottom; row++) {
        if (row % 200 === 0) yield undefined;
        for (let column = grid.left; column <= grid.right; column++) {
          if (!grid.isTypedText(row, column)) continue;
          const number = readNumber(String(grid.value(row, column)));
          if (number === undefined) continue;
          const seen = observe(study, { sheet: grid.index, row, column }, number);
          if (seen) yield seen;
        }
      }
    }
  },
};

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

type Reading = "passed over" | "taken as a number" | "taken as text";

function observe(study: Study, cell: Cell, number: number): Observation | undefined {
  const { book } = study;
  const readers = study.readers.of(cell);
  const readings = readers.map(({ pattern, reference, target }) => {
    const use = usesOf(pattern).find((one) => one.reference === reference);
    return use ? readingOf(study, use, target.rows * target.columns > 1) : "taken as text";
  });
  const passed = readers.filter((_, place) => readings[place] === "passed over");
  const isOutlier = study.isOutlier(cell);
  if (
    passed.length === 0 &&
    !isOutlier &&
    !(readings.includes("taken as a number") && !readings.includes("taken as text"))
  ) {
    return undefined;
  }
  const grid = book.grids[cell.sheet]!;
  const text = String(grid.value(cell.row, cell.column)).trim();
  const over =
    passed.length > 0
      ? ` ${list(passed.map((reader) => localAddress(reader)))} pass${passed.length === 1 ? "es" : ""} over it.`
      : "";
  return {
    cell,
    group: `${cell.sheet}:${cell.column}`,
    about: text,
    seen: `${localAddress(cell)} (${nameOf(book, cell)}) holds the text “${text}”, not the number.${over}`,
    todo: "Make it a number.",
    ...(passed.length === 0 &&
      !isOutlier && {
        level: "odd",
        rank: 15,
        matters: "The host reads it as a number here, but sums would pass over it.",
      }),
    fix: [change(study, cell, number, grid.format(cell.row, cell.column) === "@" ? "General" : undefined)],
  };
}

/** How a formula takes a text that looks like a number. */
function readingOf(study: Study, use: Use, isRange: boolean): Reading {
  const call = callAround(use);
  if (!call)
    return use.around.length > 0 &&
      !use.around.some((part) => part?.type === "BinaryExpression" && part.operator === "&")
      ? "taken as a number"
      : "taken as text";
  // Our own functions read numbers from text as they read tape text.
  if (knownFunction(study.knowledge, call.name)) return "taken as text";
  if (LOOKS_UP.test(call.name)) return "taken as text";
  return isRange || call.name === "SUM" || call.name === "AVERAGE" || call.name === "MAX" || call.name === "MIN"
    ? "passed over"
    : "taken as a number";
}
