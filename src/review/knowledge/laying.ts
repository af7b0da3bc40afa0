import { type ArgumentKnowledge, type FunctionKnowledge, needed, optional } from "./argument";

const points = needed("points", "ft", { many: true, zero: true });
const lengthAndWidth = [needed("length", "ft", { role: "length" }), needed("width", "ft", { role: "width" })] as const;
const rollWidth = needed("roll_width", "ft", { role: "roll width", usual: [2, 15] });
const rollLength = needed("roll_length", "ft", { role: "roll length" });
const overlap = needed("overlap_in", "in", { zero: true, role: "overlap", usual: [3, 24] });
const endLap = optional("end_lap_in", "in", 12, { zero: true });
const spacing = optional("spacing_in", "in", 12, { role: "spacing", usual: [6, 36] });
const bay = optional("bay_ft", "ft", 4);

/** How fabric and pins are laid, after what the bed is. */
const laying: readonly ArgumentKnowledge[] = [
  rollWidth,
  rollLength,
  overlap,
  endLap,
  spacing,
  optional("cut_outs", "ft", "", { many: true, zero: true }),
  bay,
  optional("direction", "degrees", "", { zero: true }),
];

const LAID =
  "The bed is drawn in plan: strips of the roll's width clipped to its outline, pins in rows of pairs and singles, on every overlap and edge. What is drawn is counted.";
const PIECES =
  "Strips are cut full width, roll after roll; where a roll runs out inside a strip, the next piece laps it by the end lap.";

const laidOut = (name: string, gives: string, rule: string, bed: readonly ArgumentKnowledge[]): FunctionKnowledge => ({
  name,
  gives,
  kind: "list",
  rule,
  arguments: [...bed, ...laying],
});

/** The functions that lay a bed out in plan, and list what they drew. */
export const layingFunctions: readonly FunctionKnowledge[] = [
  {
    name: "FABRIC_CUTS",
    gives: "lengths of fabric to cut",
    kind: "list",
    rule: PIECES,
    arguments: [...lengthAndWidth, rollWidth, rollLength, overlap, endLap],
  },
  {
    name: "PIN_MAP",
    gives: "pins by their places",
    kind: "list",
    rule: "Rows of pairs and singles in turn, on every overlap and in every corner, as many as BED.PINS counts.",
    arguments: [...lengthAndWidth, rollWidth, overlap, spacing, bay],
  },
  laidOut("LAYOUT", "counts of a bed laid out", LAID, [points]),
  laidOut("LAYOUT_WIDTHS", "counts of a bed laid out", LAID, [
    needed("spacing", "ft"),
    needed("widths", "ft", { many: true, zero: true }),
  ]),
  laidOut("LAYOUT_RECTANGLE", "counts of a bed laid out", LAID, [
    ...lengthAndWidth,
    needed("corner_radius", "ft", { zero: true, blankIs: 0 }),
    needed("rounded_corners", "count", { zero: true, blankIs: 0 }),
  ]),
  laidOut("LAYOUT_ROUND", "counts of a bed laid out", LAID, [
    needed("diameter", "ft"),
    needed("inner_diameter", "ft", { zero: true, blankIs: 0 }),
  ]),
  laidOut("LAYOUT_CUTS", "lengths of fabric to cut", PIECES, [points]),
  laidOut("LAYOUT_PINS", "pins by their places", LAID, [points]),
];
