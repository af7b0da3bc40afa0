/** Why the work is not kept. "off": the browser has no storage for the page, or no room in it. */
export type KeepTrouble = "off" | "later" | "unreadable" | "other tab";

/** What the browser's refusal to hand out or take what is kept means. */
export function keepTroubleOf(error: unknown): "off" | "later" {
  // A later version of this page keeps its work in a database of a later version.
  return error instanceof Error && error.name === "VersionError" ? "later" : "off";
}

const GOES = "What you do here will be gone when this page closes, unless you save it as a file.";

/** What the page says all the while. */
export const keepWords: Readonly<Record<KeepTrouble, string>> = {
  off: "This browser does not keep your work: its storage is full or switched off. It will be gone when the page closes.",
  later: `A later version of this page has kept work in this browser. It was left alone. ${GOES}`,
  unreadable: `The work that this browser kept cannot be read, and was left alone. Reload the page to try again; “Start afresh…” throws it away. ${GOES}`,
  "other tab": `The practice workbook is open in another tab, too, and that one keeps its work. ${GOES}`,
};

/** What is said where a file, or the invented office, was to take the place of the work. */
export const refusals: Readonly<Record<KeepTrouble, string>> = {
  off: "Nothing was opened: this browser's storage is full or switched off, and a file is opened by way of it. Close private windows or make room, then try again.",
  later: "Nothing was changed: a later version of this page has kept work in this browser, which would be lost.",
  unreadable:
    "Nothing was opened: this browser holds work that cannot be read, which would be lost. Reload the page to try again, or throw it away with “Start afresh…”.",
  "other tab":
    "Nothing was changed: the practice workbook is open in another tab, too, and its work would be lost. Close that tab, then reload this page.",
};
