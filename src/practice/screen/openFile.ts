import { FileRefusal, refuseTooLarge } from "../../xlsx/limits";
import type { BrowserGrid } from "../browser/browserGrid";
import { counted } from "../xlsx/context";
import type { FunctionNames } from "../xlsx/formulas";
import type { GridBook, OpenedBook } from "../xlsx/open/openBook";
import type { OpenedNews } from "../xlsx/openedMessage";
import { element } from "./element";
import { fill, sayInBar, sayInFront } from "./say";

/** What opening a file takes from the page. */
export interface Openings {
  readonly grid: BrowserGrid;
  readonly functions: FunctionNames;
  /** Saves the workbook that is there; gives what to say of it. */
  readonly save: () => Promise<string | undefined>;
  /** Puts a file's workbook in the place of the one that is there, and shows it. */
  readonly replace: (book: GridBook, news: OpenedNews) => Promise<void>;
}

/** Reads a file, says what would not come along, and asks; nothing changes before the person says so. */
export async function openFile(file: File, openings: Openings): Promise<void> {
  sayInBar(`Reading “${file.name}”…`);
  try {
    const opened = await read(file, openings);
    sayInBar("");
    if (!(await agreed(file, opened, openings.save))) return;
    const { sheets, front, cells, formulas, shown } = opened;
    await openings.replace(opened.book, { fileName: file.name, sheets, front, cells, formulas, shown });
  } catch (cause) {
    sayInBar("");
    sayInFront({ title: `Can't open “${file.name}”`, text: reasonOf(cause) });
  }
}

async function read(file: File, { grid, functions }: Openings): Promise<OpenedBook> {
  refuseTooLarge(file.size);
  const [{ openBook }, { nameOf }, bytes] = await Promise.all([
    import(/* webpackChunkName: "files" */ "../xlsx/open/openBook"),
    import(/* webpackChunkName: "files" */ "../xlsx/fileName"),
    file.arrayBuffer(),
  ]);
  return openBook(grid.open.library, new Uint8Array(bytes), nameOf(file.name), functions);
}

/** Whether the person wants the file in the place of the workbook. */
async function agreed(file: File, opened: OpenedBook, save: Openings["save"]): Promise<boolean> {
  const dialog = element("practice-open-ask") as HTMLDialogElement;
  const { sheets, cells, formulas, lost, notes } = opened;
  const holds = [counted(sheets, "sheet"), counted(cells, "cell with contents", "cells with contents")];
  const facts = `It has ${holds.join(" and ")}, including ${counted(formulas, "formula")}.`;
  fill(dialog, {
    title: `Open “${file.name}” in place of this workbook?`,
    text: lost.length > 0 ? `${facts} The practice workbook can't keep:` : `${facts} Everything is kept.`,
    lines: lost,
  });
  element("practice-open-notes").textContent = notes.map((note) => `${note}.`).join(" ");
  const said = element("practice-open-said");
  said.textContent = "";
  const saveFirst = element("practice-open-save");
  saveFirst.onclick = async () => {
    said.textContent = (await save()) ?? "";
  };
  dialog.returnValue = "keep";
  dialog.showModal();
  await new Promise((resolve) => dialog.addEventListener("close", resolve, { once: true }));
  return dialog.returnValue === "open";
}

function reasonOf(cause: unknown): string {
  if (cause instanceof FileRefusal) return cause.message;
  const reason = cause instanceof Error ? cause.message : String(cause);
  return `It has something that can't be read here. Nothing was opened. (${reason})`;
}
