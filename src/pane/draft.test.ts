import { describe, expect, test } from "vitest";
import { blankForm } from "../quantities/bed/form";
import { draft } from "./draft";

const form = {
  ...{ name: "Front", way: "points", typed: { stone: "river rock", waste: "8%" }, widths: ["4", "5"] },
  ...{ points: [["0", "0", ""]], cutOuts: [["1", "1", "2", ""]] },
};

describe("a kept draft", () => {
  test("comes back as it was typed", () => {
    expect(draft.read(form)).toEqual(form);
    expect(draft.read(blankForm())).toEqual(blankForm());
  });

  test("loses what no field is called, such as a field of a later version", () => {
    expect(draft.read({ ...form, typed: { waste: "8%", moonPhase: "full" } })?.typed).toEqual({ waste: "8%" });
  });

  test.each([
    ["a way of measuring that doesn't exist", { way: "by eye" }],
    ["a way that every object has", { way: "toString" }],
    ["a number for text", { typed: { waste: 8 } }],
    ["a point of two cells", { points: [["0", "0"]] }],
    ["a cut-out of three cells", { cutOuts: [["1", "1", "2"]] }],
    ["more widths than anybody types", { widths: Array<string>(5001).fill("1") }],
    ["more points than anybody types", { points: Array<string[]>(5001).fill(["0", "0", ""]) }],
  ])("with %s isn't one", (_, change) => {
    expect(draft.read({ ...form, ...change })).toBeUndefined();
  });

  test("is this pane's own, whatever another pane has kept", () => {
    const mine = { ...blankForm(), name: "Mine" };
    expect(draft.join({ ...blankForm(), name: "Theirs" }, blankForm(), mine)).toBe(mine);
  });
});
