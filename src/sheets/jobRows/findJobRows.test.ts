import { describe, expect, test } from "vitest";
import { fillOf, fitOf, listSheet } from "../../../test/listSheets";
import { findJobRows } from "./findJobRows";

const HEADINGS = ["Job", "Bed", "Length (m)", "Width", "Depth (cm)", "Stone", "Waste %", "Area", "Tons", "Stone (lb)"];

describe("finding job rows again", () => {
  test("gives names, measurements and quantities by row, in our own units", () => {
    const lists = findJobRows(
      listSheet([
        ["Beds"],
        HEADINGS.slice(0, 9),
        // 6.096 m are 20 ft, and 6.35 cm 2.5 in (1 ft = 0.3048 m, 1 in = 2.54 cm exactly).
        ["Elm", "front", 6.096, "4'", 6.35, "river rock", 8, 80, 0.9],
        [],
        ["Elm", "back", "20 ft", 4, `2 1/2"`, "pea gravel", 0.08, 80, "soon"],
        ["note"],
        ["Total", "", "", "", "", "", "", "=SUM(H3:H5)"],
      ]),
    );
    expect(lists).toHaveLength(1);
    expect(lists[0]).toMatchObject({ sheet: "List", headingRow: 1 });
    const [front, back] = lists[0]?.beds ?? [];
    expect(front).toMatchObject({
      row: 2,
      job: "Elm",
      bed: "front",
      stone: "river rock",
      quantities: { area: 80, tons: 0.9 },
    });
    expect(front?.measured.length).toBeCloseTo(20, 9);
    expect(front?.measured.width).toBe(4);
    expect(front?.measured.depth).toBeCloseTo(2.5, 9);
    expect(front?.measured.waste).toBe(0.08);
    expect(back).toMatchObject({ row: 4, bed: "back", measured: { length: 20, depth: 2.5, waste: 0.08 } });
    expect(back?.quantities).toEqual({ area: 80 });
  });

  test("finds several lists on a sheet, each with its own rows", () => {
    const lists = findJobRows(
      listSheet([
        ["Bed", "Length, ft", "Width, ft"],
        ["a", 20, 4],
        [],
        ["Bed", "Area, sq ft", "Stone (lb)"],
        ["b", 60, 2000],
      ]),
    );
    expect(lists.map(({ headingRow, beds }) => [headingRow, beds.map(({ bed }) => bed)])).toEqual([
      [0, ["a"]],
      [3, ["b"]],
    ]);
    // 2,000 lb are a short ton.
    expect(lists[1]?.beds[0]?.quantities).toEqual({ area: 60, tons: 1 });
  });

  test("finds none where the sheet has no list of beds, or no bed in it", () => {
    expect(
      findJobRows(
        listSheet([
          ["Roll", 64],
          ["Pins", 18],
        ]),
      ),
    ).toEqual([]);
    expect(findJobRows(listSheet([["Bed", "Length, ft", "Width, ft"]]))).toEqual([]);
  });
});

describe("a table", () => {
  const table = { name: "Beds", area: { row: 0, column: 0, rows: 4, columns: 4 }, headingRow: true, totalsRow: true };
  const rows = [
    ["Bed", "Length, ft", "Width, ft", "Area, sq ft"],
    ["a", 20, 4, ""],
    ["b", 10, 4, ""],
    ["", 30, "", 7],
    ["below the table", 5, 5, ""],
  ];

  test("ends before its row of totals, whatever that is called", () => {
    const { beds, changes } = fillOf(fitOf(listSheet(rows, { tables: [table] })));
    expect(beds.map(({ row }) => row)).toEqual([1, 2]);
    expect(changes.map(({ row }) => row)).toEqual([1, 2]);
  });

  test("gets new columns beside it, and none inside another table", () => {
    const other = { ...table, name: "Other", area: { row: 1, column: 5, rows: 2, columns: 2 } };
    const beside = fillOf(fitOf(listSheet(rows, { tables: [table] })), { results: ["pins"] });
    expect(beside.columns.map(({ column }) => column)).toEqual([4]);
    const beyond = fillOf(fitOf(listSheet(rows, { tables: [table, other] })), { results: ["pins", "rolls"] });
    expect(beyond.columns.map(({ column }) => column)).toEqual([8, 9]);
  });
});
