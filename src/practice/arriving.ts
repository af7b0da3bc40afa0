import type { KeptWorkbook } from "./browser/browserGrid";
import type { FunctionsFile } from "./functions/metadata";
import type { PracticeOffice } from "./grid/practiceOffice";
import { Shelf } from "./keep/database";
import { LoadingTrouble } from "./screen/loadingNote";
import { showTrouble } from "./screen/trouble";

/** What the grid opens with. */
export interface Arrived {
  /** The work that this browser kept, where there is some. */
  readonly kept: KeptWorkbook | undefined;
  readonly office: PracticeOffice;
  readonly functions: FunctionsFile;
}

/** Where this browser keeps the work. */
export const workShelf = new Shelf<KeptWorkbook>("workbook");

export const notKept =
  "This browser does not keep your work: its storage is full or switched off. It will be gone when the page closes.";

/** Fetches what the grid opens with; asked for at once, it arrives while the grid itself is on its way. */
export async function arriving(): Promise<Arrived> {
  const [kept, office, functions] = await Promise.all([
    keptWork(),
    fetched<PracticeOffice>("practice-office.json"),
    fetched<FunctionsFile>("functions.json"),
  ]);
  return { kept, office, functions };
}

async function keptWork(): Promise<KeptWorkbook | undefined> {
  try {
    return await workShelf.get();
  } catch {
    showTrouble(notKept);
    return undefined;
  }
}

async function fetched<T>(file: string): Promise<T> {
  const response = await fetch(file);
  if (response.ok) return (await response.json()) as T;
  throw new LoadingTrouble(`${file} could not be fetched (${response.status}). Reload the page to try again.`);
}
