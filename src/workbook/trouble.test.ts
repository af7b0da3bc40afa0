import { describe, expect, test } from "vitest";
import { inWords } from "./trouble";

const said = (code: string, errorLocation: string) => inWords({ code, debugInfo: { errorLocation } }).message;

describe("an argument that the host does not take", () => {
  test.each(["getCell", "getResizedRange", "getOffsetRange", "getRangeByIndexes", "getColumn", "getRow"])(
    "where cells are found by %s is a place beyond the sheet",
    (member) => {
      expect(said("InvalidArgument", `Range.${member}`)).toMatch(/^The place does not fit on the sheet\./);
    },
  );

  test("elsewhere is no place", () => {
    expect(said("InvalidArgument", "Range.formulas")).not.toMatch(/does not fit/);
    expect(said("AccessDenied", "Range.getCell")).not.toMatch(/does not fit/);
  });
});

test("what is known of the workbook is said between what happened and what to do", () => {
  expect(
    inWords({ code: "InvalidArgument", debugInfo: { errorLocation: "Range.getCell" } }, "Nothing was changed.").message,
  ).toBe("The place does not fit on the sheet. Nothing was changed. Select a cell further up or left, then try again.");
});
