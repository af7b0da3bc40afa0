import type { CutOut } from "./bed";

/**
 * A cut-out by its middle and size: round where no depth is given, else a rectangle square to the base line.
 *
 * @param x place of its middle along the base line, in feet; `y` square to it.
 * @param acrossFt its diameter, or its width along the base line, more than 0.
 * @param deepFt its width square to the base line, more than 0.
 * @example cutOutAt(8, 1.5, 2) // a circle of 2 ft round x 8, y 1.5
 */
export function cutOutAt(x: number, y: number, across: number, deep: number | undefined): CutOut {
  if (deep === undefined) return { kind: "circle", center: { x, y }, diameterFt: across };
  const [halfX, halfY] = [across / 2, deep / 2];
  return {
    kind: "outline",
    points: [
      { x: x - halfX, y: y - halfY },
      { x: x + halfX, y: y - halfY },
      { x: x + halfX, y: y + halfY },
      { x: x - halfX, y: y + halfY },
    ],
  };
}
