import { expect, test } from "vitest";
import { callFunction } from "../../test/callFunction";
import { factsOf, knowledge } from "../../test/reviewWorkbook";
import { reviewAtOnce } from "./review";

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
