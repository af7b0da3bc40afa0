import { type Coordinates, closingSide, hasLength, type Outline, realSides } from "./points";

interface Sides {
  readonly from: Coordinates;
  readonly to: Coordinates;
}

/**
 * Whether no two sides of a closed outline cross, touch or run back over each other, as one condition.
 *
 * It needs no count of corners: each side of a sound outline meets itself and its two neighbors, so that all pairs
 * that meet, either way round, are three times the sides. More means that others meet, too. A side that runs
 * straight back over the one before meets no others, so it is looked for by itself.
 */
export function isSound(outline: Outline): readonly string[] {
  const chain: Sides = outline;
  const across: Sides = { from: transposed(outline.from), to: transposed(outline.to) };
  const closing: Sides = { from: outline.last, to: outline.first };
  const closes = closingSide(outline);
  const meetings = `SUMPRODUCT(${meeting(chain, across)})+2*SUMPRODUCT(${meeting(chain, closing)})+${closes}`;
  const back = [
    runsBack(chain, across),
    `${runsBack(chain, closing)}*(${chain.to.x}=${closing.from.x})*(${chain.to.y}=${closing.from.y})`,
  ];
  return [
    `${meetings}=3*(${realSides(outline)}+${closes})`,
    `SUMPRODUCT((${chain.to.x}=${across.from.x})*(${chain.to.y}=${across.from.y})*${back[0]})=0`,
    `SUMPRODUCT(${back[1]})=0`,
    `SUMPRODUCT((${chain.from.x}=${closing.to.x})*(${chain.from.y}=${closing.to.y})*${runsBack(closing, chain)})=0`,
  ];
}

function transposed({ x, y }: Coordinates): Coordinates {
  return { x: `TRANSPOSE(${x})`, y: `TRANSPOSE(${y})` };
}

/** 1 for each two sides with a length that have a point in common, else 0. */
function meeting(one: Sides, other: Sides): string {
  return [
    hasLength(one.from, one.to),
    hasLength(other.from, other.to),
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

/** Whether the second side, which begins where the first ends, turns straight back along it. */
function runsBack(first: Sides, second: Sides): string {
  const along = `(${first.to.x}-${first.from.x})*(${second.to.x}-${second.from.x})+(${first.to.y}-${first.from.y})*(${second.to.y}-${second.from.y})`;
  return `(${apart(first, second.to)}=0)*(${along}<0)`;
}
