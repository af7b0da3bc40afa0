import type { Plan } from "../plan";
import type { LeftAsValue, ReplacedInput } from "./result";

const MOST_NAMED = 12;

/** What the copy says about itself, below its cells. */
export function noteLines(replaced: readonly ReplacedInput[], leftAsValues: readonly LeftAsValue[]): string[] {
  const lines = ["Copy in ordinary formulas: it needs no add-in, and follows changes here, not in the original."];
  const lengths = replaced.filter(({ unit }) => unit !== undefined);
  if (lengths.length > 0)
    lines.push(`Taped lengths stand as decimal numbers: ${named(lengths.map(({ to, unit }) => `${to} (${unit})`))}.`);
  const others = replaced.filter(({ unit }) => unit === undefined);
  if (others.length > 0) lines.push(`Other text was rewritten to be read: ${named(others.map(({ to }) => to))}.`);
  if (leftAsValues.length > 0)
    lines.push(`Values that no longer follow changes: ${named(leftAsValues.map(({ to }) => to))}.`);
  return lines;
}

export const VALUES_ONLY_NOTE = "Copy as values: nothing in it follows changes.";

function named(addresses: readonly string[]): string {
  const more = addresses.length - MOST_NAMED;
  return addresses.slice(0, MOST_NAMED).join(", ") + (more > 0 ? ` and ${more} more` : "");
}

/** A plan with lines of text below its cells, after a blank row. */
export function withNotes(plan: Plan, lines: readonly string[]): Plan {
  if (lines.length === 0 || plan.columns === 0) return plan;
  const rest = <T>(value: T): T[] => Array.from({ length: plan.columns - 1 }, () => value);
  const texts = ["", ...lines];
  return {
    ...plan,
    rows: plan.rows + texts.length,
    formulas: [...plan.formulas, ...texts.map((text) => [text === "" ? "" : `'${text}`, ...rest("")])],
    formats: [...plan.formats, ...texts.map(() => ["General", ...rest("General")])],
    looks: [
      ...plan.looks,
      { area: { row: plan.rows + 1, column: 0, rows: lines.length, columns: plan.columns }, look: "note" },
    ],
  };
}
