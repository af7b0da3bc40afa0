import { undoLastInsert } from "../workbook/change/undo";

/**
 * Undoes the last insert, and says so.
 *
 * @param id of the insert that the button offers.
 */
export async function undoInsert(id?: string): Promise<string> {
  const { title, where, wasEmpty } = await undoLastInsert(id);
  const left = wasEmpty
    ? " Its cells were already blank. If they were moved, they stay where they are now; their drawing is gone, and column widths are back to what they were."
    : "";
  return `Removed the ${title} from ${where}.${left}`;
}
