import type { Point } from "./plane";

/**
 * A bed as an estimator measured it, lengths in feet. Every way of measuring shares the cut-outs and the choice of
 * sides that get border. Sides are numbered as the drawing shows them.
 */
export type Bed = RectangleBed | RoundBed | WidthsBed | PointsBed;

interface BedBasics {
  readonly cutOuts?: readonly CutOut[];
  /**
   * Sides along which border is set, by number. Left out: every side but the first of a rectangle (the house
   * side) and of a bed taped by widths (the base line); all sides of any other bed.
   */
  readonly borderSides?: readonly number[];
}

/**
 * Side 1 is the house side, along y = 0 from x = 0; side 2 is on the right, 3 in front, 4 on the left. Rounded
 * corners count from the front: front left, front right, back left, back right.
 */
export interface RectangleBed extends BedBasics {
  readonly kind: "rectangle";
  readonly lengthFt: number;
  readonly widthFt: number;
  readonly cornerRadiusFt?: number;
  readonly roundedCorners?: number;
  /** Which corners are rounded, 1 or 0 in that order; empty or left out: so many of the first. */
  readonly rounded?: readonly number[];
}

/** Centered on x = 0, y = 0. An inner circle is a cut-out; `innerBorder` sets border round it as well. */
export interface RoundBed extends BedBasics {
  readonly kind: "round";
  readonly diameterFt: number;
  readonly innerDiameterFt?: number;
  readonly innerBorder?: boolean;
}

/** Side 1 is the base line, along y = 0 from x = 0; the others follow counterclockwise. */
export interface WidthsBed extends BedBasics {
  readonly kind: "widths";
  readonly spacingFt: number;
  readonly widthsFt: readonly number[];
  /** How the area is calculated from the widths; left out: "simpson". */
  readonly rule?: "simpson" | "trapezoid";
}

/** Side n runs from point n to the next, the last one back to the first. */
export interface PointsBed extends BedBasics {
  readonly kind: "points";
  readonly points: readonly Point[];
}

export type CutOut = CircleCutOut | OutlineCutOut;

interface CutOutBasics {
  /** As the drawing and the messages call it, such as "meter pad"; left out: "cut-out 2". */
  readonly name?: string;
  /** Border is set round it. */
  readonly border?: boolean;
}

export interface CircleCutOut extends CutOutBasics {
  readonly kind: "circle";
  readonly center: Point;
  readonly diameterFt: number;
}

export interface OutlineCutOut extends CutOutBasics {
  readonly kind: "outline";
  readonly points: readonly Point[];
}
