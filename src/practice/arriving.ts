import type { KeptWorkbook } from "./browser/browserGrid";
import type { FunctionsFile } from "./functions/metadata";
import type { PracticeOffice } from "./grid/practiceOffice";
import { Shelf } from "./keep/database";
import { isWork } from "./keep/isWork";
import { type KeepTrouble, keepTroubleOf } from "./keep/keepTrouble";
import { isOnlyTab } from "./keep/onlyTab";
import { LoadingTrouble } from "./screen/loadingNote";

/** What the grid opens with. */
export interface Arrived {
  /** The work that this browser kept, where there is some. */
  readonly kept: KeptWorkbook | undefined;
  /** Why nothing is to be kept from now on: what could not be read must not be written over. */
  readonly unkept: KeepTrouble | undefined;
  readonly office: PracticeOffice;
  readonly functions: FunctionsFile;
}

/** Where this browser keeps the work. */
export const workShelf = new Shelf<KeptWorkbook>("workbook");

/** Fetches what the grid opens with; asked for at once, it arrives while the grid itself is on its way. */
export async function arriving(): Promise<Arrived> {
  const [{ kept, unkept }, isOnly, office, functions] = await Promise.all([
    keptWork(),
    isOnlyTab(),
    fetched<PracticeOffice>("practice-office.json"),
    fetched<FunctionsFile>("functions.json"),
  ]);
  return { kept, unkept: isOnly ? unkept : "other tab", office, functions };
}

async function keptWork(): Promise<Pick<Arrived, "kept" | "unkept">> {
  try {
    const kept = await workShelf.get();
    if (kept === undefined || isWork(kept)) return { kept, unkept: undefined };
    return { kept: undefined, unkept: "unreadable" };
  } catch (error) {
    // What can be opened, but not read, is there all the same.
    const isThere = error instanceof Error && ["DataError", "UnknownError", "NotReadableError"].includes(error.name);
    return { kept: undefined, unkept: isThere ? "unreadable" : keepTroubleOf(error) };
  }
}

async function fetched<T>(file: string): Promise<T> {
  const response = await fetch(file);
  if (response.ok) return (await response.json()) as T;
  throw new LoadingTrouble(`${file} couldn't be loaded (${response.status}). Reload the page to try again.`);
}
