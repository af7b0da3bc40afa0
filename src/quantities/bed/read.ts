import { edgingKindNamed, NO_EDGING } from "../edgingKinds";
import { messages } from "../messages";
import { must } from "../must";
import type { Point } from "../outline";
import { Problem } from "../problem";
import { soldByNamed } from "../soldBy";
import { readTape } from "../tape";
import {
  type FieldKey,
  fields,
  type NameFieldKey,
  type NumberFieldKey,
  type ShapeFieldKey,
  shapeFields,
} from "./fields";
import {
  asks,
  type BedForm,
  cornerFields,
  countsEdging,
  edgingFields,
  followedRate,
  givenCutOuts,
  givenPoints,
  givenWidths,
  listedStone,
  picksCorners,
  secondOf,
  shapeFieldsOf,
  textOf,
  type Way,
} from "./form";
import { readField } from "./readField";
import { secondKey } from "./secondEdging";
import { rectangleSides, widthsEdged } from "./sides";

/** A bed as numbers: lengths in feet and inches as their fields say, shares as fractions. */
export interface Bed {
  readonly way: Way;
  /** 0 for the fields of other ways of measuring, of other kinds of edging, and of stone sold by something else. */
  readonly numbers: Readonly<Record<NumberFieldKey, number>>;
  readonly names: Readonly<Record<NameFieldKey, string>>;
  readonly widthsFt: readonly number[];
  readonly points: readonly Point[];
  /** For each point, whether border is set from it to the next. */
  readonly borderAfterPoint: readonly boolean[];
  readonly cutOuts: readonly CutOut[];
  /** The stone's short tons in a loose cubic yard, where the office weighed it. */
  readonly weighedTonsPerYard?: number;
}

/** What is in the bed, in feet: round where it has no depth. */
export interface CutOut {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly deep: number | undefined;
}

/** Where a problem is in the form: a field, or a place in its list of widths or points. */
export type FormPlace =
  | FieldKey
  | `width${number}`
  | `point${number}.${"x" | "y"}`
  | `cutOut${number}.${keyof CutOut}`
  | "form";

export interface FormProblem {
  readonly place: FormPlace;
  readonly message: string;
  /** Nothing was typed there yet, which is no mistake before the person is done. */
  readonly unfinished: boolean;
}

export type Reading =
  | { readonly bed: Bed; readonly problems: readonly [] }
  | { readonly bed?: undefined; readonly problems: readonly FormProblem[] };

export const FEWEST_WIDTHS = 2;
export const FEWEST_POINTS = 3;
/**
 * Reads a form. Every field is read, so that all problems show at once.
 *
 * @returns the bed, or the problems with their places, worded for the person.
 * @example readForm({ ...blankForm(), typed: { length: `18' 6"`, width: "5" } }).bed?.numbers.length // 18.5
 */
export function readForm(form: BedForm): Reading {
  const problems: FormProblem[] = [];
  const attempt = <T>(place: FormPlace, text: string, read: (text: string) => T, fallback: T): T => {
    try {
      return read(text);
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      problems.push({ place, message: error.message, unfinished: text.trim() === "" });
      return fallback;
    }
  };

  const asked = new Set<string>(shapeFieldsOf(form));
  const numbers = {} as Record<NumberFieldKey, number>;
  const names = {} as Record<NameFieldKey, string>;
  for (const key of Object.keys(fields) as FieldKey[]) {
    const isAsked = key in shapeFields ? asked.has(key) : asks(form, key);
    if (!isAsked && !isName(key)) numbers[key] = 0;
    else if (isName(key)) names[key] = attempt(key, textOf(form, key), (text) => readName(key, text), "");
    else {
      const rate = followedRate(form, key);
      if (rate?.problem !== undefined) problems.push({ place: key, message: rate.problem, unfinished: false });
      else numbers[key as NumberFieldKey] = attempt(key, textOf(form, key), (text) => readField(fields[key], text), 0);
    }
  }
  countSides(form, numbers);
  problems.push(...secondProblems(form, numbers));
  const { stonesProblem } = form.rates ?? {};
  // Where the price is typed, the list is still asked for the weight.
  if (stonesProblem !== undefined && form.typed.stoneCost !== undefined)
    problems.push({ place: "stone", message: stonesProblem, unfinished: false });
  const weight = listedStone(form)?.tonsPerYard;
  if (weight?.problem !== undefined) problems.push({ place: "stone", message: weight.problem, unfinished: false });
  // What another way of measuring asks for is kept in the form, and isn't read: no one sees it to fix it.
  const widthsFt = (form.way === "widths" ? givenWidths(form) : []).map((text, index) =>
    attempt(`width${index + 1}`, text, () => readListed(`Width ${index + 1}`, text), 0),
  );
  const corners = form.way === "points" ? givenPoints(form) : [];
  const points = corners.map(
    ([x, y], index): Point => [
      attempt(`point${index + 1}.x`, x, () => readListed(`Point ${index + 1}, x`, x, true), 0),
      attempt(`point${index + 1}.y`, y, () => readListed(`Point ${index + 1}, y`, y, true), 0),
    ],
  );
  const borderAfterPoint = corners.map(([, , border]) => border === "1");
  const cutOuts = givenCutOuts(form).map(([x, y, across, deep], index): CutOut => {
    const at = (part: keyof CutOut, text: string, mayBeNegative: boolean) =>
      attempt(
        `cutOut${index + 1}.${part}`,
        text,
        () => readListed(`Cut-out ${index + 1}, ${part}`, text, mayBeNegative),
        0,
      );
    return {
      x: at("x", x, true),
      y: at("y", y, true),
      across: at("across", across, false),
      deep: deep.trim() === "" ? undefined : at("deep", deep, false),
    };
  });
  const missing = (place: FormPlace, message: string) => problems.push({ place, message, unfinished: true });
  if (form.way === "widths" && widthsFt.length < FEWEST_WIDTHS) {
    missing(`width${widthsFt.length + 1}`, messages.moreWidths(FEWEST_WIDTHS));
  }
  if (form.way === "points" && points.length < FEWEST_POINTS) {
    missing(`point${points.length + 1}.x`, messages.morePoints(FEWEST_POINTS));
  }
  if (problems.length > 0) return { problems };
  const bed = { way: form.way, numbers, names, widthsFt, points, borderAfterPoint, cutOuts };
  if (weight?.problem !== undefined || weight === undefined) return { bed, problems: [] };
  return { bed: { ...bed, weighedTonsPerYard: Number(weight.text) }, problems: [] };
}

/** A second edging has sides of its own. */
function secondProblems(form: BedForm, numbers: Readonly<Record<NumberFieldKey, number>>): FormProblem[] {
  const sides: readonly NumberFieldKey[] =
    form.way === "rectangle" || form.way === "widths" ? edgingFields[form.way] : [];
  if (secondOf(form) === NO_EDGING || sides.length === 0) return [];
  const own = sides.map((side) => secondKey(side));
  const both = own.filter((key, index) => numbers[key] > 0 && numbers[must(sides[index])] > 0);
  if (own.every((key) => numbers[key] === 0))
    return [{ place: "form", message: messages.noSecondSide(), unfinished: false }];
  return both.map((key) => ({ place: key, message: messages.bothEdgings(fields[key].label), unfinished: false }));
}

/** Has a bed say of its sides and corners both which and how many, whichever of them was given. */
function countSides(form: BedForm, numbers: Record<NumberFieldKey, number>): void {
  const mark = (keys: readonly ShapeFieldKey[], marked: (place: number) => boolean) => {
    keys.forEach((key, index) => {
      numbers[key] = Number(marked(index + 1));
    });
  };
  if (form.way === "rectangle") {
    const { length, width, longBorders, shortBorders, roundedCorners } = numbers;
    const sides = rectangleSides(length, width, longBorders, shortBorders);
    if (countsEdging(form)) mark(edgingFields.rectangle, (side) => sides.includes(side));
    if (!picksCorners(form)) mark(cornerFields, (corner) => corner <= roundedCorners);
    else numbers.roundedCorners = cornerFields.reduce((sum, key) => sum + numbers[key], 0);
  }
  if (form.way === "widths" && countsEdging(form)) {
    const edged = widthsEdged(numbers.endBorders);
    mark(edgingFields.widths, (side) => must(edged[side - 1]) > 0);
  }
}

function isName(key: FieldKey): key is NameFieldKey {
  return fields[key].reads === "name";
}

function readName(key: NameFieldKey, text: string): string {
  const name = text.trim();
  if (name === "") throw new Problem("value", messages.missing(fields[key].label, fields[key].initial), key);
  if (key === "edgingKind" || key === "secondKind") return edgingKindNamed(name, fields[key].label).name;
  return key === "soldBy" ? soldByNamed(name, fields[key].label).name : name;
}

/** A width or coordinate: blank is an error, 0 is a place where the bed runs to a point. */
function readListed(label: string, text: string, mayBeNegative = false): number {
  if (text.trim() === "") throw new Problem("value", messages.missing(label, "4' 6\""), label);
  const feet = readTape(text, "ft", label);
  if (feet < 0 && !mayBeNegative) throw new Problem("value", messages.negative(label, text), label);
  return feet;
}
