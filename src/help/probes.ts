import type { DeclaredArgument, Kind } from "../functions/declare";

/** A value that an argument may refuse, and how a person would say what was typed. */
export interface Probe {
  readonly value: unknown;
  readonly words: string;
}

const is = (value: unknown, words = `is ${typeof value === "string" ? `“${value}”` : value}`): Probe => ({
  value,
  words,
});

const BLANK: readonly Probe[] = [is(null, "is blank")];
const SEVERAL: readonly Probe[] = [is([[1], [2]], "is a range of two cells")];
const HUGE: readonly Probe[] = [is(200), is(2_000_000), is(1e250, "is far beyond any bed")];
const LENGTH = [...BLANK, is("12 cows"), is("5' 14\""), is("1,234 ft"), is(-3), ...HUGE, ...SEVERAL];
const NUMBER = [...BLANK, is("a dozen"), is(-3), ...HUGE, ...SEVERAL];
const SHARE = [...BLANK, is(10), is("ten"), is(-0.1), ...SEVERAL];

/** What may be typed wrong where one value is wanted, the likeliest mistake first. */
const ONE: Readonly<Partial<Record<Kind, readonly Probe[]>>> = {
  ft: LENGTH,
  in: LENGTH,
  share: SHARE,
  count: [...BLANK, is(2.5), is("a few"), is(-1), ...HUGE, ...SEVERAL],
  stone: [...BLANK, is("granit chips"), is(2700), is(-1), ...SEVERAL],
  "tons/cu yd": [...NUMBER, is(2700)],
  soil: [is("lome"), is(25), is(-0.1), ...SEVERAL],
  "width rule": [is("curved"), ...SEVERAL],
  "yes or no": [is("maybe"), ...SEVERAL],
  date: [...BLANK, is("someday"), is("3/4/2026"), is(-1), is("9999-12-31"), ...SEVERAL],
  degrees: [is("north"), ...SEVERAL],
};

const points = (words: string, ...rows: readonly (readonly unknown[])[]): Probe => is(rows, words);
const column = (words: string, ...cells: readonly unknown[]): Probe =>
  is(
    cells.map((cell) => [cell]),
    words,
  );

/** What may be wrong about a range, by the argument that takes it. */
const MANY: Readonly<Partial<Record<string, readonly Probe[]>>> = {
  widths: [
    ...BLANK,
    column("has a blank cell", 4, null, 5),
    column("has a cell “12 cows”", 4, "12 cows", 5),
    column("has a cell under 0", 4, -1, 5),
    column("has only one width", 4),
    column("are all 0", 0, 0, 0),
    column("has a 0 between wider spots", 4, 0, 5),
    is(
      [
        [1, 2],
        [3, 4],
      ],
      "is a block of rows and columns",
    ),
  ],
  points: [
    ...BLANK,
    points("has a blank cell", [0, 0], [4, null], [0, 3]),
    points("has a cell “12 cows”", [0, 0], ["12 cows", 0], [0, 3]),
    points("has only two points", [0, 0], [4, 0]),
    points("has only one point", [0, 0]),
    points("is out of order, so sides cross", [0, 0], [4, 4], [4, 0], [0, 4]),
    points("touches itself", [0, 0], [8, 0], [8, 4], [4, 0], [0, 4]),
    points("doubles back on itself", [0, 0], [8, 0], [4, 0], [4, 4]),
    points("is all on one line", [0, 0], [4, 0], [8, 0]),
    points("has three columns", [0, 0, 1], [4, 0, 1], [0, 3, 1]),
    points("is miles long", [0, 0], [2e6, 0], [2e6, 2e6], [0, 2e6]),
    points("is far beyond any bed", [0, 0], [1e250, 0], [0, 1e250]),
  ],
  sides: [
    ...BLANK,
    column("has a blank in it", 5, null, 8),
    column("has a cell “12 cows”", 5, "12 cows"),
    column("has a cell under 0", 5, -8),
    column("is too short for its corners", 0.5),
  ],
  lengths: [
    ...BLANK,
    column("has a blank beside a count", null, 7, 6, 5, 4, 2),
    column("has a cell “12 cows”", "12 cows", 7, 6, 5, 4, 2),
    column("has a cell under 0", -8, 7, 6, 5, 4, 2),
    column("has a piece longer than the stock", 80, 7, 6, 5, 4, 2),
  ],
  counts: [
    column("has fewer cells than lengths", 2),
    column("has a cell of 2.5", 2.5, 1, 1, 1, 1, 1),
    column("has a cell “a few”", "a few", 1, 1, 1, 1, 1),
    column("has a cell under 0", -2, 1, 1, 1, 1, 1),
    column("has a blank beside a length", null, 1, 1, 1, 1, 1),
    column("add up to far too many", 1e7, 1, 1, 1, 1, 1),
  ],
  holidays: [column("has a cell “someday”", "someday"), column("has a cell “3/4/2026”", "3/4/2026")],
};

/** Cut-outs are areas for an area, and places for a bed in plan. */
const CUT_OUTS: Readonly<Partial<Record<Kind, readonly Probe[]>>> = {
  "sq ft": [
    column("has a cell “12 cows”", "12 cows"),
    column("has a cell under 0", -1),
    column("is larger than the bed", 1e6),
  ],
  ft: [
    points("has a cell “12 cows”", [1, 1, "12 cows"]),
    points("has no width", [1, 1, null]),
    points("has two columns", [1, 1]),
    points("is outside the bed", [500, 500, 2]),
    points("overlap", [5, 3, 1], [5.25, 3, 1]),
    points("has a cell under 0", [5, 3, -1]),
  ],
};

/** The values to try for an argument. */
export function probesFor({ name, kind, many }: DeclaredArgument): readonly Probe[] {
  if (name === "cut_outs") return CUT_OUTS[kind] ?? [];
  return many ? (MANY[name] ?? []) : (ONE[kind] ?? NUMBER);
}

/** Something to stand for an optional argument that the example leaves out, so that arguments meet one another. */
export const FILLING: Readonly<Partial<Record<string, unknown>>> = {
  roll_length: 50,
  counts: [[1], [1], [1], [1], [1], [1]],
  corner_radius: 1,
  rounded_corners: 2,
  lap_in: 2,
  payload_tons: 2.5,
};
