import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { asFailure, onLongWait, withLongWaitNotice } from "./failure";

const said = (code: string, errorLocation: string) => asFailure({ code, debugInfo: { errorLocation } }).message;

describe("an argument that the host does not take", () => {
  test.each(["getCell", "getResizedRange", "getOffsetRange", "getRangeByIndexes", "getColumn", "getRow"])(
    "where cells are found by %s is a place beyond the sheet",
    (member) => {
      expect(said("InvalidArgument", `Range.${member}`)).toMatch(/^It doesn't fit on the sheet\./);
    },
  );

  test("elsewhere is no place", () => {
    expect(said("InvalidArgument", "Range.formulas")).not.toMatch(/does not fit/);
    expect(said("AccessDenied", "Range.getCell")).not.toMatch(/does not fit/);
  });
});

test("what is known of the workbook is said between what happened and what to do", () => {
  expect(
    asFailure({ code: "InvalidArgument", debugInfo: { errorLocation: "Range.getCell" } }, "Nothing was changed.")
      .message,
  ).toBe("It doesn't fit on the sheet. Nothing was changed. Select a cell farther up or left, then try again.");
});

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const after = (milliseconds: number) => () => new Promise((resolve) => setTimeout(resolve, milliseconds, "done"));

test("a wait of three seconds is told once, and a short one is not", async () => {
  const tell = vi.fn();
  const end = onLongWait(tell);
  const short = withLongWaitNotice(after(1000));
  await vi.advanceTimersByTimeAsync(10_000);
  expect(await short).toBe("done");
  expect(tell).not.toHaveBeenCalled();

  const long = withLongWaitNotice(after(3000));
  await vi.advanceTimersByTimeAsync(10_000);
  expect(await long).toBe("done");
  expect(tell).toHaveBeenCalledTimes(1);

  end();
  const unheard = withLongWaitNotice(after(3000));
  await vi.advanceTimersByTimeAsync(10_000);
  await unheard;
  expect(tell).toHaveBeenCalledTimes(1);
});
