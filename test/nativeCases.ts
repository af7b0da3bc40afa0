import fc from "fast-check";
import { SOILS } from "../src/quantities/soil";
import { STONES } from "../src/quantities/stone";
import { CASES, type Kind } from "./functionCases";

/** What is in a cell or in a formula: a value, or a formula with its "=". */
export type Typed = string | number | boolean;

/** One argument of a tried call: typed into the formula, or cells that it refers to. */
export type TriedArgument =
  | { readonly kind: "left out" }
  | { readonly kind: "typed"; readonly text: string }
  /** Cells below one another; `around` is a calculation with their reference in the place of `@`. */
  | { readonly kind: "cells"; readonly rows: readonly (readonly Typed[])[]; readonly around: string };

export interface TriedCall {
  readonly id: string;
  readonly given: readonly TriedArgument[];
}

const RANGES: readonly Kind[] = ["areas", "sides", "widths", "points", "dates"];

const eighths = (most: number) => fc.integer({ min: 1, max: most * 8 }).map((count) => count / 8);
const decimals = (most: number) => fc.double({ min: 0.01, max: most, noNaN: true });
const feet = fc.oneof(eighths(60), decimals(60), fc.integer({ min: 1, max: 40 }));
const inches = fc.oneof(eighths(24), decimals(30));
const tapedFeet = fc.oneof(
  fc.tuple(fc.integer({ min: 1, max: 50 }), fc.integer({ min: 0, max: 11 })).map(([ft, inch]) => `${ft}' ${inch} 1/2"`),
  fc.integer({ min: 300, max: 20_000 }).map((mm) => `${mm} mm`),
  fc.constantFrom("9,8 m", "6'-8\"", "5", "3 yd", "32 ft 6 in", "½'", "12.5"),
);
const tapedInches = fc.constantFrom('4"', '2 1/2"', "75 mm", "1' 2\"", "3", "½ in");
const serials = fc.integer({ min: 45_000, max: 47_000 });
const oneOf = (...values: Typed[]) => fc.constantFrom<Typed>(...values);

/** Values that are fine for an argument, among them some at its edges; kinds without an ordinary form have none. */
const FINE: Readonly<Partial<Record<Kind, fc.Arbitrary<Typed>>>> = {
  feet: fc.oneof(feet, tapedFeet),
  feetOrZero: fc.oneof(feet, tapedFeet, oneOf(0)),
  inches: fc.oneof(inches, tapedInches),
  inchesOrZero: fc.oneof(inches, tapedInches, oneOf(0)),
  number: fc.oneof(decimals(800), fc.integer({ min: 1, max: 500 }), oneOf("12.5", "40")),
  numberOrZero: fc.oneof(decimals(9), fc.integer({ min: 0, max: 9 }), oneOf("7.25", 0)),
  count: fc.integer({ min: 1, max: 4 }),
  shareUnderOne: fc.oneof(fc.double({ min: 0, max: 0.6, noNaN: true }), oneOf("8%", 0, "0.05", 0.25)),
  share: fc.oneof(fc.double({ min: 0, max: 2, noNaN: true }), oneOf("25%", 0, 2)),
  stone: fc.oneof(
    decimals(9.9),
    fc.constantFrom(...STONES.map(({ name }) => name)),
    oneOf("River-Rock", " pea  GRAVEL ", "lava_rock", "1.35"),
  ),
  soil: fc.oneof(
    fc.double({ min: 0, max: 2, noNaN: true }),
    fc.constantFrom(...SOILS.map(({ name }) => name)),
    oneOf("Blasted-Rock", "25%", 0),
  ),
  rule: oneOf("simpson", "Trapezoid", " SIMPSON "),
  flag: oneOf(true, false, 1, 0, "yes", "No", "TRUE", " false "),
  date: fc.oneof(serials, oneOf("2026-03-02", "March 6, 2026", 46_083.75)),
  areas: fc.oneof(decimals(4), oneOf("", 0, "2.5")),
  sides: fc.oneof(feet, tapedFeet),
  widths: fc.oneof(feet, tapedFeet, oneOf(0)),
  points: fc.integer({ min: -8, max: 8 }),
  dates: fc.oneof(serials, oneOf("", 0, "2026-03-03")),
  lengths: fc.oneof(feet, tapedFeet),
  counts: fc.integer({ min: 0, max: 3 }),
};

/** Values that most arguments refuse, or take for a blank. */
const ODD: fc.Arbitrary<Typed> = oneOf(
  "",
  "",
  "  ",
  0,
  -1,
  -0.001,
  true,
  false,
  "12 cows",
  "granit chips",
  "river*",
  "0 ft",
  '-3"',

  "5' 14\"",
  "=1/0",
  "=NA()",
  '=""',
  1,
  1.5,
  2.0001,
  25,
  11,
  1e-10,
  100_000,
  60,
  "=2*3",
  '="loam"',
);

/** Ways to hand one cell to an argument: as it is, or through a calculation. */
const AROUND = ["@", "@", "@", "@", "@+0", "IF(TRUE,@,1)", "BED.FEET(@)", "(@)", "@*100%"];

/** Values that fit one another, where those of their kind mostly do not. */
const FITTING: Readonly<Partial<Record<string, fc.Arbitrary<Typed>>>> = {
  "AREA_TRIANGLE side_a": eighths(9).map((side) => side + 9.5),
  "AREA_TRIANGLE side_b": eighths(9).map((side) => side + 9.5),
  "AREA_TRIANGLE side_c": fc.oneof(
    eighths(9).map((side) => side + 9.5),
    feet,
  ),
  // The ordinary formula looks through 60 strips.
  "FABRIC_ROLLS roll_width": fc.constantFrom(3, 4, 6, "12'", "1,83 m", 12.5),
  "FABRIC_ROLLS overlap_in": fc.oneof(eighths(18), oneOf(0, '4"', "75 mm")),
  "FABRIC_ROLLS roll_length": fc.oneof(feet, oneOf(50, "100'", 75, 300)),
  "AREA_RECTANGLE corner_radius": fc.oneof(eighths(2), oneOf(0, '6"')),
  "EDGE_LENGTH corner_radius": fc.oneof(eighths(2), oneOf(0, '6"')),
  "STONE_DEPTH border_height_in": fc
    .oneof(eighths(6), oneOf('8"'))
    .map((height) => (height === '8"' ? height : Number(height) + 4)),
  "STONE_DEPTH trench_depth_in": fc.oneof(eighths(3), oneOf('1 1/2"', 0)),
  "STONE_DEPTH top_gap_in": fc.oneof(eighths(1), oneOf('½"', 0)),
};

/** Random calls of one function: mostly fine ones, and some with one argument that is not. */
export function callsOf(id: keyof typeof CASES, runs: number, seed: number): TriedCall[] {
  const given = CASES[id];
  const fine = fc.tuple(
    ...given.map(({ name, kind, fallback }) => argumentOf(kind, FITTING[`${id} ${name}`] ?? fineFor(kind), fallback)),
  );
  const odd = fc
    .tuple(fine, fc.nat({ max: given.length - 1 }), fc.integer())
    .chain(([all, place]) =>
      argumentOf(given[place]!.kind, fc.oneof(ODD, fineFor(given[place]!.kind)), undefined, ODD).map((one) =>
        all.map((other, index) => (index === place ? one : other)),
      ),
    );
  return fc
    .sample(fc.oneof({ weight: 2, arbitrary: fine }, { weight: 1, arbitrary: odd }), { numRuns: runs, seed })
    .map((tried) => ({ id, given: tried }));
}

function fineFor(kind: Kind): fc.Arbitrary<Typed> {
  const fine = FINE[kind];
  if (!fine) throw new RangeError(`No values are known for an argument that takes ${kind}.`);
  return fine;
}

function argumentOf(
  kind: Kind,
  values: fc.Arbitrary<Typed>,
  fallback: unknown,
  alone: fc.Arbitrary<Typed> = values,
): fc.Arbitrary<TriedArgument> {
  const cells = RANGES.includes(kind)
    ? rangeOf(kind, values).map((rows): TriedArgument => ({ kind: "cells", rows, around: "@" }))
    : fc
        .tuple(alone, fc.constantFrom(...AROUND))
        .map(([value, around]): TriedArgument => ({ kind: "cells", rows: [[value]], around }));
  const typed = alone.map((value): TriedArgument => ({ kind: "typed", text: typedText(value) }));
  const ways: fc.WeightedArbitrary<TriedArgument>[] = [{ weight: 8, arbitrary: cells }];
  if (!RANGES.includes(kind)) ways.push({ weight: 2, arbitrary: typed });
  if (fallback !== undefined) {
    ways.push({ weight: 3, arbitrary: fc.constant({ kind: "left out" }) });
    ways.push({ weight: 1, arbitrary: fc.constant({ kind: "cells", rows: [[""]], around: "@" }) });
  }
  return fc.oneof(...ways);
}

function rangeOf(kind: Kind, values: fc.Arbitrary<Typed>): fc.Arbitrary<Typed[][]> {
  if (kind === "points") return outlines(values);
  const lengths = kind === "widths" ? { minLength: 1, maxLength: 8 } : { minLength: 1, maxLength: 5 };
  const blanks = kind === "sides" ? fc.constantFrom<Typed[]>([], [""], ["", 0]) : fc.constant<Typed[]>([]);
  return fc
    .tuple(fc.array(values, lengths), blanks)
    .map(([list, after]) => [...list, ...after].map((value) => [value]));
}

/** Outlines round a middle, which never cross, and points anywhere, which mostly do; some with blank rows after. */
function outlines(values: fc.Arbitrary<Typed>): fc.Arbitrary<Typed[][]> {
  const anywhere = fc.array(fc.tuple(values, values), { minLength: 1, maxLength: 7 });
  const round = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 16 }), fc.boolean()), { minLength: 3, maxLength: 9 })
    .map((radii) =>
      radii.flatMap(([radius, twice], place) => {
        const turn = (2 * Math.PI * place) / radii.length;
        const point = [Math.round(radius * Math.cos(turn) * 4) / 4, Math.round(radius * Math.sin(turn) * 4) / 4];
        return twice ? [point, point] : [point];
      }),
    );
  const square = fc.constantFrom<number[][]>(
    [
      [0, 0],
      [6, 0],
      [6, 4],
      [0, 4],
    ],
    [
      [0, 0],
      [3, 0],
      [6, 0],
      [6, 4],
      [0, 4],
      [0, 0],
    ],
    [
      [0, 0],
      [6, 0],
      [3, 0],
      [3, 4],
    ],
    [
      [0, 0],
      [4, 4],
      [4, 0],
      [0, 4],
    ],
    [
      [0, 0],
      [4, 0],
      [2, 2],
      [4, 4],
      [0, 4],
      [2, 2],
    ],
    [
      [0, 0],
      [4, 0],
    ],
    [
      [0, 0],
      [4, 0],
      [0, 0],
    ],
    [
      [0, 0],
      [2, 0],
      [4, 0],
    ],
    [
      [1, 1],
      [1, 1],
      [1, 1],
      [1, 1],
    ],
    [
      [0, 0],
      [0, 4],
      [4, 4],
      [4, 0],
      [4, 2],
      [4, 4],
    ],
  );
  const all = fc.oneof(anywhere, round, square) as fc.Arbitrary<Typed[][]>;
  return fc
    .tuple(all, fc.integer({ min: 0, max: 2 }))
    .map(([rows, blank]) => [
      ...rows.map((row) => [...row]),
      ...Array.from({ length: blank }, () => ["", ""] as Typed[]),
    ]);
}

/** A value as it is typed into a formula. */
function typedText(value: Typed): string {
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "number") return String(value).toUpperCase().replace("E+", "E");
  return value.startsWith("=") ? value.slice(1) : `"${value.replaceAll('"', '""')}"`;
}
