import { describe, expect, test } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { type BedForm, blankForm } from "../../quantities/bed/form";
import { jobOf } from "./makePapers";
import { measuresOf } from "./measures";

const bed = (id: number, typed: BedForm["typed"]) =>
  foundBed({ ...blankForm(), name: `Bed ${id}`, typed: { length: "20", width: "5", ...typed } }, id);
const rateOf = (...beds: ReturnType<typeof bed>[]) =>
  measuresOf(jobOf(beds)).find(({ measure }) => measure.key === "border")?.setThen;

describe("what is counted at the end of a job", () => {
  test("has the rate that all its beds were estimated by", () => {
    expect(rateOf(bed(1, { edgingRate: "14" }), bed(2, { edgingRate: "14" }))).toBe(14);
  });

  test("has no rate where the beds' rates differ", () => {
    expect(rateOf(bed(1, { edgingRate: "14" }), bed(2, { edgingRate: "16" }))).toBeUndefined();
  });

  test("leaves out what nothing was planned of", () => {
    const keysOf = (typed: BedForm["typed"]) => measuresOf(jobOf([bed(1, typed)])).map(({ measure }) => measure.key);
    expect(keysOf({})).toContain("border");
    expect(keysOf({ longBorders: "0", shortBorders: "0" })).not.toContain("border");
  });
});
