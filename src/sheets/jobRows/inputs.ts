import { conversion } from "../../headings/units";
import { quoted } from "../../quantities/bed/evaluate";
import { cellAddress } from "../../spreadsheet/areas";
import type { InputRole } from "./roles";
import { type ListSetting, type ReadColumn, rate } from "./setting";

/** A length as an argument of a function that takes bare numbers in a unit; undefined where no column holds it. */
export function lengthArgument(
  { columns }: ListSetting,
  role: InputRole,
  row: number,
  wanted: "ft" | "in",
): string | undefined {
  const column = columns.get(role);
  if (!column) return undefined;
  const inches =
    role === "length" ? columns.get("lengthInches") : role === "width" ? columns.get("widthInches") : undefined;
  const cell = cellAddress({ row, column: column.column });
  if (inches) return `${cell}+${cellAddress({ row, column: inches.column })}/12`;
  return converted(cell, column, wanted);
}

/**
 * Tape text says its own unit. A number in another unit than the function's is converted; where the column holds text,
 * too, the conversion must leave that alone.
 */
function converted(cell: string, { unit = "ft", hasText }: ReadColumn, wanted: "ft" | "in"): string {
  const factor = conversion(unit, wanted);
  if (factor === "") return cell;
  if (!hasText) return cell + factor;
  if (unit === "ft" || unit === "in") return `BED.${unit === "ft" ? "FEET" : "INCHES"}(${cell})${factor}`;
  // Text without a unit is in the heading's unit, as the numbers are; text with one is read as it is.
  const reader = wanted === "ft" ? "BED.FEET" : "BED.INCHES";
  return `IF(ISNUMBER(${cell}),${cell}${factor},IFERROR(${reader}(${cell}&${quoted(` ${unit}`)}),${cell}))`;
}

/** A length in decimal feet, to be reckoned with: a blank is an error there, and not 0. */
export function decimalFeet(setting: ListSetting, role: InputRole, row: number): string | undefined {
  const column = setting.columns.get(role);
  const argument = lengthArgument(setting, role, row, "ft");
  if (argument === undefined) return undefined;
  return column?.unit === "in" && !argument.includes("+")
    ? `BED.INCHES(${cellAddress({ row, column: column.column })})/12`
    : `BED.FEET(${argument})`;
}

export function depthArgument(setting: ListSetting, row: number): string {
  return lengthArgument(setting, "depth", row, "in") ?? String(setting.assumed.depthIn);
}

export function scrapeArgument(setting: ListSetting, row: number): string {
  return lengthArgument(setting, "scrape", row, "in") ?? String(setting.assumed.scrapeIn);
}

export function stoneArgument({ columns, assumed }: ListSetting, row: number): string {
  const column = columns.get("stone");
  return column ? cellAddress({ row, column: column.column }) : quoted(assumed.stone);
}

/** In a column of percents 8 is 8 %, and so is a cell that was typed as 8%. */
export function wasteArgument(setting: ListSetting, row: number): string {
  const { columns, assumed } = setting;
  const column = columns.get("waste");
  if (!column) return assumed.waste === undefined ? rate(setting, "waste", true) : String(assumed.waste);
  const cell = cellAddress({ row, column: column.column });
  return column.hasPercents ? `IF(N(${cell})<1,${cell},${cell}/100)` : cell;
}

/** The radius and the number of rounded corners, where columns hold both; a radius alone rounds nothing. */
export function cornerArguments(setting: ListSetting, row: number): { radius: string; corners: string } | undefined {
  const radius = lengthArgument(setting, "radius", row, "ft");
  const corners = setting.columns.get("corners");
  return radius && corners ? { radius, corners: cellAddress({ row, column: corners.column }) } : undefined;
}
