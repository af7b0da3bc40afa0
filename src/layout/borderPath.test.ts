import { describe, expect, it } from "vitest";
import { byPoints, rectangle } from "../../test/planBeds";
import type { Bed } from "./bed";
import { type BorderRun, placeBorder } from "./border";
import { borderPaths, cornersOfPath, markOnPath, stretchOfPath } from "./borderPath";
import { borderRulesOf } from "./options";
import { outlineOf } from "./outlineOf";
import type { Point } from "./plane";

const bed = rectangle(20, 5);
const closed: Bed = { ...bed, borderSides: [1, 2, 3, 4] };
const pathsOf = (one: Bed) => borderPaths(outlineOf(one).ring);
const runsOf = (one: Bed, lapIn = 0) =>
  placeBorder(outlineOf(one), borderRulesOf({ pieceLengthFt: 8, lapIn, stakeSpacingIn: 48 }));
const places = (line: readonly Point[]) => line.map(({ x, y }) => `${round(x)},${round(y)}`);
const round = (value: number) => Number(value.toFixed(4)) + 0;
/** Stakes as "kind x,y → outward". */
const stakesOf = ({ stakes }: BorderRun) =>
  stakes.map(({ kind, x, y, outward }) => `${kind} ${round(x)},${round(y)} → ${round(outward.x)},${round(outward.y)}`);

describe("the way of the border", () => {
  it("runs with the bed on its right, over sides that follow one another", () => {
    const [open, ...others] = pathsOf(bed);
    expect(others).toEqual([]);
    expect([open!.closed, open!.lengthFt]).toEqual([false, 30]);
    expect(places(stretchOfPath(open!, 0, 30))).toEqual(["0,0", "0,5", "20,5", "20,0"]);
    // Sides 1 and 4 meet at the ring's first point.
    const [corner] = pathsOf({ ...bed, borderSides: [1, 4] });
    expect(places(stretchOfPath(corner!, 0, 25))).toEqual(["20,0", "0,0", "0,5"]);
    expect(pathsOf({ ...bed, borderSides: [2, 4] }).map(({ lengthFt }) => lengthFt)).toEqual([5, 5]);
    expect(pathsOf({ ...bed, borderSides: [1, 3] }).map((path) => places(stretchOfPath(path, 0, 20)))).toEqual([
      ["0,5", "20,5"],
      ["20,0", "0,0"],
    ]);
    expect(pathsOf({ ...bed, borderSides: [] })).toEqual([]);
  });

  it("is closed where every side gets border, and goes on past its end", () => {
    const [all] = pathsOf(closed);
    expect([all!.closed, all!.lengthFt]).toEqual([true, 50]);
    expect(places(stretchOfPath(all!, 48, 53))).toEqual(["2,0", "0,0", "0,3"]);
    expect(places(stretchOfPath(all!, 2, 28))).toEqual(["0,2", "0,5", "20,5", "20,2"]);
    expect(places([markOnPath(all!, 52)])).toEqual(["0,2"]);
  });

  it("is drawn along an arc in chords of 2°", () => {
    const rounded: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 1 };
    const [path] = pathsOf(rounded);
    // Up 3 ft, then a quarter of a circle of radius 2 ft: half of it is π/2 ft, 22 whole chords of 2° and half a one.
    const drawn = stretchOfPath(path!, 2, 3 + Math.PI / 2);
    expect(drawn).toHaveLength(1 + 23 + 1);
    expect(places([drawn[0]!, drawn[1]!, drawn.at(-1)!])).toEqual([
      "0,2",
      "0,3",
      `${round(2 - Math.SQRT2)},${round(3 + Math.SQRT2)}`,
    ]);
  });

  it("has a mark square to each side, and one to the middle at a corner", () => {
    const [open] = pathsOf(bed);
    const outwardAt = (at: number) => places([markOnPath(open!, at).outward])[0];
    expect([0, 2, 4.9].map(outwardAt)).toEqual(["-1,0", "-1,0", "-1,0"]);
    // At a right angle the corner of a band of width 1 is 1 out of both sides.
    expect([5, 5.0000001].map(outwardAt)).toEqual(["-1,1", "-1,1"]);
    expect([15, 25, 30].map(outwardAt)).toEqual(["0,1", "1,1", "1,0"]);
    expect(places([markOnPath(open!, 31)])).toEqual(["20,0"]);
    const [all] = pathsOf(closed);
    expect(places([markOnPath(all!, 0).outward, markOnPath(all!, 50).outward])).toEqual(["-1,-1", "-1,-1"]);
  });

  it("has marks square to the border where a side runs into a rounded corner and out of it", () => {
    const rounded: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 1 };
    const [path] = pathsOf(rounded);
    const outwardAt = (at: number) => places([markOnPath(path!, at).outward])[0];
    // Up 3 ft, a quarter of a circle of 2 ft, π ft long, and on along the front.
    expect([3, 3 + 1e-7, 3 + Math.PI, 3 + Math.PI + 1e-7].map(outwardAt)).toEqual(["-1,0", "-1,0", "0,1", "0,1"]);
    expect(outwardAt(3 + Math.PI / 2)).toBe("-0.7071,0.7071");
  });

  it("keeps the mark of a sharp corner to one and a half times the band's width", () => {
    // An equilateral triangle: the corner of the band would be 2 out, to the left and down from 0, 0.
    const [path] = pathsOf(byPoints([0, 0], [6, 0], [3, 3 * Math.sqrt(3)]));
    const { outward } = markOnPath(path!, 0);
    expect(Math.sqrt(outward.x ** 2 + outward.y ** 2)).toBeCloseTo(1.5, 9);
    expect(outward.y / outward.x).toBeCloseTo(1 / Math.sqrt(3), 9);
    // A bend of 3-4-5: 0.6 along and 0.8 up after a level side. The ways out are 0, 1 and −0.8, 0.6: 2 · sum/|sum|².
    const [bent] = pathsOf({ ...byPoints([0, 0], [10, 0], [10, 9], [6, 9], [3, 5], [0, 5]), borderSides: [4, 5] });
    expect(places([markOnPath(bent!, 3).outward])).toEqual(["-0.5,1"]);
  });

  it("turns a corner where it turns by more than 30°, at the start as well where it is closed", () => {
    expect(cornersOfPath(pathsOf(bed)[0]!)).toEqual([5, 25]);
    expect(cornersOfPath(pathsOf(closed)[0]!)).toEqual([0, 5, 25, 30]);
    expect(cornersOfPath(pathsOf({ kind: "round", diameterFt: 9 })[0]!)).toEqual([]);
    // The front bends by 14° on either side of its middle.
    expect(cornersOfPath(pathsOf({ kind: "widths", spacingFt: 4, widthsFt: [4, 5, 4] })[0]!)).toEqual([
      4,
      expect.closeTo(4 + 2 * Math.sqrt(17), 9),
    ]);
  });
});

describe("pieces and stakes", () => {
  it("lie one after another along an open run, the last cut to what is left", () => {
    const [run] = runsOf(bed);
    expect(
      run!.pieces.map(({ number, lengthFt, isWhole, line }) => [number, lengthFt, isWhole, ...places(line)]),
    ).toEqual([
      [1, 8, true, "0,0", "0,5", "3,5"],
      [2, 8, true, "3,5", "11,5"],
      [3, 8, true, "11,5", "19,5"],
      [4, 6, false, "19,5", "20,5", "20,0"],
    ]);
    expect(places(run!.joints)).toEqual(["3,5", "11,5", "19,5"]);
    // Every piece in two gaps of at most 4 ft; the corners at 5 and 25 ft along are a foot from the next stake.
    expect(stakesOf(run!)).toEqual([
      "end 0,0 → -1,0",
      "between 0,4 → -1,0",
      "corner 0,5 → -1,1",
      "joint 3,5 → 0,1",
      "between 7,5 → 0,1",
      "joint 11,5 → 0,1",
      "between 15,5 → 0,1",
      "joint 19,5 → 0,1",
      "corner 20,5 → 1,1",
      "between 20,3 → 1,0",
      "end 20,0 → 1,0",
    ]);
  });

  it("lap by the lap at each joint", () => {
    const [run] = runsOf(bed, 6);
    expect(run!.pieces.map(({ lengthFt, line }) => [lengthFt, places(line)[0], places(line).at(-1)])).toEqual([
      [8, "0,0", "3,5"],
      [8, "2.5,5", "10.5,5"],
      [8, "10,5", "18,5"],
      [7.5, "17.5,5", "20,0"],
    ]);
    expect(places(run!.joints)).toEqual(["2.5,5", "10,5", "17.5,5"]);
  });

  it("go on around a bed, the last lapping the first", () => {
    const [run] = runsOf(closed, 6);
    // 7 pieces gain 7.5 ft each, 52.5 ft over the 50 ft around; the last begins at 45 ft and ends half a foot past the start.
    expect(run!.pieces).toHaveLength(7);
    const last = run!.pieces.at(-1)!;
    expect([last.lengthFt, last.isWhole, ...places(last.line)]).toEqual([5.5, false, "5,0", "0,0", "0,0.5"]);
    expect(run!.joints).toHaveLength(7);
    expect(run!.stakes[0]).toMatchObject({ kind: "joint", x: 0, y: 0 });
    expect(run!.stakes.some(({ kind }) => kind === "end")).toBe(false);
  });

  it("that are a 64th of an inch short of a whole piece are not cut", () => {
    const wholes = (length: number) =>
      runsOf({ ...rectangle(length, 5), borderSides: [3] })[0]!.pieces.map(({ isWhole }) => isWhole);
    expect(wholes(16)).toEqual([true, true]);
    expect(wholes(15.999)).toEqual([true, true]);
    expect(wholes(15.99)).toEqual([true, false]);
  });

  it("hold a corner that a stake stands within 3 in. of, across the start of a closed run as well", () => {
    // A corner cut off at 45°, 0.15 ft from either side: its 0.21 ft end where the run begins. The
    // corner at 10, 0 is 4.85 + 10 + 5 ft along, 0.15 ft from the stake at 20 ft.
    const cut = byPoints([0, 0.15], [0.15, 0], [10, 0], [10, 5], [0, 5]);
    const [run] = runsOf(cut);
    const corners = stakesOf(run!).filter((stake) => stake.startsWith("corner"));
    expect(corners.map((stake) => stake.split(" ")[1]).sort()).toEqual(["0,5", "10,5"]);
    const farther = byPoints([0, 0.3], [0.3, 0], [10, 0], [10, 5], [0, 5]);
    expect(stakesOf(runsOf(farther)[0]!).filter((stake) => stake.startsWith("corner 0.3,0"))).toHaveLength(1);
  });
});
