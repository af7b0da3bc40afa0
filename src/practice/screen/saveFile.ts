import { FileRefusal } from "../../xlsx/limits";
import type { BrowserGrid } from "../browser/browserGrid";
import type { FunctionNames } from "../xlsx/formulas";
import { handOver } from "./handOver";
import { type Said, sayInFront } from "./say";

/**
 * Makes a file of the workbook and gives it to the person; always a new file.
 *
 * @returns what is to be said of it; undefined where it was not made, which then has been said.
 */
export async function saveFile({ grid, open }: BrowserGrid, functions: FunctionNames): Promise<string | undefined> {
  try {
    const [{ saveBook }, { savedName }] = await Promise.all([
      import(/* webpackChunkName: "files" */ "../xlsx/save/saveBook"),
      import(/* webpackChunkName: "files" */ "../xlsx/fileName"),
    ]);
    await grid.settled();
    const { bytes, lost } = saveBook(open, grid.cells, functions);
    const name = savedName(open.workbook.getName(), new Date());
    handOver({ name, bytes });
    const said = `Saved as “${name}”, a new file in your downloads.`;
    if (lost.length > 0) sayInFront({ title: said, text: "It leaves out:", lines: lost });
    return said;
  } catch (cause) {
    sayInFront(troubleSaving(cause));
    return undefined;
  }
}

function troubleSaving(cause: unknown): Said {
  const title = "No file was saved";
  if (cause instanceof FileRefusal) return { title, text: cause.message };
  const reason = cause instanceof Error ? cause.message : String(cause);
  return { title, text: `Check your connection and try again. The workbook wasn't changed. (${reason})` };
}
