import { FileRefusal, refuseTooLarge } from "../../xlsx/limits";
import { Canceled } from "../../xlsx/steps";
import type { BrowserGrid } from "../browser/browserGrid";
import { counted } from "../xlsx/context";
import type { FunctionNames } from "../xlsx/formulas";
import type { GridBook, OpenedBook } from "../xlsx/open/openBook";
import type { OpenedNews } from "../xlsx/openedMessage";
import { element } from "./element";
import { answered, fill, sayInBar, sayInFront } from "./say";
import { whileBusy } from "./whileBusy";

/** What opening a file takes from the page. */
export interface Openings {
  readonly grid: BrowserGrid;
  readonly functions: FunctionNames;
  /** Saves the workbook that is there; gives what to say of it. */
  readonly save: () => Promise<string | undefined>;
  /** Puts a file's workbook in the place of the one that is there, and shows it. */
  readonly replace: (book: GridBook, news: OpenedNews, file: Uint8Array) => Promise<void>;
}

/** Reads a file, says what would not come along, and asks; nothing changes before the person says so. */
export async function openFile(file: File, openings: Openings): Promise<void> {
  sayInBar(`Reading “${file.name}”…`);
  try {
    refuseTooLarge(file.size);
    const bytes = new Uint8Array(await file.arrayBuffer());
    const opened = await read(file.name, bytes, openings);
    sayInBar("");
    if (!(await agreed(file, opened, openings.save))) return;
    const { sheets, front, cells, formulas, shown } = opened;
    await openings.replace(opened.book, { fileName: file.name, sheets, front, cells, formulas, shown }, bytes);
  } catch (cause) {
    if (cause instanceof Canceled) {
      sayInBar(`“${file.name}” wasn't opened.`);
      return;
    }
    sayInBar("");
    sayInFront({ title: `Can't open “${file.name}”`, text: reasonOf(cause) });
  }
}

async function read(name: string, bytes: Uint8Array, { grid, functions }: Openings): Promise<OpenedBook> {
  const [{ openingSteps }, { nameOf }] = await Promise.all([
    import(/* webpackChunkName: "files" */ "../xlsx/open/openBook"),
    import(/* webpackChunkName: "files" */ "../xlsx/fileName"),
  ]);
  return whileBusy(`Reading “${name}”…`, openingSteps(grid.open.library, bytes, nameOf(name), functions));
}

/** Whether the person wants the file in the place of the workbook. */
async function agreed(file: File, opened: OpenedBook, save: Openings["save"]): Promise<boolean> {
  const dialog = element("practice-open-ask") as HTMLDialogElement;
  const { sheets, cells, formulas, unseen, lost, notes } = opened;
  const holds = [counted(sheets, "sheet"), counted(cells, "cell with contents", "cells with contents")];
  const facts = `It has ${holds.join(" and ")}, including ${counted(formulas, "formula")}.`;
  fill(dialog, {
    title: `Open “${file.name}” in place of this workbook?`,
    text:
      unseen.length > 0
        ? `${facts} Saving keeps what the practice workbook doesn't show:`
        : `${facts} The practice workbook shows all of it.`,
    lines: unseen,
  });
  const all = [...lost.map((one) => `Saving leaves out ${one}`), ...notes];
  element("practice-open-notes").textContent = all.map((note) => `${note}.`).join(" ");
  const said = element("practice-open-said");
  said.textContent = "";
  const saveFirst = element("practice-open-save");
  saveFirst.onclick = async () => {
    said.textContent = (await save()) ?? "";
  };
  return (await answered(dialog, "keep")) === "open";
}

function reasonOf(cause: unknown): string {
  if (cause instanceof FileRefusal) return cause.message;
  const reason = cause instanceof Error ? cause.message : String(cause);
  return `It has something that can't be read here. Nothing was opened. (${reason})`;
}
