import type { CellLook } from "../grid/port";

type Underline = NonNullable<Excel.CellPropertiesFont["underline"]>;

/** The lines below letters in the host's words. */
export function underlineFrom(underline: CellLook["underline"]): "None" | "Single" | "Double" {
  if (underline === "Double") return "Double";
  return underline ? "Single" : "None";
}

/** The grid knows one line and two; an accountant's are as many. */
export function underlineTo(underline: Underline): CellLook["underline"] {
  if (underline === "None") return false;
  return underline.startsWith("Double") ? "Double" : true;
}
