import { rateLabel } from "../../quantities/bed/rates";
import { type UnfollowingCell, unfollowingCells } from "../../sheets/estimate/followRates";
import { cellAddress } from "../../spreadsheet/areas";
import { readWorkbook } from "../../workbook/read/workbook";
import { useProposed } from "./useProposed";

/** A cell that could follow a rate, on its sheet. */
export type OlderCell = UnfollowingCell & { readonly sheet: string };

/** What a cell holds and would follow, in words. */
export function cellWords({ sheet, rate, before, ...cell }: OlderCell): string {
  return `${sheet}!${cellAddress(cell)}: ${rateLabel(rate)}, ${before}`;
}

/** The cells by the estimate that they belong to. */
export function groupsOf(cells: readonly OlderCell[]): [estimate: string, cells: OlderCell[]][] {
  const groups = new Map<string, OlderCell[]>();
  for (const cell of cells) {
    const estimate = `${cell.bed || "A bed"} on ${cell.sheet}`;
    groups.set(estimate, [...(groups.get(estimate) ?? []), cell]);
  }
  return [...groups];
}

/** Estimates from before the workbook had rates: looked for, let follow, and undone. */
export const useOlderEstimates = () =>
  useProposed<OlderCell>({
    title: "let older estimates follow your rates",
    find: async () => {
      const { facts } = await readWorkbook();
      const names = facts.names.map(({ name }) => name);
      return facts.sheets.flatMap(({ name, used, protected: isProtected }) =>
        used && !isProtected
          ? unfollowingCells(used.values, used.formulas, used, names).map((cell) => ({ ...cell, sheet: name }))
          : [],
      );
    },
    changesOf: (cell) => [cell],
    words: {
      nothing: "Every estimate follows your rates or was changed by hand.",
      done: (cells) => `${cells} cells now follow your rates.`,
      undone: "The cells are back to what they were.",
    },
  });
