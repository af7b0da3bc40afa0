import { describe, expect, test } from "vitest";
import { cellsFound, findWith } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { missing } from "./missing";

type Line = readonly [name: string, quantity: CellText];

/** Everything that a stone bed ordinarily takes. */
const LINES: readonly Line[] = [
  ["River rock (tons)", 9],
  ["Fabric (rolls)", 2],
  ["Pins (boxes)", 1],
  ["Edging (pieces)", 12],
  ["Stakes", 40],
  ["Dig the bed, labor hours", 6],
  ["Haul to dump, loads", 2],
  ["Delivery, trips", 1],
  ["Clean-up, labor hours", 2],
  ["Waste, tons", 0.7],
  ["Dig ticket", 1],
];

/** An estimate without some lines, or with other quantities in them. */
const estimate = (given: Readonly<Record<string, CellText | undefined>> = {}, notes: readonly string[] = []) => {
  const lines = LINES.flatMap(([name, quantity]) => {
    const word = Object.keys(given).find((one) => name.startsWith(one));
    if (word === undefined) return [[name, quantity] as const];
    return given[word] === undefined ? [] : [[name, given[word]] as const];
  });
  return [
    ["Line", "Qty", "Each", "Cost"],
    ...lines.map(([name, quantity], at) => [name, quantity, 60, `=B${at + 2}*C${at + 2}`]),
    ...notes.map((note) => [note]),
  ];
};

const asked = (input: Parameters<typeof findWith>[1]) => findWith(missing, input).map(({ seen }) => seen);

test("a whole estimate is asked nothing", () => {
  expect(asked(estimate())).toEqual([]);
});

describe("a line that is missing", () => {
  test.each([
    ["Fabric", "There's stone but no fabric under it. Is that right?", 12, "A2"],
    ["Pins", "There's fabric but nothing to pin it down. Who's bringing the pins?", 5, "A3"],
    ["Stakes", "There's edging but no stakes. Do enough come with the pieces?", 5, "A5"],
    ["Haul", "There's digging but no hauling. Where does the soil go?", 15, "A7"],
    ["Delivery", "There's stone but no delivery. How does it get to the site?", 15, "A2"],
    ["Clean-up", "There's no cleanup. Who sweeps the walk and hauls the scraps?", 5, "A2"],
    ["Waste", "There's no waste on the stone for low spots. Is that right?", 8, "A2"],
    ["Dig ticket", "There's digging but no dig notice. Did someone call?", 10, "A7"],
  ])("is asked for: %s", (line, question, rank, at) => {
    expect(findWith(missing, estimate({ [line]: undefined }))).toMatchObject([
      { level: "question", rank, cells: [at], seen: question, fix: undefined },
    ]);
  });

  test("says why it matters and what to do", () => {
    const told = LINES.flatMap(([name]) =>
      findWith(missing, estimate({ [name]: undefined })).map(({ matters, todo }) => `${matters} ${todo}`),
    );
    expect(new Set(told).size).toBe(8);
    expect(told.find((words) => words.includes("49 CFR 196.103"))).toContain("Give notice before you dig");
    expect(told.find((words) => words.includes("5% to 10%"))).toContain("Add a waste %.");
  });

  test.each([
    ["River rock", ["Fabric", "Pins", "Delivery", "Clean-up", "Waste"]],
    ["Edging", ["Stakes"]],
    ["Dig the bed", ["Haul", "Dig ticket"]],
  ])("is not asked for without what it goes with: %s", (line, others) => {
    expect(asked(estimate(Object.fromEntries([line, ...others].map((name) => [name, undefined]))))).toEqual([]);
  });

  test("is not asked for where that comes to nothing", () => {
    expect(asked(estimate({ Edging: 0, Stakes: undefined }))).toEqual([]);
    expect(asked(estimate({ Edging: -2, Stakes: undefined }))).toEqual([]);
    expect(asked(estimate({ Edging: "none", Stakes: undefined }))).toEqual([]);
  });

  test("is answered by a note", () => {
    expect(asked(estimate({ Delivery: undefined }, ["Delivery is in the price of the stone"]))).toEqual([]);
    expect(asked(estimate({ "Dig ticket": undefined }, ["Call 811 before the crew starts"]))).toEqual([]);
    expect(asked(estimate({ "Dig ticket": undefined }, ['="Call 811"']))).toEqual([]);
  });

  test("that is there and comes to nothing is pointed to", () => {
    expect(findWith(missing, estimate({ Delivery: 0 }))).toMatchObject([
      {
        cells: ["A9"],
        seen: "There's stone but no delivery. How does it get to the site? There's a line for it, but it comes to nothing.",
      },
    ]);
  });

  test("is asked for at the largest of what it goes with", () => {
    const rows = estimate({ Fabric: undefined, Pins: undefined });
    rows.splice(2, 0, ["Lava rock (tons)", 20, 60, "=B3*C3"], ["Marble (tons)", 4, 60, "=B4*C4"]);
    expect(cellsFound(missing, rows)).toEqual(["A3"]);
  });
});

describe("a sheet that is no estimate", () => {
  test("is asked nothing where no money is worked out", () => {
    const takeoff = (heading: string, cost: (row: number) => CellText) => [
      ["Line", "Qty", heading],
      ...[2, 3].map((row) => ["River rock (tons)", 9, cost(row)]),
    ];
    expect(asked(takeoff("Cost", (row) => `=B${row}*60`))).not.toEqual([]);
    expect(asked(takeoff("Price", (row) => `=B${row}*60`))).not.toEqual([]);
    expect(asked(takeoff("Cost", () => 540))).toEqual([]);
    expect(asked(takeoff("Tons", (row) => `=B${row}*1.08`))).toEqual([]);
  });

  test("is asked nothing where it is empty or protected", () => {
    expect(asked({ rows: estimate({ Fabric: undefined }), protected: true })).toEqual([]);
    expect(asked({ sheets: [{ name: "Jobs", rows: [] }] })).toEqual([]);
  });
});

describe("an estimate on several sheets", () => {
  const others = (formula: CellText, rows: readonly (readonly CellText[])[]) => ({
    sheets: [
      { name: "Jobs", rows: [...estimate({ Delivery: undefined, "Dig ticket": undefined }), ["Fee", 1, "", formula]] },
      { name: "Trucks", rows },
    ],
  });
  const trucks = [
    ["Delivery, trips", 2],
    ["Dig ticket", 4711],
  ];

  test("is answered by a sheet that it reads", () => {
    expect(asked(others("=Trucks!B1", trucks))).toEqual([]);
  });

  test("is answered by a sheet that reads it", () => {
    expect(asked(others(5, [...trucks, ["Tons", "=Jobs!B2"]]))).toEqual([]);
  });

  test("is not answered by a sheet that has nothing to do with it", () => {
    expect(asked(others(5, trucks))).toHaveLength(2);
    expect(asked(others("=Trucks!B1", [["Trailer", 2]]))).toHaveLength(2);
  });

  test("is asked on each of its sheets that is priced", () => {
    const rows = estimate({ Fabric: undefined, Pins: undefined });
    const sheets = [
      { name: "Jobs", rows },
      { name: "Back", rows },
    ];
    expect(findWith(missing, { sheets }).map(({ cells }) => cells)).toEqual([["A2"], ["Back!A2"]]);
  });
});
