import { type ArgumentKnowledge, type FunctionKnowledge, needed, optional } from "./argument";

const bed = [needed("length", "ft", { role: "length" }), needed("width", "ft", { role: "width" })] as const;
const rollWidth = needed("roll_width", "ft", { role: "roll width", usual: [2, 15] });
/** Overlaps of 3 to 24 in bracket common practice; published specifications for heavier duties ask for 12 to 18. */
const overlap: ArgumentKnowledge = needed("overlap_in", "in", { zero: true, role: "overlap", usual: [3, 24] });
const endLap = optional("end_lap_in", "in", 12, { zero: true });
const edge = [needed("edge_length", "ft", { zero: true, role: "border run" }), needed("piece_length", "ft")] as const;

const cutting = [
  needed("stock_length", "ft"),
  needed("lengths", "ft", { many: true }),
  optional("counts", "count", "", { many: true, zero: true }),
  optional("loss_in", "in", 0, { zero: true }),
] as const;
const CUTTING =
  "The fewest stock lengths from which all pieces can be cut without joints, each cut taking its loss; searched, not guessed.";

/** The functions of edging, fabric, pins and cutting. */
export const supplies: readonly FunctionKnowledge[] = [
  {
    name: "EDGING_PIECES",
    gives: "pieces of edging",
    kind: "count",
    whole: true,
    rule: "The fewest pieces that reach along the run, each lapping the one before it; round a closed run the last laps the first.",
    arguments: [...edge, optional("lap_in", "in", 0, { zero: true }), optional("closed", "yes or no", false)],
  },
  {
    name: "STAKES",
    gives: "stakes",
    kind: "count",
    whole: true,
    rule: "One at each end, one through both pieces at each joint, enough between that no gap exceeds the spacing, one more at each corner.",
    arguments: [
      ...edge,
      needed("stake_spacing_in", "in", { role: "spacing", usual: [12, 72] }),
      optional("lap_in", "in", 0, { zero: true }),
      optional("corners", "count", 0, { zero: true }),
      optional("closed", "yes or no", false),
    ],
  },
  {
    name: "FABRIC_STRIPS",
    gives: "strips of fabric",
    kind: "count",
    whole: true,
    rule: "One strip where the roll is as wide as the bed; else the width less one overlap, over the roll less one overlap, rounded up.",
    arguments: [needed("bed_width", "ft", { role: "width" }), rollWidth, overlap],
  },
  {
    name: "FABRIC_AREA",
    gives: "fabric lying in the bed",
    kind: "sq ft",
    rule: "Bed and overlaps together: the width and an overlap for each further strip, times the length and a lap for each further piece.",
    arguments: [...bed, rollWidth, overlap, optional("roll_length", "ft", "", { role: "roll length" }), endLap],
  },
  {
    name: "FABRIC_ROLLS",
    gives: "rolls of fabric",
    kind: "count",
    whole: true,
    rule: "Strips cut full width, roll after roll; where a roll runs out inside a strip, the next piece laps it by the end lap.",
    arguments: [...bed, rollWidth, needed("roll_length", "ft", { role: "roll length" }), overlap, endLap],
  },
  {
    name: "PINS",
    gives: "pins",
    kind: "count",
    whole: true,
    rule: "Rows of pairs and singles in turn: pairs at the edges of each bay, singles in its middle, one on every overlap at each row, one in every corner.",
    arguments: [
      ...bed,
      rollWidth,
      overlap,
      optional("spacing_in", "in", 12, { role: "spacing", usual: [6, 36] }),
      optional("cut_around_ft", "ft", 0, { zero: true }),
      optional("bay_ft", "ft", 4),
    ],
  },
  {
    name: "CUT_COUNT",
    gives: "stock lengths to buy",
    kind: "count",
    whole: true,
    rule: CUTTING,
    arguments: cutting,
  },
  { name: "CUT_LIST", gives: "a plan of cuts", kind: "list", rule: CUTTING, arguments: cutting },
];
