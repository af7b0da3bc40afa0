import { must } from "../../quantities/must";
import { areaWidths, type WidthRule } from "../../quantities/widths";
import { may } from "../argument";
import { spacing, widths } from "../arguments";
import { declare } from "../declare";
import { choose } from "../native/named";
import type { Widths } from "../native/ranges";
import { widthRule } from "../readNamed";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const AREA_WIDTHS = worksheetFunction(areaWidths, spacing, widths, may("rule", widthRule));

export const areaWidthsDeclared = /* @__PURE__ */ declare(AREA_WIDTHS, {
  name: "AREA_WIDTHS",
  purpose: "Measure the bed",
  about: "Area of a bed from widths taped square off a base line, evenly spaced, end to end.",
  gives: "area from taped widths",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "Evenly spaced widths, added up by Simpson's rule for a curved edge, or by trapezoids.",
  example: "=BED.AREA_WIDTHS(15, A2:A8) gives 476 for widths 3.9, 4.5, 5.1, 6.5, 6.3, 5.1, 4.1",
  source: "Simpson's 1/3 rule and the trapezoidal rule, as surveying textbooks give them.",
  related: ["EDGE_WIDTHS", "LAYOUT_WIDTHS"],
  arguments: {
    rule: { about: '"simpson" for a curved edge, "trapezoid" for straight edges. Default: "simpson".' },
  },
  native: (spacing, taped, straight) => {
    const area = choose(straight, weighed(taped, 0), weighed(taped, taped.count - 1 - ((taped.count - 1) % 2)));
    return { text: `${spacing.text}*${area}`, when: [[taped.someWidth]] };
  },
  working: (answer, spacing, widths, rule) => {
    const intervals = widths.length - 1;
    const lines = [`${widths.length} widths, ${intervals} intervals of ${shown(spacing)} ft`];
    const isSimpson = rule === "simpson" && intervals > 1;
    // Simpson's rule takes intervals two by two; one that is left over is a trapezoid.
    const last = isSimpson ? intervals - (intervals % 2) : 0;
    const curved = isSimpson ? areaOf(spacing, widths.slice(0, last + 1), "simpson") : 0;
    if (isSimpson) lines.push(simpsonLine(widths.slice(0, last + 1), spacing, curved));
    if (last === intervals) return lines;
    const straight = widths.slice(last);
    const rest = areaOf(spacing, straight, "trapezoid");
    lines.push(
      (isSimpson ? "last interval, by the trapezoid: " : "by trapezoids: ") + trapezoidLine(straight, spacing, rest),
    );
    if (isSimpson) lines.push(`${shown(curved)} + ${shown(rest)} = ${shown(answer)} sq ft`);
    return lines;
  },
});

/** The area of some of a bed's widths, which may all be 0. */
const areaOf = (spacing: number, widths: readonly number[], rule: WidthRule) =>
  widths.some((width) => width > 0) ? areaWidths(spacing, widths, rule) : 0;

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

function simpsonLine(widths: readonly number[], spacing: number, area: number): string {
  const everyOther = (from: number) => sum(widths.slice(from, -1).filter((_, place) => place % 2 === 0));
  const ends = must(widths[0]) + must(widths.at(-1));
  const inner = `4 × ${shown(everyOther(1))} + 2 × ${shown(everyOther(2))}`;
  return `${shown(spacing)}/3 × (ends ${shown(ends)} + ${inner}) = ${shown(area)} sq ft`;
}

function trapezoidLine(widths: readonly number[], spacing: number, area: number): string {
  const ends = (must(widths[0]) + must(widths.at(-1))) / 2;
  const between = sum(widths.slice(1, -1));
  return `${shown(spacing)} × (half the ends ${shown(ends)} + between ${shown(between)}) = ${shown(area)} sq ft`;
}

/** Simpson's rule over the intervals up to one of them, the trapezoidal rule from there on. */
function weighed(taped: Widths, simpsonEnd: number): string {
  const last = taped.count - 1;
  // In sixths of the spacing: a third and four thirds by the one rule, halves by the other.
  const sixths = Array.from({ length: taped.count }, () => 0);
  const add = (place: number, weight: number) => {
    sixths[place] = must(sixths[place]) + weight;
  };
  for (let place = 0; place < last; place++) {
    if (place >= simpsonEnd) [add(place, 3), add(place + 1, 3)];
    else if (place % 2 === 0) [add(place, 2), add(place + 1, 8), add(place + 2, 2)];
  }
  const shared = sixths.every((weight) => weight % 3 === 0) ? 3 : sixths.every((weight) => weight % 2 === 0) ? 2 : 1;
  return `${taped.weighed(sixths.map((weight) => weight / shared))}/${6 / shared}`;
}
