import { describe, expect, test } from "vitest";
import { cutTape, cutTapes, EDGING_STEP_IN, FABRIC_STEP_IN } from "./cutTape";

describe("a length to cut", () => {
  test("is up to the next half inch of fabric and quarter inch of edging, and never short", () => {
    // 6.9282 ft is 6' 11.14"; 3.2832 ft is 3' 3.40".
    expect(cutTape(6.9282, FABRIC_STEP_IN)).toBe(`6' 11 1/2"`);
    expect(cutTape(3.2832, EDGING_STEP_IN)).toBe(`3' 3 1/2"`);
    expect(cutTape(18.5, FABRIC_STEP_IN)).toBe(`18' 6"`);
    expect(cutTape(7 + 11.76 / 12, EDGING_STEP_IN)).toBe("8'");
  });

  test("is that length where binary arithmetic leaves a little more", () => {
    expect(cutTape(8 + 1e-9, FABRIC_STEP_IN)).toBe("8'");
    expect(cutTape(0.1 + 0.2 - 0.05, EDGING_STEP_IN)).toBe(`3"`);
  });
});

describe("lengths from one piece", () => {
  test("are each rounded up, which is taken off what is left over", () => {
    // 40.1 and 30.2 in. of 96: 25.7 in. left; as cut, 40 1/4 and 30 1/4 leave 25 1/2.
    expect(cutTapes([40.1 / 12, 30.2 / 12], 25.7 / 12, EDGING_STEP_IN)).toEqual({
      lengths: [`3' 4 1/4"`, `2' 6 1/4"`],
      leftOver: `2' 1 1/2"`,
      stepIn: 1 / 4,
    });
  });

  test("are rounded up to finer steps where not all of them fit otherwise", () => {
    // 40.1 and 55.85 in. of 96: 40 1/4 and 56 would be 1/4 in. too long; 40 1/8 and 55 7/8 are just 96.
    expect(cutTapes([40.1 / 12, 55.85 / 12], 0.05 / 12, EDGING_STEP_IN)).toEqual({
      lengths: [`3' 4 1/8"`, `4' 7 7/8"`],
      leftOver: `0"`,
      stepIn: 1 / 8,
    });
  });

  test("stay as they are where rounded up they would not all come out of it", () => {
    // 48 1/16 and 47 15/16 in. of 96.
    expect(cutTapes([48.0625 / 12, 47.9375 / 12], 0, EDGING_STEP_IN)).toEqual({
      lengths: [`4' 1/16"`, `3' 11 15/16"`],
      leftOver: `0"`,
      stepIn: 1 / 16,
    });
  });
});
