import type { BedForm } from "../quantities/bed/form";
import { estimateBlock } from "../sheets/estimate/block";
import { type Inserted, insertPlan } from "../workbook/change/insert";
import type { Place } from "../workbook/change/place";

/*
 * The block and the writer are fetched when something is first inserted: the add-in's first load stays small.
 */

/** Writes the estimate of a bed. */
export function insertEstimate(form: BedForm, place: Place): Promise<Inserted> {
  return insertPlan((at) => estimateBlock(form, at), place);
}
