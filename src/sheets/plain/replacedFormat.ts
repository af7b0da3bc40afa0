import type { Replacement } from "./taped";

/** Numbers closer than this to fewer decimals need no more. */
const CLOSE = 1e-9;

/**
 * The number format of a cell whose text became a number: a number must not be in a cell that is formatted as text,
 * a share or a date has to look like one, and a length needs no more than three decimals to be told.
 *
 * @param format of the original cell.
 * @example replacedFormat("General", { was: "32' 6 1/2\"", content: 32.541666666666664, reading: "ft" }) // "0.000"
 */
export function replacedFormat(format: string, { was, content, reading }: Replacement): string {
  if (format !== "@" && format !== "General") return format;
  if (reading === "date") return "yyyy-mm-dd";
  if (was.trim().endsWith("%")) return "0.0%";
  if (typeof content !== "number" || isWholeAt(content, 0)) return "General";
  return isWholeAt(content, 2) ? "0.00" : "0.000";
}

function isWholeAt(value: number, decimals: number): boolean {
  const scaled = value * 10 ** decimals;
  return Math.abs(scaled - Math.round(scaled)) < CLOSE;
}
