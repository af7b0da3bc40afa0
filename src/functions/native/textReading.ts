import { readDate } from "../../quantities/dateText";
import { plainName } from "../../quantities/nearestName";
import { readNumber, readShare } from "../../quantities/numberText";
import { Problem } from "../../quantities/problem";
import { readTape } from "../../quantities/tape";

/** How an argument reads the text of a cell. */
export type Reading = "ft" | "in" | "number" | "share" | "date" | "stone" | "soil" | "rule" | "flag";

const LETTER = /\p{L}/u;

/**
 * The number that an argument reads from a text, since ordinary arithmetic cannot.
 *
 * @returns undefined where the text is no number for it: a name, or text that the function refuses as well.
 * @example numberRead("18' 6\"", "ft") // 18.5
 */
export function numberRead(text: string, reading: Reading): number | undefined {
  try {
    if (reading === "ft" || reading === "in") return readTape(text, reading);
    if (reading === "date") return readDate(text, "");
    if (reading === "rule" || reading === "flag") return undefined;
    if (reading === "number") return readNumber(text, "");
    if (reading !== "share" && LETTER.test(text)) return undefined;
    return reading === "stone" ? readNumber(text, "") : readShare(text, "");
  } catch (reason) {
    if (reason instanceof Problem) return undefined;
    throw reason;
  }
}

/** Whether the ordinary lookup of a name misses what {@link plainName} finds: it knows hyphens, and no other marks. */
export function isUnusualName(text: string): boolean {
  const ordinary = text.toLowerCase().replaceAll("-", " ").replace(/ +/g, " ").trim();
  return LETTER.test(text) && plainName(text) !== ordinary;
}
