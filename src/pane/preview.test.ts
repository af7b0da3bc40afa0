import { describe, expect, test } from "vitest";
import { type BedForm, blankForm } from "../quantities/bed/form";
import { previewOf } from "./preview";

/**
 * A triangle with border along its first two sides, which meet 7 ft from one end. By hand: the joint of the pieces of
 * 8 ft is 7' 10" from there, and no other stake is within 3 in of the corner, so it gets one of its own. The run starts
 * with the side of 7 ft: stakes 1' 11 1/2" apart up to the joint, then at the joint, 9' 11", and 12 ft.
 */
const corner: BedForm = {
  ...blankForm(),
  way: "points",
  points: [
    ["0", "0", "1"],
    ["5", "0", "1"],
    ["5", "7", ""],
  ],
};
describe("the preview of a form", () => {
  test("counts stakes at corners in plan", () => {
    expect(previewOf(corner).estimate?.amounts).toMatchObject({ cornerStakes: 1, stakes: 8, pieces: 2 });
  });

  test("says what can't be read, and gives no estimate", () => {
    const { estimate, problems } = previewOf({ ...blankForm(), typed: { length: "seven", width: "5" } });
    expect(estimate).toBeUndefined();
    expect(problems[0]).toMatchObject({ place: "length", message: expect.stringContaining("seven") });
  });
});
