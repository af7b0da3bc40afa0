import type { CustomData } from "@univerjs/core";
import { FileRefusal } from "../../xlsx/limits";
import { Canceled } from "../../xlsx/steps";
import type { BrowserGrid } from "../browser/browserGrid";
import type { Shelf } from "../keep/database";
import { isKeptFile, type KeptFile } from "../keep/keptFile";
import type { FunctionNames } from "../xlsx/formulas";
import { element } from "./element";
import { handOver } from "./handOver";
import { answered, fill, type Said, sayInFront } from "./say";
import { whileBusy } from "./whileBusy";

/**
 * Makes a file of the workbook and gives it to the person; always a new file. Asks first where the file would not have
 * all that is here or was in the file that the workbook was opened from.
 *
 * @param kept where that file is kept.
 * @returns what is to be said of it; undefined where it was not made, which then has been said.
 */
export async function saveFile(
  { grid, open }: BrowserGrid,
  functions: FunctionNames,
  kept: Shelf<KeptFile>,
): Promise<string | undefined> {
  try {
    const [{ saveBook }, { openingSteps }, { savedName }, { differenceLine }] = await Promise.all([
      import(/* webpackChunkName: "files" */ "../xlsx/save/saveBook"),
      import(/* webpackChunkName: "files" */ "../xlsx/open/openBook"),
      import(/* webpackChunkName: "files" */ "../xlsx/fileName"),
      import(/* webpackChunkName: "files" */ "../xlsx/openedMessage"),
    ]);
    await grid.settled();
    const { file, words } = await fileOf(open.workbook.getCustomMetadata(), kept);
    const before = file && {
      bytes: file,
      opened: await whileBusy("Making the file…", openingSteps(open.library, file, "", functions)),
    };
    const { bytes, lost, kept: values } = saveBook(open, grid.cells, functions, before);
    const name = savedName(open.workbook.getName(), new Date());
    const sheets = grid.sheets.list();
    const lines = [
      ...words,
      ...lost.map((one) => `Left out: ${one}`),
      ...values.map((one) => `Keeps the value from the file: ${differenceLine(one, sheets)}`),
    ];
    if (lines.length > 0 && !(await agreed(name, lines))) return "No file was saved.";
    handOver({ name, bytes });
    return `Saved as “${name}”, a new file in your downloads.`;
  } catch (cause) {
    if (cause instanceof Canceled) return "No file was saved.";
    sayInFront(troubleSaving(cause));
    return undefined;
  }
}

/** The bytes of the file that the workbook was opened from, or what to say where there should be some and are none. */
async function fileOf(custom: CustomData | undefined, kept: Shelf<KeptFile>) {
  const id = custom?.file;
  if (typeof id !== "string") return { words: [] };
  const file = await kept.get().catch(() => undefined);
  if (isKeptFile(file) && file.id === id) return { file: file.bytes, words: [] };
  return {
    words: [
      "Left out: all that the practice workbook doesn't show, because this browser no longer has the file you opened",
    ],
  };
}

/** Whether the person wants the file as it would be. */
async function agreed(name: string, lines: readonly string[]): Promise<boolean> {
  const dialog = element("practice-save-ask") as HTMLDialogElement;
  const shown = lines.slice(0, mostLines);
  const rest = lines.length - shown.length;
  fill(dialog, {
    title: `Save “${name}”?`,
    text: "The file won't be quite what you see here:",
    lines: rest > 0 ? [...shown, `and ${rest.toLocaleString("en-US")} more`] : shown,
  });
  return (await answered(dialog, "no")) === "save";
}

const mostLines = 20;

function troubleSaving(cause: unknown): Said {
  const title = "No file was saved";
  if (cause instanceof FileRefusal) return { title, text: cause.message };
  const reason = cause instanceof Error ? cause.message : String(cause);
  return { title, text: `Check your connection and try again. The workbook wasn't changed. (${reason})` };
}
