import { expect, test } from "vitest";
import { toCents } from "./cents";

test.each([
  [0, 0],
  [0.5, 50],
  [12.344, 1234],
  [12.345, 1235],
  [1.005, 101], // 100.49999999999999 in binary
  [8.575, 858], // 857.4999999999999 in binary
  [1_218.05, 121_805],
])("%f comes to %d cents", (amount, cents) => {
  expect(toCents(amount)).toBe(cents);
});
