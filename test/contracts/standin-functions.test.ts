import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import type { FunctionMetadata, ParameterMetadata } from "../../src/practice/functions/metadata";
import { createHost, type HeadlessHost } from "../headlessHost";

// What is expected of the stand-in here is what the host's guide to custom functions says, where it says anything.

const parameter = (name: string, rest: Partial<ParameterMetadata> = {}): ParameterMetadata => ({ name, ...rest });
const described = (id: string, ...parameters: ParameterMetadata[]): FunctionMetadata => ({ id, name: id, parameters });

/** The last thing that it's given is the invocation; client-page.test.ts has that. */
const show = vi.fn((...given: unknown[]) => JSON.stringify(given.slice(0, -1)));
const thrown: Record<string, () => unknown> = {
  value: () => new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, "length is blank"),
  "not available": () => new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "no such stone"),
  division: () => new CustomFunctions.Error(CustomFunctions.ErrorCode.divisionByZero, "never shown"),
  plain: () => new TypeError("a fault of the function"),
};
const results: Record<string, unknown> = {
  table: [
    ["strip", "length"],
    [1, ""],
    [2, true],
  ],
  "one cell": [["alone"]],
  ragged: [[1, 2], [3]],
  list: [1, 2],
  null: null,
  "not a number": Number.NaN,
  infinite: Number.POSITIVE_INFINITY,
  object: {},
  promise: Promise.resolve(1),
};

const fail = (how: unknown) => {
  throw thrown[String(how)]?.();
};
const give = (what: unknown) => results[String(what)];

let host: HeadlessHost;
beforeAll(async () => {
  host = await createHost({
    office: {
      sheets: [{ name: "Jobs", cells: { A1: 5, B1: "text", C1: true, A2: 7, A4: "=1/0", F1: "=TODAY()*0+1" } }],
    },
    functions: {
      metadata: {
        functions: [
          described(
            "SHOW",
            parameter("one"),
            parameter("two", { optional: true }),
            parameter("three", { optional: true }),
          ),
          described("RANGE", parameter("cells", { dimensionality: "matrix" }), parameter("more", { optional: true })),
          described("MANY", parameter("first"), parameter("rest", { repeating: true })),
          described(
            "TYPED",
            parameter("number", { type: "number" }),
            parameter("text", { type: "string", optional: true }),
          ),
          described("FAIL", parameter("how")),
          described("GIVE", parameter("what")),
        ],
      },
      calls: {
        SHOW: show,
        RANGE: show,
        MANY: show,
        TYPED: show,
        FAIL: fail,
        GIVE: give,
      },
    },
  });
});
afterAll(() => host.dispose());

/** What a formula shows in a cell of its own. */
async function shown(formula: string): Promise<unknown> {
  await host.type({ H1: formula });
  return host.value("H1");
}

describe("an argument", () => {
  test.each([
    ['=BED.SHOW(1,"a",TRUE)', [1, "a", true]],
    ["=BED.SHOW(1)", [1, null, null]],
    ["=BED.SHOW(1,,3)", [1, null, 3]],
    ["=BED.SHOW(A1,B1,C1)", [5, "text", true]],
    ["=BED.SHOW(D1,D2,0)", [null, null, 0]],
    ["=bed.show(A1+A2)", [12, null, null]],
    ["=BED.SHOW(A2:A2)", [7, null, null]],
    [
      "=BED.RANGE(A1:B2)",
      [
        [
          [5, "text"],
          [7, null],
        ],
        null,
      ],
    ],
    ["=BED.RANGE(A1)", [[[5]], null]],
    ["=BED.RANGE(4,D1)", [[[4]], null]],
    ["=BED.MANY(1)", [1, []]],
    ['=BED.MANY(1,2,D1,"x")', [1, [2, null, "x"]]],
    ['=BED.TYPED("12",3)', [12, "3"]],
    ["=BED.TYPED(D1,D1)", [null, null]],
  ])("%s arrives as it does in the host", async (formula, expected) => {
    expect(JSON.parse(String(await shown(formula)))).toEqual(expected);
  });

  test.each([
    ["is an error", "=BED.SHOW(A4)", "#DIV/0!"],
    ["has an error among its cells", "=BED.RANGE(A1:A4)", "#DIV/0!"],
    ["is a range where one value belongs", "=BED.SHOW(A1:A2)", "#VALUE!"],
    ["is text where a number belongs", "=BED.TYPED(B1)", "#VALUE!"],
  ])("that %s keeps the function from being asked", async (_, formula, expected) => {
    show.mockClear();
    expect(await shown(formula)).toBe(expected);
    expect(show).not.toHaveBeenCalled();
  });
});

describe("an error", () => {
  test.each([
    ["value", "#VALUE!", "length is blank"],
    ["not available", "#N/A", "no such stone"],
    ["division", "#DIV/0!", undefined],
    ["plain", "#VALUE!", undefined],
  ])(
    "thrown as %s shows in the cell, with its message where the host has room for one",
    async (how, value, message) => {
      expect(await shown(`=BED.FAIL("${how}")`)).toBe(value);
      expect(host.errorMessage("H1")).toBe(message);
    },
  );

  test("goes on through the cells that use it, and is caught like any other", async () => {
    await host.type({
      H1: '=BED.FAIL("value")',
      H2: "=H1+1",
      H3: "=IFERROR(H1,7)",
      H4: '=IFERROR(BED.FAIL("value"),8)',
    });
    expect(host.values("H1:H4").flat()).toEqual(["#VALUE!", "#VALUE!", 7, 8]);
    expect(["H1", "H2", "H3", "H4"].map((at) => host.errorMessage(at))).toEqual([
      "length is blank",
      undefined,
      undefined,
      undefined,
    ]);
  });

  test("and its message are gone once the formula works", async () => {
    await host.type({ H1: "=BED.FAIL(H9)", H9: "value" });
    expect(host.errorMessage("H1")).toBe("length is blank");
    await host.type({ H1: "=BED.SHOW(1)" });
    expect(host.errorMessage("H1")).toBeUndefined();
  });

  test("keeps its message where rows above it are inserted", async () => {
    await host.type({ J5: '=BED.FAIL("value")' });
    const sheetId = host.grid.sheets.activeId();
    host.grid.sheets.insertRows(sheetId, 2, 3);
    await host.grid.settled();
    expect([host.value("J8"), host.errorMessage("J8"), host.errorMessage("J5")]).toEqual([
      "#VALUE!",
      "length is blank",
      undefined,
    ]);
  });

  test("leaves the other formulas working", async () => {
    await host.type({ H1: '=BED.FAIL("plain")', H2: "=BED.SHOW(2)" });
    expect(host.value("H2")).toBe("[2,null,null]");
  });
});

describe("a result", () => {
  test("that is a table spills, and the cells it fills read as its values", async () => {
    await host.type({ L1: '=BED.GIVE("table")' });
    expect(host.values("L1:M4")).toEqual([
      ["strip", "length"],
      [1, ""],
      [2, true],
      ["", ""],
    ]);
    expect(host.formula("L2")).toBeUndefined();
    await host.type({ O1: "=SUM(L1:L3)" });
    expect(host.value("O1")).toBe(3);
  });

  test("that spilled is gone with its formula", async () => {
    await host.type({ L1: "" });
    expect(host.values("L1:M3").flat()).toEqual(["", "", "", "", "", ""]);
  });

  test("that has no room to spill says so, and overwrites nothing", async () => {
    await host.type({ L12: "in the way" });
    await host.type({ L10: '=BED.GIVE("table")' });
    expect(host.values("L10:L12").flat()).toEqual(["#SPILL!", "", "in the way"]);
  });

  test.each([
    ["one cell", "alone"],
    ["ragged", "#VALUE!"],
    ["list", "#VALUE!"],
    ["null", 0],
    ["not a number", "#NUM!"],
    ["infinite", "#NUM!"],
    ["object", "#VALUE!"],
    ["promise", "#VALUE!"],
  ])("that is %s shows as it does in the host", async (what, expected) => {
    expect(await shown(`=BED.GIVE("${what}")`)).toBe(expected);
  });
});

test("a function that no one associated is a name that the workbook does not know", async () => {
  expect(await shown("=BED.NOBODY(1)")).toBe("#NAME?");
});
