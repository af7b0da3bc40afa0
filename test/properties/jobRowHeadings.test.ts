import fc from "fast-check";
import { describe, expect, test } from "vitest";
import office from "../../assets/practice-office.json";
import type { PracticeOffice } from "../../src/practice/grid/practiceOffice";
import { fitList } from "../../src/sheets/jobRows/fit";
import { readListSheet } from "../../src/workbook/jobRows";
import { CORNER, fillOf, fitOf, listSheet } from "../listSheets";
import { createProductHost } from "../productHost";

describe("headings that can be read several ways are asked about, and nothing is taken for them", () => {
  test("two columns of widths, a size, “Dig”, “Loads” and “Cost”", () => {
    const fit = fitOf(
      listSheet([
        ["Bed", "Length, ft", "Width", "Width", "Size", "Dig", "Loads", "Cost", "Stone", "Area, sq ft"],
        ["a", 20, 4, 5, "20x4", 3, 1, 100, "river rock", ""],
      ]),
    );
    const asked = fit.columns.filter(({ sure }) => sure === "ask");
    expect(asked.map(({ heading, role, asks }) => [heading, role, asks.join(" or ")])).toEqual([
      ["Width", undefined, "width"],
      ["Width", undefined, "width"],
      ["Size", undefined, "length or width or area"],
      ["Dig", undefined, "scrape or dig"],
      ["Loads", undefined, "spoilLoads or deliveries"],
      ["Cost", undefined, "materialCost or price"],
    ]);
    const filling = fillOf(fit, { results: ["area"] });
    expect(filling.changes).toEqual([]);
    expect(filling.troubles).toEqual(["Area left out: no column for widths."]);
    // Once the estimator has said which, the formula reads that one.
    const said = fillOf(fit, { results: ["area"], corrections: new Map([[3, { role: "width", unit: "in" }]]) });
    expect(said.changes.map(({ after }) => after)).toEqual(["=BED.AREA_RECTANGLE(B2,D2/12)"]);
  });

  test.each([
    ["a depth of 65 without a unit", ["Bed", "Length, ft", "Width, ft", "Depth"], ["a", 20, 4, 65], "which unit"],
    ["lengths of 6,000 without a unit", ["Bed", "Length", "Width, ft", "Area"], ["a", 6000, 4, ""], "which unit"],
    ["lengths that are none", ["Bed", "Length", "Width, ft", "Area"], ["a", "long", 4, ""], "a length"],
    ["tons or tonnes", ["Bed", "Length, m", "Width, m", "Stone (t)"], ["a", 6, 1, ""], "metric tonnes"],
    ["numbers for a kind of stone", ["Bed", "Length, ft", "Width, ft", "Stone"], ["a", 20, 4, 3], "may be"],
  ])("%s", (_, headings, row, why) => {
    const asked = fitOf(listSheet([headings, row])).columns.filter(({ sure }) => sure === "ask");
    expect(asked.map((column) => column.why).join()).toContain(why);
    expect(asked.every(({ role }) => role === undefined)).toBe(true);
  });

  test("what the estimator gives to one column goes away from the other", () => {
    const fit = fitOf(
      listSheet([
        ["Bed", "Length, ft", "Across", "Area"],
        ["a", 20, 4, ""],
      ]),
    );
    const { changes } = fillOf(fit, {
      results: ["area"],
      corrections: new Map([
        [1, { role: "width" as const }],
        [2, { role: "length" as const, unit: "yd" as const }],
      ]),
    });
    expect(changes.map(({ after }) => after)).toEqual(["=BED.AREA_RECTANGLE(C2*3,B2)"]);
  });
});

test("the job rows of the practice workbook are fitted wholly right, and nothing would change in them", async () => {
  const host = await createProductHost(office as PracticeOffice);
  const { sheet, selection } = await readListSheet();
  const fit = fitList(sheet, selection)!;
  expect(fit.columns.map(({ role, sure }) => `${role} ${sure}`)).toEqual(
    "job bed length width radius corners depth stone waste area border tons order pins"
      .split(" ")
      .map((role) => `${role} sure`),
  );
  const filling = fillOf(fit);
  expect(filling.columns.map(({ role, same, written, clashes }) => [role, same, written, clashes])).toEqual(
    ["area", "border", "tons", "order", "pins"].map((role) => [role, 12, 0, []]),
  );
  expect(filling.skipped).toMatchObject([{ row: 16, kind: "total" }]);
  expect([filling.changes, filling.troubles]).toEqual([[], []]);
  host.dispose();
});

describe("whatever is in the headings", () => {
  const word = fc.constantFrom(
    ...["length", "width", "depth", "stone", "rock", "waste", "area", "tons", "order", "pins", "border", "edging"],
    ...["loads", "size", "dig", "(ft)", "in", '"', "'", "%", "sq ft", "cm", "of", "per", "-", "/", "radius", "corners"],
    ...["cost", "price", "hours", "job", "bed", "fabric", "rolls", "$", "1", "no."],
  );
  const heading = fc.oneof(
    fc.array(word, { maxLength: 4 }).map((words) => words.join(" ")),
    fc.string({ unit: "grapheme", maxLength: 30 }),
  );
  const cell = fc.oneof(fc.constant(""), fc.double({ noNaN: true }), fc.string({ maxLength: 12 }), fc.constant("=1+1"));

  test("no column has two roles, no role two columns, and nothing is written over what is there", () => {
    let fitted = 0;
    fc.assert(
      fc.property(
        fc.array(heading, { minLength: 2, maxLength: 12 }),
        fc.array(fc.array(cell, { maxLength: 12 }), { maxLength: 6 }),
        (headings, rows) => {
          const sheet = listSheet([headings, ...rows]);
          const fit = fitList(sheet, CORNER);
          if (!fit) return;
          fitted += 1;
          const roles = fit.columns.flatMap(({ role }) => role ?? []);
          expect(new Set(roles).size).toBe(roles.length);
          expect(new Set(fit.columns.map(({ column }) => column)).size).toBe(fit.columns.length);
          for (const { role, asks, sure } of fit.columns) {
            expect(role === undefined).toBe(sure === "ask" || sure === "none");
            expect(asks.length > 0).toBe(sure === "ask");
          }
          for (const { row, column, before } of fillOf(fit).changes) {
            expect(before).toBe(fit.cells.content(row, column));
            expect(String(before).trim()).toBe("");
          }
        },
      ),
      { numRuns: 1500 },
    );
    expect(fitted).toBeGreaterThan(100);
  });
});
