import { type FunctionKnowledge, needed, optional } from "./argument";

const corners = [
  optional("corner_radius", "ft", 0, { zero: true }),
  optional("rounded_corners", "count", 0, { zero: true }),
] as const;

/** The functions that read the tape and measure beds. */
export const measuring: readonly FunctionKnowledge[] = [
  {
    name: "FEET",
    gives: "a measure in feet",
    kind: "ft",
    rule: "A measure from the tape as decimal feet; a bare number is feet already.",
    arguments: [needed("measure", "ft")],
  },
  {
    name: "INCHES",
    gives: "a measure in inches",
    kind: "in",
    rule: "A measure from the tape as decimal inches; a bare number is inches already.",
    arguments: [needed("measure", "in")],
  },
  {
    name: "AREA_RECTANGLE",
    gives: "area of a rectangle",
    kind: "sq ft",
    rule: "Length times width, less what each rounded corner takes off (0.2146 of its radius squared), less the cut-outs.",
    arguments: [
      needed("length", "ft", { role: "length" }),
      needed("width", "ft", { role: "width" }),
      ...corners,
      optional("cut_outs", "sq ft", "", { many: true, zero: true }),
    ],
  },
  {
    name: "AREA_TRIANGLE",
    gives: "area of a triangle",
    kind: "sq ft",
    rule: "From the three sides by Heron's formula: half the sum of the sides, s, and the root of s(s − a)(s − b)(s − c).",
    arguments: [needed("side_a", "ft"), needed("side_b", "ft"), needed("side_c", "ft")],
  },
  {
    name: "AREA_ROUND",
    gives: "area of a disc or ring",
    kind: "sq ft",
    rule: "π/4 times the diameter squared, less the same for what stays out in the middle.",
    arguments: [needed("diameter", "ft"), optional("inner_diameter", "ft", 0, { zero: true })],
  },
  {
    name: "AREA_WIDTHS",
    gives: "area from taped widths",
    kind: "sq ft",
    rule: "Widths at even spacing along a base line, put together by Simpson's rule for a curved edge, or by trapezoids.",
    arguments: [
      needed("spacing", "ft"),
      needed("widths", "ft", { many: true, zero: true }),
      optional("rule", "width rule", "simpson"),
    ],
  },
  {
    name: "AREA_POINTS",
    gives: "area within an outline",
    kind: "sq ft",
    rule: "From the corners by the surveyor's rule: each side's x times the next y, less its y times the next x, halved.",
    arguments: [needed("points", "ft", { many: true, zero: true })],
  },
  {
    name: "EDGE_LENGTH",
    gives: "length of edging",
    kind: "ft",
    rule: "The sides together, less what each rounded corner saves (0.4292 of its radius).",
    arguments: [needed("sides", "ft", { many: true }), ...corners],
  },
  {
    name: "EDGE_WIDTHS",
    gives: "length of an outer edge",
    kind: "ft",
    rule: "Straight from each taped width to the next.",
    arguments: [needed("spacing", "ft"), needed("widths", "ft", { many: true, zero: true })],
  },
  {
    name: "EDGE_POINTS",
    gives: "length of an outline",
    kind: "ft",
    rule: "Straight from each point to the next, and back to the first where the outline is closed.",
    arguments: [needed("points", "ft", { many: true, zero: true }), optional("closed", "yes or no", true)],
  },
];
