import { expect, test } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { blankForm } from "../../quantities/bed/form";
import { ownTerms } from "./ownTerms";

const bed = (name: string, typed = {}) =>
  foundBed({ ...blankForm(), name, typed: { length: "20", width: "5", ...typed } }, 1);

test("beds on the same terms have nothing to say about them", () => {
  expect(ownTerms([bed("Front"), bed("Back"), bed("Side", { stone: "pea gravel" })])).toEqual([]);
});

test("a setting of a later bed that the job doesn't take is named with the one it takes", () => {
  const own = { overhead: "12%", minimumCharge: "650", truckYards: "9" };
  expect(ownTerms([bed("Front"), bed("Back", own)])).toEqual([
    "Back has Overhead on cost 12.0%. The job takes 10.0% from Front.",
    "Back has Minimum charge $650.00. The job takes $400.00 from Front.",
    "Back has Haul-off truck size 9 cu yd. The job takes 5 cu yd from Front.",
  ]);
});

test("a unit cost that the job has once is named where a bed has another", () => {
  const back = bed("Back");
  const lines = back.block.lines.map((line) => (line.key === "dump" ? { ...line, unitCost: 61 } : line));
  expect(ownTerms([bed("Front"), { ...back, block: { ...back.block, lines } }])).toEqual([
    "Back has Dump fee, unit cost $61.00. The job takes $30.00 from Front.",
  ]);
});

test("a markup typed on a bed's own line is named, on the first bed, too", () => {
  const front = bed("Front");
  const lines = front.block.lines.map((line) => (line.key === "stoneLine" ? { ...line, typedMarkup: 0.5 } : line));
  expect(ownTerms([{ ...front, block: { ...front.block, lines } }, bed("Back")])).toEqual([
    "Front has a markup of 50.0% typed on its line Stone. Type it on the job's line, too.",
  ]);
});
