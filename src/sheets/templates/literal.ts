import { quoted } from "../../quantities/bed/evaluate";

/** A value inside a formula. */
export function literal(value: string | number | boolean): string {
  if (typeof value === "string") return quoted(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return value < 0 ? `(${value})` : String(value);
}
