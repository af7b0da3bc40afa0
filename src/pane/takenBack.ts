import { takeBackLastInsert } from "../workbook/takeBack";

/** Takes the last insert back, and says so. */
export async function takenBack(): Promise<string> {
  const { title, where } = await takeBackLastInsert();
  return `The ${title} was taken back from ${where}.`;
}
