import type { BorderStyleTypes, IBorderData, IBorderStyleData, Nullable } from "@univerjs/core";
import type { Border, CellBorders, Edge } from "./port";

/** The grid's letters for the edges of a cell. */
export const edgeKeys = { top: "t", bottom: "b", left: "l", right: "r" } as const satisfies Record<
  Edge,
  keyof IBorderData
>;

// The grid's own numbers for a line, with the host's style and weight for each.
const lines: readonly (readonly [BorderStyleTypes, Border["style"], Border["weight"]])[] = [
  [1, "Continuous", "Thin"],
  [2, "Continuous", "Hairline"],
  [8, "Continuous", "Medium"],
  [13, "Continuous", "Thick"],
  [3, "Dot", "Thin"],
  [4, "Dash", "Thin"],
  [9, "Dash", "Medium"],
  [7, "Double", "Thick"],
];

export const noBorder: Border = { style: "None", weight: "Thin", color: "#000000" };

/** The grid's own line for a border; null for none. */
export function borderTo({ style, weight, color }: Border): IBorderStyleData | null {
  if (style === "None") return null;
  const exact = lines.find((line) => line[1] === style && line[2] === weight);
  const near = exact ?? lines.find((line) => line[1] === style);
  return { s: near?.[0] ?? 1, cl: { rgb: color } };
}

/** The grid's own lines for the borders of a cell; those that are left out are left alone. */
export function bordersTo(borders: CellBorders): IBorderData {
  const edges = Object.entries(borders) as [Edge, Border][];
  return Object.fromEntries(edges.map(([edge, border]) => [edgeKeys[edge], borderTo(border)]));
}

export function borderFrom(line: Nullable<IBorderStyleData>): Border {
  const known = line && lines.find(([number]) => number === line.s);
  return known ? { style: known[1], weight: known[2], color: line.cl?.rgb ?? "#000000" } : noBorder;
}
