import type { Bed, CutOut } from "../src/layout/bed";
import type { Point } from "../src/layout/plane";

/** Points from pairs of numbers, as short to write as a list taken in the field. */
export const points = (...pairs: readonly (readonly [number, number])[]): Point[] => pairs.map(([x, y]) => ({ x, y }));

export const byPoints = (...pairs: readonly (readonly [number, number])[]): Bed => ({
  kind: "points",
  points: points(...pairs),
});

export const rectangle = (lengthFt: number, widthFt: number): Bed => ({ kind: "rectangle", lengthFt, widthFt });

/** A rectangular cut-out from its lower left corner. */
export const pad = (x: number, y: number, across: number, deep: number): CutOut => ({
  kind: "outline",
  points: points([x, y], [x + across, y], [x + across, y + deep], [x, y + deep]),
});

/** 20 by 6 ft along the base line, with a leg of 8 by 6 ft more on the left. */
export const lShape = byPoints([0, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12]);

/** 12 by 9 ft, open at the top between x = 4 and x = 8 down to y = 3. */
export const uShape = byPoints([0, 0], [12, 0], [12, 9], [8, 9], [8, 3], [4, 3], [4, 9], [0, 9]);
