import { expect, test } from "vitest";
import { callFunction } from "../../test/callFunction";
import { factsOf, knowledge } from "../../test/reviewWorkbook";
import type { Level } from "./finding";
import { reviewAtOnce } from "./review";
import type { Rule } from "./rules/rule";

test("a number typed over a formula is found, with the formula to put back", () => {
  const facts = factsOf({
    sheets: [
      {
        name: "Jobs",
        rows: [
          ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"],
          ["Front walk", 18, 5, "=B2*C2"],
          ["Side yard", 22, 4, "=B3*C3"],
          ["Patio", 12, 6, 72],
          ["Gate", 9, 3, "=B5*C5"],
          ["Back fence", 40, 2, "=B6*C6"],
          ["Total", "", "", "=SUM(D2:D6)"],
        ],
      },
    ],
  });
  const { findings } = reviewAtOnce(facts, knowledge, { call: callFunction });
  expect(findings.map(({ rule, where }) => `${rule} ${where}`)).toEqual(["typed-over Jobs!D4"]);
  expect(findings[0]!.fix).toEqual([{ sheet: "Jobs", row: 3, column: 3, before: 72, after: "=B4*C4" }]);
});

test("errors come first, then warnings, then questions, and in each the costliest", () => {
  const seen = (level: Level, rank: number, row: number): Rule => ({
    id: `${level}-${rank}`,
    title: "",
    level,
    rank,
    matters: "",
    *look() {
      yield { cell: { sheet: 0, row, column: 0 }, group: "", about: "", seen: "", todo: "" };
    },
  });
  const rules = [seen("question", 90, 0), seen("error", 5, 1), seen("warning", 99, 2), seen("error", 50, 3)];
  const facts = factsOf({ sheets: [{ name: "Jobs", rows: [["a"], ["b"], ["c"], ["d"]] }] });
  const { findings } = reviewAtOnce(facts, knowledge, { rules });
  expect(findings.map(({ rule }) => rule)).toEqual(["error-50", "error-5", "warning-99", "question-90"]);
});
