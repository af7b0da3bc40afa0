import { describe, expect, test } from "vitest";
import { loadsFor, truckWarnings } from "./truck";

describe("a payload", () => {
  test("sets the loads where the stone is heavy", () => {
    // GVWR of 7,000 less 1,900 lb empty is 5,100 lb. 6.0185 tons on 2.55 tons take 3 trips; by volume 4.63 cu yd in a box of 5 would take 1.
    expect(loadsFor(6.0185 / 1.3, 1.3, { yards: 5, payloadTons: 2.55 })).toBe(3);
  });
});

describe("a truck is warned about", () => {
  const truck = { yards: 5, payloadTons: 2.5 };
  const words = (yards: number, loads: number, changes = {}) =>
    truckWarnings("Haul off", { yards, tonsPerYard: 1.5, loads, truck: { ...truck, ...changes } });

  test("not where each load fits", () => {
    expect(words(3.33, 2)).toEqual([]);
    expect(words(0, 0, { payloadTons: 0 })).toEqual([]);
    expect(words(10, 2, { payloadTons: 7.5 })).toEqual([]); // 5 cu yd and 7.5 tons each: full, not over
  });

  test("where the loads are too few for the weight or for the box", () => {
    expect(words(3.34, 1)).toEqual([
      "Haul off: in 1 load each carries 5.01 tons, over its payload of 2.5. Plan more loads.",
    ]);
    expect(words(12, 2, { payloadTons: 20 })).toEqual([
      "Haul off: in 2 loads each carries 6 cu yd, and the truck holds 5. Plan more loads.",
    ]);
    expect(words(3.34, 0)).toHaveLength(1);
  });

  test("where a weight is not known", () => {
    expect(words(1, 1, { payloadTons: 0 })[0]).toMatch(/weight wasn't checked/);
    expect(truckWarnings("Haul off", { yards: 1, tonsPerYard: 0, loads: 1, truck })[0]).toMatch(
      /weight wasn't checked/,
    );
  });
});
