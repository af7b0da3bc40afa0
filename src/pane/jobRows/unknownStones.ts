import type { Rates } from "../../quantities/bed/rates";
import type { Filling } from "../../sheets/jobRows/fill";
import { type Corrections, type ListFit, settleColumns } from "../../sheets/jobRows/fit";
import { isKnownStone } from "../../sheets/rates/stoneNames";

/** Names of stone in the list's beds that no formula knows, each with its rows, from the top. */
export function unknownStones(
  { cells, columns }: ListFit,
  { beds }: Filling,
  corrections: Corrections,
  rates: Rates | undefined,
): { name: string; rows: number[] }[] {
  const column = settleColumns(columns, corrections).find(({ role }) => role === "stone")?.column;
  if (column === undefined) return [];
  const found = new Map<string, { name: string; rows: number[] }>();
  for (const { row } of beds) {
    const name = cells.typedText(row, column)?.trim() ?? "";
    if (name === "" || isKnownStone(name, rates)) continue;
    const key = name.toLowerCase();
    const one = found.get(key) ?? { name, rows: [] };
    one.rows.push(row);
    found.set(key, one);
  }
  return [...found.values()];
}
