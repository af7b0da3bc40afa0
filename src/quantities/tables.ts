import { messages } from "./messages";
import { nearestName, plainName } from "./nearestName";
import { Problem } from "./problem";

/**
 * How sure a table value is: "seen" was read in the named source; "memory" is known from the named source and
 * was not read there; "practice" is common practice in the trade, without a source.
 */
export type HowSure = "seen" | "memory" | "practice";

/** What every row of a published table carries. */
export interface TableRow {
  /** As the user types it: lower case, whole words. */
  readonly name: string;
  /** Title of the source and the figure as it is there. */
  readonly source: string;
  readonly sure: HowSure;
}

/** What to mind about a row that others of its table don't have. */
export interface Caution {
  readonly about: string;
  readonly text: string;
  readonly source: string;
}

/**
 * The row of a table by its name; capitals, hyphens and extra spaces do not matter.
 *
 * @param rows the table.
 * @param name what was typed.
 * @param argument the name to use in the message.
 * @param instead what may be given instead of a name, such as "tons per cubic yard"; undefined where only a name may.
 * @param others names that people use for a row, by which the nearest one is found.
 * @throws Problem "name" that offers the nearest name of the table.
 */
export function rowNamed<Row extends Pick<TableRow, "name">>(
  rows: readonly Row[],
  name: string,
  argument: string,
  instead: string | undefined,
  others: Readonly<Record<string, string>> = {},
): Row {
  const wanted = plainName(name);
  for (const row of rows) if (row.name === wanted) return row;
  const nearest = nearestName(name, [...rows.map((row) => row.name), ...Object.keys(others)]);
  throw new Problem("name", messages.unknownName(argument, name, others[nearest] ?? nearest, instead), argument);
}

/** The same for a name that was read from a cell: one that isn't in the table is refused elsewhere, and is `otherwise` here. */
export function rowOr<Row extends Pick<TableRow, "name">>(
  rows: readonly Row[],
  name: string | undefined,
  otherwise: Row,
): Row {
  const wanted = plainName(name ?? "");
  return rows.find((row) => row.name === wanted) ?? otherwise;
}
