import { withoutHidden } from "../../sheets/templates/hiddenCharacters";
import type { Template } from "../../sheets/templates/template";

/** How much a template is: `61 rows by 9 columns`. */
export function sizeWords({ rows, columns }: Pick<Template, "rows" | "columns">): string {
  return `${counted(rows, "row")} by ${counted(columns, "column")}`;
}

/** When and by whom it was saved, as far as it says. */
export function savedWords({ saved, by }: Template): string {
  if (!saved && !by) return "";
  return `Saved${saved ? ` on ${saved}` : ""}${by ? ` by ${by}` : ""}.`;
}

export function counted(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}

/** A name that may come from anywhere. */
export function shownName(name: string): string {
  return withoutHidden(name).trim() || "(unnamed)";
}

/** A value as it is shown beside what it belongs to. */
export function shownValue(value: string | number | boolean): string {
  if (typeof value !== "number") return String(value);
  return Number(value.toPrecision(8)).toLocaleString("en-US", { maximumFractionDigits: 6 });
}
