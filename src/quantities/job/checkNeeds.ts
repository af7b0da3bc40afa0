import { Problem } from "../problem";
import type { BedNeeds } from "./bedNeeds";
import { jobMessages } from "./messages";

/** What divides, or must be there to sell anything: 0 makes no sense. */
const OVER_ZERO = new Set([
  "tonsPerYard",
  "tonsEach",
  "yardStep",
  "pieceLengthFt",
  "rollLengthFt",
  "rollWidthFt",
  "pinsPerBox",
]);
/** Under 1, or nothing would be left of the stone. */
const UNDER_ONE = new Set(["allowance"]);
/** A joint between pavers is a lap under 0. */
const MAY_BE_UNDER_ZERO = new Set(["lapIn"]);
/** Edging that isn't in pieces has no length of piece. */
const isWithoutPieces = (part: object) => "pieceLengthFt" in part && part.pieceLengthFt === 0 && "kind" in part;

/**
 * Refuses needs that cannot be added up, at the edge where they arrive from a sheet.
 *
 * @throws Problem that names the bed and the value, where there is no bed, where a number is none or under 0, and where
 *   one that divides is 0.
 */
export function checkNeeds(beds: readonly BedNeeds[]): void {
  if (beds.length === 0) throw new Problem("value", jobMessages.noBeds());
  for (const bed of beds) checkWithin(bed.name.trim() || "A bed without a name", "", bed);
}

function checkWithin(bed: string, within: string, part: object): void {
  for (const [key, value] of Object.entries(part)) {
    const what = within === "" ? key : `${within} ${key}`;
    if (typeof value === "object" && value !== null) checkWithin(bed, what, value);
    else if (key === "pieceLengthFt" && isWithoutPieces(part)) continue;
    else if (typeof value === "number" && !isUsable(key, within, value))
      throw new Problem("value", jobMessages.badNeed(bed, inWords(what), value));
  }
}

function isUsable(key: string, within: string, value: number): boolean {
  if (!Number.isFinite(value) || (value < 0 && !MAY_BE_UNDER_ZERO.has(key))) return false;
  if (UNDER_ONE.has(key)) return value < 1;
  // Soil may have no weight, stone has one; a box holds something.
  const mustBeOver = (OVER_ZERO.has(key) && within !== "spoil") || (key === "yards" && within.endsWith("truck"));
  return !mustBeOver || value > 0;
}

/** "stone yardStep" as "stone yard step". */
const inWords = (what: string) =>
  what.replace(/([a-z])([A-Z])/g, (_, low: string, high: string) => `${low} ${high.toLowerCase()}`);
