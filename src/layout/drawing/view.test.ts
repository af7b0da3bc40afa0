import { describe, expect, it } from "vitest";
import { rectangle } from "../../../test/planBeds";
import { layOutBed } from "../layOutBed";
import { LabelBoard } from "./labels";
import { onSheet, projection, shifted, uprightTurn } from "./view";

const margins = { left: 40, right: 60, top: 30, bottom: 50 };

describe("the bed on the sheet", () => {
  it("is as wide as the room between the margins, with y going up", () => {
    // 300 − 40 − 60 = 200 pixels for 20 ft; 30 + 50 + 50 high.
    const { scale, height, at } = projection(
      layOutBed(rectangle(20, 5), { rollWidthFt: 6, overlapIn: 6 }),
      300,
      margins,
      400,
    );
    expect([scale, height]).toEqual([10, 130]);
    expect(at({ x: 0, y: 0 })).toEqual({ x: 40, y: 80 });
    expect(at({ x: 20, y: 5 })).toEqual({ x: 240, y: 30 });
  });

  it("is in the middle where its height is what limits it", () => {
    // 180 − 30 − 50 = 100 pixels for 20 ft: 5 ft are 25 pixels in a room of 200.
    const bed = {
      kind: "points" as const,
      points: [
        { x: 2, y: 3 },
        { x: 7, y: 3 },
        { x: 7, y: 23 },
        { x: 2, y: 23 },
      ],
    };
    const { scale, height, at } = projection(layOutBed(bed, { rollWidthFt: 6, overlapIn: 6 }), 300, margins, 180);
    expect([scale, height]).toEqual([5, 180]);
    expect(at({ x: 2, y: 3 })).toEqual({ x: 40 + 87.5, y: 130 });
    expect(at({ x: 7, y: 23 })).toEqual({ x: 40 + 112.5, y: 30 });
  });

  it("turns directions over, and moves points along them", () => {
    expect(onSheet({ x: 0.6, y: 0.8 })).toEqual({ x: 0.6, y: -0.8 });
    expect(shifted({ x: 10, y: 20 }, { x: 0.6, y: -0.8 }, 5)).toEqual({ x: 13, y: 16 });
  });

  it.each([
    [1, 0, 0],
    [1, 1, 45],
    [1, -1, -45],
    [-1, 0, 0],
    [-1, 1, -45],
    [-1, -1, 45],
    // Straight up or down the sheet is read from the right.
    [0, 1, -90],
    [0, -1, -90],
  ])("keeps text along %s, %s upright by turning it %s°", (x, y, degrees) => {
    expect(uprightTurn({ x, y }) + 0).toBeCloseTo(degrees, 9);
  });

  it("lets text lean up to half a degree past upright before it is turned over", () => {
    const along = (degrees: number) => ({
      x: Math.cos((degrees * Math.PI) / 180),
      y: Math.sin((degrees * Math.PI) / 180),
    });
    expect([89.4, 89.6, -90.4, -90.6].map((degrees) => uprightTurn(along(degrees)))).toEqual(
      [89.4, -90.4, -90.4, 89.4].map((turn) => expect.closeTo(turn, 9)),
    );
  });
});

describe("places for labels", () => {
  const box = (x: number, y: number, turn?: number) => ({
    center: { x, y },
    width: 40,
    height: 10,
    ...(turn !== undefined && { turn }),
  });
  const board = (...taken: ReturnType<typeof box>[]) => {
    const labels = new LabelBoard({ width: 200, height: 100 });
    for (const one of taken) labels.take(one);
    return labels;
  };

  it.each([
    [20, 5, true],
    [180, 95, true],
    [19.9, 50, false],
    [180.1, 50, false],
    [100, 4.9, false],
    [100, 95.1, false],
  ])("a label at %s, %s lies on the sheet of 200 by 100: %s", (x, y, fits) => {
    expect(board().isFree(box(x, y))).toBe(fits);
  });

  it.each([
    // Beside a label of 40 by 10 at 100, 50: 40 apart along, 10 across.
    [140, 50, true],
    [139, 50, false],
    [60, 50, true],
    [61, 50, false],
    [100, 60, true],
    [100, 59, false],
    [100, 40, true],
    [100, 41, false],
    [139, 59, false],
    [139, 61, true],
  ])("a label at %s, %s is clear of the one in the middle: %s", (x, y, clear) => {
    expect(board(box(100, 50)).isFree(box(x, y))).toBe(clear);
    expect(board(box(50, 20), box(100, 50)).isFree(box(x, y))).toBe(clear);
  });

  it.each([
    // Upright on the sheet it is 10 wide and 40 high: 20 + 5 from middle to middle, along and across.
    [126, 50, true],
    [124, 50, false],
    [100, 76, true],
    [100, 74, false],
  ])("a label turned by 90° at %s, %s is clear of it: %s", (x, y, clear) => {
    expect(board(box(100, 50)).isFree(box(x, y, 90))).toBe(clear);
    expect(board(box(x, y, 90)).isFree(box(100, 50))).toBe(clear);
  });

  it("a label turned by 45° leaves the corners of its upright bounds free", () => {
    // It reaches 17.7 along and across; a small one beside its middle, square to it, has to be 5 + 3 away.
    const turned = board(box(100, 50, 45));
    const small = (x: number, y: number) => ({ center: { x, y }, width: 6, height: 6, turn: 45 });
    expect(turned.isFree(small(100 + 8.1 * Math.SQRT1_2, 50 - 8.1 * Math.SQRT1_2))).toBe(true);
    expect(turned.isFree(small(100 + 7.9 * Math.SQRT1_2, 50 - 7.9 * Math.SQRT1_2))).toBe(false);
    expect(turned.isFree(small(100 + 23.1 * Math.SQRT1_2, 50 + 23.1 * Math.SQRT1_2))).toBe(true);
    expect(turned.isFree(small(100 + 22.9 * Math.SQRT1_2, 50 + 22.9 * Math.SQRT1_2))).toBe(false);
  });

  it("are taken when they are given, and asking takes none", () => {
    const labels = board();
    expect(labels.isFree(box(50, 50))).toBe(true);
    expect(labels.isFree(box(50, 50))).toBe(true);
    expect(labels.place([box(50, 50)])).toEqual(box(50, 50));
    expect(labels.place([box(50, 50)])).toBeUndefined();
    expect(labels.place([])).toBeUndefined();
  });

  it("to be avoided count only while a label is asked to keep clear of them", () => {
    const labels = board();
    labels.avoid(box(50, 50));
    labels.avoid(box(150, 50));
    expect([labels.isFree(box(50, 50)), labels.isFree(box(50, 50), false)]).toEqual([false, true]);
    expect([labels.isFree(box(150, 52)), labels.isFree(box(100, 52))]).toEqual([false, true]);
  });
});
