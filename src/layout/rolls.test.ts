import { describe, expect, it } from "vitest";
import { takeOffRolls } from "./rolls";

describe("cuts off rolls", () => {
  it("leave a remnant no longer than the lap as scrap", () => {
    // 50 − 49 = 1 ft is left, the lap is 1 ft: the next cut comes off a new roll though it is short.
    expect(takeOffRolls([49, 0.5], 50, 1)[1]).toEqual([{ roll: 2, startsAtFt: 0, lengthFt: 0.5 }]);
  });

  it("come in one piece each where rolls have no end", () => {
    expect(takeOffRolls([30, 400], Infinity, 1).map((pieces) => pieces.length)).toEqual([1, 1]);
  });

  it("are refused where a unit must be wrong", () => {
    expect(() => takeOffRolls([1e9], 50, 1)).toThrow("Check your units");
  });
});
