import { type StoneAnswer, StoneListFull, stoneNameChanges } from "../../sheets/rates/stoneNames";
import { type WrittenChanges, writeChanges } from "../../workbook/change/cells";
import { WorkbookFailure } from "../../workbook/failure";
import { readRateCells } from "../../workbook/read/rates";
import { refreshRates } from "./store";

const LIST_DAMAGED = "The list of stone in Rates is missing or damaged. Nothing was written. Fix it, then try again.";
const LIST_FULL = "The list of stone in Rates is full. Nothing was written. Insert rows inside it, then try again.";

/**
 * Keeps what a yard's names are in the office's list of stone.
 *
 * @returns what was written, to undo it.
 * @throws WorkbookFailure where the list is damaged or full; nothing is written then.
 */
export async function rememberStones(answers: readonly StoneAnswer[]): Promise<WrittenChanges> {
  const there = await readRateCells();
  const changes = there && changesIn(there.named, there.found.rates, answers);
  if (!changes) throw new WorkbookFailure(LIST_DAMAGED);
  const written = await writeChanges("names of stone in Rates", changes);
  await refreshRates();
  return written;
}

function changesIn(...[named, rates, answers]: Parameters<typeof stoneNameChanges>) {
  try {
    return stoneNameChanges(named, rates, answers);
  } catch (reason) {
    throw reason instanceof StoneListFull ? new WorkbookFailure(LIST_FULL) : reason;
  }
}

export const rememberedWords = (count: number) =>
  `${count === 1 ? "The name is" : `${count} names are`} in Rates, in the list of stone.`;
