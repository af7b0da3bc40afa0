import { undoLastInsert } from "../workbook/change/undo";

/** How the title of what is more than one thing begins. */
const SEVERAL = /^(papers|lines)\b/;

/**
 * Takes the last insert back, and says so.
 *
 * @param id of the insert that the button offers.
 */
export async function undoInsert(id?: string): Promise<string> {
  const { title, where, wasEmpty } = await undoLastInsert(id);
  const were = SEVERAL.test(title) ? "were" : "was";
  const left = wasEmpty
    ? " There was nothing in its cells any more. If they were moved, they stand where they are now; a drawing of them is gone, and the columns are as wide as before."
    : "";
  return `The ${title} ${were} taken back from ${where}.${left}`;
}
