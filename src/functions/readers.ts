import type { Argument } from "./argument";
import { cutListLengths } from "./cutLists";
import type { Kind } from "./declare";
import { direction } from "./laying";
import type { Parameter } from "./native/form";
import { flag, soil, stone, trapezoid } from "./native/named";
import * as number from "./native/numbers";
import { points } from "./native/points";
import * as ranges from "./native/ranges";
import * as read from "./read";
import { cutOuts } from "./readCutOuts";
import * as named from "./readNamed";
import * as many from "./readRanges";

/** What a way of reading an argument says about it. */
interface Reader {
  /** What is read, where that is always the same. */
  readonly kind?: Kind;
  /** 0 is a value, not a blank. */
  readonly zero?: boolean;
  /** It takes a range of cells. */
  readonly many?: boolean;
  /** Must be under this. */
  readonly under?: number;
  /** What is taken for a blank, as it is shown to people, where the reader itself decides that. */
  readonly blank?: string;
  /** The argument in an ordinary formula. */
  readonly parameter: (argument: Argument<any>) => Parameter<any>;
}

const never = (): never => {
  throw new Error("No function with this argument has an ordinary formula.");
};

const READERS = /* @__PURE__ */ new Map<unknown, Reader>([
  [read.feet, { kind: "ft", parameter: ({ fallback }) => number.length("ft", fallback) }],
  [read.feetOrZero, { kind: "ft", zero: true, parameter: ({ fallback }) => number.lengthOrZero("ft", fallback) }],
  [read.inches, { kind: "in", parameter: ({ fallback }) => number.length("in", fallback) }],
  [read.inchesOrZero, { kind: "in", zero: true, parameter: ({ fallback }) => number.lengthOrZero("in", fallback) }],
  [read.lapOrJoint, { kind: "in", zero: true, parameter: never }],
  [read.measureInFeet, { kind: "ft", parameter: () => number.measure("ft") }],
  [read.measureInInches, { kind: "in", parameter: () => number.measure("in") }],
  [read.positive, { parameter: ({ fallback }) => number.positive(fallback) }],
  [read.positiveOrZero, { zero: true, parameter: ({ fallback }) => number.positiveOrZero(fallback) }],
  [
    read.count,
    { kind: "count", parameter: ({ most = Number.POSITIVE_INFINITY, fallback }) => number.count(most, fallback) },
  ],
  [read.share, { kind: "share", zero: true, parameter: () => number.share }],
  [
    read.shareUnderOne,
    { kind: "share", zero: true, under: 1, parameter: ({ fallback }) => number.shareUnderOne(fallback) },
  ],
  [read.flag, { kind: "yes or no", parameter: ({ fallback }) => flag(fallback) }],
  [named.stoneWeight, { kind: "stone", parameter: () => stone }],
  [
    named.weightOrZero,
    { kind: "tons/cu yd", zero: true, parameter: ({ fallback, most }) => number.positiveOrZero(fallback, most) },
  ],
  [named.soilSwell, { kind: "soil", blank: "loam", parameter: () => soil }],
  [named.widthRule, { kind: "width rule", blank: "simpson", parameter: () => trapezoid }],
  [named.date, { kind: "date", parameter: () => number.date }],
  [many.areas, { kind: "sq ft", zero: true, many: true, parameter: () => ranges.areas }],
  [many.sides, { kind: "ft", many: true, parameter: () => ranges.sides }],
  [many.widths, { kind: "ft", zero: true, many: true, parameter: () => ranges.widths }],
  [many.points, { kind: "ft", zero: true, many: true, parameter: () => points }],
  [many.dates, { kind: "date", many: true, parameter: () => ranges.dates }],
  [many.flags, { kind: "yes or no", many: true, parameter: never }],
  [many.listed, { kind: "ft", zero: true, many: true, parameter: never }],
  [cutOuts, { kind: "ft", zero: true, many: true, parameter: never }],
  [direction, { kind: "degrees", zero: true, parameter: never }],
  [cutListLengths, { many: true, parameter: never }],
]);

/** What is known of the way an argument is read. */
export function readerOf({ name, read: reads }: Argument): Reader {
  const found = READERS.get(reads);
  if (!found) throw new Error(`The reader of ${name} isn't listed in readers.ts.`);
  return found;
}
