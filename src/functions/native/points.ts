import { messages } from "../../quantities/messages";
import { Problem } from "../../quantities/problem";
import type { Parameter } from "./form";
import { type GivenRange, NoNative } from "./given";
import { refuseUnknown } from "./ranges";
import type { Layers } from "./worked";

/** x and y of points, as references or as lists of numbers. */
export interface Coordinates {
  readonly x: string;
  readonly y: string;
}

/** An outline whose points are in cells: how many of the rows are filled shows only when it is calculated. */
export interface Outline {
  readonly layers: Layers;
  readonly first: Coordinates;
  readonly last: Coordinates;
  /** The sides from each point to the next. */
  readonly chain: Sides;
}

/** Sides, one or several. */
export interface Sides {
  readonly from: Coordinates;
  readonly to: Coordinates;
  /** 1 for each that is there, as a factor; undefined where all are. */
  readonly isThere?: string;
}

/** Points in two columns; blank rows at the end are skipped, a blank elsewhere is refused. */
export const points: Parameter<Outline> = {
  reading: "ft",
  operand(given) {
    if (given.kind !== "range") {
      if (given.kind === "list") throw new NoNative("has points typed into the formula");
      refuseUnknown(given);
      throw new Problem("value", messages.notPairs("points", 1));
    }
    const { range } = given;
    if (range.columns !== 2) throw new Problem("value", messages.notPairs("points", range.columns));
    if (range.rows < 2) throw new Problem("value", messages.tooFewPoints(1, 2));
    return outlineOf(range);
  },
};

function outlineOf(range: GivenRange): Outline {
  const lastRow = range.rows - 1;
  const column = (place: number) => range.part(0, place, lastRow, place);
  const filled = `COUNT(${column(0)})`;
  const upTo = (place: number, rows: string) => `INDEX(${column(place)},${rows})`;
  const both = (of: (place: number) => string): Coordinates => ({ x: of(0), y: of(1) });
  const first = both((place) => range.part(0, place, 0, place));
  const isWhole = [
    `COUNT(${range.text})+COUNTBLANK(${range.text})=${range.rows * 2}`,
    `COUNT(${column(1)})=${filled}`,
    `${filled}>=2`,
    `COUNT(${first.x}:${upTo(1, filled)})=COUNT(${range.text})`,
  ];
  return {
    layers: [isWhole],
    first,
    last: both((place) => upTo(place, filled)),
    chain: {
      from: both((place) => range.part(0, place, lastRow - 1, place)),
      to: both((place) => range.part(1, place, lastRow, place)),
      isThere: `ISNUMBER(${range.part(1, 0, lastRow, 0)})`,
    },
  };
}

/** Length of each side, 0 for one that is not there. */
export function lengthOf({ from, to, isThere }: Sides): string {
  const length = `SQRT((${to.x}-${from.x})^2+(${to.y}-${from.y})^2)`;
  return isThere === undefined ? length : `${isThere}*${length}`;
}

/** 1 for each side that is there and has a length, else 0. */
export function hasLength({ from, to, isThere }: Sides): string {
  const ends = `((${to.x}<>${from.x})+(${to.y}<>${from.y})>0)`;
  return isThere === undefined ? ends : `${isThere}*${ends}`;
}

/** How many sides from point to point have a length: a point that repeats the one before is no corner. */
export function realSides({ chain }: Outline): string {
  return `SUMPRODUCT(${hasLength(chain)})`;
}

/** The way back from the last point to the first. */
export function closingSide({ first, last }: Outline): Sides {
  return { from: last, to: first };
}
