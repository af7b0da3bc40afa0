import { expect, test } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { blankForm } from "../../quantities/bed/form";
import { samplesIn } from "./samplePrices";

function bed(name: string, samples: readonly string[]) {
  const found = foundBed({ ...blankForm(), name, typed: { length: "20", width: "5" } }, 1);
  return { ...found, block: { ...found.block, samples } };
}

test("sample prices are named with their beds, in one line", () => {
  expect(samplesIn([bed("Front", ["Stone"]), bed("Side", []), bed("", ["Stone", "Pins"])])).toBe(
    "Sample prices: Front, Beds!A1 (Stone, Pins).",
  );
  expect(samplesIn([bed("Front", ["A", "B", "C", "D", "E", "F"])])).toBe(
    "Sample prices: Front (A, B, C, D, and 2 more).",
  );
  const many = ["1", "2", "3", "4", "5"].map((name) => bed(name, ["Stone"]));
  expect(samplesIn(many)).toBe("Sample prices: 5 beds (Stone).");
});

test("nothing is said where no price is a sample", () => {
  expect(samplesIn([bed("Front", []), foundBed({ ...blankForm(), typed: { length: "20", width: "5" } }, 1)])).toBe(
    undefined,
  );
});
