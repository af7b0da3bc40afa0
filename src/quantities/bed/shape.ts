import { areaRectangle, areaRound } from "../area";
import { edgeLength } from "../edge";
import { messages } from "../messages";
import { areaPoints, type Point } from "../outline";
import { Problem } from "../problem";
import { areaWidths, edgeWidths } from "../widths";
import type { Bed, CutOut } from "./read";
import { sum } from "./sum";

/** What a bed's shape comes to, whichever way it was measured. */
export interface ShapeAmounts {
  readonly stoneArea: number;
  /** What the fabric has to span: for a bed that is no rectangle, its length by its widest width. */
  readonly fabricLength: number;
  readonly fabricWidth: number;
  readonly borderRun: number;
  /** A second, closed run round the inside of a ring; 0 elsewhere. */
  readonly innerRun: number;
  readonly squareCorners: number;
  /** Whether the border run comes back to where it began. */
  readonly closed: boolean;
}

/**
 * Area, spans and border of a bed.
 *
 * @throws Problem for a shape that cannot be: a radius with no room, an outline that crosses itself, cut-outs as
 *   large as the bed.
 */
export function shapeAmounts(bed: Bed): ShapeAmounts {
  const { stoneArea, ...others } = gross(bed);
  const placed = sum(bed.cutOuts.map(cutOutArea));
  const net = (bed.way === "rectangle" ? stoneArea : stoneArea - bed.numbers.cutOuts) - placed;
  if (net <= 0) throw new Problem("value", messages.nothingLeft(), "cut_outs");
  return { stoneArea: net, ...others };
}

function gross({ way, numbers, widthsFt, points, borderAfterPoint }: Bed): ShapeAmounts {
  switch (way) {
    case "rectangle": {
      const { length, width, cornerRadius, roundedCorners, longBorders, shortBorders } = numbers;
      const [long, short] = [Math.max(length, width), Math.min(length, width)];
      // Each long side that has a border meets each short side that has one in one corner.
      const corners = longBorders * shortBorders;
      const sides = longBorders * long + shortBorders * short;
      return {
        stoneArea: areaRectangle(length, width, cornerRadius, roundedCorners, [numbers.cutOuts]),
        ...spans(long, short),
        borderRun: edgeLength([sides], cornerRadius, Math.min(roundedCorners, corners)),
        innerRun: 0,
        squareCorners: Math.max(0, corners - roundedCorners),
        closed: longBorders + shortBorders === 4,
      };
    }
    case "round":
      return {
        stoneArea: areaRound(numbers.diameter, numbers.innerDiameter),
        ...spans(numbers.diameter, numbers.diameter),
        borderRun: Math.PI * numbers.diameter,
        innerRun: numbers.innerBorder * Math.PI * numbers.innerDiameter,
        squareCorners: 0,
        closed: true,
      };
    case "widths": {
      const ends = [widthsFt[0]!, widthsFt.at(-1)!].slice(0, numbers.endBorders);
      return {
        stoneArea: areaWidths(numbers.spacing, widthsFt),
        ...spans(numbers.spacing * (widthsFt.length - 1), Math.max(...widthsFt)),
        borderRun: edgeWidths(numbers.spacing, widthsFt) + sum(ends),
        innerRun: 0,
        squareCorners: numbers.corners,
        closed: false,
      };
    }
    case "points":
      return {
        stoneArea: areaPoints(points),
        ...spans(extent(points.map(([x]) => x)), extent(points.map(([, y]) => y))),
        borderRun: sum(sideLengths(points).filter((_, index) => borderAfterPoint[index])),
        innerRun: 0,
        squareCorners: numbers.corners,
        closed: borderAfterPoint.every((border) => border),
      };
    case "area":
      return {
        stoneArea: numbers.area,
        ...spans(numbers.longest, numbers.widest),
        borderRun: numbers.edge,
        innerRun: 0,
        squareCorners: numbers.corners,
        closed: false,
      };
  }
}

function cutOutArea({ across, deep }: CutOut): number {
  return deep === undefined ? (Math.PI / 4) * across ** 2 : across * deep;
}

/** From each point to the next, and from the last to the first. */
function sideLengths(points: readonly Point[]): number[] {
  return points.map(([x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length]!;
    return Math.hypot(nextX - x, nextY - y);
  });
}

function spans(one: number, other: number) {
  return { fabricLength: Math.max(one, other), fabricWidth: Math.min(one, other) };
}

const extent = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
