import { type OpenedNews, openedWords } from "../files/afterOpening";
import type { GridPort } from "../grid/port";
import type { Shelf } from "../keep/database";
import { sayInBar, sayInFront } from "./say";

/** Says once, after a file has been opened, what came of it. */
export async function sayOpened(shelf: Shelf<OpenedNews>, grid: GridPort): Promise<void> {
  const news = await shelf.get().catch(() => undefined);
  if (!news) return;
  await shelf.clear();
  const words = openedWords(news, grid.cells, grid.sheets.list());
  if (words.lines.length > 0) sayInFront(words);
  else sayInBar([words.title, words.text].join(" ").trim());
}
