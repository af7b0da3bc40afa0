import { describe, expect, test } from "vitest";
import { declarations } from "../../src/functions/declarations";
import type { DeclaredArgument } from "../../src/functions/declare";
import { isFailure, type Value } from "../../src/review/formula/values";
import { callFunction } from "../callFunction";

/*
 * What a declaration says of an argument follows from its reader, and from words beside it. This holds what is said
 * against what the functions do.
 */

/** Something that every argument of a kind takes. */
const SAMPLES: Readonly<Record<string, Value>> = {
  ft: 20,
  in: 4,
  "sq ft": 100,
  "cu ft": 6,
  "cu yd": 2,
  tons: 3,
  lb: 300,
  "tons/cu yd": 1.35,
  share: 0.1,
  money: 100,
  min: 2,
  "ft/min": 200,
  count: 2,
  amount: 5,
  stone: "river rock",
  soil: "loam",
  "yes or no": true,
  "width rule": "simpson",
  date: 46083,
  degrees: 0,
};
const MANY: Readonly<Record<string, Value>> = {
  lengths: [[6], [4]],
  counts: [[2], [3]],
  widths: [[4], [5], [6]],
  points: [
    [0, 0],
    [10, 0],
    [10, 5],
  ],
  sides: [[10], [5]],
  runs: [[20], [11]],
  closed_runs: [[25]],
  strips: [["2 x 20"], [8]],
  holidays: [[46086]],
};
/** Cut-outs are areas for an area, and places for a bed in plan. */
const CUT_OUTS: Readonly<Partial<Record<string, Value>>> = { "sq ft": [[4]], ft: [[7, 2, 1, ""]] };

function sampleOf({ name, kind, many }: DeclaredArgument): Value {
  if (name === "cut_outs") return CUT_OUTS[kind]!;
  return many ? MANY[name]! : SAMPLES[kind]!;
}

/** Samples that have to suit the others: a trench is shallower than its border, a hole smaller than its disc. */
const FITTING: Readonly<Record<string, Value>> = {
  trench_depth_in: 1,
  top_gap_in: 0.5,
  corner_radius: 2,
  inner_diameter: 3,
  "AREA_TRIANGLE.side_a": 18,
};

describe.each(declarations.map((known) => [known.name, known] as const))("what is known of %s holds", (name, known) => {
  const given = known.arguments.map(
    (argument) => FITTING[`${name}.${argument.name}`] ?? FITTING[argument.name] ?? sampleOf(argument),
  );
  const call = (place: number, value: Value) =>
    callFunction(
      `BED.${name}`,
      given.map((one, index) => (index === place ? value : one)),
    );

  test("it works with a sample of every argument", () => {
    expect(isFailure(callFunction(`BED.${name}`, given))).toBe(false);
  });

  test.each(known.arguments.map((argument, place) => [argument.name, argument, place] as const))(
    "%s",
    (_, argument, place) => {
      if (argument.blankIs !== undefined) expect(call(place, null)).toEqual(call(place, argument.blankIs));
      else if (argument.fallback === undefined) expect(isFailure(call(place, null))).toBe(true);
      else if (argument.fallback !== "") expect(call(place, null)).toEqual(call(place, argument.fallback));
      else expect(isFailure(call(place, null))).toBe(false);
      if (argument.under !== undefined) expect(isFailure(call(place, argument.under))).toBe(true);
      if (!argument.many && argument.fallback === undefined && typeof SAMPLES[argument.kind] === "number") {
        expect(isFailure(call(place, 0))).toBe(!argument.zero);
      }
    },
  );
});
