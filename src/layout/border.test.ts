import { describe, expect, it } from "vitest";
import { edgingPieces, stakes } from "../quantities/edging";
import type { Bed } from "./bed";
import { placeBorder } from "./border";
import { borderRulesOf } from "./options";
import { outlineOf } from "./outlineOf";
import { distance } from "./plane";

const borderOf = (bed: Bed, lapIn = 2, stakeSpacingIn = 30) =>
  placeBorder(outlineOf(bed), borderRulesOf({ pieceLengthFt: 8, lapIn, stakeSpacingIn }));
const rectangle: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5 };

describe("border along one straight side", () => {
  it.each([3, 8, 15.83, 16, 24, 47.5])(
    "takes as many pieces and stakes as the functions count, over %s ft",
    (length) => {
      const [run] = borderOf({ kind: "rectangle", lengthFt: length, widthFt: 5, borderSides: [3] });
      expect(run!.pieces).toHaveLength(edgingPieces(length, 8, 2));
      expect(run!.stakes).toHaveLength(stakes(length, 8, 30, 2));
      expect(run!.joints).toHaveLength(run!.pieces.length - 1);
    },
  );

  it("cuts the last piece to what is left", () => {
    const [run] = borderOf({ ...rectangle, borderSides: [3] }, 0);
    expect(run!.pieces.map(({ lengthFt, isWhole }) => [lengthFt, isWhole])).toEqual([
      [8, true],
      [8, true],
      [4, false],
    ]);
  });

  it("has a stake at each end, one at each joint, and none farther apart than the spacing", () => {
    const [run] = borderOf({ ...rectangle, borderSides: [3] });
    expect(run!.stakes.map(({ kind }) => kind)).toEqual(
      "end between between between joint between between between joint between end".split(" "),
    );
    run!.stakes.slice(1).forEach((stake, i) => {
      expect(distance(stake, run!.stakes[i]!)).toBeLessThanOrEqual(2.5 + 1e-9);
    });
  });
});

describe("border round corners", () => {
  it("goes on from side to side, with one more stake at each corner", () => {
    const [run, ...others] = borderOf(rectangle, 0, 48);
    expect(others).toHaveLength(0);
    expect(run!.lengthFt).toBe(30);
    expect(run!.stakes).toHaveLength(stakes(30, 8, 48, 0, 2));
    expect(run!.stakes.filter(({ kind }) => kind === "corner")).toHaveLength(2);
  });

  it("needs no stake more at a corner that one is at already", () => {
    // Two pieces of 8 ft end at the corner of a side of 16 ft.
    const [run] = borderOf({ kind: "rectangle", lengthFt: 16, widthFt: 8, borderSides: [2, 3] }, 0, 48);
    expect(run!.stakes).toHaveLength(stakes(24, 8, 48));
  });

  it("has both corners of an end no wider than a hand, as the functions count them", () => {
    // 2 + 0.1 + 2 ft in one piece: at 18 in. or less stakes at 0, 1.37, 2.73, and 4.1 ft, and corners at 2 and 2.1.
    const [run] = borderOf({ kind: "rectangle", lengthFt: 2, widthFt: 0.1, borderSides: [1, 2, 3] }, 0, 18);
    expect(run!.stakes).toHaveLength(6);
    expect(stakes(4.1, 8, 18, 0, 2, false, 2, 0.1)).toBe(6);
  });

  it("follows a rounded corner along the arc", () => {
    const [run] = borderOf({ ...rectangle, cornerRadiusFt: 2, roundedCorners: 2 }, 0);
    // 5 + 20 + 5 − 2(2 − π/2)·2
    expect(run!.lengthFt).toBeCloseTo(28.2831853, 6);
    expect(run!.stakes.some(({ kind }) => kind === "corner")).toBe(false);
    const drawn = run!.pieces.flatMap(({ line }) => line.slice(1).map((point, i) => distance(line[i]!, point)));
    const length = drawn.reduce((sum, part) => sum + part, 0);
    expect(Math.abs(length - run!.lengthFt)).toBeLessThan(0.001);
  });
});

describe("border round a whole bed", () => {
  it("laps the first piece with the last", () => {
    const bed: Bed = { kind: "round", diameterFt: 10 };
    const [run] = borderOf(bed);
    expect(run!.closed).toBe(true);
    expect(run!.pieces).toHaveLength(edgingPieces(10 * Math.PI, 8, 2, true));
    expect(run!.stakes).toHaveLength(stakes(10 * Math.PI, 8, 30, 2, 0, true));
    expect(run!.joints).toHaveLength(run!.pieces.length);
    const [first, last] = [run!.pieces[0]!, run!.pieces.at(-1)!];
    // The last piece ends 2 in past the start of the first.
    expect(distance(last.line.at(-1)!, first.line[0]!)).toBeCloseTo(2 / 12, 3);
  });

  it("is laid round a cut-out where it is asked for, as a run of its own", () => {
    const runs = borderOf({ kind: "round", diameterFt: 10, innerDiameterFt: 3, innerBorder: true });
    expect(runs.map(({ lengthFt }) => lengthFt)).toEqual([10 * Math.PI, 3 * Math.PI]);
    expect(runs[1]!.pieces[0]!.number).toBe(runs[0]!.pieces.length + 1);
  });
});

it("makes one run for every side that is open by itself", () => {
  const runs = borderOf({ ...rectangle, borderSides: [2, 4] }, 0);
  expect(runs.map(({ lengthFt }) => lengthFt)).toEqual([5, 5]);
  expect(borderOf({ ...rectangle, borderSides: [] })).toEqual([]);
});
