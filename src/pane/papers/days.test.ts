import { expect, test } from "vitest";
import { Problem } from "../../quantities/problem";
import { DAYS, marksDays, noticeDays, validDays } from "./days";
import { startingDetails } from "./details";

test.each(["1", " 30 ", "365"])("a price may hold for %s days", (text) => {
  expect(validDays({ ...startingDetails, validDays: text })).toBe(Number(text));
});

test("a price that holds for no days that were typed says nothing of them", () => {
  expect(validDays({ ...startingDetails, validDays: " " })).toBeUndefined();
});

test.each([
  ["-30", /: -30 is less than 0\. Type more than 0/],
  ["0", /Type more than 0/],
  ["30.5", /can't use 30\.5\. Type a whole number, 365 or less/],
  ["20270115", /can't use 20270115\. Type a whole number, 365 or less/],
  ["99999999", /can't use 99999999\. Type a whole number, 365 or less/],
  ["a while", /can't use “a while”\. Type a whole number, 365 or less/],
])("a price that holds for %s days is refused in words", (text, words) => {
  const refused = problemOf(() => validDays({ ...startingDetails, validDays: text }));
  expect(refused.message).toMatch(words);
  expect(refused.argument).toBe(DAYS.valid);
});

test.each([
  ["", /is blank/],
  ["-2", /less than 0/],
  ["400", /366 or less/],
])("a notice of %j days is refused at its own field", (text, words) => {
  const refused = problemOf(() => noticeDays({ ...startingDetails, noticeDays: text }));
  expect(refused.message).toMatch(words);
  expect(refused.argument).toBe(DAYS.notice);
});

test("marks that are good for 20270115 days are refused at their own field", () => {
  const refused = problemOf(() => marksDays({ ...startingDetails, marksDays: "20270115" }));
  expect(refused.argument).toBe(DAYS.marks);
});

function problemOf(action: () => unknown): Problem {
  try {
    action();
  } catch (error) {
    if (error instanceof Problem) return error;
  }
  throw new Error("It was not refused.");
}
