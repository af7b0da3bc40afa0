import { EDGING_KINDS, type EdgingKind, type EdgingLine, NO_EDGING } from "../edgingKinds";
import { SOLD_BY, type SoldBy } from "../soldBy";
import type { QuantityKey } from "./amounts";
import type { NumberFieldKey } from "./fields";
import { secondKey } from "./secondEdging";

/** What a line is, since each kind has its own markup. */
export const lineKinds = ["material", "labor", "hauling"] as const;
export type LineKind = (typeof lineKinds)[number];

/** One priced line of an estimate. */
export interface EstimateLine {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  /** Which worked-out amount is its quantity. */
  readonly quantity: QuantityKey | "cleanUpHours";
  /** Which field is its unit cost. */
  readonly cost: NumberFieldKey;
  readonly kind: LineKind;
}

const STONE_LINE = "stoneLine";

/** The lines of an estimate, in the order in which the work is done. */
export const lines: readonly EstimateLine[] = [
  {
    key: "scrape",
    label: "Scrape and load",
    unit: "labor hours",
    quantity: "scrapeTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "haul", label: "Haul off", unit: "loads", quantity: "spoilLoads", cost: "haulCost", kind: "hauling" },
  { key: "dump", label: "Dump fee", unit: "loads", quantity: "spoilLoads", cost: "dumpFee", kind: "hauling" },
  { key: "edging", label: "Edging pieces", unit: "pieces", quantity: "pieces", cost: "pieceCost", kind: "material" },
  {
    key: "stakeLine",
    label: "Extra stakes",
    unit: "stakes",
    quantity: "extraStakes",
    cost: "stakeCost",
    kind: "material",
  },
  { key: "sandLine", label: "Sand", unit: "cu yd", quantity: "sandOrder", cost: "sandCost", kind: "material" },
  {
    key: "setEdging",
    label: "Set edging",
    unit: "labor hours",
    quantity: "edgingTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "fabric", label: "Fabric rolls", unit: "rolls", quantity: "rolls", cost: "rollCost", kind: "material" },
  { key: "pinLine", label: "Pins", unit: "boxes", quantity: "pinBoxes", cost: "pinBoxCost", kind: "material" },
  {
    key: "layFabric",
    label: "Lay and pin fabric",
    unit: "labor hours",
    quantity: "fabricTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: STONE_LINE, label: "Stone", unit: "tons", quantity: "stoneOrder", cost: "stoneCost", kind: "material" },
  { key: "delivery", label: "Delivery", unit: "loads", quantity: "deliveries", cost: "deliveryCost", kind: "hauling" },
  {
    key: "spread",
    label: "Wheelbarrow and spread",
    unit: "labor hours",
    quantity: "spreadTime",
    cost: "crewRate",
    kind: "labor",
  },
  { key: "cleanUp", label: "Clean up", unit: "labor hours", quantity: "cleanUpHours", cost: "crewRate", kind: "labor" },
];

const edgingLines: readonly string[] = ["edging", "stakeLine", "sandLine", "setEdging"] satisfies EdgingLine[];

/**
 * The lines of a bed with this edging and stone that is sold so, in their words: a spade-cut edge takes labor alone.
 *
 * @param second what it is edged with beside that.
 */
export function linesOf(edging: EdgingKind, { unit }: SoldBy, second = NO_EDGING): readonly EstimateLine[] {
  const own = lines.flatMap((line) => {
    if (line.key === STONE_LINE) return [{ ...line, unit }];
    if (!edgingLines.includes(line.key)) return [line];
    const words =
      edging.lines[line.key as EdgingLine] ?? (line.key === SAND_LINE ? second.lines[SAND_LINE] : undefined);
    return words ? [{ ...line, ...words }] : [];
  });
  const after = own.findIndex(({ key }) => key === "fabric");
  return [...own.slice(0, after), ...secondLines(second), ...own.slice(after)];
}

const SAND_LINE = "sandLine";

/**
 * The lines of a second edging; its sand is on the line of the first's.
 *
 * @example secondLines(NO_EDGING) // []
 */
export function secondLines({ lines: words }: EdgingKind): EstimateLine[] {
  return lines.flatMap((line) => {
    const own = words[line.key as EdgingLine];
    if (!own || line.key === SAND_LINE) return [];
    const { key, quantity, cost } = line;
    const label = secondLabel(own.label);
    return [{ ...line, ...own, label, key: secondKey(key), quantity: secondKey(quantity), cost: secondKey(cost) }];
  });
}

const secondLabel = (label: string) => `Second edging: ${label.charAt(0).toLowerCase()}${label.slice(1)}`;

/**
 * The line that a block calls so, whatever the bed is edged with and its stone sold by; undefined for one that the
 * estimator added.
 *
 * @param unit left out: any.
 */
export function lineCalled(label: unknown, unit?: unknown): EstimateLine | undefined {
  const isSo = (words: { readonly label: string; readonly unit: string }) =>
    words.label === label && (unit === undefined || words.unit === unit);
  const first = lines.find(
    (line) =>
      isSo(line) ||
      (line.key === STONE_LINE && SOLD_BY.some((sold) => isSo({ ...line, unit: sold.unit }))) ||
      EDGING_KINDS.some((kind) => isSo(kind.lines[line.key as EdgingLine] ?? line)),
  );
  return first ?? EDGING_KINDS.flatMap(secondLines).find(isSo);
}
