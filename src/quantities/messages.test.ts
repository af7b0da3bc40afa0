import { expect, test } from "vitest";
import { messages, quoted } from "./messages";

test.each<[unknown, string]>([
  ["seven", "“seven”"],
  ["x".repeat(40), `“${"x".repeat(40)}”`],
  ["x".repeat(41), `“${"x".repeat(39)}…”`],
  // Signs outside the first 65,536 take two units each; the cut leaves no half of one.
  [`${"x".repeat(38)}🪨🪨🪨`, `“${"x".repeat(38)}…”`],
  [`🪨${"x".repeat(40)}`, `“🪨${"x".repeat(37)}…”`],
  [7.5, "7.5"],
  [7n, "7"],
  [true, "TRUE"],
  [false, "FALSE"],
  [undefined, "a blank"],
  [null, "a blank"],
  [[1, 2], "a range of cells"],
  [{}, "a value of another kind"],
])("what arrived as %o is quoted as %s", (arrived, text) => {
  expect(quoted(arrived)).toBe(text);
});

test("a limit is told where there is one, and one of something is told as one", () => {
  expect(messages.notWhole("count", 1.5, 4)).toMatch(/Type a whole number, 4 or less\.$/);
  expect(messages.notWhole("count", 1.5, Number.POSITIVE_INFINITY)).toMatch(/Type a whole number\.$/);
  expect(messages.shareTooLarge("waste", 1, 1)).toMatch(/must be under 1\./);
  expect(messages.shareTooLarge("markup", 3, 2)).toMatch(/must be 2 or less\./);
  expect(messages.notPairs("points", 1)).toMatch(/has 1 column\./);
  expect(messages.notPairs("points", 3)).toMatch(/has 3 columns\./);
  expect(messages.notCutOuts("cut_outs", 1)).toMatch(/has 1 column\./);
  expect(messages.notCutOuts("cut_outs", 2)).toMatch(/has 2 columns\./);
  expect(messages.tooFewPoints(1, 3)).toMatch(/1 different point\./);
  expect(messages.negative("edge", -1)).toMatch(/Type 0 or more\.$/);
  expect(messages.negative("edge", -1, true)).toMatch(/Type more than 0\.$/);
  expect(messages.radiusTooLarge(Number.POSITIVE_INFINITY, 1 / 3)).toMatch(/1\.79769e\+308 ft.* 0\.333333 ft/);
});
