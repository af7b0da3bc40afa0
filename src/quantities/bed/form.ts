import { type FieldKey, fields, type ShapeFieldKey } from "./fields";

/** The ways to measure a bed, in the order in which they are offered. */
export const ways = {
  rectangle: {
    label: "Rectangle",
    hint: "a strip along a wall, square or with rounded corners",
    fields: ["length", "width", "cornerRadius", "roundedCorners", "longBorders", "shortBorders"],
  },
  round: {
    label: "Round or ring",
    hint: "round a tree or post",
    fields: ["diameter", "innerDiameter", "innerBorder"],
  },
  widths: {
    label: "Widths from a base line",
    hint: "a curved bed: widths taped square to a straight line, evenly spaced, end to end",
    fields: ["spacing", "endBorders", "corners"],
  },
  points: {
    label: "Outline points",
    hint: "corners by x and y from one stake, in order round the bed",
    fields: ["borderless", "corners"],
  },
  area: {
    label: "Area known",
    hint: "from a plan or an earlier job",
    fields: ["area", "edge", "longest", "widest", "corners"],
  },
} as const satisfies Record<string, { label: string; hint: string; fields: readonly ShapeFieldKey[] }>;

export type Way = keyof typeof ways;

/** What a person typed about a bed, as typed. A field that is absent has its starting value. */
export interface BedForm {
  readonly name: string;
  readonly way: Way;
  readonly typed: Readonly<Partial<Record<FieldKey, string>>>;
  /** For "widths": what was taped, from the first end to the last. */
  readonly widths: readonly string[];
  /** For "points": x and y of each corner. */
  readonly points: readonly (readonly [x: string, y: string])[];
}

/** Fields that belong to every bed, beside those of its way of measuring. */
const cutOutFields = ["cutOuts", "cutAround"] as const satisfies readonly ShapeFieldKey[];

/** The fields that describe the shape of a bed measured in this way, in the order in which they are asked. */
export function shapeFieldsOf(way: Way): readonly ShapeFieldKey[] {
  return [...ways[way].fields, ...cutOutFields];
}

/** A form in which nothing has been typed yet. */
export function blankForm(): BedForm {
  return {
    name: "",
    way: "rectangle",
    typed: {},
    widths: ["", "", "", "", ""],
    points: [
      ["", ""],
      ["", ""],
      ["", ""],
      ["", ""],
    ],
  };
}

/** What stands in a field: what was typed, or its starting value. */
export function textOf(form: BedForm, key: FieldKey): string {
  return form.typed[key] ?? fields[key].initial;
}

/** The widths or points that were given: what stays blank behind the last one is left out. */
export function givenWidths(form: BedForm): readonly string[] {
  return form.widths.slice(0, form.widths.findLastIndex((width) => width.trim() !== "") + 1);
}

export function givenPoints(form: BedForm): readonly (readonly [x: string, y: string])[] {
  return form.points.slice(0, form.points.findLastIndex(([x, y]) => x.trim() !== "" || y.trim() !== "") + 1);
}
