import type { CellStyle, Plan } from "../plan";
import { Copying } from "./copying";
import { noteLines, VALUES_ONLY_NOTE, withCarried, withNotes } from "./notes";
import type { Destination, Region, Surroundings } from "./region";
import type { PlainCopy } from "./result";
import { written } from "./written";

export type CopyMode = "formulas" | "values only";

/**
 * The plan of a copy that works without the add-in: every function of ours as ordinary arithmetic with the same
 * references, taped text as decimal numbers, and what has no ordinary form as its value. Lines below the cells say so.
 *
 * @param region the cells to copy, as the host reads them, with their looks where those are to be copied.
 * @param around what is known of the workbook around them.
 * @param to where the copy will stand; the same address on another sheet where left out. Formulas go on reading cells
 *   outside the copy; in a workbook of its own, single ones come along as values, below the cells.
 * @param mode "values only" leaves no formula at all.
 * @returns the plan, whose size does not depend on the place, and what became of the cells.
 * @example toPlain(jobs).leftAsValues // [] where everything has an ordinary form
 */
export function toPlain(
  region: Region,
  around: Surroundings = {},
  to: Destination = { at: region, sameSheet: false },
  mode: CopyMode = "formulas",
): PlainCopy {
  return mode === "formulas" ? inFormulas(region, around, to) : inValues(region);
}

function inFormulas(region: Region, around: Surroundings, to: Destination): PlainCopy {
  const copying = new Copying(region, around, to);
  const { contents, formats, valueAreas, converted, replaced, leftAsValues, alsoRead, arrays, results } = copying;
  const looks = valueAreas.map((area) => ({ area, look: "note" as const }));
  const carried = copying.carried?.values ?? [];
  const plan = withCarried(planOf(region, contents, formats, looks), carried);
  return {
    plan: withNotes(plan, noteLines(replaced, leftAsValues)),
    converted,
    replaced,
    leftAsValues,
    alsoRead,
    arrays,
    results,
    outside: copying.outside.list,
    carried,
  };
}

function inValues(region: Region): PlainCopy {
  const contents = region.values.map((row) => row.map(written));
  const plan = withNotes(planOf(region, contents, region.formats, []), [VALUES_ONLY_NOTE]);
  const nothing = { converted: [], replaced: [], leftAsValues: [], alsoRead: [], arrays: [], outside: [], carried: [] };
  return { plan, results: region.values, ...nothing };
}

function planOf(region: Region, formulas: Plan["formulas"], formats: Plan["formats"], looks: Plan["looks"]): Plan {
  const { dress, widths = [], merged } = region;
  return {
    title: `copy of ${region.sheetName}`,
    rows: formulas.length,
    columns: formulas[0]?.length ?? 0,
    formulas,
    formats,
    looks,
    widths,
    warnings: [],
    choices: [],
    ...(dress && { dress: marked(dress, looks) }),
    ...(merged && { merged }),
  };
}

/** Exact looks would cover the look that marks a value, so they give way to its ink there. */
function marked(dress: NonNullable<Plan["dress"]>, looks: Plan["looks"]): NonNullable<Plan["dress"]> {
  const exact = dress.map((row) => [...row]);
  for (const { area } of looks) {
    for (const cells of exact.slice(area.row, area.row + area.rows)) {
      for (let column = area.column; column < area.column + area.columns; column += 1) {
        const { color: _color, italic: _italic, ...rest }: CellStyle = cells[column] ?? {};
        cells[column] = rest;
      }
    }
  }
  return exact;
}
