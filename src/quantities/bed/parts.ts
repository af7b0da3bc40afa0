import type { SoldBy } from "../soldBy";
import { type AmountKey, amounts, type VerdictKey } from "./amounts";
import type { FieldKey } from "./fields";

/** The rows of the block's parts, in order: fields that are typed, and what follows from them. */
export const parts = {
  price: [
    ...["materialMarkup", "laborMarkup", "haulingMarkup", "overhead", "minimumCharge", "salesTax"],
    ...["overheadCost", "fullCost", "price", "taxSum", "priceWithTax", "markupOnCost", "marginOnPrice"],
    ...["laborHours", "crewDays"],
  ],
  stone: [
    ...["edgingKind", "edgingProduct", "borderHeight", "trenchDepth", "topGap", "stoneDepth", "stone", "stoneSize"],
    ...["depthCheck", "waste", "stoneDensity", "stoneYards", "stoneTons", "soldBy", "bagSize", "bulkBagSize"],
    ...["bulkBagLoad", "bagPounds", "orderStep", "orderMinimum", "stoneOrder", "orderTons", "orderYards"],
  ],
  border: [
    ...["borderFinish", "pieceLength", "pieceLap", "joint", "pieces", "stakeSpacing", "stakes"],
    ...["stakesPerPiece", "extraStakes", "sandDepth", "sandYards"],
    ...["secondKind", "secondProduct", "secondFinish", "secondHeight", "secondTrenchDepth", "secondTrenchWidth"],
    ...["secondHouse", "secondRight", "secondFront", "secondLeft"],
    ...[
      "secondBase",
      "secondLast",
      "secondOuter",
      "secondFirst",
      "secondLength",
      "secondPieceLength",
      "secondPieceLap",
      "secondJoint",
      "secondRun",
      "secondPieces",
    ],
    ...["secondStakeSpacing", "secondStakes", "secondStakesPerPiece", "secondExtraStakes", "secondSandDepth"],
    ...["secondSandYards", "sandStep", "sandOrder"],
  ],
  fabric: [
    ...["fabricLayers", "fabricProduct", "rollWidth", "rollLength", "overlap", "endLap", "stripDirection"],
    ...["counted", "fabricStrips", "fabricArea"],
    ...["rolls", "pinSpacing", "pinBay", "pins", "pinProduct", "pinsPerBox", "pinBoxes"],
  ],
  digging: [
    ...["scrapeDepth", "trenchWidth", "digYards", "soil", "spoilYards", "soilTonsPerYard", "haulTruck"],
    ...["truckYards", "truckPayload", "spoilLoads", "deliveryTruck", "deliveryYards", "deliveryPayload", "deliveries"],
  ],
  crew: [
    ...[
      "crewName",
      "crewRate",
      "crewSize",
      "crewDay",
      "scrapeHours",
      "edgingRate",
      "secondRate",
      "fabricRate",
      "rakeRate",
    ],
    ...[
      "barrowSize",
      "barrowLoad",
      "barrowDistance",
      "cleanUpHours",
      "barrowTrips",
      "scrapeTime",
      "edgingTime",
      "secondTime",
    ],
    ...["fabricTime", "spreadTime"],
  ],
} as const satisfies Record<string, readonly (FieldKey | AmountKey | VerdictKey)[]>;
export type PartKey = keyof typeof parts;

/** The unit of an amount, which for an order is what its stone is sold by. */
export const unitOfAmount = (key: AmountKey, soldBy: SoldBy): string =>
  key === "stoneOrder" ? soldBy.unit : amounts[key].unit;
