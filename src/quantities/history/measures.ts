import { fields } from "../bed/fields";
import type { RateKey } from "../bed/rates";

/** How the rate of a measure works on its estimate. */
export type RateKind =
  /** A rate such as ft/h: twice the rate is half the hours. */
  | "amount per hour"
  /** A rate such as h/cu yd: twice the rate is twice the hours. */
  | "hours per amount"
  /** A share on top of the net amount. */
  | "share on top";

/** Something that is estimated for every job and can be counted afterwards. */
export interface Measure {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  /** The rate that past jobs can correct; undefined where none is behind the measure, or several do. */
  readonly rate?: { readonly key: RateKey; readonly kind: RateKind; readonly label: string; readonly unit: string };
  /** Why no rate is proposed; there wherever `rate` is not. */
  readonly noRate?: string;
}

const rateOf = (key: RateKey, kind: RateKind) => ({ key, kind, label: fields[key].label, unit: fields[key].unit });
const WHOLE_THINGS = "It's counted from each bed's shape, so there's no rate to adjust.";

/** What a crew can write down with little trouble, in the order of the work. */
export const measures: readonly Measure[] = [
  { key: "scrape", label: "Scrape and load", unit: "labor hours", rate: rateOf("scrapeHours", "hours per amount") },
  { key: "border", label: "Set edging", unit: "labor hours", rate: rateOf("edgingRate", "amount per hour") },
  { key: "fabric", label: "Lay and pin fabric", unit: "labor hours", rate: rateOf("fabricRate", "amount per hour") },
  {
    key: "stone",
    label: "Wheelbarrow and spread",
    unit: "labor hours",
    noRate: "It mixes wheelbarrow time and raking time, so it can't say which rate is off.",
  },
  { key: "cleanUp", label: "Clean up", unit: "labor hours", noRate: "You type its hours for each job." },
  { key: "stoneTons", label: "Stone", unit: "tons", rate: rateOf("waste", "share on top") },
  { key: "spoilLoads", label: "Haul off", unit: "loads", noRate: WHOLE_THINGS },
  { key: "pieces", label: "Edging pieces", unit: "pieces", noRate: WHOLE_THINGS },
  { key: "rolls", label: "Fabric rolls", unit: "rolls", noRate: WHOLE_THINGS },
  { key: "pins", label: "Pins", unit: "pins", noRate: WHOLE_THINGS },
];

/** A measure by its key; the office's own words stand for themselves. */
export function measureOf(key: string): Measure {
  return (
    measures.find((measure) => measure.key === key) ?? {
      key,
      label: key,
      unit: "",
      noRate: "There's no rate behind it to adjust.",
    }
  );
}
