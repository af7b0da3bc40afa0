import type { HoursStep } from "./bedNeeds";
import type { CrewAmounts } from "./crewAmounts";

export type StepKey =
  | "marks"
  | "lineOut"
  | "scrape"
  | "level"
  | "border"
  | "fabric"
  | "pins"
  | "stone"
  | "close"
  | "cleanUp";

/** One quantity of a step, by its key in the amounts of the job. */
export interface StepQuantity {
  readonly amount: keyof CrewAmounts;
  readonly what: string;
  readonly unit: string;
}

/** A step of the day. */
export interface Step {
  readonly key: StepKey;
  readonly label: string;
  /** What to mind there: common practice. */
  readonly hint: string;
  readonly quantities: readonly StepQuantity[];
  /** The step of the estimate whose hours are worked here; undefined where they are in those of another step. */
  readonly hours?: HoursStep;
  /** In whose hours this step is contained. */
  readonly hoursIn?: StepKey;
}

/** The steps of a bed in the order in which they are done: common practice, no source. */
export const crewSteps: readonly Step[] = [
  {
    key: "marks",
    label: "Notice and marks",
    hint: "Have the ticket on hand, find every marked line, have the owner show private lines, and hand dig beside marks.",
    quantities: [{ amount: "beds", what: "beds", unit: "" }],
  },
  {
    key: "lineOut",
    label: "Lay out",
    hint: "String or paint the edge, square the corners, swing arcs from their centers.",
    quantities: [{ amount: "borderFt", what: "edging", unit: "lin ft" }],
    hoursIn: "scrape",
  },
  {
    key: "scrape",
    label: "Scrape and load",
    hint: "Cut sod and soil to depth, sloped away from the house.",
    quantities: [
      { amount: "areaSqFt", what: "bed", unit: "sq ft" },
      { amount: "bankYards", what: "bank", unit: "cu yd" },
      { amount: "spoilYards", what: "loose", unit: "cu yd" },
      { amount: "spoilLoads", what: "hauled off", unit: "loads" },
    ],
    hours: "scrape",
  },
  {
    key: "level",
    label: "Level, and tamp low spots",
    hint: "Low spots cost stone: fill and tamp them now.",
    quantities: [{ amount: "areaSqFt", what: "floor", unit: "sq ft" }],
    hoursIn: "scrape",
  },
  {
    key: "border",
    label: "Trench and set edging",
    hint: "Smooth face out; a stake through both pieces at each joint; leave one piece out for wheelbarrows until the stone is in.",
    quantities: [
      { amount: "borderFt", what: "edging", unit: "lin ft" },
      { amount: "pieces", what: "on the order", unit: "pieces" },
      { amount: "stakes", what: "driven", unit: "stakes" },
      { amount: "sandYards", what: "sand", unit: "cu yd" },
    ],
    hours: "border",
  },
  {
    key: "fabric",
    label: "Lay fabric",
    hint: "Run it up to the edging and around anything in the bed; leave no bare ground.",
    quantities: [
      { amount: "fabricSqFt", what: "in the beds", unit: "sq ft" },
      { amount: "strips", what: "cut", unit: "strips" },
      { amount: "rolls", what: "on the order", unit: "rolls" },
    ],
    hours: "fabric",
  },
  {
    key: "pins",
    label: "Pin fabric",
    hint: "One in each corner, one through both layers along every overlap, and rows between.",
    quantities: [{ amount: "pins", what: "set", unit: "pins" }],
    hoursIn: "fabric",
  },
  {
    key: "stone",
    label: "Wheelbarrow and spread stone",
    hint: "Work from the far end toward the gap, finish a little below the top edge, and keep stone off meters, valves, and vents.",
    quantities: [
      { amount: "stoneTons", what: "needed", unit: "tons" },
      { amount: "stoneYards", what: "needed", unit: "cu yd" },
      { amount: "deliveries", what: "delivered", unit: "loads" },
      { amount: "barrowTrips", what: "by wheelbarrow", unit: "trips" },
    ],
    hours: "stone",
  },
  {
    key: "close",
    label: "Close the gap",
    hint: "Set the last pieces and rake stone up to them.",
    quantities: [],
    hoursIn: "border",
  },
  {
    key: "cleanUp",
    label: "Clean up",
    hint: "Sweep the walks and street; count leftovers and write them down.",
    quantities: [],
    hours: "cleanUp",
  },
];
