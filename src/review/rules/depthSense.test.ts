import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import { depthSense } from "./depth";

const LOW = "Make it 1.5 in or more.";
const HIGH = "Make it 6 in or less, or ignore this and say why.";
const STONE = "Use smaller stone, or taller edging and more depth.";
const BORDER = "Use taller edging or less depth.";

/** What is to be done about a depth of stone, in inches, with the stone's size and the border's height. */
const todos = (depth: number, size: number | "" = "", border: number | "" = "") =>
  findWith(depthSense, [
    ["Bed", "Stone depth (in)", "Stone size (in)", "Border height (in)"],
    ["Front walk", depth, size, border],
    ["Side yard", 3, 1, 4],
  ]).map(({ todo }) => todo);

describe("the depth of stone", () => {
  // Common practice: 1.5 to 6 in.
  test.each([
    [1.4, [LOW]],
    [1.5, []],
    [3, []],
    [6, []],
    [6.1, [HIGH]],
    [0, []],
    [-1, []],
  ])("of %f in", (depth, expected) => {
    expect(todos(depth)).toEqual(expected);
  });

  // Two thirds of 3 in are 2 in.
  test.each([
    [2, []],
    [2.002, []],
    [2.01, [STONE]],
    [3, [STONE]],
  ])("of 3 in takes stone up to two thirds of it: %f in", (size, expected) => {
    expect(todos(3, size)).toEqual(expected);
  });

  test.each([
    [4, []],
    [3, []],
    [2.998, []],
    [2.99, [BORDER]],
  ])("of 3 in stays behind a border of %f in", (height, expected) => {
    expect(todos(3, "", height)).toEqual(expected);
  });

  test("may be wrong in several ways at once", () => {
    expect(todos(1, 1, 0.5)).toEqual([LOW, STONE, BORDER]);
    expect(todos(7, 5, 6)).toEqual([HIGH, STONE, BORDER]);
  });

  test("in feet is turned into inches first", () => {
    const rows = (feet: number) => [
      ["Bed", "Stone depth (ft)"],
      ["Front walk", feet],
    ];
    expect(cellsFound(depthSense, rows(0.25))).toEqual([]);
    expect(cellsFound(depthSense, rows(0.1))).toEqual(["B2"]);
  });

  test("to dig is not the depth of stone", () => {
    const rows = [
      ["Bed", "Dig depth (in)"],
      ["Front walk", 7],
    ];
    expect(cellsFound(depthSense, rows)).toEqual([]);
  });
});

test("each warning names the cell, the depth, and what it doesn't suit", () => {
  const rows = (depth: number, size: number, border: number) => [
    ["Bed", "Stone depth (in)", "Stone size (in)", "Border height (in)"],
    ["Front walk", depth, size, border],
  ];
  expect(findWith(depthSense, rows(1, 1, 0.5))).toMatchObject([
    {
      level: "warning",
      rank: 25,
      cells: ["B2"],
      related: [],
      seen: "“Front walk”, “Stone depth (in)” is 1 in of stone: fabric will show through.",
    },
    {
      cells: ["B2"],
      related: ["C2"],
      seen: "“Front walk”, “Stone depth (in)” is 1 in deep for stone up to 1 in (C2), over two-thirds of the depth.",
    },
    {
      cells: ["B2"],
      related: ["D2"],
      seen: "“Front walk”, “Stone depth (in)” is 1 in deep behind 0.5 in edging (D2), so it spills over.",
    },
  ]);
  expect(findWith(depthSense, rows(7, 1, 8))).toMatchObject([
    { seen: "“Front walk”, “Stone depth (in)” is 7 in of stone: more than anyone sees." },
  ]);
});

test("the same warning down a column is one finding, and other columns have their own", () => {
  const rows = [
    ["Bed", "Stone depth (in)", "Bed", "Stone depth (in)"],
    ["Front walk", 1, "Patio", 1],
    ["Side yard", 1, "Gate", 3],
  ];
  expect(findWith(depthSense, rows).map(({ cells }) => cells)).toEqual([["B2", "B3"], ["D2"]]);
});
