import type { Kept } from "../sheets/kept";
import { someOf } from "../sheets/someOf";
import type { Inserted } from "./inserted";
import type { Receipt } from "./receipt";
import { WorkbookTrouble } from "./trouble";

const MOST_NAMED = 3;

/** @throws WorkbookTrouble where the host would refuse, half-way it may be. */
export function refuseProtected(parts: readonly Inserted[], wouldTakeSheets: boolean): void {
  const locked = parts.find((part) => part.isProtected());
  if (locked) {
    throw new WorkbookTrouble(
      `The sheet “${locked.worksheet.name}” is protected, so nothing was taken back. Lift the protection, then take it back.`,
    );
  }
  if (wouldTakeSheets) {
    throw new WorkbookTrouble(
      "The structure of this workbook is protected, so its sheets stay, and nothing was taken back. Lift the protection of the workbook, then take it back.",
    );
  }
}

/** @throws WorkbookTrouble where somebody has typed into it since. */
export function refuseChanged(title: string, changed: readonly string[]): void {
  if (changed.length === 0) return;
  throw new WorkbookTrouble(
    `Cells of the ${title} were changed or moved since the insert (${someOf(changed, MOST_NAMED)}), so nothing was taken back. Delete them by hand.`,
  );
}

/** @throws WorkbookTrouble where formulas elsewhere would turn into errors. */
export function refuseRead(title: string, readers: readonly string[]): void {
  if (readers.length === 0) return;
  throw new WorkbookTrouble(
    `Formulas elsewhere read cells of the ${title} (${someOf(readers, MOST_NAMED)}) and would show errors without them, so nothing was taken back. Put those formulas back first, or delete them, then take it back.`,
  );
}

/** @throws WorkbookTrouble where there is none, or none that can be believed. */
export function receiptOf(kept: Kept<Receipt>): Receipt {
  if (kept.state === "kept") return kept.value;
  if (kept.state === "none") throw new WorkbookTrouble("There is nothing to take back.");
  throw new WorkbookTrouble(
    kept.state === "later"
      ? "What was inserted last was inserted by a later version of this add-in. Use that version to take it back, or delete it by hand."
      : "What this workbook keeps of the last insert is damaged and cannot be read, so nothing was taken back. Delete it by hand.",
  );
}

/** What is said where somebody was quicker. @param filled the sheet onto which something was put; undefined where cells were emptied. */
export function overtakenWords(title: string, filled: string | undefined): WorkbookTrouble {
  return new WorkbookTrouble(
    filled === undefined
      ? `The cells of the ${title} were emptied or moved at the same moment, so nothing was taken back. Look where they are, then take back what is left.`
      : `Somebody else has just put something onto the sheet “${filled}”, so it stays. Look at it, then take the ${title} back again.`,
  );
}

/** What is said where rows came in between, and the looks were taken off another place. */
export function missedWords(title: string, where: string): WorkbookTrouble {
  return new WorkbookTrouble(
    `The ${title} could be taken back only in part: somebody put rows or columns in at the same moment, or gave its place other colors. Its cells are empty; look around ${where} for colors, lines and drawings that are left, or that are missing from other cells, and put them right by hand.`,
  );
}
