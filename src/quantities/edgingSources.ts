import type { FieldKey } from "./bed/fields";
import type { HowSure } from "./tables";

/** Where the usual figure of a kind of edging comes from. */
export interface EdgingSource {
  readonly kind: string;
  readonly field: FieldKey;
  readonly source: string;
  readonly sure: HowSure;
}

const PRACTICE = "Common practice, no source";
const from = (kind: string, field: FieldKey, source = PRACTICE, sure: HowSure = "practice"): EdgingSource => ({
  kind,
  field,
  source,
  sure,
});
const LEVEL = "Common practice: the top is level with the ground";

/** A row for each usual figure in `edgingKinds.ts` that isn't a price: prices are invented. */
export const EDGING_SOURCES: readonly EdgingSource[] = [
  from("plastic", "borderHeight"),
  from("plastic", "trenchDepth", LEVEL),
  from("plastic", "pieceLength"),
  from("plastic", "pieceLap", "Common practice: ends meet on a connector"),
  from("plastic", "stakeSpacing"),
  from("plastic", "stakesPerPiece"),
  from("plastic", "edgingRate"),
  from(
    "pavers",
    "borderHeight",
    "Concrete Masonry and Hardscapes Association, PAV-TEC-002-22: pavers for walks and driveways are 2 3/8 in thick",
    "seen",
  ),
  from("pavers", "trenchDepth", LEVEL),
  from("pavers", "trenchWidth", "As wide as the paver's long side"),
  from(
    "pavers",
    "pieceLength",
    "Brick Industry Association, Brick Paving, Table 1: faces of 4 by 8 in; the short side goes along the edge",
    "seen",
  ),
  from("pavers", "edgingRate"),
  from(
    "timber",
    "borderHeight",
    "NIST and ALSC, PS 20 American Softwood Lumber Standard: a 6 by 6 is 5 1/2 in (from memory)",
    "memory",
  ),
  from("timber", "trenchDepth", LEVEL),
  from("timber", "trenchWidth"),
  from("timber", "pieceLength"),
  from("timber", "stakeSpacing", "Common practice: at both ends and about every 4 ft"),
  from("timber", "edgingRate"),
  from("spade cut", "trenchDepth", "Common practice: 4 to 6 in below the lawn"),
  from("spade cut", "trenchWidth"),
  from("spade cut", "edgingRate", "Common practice; no public source gives a rate"),
];
