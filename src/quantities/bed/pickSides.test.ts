import { describe, expect, test } from "vitest";
import { type BedForm, blankForm, shapeFieldsOf } from "./form";
import { type Fills, pickedCorners, pickedSideOf, pickedSides } from "./pickSides";
import { readForm } from "./read";

const rectangle = (typed: BedForm["typed"] = {}): BedForm => ({
  ...blankForm(),
  typed: { length: "18", width: "5", ...typed },
});
const filled = (form: BedForm, fills: Fills | undefined): BedForm => ({
  ...form,
  typed: Object.fromEntries(
    Object.entries({ ...form.typed, ...fills }).flatMap(([key, text]) => (text === undefined ? [] : [[key, text]])),
  ),
});
const on = (picks: readonly { label: string; isOn: boolean }[]) =>
  picks.flatMap(({ label, isOn }) => (isOn ? [label] : []));
const sideOf = (form: BedForm, label: string) => pickedSides(form).find((one) => one.label === label)?.fills;
const cornerOf = (form: BedForm, label: string) => pickedCorners(form).find((one) => one.label === label)?.fills;

describe("the sides of a rectangle", () => {
  test("have edging in front and at both ends until one is picked", () => {
    expect(on(pickedSides(rectangle()))).toEqual(["Right end", "Front", "Left end"]);
  });

  test("are picked one by one, and stay so whatever is measured after", () => {
    const bare = ["Front", "Left end", "Right end"].reduce(
      (form, label) => filled(form, sideOf(form, label)),
      rectangle(),
    );
    expect(on(pickedSides(bare))).toEqual([]);
    const house = filled(bare, sideOf(bare, "House"));
    expect(on(pickedSides(house))).toEqual(["House"]);
    expect(on(pickedSides(filled(house, { length: "4" })))).toEqual(["House"]);
  });

  test("of an earlier bed are those that its counts stood for, until one is picked", () => {
    const counted = rectangle({ longBorders: "2", shortBorders: "0" });
    expect(on(pickedSides(counted))).toEqual(["House", "Front"]);
    expect(shapeFieldsOf(counted)).toContain("longBorders");
    const picked = filled(counted, sideOf(counted, "Front"));
    expect(on(pickedSides(picked))).toEqual(["House"]);
    expect(shapeFieldsOf(picked)).toContain("houseEdging");
    expect(shapeFieldsOf(picked)).not.toContain("longBorders");
  });

  test("are 1 or 0 on the sheet, and anything else is refused with its side", () => {
    const { problems } = readForm(rectangle({ frontEdging: "2" }));
    expect(problems.map(({ place }) => place)).toEqual(["frontEdging"]);
    expect(problems[0]?.message).toContain("Edging, front");
    expect(problems[0]?.message).toContain("1 or less");
  });
});

describe("the corners of a rectangle", () => {
  test("are a count as far as they are taken from the front, and named where they aren't", () => {
    const one = filled(rectangle(), cornerOf(rectangle(), "Front left corner"));
    expect(one.typed).toEqual({ length: "18", width: "5", roundedCorners: "1" });
    const two = filled(one, cornerOf(one, "Back right corner"));
    expect(on(pickedCorners(two))).toEqual(["Front left corner", "Back right corner"]);
    expect(two.typed.roundedCorners).toBeUndefined();
    expect(readForm(two).bed?.numbers.roundedCorners).toBe(2);
    const back = filled(two, cornerOf(two, "Front left corner"));
    expect(on(pickedCorners(back))).toEqual(["Back right corner"]);
    const none = filled(back, cornerOf(back, "Back right corner"));
    expect(none.typed.roundedCorners).toBe("0");
    expect(shapeFieldsOf(none)).toContain("roundedCorners");
  });
});

test("the sides of a curved bed are found from its plan, where an end of no width is no side", () => {
  // Base line 1, last end 2, then the outer edge's two chords, and the first end.
  expect([1, 2, 3, 4, 5].map((side) => pickedSideOf("widths", [3, 5, 4], side))).toEqual([0, 1, 2, 2, 3]);
  expect([1, 2, 3].map((side) => pickedSideOf("widths", [0, 5, 0], side))).toEqual([0, 2, 2]);
});
