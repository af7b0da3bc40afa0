import { listKeys, listNames, listOf, listWhose } from "../../quantities/bed/officeLists";
import { isSampleMark, stoneListNames } from "../../quantities/bed/rates";
import type { CellChange } from "../jobRows/fill";
import { type CellsOfName, cellsNamed, type NamedRates } from "../office/officeRates";
import { listHeadings } from "./listRows";
import { STONE_HEADING } from "./stoneRows";

/** A row of the office's lists that is still a sample, and the cells to write so that it is blank. */
export interface SampleRow {
  /** The heading of its list. */
  readonly list: string;
  readonly name: string;
  readonly changes: readonly CellChange[];
}

/** The lists, each with the names of its columns, that of the names first. */
const lists = [
  { heading: STONE_HEADING, whose: stoneListNames.whose, names: Object.values(stoneListNames) },
  ...listKeys.map((key) => ({
    heading: listHeadings[key],
    whose: listWhose(listOf(key)),
    names: listNames(key),
  })),
];

/**
 * The rows of the office's lists that are marked as samples. A row that is the office's own is never among them.
 *
 * @param named the cells of the office's rates.
 * @example sampleRows(named)[0]?.name // "River rock"
 */
export function sampleRows(named: NamedRates): SampleRow[] {
  return lists.flatMap(({ heading, whose, names }) => {
    const marks = cellsNamed(named, whose);
    const columns = names.flatMap((name) => cellsNamed(named, name) ?? []);
    const [first] = columns;
    if (!marks || !first) return [];
    return marks.values.flatMap(([mark], row): SampleRow[] => {
      const name = String(first.values[row]?.[0] ?? "");
      if (!isSampleMark(mark) || name === "") return [];
      return [{ list: heading, name, changes: columns.flatMap((cells) => blanked(cells, row, cells === marks)) }];
    });
  });
}

/** A cell of a row made blank; the formula that says whose the row is stays. */
function blanked({ sheet, row: top, column, contents }: CellsOfName, row: number, isMark: boolean): CellChange[] {
  const before = contents[row]?.[0] ?? "";
  if (before === "" || (isMark && String(before).startsWith("="))) return [];
  return [{ sheet, row: top + row, column, before, after: "" }];
}
