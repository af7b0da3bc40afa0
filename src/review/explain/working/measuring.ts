import { shown } from "../numbers";
import type { Figures, Worked, Working } from "./figures";

const CORNER_AREA = 1 - Math.PI / 4;
const CORNER_LENGTH = 2 - Math.PI / 2;

export const measuring: Readonly<Record<string, Working>> = {
  FEET: (figures) => same(figures.number("measure"), "ft"),
  INCHES: (figures) => same(figures.number("measure"), "in"),

  AREA_RECTANGLE(figures) {
    const [length, width] = [figures.number("length"), figures.number("width")];
    const [radius, count] = [figures.number("corner_radius"), figures.number("rounded_corners")];
    const cutOut = figures.list("cut_outs").reduce((sum, one) => sum + one, 0);
    const [whole, corners] = [length * width, count * CORNER_AREA * radius ** 2];
    const lines = [`${shown(length)} × ${shown(width)} = ${shown(whole)} sq ft`];
    if (corners > 0)
      lines.push(
        `${shown(count)} rounded corners: ${shown(count)} × (1 − π/4) × ${shown(radius)}² = ${shown(corners)} sq ft less`,
      );
    if (cutOut > 0) lines.push(`cut-outs: ${shown(cutOut)} sq ft less`);
    const answer = whole - corners - cutOut;
    if (lines.length > 1) lines.push(`${shown(whole)}${less(corners)}${less(cutOut)} = ${shown(answer)} sq ft`);
    return { lines, answer };
  },

  AREA_TRIANGLE(figures) {
    const [a, b, c] = ["side_a", "side_b", "side_c"].map((name) => figures.number(name)) as [number, number, number];
    const half = (a + b + c) / 2;
    const answer = Math.sqrt(half * (half - a) * (half - b) * (half - c));
    const factors = [half, half - a, half - b, half - c].map(shown).join(" × ");
    return {
      lines: [
        `s = (${shown(a)} + ${shown(b)} + ${shown(c)}) ÷ 2 = ${shown(half)}`,
        `√(${factors}) = ${shown(answer)} sq ft`,
      ],
      answer,
    };
  },

  AREA_ROUND(figures) {
    const [outer, inner] = [figures.number("diameter"), figures.number("inner_diameter")];
    const answer = (Math.PI / 4) * (outer ** 2 - inner ** 2);
    const squares = inner > 0 ? `(${shown(outer)}² − ${shown(inner)}²)` : `${shown(outer)}²`;
    return { lines: [`π/4 × ${squares} = ${shown(answer)} sq ft`], answer };
  },

  AREA_WIDTHS(figures) {
    const [spacing, widths] = [figures.number("spacing"), figures.list("widths")];
    const intervals = widths.length - 1;
    const lines = [`${widths.length} widths, ${intervals} intervals of ${shown(spacing)} ft`];
    const isSimpson = figures.word("rule") !== "trapezoid" && intervals > 1;
    const last = isSimpson ? intervals - (intervals % 2) : 0;
    const simpson = isSimpson ? simpsonOf(widths.slice(0, last + 1), spacing) : undefined;
    if (simpson) lines.push(simpson.line);
    const rest = trapezoidOf(widths.slice(last), spacing);
    if (last < intervals) lines.push((isSimpson ? "last interval, by the trapezoid: " : "by trapezoids: ") + rest.line);
    const answer = (simpson?.area ?? 0) + (last < intervals ? rest.area : 0);
    if (simpson && last < intervals)
      lines.push(`${shown(simpson.area)} + ${shown(rest.area)} = ${shown(answer)} sq ft`);
    return { lines, answer };
  },

  AREA_POINTS(figures) {
    const points = corners(figures);
    const twice = points.reduce((sum, [x, y], place) => {
      const [nextX, nextY] = points[(place + 1) % points.length]!;
      return sum + (x * nextY - nextX * y);
    }, 0);
    const answer = Math.abs(twice) / 2;
    return {
      lines: [
        `${points.length} corners; x × next y − next x × y, all together: ${shown(Math.abs(twice))}`,
        `${shown(Math.abs(twice))} ÷ 2 = ${shown(answer)} sq ft`,
      ],
      answer,
    };
  },

  EDGE_LENGTH(figures) {
    const sides = figures.list("sides");
    const [radius, count] = [figures.number("corner_radius"), figures.number("rounded_corners")];
    const [whole, saved] = [sides.reduce((sum, one) => sum + one, 0), count * CORNER_LENGTH * radius];
    const lines = [sides.length > 1 ? `${sides.map(shown).join(" + ")} = ${shown(whole)} ft` : `${shown(whole)} ft`];
    if (saved > 0)
      lines.push(
        `${shown(count)} rounded corners: ${shown(count)} × (2 − π/2) × ${shown(radius)} = ${shown(saved)} ft less`,
        `${shown(whole)} − ${shown(saved)} = ${shown(whole - saved)} ft`,
      );
    return { lines, answer: whole - saved };
  },

  EDGE_WIDTHS(figures) {
    const [spacing, widths] = [figures.number("spacing"), figures.list("widths")];
    const chords = widths.slice(1).map((width, place) => Math.hypot(spacing, width - widths[place]!));
    return sumOf("from each width to the next", chords);
  },

  EDGE_POINTS(figures) {
    const isClosed = figures.flag("closed");
    const points = isClosed ? corners(figures) : placesOf(figures);
    const sides = points.flatMap(([x, y], place) => {
      const next = points[place + 1] ?? (isClosed ? points[0] : undefined);
      return next ? [Math.hypot(next[0] - x, next[1] - y)] : [];
    });
    return sumOf("from each point to the next" + (isClosed ? ", and back to the first" : ""), sides);
  },
};

const same = (measure: number, unit: string): Worked => ({ lines: [`${shown(measure)} ${unit}`], answer: measure });
const less = (amount: number) => (amount > 0 ? ` − ${shown(amount)}` : "");

const placesOf = (figures: Figures): [number, number][] =>
  figures.rows("points").flatMap(([x, y]): [number, number][] => (x === undefined || y === undefined ? [] : [[x, y]]));

/** The corners of an outline, of which the first may stand there again at the end. */
function corners(figures: Figures): [number, number][] {
  const points = placesOf(figures);
  const [first, last] = [points[0], points.at(-1)];
  const isAgain = points.length > 1 && first![0] === last![0] && first![1] === last![1];
  return isAgain ? points.slice(0, -1) : points;
}

function simpsonOf(widths: readonly number[], spacing: number) {
  const inner = (from: number) => widths.slice(from, -1).filter((_, place) => place % 2 === 0);
  const [ends, fours, twos] = [[widths[0]!, widths.at(-1)!], inner(1), inner(2)].map((list) =>
    list.reduce((sum, one) => sum + one, 0),
  ) as [number, number, number];
  const area = (spacing / 3) * (ends + 4 * fours + 2 * twos);
  const line = `${shown(spacing)}/3 × (ends ${shown(ends)} + 4 × ${shown(fours)} + 2 × ${shown(twos)}) = ${shown(area)} sq ft`;
  return { line, area };
}

function trapezoidOf(widths: readonly number[], spacing: number) {
  const ends = (widths[0]! + widths.at(-1)!) / 2;
  const between = widths.slice(1, -1).reduce((sum, one) => sum + one, 0);
  const area = spacing * (ends + between);
  return {
    line: `${shown(spacing)} × (half the ends ${shown(ends)} + between ${shown(between)}) = ${shown(area)} sq ft`,
    area,
  };
}

function sumOf(what: string, parts: readonly number[]): Worked {
  const answer = parts.reduce((sum, one) => sum + one, 0);
  const listed = parts.length > 8 ? [...parts.slice(0, 7).map(shown), "…"] : parts.map(shown);
  return { lines: [what, `${listed.join(" + ")} = ${shown(answer)} ft`], answer };
}
