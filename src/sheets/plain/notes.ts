import type { CellStyle, Plan } from "../plan";
import { someOf } from "../someOf";
import type { CarriedValue } from "./carried";
import type { LeftAsValue, ReplacedInput } from "./result";
import { written } from "./written";

const MOST_NAMED = 12;

/** What the copy says about itself, below its cells. */
export function noteLines(replaced: readonly ReplacedInput[], leftAsValues: readonly LeftAsValue[]): string[] {
  const lines = ["Copy with ordinary formulas: needs no add-in, and updates with changes here, not in the original."];
  const lengths = replaced.filter(({ unit }) => unit !== undefined);
  if (lengths.length > 0)
    lines.push(`Taped lengths are decimal numbers: ${named(lengths.map(({ to, unit }) => `${to} (${unit})`))}.`);
  const others = replaced.filter(({ unit }) => unit === undefined);
  if (others.length > 0) lines.push(`Other text was rewritten as numbers: ${named(others.map(({ to }) => to))}.`);
  if (leftAsValues.length > 0) lines.push(`Values that no longer update: ${named(leftAsValues.map(({ to }) => to))}.`);
  return lines;
}

export const VALUES_ONLY_NOTE = "Copy as values: nothing in it updates.";

const named = (addresses: readonly string[]) => someOf(addresses, MOST_NAMED);

/** A plan with lines of text below its cells, after a blank row. */
export function withNotes(plan: Plan, lines: readonly string[]): Plan {
  if (lines.length === 0 || plan.columns === 0) return plan;
  const added = withRows(plan, [[], ...lines.map((text) => [`'${text}`])]);
  const area = { row: plan.rows + 1, column: 0, rows: lines.length, columns: plan.columns };
  return { ...added, looks: [...added.looks, { area, look: "note" }] };
}

const CARRIED_HEADING = "Values from outside the copied cells, as of this copy";

/** A plan with the values below its cells that it reads from outside: each beside its name. */
export function withCarried(plan: Plan, carried: readonly CarriedValue[]): Plan {
  if (carried.length === 0) return plan;
  const added = withRows(plan, [
    [],
    [`'${CARRIED_HEADING}`],
    ...carried.map(({ what, value }) => [`'${what}`, written(value)]),
  ]);
  const first = plan.rows + 2;
  return {
    ...added,
    looks: [
      ...added.looks,
      { area: { row: plan.rows + 1, column: 0, rows: 1, columns: added.columns }, look: "section" },
      { area: { row: first, column: 0, rows: carried.length, columns: 1 }, look: "label" },
      { area: { row: first, column: 1, rows: carried.length, columns: 1 }, look: "input" },
    ],
  };
}

/** A plan with rows below its last one, as wide as it has to be for them. */
function withRows(plan: Plan, rows: readonly (readonly (string | number)[])[]): Plan {
  const columns = Math.max(plan.columns, ...rows.map((row) => row.length));
  const filled = <T>(cells: readonly T[], blank: T): T[] => [
    ...cells,
    ...Array.from({ length: columns - cells.length }, () => blank),
  ];
  const { dress } = plan;
  return {
    ...plan,
    rows: plan.rows + rows.length,
    columns,
    formulas: [...plan.formulas, ...rows].map((cells) => filled(cells, "")),
    formats: [...plan.formats, ...rows.map(() => [])].map((cells) => filled<string>(cells, "General")),
    ...(dress && {
      dress: [...dress, ...rows.map(() => [])].map((cells) => filled<CellStyle | undefined>(cells, undefined)),
    }),
  };
}
