import { type RangeA1, stringifyA1Ref, toCol } from "@borgar/fx";

/** A range as formulas spell it, one cell as one. */
export function a1(range: RangeA1): string {
  const { top, left, bottom, right, $top, $left } = range;
  if (typeof top === "number" && typeof left === "number" && top === bottom && left === right) {
    return `${$left ? "$" : ""}${toCol(left)}${$top ? "$" : ""}${top + 1}`;
  }
  return stringifyA1Ref({ range });
}

/** What is before a reference to another sheet: `'Front yard'!`. */
export function prefix(sheetName: string): string {
  return stringifyA1Ref({ context: [sheetName], name: "_" }).slice(0, -1);
}
