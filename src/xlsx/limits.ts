/*
 * How much is taken from a file: so much that an office's own workbooks go in with room to spare, and so little that a
 * file made to choke a program is turned away before it does. Tried by hand, not taken from anywhere.
 */
const mostFileBytes = 25_000_000;
export const mostUnpackedBytes = 150_000_000;
export const mostParts = 2_000;
export const mostCells = 200_000;
export const mostSheets = 100;
export const mostPictures = 200;
/** What is wider is kept as far as the sheet shows columns: the grid takes a minute for a list on all 16,384. */
export const widestRule = 256;
export const mostMerged = 200_000;
/** A formula that reads more, or fills more, is kept as the value it shows. */
export const mostCellsOfFormula = 200_000;
/** In words and signs: the grid goes as deep into itself as a formula has terms, and 4,000 of them end it. */
export const longestFormula = 4_000;
/** The formulas of a file together, read one after the other. */
export const mostCellsOfFormulas = 10_000_000;

/** Why a file can't be opened or made, in words for the person. */
export class FileRefusal extends Error {
  override readonly name = "FileRefusal";
}

/** What is said of a file that doesn't hold together. @param cause what failed while it was read. */
export const damaged = (what: string, cause?: unknown): FileRefusal =>
  new FileRefusal(`The file is damaged: ${what}. Nothing was opened. Get a fresh copy of it, or save it again.`, {
    cause,
  });

/** @throws FileRefusal for a file of more bytes than are opened here. */
export function refuseTooLarge(bytes: number): void {
  if (bytes <= mostFileBytes) return;
  throw new FileRefusal(
    `The file is too large: ${Math.ceil(bytes / 1e6)} MB, and at most ${mostFileBytes / 1e6} MB can be opened here.`,
  );
}
