import { describe, expect, test } from "vitest";
import { type BedForm, blankForm } from "../quantities/bed/form";
import { previewOf } from "./preview";

/**
 * A triangle with border along its first two sides, which meet 7 ft from one end. By hand: the joint of the pieces of
 * 8 ft is 7' 10" from there, and no other stake is within 3 in of the corner, so it gets one of its own.
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
const cornersOf = (form: BedForm) => previewOf(form).form.typed.corners;

describe("the preview of a form", () => {
  test("counts the border's corners in plan", () => {
    expect(cornersOf(corner)).toBe("1");
  });

  test("leaves the corners that were typed", () => {
    expect(cornersOf({ ...corner, typed: { corners: "5" } })).toBe("5");
  });

  test("leaves the corners of a rectangle to its own field", () => {
    expect(cornersOf({ ...blankForm(), typed: { length: "20", width: "5" } })).toBeUndefined();
  });

  test("says what can't be read, and gives no estimate", () => {
    const { estimate, problems } = previewOf({ ...blankForm(), typed: { length: "seven", width: "5" } });
    expect(estimate).toBeUndefined();
    expect(problems[0]).toMatchObject({ place: "length", message: expect.stringContaining("seven") });
  });
});
