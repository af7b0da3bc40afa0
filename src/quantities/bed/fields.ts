import { MOST_JOINT_IN } from "../pavers";

/**
 * Every value that an estimator can give for a bed, once: what it is called, its unit, how it is read, and
 * what is there until someone types something else. The block on the sheet and the form in the pane are
 * both made from this list, so that they use the same words.
 *
 * Starting values are common practice unless a source is beside them; prices and rates are invented
 * examples, and the block says so.
 */
export interface Field {
  readonly label: string;
  readonly unit: string;
  /** How typed text is read: a length by its own unit (tape text allowed), or a plain number, share or name. */
  readonly reads: "feet" | "inches" | "number" | "whole" | "share" | "name";
  readonly initial: string;
  /** Zero or blank is a sensible answer (no rounded corner, no minimum). */
  readonly mayBeZero?: boolean;
  /** A share that must stay under this; others may be up to {@link MOST_SHARE}. */
  readonly shareUnder?: number;
  /** The largest whole number or length it takes, where there is a limit. */
  readonly most?: number;
  readonly note?: string;
}

/** A markup over 200 % is more likely 20 typed for 20 %. */
export const MOST_SHARE = 2;

/** One side or corner of a bed: 1 or 0, picked on the bed's drawing in the pane. */
const yesOrNo = <Label extends string, Initial extends "0" | "1">(label: Label, initial: Initial) =>
  ({ label, unit: "1 or 0", reads: "whole", initial, mayBeZero: true, most: 1 }) as const;

/** Fields of the ways to measure. Which of them belong to which bed is in `form.ts`. */
export const shapeFields = {
  length: { label: "Length", unit: "ft", reads: "feet", initial: "" },
  width: { label: "Width", unit: "ft", reads: "feet", initial: "" },
  cornerRadius: { label: "Corner radius", unit: "ft", reads: "feet", initial: "0", mayBeZero: true },
  roundedCorners: {
    label: "Rounded corners",
    unit: "corners",
    reads: "whole",
    initial: "0",
    mayBeZero: true,
    note: "0 to 4, all with the same radius",
  },
  roundFrontLeft: yesOrNo("Rounded, front left", "0"),
  roundFrontRight: yesOrNo("Rounded, front right", "0"),
  roundBackLeft: yesOrNo("Rounded, back left", "0"),
  roundBackRight: yesOrNo("Rounded, back right", "0"),
  houseEdging: yesOrNo("Edging, house side", "0"),
  rightEdging: yesOrNo("Edging, right end", "1"),
  frontEdging: yesOrNo("Edging, front", "1"),
  leftEdging: yesOrNo("Edging, left end", "1"),
  longBorders: {
    label: "Long sides with edging",
    unit: "sides",
    reads: "whole",
    initial: "1",
    mayBeZero: true,
    note: "1 if the other is a wall or walk",
  },
  shortBorders: { label: "Short sides with edging", unit: "sides", reads: "whole", initial: "2", mayBeZero: true },
  diameter: { label: "Diameter", unit: "ft", reads: "feet", initial: "" },
  innerDiameter: {
    label: "Inner diameter",
    unit: "ft",
    reads: "feet",
    initial: "0",
    mayBeZero: true,
    note: "bare ground left around a trunk or post",
  },
  innerBorder: {
    label: "Edging around the inside",
    unit: "0 or 1",
    reads: "whole",
    initial: "0",
    mayBeZero: true,
    note: "1 for edging there, too",
  },
  spacing: { label: "Spacing between widths", unit: "ft", reads: "feet", initial: "" },
  baseEdging: yesOrNo("Edging, base line", "0"),
  lastEdging: yesOrNo("Edging, last end", "1"),
  outerEdging: yesOrNo("Edging, outer edge", "1"),
  firstEdging: yesOrNo("Edging, first end", "1"),
  endBorders: {
    label: "Ends with edging",
    unit: "ends",
    reads: "whole",
    initial: "2",
    mayBeZero: true,
    note: "the first and last width, where the bed is cut off square",
  },
  area: { label: "Area", unit: "sq ft", reads: "number", initial: "" },
  edge: { label: "Edging", unit: "lin ft", reads: "feet", initial: "0", mayBeZero: true },
  longest: { label: "Overall length", unit: "ft", reads: "feet", initial: "" },
  widest: { label: "Overall width", unit: "ft", reads: "feet", initial: "" },
  corners: {
    label: "Square corners in the edging",
    unit: "corners",
    reads: "whole",
    initial: "0",
    mayBeZero: true,
    note: "each takes one more stake",
  },
  cutOuts: {
    label: "Other areas to deduct",
    unit: "sq ft",
    reads: "number",
    initial: "0",
    mayBeZero: true,
    note: "plants, posts, and such, in total",
  },
  cutAround: {
    label: "Edge to pin around them",
    unit: "ft",
    reads: "feet",
    initial: "0",
    mayBeZero: true,
    note: "pinned all the way around",
  },
} as const satisfies Record<string, Field>;

/** Depth, stone, and digging. */
export const depthFields = {
  scrapeDepth: {
    label: "Scrape depth",
    unit: "in",
    reads: "inches",
    initial: "2.5",
  },
  borderHeight: { label: "Edging height", unit: "in", reads: "inches", initial: "4" },
  trenchDepth: {
    label: "Trench below the scrape",
    unit: "in",
    reads: "inches",
    initial: "1.5",
    mayBeZero: true,
  },
  trenchWidth: { label: "Trench width", unit: "in", reads: "inches", initial: "4" },
  topGap: {
    label: "Gap below the top edge",
    unit: "in",
    reads: "inches",
    initial: "0.5",
    mayBeZero: true,
  },
  stone: { label: "Stone", unit: "name", reads: "name", initial: "river rock" },
  stoneSize: { label: "Largest stone", unit: "in", reads: "inches", initial: "1.25" },
  // Waste of the whole is no waste.
  waste: {
    label: "Waste and low spots",
    unit: "%",
    reads: "share",
    initial: "8%",
    mayBeZero: true,
    shareUnder: 1,
  },
  soldBy: {
    label: "Stone sold by",
    unit: "name",
    reads: "name",
    initial: "ton",
  },
  bagSize: { label: "Bag size", unit: "cu ft", reads: "number", initial: "0.5" },
  bulkBagSize: {
    label: "Bulk bag size",
    unit: "cu yd",
    reads: "number",
    initial: "1",
  },
  bulkBagLoad: {
    label: "Bulk bag rated load",
    unit: "lb",
    reads: "number",
    initial: "3000",
  },
  orderStep: { label: "Order increment", unit: "tons", reads: "number", initial: "0.5" },
  orderMinimum: { label: "Minimum stone order", unit: "tons", reads: "number", initial: "1", mayBeZero: true },
  soil: {
    label: "Soil",
    unit: "name",
    reads: "name",
    initial: "loam",
  },
  soilTonsPerYard: {
    label: "Soil weight, dug",
    unit: "tons/cu yd",
    reads: "number",
    initial: "1.5",
  },
} as const satisfies Record<string, Field>;

/** A row of one of the office's lists, by its name. */
const named = <Label extends string>(label: Label) =>
  ({ label, unit: "name", reads: "name", initial: "usual" }) as const;

/** What is bought by the piece, and what carries it. */
export const supplyFields = {
  edgingProduct: named("Edging product"),
  borderFinish: {
    label: "Edging finish",
    unit: "name",
    reads: "name",
    initial: "usual",
  },
  pieceLength: { label: "Edging piece length", unit: "ft", reads: "feet", initial: "8" },
  pieceLap: { label: "Lap at a joint", unit: "in", reads: "inches", initial: "2", mayBeZero: true },
  stakeSpacing: { label: "Stake spacing, max", unit: "in", reads: "inches", initial: "30" },
  stakesPerPiece: {
    label: "Stakes included per piece",
    unit: "stakes",
    reads: "whole",
    initial: "3",
    mayBeZero: true,
  },
  fabricProduct: named("Fabric product"),
  rollWidth: { label: "Fabric roll width", unit: "ft", reads: "feet", initial: "6" },
  rollLength: { label: "Fabric roll length", unit: "ft", reads: "feet", initial: "50" },
  fabricLayers: {
    label: "Fabric layers",
    unit: "layers",
    reads: "whole",
    initial: "1",
    mayBeZero: true,
    most: 2,
  },
  overlap: { label: "Strip overlap", unit: "in", reads: "inches", initial: "6" },
  endLap: { label: "End lap of rolls", unit: "in", reads: "inches", initial: "12" },
  stripDirection: {
    label: "Strip direction",
    unit: "degrees",
    reads: "name",
    initial: "least fabric",
  },
  pinSpacing: { label: "Pin row spacing, max", unit: "in", reads: "inches", initial: "12" },
  pinBay: { label: "Pin bay", unit: "ft", reads: "feet", initial: "4" },
  pinProduct: named("Pin product"),
  pinsPerBox: { label: "Pins per box", unit: "pins", reads: "whole", initial: "100" },
  haulTruck: named("Haul-off truck"),
  truckYards: { label: "Haul-off truck size", unit: "cu yd", reads: "number", initial: "5" },
  truckPayload: {
    label: "Haul-off payload",
    unit: "tons",
    reads: "number",
    initial: "2.5",
  },
  deliveryTruck: named("Delivery truck"),
  deliveryYards: { label: "Delivery truck size", unit: "cu yd", reads: "number", initial: "10" },
  deliveryPayload: { label: "Delivery payload", unit: "tons", reads: "number", initial: "8" },
  edgingKind: {
    label: "Edging kind",
    unit: "name",
    reads: "name",
    initial: "metal",
  },
  joint: {
    label: "Joint between pavers",
    unit: "in",
    reads: "inches",
    initial: "0.125",
    mayBeZero: true,
    most: MOST_JOINT_IN,
  },
  sandDepth: {
    label: "Sand under pavers",
    unit: "in",
    reads: "inches",
    initial: "1",
  },
  sandStep: {
    label: "Sand order increment",
    unit: "cu yd",
    reads: "number",
    initial: "0.25",
  },
} as const satisfies Record<string, Field>;

/**
 * A second edging on the same outline, along sides that have none of the first. Each field but its length stands for one
 * of the first edging (`secondEdging.ts`).
 */
export const secondFields = {
  secondKind: {
    label: "Second edging",
    unit: "name",
    reads: "name",
    initial: "none",
  },
  secondHouse: yesOrNo("Second edging, house side", "0"),
  secondRight: yesOrNo("Second edging, right end", "0"),
  secondFront: yesOrNo("Second edging, front", "0"),
  secondLeft: yesOrNo("Second edging, left end", "0"),
  secondBase: yesOrNo("Second edging, base line", "0"),
  secondLast: yesOrNo("Second edging, last end", "0"),
  secondOuter: yesOrNo("Second edging, outer edge", "0"),
  secondFirst: yesOrNo("Second edging, first end", "0"),
  secondLength: {
    label: "Second edging, length",
    unit: "ft",
    reads: "feet",
    initial: "",
  },
  secondProduct: { ...supplyFields.edgingProduct, label: "Second edging, product" },
  secondFinish: { ...supplyFields.borderFinish, label: "Second edging, finish" },
  secondHeight: { ...depthFields.borderHeight, label: "Second edging, height" },
  secondTrenchDepth: {
    ...depthFields.trenchDepth,
    label: "Second edging, trench below the scrape",
  },
  secondTrenchWidth: { ...depthFields.trenchWidth, label: "Second edging, trench width" },
  secondPieceLength: { ...supplyFields.pieceLength, label: "Second edging, piece length" },
  secondPieceLap: { ...supplyFields.pieceLap, label: "Second edging, lap at a joint" },
  secondJoint: { ...supplyFields.joint, label: "Second edging, joint between pavers" },
  secondStakeSpacing: { ...supplyFields.stakeSpacing, label: "Second edging, stake spacing, max" },
  secondStakesPerPiece: { ...supplyFields.stakesPerPiece, label: "Second edging, stakes included per piece" },
  secondSandDepth: { ...supplyFields.sandDepth, label: "Second edging, sand under pavers" },
  secondRate: { label: "Set second edging", unit: "lin ft/hr", reads: "number", initial: "14" },
  secondPieceCost: {
    label: "Second edging, piece",
    unit: "per piece",
    reads: "number",
    initial: "24",
    mayBeZero: true,
  },
  secondStakeCost: {
    label: "Second edging, extra stake",
    unit: "per stake",
    reads: "number",
    initial: "2.5",
    mayBeZero: true,
  },
} as const satisfies Record<string, Field>;

/** Production of the crew. */
export const crewFields = {
  crewName: named("Crew name"),
  crewRate: { label: "Crew rate, with burden", unit: "per labor hour", reads: "number", initial: "48" },
  crewSize: { label: "Crew size", unit: "people", reads: "whole", initial: "2" },
  crewDay: {
    label: "Working day",
    unit: "hr",
    reads: "number",
    initial: "8",
    // Navy and Army estimating practice counts a person-day as 8 h.
  },
  scrapeHours: {
    label: "Scrape and load",
    unit: "hr/cu yd",
    reads: "number",
    initial: "1.2",
  },
  edgingRate: { label: "Set edging", unit: "lin ft/hr", reads: "number", initial: "14" },
  fabricRate: { label: "Lay and pin fabric", unit: "sq ft/hr", reads: "number", initial: "120" },
  rakeRate: { label: "Spread and rake", unit: "sq ft/hr", reads: "number", initial: "100" },
  barrowSize: { label: "Wheelbarrow tray", unit: "cu ft", reads: "number", initial: "6" },
  barrowLoad: { label: "Wheelbarrow load limit", unit: "lb", reads: "number", initial: "300" },
  barrowDistance: { label: "Wheelbarrow distance", unit: "ft", reads: "feet", initial: "60" },
  cleanUpHours: { label: "Cleanup", unit: "labor hours", reads: "number", initial: "1", mayBeZero: true },
} as const satisfies Record<string, Field>;

/** Prices, markups and charges: invented examples until the office types its own. */
export const moneyFields = {
  haulCost: { label: "Haul off", unit: "per load", reads: "number", initial: "45", mayBeZero: true },
  dumpFee: { label: "Dump fee", unit: "per load", reads: "number", initial: "30", mayBeZero: true },
  pieceCost: { label: "Edging piece", unit: "per piece", reads: "number", initial: "24", mayBeZero: true },
  stakeCost: { label: "Extra stake", unit: "per stake", reads: "number", initial: "2.5", mayBeZero: true },
  rollCost: { label: "Fabric roll", unit: "per roll", reads: "number", initial: "64", mayBeZero: true },
  pinBoxCost: { label: "Box of pins", unit: "per box", reads: "number", initial: "18", mayBeZero: true },
  stoneCost: { label: "Stone", unit: "per ton", reads: "number", initial: "62", mayBeZero: true },
  deliveryCost: { label: "Delivery", unit: "per load", reads: "number", initial: "90", mayBeZero: true },
  materialMarkup: { label: "Markup on material", unit: "%", reads: "share", initial: "20%", mayBeZero: true },
  laborMarkup: { label: "Markup on labor", unit: "%", reads: "share", initial: "35%", mayBeZero: true },
  haulingMarkup: { label: "Markup on hauling", unit: "%", reads: "share", initial: "15%", mayBeZero: true },
  overhead: {
    label: "Overhead on cost",
    unit: "%",
    reads: "share",
    initial: "10%",
    mayBeZero: true,
  },
  minimumCharge: { label: "Minimum charge", unit: "per job", reads: "number", initial: "400", mayBeZero: true },
  salesTax: {
    label: "Sales tax rate",
    unit: "%",
    reads: "share",
    initial: "0%",
    mayBeZero: true,
  },
  sandCost: { label: "Sand", unit: "per cu yd", reads: "number", initial: "48", mayBeZero: true },
} as const satisfies Record<string, Field>;

export const fields = {
  ...shapeFields,
  ...depthFields,
  ...supplyFields,
  ...secondFields,
  ...crewFields,
  ...moneyFields,
};

export type ShapeFieldKey = keyof typeof shapeFields;
export type FieldKey = keyof typeof fields;

/** Fields that hold a name; all others hold a number. */
export type NameFieldKey = { [Key in FieldKey]: (typeof fields)[Key]["reads"] extends "name" ? Key : never }[FieldKey];
export type NumberFieldKey = Exclude<FieldKey, NameFieldKey>;
