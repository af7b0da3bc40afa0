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
    hint: "Ticket at hand, every marked line found, private lines shown by the owner, hand digging beside marks.",
    quantities: [{ amount: "beds", what: "beds", unit: "" }],
  },
  {
    key: "lineOut",
    label: "Line out",
    hint: "String or paint along the edge, corners square, arcs swung from their middle.",
    quantities: [{ amount: "borderFt", what: "border", unit: "ft" }],
    hoursIn: "scrape",
  },
  {
    key: "scrape",
    label: "Scrape and load",
    hint: "Sod and soil to depth, falling away from the house.",
    quantities: [
      { amount: "areaSqFt", what: "bed", unit: "sq ft" },
      { amount: "bankYards", what: "in the ground", unit: "cu yd" },
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
    label: "Trench and set the border",
    hint: "Better face outward; a stake through both pieces at each joint; leave a gap for the barrows.",
    quantities: [
      { amount: "borderFt", what: "border", unit: "ft" },
      { amount: "pieces", what: "on the order", unit: "pieces" },
      { amount: "stakes", what: "driven", unit: "stakes" },
    ],
    hours: "border",
  },
  {
    key: "fabric",
    label: "Lay fabric",
    hint: "Up to the border and round whatever stands in the bed: no bare ground.",
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
    hint: "One in each corner, along every overlap through both layers, rows in between.",
    quantities: [{ amount: "pins", what: "set", unit: "pins" }],
    hoursIn: "fabric",
  },
  {
    key: "stone",
    label: "Barrow and spread stone",
    hint: "From the far end towards the gap; a little below the top edge; nothing on meters, valves and vents.",
    quantities: [
      { amount: "stoneTons", what: "needed", unit: "tons" },
      { amount: "stoneYards", what: "needed", unit: "cu yd" },
      { amount: "deliveries", what: "delivered", unit: "loads" },
      { amount: "barrowTrips", what: "with the barrow", unit: "trips" },
    ],
    hours: "stone",
  },
  {
    key: "close",
    label: "Close the border",
    hint: "Set the pieces of the gap, rake stone up to them.",
    quantities: [],
    hoursIn: "border",
  },
  {
    key: "cleanUp",
    label: "Clean up",
    hint: "Walks and street swept, leftovers counted and written down.",
    quantities: [],
    hours: "cleanUp",
  },
];
