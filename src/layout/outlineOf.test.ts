import { describe, expect, it } from "vitest";
import { Problem } from "../quantities/problem";
import type { Bed, CutOut } from "./bed";
import { netArea, ringArea, ringLength } from "./outline";
import { borderlessOutlineOf, outlineOf } from "./outlineOf";
import { type Point, signedArea } from "./plane";

const points = (...pairs: readonly (readonly [number, number])[]): Point[] => pairs.map(([x, y]) => ({ x, y }));
const byPoints = (...pairs: readonly (readonly [number, number])[]): Bed => ({
  kind: "points",
  points: points(...pairs),
});
const borderSides = (bed: Bed) => outlineOf(bed).ring.runs.flatMap(({ border, side }) => (border ? [side] : []));
const tenByTen = byPoints([0, 0], [10, 0], [10, 10], [0, 10]);
const square = (name: string, x: number, y: number, side: number): CutOut => ({
  kind: "outline",
  name,
  points: points([x, y], [x + side, y], [x + side, y + side], [x, y + side]),
});

describe("a rectangle in plan", () => {
  it("lies along the house from 0, 0 and runs counterclockwise", () => {
    const { ring } = outlineOf({ kind: "rectangle", lengthFt: 20, widthFt: 5 });
    expect(ring.points).toEqual(points([0, 0], [20, 0], [20, 5], [0, 5]));
  });

  it("rounds the front corners first", () => {
    const { ring } = outlineOf({ kind: "rectangle", lengthFt: 18.5, widthFt: 5, cornerRadiusFt: 2, roundedCorners: 2 });
    const square = ring.points.filter(({ x, y }) => y === 0 && (x === 0 || x === 18.5));
    expect(square).toHaveLength(2);
    // 18.5 × 5 − 2(1 − π/4)·2²; and 2(18.5 + 5) − 2(2 − π/2)·2, worked by hand.
    expect(ringArea(ring)).toBeCloseTo(90.78318531, 8);
    expect(ringLength(ring)).toBeCloseTo(45.28318531, 8);
  });

  it("becomes a disc where all four corners take half of it", () => {
    const { ring } = outlineOf({ kind: "rectangle", lengthFt: 6, widthFt: 6, cornerRadiusFt: 3, roundedCorners: 4 });
    expect(ringArea(ring)).toBeCloseTo(Math.PI * 9, 10);
    expect(ring.runs).toHaveLength(4);
  });

  it("gets border on all sides but the house side, rounded corners included", () => {
    expect(borderSides({ kind: "rectangle", lengthFt: 20, widthFt: 5 })).toEqual([2, 3, 4]);
    const rounded: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 1, roundedCorners: 1 };
    expect(borderSides(rounded)).toEqual([2, 3, undefined, 4]);
    expect(borderSides({ ...rounded, borderSides: [1, 2] })).toEqual([1, 2]);
  });

  it("refuses corners that do not fit, and sides that are not there", () => {
    const bed: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5 };
    expect(() => outlineOf({ ...bed, cornerRadiusFt: 3, roundedCorners: 2 })).toThrow("Type 2.5 ft or less");
    expect(() => outlineOf({ ...bed, cornerRadiusFt: 1, roundedCorners: 5 })).toThrow("Rounded corners is 5");
    expect(() => outlineOf({ ...bed, lengthFt: 0 })).toThrow("The length is 0");
    expect(() => outlineOf({ ...bed, borderSides: [5] })).toThrow("no side 5");
  });
});

describe("border at rounded corners", () => {
  // All four corners rounded: sides 1 to 4, each followed by its corner.
  const rounded: Bed = { kind: "rectangle", lengthFt: 20, widthFt: 5, cornerRadiusFt: 1, roundedCorners: 4 };
  const bordered = (sides: number[]) =>
    outlineOf({ ...rounded, borderSides: sides }).ring.runs.map(
      ({ border, side }) => `${side ?? "corner"}${border ? "+" : ""}`,
    );

  it.each([
    [[2], "1 corner+ 2+ corner+ 3 corner 4 corner"],
    [[1], "1+ corner+ 2 corner 3 corner 4 corner+"],
    [[4], "1 corner 2 corner 3 corner+ 4+ corner+"],
    [[1, 2, 3, 4], "1+ corner+ 2+ corner+ 3+ corner+ 4+ corner+"],
    [[], "1 corner 2 corner 3 corner 4 corner"],
  ])("for sides %j goes around the corners next to them", (sides, expected) => {
    expect(bordered(sides).join(" ")).toBe(expected);
  });

  it("is on all sides of a bed that stands free, and on none of the plain outline", () => {
    expect(borderSides(byPoints([0, 0], [9, 0], [5, 5]))).toEqual([1, 2, 3]);
    expect(borderSides({ kind: "round", diameterFt: 9 })).toEqual([1]);
    const plain: Bed[] = [
      { ...rounded, borderSides: [1, 2] },
      byPoints([0, 0], [9, 0], [5, 5]),
      { kind: "round", diameterFt: 9 },
      { kind: "widths", spacingFt: 4, widthsFt: [2, 3, 1] },
    ];
    for (const bed of plain) expect(borderlessOutlineOf(bed).ring.runs.filter(({ border }) => border)).toEqual([]);
    expect(() => borderlessOutlineOf({ ...tenByTen, cutOuts: [square("pad", 8, 4, 3)] })).toThrow("reaches outside");
  });
});

describe("a round bed in plan", () => {
  it("is drawn by chords that take less than 0.05 % off its area", () => {
    const { ring } = outlineOf({ kind: "round", diameterFt: 12 });
    const drawn = signedArea(ring.points);
    expect(drawn).toBeLessThan(ringArea(ring));
    expect(drawn).toBeGreaterThan(ringArea(ring) * (1 - 0.0005));
  });

  it("has its inner circle as a cut-out, with border where it is asked for", () => {
    const outline = outlineOf({ kind: "round", diameterFt: 10, innerDiameterFt: 3, innerBorder: true });
    // Ring of diameters 10 and 3: 71.4714 printed with 0.7854 for π/4 (NAVEDTRA 14119).
    expect(netArea(outline)).toBeCloseTo(71.4712, 3);
    expect(outline.cutOuts[0]!.ring.runs[0]!.border).toBe(true);
    expect(() => outlineOf({ kind: "round", diameterFt: 3, innerDiameterFt: 10 })).toThrow("Check which is which");
  });
});

describe("a bed taped by widths", () => {
  it("runs along the base line and back over the widths, straight from one to the next", () => {
    const { ring } = outlineOf({ kind: "widths", spacingFt: 4, widthsFt: [2, 3, 1] });
    expect(ring.points).toEqual(points([0, 0], [8, 0], [8, 1], [4, 3], [0, 2]));
    expect(borderSides({ kind: "widths", spacingFt: 4, widthsFt: [2, 3, 1] })).toEqual([2, 3, 4, 5]);
  });

  it("runs to a point where a width at the end is 0, and begins at the last 0", () => {
    const { ring } = outlineOf({ kind: "widths", spacingFt: 4, widthsFt: [0, 0, 3, 0] });
    expect(ring.points).toEqual(points([4, 0], [12, 0], [8, 3]));
    expect(ring.runs.map(({ border }) => border)).toEqual([false, true, true]);
  });

  it("refuses what makes no single bed, and names the width", () => {
    const taped = (...widthsFt: number[]) => outlineOf({ kind: "widths", spacingFt: 4, widthsFt });
    expect(() => taped(3)).toThrow("There is 1 width");
    expect(() => taped(0, 0)).toThrow("All the widths are 0");
    expect(() => taped(3, -1)).toThrow("Width 2 is -1");
    expect(() => taped(3, 0, 3)).toThrow("Width 2 (at 4 ft along the base line) is 0 between wider spots");
    expect(() => taped(3, Number.NaN)).toThrow("Width 2: can't use NaN");
  });
});

describe("a bed given by points", () => {
  it("keeps its side numbers whichever way round it was walked", () => {
    const walked = points([0, 0], [0, 5], [10, 5], [10, 0]);
    const { ring } = outlineOf({ kind: "points", points: walked, borderSides: [2] });
    expect(signedArea(ring.points)).toBe(50);
    const bordered = ring.runs.find(({ border }) => border)!;
    expect(bordered).toMatchObject({ side: 2, from: { x: 10, y: 5 }, to: { x: 0, y: 5 } });
  });

  it("may give the first point again at the end, or a point twice", () => {
    const { ring } = outlineOf(byPoints([0, 0], [4, 0], [4, 0], [4, 3], [0, 0]));
    expect(ring.points).toHaveLength(3);
  });

  it.each([
    ["crosses", "Side 1 of the outline crosses side 3 at x 1, y 1", byPoints([0, 0], [2, 2], [2, 0], [0, 2])],
    ["touches", "Side 1 of the outline touches side 3 at x 5, y 0", byPoints([0, 0], [10, 0], [10, 5], [5, 0], [0, 5])],
    ["folds back", "Sides 1 and 2 of the outline overlap", byPoints([0, 0], [9, 0], [5, 0], [5, 5])],
    ["has two points", "has 2 different points", byPoints([0, 0], [2, 2], [0, 0])],
    ["is a line", "all on one line", byPoints([0, 0], [2, 2], [4, 4])],
  ])("is refused with the place where it %s", (_, message, bed) => {
    expect(() => outlineOf(bed)).toThrow(message);
    expect(() => outlineOf(bed)).toThrow(Problem);
  });
});

describe("cut-outs", () => {
  it("are called by their place in the list where they have no name, and get border where it is asked for", () => {
    const post = { kind: "circle" as const, center: { x: 7, y: 7 }, diameterFt: 1 };
    const { name: _, ...pad } = { ...square("", 2, 2, 3) };
    const { cutOuts } = outlineOf({
      ...tenByTen,
      cutOuts: [pad, { ...post, border: true, name: " gas valve " }, { ...post, center: { x: 2, y: 8 } }],
    });
    expect(cutOuts.map(({ name, ring }) => [name, ring.runs.some(({ border }) => border)])).toEqual([
      ["cut-out 1", false],
      ["gas valve", true],
      ["cut-out 3", false],
    ]);
    // All of them run clockwise, so that the bed lies to their left.
    for (const { ring } of cutOuts) expect(signedArea(ring.points)).toBeLessThan(0);
  });

  it("come after the inner circle of a ring, which gets border only where it is asked for", () => {
    const ring: Bed = { kind: "round", diameterFt: 10, innerDiameterFt: 3, cutOuts: [square("pad", 2.5, 0, 1)] };
    const { cutOuts } = outlineOf(ring);
    expect(cutOuts.map(({ name }) => name)).toEqual(["inner circle", "pad"]);
    expect(cutOuts[0]!.ring.runs).toEqual([
      { kind: "arc", side: 1, center: { x: 0, y: 0 }, radius: 1.5, startAngle: 0, sweep: -2 * Math.PI, border: false },
    ]);
    expect(outlineOf({ ...ring, innerDiameterFt: 0 }).cutOuts.map(({ name }) => name)).toEqual(["pad"]);
  });

  it("may stand against the wall, and against one another", () => {
    const outline = outlineOf({ ...tenByTen, cutOuts: [square("pad", 2, 0, 3), square("step", 5, 0, 3)] });
    expect(netArea(outline)).toBeCloseTo(82, 12);
  });

  it.each([
    ["crosses the edge", "“pad” reaches outside the bed at x 10", [square("pad", 8, 4, 3)]],
    ["lies beside the bed", "“pad” reaches outside the bed", [square("pad", 20, 4, 3)]],
    ["holds the bed", "“pad” reaches outside the bed", [square("pad", -1, -1, 12)]],
    ["overlaps another", "“pad” and “step” overlap", [square("pad", 2, 2, 3), square("step", 4, 4, 3)]],
    ["lies in another", "“pad” and “step” overlap", [square("pad", 2, 2, 5), square("step", 3, 3, 1)]],
    ["is given twice", "“pad” and “pad” overlap", [square("pad", 2, 2, 5), square("pad", 2, 2, 5)]],
    ["is the bed itself", "take up the whole bed", [square("pad", 0, 0, 10)]],
    ["has no size", "The diameter of “cut-out 1” is 0", [{ kind: "circle", center: { x: 5, y: 5 }, diameterFt: 0 }]],
  ] as [string, string, CutOut[]][])("are refused where one %s", (_, message, cutOuts) => {
    expect(() => outlineOf({ ...tenByTen, cutOuts })).toThrow(message);
  });

  it("are refused where an edge leaves a bay of the bed, though its corners lie in it", () => {
    const bay = byPoints([0, 0], [10, 0], [10, 10], [5, 4], [0, 10]);
    const wedge: CutOut = { kind: "outline", name: "slab", points: points([0, 10], [0, 3], [10, 10]) };
    expect(() => outlineOf({ ...bay, cutOuts: [wedge] })).toThrow("“slab” reaches outside the bed");
  });
});
