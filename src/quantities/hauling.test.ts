import { describe, expect, test } from "vitest";
import { barrowTrips, haulHours, loads } from "./hauling";

describe("loads", () => {
  test("round up, and an exact fit is not bumped", () => {
    expect(loads(4.63, 3)).toBe(2);
    expect(loads(6, 3)).toBe(2);
    expect(loads(0.3, 0.1)).toBe(3); // 0.3 / 0.1 is 2.9999999999999996 in binary
    expect(loads(0.1 * 3, 0.1)).toBe(3); // and 0.1 × 3 / 0.1 is 3.0000000000000004
    expect(loads(0, 3)).toBe(0);
  });

  test("are the larger of by volume and by weight, where both weights are known", () => {
    expect(loads(4.63, 5, 1.3, 2.55)).toBe(3); // 6.019 t / 2.55 t = 2.36
    expect(loads(4.63, 1, 1.3, 2.55)).toBe(5);
    expect(loads(4.63, 5, 1.3, 0)).toBe(1);
    expect(loads(4.63, 5, 0, 2.55)).toBe(1);
  });
});

describe("wheelbarrow trips", () => {
  test("go by the tray where the stone is light, by weight where it is heavy", () => {
    expect(barrowTrips(1, 0.7, 6, 300)).toBe(5); // 27/6 = 4.5; 1,400 lb / 300 = 4.67
    expect(barrowTrips(1, 0.5, 6, 300)).toBe(5); // 27/6 = 4.5; 1,000 lb / 300 = 3.33
    expect(barrowTrips(1, 1.35, 6, 300)).toBe(9); // 2,700 lb / 300 = 9
    expect(barrowTrips(0, 1.35, 6, 300)).toBe(0);
  });
});

describe("haul hours", () => {
  test("are trips by minutes a trip, both ways walked", () => {
    expect(haulHours(10, 100, 2, 0.5, 200)).toBeCloseTo((10 * (2 + 0.5 + 1)) / 60, 12);
    expect(haulHours(0, 100, 2, 0.5, 200)).toBe(0);
  });
});
