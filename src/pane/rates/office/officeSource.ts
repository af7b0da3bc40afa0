import { type ReadOffice, readOffice } from "../../../sheets/office/readOffice";
import { MOST_CHARACTERS } from "../../../sheets/templates/limits";
import { readOfficeIndex } from "../../../sheets/templates/officeIndex";
import { fetched } from "../../templates/officeFolder";

/** A character takes at most four bytes of a file. */
const BYTES_A_CHARACTER = 4;

/** Reads a file that the person chose; nothing else comes of it. */
export async function readOfficeFile(file: File): Promise<ReadOffice> {
  // A file that is too large anyway isn't read at all.
  const isTooLarge = file.size > MOST_CHARACTERS * BYTES_A_CHARACTER;
  return readOffice(isTooLarge ? " ".repeat(MOST_CHARACTERS + 1) : await file.text());
}

/**
 * The settings that the office offers to everyone: the file that the list of its folder names as `officeSettings`.
 *
 * @param get gives the text of a file of the folder; undefined where there is no such file.
 * @returns undefined for an office that offers none.
 */
export async function officeOffer(
  get: (file: string) => Promise<string | undefined> = fetched,
): Promise<ReadOffice | undefined> {
  const list = await get("index.json");
  if (list === undefined) return undefined;
  const index = readOfficeIndex(list);
  // What is wrong with the list itself is said where templates are.
  if (!index.ok || index.officeSettings === undefined) return undefined;
  const text = await get(index.officeSettings);
  if (text !== undefined) return readOffice(text);
  return { ok: false, why: [`The office's list names ${index.officeSettings}, and there's no such file.`], more: 0 };
}
