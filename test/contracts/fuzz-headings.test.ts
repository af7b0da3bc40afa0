import { describe, expect, test } from "vitest";
import { fitList } from "../../src/sheets/jobRows/fit";
import type { CellContent } from "../../src/sheets/jobRows/listSheet";
import { Chance } from "../fuzz/random";
import { CORNER, fillOf, listSheet } from "../listSheets";

/*
 * Sheets of any headings over any values: a list is found in them or none is, every column is told what it is taken for
 * and why, and what would be written goes to its own rows, beside what is typed.
 */
const SHEETS = 1500;
const HEADINGS = [
  ..."Job|Bed|Name|Length (ft)|Length|Width (ft)|Width in|Depth (in)|Depth|Stone|Soil|Waste|Tons|Area|Area (sq ft)|Cu yd".split(
    "|",
  ),
  ..."LÄNGE|Länge (m)|L|W|D|__proto__|constructor|=A1|ft|in|(ft)|Total|#|Length (cows)|Waste %|Price|Radius|Diameter|Date".split(
    "|",
  ),
  "Length\n(ft)",
  "  Length  ",
  "Length ".repeat(60),
  "",
];
const VALUES: readonly CellContent[] = [
  ...[0, 1, -1, 20, 4.5, 0.08, 8, 1e9, 1e-9, 46_000],
  ...["20'", `18' 6"`, "9,8 m", "river rock", "pea gravel", "clay", "6-8", "yes", "8%", "#N/A", "#REF!", "=A1*2"],
  ...["Front", "Total", "=SUM(A1:A9)", "\u202e12", "\u0000", "x".repeat(300), true, false, ""],
];

const anySheet = (chance: Chance) => {
  const columns = chance.whole(1, 12);
  const row = (make: () => CellContent) => Array.from({ length: columns }, make);
  const above = chance.list(0, 2, () => row(() => (chance.onceIn(3) ? chance.oneOf(HEADINGS) : "")));
  const headings = row(() => chance.oneOf(HEADINGS));
  const units = chance.onceIn(4) ? [row(() => chance.oneOf(["ft", "in", "tons", "%", ""]))] : [];
  const below = chance.list(0, 8, () => row(() => chance.oneOf(VALUES)));
  return listSheet([...above, headings, ...units, ...below], {
    hiddenRows: chance.list(0, 2, () => chance.whole(0, 8)),
    merged: chance.onceIn(5) ? [{ row: 0, column: 0, rows: 1, columns: 2 }] : [],
  });
};

describe("whatever stands over columns, they are told apart or asked about", () => {
  test("in sheets of any headings and values", () => {
    const chance = new Chance(21);
    const faults = new Set<string>();
    const came = { found: 0, none: 0, proposed: 0 };
    for (let count = 0; count < SHEETS; count++) {
      const sheet = anySheet(chance);
      const told = JSON.stringify(sheet.formulas).slice(0, 400);
      try {
        const fit = fitList(sheet, CORNER);
        if (!fit) {
          came.none++;
          continue;
        }
        came.found++;
        for (const { role, sure, why } of fit.columns) {
          if (why.trim() === "" || /undefined|NaN|\[object/.test(why)) faults.add(`It says “${why}”: ${told}`);
          if (role === undefined && sure === "sure") faults.add(`It is sure of nothing: ${told}`);
        }
        const roles = fit.columns.flatMap(({ role, sure }) => (role && sure === "sure" ? [role] : []));
        if (new Set(roles).size < roles.length) faults.add(`One role for two columns, and sure: ${told}`);
        const { changes } = fillOf(fit);
        if (changes.length > 0) came.proposed++;
        for (const { row, column, before } of changes) {
          const there = sheet.formulas[row - sheet.row]?.[column - sheet.column] ?? "";
          if (String(there) !== String(before)) faults.add(`It takes ${row},${column} for what it is not: ${told}`);
          if (there !== "") faults.add(`It writes over ${row},${column}, which nobody ticked: ${told}`);
          if (row < fit.heading.row || row > fit.rows.last) faults.add(`It writes to row ${row}, outside: ${told}`);
        }
      } catch (error) {
        faults.add(`${String(error)}: ${told}`);
      }
    }
    expect([...faults].slice(0, 5)).toEqual([]);
    expect(came.found).toBeGreaterThan(SHEETS / 10);
    expect(came.none).toBeGreaterThan(20);
    expect(came.proposed).toBeGreaterThan(20);
  });
});
