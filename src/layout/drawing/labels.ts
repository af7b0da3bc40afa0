import type { Point } from "../plane";

/** A box on the sheet, turned by some degrees clockwise round its center. */
export interface Box {
  readonly center: Point;
  readonly width: number;
  readonly height: number;
  readonly turn?: number;
}

/** The places on a sheet that are taken by text and marks, so that no two lie on one another. */
export class LabelBoard {
  private readonly taken: Box[] = [];
  private readonly avoided: Box[] = [];

  /** @param sheet the box that labels have to stay within. */
  constructor(private readonly sheet: { readonly width: number; readonly height: number }) {}

  take(box: Box): void {
    this.taken.push(box);
  }

  /** Marks a place that labels keep clear of where they can. */
  avoid(box: Box): void {
    this.avoided.push(box);
  }

  isFree(box: Box, clearOfAll = true): boolean {
    const inside = cornersOf(box).every(
      ({ x, y }) => x >= 0 && x <= this.sheet.width && y >= 0 && y <= this.sheet.height,
    );
    const others = clearOfAll ? [...this.taken, ...this.avoided] : this.taken;
    return inside && !others.some((other) => overlap(box, other));
  }

  /** Takes the first of the boxes that is free, and gives it; undefined where none is. */
  place(boxes: readonly Box[], clearOfAll = true): Box | undefined {
    const free = boxes.find((box) => this.isFree(box, clearOfAll));
    if (free) this.take(free);
    return free;
  }
}

function cornersOf({ center, width, height, turn = 0 }: Box): Point[] {
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([i, j]) => {
    const [dx, dy] = [(i! * width) / 2, (j! * height) / 2];
    return { x: center.x + dx * cos - dy * sin, y: center.y + dx * sin + dy * cos };
  });
}

/** Whether two boxes lie on one another: they do not where some side of one has all of the other beyond it. */
function overlap(one: Box, other: Box): boolean {
  const [a, b] = [cornersOf(one), cornersOf(other)];
  return [one.turn ?? 0, (one.turn ?? 0) + 90, other.turn ?? 0, (other.turn ?? 0) + 90].every((degrees) => {
    const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
    const reach = (corners: Point[]) => corners.map((corner) => corner.x * x + corner.y * y);
    const [from, to] = [reach(a), reach(b)];
    return Math.max(...from) > Math.min(...to) && Math.max(...to) > Math.min(...from);
  });
}
