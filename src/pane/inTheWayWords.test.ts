import { expect, test } from "vitest";
import type { InTheWay } from "../workbook/change/place";
import { inTheWayText, inTheWayWords } from "./inTheWayWords";

const inTheWay: InTheWay = {
  sheetId: "1",
  sheetName: "Jobs",
  address: "A1:I142",
  obstacles: [{ what: "cells with content", where: "B2, C3" }] as unknown as InTheWay["obstacles"],
  nearestFree: { at: { row: 0, column: 10 }, address: "K1:S142" },
};

test("what is in the way is named with its place, and the nearest free cell is offered", () => {
  expect(inTheWayWords(inTheWay, "block")).toEqual({
    lead: "Nothing was written. The block needs A1:I142 on Jobs, where there is:",
    things: ["cells with content: B2, C3"],
    instead: "Put it at K1",
  });
});

test("several things are in the way, and no other place is free", () => {
  const { nearestFree: _, ...others } = { ...inTheWay, obstacles: [...inTheWay.obstacles, ...inTheWay.obstacles] };
  const { lead, things, instead } = inTheWayWords(others, "block");
  expect(lead).toMatch(/where there are:$/);
  expect(things).toHaveLength(2);
  expect(instead).toBeUndefined();
});

test("a long list of cells is cut after 80 characters, and a shorter one is not", () => {
  const thingsFor = (where: string) =>
    inTheWayWords({ ...inTheWay, obstacles: [{ ...inTheWay.obstacles[0]!, where }] }, "block").things[0];
  expect(thingsFor("x".repeat(80))).toBe(`cells with content: ${"x".repeat(80)}`);
  expect(thingsFor("x".repeat(81))).toBe(`cells with content: ${"x".repeat(80)}…`);
});

test("all of it is one text where no place can be offered", () => {
  expect(inTheWayText(inTheWay, "list")).toBe(
    "Nothing was written. The list needs A1:I142 on Jobs, where there is: cells with content: B2, C3. Make room there, then try again.",
  );
});
