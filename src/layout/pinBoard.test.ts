import { describe, expect, it } from "vitest";
import { PinBoard } from "./pinBoard";

describe("pins on the board", () => {
  it("stand once in one place, worked out in two ways", () => {
    const board = new PinBoard(0.5);
    board.add({ x: 2, y: 3 }, "corner");
    board.add({ x: 2, y: 3.000009 }, "edge");
    board.add({ x: 2, y: 3.000011 }, "row");
    expect(board.pins).toEqual([
      { x: 2, y: 3, kind: "corner" },
      { x: 2, y: 3.000011, kind: "row" },
    ]);
  });

  // A pin at 0.1 from a line of the board's half-foot cells, asked about from all round: 0.3, 0.4 make 0.5.
  it.each([
    [0.29, 0.4, true],
    [-0.29, 0.4, true],
    [0.29, -0.4, true],
    [-0.29, -0.4, true],
    [0.31, 0.4, false],
    [-0.31, -0.4, false],
    [0, 0.49, true],
    [-0.49, 0, true],
    [0, -0.51, false],
  ])("are found %s along and %s across from where someone asks: %s", (along, across, near) => {
    for (const [x, y] of [
      [5.1, 7.6],
      [-3.1, -0.1],
      [0.1, 0.1],
      [400.25, -400.25],
    ] as const) {
      const board = new PinBoard(0.5);
      board.add({ x, y }, "edge");
      expect(board.hasNear({ x: x + along, y: y + across })).toBe(near);
    }
  });

  it("are found among others in the same cell", () => {
    const board = new PinBoard(1);
    for (const x of [0.1, 0.5, 0.9]) board.add({ x, y: 0.5 }, "row");
    expect(board.hasNear({ x: 0.92, y: 0.5 }, 0.05)).toBe(true);
    expect(board.hasNear({ x: 0.7, y: 0.5 }, 0.05)).toBe(false);
    expect(new PinBoard(1).hasNear({ x: 0, y: 0 })).toBe(false);
  });

  it("are told apart by what binary noise leaves, however near they are asked about", () => {
    const board = new PinBoard(0);
    board.add({ x: 1, y: 1 }, "row");
    board.add({ x: 1.000006, y: 1 }, "row");
    board.add({ x: 1.000012, y: 1 }, "row");
    expect(board.pins.map(({ x }) => x)).toEqual([1, 1.000012]);
  });
});
