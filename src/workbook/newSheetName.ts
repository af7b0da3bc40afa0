import { cut, withoutUnprintable } from "../sheets/printable";

const SHEET_NAME_LENGTH = 31;

/** A name the host accepts and no sheet has: `Front walk`, `Front walk 2`, … */
export function newSheetName(wanted: string, taken: readonly string[]): string {
  const plain =
    withoutUnprintable(wanted)
      .replace(/[[\]:*?/\\]/g, " ")
      .replace(/^'+|'+$/g, "")
      .replace(/\s+/g, " ")
      .trim() || "Estimate";
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? "" : ` ${number}`;
    const name = cut(plain, SHEET_NAME_LENGTH - ending.length) + ending;
    if (!used.has(name.toLowerCase())) return name;
  }
}
