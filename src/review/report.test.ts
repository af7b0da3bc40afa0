import { expect, test } from "vitest";
import { factsOf, knowledge } from "../../test/reviewWorkbook";
import { dismiss, sortDismissed } from "./dismissals";
import { reportRows, summaryOf } from "./report";
import { reviewAtOnce } from "./review";

const { findings, unchecked } = reviewAtOnce(
  factsOf({
    sheets: [
      {
        name: "Jobs",
        rows: [
          ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"],
          ["Walk", 10, 4, "=B2*C2"],
          ["Yard", 10, 4, 40],
          ["Patio", 10, 4, "=B4*C4"],
          ["Gate", 10, 4, "=B5*C5"],
          ["Total", "", "", "=SUM(D2:D4)"],
        ],
      },
    ],
  }),
  knowledge,
);

test("the report has a row for each finding, errors first, with its safe fix before and after", () => {
  const rows = reportRows(sortDismissed(findings, []), unchecked, "Jobs of March");
  expect(rows.slice(0, 3).map(({ kind, cells }) => [kind, cells[0]])).toEqual([
    ["title", "Sheet check: Jobs of March"],
    ["note", "2 errors."],
    ["heading", "Severity"],
  ]);
  expect(
    rows.filter(({ kind }) => kind === "finding").map(({ level, cells }) => [level, cells[1], cells.at(-1)]),
  ).toEqual([
    // 40 of 120 sq ft are left out; the typed area is right as it stands.
    ["error", "Jobs!D6", "Jobs!D6: =SUM(D2:D4) → =SUM(D2:D5)"],
    ["error", "Jobs!D3", "Jobs!D3: 40 → =B3*C3"],
  ]);
  expect(rows.at(-1)?.cells[0]).toBe("Whether what you typed is what was taped and agreed");
});

test("what was dismissed is below with its reason", () => {
  const sorted = sortDismissed(findings, [dismiss(findings[1]!, "round corner", "2026-03-02")]);
  expect(summaryOf(sorted)).toBe("1 error. 1 ignored.");
  const rows = reportRows(sorted, unchecked, "Jobs");
  expect(rows.find(({ cells }) => cells[0] === "Ignored" && cells[1] === "Jobs!D3")?.cells.slice(3)).toEqual([
    "round corner",
    "2026-03-02",
  ]);
});

test("a clean sheet is told it is clean", () => {
  expect(summaryOf({ open: [], dismissed: [], gone: [] })).toBe("Nothing found. What wasn't checked is below.");
});
