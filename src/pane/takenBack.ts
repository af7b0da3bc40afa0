import { takeBackLastInsert } from "../workbook/takeBack";

/**
 * Takes the last insert back, and says so.
 *
 * @param id of the insert that the button offers.
 */
export async function takenBack(id?: string): Promise<string> {
  const { title, where } = await takeBackLastInsert(id);
  return `The ${title} was taken back from ${where}.`;
}
