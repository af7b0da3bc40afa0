import type { Plan } from "../plan";
import { Copying } from "./copying";
import { noteLines, VALUES_ONLY_NOTE, withNotes } from "./notes";
import type { Destination, Region, Surroundings } from "./region";
import type { PlainCopy } from "./result";
import { written } from "./written";

export type CopyMode = "formulas" | "values only";

/**
 * The plan of a copy that works without the add-in: every function of ours as ordinary arithmetic with the same
 * references, taped text as decimal numbers, and what has no ordinary form as its value. Lines below the cells say so.
 *
 * @param region the cells to copy, as the host reads them.
 * @param around what is known of the workbook around them.
 * @param to where the copy will stand; the same address on another sheet where left out.
 * @param mode "values only" leaves no formula at all.
 * @returns the plan, which asks for no widths and only for the looks of its notes and values: the formats of the
 *   original can be copied under it.
 * @example toPlain(jobs).leftAsValues // [] where everything has an ordinary form
 */
export function toPlain(
  region: Region,
  around: Surroundings = {},
  to: Destination = { at: region, sameSheet: false },
  mode: CopyMode = "formulas",
): PlainCopy {
  if (mode === "values only") {
    const contents = region.values.map((row) => row.map(written));
    const plan = withNotes(planOf(region, contents, region.formats, []), [VALUES_ONLY_NOTE]);
    return { plan, converted: [], replaced: [], leftAsValues: [], alsoRead: [], arrays: [] };
  }
  const copying = new Copying(region, around, to);
  const { contents, formats, valueAreas, converted, replaced, leftAsValues, alsoRead, arrays } = copying;
  const looks = valueAreas.map((area) => ({ area, look: "note" as const }));
  const plan = planOf(region, contents, formats, looks);
  return {
    plan: withNotes(plan, noteLines(replaced, leftAsValues)),
    converted,
    replaced,
    leftAsValues,
    alsoRead,
    arrays,
  };
}

function planOf(region: Region, formulas: Plan["formulas"], formats: Plan["formats"], looks: Plan["looks"]): Plan {
  return {
    title: `Copy of ${region.sheetName}`,
    rows: formulas.length,
    columns: formulas[0]?.length ?? 0,
    formulas,
    formats,
    looks,
    widths: [],
    warnings: [],
    choices: [],
  };
}
