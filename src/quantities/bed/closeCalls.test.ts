import { expect, test } from "vitest";
import { closeCalls, HARDLY_USED, LEAST_SAVING } from "./closeCalls";
import { estimateBed } from "./estimate";
import type { FieldKey } from "./fields";
import { blankForm } from "./form";
import { readForm } from "./read";

/** What is said of a bed along a wall, with edging along its front and both ends. */
function callsOf(typed: Partial<Record<FieldKey, string>>) {
  const { bed } = readForm({ ...blankForm(), typed: { length: "20", width: "6", ...typed } });
  if (!bed) throw new Error("This form can't be read.");
  return closeCalls(bed, estimateBed(bed));
}
const about = (word: string, typed: Partial<Record<FieldKey, string>>) =>
  callsOf(typed).find(({ text }) => text.includes(word));

// By hand: three 8 ft pieces that lap 2 in reach 3 × 8' − 2 × 2" = 23' 8".
test("a piece that is bought for 3 in. is told, with how far the others reach", () => {
  const run = { length: `15' 11"`, width: "4", pieceCost: "31" };
  expect(about("pieces", run)).toMatchObject({
    text: `The last of 4 pieces covers only 3": the other 3 reach 23' 8" of 23' 11".`,
    saves: 31,
  });
  expect(about("pieces", { ...run, length: `15' 8"` })).toBeUndefined();
  expect(about("pieces", { ...run, length: "17" }), "16 in. of an 8 ft piece is used").toBeUndefined();
});

test("a run that no lap shortens is measured by its pieces alone, and pavers are left out", () => {
  const timber = { edgingKind: "timber", length: "16.5", width: "4", pieceLength: "8" };
  expect(about("timbers", timber)?.text).toBe(`The last of 4 timbers covers only 6": the other 3 reach 24' of 24' 6".`);
  expect(
    callsOf({ ...timber, edgingKind: "pavers" })
      .map(({ text }) => text)
      .join(),
  ).not.toContain("pavers");
});

// By hand: two strips of 27 ft off rolls of 50 ft leave 4 ft, and a lap of 12 in., for a second roll.
test("a roll that is opened for a few feet is told", () => {
  expect(about("rolls", { length: "27", width: "11" })).toMatchObject({
    text: "The last of 2 fabric rolls is opened for only 5'.",
    saves: 64,
  });
  expect(about("rolls", { length: "30", width: "11" })).toBeUndefined();
});

test("a box that is opened for a few pins is told, and one whose price is little isn't", () => {
  const pins = estimateBed(readForm({ ...blankForm(), typed: { length: "20", width: "6" } }).bed!).amounts.pins;
  expect(about("pins", { pinsPerBox: String(pins - 3) })).toMatchObject({
    text: "The last of 2 boxes of pins is opened for only 3 pins.",
    saves: 18,
  });
  expect(about("pins", { pinsPerBox: String(pins - 3), pinBoxCost: String(LEAST_SAVING - 0.01) })).toBeUndefined();
  expect(about("pins", { pinsPerBox: String(Math.round(pins / (1 + 2 * HARDLY_USED))) })).toBeUndefined();
});

// By hand: 10 × 12 ft scraped 2.5 in. is 0.926 bank cu yd, and 0.052 more for a trench 4 × 1.5 in.
test("a load that hauls off a few shovels is told, by weight where that fills the truck first", () => {
  const { spoilYards } = estimateBed(readForm({ ...blankForm(), typed: { length: "20", width: "6" } }).bed!).amounts;
  const byVolume = { truckYards: (spoilYards - 0.05).toFixed(3), truckPayload: "99" };
  expect(about("hauls off", byVolume)).toMatchObject({
    text: "The last of 2 loads hauls off only 0.05 cu yd.",
    saves: 75,
  });
  const byWeight = { truckYards: "99", truckPayload: ((spoilYards - 0.1) * 1.5).toFixed(3) };
  expect(about("hauls off", byWeight)?.text).toBe("The last of 2 loads hauls off only 0.1 cu yd.");
});

test("half a ton that only tops up the waste is told, and never one that would leave less than half of it", () => {
  const bed = readForm({ ...blankForm(), typed: { length: "20", width: "6" } }).bed!;
  const net = estimateBed(bed).amounts.stoneTons / 1.08;
  const enough = { orderStep: ((net * 1.06) / 3).toFixed(4) };
  expect(about("waste", enough)?.text).toMatch(
    /^\d\.\d+ tons would still leave [56]% for waste and low spots, in place of 8%\.$/,
  );
  expect(about("waste", { orderStep: ((net * 1.03) / 3).toFixed(4) })).toBeUndefined();
});

test("the dearest comes first, and nothing that saves little is there", () => {
  const calls = callsOf({ length: "27", width: "11", pinsPerBox: "10", pinBoxCost: "500" });
  expect(calls.map(({ saves }) => saves)).toEqual([...calls.map(({ saves }) => saves)].sort((a, b) => b - a));
  expect(Math.min(...calls.map(({ saves }) => saves))).toBeGreaterThanOrEqual(LEAST_SAVING);
});
