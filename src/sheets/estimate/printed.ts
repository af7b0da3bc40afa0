import type { Amount } from "../../quantities/bed/amounts";
import {
  type BedForm,
  cornerFields,
  countsEdging,
  edgingFields,
  edgingOf,
  givenCutOuts,
  givenPoints,
  givenWidths,
  hasPlan,
  picksCorners,
  secondOf,
  soldByIn,
} from "../../quantities/bed/form";
import { expressionOf, type Outline } from "../../quantities/bed/inPlan";
import { lines } from "../../quantities/bed/lines";
import { must } from "../../quantities/must";

export const SPARE_LINES = 3;

/** What the estimate's expressions depend on, of a form. */
export function outlineOf(form: BedForm): Outline {
  return {
    way: form.way,
    widths: givenWidths(form).length,
    points: givenPoints(form).length,
    cutOuts: givenCutOuts(form).length,
    inPlan: hasPlan(form.way),
    countsEdging: countsEdging(form),
    picksCorners: picksCorners(form),
    edging: edgingOf(form),
    second: secondOf(form),
    soldBy: soldByIn(form),
  };
}

/** An expression of the estimate as a cell's formula, in which each list is the range of its first and last cell. */
export function printed(form: BedForm, is: Amount["is"]): string {
  const outline = outlineOf(form);
  const width = `width${outline.widths}`;
  const point = `point${outline.points}`;
  const cutOut = `cutOut${outline.cutOuts}`;
  const column = (name: string) => `{${must(lines[0]).key}.${name}}:{spare${SPARE_LINES}.${name}}`;
  const edged = form.way === "widths" ? edgingFields.widths : edgingFields.rectangle;
  const ranges: Readonly<Record<string, string>> = {
    edged: `{${edged[0]}}:{${must(edged.at(-1))}}`,
    rounded: `{${cornerFields[0]}}:{${must(cornerFields.at(-1))}}`,
    widths: `{width1}:{${width}}`,
    "widths.decimal": `{width1.decimal}:{${width}.decimal}`,
    "widths.first": "{width1.decimal}",
    "widths.last": `{${width}.decimal}`,
    points: `{point1}:{${point}.y}`,
    "points.x": `{point1.decimalX}:{${point}.decimalX}`,
    "points.y": `{point1.decimalY}:{${point}.decimalY}`,
    "points.side": `{point1.side}:{${point}.side}`,
    "points.border": `{point1.border}:{${point}.border}`,
    "cutOuts.area": `{cutOut1.area}:{${cutOut}.area}`,
    "cutOuts.placed": `{cutOut1.x}:{${cutOut}.deep}`,
    "lines.cost": column("cost"),
    "lines.price": column("price"),
    "lines.kind": column("kind"),
    "lines.quantity": column("quantity"),
  };
  return withKeys(expressionOf(is, outline), (key) => ranges[key]);
}

/** A formula with some of its keys put otherwise; what `other` doesn't know stays. */
export function withKeys(expression: string, other: (key: string) => string | undefined): string {
  return `=${expression.replace(/\{([\w.]+)\}/g, (given, key: string) => other(key) ?? given)}`;
}
