import type { KeptWorkbook } from "./browser/browserGrid";
import type { FunctionsFile } from "./functions/metadata";
import type { PracticeOffice } from "./grid/practiceOffice";
import { Shelf } from "./keep/database";
import { isWork } from "./keep/isWork";
import { KeepingTab } from "./keep/keepingTab";
import { type KeepTrouble, keepTroubleOf } from "./keep/keepTrouble";
import type { KeptFile } from "./keep/keptFile";
import { wasLeftOpening } from "./keep/openingMark";
import { handOver } from "./screen/handOver";
import { type LoadingNote, LoadingTrouble } from "./screen/loadingNote";
import type { OpenedNews } from "./xlsx/openedMessage";

/** What the grid opens with. */
export interface Arrived {
  /** The work that this browser kept, where there is some. */
  readonly kept: KeptWorkbook | undefined;
  /** Why nothing is to be kept from now on: what could not be read must not be written over. */
  readonly unkept: KeepTrouble | undefined;
  readonly tab: KeepingTab;
  readonly office: PracticeOffice;
  readonly functions: FunctionsFile;
}

/** Where this browser keeps the work. */
export const workShelf = new Shelf<KeptWorkbook>("workbook");

/** The file that the work was opened from, as it was. */
export const fileShelf = new Shelf<KeptFile>("file");

/** What came of opening a file, to be said once the page is loaded again with it. */
export const newsShelf = new Shelf<OpenedNews>("opened");

/** Discards the work and all that goes with it. */
export async function clearWork(): Promise<void> {
  await Promise.all([workShelf, fileShelf, newsShelf].map((shelf) => shelf.clear()));
}

/**
 * Fetches what the grid opens with; asked for at once, it arrives while the grid itself is on its way. Where another tab
 * has the workbook, or it didn't open the last time, the person says what to do before anything is opened.
 */
export async function arriving(namespace: string, note: LoadingNote): Promise<Arrived> {
  const tab = new KeepingTab();
  const [found, isOnly, office, functions] = await Promise.all([
    keptWork(),
    tab.isOnlyOne(),
    fetched<PracticeOffice>("practice-office.json"),
    fetched<FunctionsFile>("functions.json"),
  ]);
  const given = { tab, office, functions };
  if (!isOnly && (await note.ask(OTHER_TAB)) === "copy") return { ...given, kept: found.kept, unkept: "other tab" };
  if (!isOnly) await tab.takeOver();
  const work = isOnly ? found : await keptWork();
  if (!work.kept || !wasLeftOpening()) return { ...given, ...work };
  const names = functions.functions.map(({ name }) => `${namespace}.${name}`);
  const opens = await asksToOpen(work.kept, names, note);
  return { ...given, kept: opens ? work.kept : undefined, unkept: undefined };
}

const OTHER_TAB = {
  title: "The practice workbook is already open in another tab.",
  text: "If you work here, the other tab stops saving. What you do in a copy isn't saved, unless you save it as a file.",
  choices: { here: "Work here", copy: "Open a copy" },
} as const;

const LEFT_OPENING = {
  title: "The saved workbook didn't finish opening the last time.",
  text: "It may be too much for this browser. You can download its values and formulas, without formats, as an .xlsx file. Starting over discards it and brings back the sample office.",
  choices: { open: "Try again", download: "Download the cells", afresh: "Start over" },
} as const;

/** @returns whether the saved workbook is to be opened; otherwise it was discarded. */
async function asksToOpen(kept: KeptWorkbook, functions: readonly string[], note: LoadingNote): Promise<boolean> {
  let choice = await note.ask(LEFT_OPENING);
  for (; choice === "download"; choice = await note.ask(LEFT_OPENING)) {
    const { keptCellsFile } = await import(/* webpackChunkName: "files" */ "./keep/keptCells");
    handOver({ name: "Practice cells.xlsx", bytes: keptCellsFile(kept, functions) });
  }
  if (choice === "afresh") await clearWork();
  return choice === "open";
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
