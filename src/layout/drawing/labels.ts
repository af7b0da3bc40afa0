import { distance, type Point } from "../plane";

/** A box on the sheet, turned by some degrees clockwise round its center. */
export interface Box {
  readonly center: Point;
  readonly width: number;
  readonly height: number;
  readonly turn?: number;
}

/** A box with what is asked of it time and again. */
interface Shape {
  readonly center: Point;
  readonly corners: readonly Point[];
  /** Unit vectors along its two sides. */
  readonly sides: readonly [Point, Point];
  /** From the center to a corner. */
  readonly radius: number;
}

/** The places on a sheet that are taken by text and marks, so that no two lie on one another. */
export class LabelBoard {
  private readonly taken: Shape[] = [];
  private readonly avoided: Shape[] = [];

  /** @param sheet the box that labels have to stay within. */
  constructor(private readonly sheet: { readonly width: number; readonly height: number }) {}

  take(box: Box): void {
    this.taken.push(shapeOf(box));
  }

  /** Marks a place that labels keep clear of where they can. */
  avoid(box: Box): void {
    this.avoided.push(shapeOf(box));
  }

  isFree(box: Box, clearOfAll = true): boolean {
    const shape = shapeOf(box);
    const isInside = shape.corners.every(
      ({ x, y }) => x >= 0 && x <= this.sheet.width && y >= 0 && y <= this.sheet.height,
    );
    const isOn = (other: Shape) => overlap(shape, other);
    return isInside && !this.taken.some(isOn) && !(clearOfAll && this.avoided.some(isOn));
  }

  /** Takes the first of the boxes that is free, and gives it; undefined where none is. */
  place(boxes: readonly Box[], clearOfAll = true): Box | undefined {
    const free = boxes.find((box) => this.isFree(box, clearOfAll));
    if (free) this.take(free);
    return free;
  }
}

function shapeOf({ center, width, height, turn = 0 }: Box): Shape {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const corner = (dx: number, dy: number) => ({ x: center.x + dx * cos - dy * sin, y: center.y + dx * sin + dy * cos });
  const [halfWidth, halfHeight] = [width / 2, height / 2];
  return {
    center,
    corners: [
      corner(-halfWidth, -halfHeight),
      corner(halfWidth, -halfHeight),
      corner(halfWidth, halfHeight),
      corner(-halfWidth, halfHeight),
    ],
    sides: [
      { x: cos, y: sin },
      { x: -sin, y: cos },
    ],
    radius: Math.sqrt(halfWidth ** 2 + halfHeight ** 2),
  };
}

/** Whether two boxes lie on one another: they do not where some side of one has all of the other beyond it. */
function overlap(one: Shape, other: Shape): boolean {
  // Most of a sheet lies far away.
  if (distance(one.center, other.center) > one.radius + other.radius) return false;
  return [...one.sides, ...other.sides].every((side) => {
    const [from, to] = [reach(one, side), reach(other, side)];
    return from.high > to.low && to.high > from.low;
  });
}

/** How far a box reaches along a direction. */
function reach({ corners }: Shape, { x, y }: Point): { readonly low: number; readonly high: number } {
  const along = corners.map((corner) => corner.x * x + corner.y * y);
  return { low: Math.min(...along), high: Math.max(...along) };
}
