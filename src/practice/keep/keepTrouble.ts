/** Why the work is not kept. "off": the browser has no storage for the page, or no room in it. */
export type KeepTrouble = "off" | "later" | "unreadable" | "other tab";

/** What the browser's refusal to hand out or take what is kept means. */
export function keepTroubleOf(error: unknown): "off" | "later" {
  // A later version of this page keeps its work in a database of a later version.
  return error instanceof Error && error.name === "VersionError" ? "later" : "off";
}

const GOES = "What you do here will be lost when this page closes, unless you save it as a file.";

/** What the page says all the while. */
export const keepWords: Readonly<Record<KeepTrouble, string>> = {
  off: "This browser can't save your work: its storage is full or turned off. Your work will be lost when the page closes.",
  later: `A newer version of this page saved work in this browser. It wasn't changed. ${GOES}`,
  unreadable: `The work saved in this browser can't be read. It wasn't changed. Reload the page to try again. “Start over…” discards it. ${GOES}`,
  "other tab": `The practice workbook is also open in another tab, and that one saves its work. ${GOES}`,
};

/** What is said where a file, or the invented office, was to take the place of the work. */
export const refusals: Readonly<Record<KeepTrouble, string>> = {
  off: "Nothing was opened: this browser's storage is full or turned off, and opening a file needs it. Close private windows or make room, then try again.",
  later: "Nothing was changed: a newer version of this page saved work in this browser, and it would be lost.",
  unreadable:
    "Nothing was opened: this browser has work that can't be read, and it would be lost. Reload the page to try again, or discard it with “Start over…”.",
  "other tab":
    "Nothing was changed: the practice workbook is also open in another tab, and its work would be lost. Reload this page, choose “Work here”, and try again.",
};
