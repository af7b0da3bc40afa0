import type { Role } from "../../functions/role";
import { withoutUnit } from "./units";

export type { Role };

/** In this order: the first that fits is taken, so what is narrower stands before what is wider. */
const WORDS: readonly (readonly [role: Role, words: RegExp])[] = [
  ["unit cost", /^each$|\bunit cost\b|\bcost\s*(\/|per|each|a)\b|\brate\b|\bour cost each\b/],
  ["unit price", /\bunit price\b|\bprice\s*(\/|per|each|a)\b|\bsell each\b/],
  ["margin", /\bmargin\b/],
  ["markup", /\bmark[\s-]?up\b/],
  ["waste", /\bwaste\b|\bextra for low spots\b/],
  ["tax", /\btax\b/],
  ["overhead", /\boverhead\b/],
  ["payload", /\bpayload\b|\bload limit\b/],
  ["overlap", /\boverlap\b|\bside lap\b/],
  ["roll width", /\broll\b.*\b(width|wide)\b|\bwidth of (the )?roll\b|\bfabric (width|wide)\b/],
  ["roll length", /\broll\b.*\b(length|long)\b|\blength of (the )?roll\b/],
  ["trench depth", /\btrench\b.*\b(depth|deep|below)\b|\btrench below\b|\bdepth of (the )?trench\b/],
  [
    "dig depth",
    /\b(dig|digging|scrape|excavat\w*|cut|strip)\b.*\b(depth|deep)\b|\bdepth\b.*\b(dig|digging|scrape|cut)\b|^scrape$/,
  ],
  ["border height", /\b(border|edging|edge)\b.*\b(height|high)\b|\bheight of (the )?(border|edging)\b/],
  [
    "stone size",
    /\b(stone|rock|gravel|largest)\b.*\b(size|sized)\b|\blargest (stone|rock|piece)\b|\bsize of (the )?(stone|rock)\b/,
  ],
  ["density", /\bdensity\b|\bweighs\b|\b(tons?|lbs?|pounds)\s*(\/|per)\s*(cu|cubic|yard|cy|cf)\b/],
  ["spacing", /\bspacing\b|\bapart\b|\bon cent(er|re)\b/],
  ["stone depth", /\bdepth\b|\bdeep\b|\bthick(ness)?\b/],
  [
    "border run",
    /\b(border|edging|edge)\b.*\b(run|length|ft|feet|lf)\b|^(border|edging|edge|perimeter)$|\bperimeter\b/,
  ],
  ["loads", /\bloads?\b/],
  ["pins", /\bpins?\b|\bstaples?\b/],
  ["stakes", /\bstakes?\b/],
  ["stone tons", /\b(stone|rock|gravel)\b.*\btons?\b|\btons?\b.*\b(stone|rock|gravel|order)\b|^tons?$/],
  ["stone yards", /\b(stone|rock|gravel)\b.*\b(cu yd|cy|yards?)\b|\byards?\b.*\b(stone|rock|gravel)\b/],
  ["area", /\barea\b|\bsq\.? ?ft\b|\bsquare feet\b/],
  ["length", /\blength\b|\blong\b/],
  ["width", /\bwidth\b|\bwide\b/],
  ["quantity", /^(qty|quantity|amount needed|count|how many)\b/],
  ["cost", /\bcosts?\b/],
  ["price", /\bprice\b|\bcharge\b|\bsell\b/],
];

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

/** What a heading or a label says a cell holds; undefined where it says nothing of the trade. */
export function roleOf(heading: string): Role | undefined {
  const whole = heading.toLowerCase();
  const words = withoutUnit(whole);
  if (words === "") return undefined;
  for (const [role, pattern] of WORDS) if (pattern.test(words)) return role;
  // The unit says what "Stone" is.
  if (/\b(stone|rock|gravel)\b/.test(words) && /\btons?\b/.test(whole)) return "stone tons";
  if (/\b(stone|rock|gravel)\b/.test(words) && /\b(cu\.? yd|cy|cubic yards)\b/.test(whole)) return "stone yards";
  if (/^(border|edging|edge)\b/.test(words) && /\b(ft|feet|lf)\b/.test(whole)) return "border run";
  return undefined;
}

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

/** Words by which a row of sums is known. */
const TOTAL = /\b(sub)?-?\s?totals?\b|\bsums?\b|\bgrand\b|\baverages?\b|\bmean\b|\ball beds\b/i;

export const isTotalLabel = (label: string): boolean => TOTAL.test(label);

/** Words of headings that tell nothing of the trade, yet stand in headings and hardly among data. */
const GENERAL =
  /^(units?|u\/m|uom|qty|quantity|each|notes?|remarks?|typed|value|amount|items?|descriptions?|beds?|jobs?|reads as|kind|total|hours|stone|fabric|pins|stakes|loads|date|no\.?|#|what|taped)$/i;

export const isHeadingWord = (text: string): boolean =>
  GENERAL.test(text.trim()) || (text.length < 30 && roleOf(text) !== undefined);
