import { describe, expect, test } from "vitest";
import { loadsFor, platePayload, truckWarnings } from "./truck";

describe("a payload", () => {
  test("is GVWR less the empty weight with people and fuel", () => {
    expect(platePayload(7000, 1900)).toBe(2.55); // 5,100 lb
    expect(platePayload(1900, 2000)).toBe(0);
  });

  test("sets the loads where the stone is heavy", () => {
    // 6.0185 tons on 2.55 tons take 3 trips; by volume 4.63 cu yd in a box of 5 would take 1.
    expect(loadsFor(6.0185 / 1.3, 1.3, { yards: 5, payloadTons: platePayload(7000, 1900) })).toBe(3);
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
      "Haul off: in 1 load each carries 5.01 tons, over the payload of 2.5. Plan more loads.",
    ]);
    expect(words(12, 2, { payloadTons: 20 })).toEqual([
      "Haul off: in 2 loads each carries 6 cu yd, over the 5 that the box holds. Plan more loads.",
    ]);
    expect(words(3.34, 0)).toHaveLength(1);
  });

  test("where a weight is not known", () => {
    expect(words(1, 1, { payloadTons: 0 })[0]).toMatch(/weight was not checked/);
    expect(truckWarnings("Haul off", { yards: 1, tonsPerYard: 0, loads: 1, truck })[0]).toMatch(
      /weight was not checked/,
    );
  });

  test("where its payload is over the maker's plate, and only where all of the plate is known", () => {
    // 7,000 − 1,900 lb leave 2.55 tons.
    expect(words(1, 1, { payloadTons: 2.56, gvwrPounds: 7000, emptyPounds: 1900 })).toHaveLength(1);
    expect(words(1, 1, { payloadTons: 2.55, gvwrPounds: 7000, emptyPounds: 1900 })).toEqual([]);
    expect(words(1, 1, { payloadTons: 9, gvwrPounds: 7000 })).toEqual([]);
    expect(words(1, 1, { payloadTons: 9, emptyPounds: 1900 })).toEqual([]);
  });
});
