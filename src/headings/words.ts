import { readHeading } from "./heading";
import { roleOf } from "./meaning";
import type { Role } from "./roles";

/** What is told of a whole sheet or job, rather than of one line of it: there a label says more than the heading. */
export const PARAMETERS: ReadonlySet<Role> = new Set<Role>([
  "border height",
  "density",
  "margin",
  "markup",
  "overhead",
  "overlap",
  "payload",
  "roll length",
  "roll width",
  "spacing",
  "tax",
  "trench depth",
  "waste",
]);

/** Things that are bought or driven whole, by the words of their heading, label or unit. */
const WHOLE_THINGS =
  /\b(bags?|rolls?|pieces?|pcs|loads?|boxes|stakes?|pins?|trips?|pallets?|lengths|sticks|sheets|trucks?|deliveries|buckets?|staples)\b/i;
/** Words that turn a whole thing into a measure or a rate of it. */
const NOT_COUNTED =
  /\b(per|a|each|cost|price|length|width|size|weight|hours?|holds?|rate|in an?|area|payload|limit)\b|\//i;

/** Whether a heading or label is of things bought whole: `Rolls`, `Fabric (rolls)`, but not `Price per roll`. */
export function isWholeThing(heading: string): boolean {
  return WHOLE_THINGS.test(heading) && !NOT_COUNTED.test(heading);
}

const TOTAL =
  /\b(?:sub|over)?-?totals?\b|\btotaled\b|\bsums?\b|\baverages?\b|\ball beds\b|^(?:all ?)?together\b|^altogether\b|^(?:grand|mean)$/i;

/** Whether a row is one of sums or averages, by its label: `Total`, `Sub-totals`, `Stone total`, `All beds`. */
export const isTotalLabel = (label: string): boolean => TOTAL.test(label.trim());

/** Words of headings that tell nothing of the trade, yet are in headings and hardly among data. */
const GENERAL =
  /^(units?|u\/m|uom|qty|quantity|each|notes?|remarks?|typed|value|amount|items?|descriptions?|beds?|jobs?|reads as|kind|total|hours|stone|fabric|pins|stakes|loads|date|no\.?|#|what|taped)$/i;

export const isHeadingWord = (text: string): boolean =>
  GENERAL.test(text.trim()) || (text.length < 30 && roleOf(readHeading(text)) !== undefined);
