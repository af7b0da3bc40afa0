import { describe, expect, test } from "vitest";
import { SheetNames } from "./sheetNames";

describe("the names of sheets in a file", () => {
  test("have no more than 31 characters, with a number where two would be the same", () => {
    const long = "x".repeat(40);
    expect(new SheetNames([long, long]).inFile).toEqual(["x".repeat(31), `${"x".repeat(29)} 2`]);
    expect(new SheetNames(["Beds", "BEDS"]).inFile).toEqual(["Beds", "BEDS 2"]);
  });

  test("have nothing that files forbid", () => {
    expect(new SheetNames(["a/b:c", "[?*]", "Ann's"]).inFile).toEqual(["a b c", "Sheet", "Ann’s"]);
  });

  test("are found again by how references spell them", () => {
    expect([...new SheetNames(["Ann's", "Plain"]).references]).toEqual([
      ["'Ann''s'", "'Ann’s'"],
      ["Ann's", "'Ann’s'"],
    ]);
  });
});
