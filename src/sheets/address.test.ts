import { expect, test } from "vitest";
import { columnLetters } from "./address";

test.each([
  [0, "A"],
  [25, "Z"],
  [26, "AA"],
  [51, "AZ"],
  [52, "BA"],
  [701, "ZZ"],
  [702, "AAA"],
  [16_383, "XFD"],
])("column %d, counted from 0, is %s", (column, letters) => {
  expect(columnLetters(column)).toBe(letters);
});
