import type { BrowserGrid } from "../browser/browserGrid";
import type { GridPort } from "../grid/port";
import type { Shelf } from "../keep/database";
import { plainName } from "../xlsx/fileName";
import { differences, noteBeyond, type OpenedNews, openedWords } from "../xlsx/openedMessage";
import { element } from "./element";
import { sayInBar, sayInFront } from "./say";

/** Says once, after a file has been opened, what came of it. */
export async function sayOpened(shelf: Shelf<OpenedNews>, { grid, open }: BrowserGrid): Promise<void> {
  try {
    const news = await shelf.get();
    if (news === undefined) return;
    const { noteDiffering } = await import(/* webpackChunkName: "files" */ "../xlsx/save/differing");
    noteDiffering(open, grid.cells, (news as OpenedNews).shown);
    grid.watch.tellAnything();
    await shelf.clear();
    say(news as OpenedNews, grid);
  } catch {
    // News that are damaged or out of reach lose a message; the file is open all the same.
  }
}

function say(news: OpenedNews, grid: GridPort): void {
  grid.sheets.activate(news.front);
  noteBeyond(grid.cells, differences(grid.cells, news.shown));
  const words = openedWords(news, grid.cells, grid.sheets.list());
  if (words.lines.length > 0) sayInFront(words);
  else sayInBar([words.title, words.text].join(" ").trim());
}

/** Says which file the workbook came from, where it is not the invented office any more. */
export function nameFile(name: string): void {
  if (name === plainName) return;
  element("practice-about").textContent = `“${name}”. Your work is saved in this browser. The file doesn't change.`;
}
