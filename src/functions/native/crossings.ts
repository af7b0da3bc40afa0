import { type Coordinates, closingSide, hasLength, type Outline, realSides, type Sides } from "./points";

/**
 * Whether no two sides of a closed outline cross, touch or run back over each other, as one condition.
 *
 * It needs no count of corners: each side of a sound outline meets itself and its two neighbors, so that all pairs
 * that meet, either way round, are three times the sides. More means that others meet, too. A side that runs
 * straight back over the one before meets no others, so it is looked for by itself.
 */
export function isSound(outline: Outline): readonly string[] {
  const { chain } = outline;
  const across = transposed(chain);
  const closing = closingSide(outline);
  const closes = hasLength(closing);
  const meetings = `SUMPRODUCT(${meeting(chain, across)})+2*SUMPRODUCT(${meeting(chain, closing)})+${closes}`;
  return [
    `${meetings}=3*(${realSides(outline)}+${closes})`,
    `SUMPRODUCT(${runsBack(chain, across)})=0`,
    `SUMPRODUCT(${runsBack(chain, closing)}+${runsBack(closing, chain)})=0`,
  ];
}

function transposed({ from, to, isThere }: Sides): Sides {
  const both = ({ x, y }: Coordinates) => ({ x: `TRANSPOSE(${x})`, y: `TRANSPOSE(${y})` });
  return { from: both(from), to: both(to), ...(isThere !== undefined && { isThere: `TRANSPOSE(${isThere})` }) };
}

/** 1 for each two sides with a length that have a point in common, else 0. */
function meeting(one: Sides, other: Sides): string {
  return [
    hasLength(one),
    hasLength(other),
    `(${apart(one, other.from)}*${apart(one, other.to)}<=0)`,
    `(${apart(other, one.from)}*${apart(other, one.to)}<=0)`,
    ...(["x", "y"] as const).flatMap((axis) => [
      notAllBefore(one, other, axis, "<"),
      notAllBefore(one, other, axis, ">"),
    ]),
  ].join("*");
}

/** Which way a point lies from the line of a side: 1, -1, or 0 on it. */
function apart({ from, to }: Sides, point: Coordinates): string {
  return `SIGN((${to.x}-${from.x})*(${point.y}-${from.y})-(${to.y}-${from.y})*(${point.x}-${from.x}))`;
}

/** 0 where one side lies wholly before (or behind) the other along an axis, else 1. */
function notAllBefore(one: Sides, other: Sides, axis: "x" | "y", sign: "<" | ">"): string {
  const ends = [one.from, one.to].flatMap((a) => [other.from, other.to].map((b) => `(${a[axis]}${sign}${b[axis]})`));
  return `(1-${ends.join("*")})`;
}

/** 1 where the second side begins where the first ends, and turns straight back along it. */
function runsBack(first: Sides, second: Sides): string {
  const alongX = `(${first.to.x}-${first.from.x})*(${second.to.x}-${second.from.x})`;
  const alongY = `(${first.to.y}-${first.from.y})*(${second.to.y}-${second.from.y})`;
  return [
    ...[first.isThere, second.isThere].filter((factor) => factor !== undefined),
    `(${first.to.x}=${second.from.x})`,
    `(${first.to.y}=${second.from.y})`,
    `(${apart(first, second.to)}=0)`,
    `(${alongX}+${alongY}<0)`,
  ].join("*");
}
