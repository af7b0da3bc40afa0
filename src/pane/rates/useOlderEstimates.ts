import { useState } from "preact/hooks";
import { rateLabel } from "../../quantities/bed/rates";
import { type UnfollowingCell, unfollowingCells } from "../../sheets/estimate/followRates";
import { cellAddress } from "../../spreadsheet/areas";
import { undoChanges, type WrittenChanges, writeChanges } from "../../workbook/change/cells";
import { readWorkbook } from "../../workbook/read/workbook";
import { useStatus } from "../useStatus";

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

/** Older estimates the workbook had rates: looked for, let follow, and undone. */
export function useOlderEstimates() {
  const [cells, setCells] = useState<readonly OlderCell[]>();
  const [written, setWritten] = useState<WrittenChanges>();
  const reporter = useStatus();

  /** What was said last stays until there is something new to say. */
  const attempt = (action: () => Promise<string | undefined>) => reporter.attempt(undefined, action);

  return {
    cells,
    status: reporter.status,
    canUndo: written !== undefined,
    look: () =>
      attempt(async () => {
        const { facts } = await readWorkbook();
        const found = facts.sheets.flatMap(({ name, used, protected: isProtected }) =>
          used && !isProtected
            ? unfollowingCells(used.values, used.formulas, used).map((cell) => ({ ...cell, sheet: name }))
            : [],
        );
        setCells(found);
        return found.length === 0 ? "Every estimate follows your rates or was changed by hand." : undefined;
      }),
    follow: () =>
      attempt(async () => {
        if (!cells) return undefined;
        setWritten(await writeChanges("let older estimates follow your rates", cells));
        setCells(undefined);
        return `${cells.length} cells now follow your rates.`;
      }),
    leave: () => {
      setCells(undefined);
      reporter.say("Nothing was changed.");
    },
    undo: () =>
      attempt(async () => {
        if (!written) return undefined;
        await undoChanges(written);
        setWritten(undefined);
        return "The cells are back to what they were.";
      }),
  };
}
