import { type Field, type FieldKey, fields } from "./fields";
import { listPicked } from "./officeLists";
import { firstField } from "./secondEdging";

/*
 * What is said below a field: fetched with what shows it. Those of the measurements are in the fields themselves, since they
 * are in the first view.
 */

const notes: Readonly<Partial<Record<FieldKey, string>>> = {
  scrapeDepth: "common practice: 2 to 3 in",
  trenchDepth: "common practice: about 1.5 in for 4 in edging",
  topGap: "stone finishes a little below the edging",
  stone: "or its weight in tons/cu yd",
  soldBy: "ton, cubic yard, bag, or bulk bag",
  bagSize: "common practice: 0.5 cu ft",
  bulkBagSize: "common practice: 1 cu yd",
  bulkBagLoad: "on its label; common practice: 2,000 to 3,000 lb",
  soil: "sand, loam, clay, blasted rock, or a swell like 25%",
  // CalRecycle, "Weights and Volumes for Project Estimates": earth, excavated, wet 3,000 lb/yd³.
  soilTonsPerYard: "wet dug earth (CalRecycle: 3,000 lb a cubic yard)",
  borderFinish: "color or metal, for the order",
  fabricLayers: "0 for no fabric, 2 for double",
  stripDirection: "or degrees from the base line, for a bed laid out in plan",
  pinBay: "one five-spot across this width",
  truckPayload: "GVWR less empty weight, people, and fuel",
  edgingKind: "metal, plastic, pavers, timber, spade cut, or none",
  // Brick Industry Association, Technical Note 14A: 1/16 to 3/16 in between clay pavers on sand.
  joint: "1/16 to 3/16 in (Brick Industry Association)",
  // The same note: 3/4 to 1 in once it is compacted.
  sandDepth: "compacted: 3/4 to 1 in (Brick Industry Association)",
  sandStep: "common practice: a quarter yard",
  secondKind: "along sides that have none of the first",
  secondLength: "in one run; the first edging's length is without it",
  secondTrenchDepth: "its top as high as the first edging's",
  // Spalding (1908): shovelling loosened soil alone takes 0.5 to 0.67 person-hours a cubic yard.
  scrapeHours: "with cutting sod (shoveling alone: 0.5 to 0.67)",
  barrowDistance: "one way",
  overhead: "not marked up",
  salesTax: "on the whole price; check what your state taxes",
};

const LISTED = "usual, or a name from the list in Rates";

/** What is said below a field; "" where there is nothing to say. */
export const fieldNote = (key: FieldKey): string =>
  notes[key] ?? notes[firstField(key) ?? key] ?? (listPicked(key) ? LISTED : ((fields[key] as Field).note ?? ""));
