import {
  asksField,
  countsAmount,
  type EdgingKind,
  edgingFieldKeys,
  edgingKindOf,
  METAL,
  NO_EDGING,
} from "../edgingKinds";
import { must } from "../must";
import { asksOfStone, type SoldBy, soldByFieldKeys, soldByOf, TON, unitAsSold, usuallySoldBy } from "../soldBy";
import { feetIn } from "../tape";
import { exampleStonePrice } from "./examples";
import { type FieldKey, fields, type ShapeFieldKey } from "./fields";
import { listPicked } from "./officeLists";
import { isRate, listedRate, type Rate, type RateKey, type Rates, rateFor, type StoneRate, stoneRateOf } from "./rates";
import { firstField, firstKey } from "./secondEdging";
import { rectangleSides } from "./sides";

/** Which sides have edging, numbered from 1 as in the plan: counterclockwise from the house side or the base line. */
const rectangleEdging = ["houseEdging", "rightEdging", "frontEdging", "leftEdging"] as const;
const widthsEdging = ["baseEdging", "lastEdging", "outerEdging", "firstEdging"] as const;

/** Which corners are rounded, in the order in which a count of them takes them. */
export const cornerFields = ["roundFrontLeft", "roundFrontRight", "roundBackLeft", "roundBackRight"] as const;

/** The ways to measure a bed, in the order in which they are offered. */
export const ways = {
  rectangle: {
    label: "Rectangle",
    hint: "a strip along a wall, with square or rounded corners",
    fields: ["length", "width", "cornerRadius", "roundedCorners", ...rectangleEdging],
  },
  round: {
    label: "Round or ring",
    hint: "around a tree or post",
    fields: ["diameter", "innerDiameter", "innerBorder"],
  },
  widths: {
    label: "Widths from a base line",
    hint: "a curved bed: evenly spaced widths, square off a straight line",
    fields: ["spacing", ...widthsEdging],
  },
  points: {
    label: "Outline points",
    hint: "corners in order by x and y from one stake; check the sides with edging",
    fields: [],
  },
  area: {
    label: "Known area",
    hint: "from a plan or an earlier job",
    fields: ["area", "edge", "longest", "widest", "corners"],
  },
} as const satisfies Record<string, { label: string; hint: string; fields: readonly ShapeFieldKey[] }>;

export type Way = keyof typeof ways;

/** The sides of each way's beds that can have edging or none, in the order of the plan's numbers. */
export const edgingFields = { rectangle: rectangleEdging, widths: widthsEdging } as const;
/** What beds of earlier versions say instead. */
export const countFields = { rectangle: ["longBorders", "shortBorders"], widths: ["endBorders"] } as const;

/** What a person typed about a bed, as typed. A field that is absent has its starting value. */
export interface BedForm {
  readonly name: string;
  readonly way: Way;
  readonly typed: Readonly<Partial<Record<FieldKey, string>>>;
  /** For "widths": what was taped, from the first end to the last. */
  readonly widths: readonly string[];
  /** For "points": the corners in order. */
  readonly points: readonly PointText[];
  /** What is in the bed, by its place in plan: none where the area alone is known. */
  readonly cutOuts: readonly CutOutText[];
  /** The office's rates, where its workbook has them: they are in the fields that no one typed into. */
  readonly rates?: Rates;
  /** Cells of the workbook that inputs follow in place of what was typed: addresses by the keys of the block's cells. */
  readonly links?: Readonly<Record<string, string>>;
  /** Quantities that a list has for lines of the estimate in place of what is worked out, by the lines' keys. */
  readonly quantities?: Readonly<Record<string, number>>;
}

/** A corner as typed, and whether border is set from it to the next: "1" or "0". */
export type PointText = readonly [x: string, y: string, border: string];

/** A cut-out as typed: the middle along the base line and square to it, its size, and blank where it is round. */
export type CutOutText = readonly [x: string, y: string, across: string, deep: string];

/** Fields that belong to every bed, beside those of its way of measuring. */
const cutOutFields = ["cutOuts", "cutAround"] as const satisfies readonly ShapeFieldKey[];

/** The fields that describe the shape of a bed, in the order in which they are asked. */
export function shapeFieldsOf(form: Pick<BedForm, "way" | "typed">): readonly ShapeFieldKey[] {
  const { way } = form;
  const own: readonly ShapeFieldKey[] = ways[way].fields;
  const sides = sidesOf(edgingFields, way);
  const counts = countsEdging(form) ? sidesOf(countFields, way) : [];
  return [
    ...own.flatMap((key): readonly ShapeFieldKey[] => {
      if (key === "roundedCorners" && picksCorners(form)) return cornerFields;
      return counts.length > 0 && sides.includes(key) ? (key === sides[0] ? counts : []) : [key];
    }),
    ...cutOutFields,
  ];
}

/**
 * Whether a bed says how many sides have edging, as beds made by earlier versions do and those of a list of jobs, and not
 * which.
 */
export function countsEdging({ way, typed }: Pick<BedForm, "way" | "typed">): boolean {
  return isTyped(typed, sidesOf(countFields, way)) && !isTyped(typed, sidesOf(edgingFields, way));
}

/** Whether a rectangle says which corners are rounded, and not how many from the front. */
export function picksCorners({ way, typed }: Pick<BedForm, "way" | "typed">): boolean {
  return way === "rectangle" && isTyped(typed, cornerFields);
}

const sidesOf = (listed: Partial<Record<Way, readonly ShapeFieldKey[]>>, way: Way) => listed[way] ?? [];

const isTyped = (typed: BedForm["typed"], keys: readonly ShapeFieldKey[]) =>
  keys.some((key) => typed[key] !== undefined);

/**
 * What a field has until something is typed. A rectangle has edging along one long side and both short ones, the front
 * and the ends of a bed along a house.
 */
export function initialOf(form: BedForm, key: FieldKey): string {
  if (key === "soldBy") return listedUnit(form) ?? usuallySoldBy(textOf(form, "stone")).name;
  if (soldByFieldKeys.includes(key) && soldByIn(form) !== TON) return soldByIn(form).usual[key] ?? fields[key].initial;
  if (key === "stoneCost") return exampleStonePrice(textOf(form, "stone"));
  const first = firstField(key);
  if (first) return secondOf(form).usual[first] ?? fields[key].initial;
  const side = (rectangleEdging as readonly FieldKey[]).indexOf(key) + 1;
  if (side === 0 || isTyped(form.typed, rectangleEdging)) return edgingOf(form).usual[key] ?? fields[key].initial;
  const [length, width] = (["length", "width"] as const).map((one) => feetIn(textOf(form, one)) ?? 0);
  return rectangleSides(must(length), must(width), 1, 2).includes(side) ? "1" : "0";
}

/** A form in which nothing has been typed yet. */
export function blankForm(): BedForm {
  return {
    name: "",
    way: "rectangle",
    typed: {},
    widths: ["", "", "", "", ""],
    points: [
      ["", "", "1"],
      ["", "", "1"],
      ["", "", "1"],
      ["", "", "1"],
    ],
    cutOuts: [],
  };
}

/** What is in a field: what was typed, or the office's rate, or the field's starting value. */
export function textOf(form: BedForm, key: FieldKey): string {
  const typed = form.typed[key];
  if (typed !== undefined) return typed;
  const rate = followedRate(form, key);
  if (rate) return rate.problem === undefined ? rate.text : "";
  return initialOf(form, key);
}

/**
 * What a form has typed once fields are filled; undefined gives one back to its rate or starting value. Where its stone
 * comes to be sold by something else, the step, the minimum, and the price were those of another unit.
 */
export function withFilled(
  form: BedForm,
  fills: Readonly<Partial<Record<FieldKey, string | undefined>>>,
): BedForm["typed"] {
  const typed = Object.fromEntries(
    Object.entries({ ...form.typed, ...fills }).filter(([, text]) => text !== undefined),
  ) as BedForm["typed"];
  if (soldByIn({ ...form, typed }) === soldByIn(form)) return typed;
  const isOfUnit = (key: string) => soldByFieldKeys.includes(key as FieldKey) && !(key in fills);
  return Object.fromEntries(Object.entries(typed).filter(([key]) => !isOfUnit(key)));
}

/** What a bed is edged with; metal until its kind can be read. */
export const edgingOf = (form: Pick<BedForm, "typed">): EdgingKind => edgingKindOf(form.typed.edgingKind);
/** What it is edged with beside that. */
export const secondOf = ({ typed: { secondKind } }: Pick<BedForm, "typed">): EdgingKind =>
  secondKind === undefined ? NO_EDGING : edgingKindOf(secondKind);

/** Both, by their names. */
export const edgingNames = (form: Pick<BedForm, "typed">): string[] =>
  [edgingOf(form), secondOf(form)].filter((kind, place) => place === 0 || kind !== NO_EDGING).map(({ name }) => name);

/**
 * Whether a bed of this form has the field: edging of another kind has other sizes, only bags have theirs, and a row can be
 * named where the office has the list.
 */
export function asks(form: BedForm, key: FieldKey): boolean {
  const list = listPicked(key);
  if (list && form.rates?.lists?.[list] === undefined) return false;
  const first = firstField(key);
  if (first) return secondOf(form) !== NO_EDGING && asksField(secondOf(form), first) && hasSide(form.way, first);
  const isAsked = asksField(edgingOf(form), key) || (isOfSand(key) && asksField(secondOf(form), key));
  return isAsked && asksOfStone(soldByIn(form), key);
}

/** Whether the block of a bed has a row for an amount. */
export function counts(form: BedForm, key: string): boolean {
  const first = firstKey(key);
  if (first) return secondOf(form) !== NO_EDGING && countsAmount(secondOf(form), first);
  return countsAmount(edgingOf(form), key) || (key === "sandOrder" && countsAmount(secondOf(form), key));
}

/** Whether a second edging says by this field where it is: by its sides where they have names, else by its length. */
function hasSide(way: Way, first: FieldKey): boolean {
  const sides = Object.values(edgingFields).flat() as readonly FieldKey[];
  const own: readonly FieldKey[] = sidesOf(edgingFields, way);
  if (first === "edge") return own.length === 0;
  return !sides.includes(first) || own.includes(first);
}

/** Sand is one order for both edgings. */
const isOfSand = (key: FieldKey) => key === "sandStep" || key === "sandCost";

/** What a bed's stone is sold by; tons until that can be read. */
export const soldByIn = (form: BedForm): SoldBy => soldByOf(textOf(form, "soldBy"));

/** The unit of a field, as this bed has it. */
export const unitOf = (form: BedForm, key: FieldKey): string => unitAsSold(soldByIn(form), key) ?? fields[key].unit;

/**
 * The rate that a field follows: that of the row that the bed names in the office's list, else the single one. None where
 * something was typed, or where the office has no rates.
 */
export function followedRate(form: BedForm, key: FieldKey): Rate | undefined {
  if (!form.rates || form.typed[key] !== undefined) return undefined;
  const listed = listedRate(form.rates, key, (name) => textOf(form, name));
  if (listed) return listed;
  if (soldByFieldKeys.includes(key)) return rateFor(form.rates, key as RateKey, textOf(form, "stone"), soldByIn(form));
  const single = singleRate(form, key);
  return single && form.rates.byField[single];
}

/** The single rate of the office for a field: those of edging are of metal, and those of stone are by the ton. */
export function singleRate(form: BedForm, key: FieldKey): RateKey | undefined {
  const first = firstField(key);
  const rate = first ?? key;
  if (!form.rates || !isRate(rate) || form.rates.lacks?.includes(rate)) return undefined;
  if (edgingFieldKeys.includes(rate) && (first ? secondOf(form) : edgingOf(form)) !== METAL) return undefined;
  return !soldByFieldKeys.includes(rate) || soldByIn(form) === TON ? rate : undefined;
}

/** The form's stone in the office's list; undefined where it is in none. */
export function listedStone(form: BedForm): StoneRate | undefined {
  return form.rates && stoneRateOf(form.rates, textOf(form, "stone"));
}

/** What the office's list sells the form's stone by; undefined where it doesn't say. */
const listedUnit = (form: BedForm): string | undefined => {
  const unit = listedStone(form)?.soldBy;
  return unit?.problem === undefined ? unit?.text : undefined;
};

/** Whether a bed measured in this way can be laid out in plan. */
export function hasPlan(way: Way): boolean {
  return way !== "area";
}

/** The cut-outs that were given, where the bed has a plan to place them in. */
export function givenCutOuts(form: BedForm): readonly CutOutText[] {
  return hasPlan(form.way) ? form.cutOuts.filter((texts) => texts.some((text) => text.trim() !== "")) : [];
}

/** The widths or points that were given: what stays blank behind the last one is left out. */
export function givenWidths(form: BedForm): readonly string[] {
  return form.widths.slice(0, form.widths.findLastIndex((width) => width.trim() !== "") + 1);
}

export function givenPoints(form: BedForm): readonly PointText[] {
  return form.points.slice(0, form.points.findLastIndex(([x, y]) => x.trim() !== "" || y.trim() !== "") + 1);
}
